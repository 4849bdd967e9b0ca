package fascicle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/** A class on Saturday: what to lay out, weigh and heat, against the shelf. Worked by hand throughout. */
class PlanTest {

    @TempDir
    private Path folder;

    private DyeSchool school;

    @BeforeEach
    void write() {
        school = DyeSchool.withAClass(folder);
    }

    @Test
    void aClassOfEight() {
        JsonNode plan = school.planned("class-brick", "--each", "15g", "--people", "8", "--start", "2026-06-13T09:00");
        assertEquals(120, plan.get("needles_g").asDouble());
        assertEquals(8, plan.get("bundles").asInt());
        JsonNode method = plan.get("methods").get(0);
        JsonNode whole = method.get("whole");
        // 3060 mL on 50 g, so 7344 mL on 120 g; with 240 mL of needles it fills the pan of 11.08 L to 68 %.
        assertEquals(7344, whole.get("liquor_ml").asDouble(), 1e-6);
        assertEquals(1, method.get("pots").asInt());
        assertEquals(100 * 7584 / (42 * 28 * 12 * Math.PI / 4), whole.get("filled_percent").asDouble(), 1e-6);
        // 2 % of 120 g are 2.4 g: 240 mL of a 1 % solution, which is less than a tenth of the liquor.
        assertEquals(2.4, whole.get("parts").get(0).get("g").asDouble(), 1e-6);
        assertEquals(1, method.get("solutions").get(0).get("percent").asDouble());
        assertEquals(240, method.get("solutions").get(0).get("ml").asDouble(), 1e-6);
        assertEquals(96, whole.get("parts").get(1).get("g").asDouble(), 1e-6);
        assertEquals(144, whole.get("parts").get(2).get("ml").asDouble(), 1e-6);
        // 7344 less 144 of vinegar and 240 of solution.
        assertEquals(6960, whole.get("water_ml").asDouble(), 1e-6);
        assertEquals(12_000, whole.get("presoak").get("water_ml").asDouble(), 1e-6);
        assertEquals(480, whole.get("presoak").get("with").get(0).get("ml").asDouble(), 1e-6);
    }

    @Test
    void againstTheShelf() {
        JsonNode needs = school.planned("class-brick", "--each", "15g", "--people", "8").get("needs");
        JsonNode brick = needs.valueStream().filter(need -> need.get("is").asString().equals("brick")).findFirst()
                .orElseThrow();
        // 2 g were bought and 0.4 g used; 2.5 g are dissolved, of which the baths take 2.4 g.
        assertEquals(1.6, brick.get("left").asDouble(), 1e-6);
        assertEquals(2.5, brick.get("g").asDouble(), 1e-6);
        assertEquals(-0.9, brick.get("after").asDouble(), 1e-6);
        assertTrue(brick.get("too_little").asBoolean());
        JsonNode vinegar = needs.get(0);
        assertEquals("white-vinegar", vinegar.get("is").asString());
        assertEquals(624, vinegar.get("ml").asDouble(), 1e-6);
        assertTrue(vinegar.get("left").isNull(), "nobody said what was bought");
        JsonNode lots = school.planned("class-brick", "--each", "15g", "--people", "8").get("lots");
        assertTrue(lots.get(0).get("enough").asBoolean(), "260 g are left of Plenty");
    }

    /** 62 mL to a gram, needles included, and 8313 mL in a pan: four bundles of 30 g, not five. */
    @ParameterizedTest
    @CsvSource({"8, 2, 4, 2, 0, 0", "7, 2, 4, 1, 3, 1", "9, 3, 3, 3, 0, 0", "5, 2, 3, 1, 2, 1"})
    void bundlesStayWhole(int people, int pots, int fuller, int ofThem, int less, int ofThose) {
        JsonNode method = school.planned("class-brick", "--each", "30 g", "--people", String.valueOf(people))
                .get("methods").get(0);
        assertEquals(pots, method.get("pots").asInt());
        JsonNode groups = method.get("each_pot");
        assertEquals(fuller, groups.get(0).get("bundles").asInt());
        assertEquals(ofThem, groups.get(0).get("pots").asInt());
        assertEquals(ofThose == 0 ? 1 : 2, groups.size());
        if (ofThose > 0) {
            assertEquals(less, groups.get(1).get("bundles").asInt());
            assertEquals(ofThose, groups.get(1).get("pots").asInt());
        }
        assertEquals(people * 30 * 61.2, method.get("whole").get("liquor_ml").asDouble(), 1e-6);
        assertEquals(fuller * 30 * 61.2, groups.get(0).get("quantities").get("liquor_ml").asDouble(), 1e-6);
    }

