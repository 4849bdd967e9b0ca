package fascicle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What whoever makes up a pot must read where it is made up: when, how much, out of what. Worked by hand throughout. */
class AtThePotTest {

    @TempDir
    private Path folder;

    private DyeSchool school;

    @BeforeEach
    void write() {
        school = DyeSchool.in(folder)
                .with("dyes/skins.md", "---\ntitle: Onion skins\nkind: dye\nform: plant\n---\n")
                .with("vessels.yaml", "pan: {title: Pan, shape: oval, length: 42 cm, width: 28 cm, height: 12 cm, made-of: "
                        + "enamel}\nwide-pan: {shape: round, diameter: 30 cm, height: 20 cm}\n");
    }

    private void inTwoPours() {
        school.method("late", """
                bath:
                  vessel: pan
                  water: 3 L
                  dye: [{is: rain-blue, amount: 20 mL}]
                  assistants: [{is: white-vinegar, amount: 60 mL}, {is: white-vinegar, amount: 40 mL, at: 30 min}]
                heat: [{to: 88 °C, over: 30 min, hold: 1 h}]
                """);
    }

    private static String plain(String text) {
        return text.replace('\u202f', ' ');
    }

    @Test
    void whatIsAddedLaterSaysSoWhereThePotIsMadeUp() throws IOException {
        inTwoPours();
        assertEquals(List.of("Bath: Water: 3000 mL · Rain blue: 20 mL · White vinegar: 60 mL · White vinegar, added at 30 min: "
                + "40 mL"), school.slips("late", "--each", "25g", "--people", "2"));
        String table = school.page("plan.html", "late", "--each", "25g", "--people", "2").select(".measures").first().text();
        assertTrue(table.contains("White vinegar 60 mL White vinegar, added at 30 min 40 mL"), table);
        String scaled = plain(Call.of("scale", school.notebook(), "late", "--needles", "100g").ends(0).out());
        assertTrue(scaled.contains("  White vinegar: 120 mL\n  White vinegar, added at 30 min: 80 mL\n"), scaled);
    }

    @Test
    void aSolutionForALateAdditionIsNotTakenForThatOfTheStart() {
        school.method("twice", """
                bath: {vessel: pan, water: 3 L, dye: [{is: brick, amount: 2 % owf}, {is: brick, amount: 1 % owf, at: 1 h}]}
                heat: [{to: 88 °C, over: 30 min, hold: 1 h}]
                """);
        String told = school.said("twice", "--each", "25g", "--people", "2");
        assertTrue(told.contains("Made ahead by the teacher: Brick, 1 g dissolved"), told);
        assertTrue(told.contains("Made ahead by the teacher: Brick, added at 1 h, 1 g dissolved"), told);
        JsonNode solutions = school.planned("twice", "--each", "25g", "--people", "2")
                .get("methods").get(0).get("solutions");
        assertTrue(solutions.get(0).get("at_minutes").isNull());
        assertEquals(60, solutions.get(1).get("at_minutes").asDouble());
    }

    @Test
    void dataTellWhenInMinutesAndAsWritten() throws IOException {
        inTwoPours();
        JsonNode scaled = JsonMapper.shared().readTree(
                Call.of("scale", school.notebook(), "late", "--needles", "100g", "--json").ends(0).out());
        JsonNode first = scaled.get("parts").get(1);
        JsonNode later = scaled.get("parts").get(2);
        assertTrue(first.get("at").isNull() && first.get("at_minutes").isNull(), "in from the start");
        assertEquals("30 min", later.get("at").asString());
        assertEquals(30, later.get("at_minutes").asDouble());
        school.with("days/2026-05-09/pot.md", "---\nneedles: {weight: 40 g}\nbath: {water: 2 L, assistants: [{is: "
                + "white-vinegar, amount: 20 mL, at: overnight}]}\n---\n");
        Path book = folder.resolve("book");
        Call.of("publish", school.notebook(), "--to", book).ends(0);
        JsonNode entry = JsonMapper.shared().readTree(Files.readString(book.resolve("data/book.json"))).get("entries").get(0);
        JsonNode night = entry.get("bath").get("assistants").get(0);
        assertEquals("overnight", night.get("at").asString());
        assertTrue(night.get("at_minutes").isNull(), "a night has no length of its own");
        String page = Jsoup.parse(Files.readString(book.resolve("entries/2026-05-09-pot.html"))).select(".measures").text();
        assertTrue(page.contains("White vinegar, added after a night"), page);
    }

