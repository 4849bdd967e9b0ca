package fascicle.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.book.figures.Figures;
import fascicle.book.gist.Gist;
import fascicle.book.lookup.Answer;
import fascicle.book.lookup.Choice;
import fascicle.book.lookup.Folding;
import fascicle.book.lookup.Lookup;
import fascicle.book.lookup.Order;
import fascicle.book.lookup.Question;
import fascicle.book.lookup.Trait;
import fascicle.book.words.Words;
import fascicle.colour.ColourDifference;
import fascicle.colour.Lab;
import fascicle.colour.Rgb;
import fascicle.notebook.Noted;
import fascicle.notebook.read.NotebookReader;
import fascicle.workings.EntryWorking;
import fascicle.workings.Workings;
import fascicle.workings.proof.Proofreading;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The book's script answers as the program does: the same entries in the same order, counts and differences. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class LookUpTest {

    private static final Words WORDS = Words.shipped();
    private static final Pattern UNIT = Pattern.compile("\\\\u([0-9a-f]{4})");

    /** What the page is asked, and its answer as text; NaN has no JSON. */
    private static final String ASK =
            """
            const answer = book.ask(arguments[0]);
            return JSON.stringify({
              ids: answer.entries.map(i => book.card(i).id),
              de00: answer.de00 && answer.entries.map(i => isNaN(answer.de00[i]) ? null : answer.de00[i]),
              counts: answer.counts, loosen: answer.loosen, instead: answer.instead
            });
            """;

    private final JsonMapper json = JsonMapper.shared();
    private Browser browser;
    private Workings workings;
    private Lookup lookup;

    @BeforeAll
    void open(@TempDir Path folder) throws IOException {
        NotebookReader.Result read = NotebookReader.read(Checkout.root().resolve("content"));
        workings = Workings.of(Proofreading.of(read.notebook(), read.findings()).notebook());
        lookup = Lookup.of(workings, WORDS);
        Path book = PublishedBook.ofTheDemo().folder();
        Path page = Files.writeString(folder.resolve("page.html"), "<!doctype html><meta charset='utf-8'><title>page</title>"
                + "<script src='" + book.resolve("data/look-up.js").toUri() + "'></script>"
                + "<script src='" + book.resolve("scripts/engine.js").toUri() + "'></script>"
                + "<script>const book = fascicle.open(fascicleIndex)</script>");
        browser = Browser.open(Browser.PHONE).show(page);
        assertEquals(List.of(), browser.complaints());
    }

    @AfterAll
    void close() {
        if (browser != null) {
            browser.close();
        }
    }

    private static List<Question> questions() {
        Question any = Question.ANY;
        List<Question> questions = new ArrayList<>();
        for (String words : List.of("", "brick", "b", "s", "scalded brick", "SCALDED  Brick", "scladed", "overnihgt", "brikc walnut",
                "41", "75", "007", "moderate reddish", "olive", "nigra", "zzzzzz", "zz", "the and of", "é", "...", "__proto__ constructor",
                "lake blue union", "uneven", "class", "🌲")) {
            questions.add(any.words(words));
        }
        for (Order order : Order.values()) {
            questions.add(any.in(order));
            questions.add(any.words("b").in(order).near(new Lab(50, 20, 30)));
        }
        questions.add(any.near(new Lab(36.2, 27.4, 20.1)));
        questions.add(any.near(Rgb.read("7f4632").orElseThrow().toLab()).choosing(Trait.VERDICT, "worked"));
        questions.add(any.choosing(Trait.CONDITION, "scalded"));
        questions.add(any.choosing(Trait.CONDITION, "scalded").choosing(Trait.CONDITION, "fallen").choosing(Trait.YEAR, "2024"));
        questions.add(any.choosing(Trait.DYE, "brick").choosing(Trait.DYE, "white-vinegar").choosing(Trait.VERDICT, "failed"));
        questions.add(any.choosing(Trait.METHOD, "slow-simmer").choosing(Trait.FAMILY, "brown"));
        questions.add(any.choosing(Trait.LOT, "scalded-2024").words("over"));
        questions.add(any.choosing(Trait.YEAR, "1999").words("brick"));
        questions.add(any.choosing(Trait.YEAR, "2024").choosing(Trait.FAMILY, "pink").choosing(Trait.CONDITION, "fallen").words("moss"));
        questions.add(any.choosing(Trait.DYE, "no-such-dye"));
        return questions;
    }

    private JsonNode ask(Question question) {
        Map<String, Object> asked = new HashMap<>();
        asked.put("words", question.words());
        question.chosen().forEach((trait, ids) -> asked.put(trait.word(), List.copyOf(ids)));
        question.near().ifPresent(near -> asked.put("near", List.of(near.lightness(), near.a(), near.b())));
        question.order().ifPresent(order -> asked.put("order", order.word()));
        return json.readTree((String) browser.script(ASK, asked));
    }

    private static List<String> texts(JsonNode list) {
        List<String> texts = new ArrayList<>();
        list.forEach(item -> texts.add(item.asString()));
        return texts;
    }

    @Test
    void thePageAnswersAsTheProgram() {
        int found = 0;
        for (Question question : questions()) {
            Answer program = lookup.ask(question);
            JsonNode page = ask(question);
            assertEquals(program.found().stream().map(one -> one.entry().id()).toList(), texts(page.get("ids")),
                    question.toString());
            found += program.found().size();
            for (Trait trait : Trait.values()) {
                List<Integer> counts = new ArrayList<>();
                page.get("counts").get(trait.word()).forEach(count -> counts.add(count.asInt()));
                assertEquals(program.counts().get(trait), counts, question + " " + trait);
            }
            List<Answer.Loosened> loosen = new ArrayList<>();
            page.get("loosen").forEach(part ->
                    loosen.add(new Answer.Loosened(part.get("part").asString(), part.get("found").asInt())));
            assertEquals(program.loosen(), loosen, question.toString());
            List<Answer.Instead> instead = new ArrayList<>();
            page.get("instead").forEach(one ->
                    instead.add(new Answer.Instead(one.get("typed").asString(), texts(one.get("taken")))));
            assertEquals(program.instead(), instead, question.toString());
            assertEquals(question.near().isEmpty(), page.get("de00").isNull());
            for (int at = 0; question.near().isPresent() && at < program.found().size(); at++) {
                OptionalDouble de00 = program.found().get(at).de00();
                assertEquals(de00.isEmpty(), page.get("de00").get(at).isNull());
                assertEquals(de00.orElse(0), page.get("de00").get(at).asDouble(0), 1e-9, question.toString());
            }
        }
        assertTrue(found > 500, "the questions find something: " + found);
    }

    @Test
    void thePageOffersTheSameChoices() {
        for (Trait trait : Trait.values()) {
            JsonNode page = json.readTree((String) browser.script("return JSON.stringify(book.choices[arguments[0]])", trait.word()));
            List<Choice> choices = new ArrayList<>();
            page.forEach(choice -> choices.add(new Choice(choice.get("id").asString(), choice.get("title").asString())));
            assertEquals(lookup.choices(trait), choices);
        }
    }

    private static List<Gist.Part> parts(JsonNode parts) {
        List<Gist.Part> all = new ArrayList<>();
        parts.forEach(part -> all.add(new Gist.Part(part.get("title").asString(), part.get("amount").isNull()
                ? Optional.empty() : Optional.of(part.get("amount").asString()))));
        return all;
    }

    @Test
    void anEntrysCardTellsWhatItsPageTells() {
        Gist gist = new Gist(workings, WORDS);
        Figures figures = new Figures(WORDS);
        List<EntryWorking> entries = lookup.ask(Question.ANY).found().stream().map(Answer.Found::entry).toList();
        JsonNode cards = json.readTree((String) browser.script(
                "return JSON.stringify(Array.from({length: book.size}, (_, i) => book.card(i)))"));
        assertEquals(entries.size(), cards.size());
        for (int i = 0; i < entries.size(); i++) {
            EntryWorking working = entries.get(i);
            JsonNode card = cards.get(i);
            assertEquals(working.id(), card.get("id").asString());
            assertTrue(Files.exists(PublishedBook.ofTheDemo().folder().resolve(card.get("href").asString())));
            assertEquals(working.entry().called(), card.get("title").asString());
            same(working.entry().tag().map(Noted::value), card.get("tag"));
            assertEquals(working.entry().date().toString(), card.get("date").asString());
            assertEquals(figures.date(working.entry().date()), card.get("day").asString());
            same(working.entry().verdict().map(verdict -> verdict.word()), card.get("verdict"));
            same(working.colour().map(colour -> colour.name().name()), card.get("colourName"));
            assertEquals(working.colour().map(colour -> colour.readings().stream().limit(24)
                    .map(reading -> reading.toRgb().hex()).toList()).orElse(List.of()), texts(card.get("readings")));
            same(working.entry().target().flatMap(target -> target.colour().lab()).map(lab -> lab.toRgb().hex()), card.get("target"));
            same(working.needles().lot().flatMap(lot -> workings.lots().stream().filter(one -> one.lot().equals(lot)).findFirst())
                    .flatMap(lot -> lot.colour()).map(bare -> bare.lab().toRgb().hex()), card.get("sheath"));
            same(gist.held(working), card.get("hold"));
            same(gist.evenness(working), card.get("evenness"));
            same(working.needles().lot().map(lot -> lot.called()), card.get("lot"));
            same(working.entry().method().flatMap(id -> workings.method(id.value())).map(method -> method.method().called()),
                    card.get("method"));
            assertEquals(gist.dyes(working), parts(card.get("dyes")));
            assertEquals(gist.acids(working), parts(card.get("acids")));
            Lookup.colour(working).ifPresent(lab -> assertEquals(lab.b(), card.get("lab").get(2).asDouble()));
            assertEquals(working.colour().isEmpty(), card.get("lab").isNull());
        }
    }

    private static void same(Optional<String> expected, JsonNode actual) {
        assertEquals(expected.orElse(null), actual.isNull() ? null : actual.asString());
    }

    @Test
    void thePageFoldsWordsAsTheProgram() throws IOException {
        Path cases = Checkout.root().resolve("generator/src/test/resources/fascicle/book/lookup/folding.txt");
        for (String line : Files.readAllLines(cases)) {
            String[] parts = line.split("\\|", -1);
            String text = UNIT.matcher(parts[0]).replaceAll(unit -> String.valueOf((char) Integer.parseInt(unit.group(1), 16)));
            if (!line.startsWith("#") && text.chars().noneMatch(unit -> Character.isSurrogate((char) unit) && unit == 0xd800)) {
                assertEquals(parts[1], browser.script("return fascicle.words(arguments[0]).join(' ')", text));
                assertEquals(parts[1], String.join(" ", Folding.words(text)));
            }
        }
    }

    @Test
    void thePagesDifferencesAreThePublishedOnes() throws IOException {
        int pairs = 0;
        for (String line : csv("ciede2000.csv")) {
            List<Double> figures = Stream.of(line.split(",")).skip(1).map(Double::valueOf).toList();
            double page = ((Number) browser.script("return fascicle.ciede2000(arguments[0], arguments[1])",
                    figures.subList(0, 3), figures.subList(3, 6))).doubleValue();
            assertEquals(figures.get(6), page, 0.5e-4, line);
            assertEquals(ColourDifference.ciede2000(new Lab(figures.get(0), figures.get(1), figures.get(2)),
                    new Lab(figures.get(3), figures.get(4), figures.get(5))), page, 1e-9);
            pairs++;
        }
        assertEquals(34, pairs);
    }

    @Test
    void thePageReadsScreenColoursAsTheProgram() {
        Random random = new Random(5);
        List<String> colours = new ArrayList<>(List.of("#000", "fff", "#7f4632", "808080", "010101", "0a0a0a", "#0b0B0b"));
        for (int i = 0; i < 200; i++) {
            colours.add("%06x".formatted(random.nextInt(1 << 24)));
        }
        for (String colour : colours) {
            Lab lab = Rgb.read(colour).orElseThrow().toLab();
            List<?> page = (List<?>) browser.script("return fascicle.labOfHex(arguments[0])", colour);
            assertEquals(lab.lightness(), ((Number) page.get(0)).doubleValue(), 1e-9, colour);
            assertEquals(lab.a(), ((Number) page.get(1)).doubleValue(), 1e-9, colour);
            assertEquals(lab.b(), ((Number) page.get(2)).doubleValue(), 1e-9, colour);
        }
        for (String none : List.of("", "#12345", "red", "#7f46321", "#gggggg")) {
            assertEquals(true, browser.script("return fascicle.labOfHex(arguments[0]) === null", none));
        }
    }

    @Test
    void aDifferenceLooksAsOnThePages() {
        Figures figures = new Figures(WORDS);
        for (double difference : new double[] {0, 0.04, 0.05, 0.0499999999, 0.25, 3.795769, 9.95, 99.95, 12.349999}) {
            assertTrue(figures.difference(difference).endsWith(
                    (String) browser.script("return fascicle.tenths(arguments[0])", difference)), String.valueOf(difference));
        }
    }

    private static List<String> csv(String name) throws IOException {
        return Files.readAllLines(Checkout.root().resolve("generator/src/test/resources/fascicle/colour/" + name)).stream()
                .filter(line -> !line.startsWith("#")).skip(1).toList();
    }
}
