package fascicle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/** What students and their teacher must not read wrongly on a planned day. Worked by hand throughout. */
class ClassDayTest {

    @TempDir
    private Path folder;

    private DyeSchool school;

    @BeforeEach
    void write() {
        school = DyeSchool.in(folder)
                .with("needles/plenty.md", "---\ntitle: Plenty\nweight: 180 g\ngathered: 2026-01-01\n---\n")
                .with("dyes/fixer.md", "---\ntitle: Fixer\nkind: other\nform: powder\n---\n")
                .with("dyes/wax.md", "---\ntitle: Wax powder\nkind: other\nform: powder\nlabel: {says: []}\n---\n")
                .with("dyes/iron-water.md", "---\ntitle: Iron water\nkind: mordant\nform: liquid\nmetal: iron\n---\n");
    }

    @Test
    void twoBathsOfOneNameAreTwoBaths() throws IOException {
        school.method("iron-twice", """
                before: [{as: iron, water: 1 L, with: [{is: iron-water, amount: 10 mL}]}]
                bath: {vessel: wide-pan, water: 2 L, dye: [{is: rain-blue, amount: 20 mL}]}
                after: [{as: iron, water: 2 L, with: [{is: iron-water, amount: 40 mL}]}]
                """);
        assertEquals(List.of("Iron, before the dyebath: Water: 1000 mL · Iron water: 10 mL",
                        "Bath: Water: 2000 mL · Rain blue: 20 mL",
                        "Iron, after the dyebath: Water: 2000 mL · Iron water: 40 mL"),
                school.slips("iron-twice", "--each", "25g", "--people", "2"));
        String told = school.said("iron-twice", "--each", "25g", "--people", "2");
        assertTrue(told.contains("Iron water, Iron, before the dyebath: 10 mL"), told);
        assertTrue(told.contains("Iron water, Iron, after the dyebath: 40 mL"), told);
        assertTrue(told.contains("A vessel for each pot of iron-twice: Iron, after the dyebath, 2040 mL"), told);
        assertEquals(2, told.split("Out of the bath: Iron", -1).length - 1, "twice into iron, twice out of it: " + told);
        assertFalse(told.contains("A, A"), told);
        assertTrue(Call.of("scale", school.notebook(), "iron-twice", "--needles", "50g").ends(0).out()
                .replace('\u202f', ' ').contains("""
                        Iron, before the dyebath
                          Water: 1000 mL
                          Iron water: 10 mL
                        Iron, after the dyebath
                          Water: 2000 mL
                          Iron water: 40 mL
                        """));
    }

    @Test
    void bathsOfOneNameInARowAreCounted() throws IOException {
        school.method("rinses", """
                bath: {vessel: wide-pan, water: 2 L, dye: [{is: rain-blue, amount: 20 mL}]}
                after: [{water: 1 L}, {water: 2 L}, {as: iron, water: 3 L}]
                """);
        assertEquals(List.of("Bath: Water: 2000 mL · Rain blue: 20 mL", "Treatment 1, after the dyebath: Water: 1000 mL",
                        "Treatment 2, after the dyebath: Water: 2000 mL", "Iron: Water: 3000 mL"),
                school.slips("rinses", "--each", "50g"));
    }

    /** Two methods of 120 g each on a lot of 180 g: either has enough, both have not. */
    @Test
    void aLotIsPromisedOnce() {
        String rest = "needles: {lot: plenty}\nbath: {vessel: wide-pan, water: 2 L, dye: [{is: rain-blue, amount: 20 mL}]}\n";
        school.method("blue", rest);
        school.method("rain", rest);
        String told = school.said("blue", "rain", "--each", "15g", "--people", "8");
        assertTrue(told.contains("A, B from Plenty: 240 g of dry needles, but only 180 g left"), told);
        assertTrue(told.contains("No other lot is known to have enough for A, B (240 g); mix lots"), told);
        JsonNode needles = school.planned("blue", "rain", "--each", "15g", "--people", "8").get("needles");
        assertEquals(1, needles.size());
        assertEquals("[\"A\",\"B\"]", needles.get(0).get("for").toString());
        assertEquals(240, needles.get(0).get("needed_g").asDouble());
        assertEquals(180, needles.get(0).get("left_g").asDouble());
        assertFalse(needles.get(0).get("enough").asBoolean());
        assertTrue(school.said("blue", "rain", "--each", "10g", "--people", "8")
                .contains("A, B from Plenty: 160 g of dry needles, 180 g left"));
    }

    private static final String RAIN = "bath: {vessel: wide-pan, water: 2 L, dye: [{is: rain-blue, amount: 20 mL}]}\n";

