package fascicle.notebook.read;

import fascicle.measure.Dimension;
import fascicle.measure.Kitchen;
import fascicle.measure.Quantity;
import fascicle.notebook.Cover;
import fascicle.notebook.Findings;
import fascicle.notebook.Noted;
import fascicle.notebook.Origin;
import fascicle.notebook.text.Node;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads {@code notebook.yaml}. */
final class CoverReader {

    /** The newest form this program knows. */
    static final int FORM = 1;

    private static final Scalar<Integer> WHOLE = Scalar.whole(1, 1_000_000);
    private static final Set<String> LANGUAGES = Set.of(Locale.getISOLanguages());

    private CoverReader() {}

    /** What cups and spoons hold, needed before anything else can be read; metric where it cannot be told. */
    static Kitchen kitchen(Node.Mapping mapping) {
        return mapping.find("kitchen").map(Node.Pair::value)
                .flatMap(node -> node instanceof Node.Text text ? Kitchen.named(text.value().strip())
                        : Optional.empty())
                .orElse(Kitchen.METRIC);
    }

    /** Reads the cover. */
    static Cover cover(Node.Mapping mapping, Findings findings) {
        Fields fields = new Fields(mapping, Origin.OWN, kitchen(mapping), findings);
        checkForm(fields);
        Optional<Fields> water = fields.map("water");
        Cover cover = new Cover(fields.text("title").map(Noted::value).orElse(Cover.UNSAID.title()),
                fields.text("maker").map(Noted::value),
                fields.read("language", CoverReader::language).map(Noted::value).orElse(Cover.UNSAID.language()),
                fields.kitchen(), fields.word("kitchen", Kitchen.class).isPresent(),
                fields.read("balance", Scalar.some(Scalar.quantity(Dimension.MASS), "is no step of a scale; write the "
                        + "smallest one it shows, such as 0.1 g")),
                water.flatMap(map -> map.read("alkalinity", Scalar.ALKALINITY)),
                water.flatMap(map -> map.read("ph", Scalar.number(0, 14))),
                fields.read("height", Scalar.HEIGHT),
                fields.read("currency", CoverReader::currency).map(Noted::value),
                fields.read("damp-keeps", Scalar.quantity(Dimension.TIME)),
                fields.text("theme").map(Noted::value).orElse(Cover.UNSAID.theme()), conditions(fields),
                fields.read("address", CoverReader::address).map(Noted::value),
                fields.list("weights", Scalar.quantity(Dimension.MASS)),
                fields.read("photo-uncertainty", Scalar.number(1, 30)));
        water.ifPresent(Fields::done);
        fields.done();
        for (Noted<Quantity> weight : cover.weights()) {
            if (weight.value().value() <= 0) {
                findings.error(weight.place(), "“weights” has " + weight.written() + "; a weight to work out recipes "
                        + "for is more than 0 g");
            }
        }
        return cover;
    }

    /** Whether the notebook is of a form this program does not know yet. */
    static boolean isNewer(Node.Mapping mapping) {
        return new Fields(mapping, Origin.OWN, Kitchen.METRIC, new Findings()).read("form", WHOLE)
                .filter(form -> form.value() > FORM).isPresent();
    }

    private static void checkForm(Fields fields) {
        Optional<Noted<Integer>> form = fields.read("form", WHOLE);
        if (!fields.has("form")) {
            fields.findings().error(fields.place(), "the notebook does not say its form; begin notebook.yaml with "
                    + "“form: 1”");
        }
        form.filter(noted -> noted.value() > FORM).ifPresent(noted -> fields.findings().error(noted.place(),
                "the notebook is of form " + noted.written() + ", newer than form " + FORM + ", which this program "
                        + "knows; use a newer Fascicle"));
    }

    private static Map<String, String> conditions(Fields fields) {
        Map<String, String> own = new LinkedHashMap<>();
        fields.map("conditions").ifPresent(map -> {
            for (Node.Pair pair : map.pairs()) {
                map.text(pair.key()).ifPresent(words -> own.put(pair.key(), words.value()));
            }
        });
        return java.util.Collections.unmodifiableMap(own);
    }

    private static String language(String text, Kitchen kitchen) throws Unreadable {
        Locale locale = Locale.forLanguageTag(text);
        if (!LANGUAGES.contains(locale.getLanguage())) {
            throw new Unreadable("“" + text + "” is no language tag; write two letters such as en or de");
        }
        return locale.toLanguageTag();
    }

    private static String currency(String text, Kitchen kitchen) throws Unreadable {
        try {
            return java.util.Currency.getInstance(text.toUpperCase(Locale.ROOT)).getCurrencyCode();
        } catch (IllegalArgumentException unknown) {
            throw new Unreadable("“" + text + "” is no currency; write its three letters, such as EUR");
        }
    }

    private static String address(String text, Kitchen kitchen) throws Unreadable {
        if (!text.matches("https?://[^\\s<>\"']+")) {
            throw new Unreadable("“" + text + "” is no web address; write it in full, as in "
                    + "https://example.org/book/");
        }
        return text;
    }
}
