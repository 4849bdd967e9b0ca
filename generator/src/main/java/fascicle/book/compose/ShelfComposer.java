package fascicle.book.compose;

import fascicle.book.address.Shelf;
import fascicle.book.page.Link;
import fascicle.book.page.ShelfPage;
import fascicle.book.words.Words;
import fascicle.measure.Dimension;
import fascicle.notebook.Missing;
import fascicle.notebook.Noted;
import fascicle.workings.EntryWorking;
import fascicle.workings.Group;
import fascicle.workings.grid.SampleString;
import fascicle.workings.stock.Basket;
import fascicle.workings.stock.DyedBundle;
import fascicle.workings.stock.Gap;
import fascicle.workings.stock.Stocktaking;
import fascicle.workings.stock.Supply;
import fascicle.workings.stock.Total;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The page of what is left. */
public final class ShelfComposer {

    /** Where the page is. */
    public static final String ADDRESS = "shelf.html";

    private final Materials materials;
    private final Ways ways;
    private final Words words;
    private final Stocktaking stock;
    private final StockWords said;
    private final ColourComposer colours;

    /**
     * Composes the page.
     *
     * @param materials what pages are made from
     * @param stock what is on the shelf
     */
    public ShelfComposer(Materials materials, Stocktaking stock) {
        this.materials = materials;
        this.ways = Ways.fromTop(materials);
        this.words = materials.words();
        this.stock = stock;
        this.said = new StockWords(materials, stock);
        this.colours = new ColourComposer(materials, ways);
    }

    /**
     * The page.
     *
     * @return what it says
     */
    public ShelfPage page() {
        List<DyedBundle> there = stock.bundles().stream().filter(bundle -> !isGone(bundle)).toList();
        int usedUp = stock.bundles().size() - there.size();
        return new ShelfPage(ways.frame(words.say("shelf.title")),
                stock.today().map(materials.figures()::date).map(day -> words.say("shelf.as-of", day))
                        .orElseGet(() -> words.say("shelf.empty")),
                missing(), supplied(Shelf.LOTS, stock::lot), supplied(Shelf.DYES, stock::dye), kept(there),
                usedUp == 0 ? Optional.empty() : Optional.of(words.say("shelf.used-up", usedUp)),
                stock.baskets().stream().map(this::basket).toList());
    }

    /** What an entry with errors took is not counted. */
    private List<String> missing() {
        int missing = (int) materials.workings().notebook().missing().stream().filter(Missing::entry).count();
        return missing == 0 ? List.of() : List.of(words.say("shelf.missing", missing));
    }

    /** What is used up exactly is not on the shelf; what is overdrawn is to be looked into. */
    private static boolean isGone(DyedBundle bundle) {
        return bundle.remainder().isUsedUp() && !bundle.remainder().isOverdrawn();
    }

    /** The things of a list: what is about to run out, the soonest first; what is known; what is not. */
    private List<ShelfPage.Supplied> supplied(Shelf shelf, Function<String, Optional<Supply>> supply) {
        record One(Link link, String id, Supply supply) {

            int rank() {
                return supply.isRunningOut() ? 0 : supply.remainder().left().known() ? 1 : 2;
            }

            double days() {
                return rank() == 0 ? supply.lasts().value().orElse(0) : 0;
            }
        }
        return materials.addresses().leaves(shelf).stream()
                .flatMap(leaf -> supply.apply(leaf.id()).map(found -> new One(ways.leaf(leaf), leaf.id(), found))
                        .stream())
                .sorted(Comparator.comparingInt(One::rank).thenComparingDouble(One::days))
                .map(one -> new ShelfPage.Supplied(shelf == Shelf.LOTS ? Optional.of(colours.bare(one.id()).small())
                        : Optional.empty(), one.link(), said.soon(one.supply()),
                        said.left(one.supply().remainder(), one.supply().measured()), said.lately(one.supply()),
                        said.lasts(one.supply()), said.why(one.supply().remainder().gaps())))
                .toList();
    }

    /** The damp bundles by their day, those without one last; then the others by colour family and hue. */
    private List<ShelfPage.KeptBundles> kept(List<DyedBundle> bundles) {
        List<ShelfPage.KeptBundles> kept = new ArrayList<>();
        Comparator<DyedBundle> byDay = Comparator.comparing(bundle -> bundle.useBy().orElse(LocalDate.MAX));
        add(kept, words.say("shelf.damp"), Optional.of(words.say("shelf.damp-care")),
                bundles.stream().filter(DyedBundle::isDamp).sorted(byDay));
        List<DyedBundle> dry = bundles.stream().filter(bundle -> !bundle.isDamp()).toList();
        for (Group family : materials.workings().groups(Group.Kind.FAMILY)) {
            add(kept, family.title(), Optional.empty(), SampleString.HUE.of(dry.stream().map(DyedBundle::entry)
                    .filter(entry -> isOf(entry, family)).toList()).stream().flatMap(entry -> bundle(entry).stream()));
        }
        add(kept, words.say("shelf.no-colour"), Optional.empty(),
                dry.stream().filter(bundle -> bundle.entry().colour().isEmpty()));
        return List.copyOf(kept);
    }

    private static boolean isOf(EntryWorking entry, Group family) {
        return entry.colour().filter(colour -> colour.name().family().equals(family.title())).isPresent();
    }

    private Optional<DyedBundle> bundle(EntryWorking entry) {
        return stock.bundle(entry.id());
    }

    private void add(List<ShelfPage.KeptBundles> kept, String title, Optional<String> care,
            Stream<DyedBundle> bundles) {
        List<ShelfPage.KeptBundle> shown = bundles.map(this::bundle).toList();
        if (!shown.isEmpty()) {
            kept.add(new ShelfPage.KeptBundles(title, care, shown));
        }
    }

    private ShelfPage.KeptBundle bundle(DyedBundle bundle) {
        List<Gap> gaps = new ArrayList<>(bundle.remainder().gaps());
        gaps.addAll(bundle.undated());
        return new ShelfPage.KeptBundle(colours.swatch(bundle.entry()).small(), ways.entry(bundle.entry()),
                tag(bundle.entry()), bundle.entry().colour().map(colour -> colour.name().name()),
                said.left(bundle.remainder(), Dimension.MASS), said.useBy(bundle), said.late(bundle), said.why(gaps));
    }

    private ShelfPage.Basket basket(Basket basket) {
        return new ShelfPage.Basket(basket.name(), weight(basket),
                basket.taken().stream().map(taken -> new ShelfPage.Woven(colours.swatch(taken.entry()).small(),
                        ways.entry(taken.entry()), tag(taken.entry()), weight(taken.weight(), taken.damp())))
                        .toList());
    }

    /** What a basket weighs, damp and dry apart. */
    private String weight(Basket basket) {
        return Stream.of(false, true).flatMap(damp -> basket.weight(damp).map(sum -> weight(sum, damp)).stream())
                .collect(Collectors.joining(words.say("pieces")));
    }

    private String weight(Total weight, boolean damp) {
        String grams = said.atLeast(weight, Dimension.MASS);
        return damp ? words.say("shelf.weighed-damp", grams) : grams;
    }

    private static Optional<String> tag(EntryWorking entry) {
        return entry.entry().tag().map(Noted::value);
    }
}