    /** 120 g for blue are Plenty's own; the 120 g for rain are not there beside them, but in Another of 130 g. */
    @Test
    void onlyNeedlesThatNoMethodNamesAreLookedFor() {
        school.with("needles/another.md", "---\ntitle: Another\nweight: 130 g\ngathered: 2026-01-01\n---\n");
        school.method("blue", "needles: {lot: plenty}\n" + RAIN);
        school.method("rain", RAIN);
        String told = school.said("blue", "rain", "--each", "15g", "--people", "8");
        assertTrue(told.contains("A from Plenty: 120 g of dry needles, 180 g left"), told);
        assertTrue(told.contains("Lots with enough for B (120 g): Another (130 g left)\n"), told);
        assertTrue(school.said("rain", "--each", "25g", "--people", "8").contains("No lot is known to have enough for everyone; mix lots"),
                "and of no condition, since none was asked for");
    }

    /** Scalded needles take dye otherwise than fallen ones: 100 g scalded are not replaced by 300 g fallen. */
    @Test
    void aLotIsReplacedByItsLike() {
        school.with("needles/few.md", "---\ntitle: Few\ncondition: scalded\nweight: 100 g\ngathered: 2026-01-01\n---\n")
                .with("needles/many.md", "---\ntitle: Many\ncondition: fallen\nweight: 300 g\ngathered: 2026-01-01\n---\n");
        school.method("blue", "needles: {lot: few}\n" + RAIN);
        assertTrue(school.said("blue", "--each", "15g", "--people", "8")
                .contains("No other lot of the same condition is known to have enough for A (120 g)"));
        school.with("needles/like.md", "---\ntitle: Like\ncondition: scalded\nweight: 120 g\ngathered: 2026-01-01\n---\n");
        assertTrue(school.said("blue", "--each", "15g", "--people", "8")
                .contains("Other lots of the same condition with enough for A (120 g): Like (120 g left)\n"));
    }

    @Test
    void lotsStandInTheOrderOfTheMethods() {
        school.with("needles/another.md", "---\ntitle: Another\nweight: 100 g\n---\n");
        String bath = "\nbath: {vessel: wide-pan, water: 2 L, dye: [{is: rain-blue, amount: 20 mL}]}\n";
        school.method("blue", "needles: {lot: plenty}" + bath);
        school.method("rain", "needles: {lot: another}" + bath);
        assertEquals("[\"plenty\",\"another\"]", school.planned("blue", "rain", "--each", "10g").get("needles").valueStream()
                .map(need -> need.get("lot")).toList().toString().replace(" ", ""));
    }

    private static final String PAN = "wide-pan: {shape: oval, length: 42 cm, width: 28 cm, height: 12 cm, made-of: enamel}\n";

    /** 240 g in 14.4 L are more than the pan's three quarters, 8.3 L, and less than those of a tub of 40 cm, 37.7 L. */
    @ParameterizedTest
    @CsvSource({"copper,", "iron,", "aluminium,", "plastic,", "glass,", ",", "enamel, tub", "stainless, tub"})
    void aLargerVesselIsOneThatThePlanWouldTake(String material, String named) {
        school.with("vessels.yaml", PAN + "tub: {shape: round, diameter: 40 cm, height: 40 cm"
                + (material == null ? "" : ", made-of: " + material) + "}\n");
        school.method("blue", "bath: {vessel: wide-pan, ratio: 60, dye: [{is: rain-blue, amount: 20 mL}]}\nheat: [{to: 80 °C}]\n");
        String told = school.said("blue", "--each", "30g", "--people", "8");
        assertEquals(named != null, told.contains("All of A would go into one vessel"), told);
        JsonNode larger = school.planned("blue", "--each", "30g", "--people", "8")
                .get("methods").get(0).get("larger_vessel");
        assertEquals(named == null ? "null" : "\"" + named + "\"", larger.toString());
    }

    /** Cold and in the sun a bin or a jar is what it is for; on a stove it drops hot liquor on those around it. */
    @ParameterizedTest
    @CsvSource({"bin, heat: [{to: 80 °C}], true", "bin, cool: 1 h, false", "bin, 'heat: [{to: 45 °C, on: sun}]', false",
            "jar, heat: [{to: 80 °C}], false"})
    void aClassHeatsNoPlasticPot(String vessel, String heat, boolean refused) {
        school.with("vessels.yaml", PAN + "bin: {title: Presoak bin, made-of: plastic}\njar: {made-of: glass}\n");
        school.method("blue", "bath: {vessel: " + vessel + ", water: 2 L, dye: [{is: rain-blue, amount: 20 mL}]}\n" + heat + "\n");
        JsonNode why = school.planned("blue", "--each", "10g", "--people", "2").get("refused");
        assertEquals(refused, why.toString().contains("Presoak bin: plastic softens on a stove"), why.toString());
        assertEquals("[]", school.planned("blue", "--each", "10g").get("refused").toString(), "the maker alone is warned");
    }

