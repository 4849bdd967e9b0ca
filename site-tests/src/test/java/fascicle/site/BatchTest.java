package fascicle.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.book.batch.BatchSheet;
import fascicle.book.batch.BatchWords;
import fascicle.book.caution.CautionWords;
import fascicle.book.words.Words;
import fascicle.measure.Kitchen;
import fascicle.notebook.Entry;
import fascicle.notebook.Method;
import fascicle.notebook.Recipe;
import fascicle.notebook.Vessel;
import fascicle.notebook.read.NotebookReader;
import fascicle.workings.Measuring;
import fascicle.workings.Scaled;
import fascicle.workings.Workings;
import fascicle.workings.care.Care;
import fascicle.workings.care.Uses;
import fascicle.workings.proof.Proofreading;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import tools.jackson.databind.json.JsonMapper;

/** What a page works out for a typed weight is what {@code fascicle scale} works out: the same words, to the last digit. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BatchTest {

    private static final Words WORDS = Words.shipped();

    /** Sheets of one recipe for many weights, vessels and kitchens. */
    private static final String ASK =
            """
            const doses = JSON.parse(arguments[0]);
            const batch = self.fascicleBatch;
            return JSON.stringify(JSON.parse(arguments[1]).map(([grams, vessel, kitchen]) => {
              const found = batch.reckon(doses, grams, batch.vessels.find(one => one.id === (vessel || doses.vessel)));
              return { pots: batch.potsIn(found), remarks: batch.remarks(found, doses),
                       rows: batch.rows(found, kitchen).map(row => [row.step, row.thing, row.whole, row.each,
                                                             row.whole.length ? '' : row.written || '']) };
            }));
            """;

    private record Asked(double grams, String vessel, String kitchen) {
        List<Object> asList() {
            return List.of(grams, vessel, kitchen);
        }
    }

    private final JsonMapper json = JsonMapper.shared();
    private Browser browser;

    @BeforeAll
    void open() {
        browser = Browser.open(Browser.PHONE);
    }

    @AfterAll
    void close() {
        if (browser != null) {
            browser.close();
        }
    }

    @Test
    void in_the_demonstration(@TempDir Path folder) throws IOException {
        assertEquals(List.of(), disagreements(Checkout.root().resolve("content"), PublishedBook.ofTheDemo(), folder));
    }

    @Test
    void where_everything_is_measured_differently(@TempDir Path folder) throws IOException {
        Path notebook = MeasuredNotebook.write(folder.resolve("notebook"));
        PublishedBook book = PublishedBook.publish(notebook, folder.resolve("book"));
        assertEquals(List.of(), disagreements(notebook, book, folder));
    }

    private List<String> disagreements(Path notebook, PublishedBook book, Path folder) throws IOException {
        NotebookReader.Result read = NotebookReader.read(notebook);
        Workings workings = Workings.of(Proofreading.of(read.notebook(), read.findings()).notebook());
        Path page = Files.writeString(folder.resolve("page.html"), "<!doctype html><meta charset='utf-8'><title>page</title>"
                + "<script src='" + book.file("data/batch.js").toUri() + "'></script><script>"
                + "const known = self.fascicleBatch</script><script src='" + book.file("scripts/batch.js").toUri()
                + "'></script><script>Object.assign(self.fascicleBatch, {vessels: known.vessels})</script>");
        browser.show(page);
        assertEquals(List.of(), browser.complaints());
        List<Asked> questions = questions(workings);
        List<String> wrong = new ArrayList<>();
        for (String address : recipes(book)) {
            String id = address.substring(address.indexOf('/') + 1, address.length() - ".html".length());
            String doses = book.page(address).select("[data-doses]").attr("data-doses");
            Object reply = browser.script(ASK, doses,
                    json.writeValueAsString(questions.stream().map(Asked::asList).toList()));
            List<String> theirs = json.readTree((String) reply).valueStream().map(Object::toString).toList();
            for (int i = 0; i < questions.size(); i++) {
                String ours = json.readTree(json.writeValueAsString(answer(workings, id, questions.get(i)))).toString();
                if (!ours.equals(theirs.get(i)) && wrong.size() < 5) {
                    wrong.add(id + " " + questions.get(i) + "\n" + ours + "\n" + theirs.get(i));
                }
            }
        }
        return wrong;
    }

    private static List<String> recipes(PublishedBook book) {
        List<String> recipes = book.files().stream()
                .filter(address -> address.startsWith("entries/") || address.startsWith("methods/"))
                .filter(address -> address.endsWith(".html") && !book.page(address).select("[data-doses]").isEmpty())
                .toList();
        assertTrue(recipes.size() > 5, recipes.toString());
        return recipes;
    }

    private static List<Asked> questions(Workings workings) {
        Random random = new Random(41);
        List<String> vessels = Stream.concat(Stream.of(""), workings.notebook().vessels().stream().map(Vessel::id)).toList();
        List<Asked> questions = new ArrayList<>();
        for (double grams : List.of(15.0, 120.0, 4 * 28.349523125, 0.7, 2500.0, 90_000.0, 1 + 400 * random.nextDouble())) {
            for (int i = 0; i < 3; i++) {
                questions.add(new Asked(grams, vessels.get(random.nextInt(vessels.size())),
                        Kitchen.values()[random.nextInt(3)].key()));
            }
        }
        return questions;
    }

    private record Answered(String pots, List<String> remarks, List<List<Object>> rows) {}

    private static Answered answer(Workings workings, String id, Asked asked) {
        Optional<Vessel> vessel = workings.notebook().vessels().stream().filter(one -> one.id().equals(asked.vessel()))
                .findFirst();
        Measuring measuring = workings.measuring().in(Kitchen.named(asked.kitchen()).orElseThrow());
        Scaled scaled = workings.scale(id, asked.grams(), vessel).orElseThrow();
        BatchWords words = new BatchWords(measuring, WORDS);
        Stream<String> ofTheVessel = vessel(workings, scaled).flatMap(pot -> CautionWords.pot(pot, WORDS).stream());
        return new Answered(words.pots(scaled).orElse(""), Stream.concat(ofTheVessel, words.remarks(scaled).stream()).toList(),
                BatchSheet.of(scaled, measuring, WORDS).lines().stream()
                        .map(line -> List.<Object>of(line.bath().orElse(""), line.row().thing(), line.row().whole(),
                                line.row().each(), line.row().whole().isEmpty() ? line.row().written().orElse("") : ""))
                        .toList());
    }

    /** What care the command takes of the vessel that a batch is worked out for. */
    private static Stream<Uses.Pot> vessel(Workings workings, Scaled scaled) {
        Recipe recipe = workings.notebook().entry(scaled.of()).map(Entry::recipe)
                .or(() -> workings.notebook().method(scaled.of()).map(Method::recipe)).orElseThrow();
        return Care.of(workings.notebook()).uses(recipe, scaled.vessel()).pots().stream();
    }

    @Test
    void the_vessel_chosen_is_warned_of() {
        browser.show(PublishedBook.ofTheDemo().file("methods/slow-simmer.html"));
        browser.driver().findElement(By.cssSelector("details.batch summary")).click();
        browser.until("return document.querySelector('.batch-rows tr') !== null");
        assertFalse(shown(".batch-remarks").contains("pot: "), shown(".batch-remarks"));
        choose("bin");
        assertTrue(shown(".batch-remarks").startsWith("Presoak bin: plastic softens on a stove"), shown(".batch-remarks"));
        choose("jar");
        assertTrue(shown(".batch-remarks").startsWith("Three-litre jar: glass cracks on a stove"), shown(".batch-remarks"));
        choose("iron-pan");
        assertTrue(shown(".batch-remarks").startsWith("Old iron pan: the iron takes part in the bath and saddens colours. "
                + "Acid draws out more of the metal."), shown(".batch-remarks"));
        browser.screenshot("batch-vessel");
    }

    /** By hand: 50 mL/g and 2 mL/g of room for 15 g are 780 mL, on an oval of 42 by 28 cm, 923.6 cm²: 0.84 cm. */
    @Test
    void a_puddle_is_called_one() {
        browser.show(PublishedBook.ofTheDemo().file("methods/slow-simmer.html"));
        browser.driver().findElement(By.cssSelector("details.batch summary")).click();
        browser.until("return document.querySelector('.batch-rows tr') !== null");
        browser.driver().findElement(By.name("weight")).sendKeys(Keys.chord(Keys.CONTROL, "a"), "15");
        choose("wide-pan");
        assertEquals("Wide pan, 7 % full, 0.8 cm deep with the needles", shown(".batch-pots"));
        assertTrue(shown(".batch-remarks").contains("It stands only 0.8 cm deep in this vessel: needles lie bare"),
                shown(".batch-remarks"));
        choose("small-pot");
        assertFalse(shown(".batch-remarks").contains("It stands only"), "3.1 cm");
    }

    private void choose(String vessel) {
        browser.driver().findElement(By.cssSelector("select[name=vessel] option[value=" + vessel + "]")).click();
    }

    @Test
    void a_weight_is_typed_and_a_vessel_chosen() {
        Path page = PublishedBook.ofTheDemo().file("methods/slow-simmer.html");
        browser.show(page);
        WebElement fold = browser.driver().findElement(By.cssSelector("details.batch summary"));
        fold.click();
        browser.until("return document.querySelector('.batch-rows tr') !== null");
        assertEquals("Small blue pot", browser.script("return document.querySelector('[name=vessel]').selectedOptions[0].text"),
                "the recipe's own vessel");
        WebElement weight = browser.driver().findElement(By.name("weight"));
        weight.sendKeys(Keys.chord(Keys.CONTROL, "a"), "400");
        // By hand: 50 mL/g; the little pot takes 2.67 L, needles and all, so eight of them.
        assertTrue(shown(".batch-pots").startsWith("8 × Small blue pot"), shown(".batch-pots"));
        assertTrue(shown(".batch-rows").contains("20000 mL"), shown(".batch-rows"));
        browser.driver().findElement(By.cssSelector("select[name=vessel] option[value=stock-pot]")).click();
        assertTrue(shown(".batch-pots").startsWith("3 × Stock pot"), shown(".batch-pots"));
        browser.script("document.querySelector('details.batch').scrollIntoView(); return true");
        browser.screenshot("batch");
        weight.sendKeys(Keys.chord(Keys.CONTROL, "a"), "1,500");
        assertTrue(browser.driver().findElement(By.cssSelector(".batch-wrong")).isDisplayed());
        assertEquals("true", weight.getDomAttribute("aria-invalid"));
        weight.sendKeys(Keys.chord(Keys.CONTROL, "a"), "1000000");
        assertEquals("false", weight.getDomAttribute("aria-invalid"));
        weight.sendKeys(Keys.chord(Keys.CONTROL, "a"), "1000001");
        assertEquals("true", weight.getDomAttribute("aria-invalid"), "more than a ton, as the command says too");
        assertEquals("batch-wrong", weight.getDomAttribute("aria-describedby"));
        browser.screenshot("batch-wrong");
        assertEquals(List.of(), browser.complaints());
        assertEquals(0, browser.sidewaysScroll());
    }

    @Test
    void weights_are_read_to_the_last_digit() {
        browser.show(PublishedBook.ofTheDemo().file("methods/slow-simmer.html"));
        browser.driver().findElement(By.cssSelector("details.batch summary")).click();
        browser.until("return document.querySelector('.batch-rows tr') !== null");
        String read = Stream.of("4", "0.1", "3.3", ".5", "2,5", "1,500", "-4", "four", "1e3", "")
                .map(typed -> String.valueOf(browser.script(
                        "return String(self.fascicleBatch.gramsOf(arguments[0], '28349523125'))", typed)))
                .collect(Collectors.joining(" "));
        assertEquals(Stream.of(4, 0.1, 3.3, .5, 2.5).map(ounces -> new java.math.BigDecimal("28.349523125")
                        .multiply(new java.math.BigDecimal(ounces.toString())).stripTrailingZeros().doubleValue())
                .map(grams -> String.valueOf(browser.script("return String(arguments[0])", grams)))
                .collect(Collectors.joining(" ")) + " NaN NaN NaN NaN NaN", read);
    }

    private String shown(String selector) {
        return browser.driver().findElement(By.cssSelector(selector)).getText().replace('\u202f', ' ');
    }
}