    @Test
    void aClassGetsADyeThatIsLeftOpenAsASolution() throws IOException {
        school.method("open", "bath: {vessel: pan, water: 3 L, assistants: [{is: white-vinegar, amount: 60 mL}]}\n");
        String told = school.said("open", "--each", "15g", "--people", "8");
        assertTrue(told.contains("The teacher brings the dye that is not named here as a solution, made ahead with a fitted "
                + "particle mask and goggles on, by the pack’s label."), told);
        assertTrue(told.contains("A fitted particle mask and goggles for the teacher, who makes the dye solution"),
                told);
        assertTrue(told.contains("No dye is named here: the teacher brings it as a solution, made ahead, and as much less "
                + "water is poured into each pot."), told);
        assertFalse(told.contains("weigh one for the needles"), "nobody in a class weighs a powder: " + told);
        String slip = school.slips("open", "--each", "15g", "--people", "8").get(0);
        assertTrue(slip.endsWith("______ mL of the solution that the teacher made; pour as much less water"), slip);
        String alone = school.said("open", "--each", "15g");
        assertTrue(alone.contains("or weigh one for the needles of each pot"), alone);
        assertFalse(alone.contains("The teacher") || alone.contains("for the teacher"), alone);
    }

    @Test
    void aMordantAloneLeavesNoDyeOpen() throws IOException {
        school.with("dyes/alum.md", "---\ntitle: Alum\nkind: mordant\nform: crystals\nmetal: aluminium\nlabel: {says: []}\n"
                + "---\n");
        school.method("mordant", "before: [{as: mordant, water: 2 L, with: [{is: alum, amount: 10 % owf}]}]\n");
        assertFalse(school.said("mordant", "--each", "15g", "--people", "4").contains("No dye is named"), "there is no dyebath");
        assertFalse(school.page("slip.html", "mordant", "--each", "15g", "--people", "4").text().contains("Dye: ____"));
    }

    /** 62 mL and 2 mL of room to a gram, and 8313 mL in the pan: 200 g take two, 100 g in each. */
    @Test
    void aPartedBundleIsWeighedByItsParts() throws IOException {
        school.method("parted", "bath: {vessel: pan, ratio: 62, dye: [{is: rain-blue, amount: 20 mL}]}\n");
        Document slips = school.page("slip.html", "parted", "--each", "200g");
        assertEquals(List.of("One pot, in Pan, 58 % full, 6.9 cm deep with the needles: 100 g of needles; one bundle takes more than one pot",
                "One pot, in Pan, 58 % full, 6.9 cm deep with the needles: 100 g of needles; one bundle takes more than one pot"),
                slips.select(".slip > p:first-of-type").eachText());
        assertEquals(List.of("100 g of a bundle of 200 g", "100 g of a bundle of 200 g"),
                slips.select(".slip > table:last-of-type tbody th").eachText());
        assertTrue(school.said("parted", "--each", "200g").contains("2 tags and string"), "a tag for each part");
    }

    /** 2 % of 30 g are 0.6 g, six steps of the balance: 60 mL of 1 %, for which ten steps make 100 mL. */
    @Test
    void aStockToMakeIsToldOnTheSlip() throws IOException {
        school.method("weak", "bath: {vessel: pan, water: 2 L, dye: [{is: brick, amount: 2 % owf}]}\n");
        Element slip = school.page("slip.html", "weak", "--each", "30g").selectFirst(".slip");
        assertTrue(slip.text().contains("Brick: 0.6 g, or 60 mL of 1 % stock"), slip.text());
        assertTrue(slip.text().contains("A stock of 1 %: 1 g dissolved in water and filled up to 100 mL, or a multiple of that, "
                + "and labelled. Pour as much less water into the pot as you take of it."), slip.text());
    }

    @Test
    void ofASolutionMadeAheadTheSlipSaysThatTheWaterIsAlreadyLess() throws IOException {
        school.method("weak", "bath: {vessel: pan, water: 2 L, dye: [{is: brick, amount: 2 % owf}]}\n");
        String slip = school.page("slip.html", "weak", "--each", "15g", "--people", "2").selectFirst(".slip").text();
        assertTrue(slip.contains("The water here is already less by the solutions whose mL are printed."), slip);
        assertFalse(slip.contains("dissolved in water and filled up"), "the teacher made it: " + slip);
    }

