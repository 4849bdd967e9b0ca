package fascicle.workings.stock;

import fascicle.bath.Magnitude;
import fascicle.measure.Dimension;
import fascicle.notebook.Dye;
import fascicle.notebook.Entry;
import fascicle.notebook.Ids;
import fascicle.notebook.NeedleLot;
import fascicle.notebook.Notebook;
import fascicle.notebook.Today;
import fascicle.workings.EntryWorking;
import fascicle.workings.Workings;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.function.Function;

/** What is on the shelf once all entries are written, and what they cost. */
public final class Stocktaking {

    private final Optional<LocalDate> today;
    private final NavigableSet<LocalDate> dyeDays;
    private final long days;
    private final Map<String, Supply> lots = new HashMap<>();
    private final Map<String, Supply> dyes = new HashMap<>();
    private final Map<String, DyedBundle> bundles;
    private final List<Basket> baskets;
    private final Map<String, Cost> costs = new HashMap<>();

    private Stocktaking(Workings workings) {
        Notebook notebook = workings.notebook();
        List<EntryWorking> entries = workings.entries();
        today = Today.of(notebook);
        dyeDays = Today.soundDyeDays(notebook);
        days = today.map(day -> days(day, dyeDays)).orElse(0L);
        Map<String, List<EntryWorking>> fromLots = new HashMap<>();
        Map<String, List<EntryWorking>> overdyed = new HashMap<>();
        Map<String, List<Taking>> takings = new HashMap<>();
        SharedBins bins = new SharedBins(entries);
        for (EntryWorking entry : entries) {
            // An over-dye takes needles that were taken off their lot before.
            entry.entry().needles().from().ifPresentOrElse(from -> add(overdyed, from.value(), entry),
                    () -> entry.needles().lot().ifPresent(lot -> add(fromLots, lot.id(), entry)));
            bins.filledFor(entry).forEach(part -> add(takings, part.is(), new Taking(entry, part)));
        }
        notebook.lots().forEach(lot -> lots.put(Ids.key(lot.id()), supply(lot, taken(fromLots, lot.id()))));
        notebook.dyes().forEach(dye -> dyes.put(Ids.key(dye.id()), supply(dye, taken(takings, dye.id()))));
        bundles = Notebook.byId(entries.stream().flatMap(entry -> entry.entry().kept().map(kept ->
                DyedBundle.of(entry, kept, taken(overdyed, entry.id()), notebook.cover())).stream()).toList(),
                bundle -> bundle.entry().id());
        baskets = Basket.of(bundles());
        Costing costing = new Costing(Notebook.byId(notebook.dyes(), Dye::id), bins);
        entries.forEach(entry -> costs.put(Ids.key(entry.id()), costing.of(entry)));
    }

    /**
     * Takes stock.
     *
     * @param workings an edition's figures
     * @return what is left
     */
    public static Stocktaking of(Workings workings) {
        return new Stocktaking(workings);
    }

    /**
     * The day on which stock is taken.
     *
     * @return the newest date of the notebook; nothing where it has none
     */
    public Optional<LocalDate> today() {
        return today;
    }

    /**
     * What is left of a needle lot, in g of dry needles.
     *
     * @param id its id, in any case
     * @return what is left, if there is such a lot
     */
    public Optional<Supply> lot(String id) {
        return Optional.ofNullable(lots.get(Ids.key(id)));
    }

    /**
     * What is left of a dye or assistant.
     *
     * @param id its id, in any case
     * @return what is left, if there is such a thing
     */
    public Optional<Supply> dye(String id) {
        return Optional.ofNullable(dyes.get(Ids.key(id)));
    }

    /**
     * What was kept of an entry.
     *
     * @param entry its id, in any case
     * @return its bundle, if anything was kept
     */
    public Optional<DyedBundle> bundle(String entry) {
        return Optional.ofNullable(bundles.get(Ids.key(entry)));
    }

    /**
     * Everything that was kept, used up or not.
     *
     * @return in the order of the entries
     */
    public List<DyedBundle> bundles() {
        return List.copyOf(bundles.values());
    }

    /**
     * The baskets that took from what was kept.
     *
     * @return by name
     */
    public List<Basket> baskets() {
        return baskets;
    }

    /**
     * What an entry cost.
     *
     * @param entry its id, in any case
     * @return its cost, if there is such an entry
     */
    public Optional<Cost> cost(String entry) {
        return Optional.ofNullable(costs.get(Ids.key(entry)));
    }

    private Supply supply(NeedleLot lot, List<EntryWorking> taken) {
        Total had = lot.weight().map(weight -> Total.of(Magnitude.of(weight.value().value(), weight.value().about())))
                .orElseGet(() -> Total.unknown(new Gap(Gap.Kind.LOT_WEIGHT, lot.place(), lot.called())));
        return supply(Dimension.MASS, had, taken, entry -> entry, Taking::needles);
    }

    private Supply supply(Dye dye, List<Taking> taken) {
        Packs packs = new Packs(dye);
        return supply(packs.measured(), packs.bought(), taken, Taking::entry,
                taking -> taking.amount(packs.measured(), dye));
    }

    private <T> Supply supply(Dimension measured, Total had, List<T> taken, Function<T, EntryWorking> by,
            Function<T, Total> amount) {
        List<Total> amounts = taken.stream().map(amount).toList();
        Total used = Total.sum(amounts);
        Total lately = Total.sum(taken.stream().filter(one -> isLate(by.apply(one).entry())).map(amount).toList());
        return new Supply(measured, new Remainder(had, used), lately, least(amounts), days);
    }

    /** The smallest of what batches took, leaving out those that took nothing. */
    private static Magnitude least(List<Total> amounts) {
        return amounts.stream().allMatch(amount -> amount.gaps().isEmpty())
                ? amounts.stream().map(Total::known).filter(known -> known.orThrow() > 0)
                        .min(Comparator.comparingDouble(Magnitude::orThrow)).orElse(Magnitude.UNKNOWN)
                : Magnitude.UNKNOWN;
    }

    /** Whether an entry lies in the days whose pace is told. */
    private boolean isLate(Entry entry) {
        return dyeDays.contains(entry.date())
                && today.filter(day -> entry.date().isAfter(day.minusDays(days))).isPresent();
    }

    /** A year, or the days since the first dye day where those are fewer. */
    private static long days(LocalDate today, NavigableSet<LocalDate> dyeDays) {
        return dyeDays.stream().findFirst()
                .map(first -> Math.min(Supply.YEAR, ChronoUnit.DAYS.between(first, today) + 1)).orElse(0L);
    }

    private static <T> void add(Map<String, List<T>> lists, String id, T one) {
        lists.computeIfAbsent(Ids.key(id), unused -> new ArrayList<>()).add(one);
    }

    private static <T> List<T> taken(Map<String, List<T>> lists, String id) {
        return lists.getOrDefault(Ids.key(id), List.of());
    }
}
