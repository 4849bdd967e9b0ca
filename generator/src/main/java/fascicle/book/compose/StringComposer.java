package fascicle.book.compose;

import fascicle.book.page.Hanging;
import fascicle.book.page.Link;
import fascicle.book.page.StringPage;
import fascicle.book.words.Words;
import fascicle.colour.HueOrder;
import fascicle.workings.EntryWorking;
import fascicle.workings.grid.SampleString;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The sample string, in each of its orders. */
public final class StringComposer {

    /** Samples that a browser lays out at once. */
    private static final int PIECE = 200;

    private final Materials materials;
    private final Ways ways;
    private final Words words;
    private final CellComposer cells;

    /**
     * Composes the string.
     *
     * @param materials what pages are made from
     */
    public StringComposer(Materials materials) {
        this.materials = materials;
        this.ways = Ways.fromTop(materials);
        this.words = materials.words();
        this.cells = new CellComposer(materials, ways);
    }

    /**
     * Where the string hangs in an order.
     *
     * @param order the order
     * @return the page's address
     */
    public static String address(SampleString order) {
        return order == SampleString.HUE ? "string.html" : "string-by-" + word(order) + ".html";
    }

    /**
     * The string in an order.
     *
     * @param order the order
     * @return what the page says
     */
    public StringPage page(SampleString order) {
        List<EntryWorking> all = materials.workings().entries();
        List<EntryWorking> hung = order.of(all);
        Map<String, List<EntryWorking>> lengths = new LinkedHashMap<>();
        hung.forEach(entry -> lengths.computeIfAbsent(length(order, entry), unused -> new ArrayList<>()).add(entry));
        List<StringPage.Length> laid = new ArrayList<>();
        lengths.forEach((title, entries) -> laid.add(new StringPage.Length(title, groups(entries))));
        int without = all.size() - hung.size();
        return new StringPage(ways.frame(title(order)), orders(order), words.say("string.said-" + word(order)),
                List.copyOf(laid), without == 0 ? Optional.empty() : Optional.of(words.say("string.without", without)));
    }

    private List<Link> orders(SampleString here) {
        List<Link> orders = new ArrayList<>();
        for (SampleString order : SampleString.values()) {
            String name = words.say("string.by-" + word(order));
            orders.add(order == here ? Link.plain(name) : ways.top(name, address(order)));
        }
        return List.copyOf(orders);
    }

    /** The ways to the string in every order. */
    static List<Link> ways(Materials materials, Ways ways) {
        return Stream.of(SampleString.values())
                .map(order -> ways.top(materials.words().say("string.by-" + word(order)), address(order))).toList();
    }

    private String title(SampleString order) {
        return order == SampleString.HUE ? words.say("string.title") : words.say("string.title-by-" + word(order));
    }

    /** What samples that hang together have in common. */
    private String length(SampleString order, EntryWorking entry) {
        return switch (order) {
            case HUE -> words.say(entry.colour().filter(colour -> HueOrder.isGrey(colour.lab())).isPresent()
                    ? "string.greys" : "string.hues");
            case LIGHTNESS -> words.say("string.light-to-dark");
            case YEAR -> String.valueOf(entry.entry().date().getYear());
        };
    }

    private List<StringPage.Group> groups(List<EntryWorking> entries) {
        List<StringPage.Group> groups = new ArrayList<>();
        for (int from = 0; from < entries.size(); from += PIECE) {
            List<Hanging> samples = entries.subList(from, Math.min(from + PIECE, entries.size())).stream()
                    .map(cells::hanging).toList();
            groups.add(new StringPage.Group(samples));
        }
        return List.copyOf(groups);
    }

    private static String word(SampleString order) {
        return order.name().toLowerCase(Locale.ROOT);
    }
}