    @Test
    void aBundleTooLargeForOnePotIsPartedEqually() {
        JsonNode group = school.planned("class-brick", "--each", "200 g", "--people", "2")
                .get("methods").get(0).get("each_pot").get(0);
        assertEquals(4, group.get("pots").asInt());
        assertEquals(100, group.get("quantities").get("needles_g").asDouble());
    }

    @Test
    void theMakerAloneWeighsHerPowder() {
        JsonNode plan = school.planned("class-brick", "--each", "60 g");
        assertEquals(0, plan.get("methods").get(0).get("solutions").size());
        assertEquals(0, plan.get("duties").size());
        assertEquals(1.2, plan.get("methods").get(0).get("whole").get("parts").get(0).get("g").asDouble(), 1e-6);
        assertEquals(1, school.planned("copper", "--each", "60 g")
                .get("methods").size(), "her copper is her own affair");
        assertFalse(school.plan("class-brick", "--each", "60 g").out()
                .contains("the teacher’s"), "nobody else is there");
    }

    @Test
    void copperIsNeverPlannedForAClassAndIronNotForMinors() {
        JsonNode plan = school.planned("copper", "class-brick", "iron", "--each", "15 g", "--people", "3");
        assertEquals(List.of("copper"), plan.get("refused").valueStream().map(one -> one.get("of").asString()).toList());
        assertEquals(2, plan.get("methods").size());
        JsonNode minors = school.planned("class-brick", "iron", "--each", "15 g", "--people", "3", "--minors");
        assertEquals(List.of("iron"), minors.get("refused").valueStream().map(one -> one.get("of").asString()).toList());
        Call nothing = school.plan("copper", "--each", "15 g", "--people", "3").ends(1);
        assertTrue(nothing.out().contains("copper is not planned: "), nothing.out());
    }

    /**
     * Alum for minors comes dissolved: 12 % of 60 g are 7.2 g in a bath of 2400 mL, so 144 mL of a 5 % solution, which is
     * at most 240 mL where 360 mL of 2 % would be more; the bath's own water is less by it.
     */
    @Test
    void whatIsDissolvedAheadBringsWaterToItsOwnBath() {
        school.with("dyes/alum.md",
                        "---\nkind: mordant\nform: crystals\nmetal: aluminium\nlabel: {says: []}\n---\n")
                .with("methods/alum-bath.md", """
                        ---
                        for: 50 g
                        before: [{as: mordant, water: 2 L, with: [{is: alum, amount: 12 % owf}]}]
                        bath: {vessel: wide-pan, water: 2 L, dye: [{is: brick, amount: 2 % owf}]}
                        ---
                        """);
        JsonNode method = school.planned("alum-bath", "--each", "15 g", "--people", "4", "--minors")
                .get("methods").get(0);
        JsonNode mordant = method.get("whole").get("before").get(0);
        assertEquals(7.2, mordant.get("with").get(0).get("g").asDouble(), 1e-6);
        assertEquals(2400 - 144, mordant.get("water_ml").asDouble(), 1e-6);
        assertEquals(5, method.get("solutions").get(0).get("percent").asDouble());
        assertEquals(2400 - 120, method.get("whole").get("water_ml").asDouble(), 1e-6, "1.2 g of dye at 1 %");
    }

