package fascicle.workings.grid;

import fascicle.notebook.Ids;
import fascicle.workings.EntryWorking;
import fascicle.workings.Group;
import fascicle.workings.PartFigures;
import fascicle.workings.TwoFigures;
import fascicle.workings.Workings;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;

/**
 * A depth ladder: one dye, alone in its bath, at rising depths.
 *
 * @param dye the dye's id
 * @param rungs the depths, rising
 * @param rows a row for each condition on which the dye was tried at a known depth
 */
public record Ladder(String dye, List<Rung> rungs, List<Row> rows) {

    /**
     * A depth.
     *
     * @param owfPercent on the weight of the dry needles, per cent; depths equal to two significant figures are one
     * @param about whether any of its entries rests on a rough figure or on spoons
     */
    public record Rung(double owfPercent, boolean about) {}

    /**
     * A condition's row.
     *
     * @param condition the condition's id
     * @param cells one for each rung
     */
    public record Row(String condition, List<Cell> cells) {}

    /**
     * The ladders of all dyes.
     *
     * @param workings any workings
     * @return those with a rung, in the notebook's order
     */
    public static List<Ladder> all(Workings workings) {
        Colourants colourants = new Colourants(workings.notebook());
        Map<String, List<EntryWorking>> byDye = new TreeMap<>(colourants.inOrder());
        workings.entries().forEach(entry -> alone(colourants, entry)
                .ifPresent(dye -> byDye.computeIfAbsent(dye, unused -> new ArrayList<>()).add(entry)));
        List<Ladder> ladders = new ArrayList<>();
        byDye.forEach((dye, entries) -> ladders.add(of(workings, dye, entries)));
        return ladders.stream().filter(ladder -> !ladder.rungs().isEmpty()).toList();
    }

    /**
     * The ladder of one dye.
     *
     * @param workings any workings
     * @param dye the dye's id, in any case
     * @return its ladder; without rungs where the dye was never alone in a bath at a known depth
     */
    public static Ladder of(Workings workings, String dye) {
        Colourants colourants = new Colourants(workings.notebook());
        List<EntryWorking> entries = workings.group(Group.Kind.DYE, dye).map(Group::entries).orElse(List.of());
        return of(workings, dye, entries.stream()
                .filter(entry -> alone(colourants, entry).filter(only -> Ids.same(only, dye)).isPresent()).toList());
    }

    private static Ladder of(Workings workings, String dye, List<EntryWorking> entries) {
        Map<BigDecimal, Boolean> rungs = new TreeMap<>();
        Map<String, Map<BigDecimal, List<EntryWorking>>> rows = new HashMap<>();
        for (EntryWorking entry : entries) {
            Optional<BigDecimal> depth = depth(entry, dye);
            Optional<String> condition = entry.needles().condition();
            if (depth.isPresent() && condition.isPresent()) {
                rungs.merge(depth.get(), isRough(entry, dye), Boolean::logicalOr);
                rows.computeIfAbsent(Ids.key(condition.get()), unused -> new HashMap<>())
                        .computeIfAbsent(depth.get(), unused -> new ArrayList<>()).add(entry);
            }
        }
        List<Rung> rising = rungs.entrySet().stream()
                .map(rung -> new Rung(rung.getKey().doubleValue(), rung.getValue())).toList();
        List<Row> laid = workings.groups(Group.Kind.CONDITION).stream().map(Group::id)
                .filter(condition -> rows.containsKey(Ids.key(condition)))
                .map(condition -> new Row(condition,
                        cells(workings, rungs.keySet(), rows.getOrDefault(Ids.key(condition), Map.of()))))
                .toList();
        return new Ladder(dye, rising, laid);
    }

    private static List<Cell> cells(Workings workings, Set<BigDecimal> rungs,
            Map<BigDecimal, List<EntryWorking>> entries) {
        return rungs.stream().map(rung -> Cell.ofWhatCameOut(workings, entries.getOrDefault(rung, List.of()))).toList();
    }

    /** The dye that is alone in an entry's bath. */
    private static Optional<String> alone(Colourants colourants, EntryWorking entry) {
        List<String> dyes = Colourants.inOneBath(entry) ? colourants.of(entry) : List.of();
        return dyes.size() == 1 ? Optional.of(dyes.get(0)) : Optional.empty();
    }

    /** All of a dye that an entry was given, at once or bit by bit; nothing where any of it is unknown. */
    private static Optional<BigDecimal> depth(EntryWorking entry, String dye) {
        List<OptionalDouble> amounts = of(entry, dye).stream().map(PartFigures::owfPercent).toList();
        if (amounts.stream().anyMatch(OptionalDouble::isEmpty)) {
            return Optional.empty();
        }
        double owf = amounts.stream().mapToDouble(OptionalDouble::getAsDouble).sum();
        return owf > 0 ? Optional.of(TwoFigures.of(owf)) : Optional.empty();
    }

    private static boolean isRough(EntryWorking entry, String dye) {
        return of(entry, dye).stream().anyMatch(PartFigures::isRough);
    }

    private static List<PartFigures> of(EntryWorking entry, String dye) {
        return entry.parts().filter(part -> Ids.same(part.is(), dye)).toList();
    }
}