    @Test
    void whatCannotBeRightIsSaidAtThePotAndWhatWasSettledIsNot() throws IOException {
        school.method("absurd", "bath: {vessel: pan, ratio: 60, dye: [{is: brick, amount: 4 kg}]}\n");
        String absurd = school.page("slip.html", "absurd", "--each", "15g").selectFirst(".slip").text();
        assertTrue(absurd.contains("Check this before anyone weighs it"), absurd);
        school.method("deep", "bath: {vessel: pan, depth: 5 cm, dye: [{is: rain-blue, amount: 20 mL}]}\n");
        assertTrue(school.said("deep", "--each", "10g").contains("Expect it paler"));
        String deep = school.page("slip.html", "deep", "--each", "10g").selectFirst(".slip").text();
        assertFalse(deep.contains("Expect it paler"), deep);
    }

    /** 1 % of 150 g are 1.5 g, which the balance tells; in two pots 0.75 g each, which it does not. */
    @Test
    void whatEachPotOfASplitBatchGetsIsInTheDataToo() throws IOException {
        school.method("split", "bath: {vessel: pan, ratio: 62, dye: [{is: brick, amount: 1 % owf}]}\n");
        JsonNode scaled = JsonMapper.shared().readTree(
                Call.of("scale", school.notebook(), "split", "--needles", "150g", "--json").ends(0).out());
        assertEquals(1.5, scaled.get("parts").get(0).get("g").asDouble(), 1e-9);
        assertTrue(scaled.get("parts").get(0).get("stock").isNull(), "15 steps of the balance");
        JsonNode pot = scaled.get("each_pot").get(0);
        assertEquals(2, pot.get("pots").asInt());
        JsonNode quantities = pot.get("quantities");
        assertEquals(75, quantities.get("needles_g").asDouble());
        assertEquals(4650, quantities.get("liquor_ml").asDouble(), 1e-9);
        assertEquals(0.75, quantities.get("parts").get(0).get("g").asDouble(), 1e-9);
        assertEquals(75, quantities.get("parts").get(0).get("stock").get("ml").asDouble(), 1e-9);
        String said = plain(Call.of("scale", school.notebook(), "split", "--needles", "150g").ends(0).out());
        assertTrue(said.contains("Brick: 1.5 g; each pot 0.75 g, or 75 mL of 1 % stock"), said);
        JsonNode single = JsonMapper.shared().readTree(
                Call.of("scale", school.notebook(), "split", "--needles", "50g", "--json").ends(0).out());
        assertEquals(0, single.get("each_pot").size(), "one pot has the totals");
    }

    @Test
    void cautionsAreReadBeforeAnythingIsWeighed() throws IOException {
        inTwoPours();
        List<String> headings = school.page("plan.html", "late", "--each", "25g", "--people", "2").select("h2").eachText();
        assertEquals(List.of("Lay out", "Caution", "Weigh and measure"), headings.subList(0, 3));
    }

    @Test
    void aPlantIsStrained() {
        school.method("skins", "bath: {vessel: pan, water: 3 L, dye: [{is: skins, amount: 100 % owf}], extract: {of: 50 g, water: "
                + "2 L}}\n");
        String told = school.said("skins", "--each", "50g");
        assertTrue(told.contains("To draw out the plant of skins: a pot, a strainer or a cloth, and a vessel for what is "
                + "strained off, 2000 mL at most"), told);
        String shared = school.said("skins", "--each", "50g", "--people", "4");
        assertTrue(shared.contains("a vessel for what is strained off, 2 × 4000 mL at most"), shared);
        school.method("poured", "bath: {vessel: pan, water: 3 L, dye: [{is: rain-blue, amount: 20 mL}]}\n");
        assertFalse(school.said("poured", "--each", "50g").contains("strainer"));
    }

    /** Of 100 g bought 1 g was used, and a pinch: what is left is 99 g at most. */
    @Test
    void whatIsNotKnownReadsAsASentence() {
        school.with("dyes/brick.md", "---\ntitle: Brick\nkind: dye\nform: powder\nlabel: {says: []}\n"
                        + "pack: {holds: 50 g}\nbought: [{on: 2026-01-01, packs: 2}]\n---\n")
                .with("days/2026-05-09/pot.md", "---\nneedles: {weight: 40 g}\nbath: {vessel: pan, water: 2 L, dye: [{is: brick, "
                        + "amount: 1 g}, {is: brick, amount: a pinch}]}\n---\n");
        school.method("weak", "bath: {vessel: pan, water: 2 L, dye: [{is: brick, amount: 2 % owf}, {is: rain-blue, amount: a "
                + "splash}]}\n");
        String told = school.said("weak", "--each", "50g");
        assertTrue(told.contains("Brick: 1 g needed, at most 99 g on the shelf"), told);
        assertTrue(told.contains("Rain blue: how much it takes is not known, how much there is is not known"), told);
        assertFalse(told.contains("not known needed") || told.contains("not known; at most"), told);
    }
}