    /** 240 mL of 1 % are needed: five marks of 50 mL hold 2.5 g, which a balance of 0.1 g tells; 0.45 g never are weighed. */
    @Test
    void solutionsAreMadeSoThatTheBalanceTellsWhatIsInThem() {
        JsonNode large = school.planned("class-brick", "--each", "15g", "--people", "8")
                .get("methods").get(0).get("solutions").get(0);
        assertEquals(250, large.get("make_ml").asDouble());
        assertEquals(2.5, large.get("weigh_g").asDouble(), 1e-9);
        JsonNode small = school.planned("class-brick", "--each", "11.25 g", "--people", "2")
                .get("methods").get(0).get("solutions")
                .get(0);
        assertEquals(45, small.get("ml").asDouble(), 1e-9);
        assertEquals(100, small.get("make_ml").asDouble());
        assertEquals(1, small.get("weigh_g").asDouble(), 1e-9);
        String told = school.said("class-brick", "--each", "11.25 g", "--people", "2");
        assertTrue(told.contains("1 g dissolved in water and filled up to 100 mL (1 %), of which the baths take 45 mL"),
                told);
        assertTrue(told.contains("45 mL of 1 % stock, 0.45 g in it"), "no balance weighs what a jug measures: " + told);
    }

    /** A sheet on the table leads nowhere: whoever follows a method has that one's words too, once on the sheet. */
    @Test
    void aMethodThatFollowsAnotherBringsThatOnesWords() throws IOException {
        school.with("methods/dark-brick.md",
                "---\ntitle: Dark brick\nmethod: class-brick\n---\nAs the other, but twice as long.\n");
        String alone = sheet("dark-brick");
        assertTrue(alone.contains("As the other, but twice as long. From “Brick for a class” Vinegar into the water"), alone);
        String both = sheet("class-brick", "dark-brick");
        assertEquals(1, both.split("Vinegar into the water", -1).length - 1, both);
        assertFalse(both.contains("From “"), both);
    }

    private String sheet(String... methods) throws IOException {
        return school.page("plan.html", Stream.concat(Stream.of(methods), Stream.of("--each", "15g", "--people", "2"))
                .toArray(String[]::new)).text();
    }

    @Test
    void whatNobodyCanPlanIsRefused() {
        school.with("methods/empty.md", "---\nfor: 40 g\n---\n")
                .with("days/2026-05-10/again.md", "---\nneedles: {lot: plenty, weight: 40 g}\nbath: {reuses: "
                        + "2026-05-09-pot, vessel: wide-pan}\n---\n")
                .with("vessels.yaml", "wide-pan: {shape: oval, length: 42 cm, width: 28 cm, height: 12 cm}\n"
                        + "thimble: {shape: round, diameter: 5 cm, height: 4 cm}\n");
        school.plan("empty", "--each", "15g").ends(1).says("has no recipe to plan by");
        school.plan("2026-05-10-again", "--each", "15g").ends(1).says("cannot be poured anew");
        school.plan("class-brick", "--each", "15g", "--people", "400", "--vessel", "thimble").ends(2).says("pots, more than 60");
        school.plan("class-brick", "--each", "100 kg").ends(2).says("pots, more than 60");
        school.plan("class-brick", "--each", "15g", "--vessel", "wide-pan", "--vessel", "thimble").ends(2)
                .says("You name 1 method and 2 vessels; name one vessel for all");
        school.plan("class-brick", "--each", "9 t").ends(2);
        school.plan("class-brick", "--each", "2000 kg").ends(2).says("below a ton");
    }