    @Test
    void sheetAndSlipsWarnOfAJarOnTheStove() throws IOException {
        school.with("vessels.yaml", PAN + "jar: {title: Jar, made-of: glass}\n");
        school.method("blue", "bath: {vessel: jar, water: 2 L, dye: [{is: rain-blue, amount: 20 mL}]}\nheat: [{to: 80 °C}]\n");
        String warned = "Jar: glass cracks on a stove or in an oven";
        assertTrue(school.said("blue", "--each", "10g", "--people", "2").contains(warned));
        Path target = folder.resolve("plan");
        school.plan("blue", "--each", "10g", "--people", "2", "--to", target.toString()).ends(0);
        for (String page : List.of("plan.html", "slip.html")) {
            assertTrue(Jsoup.parse(Files.readString(target.resolve(page))).text().contains(warned), page);
        }
    }

    private static final String PINCH =
            "bath: {vessel: wide-pan, water: 2 L, dye: [{is: brick, amount: a pinch}, {is: brick, amount: 1 g}]}\n";

    @Test
    void whatNobodyCanDissolveAheadTheTeacherPutsIn() throws IOException {
        school.method("pinch", PINCH);
        assertEquals(List.of("Bath: Water: 1900 mL · Brick: only the teacher puts it in, dry: not known (“a pinch”) · "
                + "Brick: 100 mL of 1 % stock, 1 g in it"), school.slips("pinch", "--each", "25g", "--people", "2"));
        String told = school.said("pinch", "--each", "25g", "--people", "2");
        assertTrue(told.contains("The teacher alone puts these in, dry, with a mask on and the class at a distance: Brick"),
                told);
        assertTrue(told.contains("Brick stays dry: how many grams of it there are is not known"), told);
        JsonNode dry = school.planned("pinch", "--each", "25g", "--people", "2").get("methods").get(0).get("still_dry");
        assertEquals("[{\"is\":\"brick\",\"as_written\":\"a pinch\",\"why\":\"unweighed\"}]", dry.toString());
        assertEquals("[]", school.planned("pinch", "--each", "50g").get("methods").get(0).get("still_dry").toString(),
                "the maker alone handles her own powder");
    }

    @Test
    void noSolutionIsPromisedThatNobodyMakes() {
        school.method("pinch", "bath: {vessel: wide-pan, water: 2 L, dye: [{is: brick, amount: a pinch}]}\n");
        assertFalse(school.said("pinch", "--each", "25g", "--people", "2").contains("makes stock solutions ahead"));
    }

    @Test
    void aPowderThatStaysDryIsNotForMinors() {
        school.method("pinch", PINCH);
        school.method("waxed", "bath: {vessel: wide-pan, water: 2 L, dye: [{is: rain-blue, amount: 20 mL}]}\n"
                + "finish: [{is: wax, amount: 2 g}]\n");
        JsonNode refused = school.planned("pinch", "waxed", "--each", "25g", "--people", "2", "--minors").get("refused");
        String pinch = refused.get(0).get("why").get(0).asString();
        assertTrue(pinch.contains("Brick: ") && pinch.contains("write its amount in grams"), pinch);
        String waxed = refused.get(1).get("why").get(0).asString();
        assertTrue(waxed.contains("Wax powder: ") && waxed.contains("leave it out of “finish:”"), waxed);
        String told = school.said("waxed", "--each", "25g", "--people", "2");
        assertTrue(told.contains("Wax powder stays dry: needles are finished with it, and that is no bath"), told);
    }

    /** 20 minutes up, 10 held and 30 to cool from 9:00; then the iron bath, 20 minutes up and 40 held: out at 11:00. */
    @Test
    void theDayEndsWithItsLastBath() {
        school.method("iron-after", """
                bath: {vessel: wide-pan, water: 2 L, dye: [{is: rain-blue, amount: 20 mL}]}
                heat: [{to: 80 °C, over: 20 min, hold: 10 min}]
                cool: 30 min
                after: [{as: iron, water: 2 L, with: [{is: iron-water, amount: 20 mL}], heat: [{to: 60 °C, over: 20 min, hold: 40 min}]}]
                """);
        JsonNode clock = school.planned("iron-after", "--each", "25g", "--people", "2", "--start", "2026-06-13T09:00").get("clock");
        List<String> lifted = clock.valueStream().filter(due -> due.get("kind").asString().equals("lift"))
                .map(due -> due.get("at").asString()).toList();
        assertEquals(List.of("2026-06-13T10:00", "2026-06-13T11:00"), lifted, "half an hour cools no pot");
        String told = school.said("iron-after", "--each", "25g", "--people", "2", "--start", "2026-06-13T09:00");
        assertTrue(told.contains("The last needles come out of a bath 13 June 2026, 11:00"), told);
    }

