package fascicle.workings.grid;

import fascicle.notebook.Ids;
import fascicle.workings.EntryWorking;
import fascicle.workings.Group;
import fascicle.workings.Workings;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Dyes on conditions of the needles. A mixture's colour says little of one dye, so a dye's row holds the entries that
 * it colours alone; each mixture has a row of its own, whatever its proportions.
 *
 * @param conditions ids of the conditions that any entry of the notebook has, from green to glycerined and then the
 *     maker's own
 * @param rows the dyes in the notebook's order, each with a row even where it was only tried in mixtures; then the
 *     mixtures, of fewer dyes first
 * @param aside how many entries have no place in it: their needles were dyed before, their bath was used before, or the
 *     notebook tells no condition or no dye
 */
public record DyeGrid(List<String> conditions, List<Row> rows, int aside) {

    /**
     * A dye, or a mixture.
     *
     * @param dyes ids of the dyes, in the notebook's order
     * @param cells one for each condition
     */
    public record Row(List<String> dyes, List<Cell> cells) {}

    /**
     * Lays entries out.
     *
     * @param workings the workings they are of
     * @param entries all of them, or a group of them
     * @return the grid
     */
    public static DyeGrid of(Workings workings, List<EntryWorking> entries) {
        List<String> conditions = workings.groups(Group.Kind.CONDITION).stream().map(Group::id).toList();
        Colourants colourants = new Colourants(workings.notebook());
        Map<List<String>, Map<String, List<EntryWorking>>> rows = new TreeMap<>(rowOrder(colourants));
        int aside = 0;
        for (EntryWorking entry : entries) {
            List<String> dyes = colourants.of(entry);
            dyes.forEach(dye -> rows.computeIfAbsent(List.of(dye), unused -> new HashMap<>()));
            if (dyes.isEmpty() || entry.needles().condition().isEmpty() || !Colourants.inOneBath(entry)) {
                aside++;
                continue;
            }
            rows.computeIfAbsent(dyes, unused -> new HashMap<>())
                    .computeIfAbsent(Ids.key(entry.needles().condition().get()), unused -> new ArrayList<>())
                    .add(entry);
        }
        List<Row> laid = new ArrayList<>();
        rows.forEach((dyes, byCondition) -> laid.add(new Row(dyes, conditions.stream()
                .map(condition -> Cell.ofWhatWorked(workings, byCondition.getOrDefault(Ids.key(condition), List.of())))
                .toList())));
        return new DyeGrid(conditions, List.copyOf(laid), aside);
    }

    /**
     * One dye on the conditions, alone and in its mixtures.
     *
     * @param workings any workings
     * @param dye the dye's id, in any case
     * @return the grid of its entries; no rows where it colours none
     */
    public static DyeGrid ofDye(Workings workings, String dye) {
        List<EntryWorking> entries = workings.group(Group.Kind.DYE, dye).map(Group::entries).orElse(List.of());
        DyeGrid grid = of(workings, entries);
        List<Row> rows = grid.rows().stream()
                .filter(row -> row.dyes().stream().anyMatch(id -> Ids.same(id, dye))).toList();
        return new DyeGrid(grid.conditions(), rows, grid.aside());
    }

    private static Comparator<List<String>> rowOrder(Colourants colourants) {
        return Comparator.<List<String>>comparingInt(List::size).thenComparing((one, other) -> {
            for (int i = 0; i < one.size(); i++) {
                int order = colourants.inOrder().compare(one.get(i), other.get(i));
                if (order != 0) {
                    return order;
                }
            }
            return 0;
        });
    }
}