    /** What is for the whole batch, however large, is for all its pots together: 9 g on 240 g, 4.5 g in each of two. */
    @Test
    void whatIsForTheBatchIsSharedOut() {
        school.with("methods/batch.md", """
                ---
                for: 50 g
                bath: {vessel: wide-pan, ratio: 61.2, dye: [{is: brick, amount: 2 % owf}], assistants: [{is: salt, amount: 9 g, by: batch}, {is: white-vinegar, amount: 50 mL, by: batch}]}
                ---
                """);
        JsonNode method = school.planned("batch", "--each", "30 g", "--people", "8").get("methods").get(0);
        assertEquals(9, method.get("whole").get("parts").get(1).get("g").asDouble(), 1e-6);
        JsonNode pot = method.get("each_pot").get(0).get("quantities");
        assertEquals(4.5, pot.get("parts").get(1).get("g").asDouble(), 1e-6);
        // 120 g at 61.2 mL/g are 7344 mL: 25 mL of vinegar, 240 mL of solution, and water.
        assertEquals(7344 - 25 - 240, pot.get("water_ml").asDouble(), 1e-6);
        assertEquals(2 * (7344 - 25 - 240), method.get("whole").get("water_ml").asDouble(), 1e-6);
    }

    @Test
    void withoutAVesselNobodyKnowsHowManyPots() {
        school.with("methods/open.md", "---\nfor: 50 g\nbath: {ratio: 40, dye: [{is: brick, "
                + "amount: 2 % owf}]}\n---\n");
        assertTrue(school.planned("open", "--each", "30 g", "--people", "8")
                .get("methods").get(0).get("pots").isNull());
        assertTrue(school.plan("open", "--each", "30 g", "--people", "8").out()
                .contains("How many pots it takes is not known"));
    }

    @Test
    void anEntryIsDoneAgainByItsTag() {
        JsonNode plan = school.planned("41", "--each", "20 g", "--people", "2");
        assertEquals("2026-05-09-pot", plan.get("methods").get(0).get("of").asString());
        assertEquals(0.4, plan.get("methods").get(0).get("whole").get("parts").get(0).get("g").asDouble(), 1e-6);
        assertTrue(school.said("41", "--each", "20 g", "--people", "2")
                .contains("A from Plenty: 40 g of dry needles, 260 g left"), "its own lot first");
    }

    @Test
    void whatNobodyWeighsOutIsSaidWhereItIsWeighed() {
        school.with("methods/absurd.md", "---\nfor: 40 g\nbath: {vessel: wide-pan, ratio: 60, "
                + "dye: [{is: brick, amount: 4 kg}]}\n---\n");
        assertTrue(school.said("absurd", "--each", "15 g", "--people", "4")
                .contains("Brick comes to 10000 % of the needles’ weight, where 20 % is the most one expects"));
        assertTrue(Call.of("scale", school.notebook(), "absurd", "--needles", "40 g").out()
                .contains("Check this before anyone weighs"));
    }

    @Test
    void aMistypedMordantIsPlannedForNoClass() {
        school
                .with("dyes/blue-stone.md", "---\ntitle: Blue stone\nkind: mordnt\nmetal: copper\n---\n");
        Call refused = Call.of("plan", school.notebook(), "copper", "--each", "10g", "--people", "3").ends(1);
        assertTrue(refused.err().startsWith("dyes/blue-stone.md has errors: "), refused.err());
        assertTrue(refused.out().contains("blue-stone: nothing is known of it"), refused.out());
    }

    @Test
    void thoseUnderEighteenStandBackFromTheStove() throws IOException {
        school.with("dyes/brick.md",
                "---\ntitle: Brick\nkind: dye\nform: powder\nlabel: {says: []}\n---\n");
        Path target = folder.resolve("minors");
        school.plan("class-brick", "--each", "15g", "--people", "8", "--minors", "--start", "2026-06-13T09:00", "--to",
                target.toString()).ends(0);
        String slip = Jsoup.parse(Files.readString(target.resolve("slip.html"))).text().replace('\u202f', ' ');
        assertTrue(slip.contains("Stand back from the stove: the teacher does what is done there"), slip);
        assertTrue(slip.contains("Bath on the stove, needles in (the teacher). Heat to 88 °C (the teacher)."), slip);
        assertTrue(slip.contains("Hold at 88 °C (the teacher)."), slip);
        assertTrue(slip.contains("Heat off (the teacher)."), slip);
        assertTrue(slip.contains("Out of the bath. Rinse. Dry."), "cool needles are theirs: " + slip);
        String phone = Files.readString(target.resolve("plan.ics")).replace("\r\n ", "").replace('\u202f', ' ');
        assertTrue(phone.contains("Bath on the stove\\, needles in (the teacher). Heat to 88 °C (the teacher)"), phone);
        List<String> hers = school.planned("class-brick", "--each", "15g", "--people", "8", "--minors").get("clock").valueStream()
                .filter(due -> due.get("by_teacher").asBoolean()).map(due -> due.get("kind").asString()).toList();
        assertEquals(List.of("on", "rise", "hold", "off"), hers);
        assertFalse(school.plan("class-brick", "--each", "15g", "--people", "8").out().contains("(the teacher)"));
    }