    /** 0.36 g are 36 mL of the 1 % that the balance asks for, and 3.6 mL of the 10 % that the class gets. */
    @Test
    void whatComesAsASolutionAsksForNoOtherStock() {
        school.method("fixed", "bath: {vessel: wide-pan, water: 2 L, dye: [{is: rain-blue, amount: 20 mL}]}\n"
                + "after: [{water: 30 mL, with: [{is: fixer, amount: 0.36 g}]}]\n");
        String told = school.said("fixed", "--each", "25g", "--people", "2");
        assertTrue(told.contains("3.6 mL of 10 % stock"), told);
        assertFalse(told.contains("it would take"), told);
        assertTrue(school.said("fixed", "--each", "50g").contains("Of “Fixer” it would take 36 mL of stock"), "alone she weighs it");
        JsonNode stock = school.planned("fixed", "--each", "25g", "--people", "2")
                .get("methods").get(0).get("whole").get("after")
                .get(0).get("with").get(0).get("stock");
        assertEquals(10, stock.get("percent").asDouble());
        assertEquals(3.6, stock.get("ml").asDouble(), 1e-9);
        assertFalse(stock.get("to_make").asBoolean());
    }

    /** Whoever reads the same line twice makes what it says once. */
    @Test
    void whatTwoBathsWantOfOneThingIsSaidForEach() {
        school.method("twice", "bath: {vessel: wide-pan, water: 2 L, dye: [{is: rain-blue, amount: 20 mL}]}\n"
                + "before: [{as: scour, water: 2 L, with: [{is: fixer, amount: 5 g}]}]\n"
                + "after: [{as: tannin, water: 2 L, with: [{is: fixer, amount: 5 g}]}]\n");
        String told = school.said("twice", "--each", "25g", "--people", "2");
        assertTrue(told.contains("Made ahead by the teacher: Fixer, Scour, 5 g dissolved"), told);
        assertTrue(told.contains("Made ahead by the teacher: Fixer, Tannin, 5 g dissolved"), told);
    }

    /** Whoever reads the data is warned as whoever reads the sheet is. */
    @Test
    void theDataWarnAsTheSheetDoes() {
        school.with("dyes/brick.md", "---\ntitle: Brick\nkind: dye\nform: powder\npack: {holds: 20 g}\n"
                        + "bought: [{on: 2026-01-01, packs: 1}]\n---\n")
                .with("days/2026-05-09/pot.md", "---\nneedles: {lot: plenty, weight: 40 g}\n"
                        + "bath: {water: 2 L, dye: [{is: brick, amount: a pinch}, {is: brick, amount: 5 g}]}\n---\n");
        school.method("mad", "bath: {vessel: wide-pan, dye: [{is: brick, amount: 25 g}]}\n"
                + "after: [{water: 2 mL, with: [{is: fixer, amount: 1 g}]}]\nheat: [{to: 80 °C}]\n");
        String[] call = {"mad", "--each", "25g", "--people", "2"};
        String told = school.said(call);
        JsonNode plan = school.planned(call);
        JsonNode method = plan.get("methods").get(0);
        List<String> remarks = method.get("remarks").valueStream().map(JsonNode::asString).toList();
        assertTrue(remarks.stream().anyMatch(remark -> remark.startsWith("Check this before anyone weighs it: Brick")),
                remarks.toString());
        assertTrue(remarks.stream().anyMatch(remark -> remark.startsWith("How much liquor it takes is not known")),
                remarks.toString());
        remarks.forEach(remark -> assertTrue(told.contains(remark.replace('\u202f', ' ')), remark));
        assertTrue(method.get("overfull").asBoolean(), "10 mL of 10 % in 2 mL");
        JsonNode brick = plan.get("needs").get(0);
        assertTrue(brick.get("left").isNull(), "nobody knows the pinch");
        assertEquals(15, brick.get("left_at_most").asDouble(), 1e-9);
        assertEquals("g", brick.get("left_unit").asString());
        assertEquals("[\"A\"]", plan.get("last").toString(), "nobody knows how long so much liquor takes to heat");
        assertEquals("[]", plan.get("unplaced").toString());
    }
}
