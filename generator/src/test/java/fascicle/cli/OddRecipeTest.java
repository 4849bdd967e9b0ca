package fascicle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.notebook.WrittenNotebook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What is odd about a recipe is said wherever the recipe is worked out, and in the same words. */
class OddRecipeTest {

    private static final String BATH = "bath: {vessel: pot, water: 1.8 L, dye: [{is: brick, amount: 1.5 % owf}]}\n";
    private static final String HEAT = "heat: [{to: 85 °C, over: 30 min, hold: 1 h}]\n";

    @TempDir
    private Path folder;

    private Path notebook;

    @BeforeEach
    void write() {
        notebook = folder.resolve("notebook");
        WrittenNotebook.small(notebook)
                .with("vessels.yaml", "pot: {title: Pot, shape: round, diameter: 18 cm, height: 14 cm}\n"
                        + "tub: {title: Tub, shape: round, diameter: 60 cm, height: 60 cm}\n"
                        + "wide-pan: {shape: oval, length: 42 cm, width: 28 cm, height: 12 cm}\n")
                .with("dyes/alum.md", "---\ntitle: Alum\nkind: mordant\nform: powder\nmetal: aluminium\n---\n");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "presoak: {water: 3 L, with: [{is: salt, amount: 20 kg}]} | weighs it: Table salt comes to 44444 % of the needles’ "
                + "weight, where 100 % is the most one expects.",
        "before: [{as: mordant, water: 2 L, with: [{is: alum, amount: 1000 % owf}]}] | weighs it: Alum comes to 1000 % of the "
                + "needles’ weight, where 100 % is the most one expects.",
        "after: [{as: mordant, water: 2 L, with: [{is: alum, amount: 4 kg}]}] | weighs it: Alum comes to 8889 % of the needles’ "
                + "weight, where 100 % is the most one expects.",
        "finish: [{is: salt, amount: 40 kg}] | weighs it: Table salt comes to 88889 % of the needles’ weight, where 2000 % is "
                + "the most one expects.",
        "finish: [{is: white-vinegar, amount: 40 L}] | pours it: White vinegar comes to 889 mL to a gram of needles, where "
                + "200 mL is the most one expects.",
        "cool: 8 days | begins: 8 days, where 7 days is the longest one expects."})
    void whateverBathItStandsIn(String line, String said) throws IOException {
        pot(BATH + HEAT + line + "\n");
        everywhere(List.of("Check this before anyone " + said));
    }

    @Test
    void inTheDyebathAndOnTheSlipOfThoseWhoPour() throws IOException {
        pot("bath: {vessel: tub, water: 1.8 L, dye: [{is: brick, amount: 4000 mL of 10 % stock}]}\n" + HEAT);
        everywhere(List.of("Check this before anyone weighs it: Brick comes to 889 % of the needles’ weight, where 20 % is the "
                + "most one expects."));
        pot("bath: {vessel: pot, water: 1.8 L, dye: [{is: brick, amount: 0.5 mL of 101 % stock}]}\n" + HEAT);
        everywhere(List.of("Check this before anyone makes it: Brick as a stock of 101 %, where 100 % is the strongest one "
                + "expects."));
    }

    /** 100 °C is 212 °F at the sea; what the weather adds is a degree. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "{to: 190 °C, over: 30 min, hold: 1 h} | heats it: 190 °C, where water boils at 100 °C and no open pot gets hotter.",
        "{to: 400 °F, over: 30 min, hold: 1 h} | heats it: 400 °F (204 °C), where water boils at 212 °F (100 °C) and no open "
                + "pot gets hotter.",
        "{to: 101.1 °C, over: 30 min, hold: 1 h} | heats it: 101 °C, where water boils at 100 °C and no open pot gets hotter.",
        "{to: -300 °C, over: 30 min, hold: 1 h} | heats it: −300 °C, where a bath is ice.",
        "{to: 85 °C, over: 30 min, hold: 400 h} | begins: 400 h, where 1 day is the longest one expects."})
    void heatThatNoPotHasAndTimeThatNobodyTakes(String step, String said) throws IOException {
        pot(BATH + "heat: [" + step + "]\n");
        everywhere(List.of("Check this before anyone " + said));
        Document page = page();
        assertEquals(List.of("Check this before anyone " + said), page.select("p, li").eachText().stream()
                .map(OddRecipeTest::plain).filter(OddRecipeTest::isCheck).distinct().toList());
        assertEquals(2, page.select("p, li").eachText().stream().filter(OddRecipeTest::isCheck).count(),
                "at the table and at the clock");
    }

    @Test
    void whatIsOddTwiceIsSaidOnceAndOfEveryWeight() throws IOException {
        pot(BATH + "heat: [{to: 190 °C, over: 30 min, hold: 1 h}, {to: 190 °C, over: 20 min, hold: 1 h}]\n");
        String said = "Check this before anyone heats it: 190 °C, where water boils at 100 °C and no open pot gets hotter.";
        assertEquals(List.of(said), scaled("45 g").lines().map(OddRecipeTest::plain).filter(OddRecipeTest::isCheck).toList());
        assertEquals(List.of(said), page().select("li").eachText().stream().map(OddRecipeTest::plain)
                .filter(OddRecipeTest::isCheck).toList());
    }

    @ParameterizedTest
    @CsvSource({"100.9 °C, 24 h", "0 °C, 1 h", "212 °F, 1439 min"})
    void whatMayBeIsNotQuestioned(String to, String hold) throws IOException {
        pot(BATH + "heat: [{to: " + to + ", over: 30 min, hold: " + hold + "}]\n");
        everywhere(List.of());
    }

    @Test
    void upThereWaterBoilsSooner() throws IOException {
        WrittenNotebook.empty(notebook).with("notebook.yaml", "form: 1\ntitle: Up here\nkitchen: metric\nheight: 1400 m\n");
        pot(BATH + "heat: [{to: 98 °C, over: 30 min, hold: 1 h}]\n");
        everywhere(List.of("Check this before anyone heats it: 98 °C, where water boils at 95.4 °C and no open pot gets hotter."));
    }

    /** What a practitioner tells of a small pot: common practice, no source. */
    @Test
    void aPractitionersPotIsNotQuestioned() throws IOException {
        WrittenNotebook.empty(notebook).with("dyes/sunset.md", "---\nkind: dye\nform: liquid\n---\n");
        pot("presoak: {water: 8 L, with: [{is: white-vinegar, amount: 1 cup}], for: 1 h}\nbath: {vessel: pot, depth: 3 in, "
                + "dye: [{is: sunset, amount: 2 tsp}], assistants: [{is: salt, amount: 1/4 cup}]}\n" + HEAT + "cool: overnight\n");
        everywhere(List.of());
    }

    /** 3/4 of π · 9² · 14 is 2672 mL, and 42 mL go to a gram: 63.617 g in a pot, and 3817.03 g in sixty. */
    @Test
    void moreThanSixtyPotsNobodyFills() throws IOException {
        pot(BATH + HEAT);
        assertFalse(scaled("3817 g").contains("Check the weight"), "60 pots");
        assertTrue(plain(scaled("3818 g")).contains("Check the weight: this would take 61 pots, where nobody fills more than 60 "
                + "in a day."), scaled("3818 g"));
        assertFalse(Call.of("scale", notebook, "2026-05-09-pot", "--needles", "3818 g", "--vessel", "tub").out()
                .contains("Check the weight"));
        Call plan = Call.of("plan", notebook, "2026-05-09-pot", "--each", "3818 g");
        assertTrue(plan.err().contains("This would take 61 pots, more than 60"), plan.err());
    }

    private void pot(String lines) {
        WrittenNotebook.empty(notebook).with("days/2026-05-09/pot.md", "---\nneedles: {lot: scalded-2025, weight: 45 g}\n"
                + lines + "---\n");
    }

    private String scaled(String weight) {
        return Call.of("scale", notebook, "2026-05-09-pot", "--needles", weight).out();
    }

    /** By the command, in the table and the form of the page, and on the sheet, the data and the slip of a planned day. */
    private void everywhere(List<String> expected) throws IOException {
        assertEquals(expected, checks(scaled("45 g").lines()), "scale");
        Document page = page();
        assertEquals(expected, checks(page.select("li").eachText().stream()), "table");
        JsonNode doses = JsonMapper.shared().readTree(page.select("[data-doses]").attr("data-doses"));
        assertEquals(expected, checks(doses.get("odd").valueStream().map(JsonNode::asString)), "form");
        Path day = folder.resolve("day");
        Call plan = Call.of("plan", notebook, "2026-05-09-pot", "--each", "20 g", "--people", "2", "--to", day);
        assertEquals(expected, checks(plan.out().lines()), plan.said());
        assertEquals(expected, checks(Jsoup.parse(Files.readString(day.resolve("plan.html"))).select("li").eachText().stream()),
                "sheet");
        assertEquals(expected, checks(Jsoup.parse(Files.readString(day.resolve("slip.html"))).select("p").eachText().stream()),
                "slip");
    }

    private Document page() throws IOException {
        Path book = folder.resolve("book");
        Call.of("publish", notebook, "--edition", "studio", "--to", book).ends(0);
        return Jsoup.parse(Files.readString(book.resolve("entries/2026-05-09-pot.html")));
    }

    private static List<String> checks(Stream<String> lines) {
        return lines.map(OddRecipeTest::plain).filter(OddRecipeTest::isCheck).distinct().toList();
    }

    private static boolean isCheck(String line) {
        return line.contains("Check this before");
    }

    private static String plain(String line) {
        return line.strip().replace('\u202f', ' ');
    }
}