    @Test
    void needlesThatWereDyedBeforeAreNoBareOnes() {
        school
                .with("days/2026-05-10/gold.md", "---\ntitle: Gold\nneedles: {lot: plenty, weight: 45 g}\n"
                        + "bath: {vessel: wide-pan, water: 3 L, dye: [{is: brick, amount: 1 % owf}]}\n"
                        + "kept: {weight: 44 g, how: dry, used: [{weight: 10 g, in: tray}]}\n---\n")
                .with("days/2026-05-11/rust.md", "---\ntitle: Rust\nneedles: {from: 2026-05-10-gold, weight: 20 g}\n"
                        + "bath: {vessel: wide-pan, water: 3 L, dye: [{is: brick, amount: 1 % owf}]}\n---\n");
        String enough = school.said("2026-05-11-rust", "--each", "14 g");
        assertTrue(enough.contains("A on needles dyed before as “Gold”: 14 g, 14 g of them left"), enough);
        assertFalse(enough.contains("Lots with enough"), "it has its needles: " + enough);
        assertTrue(enough.contains("These needles had been dyed before, as “Gold”: on bare ones another colour comes out."),
                enough);
        String both = school.said("2026-05-11-rust", "class-brick", "--each", "15 g");
        assertTrue(both.contains("A on needles dyed before as “Gold”: 15 g, but only 14 g of them left"), both);
        assertTrue(both.contains("Lots with enough"), "the other method's needles have still to be found: " + both);
        assertEquals(14, school.planned("2026-05-11-rust", "--each", "14 g").get("dyed").get(0).get("left_g").asDouble(), 1e-9);
    }

    /** 18 bundles of 15 g in a pan that takes eight: six in each of three, 90 g with 104 mL/g of presoak, 9360 mL. */
    @Test
    void everyPotHasItsOwnBin() {
        String told = school.said("class-brick", "--each", "15g", "--people", "18");
        assertTrue(told.contains("A presoak bin for each pot of Brick for a class, 3 × 9360 mL"), told);
        assertTrue(told.contains("From the shelf, with their packs: White vinegar, Brick, Table salt"), told);
    }

    @Test
    void wrongCallsSaySo() {
        school.plan("class-brik", "--each", "15g").ends(1).says("did you mean “class-brick”?");
        school.plan("class-brick", "--each", "0 g").ends(2).says("name one above 0 g");
        school.plan("class-brick", "--each", "15g", "--people", "0").ends(2).says("name 1 to 500");
        school.plan("class-brick", "--each", "15g", "--start", "Saturday").ends(2).says("such as 2026-06-13T09:00");
        school.plan("class-brick", "--each", "15g", "--start", "2026-02-30T09:00").ends(2).says("no time to begin");
        school.plan("class-brick", "--each", "15g", "--start", "+999999999-12-31T23:59").ends(2).says("no time to begin");
        school.plan("class-brick", "--each", "15g", "--vessel", "tub").ends(2).says("There is no vessel “tub”");
        school.plan("class-brick", "iron", "copper", "--each", "15g", "--vessel", "wide-pan", "--vessel", "wide-pan").ends(2)
                .says("one vessel for all");
        school.plan("class-brick", "class-brick", "--each", "15g").ends(2).says("named twice");
        school.plan("--each", "15g").ends(2);
    }
}
