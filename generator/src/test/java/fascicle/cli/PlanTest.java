package fascicle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.notebook.WrittenNotebook;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A class on Saturday: what to lay out, weigh and heat, against the shelf, by the clock. Worked by hand throughout. */
class PlanTest {

    @TempDir
    private Path folder;

    private Path notebook;

    @BeforeEach
    void write() {
        notebook = folder.resolve("notebook");
        WrittenNotebook.small(notebook)
                .with("notebook.yaml", "form: 1\ntitle: A school of dyeing\nkitchen: metric\nbalance: 0.1 g\n"
                        + "damp-keeps: 3 days\nwater: {alkalinity: 0 mg/L}\n")
                .with("needles/plenty.md", "---\ntitle: Plenty\nweight: 300 g\n---\n")
                .with("dyes/brick.md", """
                        ---
                        title: Brick
                        kind: dye
                        form: powder
                        level-tsp: {weight: 3.1 g}
                        pack: {holds: 2 g, price: 4}
                        bought: [{on: 2026-01-01, packs: 1}]
                        label: {says: []}
                        ---
                        """)
                .with("dyes/blue-stone.md", "---\ntitle: Blue stone\nkind: mordant\nform: crystals\nmetal: copper\n---\n")
                .with("dyes/iron-water.md", "---\ntitle: Iron water\nkind: mordant\nform: liquid\nmetal: iron\n"
                        + "label: {signal: warning, says: [H302]}\n---\n")
                .with("methods/class-brick.md", """
                        ---
                        title: Brick for a class
                        for: 50 g
                        presoak: {water: 5 L, with: [{is: white-vinegar, amount: 200 mL}], for: 1 h}
                        bath:
                          vessel: wide-pan
                          water: 3 L
                          dye: [{is: brick, amount: 2 % owf}]
                          assistants: [{is: salt, amount: 40 g}, {is: white-vinegar, amount: 60 mL}]
                        heat: [{to: 88 °C, over: 30 min, hold: 2 h}]
                        cool: 3 h
                        rinse: before-drying
                        dry: 1 day
                        ---
                        1. Vinegar into the water, then the dye through a cloth.

                        ## For a class (students only)

                        Nobody under sixteen at the stove.
                        """)
                .with("methods/copper.md", """
                        ---
                        for: 50 g
                        before: [{as: mordant, water: 2 L, with: [{is: blue-stone, amount: 2 % owf}]}]
                        bath: {vessel: wide-pan, water: 2 L}
                        ---
                        """)
                .with("methods/iron.md", """
                        ---
                        title: Iron dip
                        for: 50 g
                        bath: {vessel: wide-pan, water: 2 L, dye: [{is: brick, amount: 1 % owf}]}
                        after: [{as: iron, water: 2 L, with: [{is: iron-water, amount: 20 mL}]}]
                        ---
                        """)
                .with("days/2026-05-09/pot.md", """
                        ---
                        title: Brick pot
                        tag: 41
                        needles: {lot: plenty, weight: 40 g}
                        bath: {vessel: wide-pan, water: 2 L, dye: [{is: brick, amount: 0.4 g}]}
                        ---
                        """);
    }

    private Call plan(String... call) {
        return Call.of(Stream.concat(Stream.of("plan", notebook), Stream.of(call)).toArray());
    }

    private JsonNode planned(String... call) {
        return JsonMapper.shared().readTree(plan(Stream.concat(Stream.of(call), Stream.of("--json"))
                .toArray(String[]::new)).ends(0).out());
    }

    @Test
    void aClassOfEight() {
        JsonNode plan = planned("class-brick", "--each", "15g", "--people", "8", "--start", "2026-06-13T09:00");
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
        JsonNode needs = planned("class-brick", "--each", "15g", "--people", "8").get("needs");
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
        JsonNode lots = planned("class-brick", "--each", "15g", "--people", "8").get("lots");
        assertTrue(lots.get(0).get("enough").asBoolean(), "260 g are left of Plenty");
    }

    @Test
    void byTheClock() {
        JsonNode clock = planned("class-brick", "--each", "15g", "--people", "8", "--start", "2026-06-13T09:00")
                .get("clock");
        List<String> told = clock.valueStream().map(due -> due.get("kind").asString() + " " + due.get("at").asString())
                .toList();
        assertEquals(List.of("soak 2026-06-13T09:00", "make 2026-06-13T10:00", "out 2026-06-13T10:00", "on 2026-06-13T10:00",
                "rise 2026-06-13T10:00", "hold 2026-06-13T10:30", "off 2026-06-13T12:30", "cool 2026-06-13T12:30",
                "out 2026-06-13T15:30", "rinse 2026-06-13T15:30", "dry 2026-06-13T15:30"), told.subList(0, 11));
    }

    /** 62 mL to a gram, needles included, and 8313 mL in a pan: four bundles of 30 g, not five. */
    @ParameterizedTest
    @CsvSource({"8, 2, 4, 2, 0, 0", "7, 2, 4, 1, 3, 1", "9, 3, 3, 3, 0, 0", "5, 2, 3, 1, 2, 1"})
    void bundlesStayWhole(int people, int pots, int fuller, int ofThem, int less, int ofThose) {
        JsonNode method = planned("class-brick", "--each", "30 g", "--people", String.valueOf(people)).get("methods").get(0);
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
        JsonNode group = planned("class-brick", "--each", "200 g", "--people", "2").get("methods").get(0).get("each_pot").get(0);
        assertEquals(4, group.get("pots").asInt());
        assertEquals(100, group.get("quantities").get("needles_g").asDouble());
    }

    @Test
    void theMakerAloneWeighsHerPowder() {
        JsonNode plan = planned("class-brick", "--each", "60 g");
        assertEquals(0, plan.get("methods").get(0).get("solutions").size());
        assertEquals(0, plan.get("duties").size());
        assertEquals(1.2, plan.get("methods").get(0).get("whole").get("parts").get(0).get("g").asDouble(), 1e-6);
        assertEquals(1, planned("copper", "--each", "60 g").get("methods").size(), "her copper is her own affair");
        assertFalse(plan("class-brick", "--each", "60 g").out().contains("the teacher’s"), "nobody else is there");
    }

    @Test
    void copperIsNeverPlannedForAClassAndIronNotForMinors() {
        JsonNode plan = planned("copper", "class-brick", "iron", "--each", "15 g", "--people", "3");
        assertEquals(List.of("copper"), plan.get("refused").valueStream().map(one -> one.get("of").asString()).toList());
        assertEquals(2, plan.get("methods").size());
        JsonNode minors = planned("class-brick", "iron", "--each", "15 g", "--people", "3", "--minors");
        assertEquals(List.of("iron"), minors.get("refused").valueStream().map(one -> one.get("of").asString()).toList());
        Call nothing = plan("copper", "--each", "15 g", "--people", "3").ends(1);
        assertTrue(nothing.out().contains("copper is not planned: "), nothing.out());
    }

    /**
     * Alum for minors comes dissolved: 12 % of 60 g are 7.2 g in a bath of 2400 mL, so 144 mL of a 5 % solution, which is
     * at most 240 mL where 360 mL of 2 % would be more; the bath's own water is less by it.
     */
    @Test
    void whatIsDissolvedAheadBringsWaterToItsOwnBath() {
        WrittenNotebook.empty(notebook).with("dyes/alum.md",
                        "---\nkind: mordant\nform: crystals\nmetal: aluminium\nlabel: {says: []}\n---\n")
                .with("methods/alum-bath.md", """
                        ---
                        for: 50 g
                        before: [{as: mordant, water: 2 L, with: [{is: alum, amount: 12 % owf}]}]
                        bath: {vessel: wide-pan, water: 2 L, dye: [{is: brick, amount: 2 % owf}]}
                        ---
                        """);
        JsonNode method = planned("alum-bath", "--each", "15 g", "--people", "4", "--minors").get("methods").get(0);
        JsonNode mordant = method.get("whole").get("before").get(0);
        assertEquals(7.2, mordant.get("with").get(0).get("g").asDouble(), 1e-6);
        assertEquals(2400 - 144, mordant.get("water_ml").asDouble(), 1e-6);
        assertEquals(5, method.get("solutions").get(0).get("percent").asDouble());
        assertEquals(2400 - 120, method.get("whole").get("water_ml").asDouble(), 1e-6, "1.2 g of dye at 1 %");
    }

    /** 240 mL of 1 % are needed: five marks of 50 mL hold 2.5 g, which a balance of 0.1 g tells; 0.45 g never are weighed. */
    @Test
    void solutionsAreMadeSoThatTheBalanceTellsWhatIsInThem() {
        JsonNode large = planned("class-brick", "--each", "15g", "--people", "8").get("methods").get(0).get("solutions").get(0);
        assertEquals(250, large.get("make_ml").asDouble());
        assertEquals(2.5, large.get("weigh_g").asDouble(), 1e-9);
        JsonNode small = planned("class-brick", "--each", "11.25 g", "--people", "2").get("methods").get(0).get("solutions")
                .get(0);
        assertEquals(45, small.get("ml").asDouble(), 1e-9);
        assertEquals(100, small.get("make_ml").asDouble());
        assertEquals(1, small.get("weigh_g").asDouble(), 1e-9);
        String told = plan("class-brick", "--each", "11.25 g", "--people", "2").out().replace('\u202f', ' ');
        assertTrue(told.contains("1 g dissolved in water and filled up to 100 mL (1 %), of which the baths take 45 mL"), told);
        assertTrue(told.contains("45 mL of 1 % stock, 0.45 g in it"), "no balance weighs what a jug measures: " + told);
    }

    /** A sheet on the table leads nowhere: whoever follows a method has that one's words too, once on the sheet. */
    @Test
    void aMethodThatFollowsAnotherBringsThatOnesWords() throws IOException {
        WrittenNotebook.empty(notebook).with("methods/dark-brick.md",
                "---\ntitle: Dark brick\nmethod: class-brick\n---\nAs the other, but twice as long.\n");
        String alone = sheet("dark-brick");
        assertTrue(alone.contains("As the other, but twice as long. From “Brick for a class” Vinegar into the water"), alone);
        String both = sheet("class-brick", "dark-brick");
        assertEquals(1, both.split("Vinegar into the water", -1).length - 1, both);
        assertFalse(both.contains("From “"), both);
    }

    private String sheet(String... methods) throws IOException {
        Path target = folder.resolve("sheet-" + methods.length);
        plan(Stream.concat(Stream.of(methods), Stream.of("--each", "15g", "--people", "2", "--to", target.toString()))
                .toArray(String[]::new)).ends(0);
        return Jsoup.parse(Files.readString(target.resolve("plan.html"))).text();
    }

    @Test
    void whatNobodyCanPlanIsRefused() {
        WrittenNotebook.empty(notebook).with("methods/empty.md", "---\nfor: 40 g\n---\n")
                .with("days/2026-05-10/again.md", "---\nneedles: {lot: plenty, weight: 40 g}\nbath: {reuses: "
                        + "2026-05-09-pot, vessel: wide-pan}\n---\n")
                .with("vessels.yaml", "wide-pan: {shape: oval, length: 42 cm, width: 28 cm, height: 12 cm}\n"
                        + "thimble: {shape: round, diameter: 5 cm, height: 4 cm}\n");
        plan("empty", "--each", "15g").ends(1).says("has no recipe to plan by");
        plan("2026-05-10-again", "--each", "15g").ends(1).says("cannot be poured anew");
        plan("class-brick", "--each", "15g", "--people", "400", "--vessel", "thimble").ends(2).says("pots, more than 60");
        plan("class-brick", "--each", "100 kg").ends(2).says("pots, more than 60");
        plan("class-brick", "--each", "15g", "--vessel", "wide-pan", "--vessel", "thimble").ends(2)
                .says("You name 1 method and 2 vessels; name one vessel for all");
        plan("class-brick", "--each", "9 t").ends(2);
        plan("class-brick", "--each", "2000 kg").ends(2).says("below a ton");
    }

    @Test
    void aPlanThatDoesNotFitADaySaysSo() {
        assertTrue(plan("class-brick", "--each", "30 g", "--people", "26", "--start", "2026-06-13T14:00").ends(0).out()
                .contains("This does not fit a day"));
        assertFalse(plan("class-brick", "--each", "15 g", "--people", "8", "--start", "2026-06-13T09:00").out()
                .contains("This does not fit a day"));
    }

    /** What is for the whole batch, however large, is for all its pots together: 9 g on 240 g, 4.5 g in each of two. */
    @Test
    void whatIsForTheBatchIsSharedOut() {
        WrittenNotebook.empty(notebook).with("methods/batch.md", """
                ---
                for: 50 g
                bath: {vessel: wide-pan, ratio: 61.2, dye: [{is: brick, amount: 2 % owf}], assistants: [{is: salt, amount: 9 g, by: batch}, {is: white-vinegar, amount: 50 mL, by: batch}]}
                ---
                """);
        JsonNode method = planned("batch", "--each", "30 g", "--people", "8").get("methods").get(0);
        assertEquals(9, method.get("whole").get("parts").get(1).get("g").asDouble(), 1e-6);
        JsonNode pot = method.get("each_pot").get(0).get("quantities");
        assertEquals(4.5, pot.get("parts").get(1).get("g").asDouble(), 1e-6);
        // 120 g at 61.2 mL/g are 7344 mL: 25 mL of vinegar, 240 mL of solution, and water.
        assertEquals(7344 - 25 - 240, pot.get("water_ml").asDouble(), 1e-6);
        assertEquals(2 * (7344 - 25 - 240), method.get("whole").get("water_ml").asDouble(), 1e-6);
    }

    @Test
    void withoutAVesselNobodyKnowsHowManyPots() {
        WrittenNotebook.empty(notebook).with("methods/open.md", "---\nfor: 50 g\nbath: {ratio: 40, dye: [{is: brick, "
                + "amount: 2 % owf}]}\n---\n");
        assertTrue(planned("open", "--each", "30 g", "--people", "8").get("methods").get(0).get("pots").isNull());
        assertTrue(plan("open", "--each", "30 g", "--people", "8").out().contains("How many pots it takes is not known"));
    }

    @Test
    void eventsKeepTheirIdsWhenTheHourMoves() throws IOException {
        List<String> ids = Stream.of("2026-06-13T09:00", "2026-06-13T09:30", "2026-06-20T09:00").map(start -> {
            Path target = folder.resolve("at-" + start.replace(':', '-'));
            plan("class-brick", "--each", "15g", "--people", "8", "--start", start, "--to", target.toString()).ends(0);
            try {
                return Files.readAllLines(target.resolve("plan.ics")).stream().filter(line -> line.startsWith("UID:"))
                        .toList().toString();
            } catch (IOException unread) {
                throw new java.io.UncheckedIOException(unread);
            }
        }).toList();
        assertEquals(ids.get(0), ids.get(1), "the same morning, half an hour later");
        assertFalse(ids.get(0).equals(ids.get(2)), "another day");
    }

    @Test
    void anEntryIsDoneAgainByItsTag() {
        JsonNode plan = planned("41", "--each", "20 g", "--people", "2");
        assertEquals("2026-05-09-pot", plan.get("methods").get(0).get("of").asString());
        assertEquals(0.4, plan.get("methods").get(0).get("whole").get("parts").get(0).get("g").asDouble(), 1e-6);
        assertTrue(plan("41", "--each", "20 g", "--people", "2").out().replace('\u202f', ' ')
                .contains("A from Plenty: 40 g of dry needles, 260 g left"), "its own lot first");
    }

    @Test
    void theSheetTheSlipsTheCalendarAndTheDataAreWritten() throws IOException {
        Path target = folder.resolve("saturday");
        plan("class-brick", "--each", "15g", "--people", "8", "--start", "2026-06-13T09:00", "--to", target.toString())
                .ends(0).says("Open: ");
        Document sheet = Jsoup.parse(Files.readString(target.resolve("plan.html")));
        String said = sheet.text().replace('\u202f', ' ');
        assertTrue(said.contains("8 people, 15 g of dry needles each"), said);
        assertTrue(said.contains("This sheet is the teacher’s"), said);
        assertTrue(said.contains("240 mL of 1 % stock"), said);
        assertTrue(said.contains("too little on the shelf"), said);
        assertTrue(said.contains("Lots with enough for everyone: Plenty (260 g left)"), said);
        assertTrue(said.contains("The label on the pack, local rules and licensed practice come before anything"), said);
        assertTrue(said.contains("Vinegar into the water, then the dye through a cloth.")
                && said.contains("Nobody under sixteen at the stove."), "the maker's own words on it: " + said);
        assertTrue(said.contains("Make up the bath. Out of the presoak. Bath on the stove, needles in. Heat to 88 °C. 0:30"), said);
        assertTrue(said.contains("Out of the bath. Rinse. Dry. 1 day"), said);
        Document slips = Jsoup.parse(Files.readString(target.resolve("slip.html")));
        assertEquals(8, slips.select("table.blank").last().select("tbody tr").size(), "a line for each tag");
        assertTrue(slips.select(".slip").stream().allMatch(slip -> slip.select(".caution li").size() > 4),
                "each slip may be cut off, and has its own cautions");
        String poured = slips.select(".slip .amounts").text().replace('\u202f', ' ');
        assertTrue(poured.contains("Bath: Water: 6960 mL") && poured.contains("Presoak: Water: 12000 mL"), poured);
        assertFalse(poured.contains("7344"), "nobody pours the sum of it: " + poured);
        String calendar = Files.readString(target.resolve("plan.ics"));
        assertTrue(calendar.contains("DTSTART:20260613T100000\r\n"), calendar);
        assertEquals(plan("class-brick", "--each", "15g", "--people", "8", "--start", "2026-06-13T09:00", "--json").out(),
                Files.readString(target.resolve("plan.json")));
        assertTrue(Files.exists(target.resolve(sheet.select("link[rel=stylesheet]").attr("href"))));
    }

    @Test
    void whatNobodyWeighsOutIsSaidWhereItIsWeighed() {
        WrittenNotebook.empty(notebook).with("methods/absurd.md", "---\nfor: 40 g\nbath: {vessel: wide-pan, ratio: 60, "
                + "dye: [{is: brick, amount: 4 kg}]}\n---\n");
        assertTrue(plan("absurd", "--each", "15 g", "--people", "4").out().replace('\u202f', ' ')
                .contains("Brick comes to 10000 % of the needles’ weight, where 20 % is the most one expects"));
        assertTrue(Call.of("scale", notebook, "absurd", "--needles", "40 g").out().contains("Check this before anyone weighs"));
    }

    @Test
    void anotherVesselThatHoldsAllIsNamed() {
        WrittenNotebook.empty(notebook).with("vessels.yaml", "wide-pan: {shape: oval, length: 42 cm, width: 28 cm, height: "
                + "12 cm}\ntub: {title: Big tub, shape: round, diameter: 40 cm, height: 40 cm, made-of: enamel}\n");
        assertTrue(plan("class-brick", "--each", "30 g", "--people", "8").out()
                .contains("All of A would go into one vessel: Big tub (--vessel tub)"));
    }

    /** 120 g in 7.2 L want two small pots of 2.7 L or more, or one of the others, 8.8 L and up. */
    private void threeMethodsAndTwoKettles() {
        WrittenNotebook small = WrittenNotebook.empty(notebook).with("vessels.yaml", """
                small: {title: Small pot, shape: round, diameter: 18 cm, height: 14 cm, made-of: enamel}
                kettle: {title: Kettle, shape: round, diameter: 28 cm, height: 20 cm, made-of: stainless}
                tub: {title: Big tub, shape: round, diameter: 40 cm, height: 40 cm, made-of: enamel}
                wide-pan: {made-of: enamel}
                """);
        String bath = "\nbath: {vessel: %s, ratio: 60, dye: [{is: brick, amount: 1 %% owf}]}\n---\n";
        small.with("methods/first.md", "---\ntitle: First" + bath.formatted("small"))
                .with("methods/second.md", "---\ntitle: Second" + bath.formatted("kettle"))
                .with("methods/third.md", "---\ntitle: Third" + bath.formatted("small"));
    }

    private List<String> hints(String... methods) {
        return plan(Stream.concat(Stream.of(methods), Stream.of("--each", "120g")).toArray(String[]::new)).ends(0).out()
                .lines().map(String::strip).filter(line -> line.contains("would go into one vessel")).toList();
    }

    @Test
    void noTwoBatchesAreSentIntoOneVessel() {
        threeMethodsAndTwoKettles();
        assertEquals(List.of("All of A would go into one vessel: Kettle (--vessel kettle)"), hints("first"));
        assertEquals(List.of("All of A would go into one vessel, which nothing else of this day stands in: Big tub"),
                hints("first", "second"), "the kettle is taken, and one --vessel would hold for both");
        assertEquals(List.of("All of A would go into one vessel, which nothing else of this day stands in: Kettle",
                "All of B would go into one vessel, which nothing else of this day stands in: Big tub"),
                hints("first", "third"));
        assertEquals(List.of("All of A would go into one vessel, which nothing else of this day stands in: Big tub"),
                hints("first", "third", "second"), "for the third none is left");
    }

    /** 60 g in 1.2 L, 1.32 L with the needles, want two beakers of 0.8 L and stand 1 cm deep on the tray's 1320 cm². */
    @Test
    void noBatchIsSentIntoAPuddle() {
        WrittenNotebook.empty(notebook).with("vessels.yaml", """
                beaker: {shape: round, diameter: 10 cm, height: 13 cm, made-of: enamel}
                tray: {title: Tray, shape: rectangular, length: 44 cm, width: 30 cm, height: 5 cm, made-of: enamel}
                wide-pan: {made-of: enamel}
                """).with("methods/low.md", "---\nbath: {vessel: beaker, ratio: 20, dye: [{is: brick, amount: 1 % owf}]}\n---\n");
        String plan = plan("low", "--each", "60g").ends(0).out();
        assertTrue(plan.contains("2 vessels like beaker"), plan);
        assertFalse(plan.contains("would go into one vessel"), plan);
    }

    @Test
    void dampNeedlesKeepAboutAsLongAsIsWritten() {
        WrittenNotebook.empty(notebook).with("notebook.yaml",
                "form: 1\ntitle: A school of dyeing\nkitchen: metric\ndamp-keeps: about 3 days\n");
        String plan = plan("class-brick", "--each", "15g", "--people", "8", "--start", "2026-06-13T09:00").out();
        assertTrue(plan.contains("about 15:30"), plan);
    }

    @Test
    void whenTheDayEnds() {
        String plan = plan("class-brick", "--each", "15g", "--people", "8", "--start", "2026-06-13T09:00").out();
        assertTrue(plan.contains("The stove is free again 13 June 2026, 12:30"), plan);
        assertTrue(plan.contains("The last needles come out of a bath 13 June 2026, 15:30"), plan);
    }

    @Test
    void aPlanNeverReplacesABook() {
        Path book = folder.resolve("book");
        Call.of("publish", notebook, "--to", book).ends(0);
        plan("class-brick", "--each", "15g", "--to", book.toString()).ends(2).says("must not replace");
        assertTrue(Files.exists(book.resolve("index.html")));
        assertFalse(Files.exists(book.resolve("plan.html")));
    }

    /**
     * The data and the calendar byte for byte, whatever the machine, its language and the order in which it keeps sets.
     * Where they differ, what is written now is laid in {@code target/golden}, to be read and, if it is right, taken over.
     */
    @ParameterizedTest
    @ValueSource(strings = {"plan.json", "plan.ics"})
    void theSamePlanGivesTheSameBytes(String file) throws IOException {
        Path target = folder.resolve("golden");
        plan("class-brick", "iron", "--each", "15g", "--people", "8", "--start", "2026-06-13T09:00", "--to",
                target.toString()).ends(0);
        byte[] written = Files.readAllBytes(target.resolve(file));
        byte[] golden = new byte[0];
        try (InputStream resource = PlanTest.class.getResourceAsStream("golden/" + file)) {
            golden = resource == null ? golden : resource.readAllBytes();
        }
        if (!Arrays.equals(golden, written)) {
            Files.write(Files.createDirectories(Path.of("target/golden")).resolve(file), written);
        }
        assertEquals(new String(golden, StandardCharsets.UTF_8), new String(written, StandardCharsets.UTF_8));
    }

    @Test
    void aMistypedMordantIsPlannedForNoClass() {
        WrittenNotebook.empty(notebook)
                .with("dyes/blue-stone.md", "---\ntitle: Blue stone\nkind: mordnt\nmetal: copper\n---\n");
        Call refused = Call.of("plan", notebook, "copper", "--each", "10g", "--people", "3").ends(1);
        assertTrue(refused.err().startsWith("dyes/blue-stone.md has errors: "), refused.err());
        assertTrue(refused.out().contains("blue-stone: nothing is known of it"), refused.out());
    }

    /** Work that begins at 9:00: 1 h of soaking, 2 h 30 min of heat and 3 h of cooling end at 15:30; a day is for drying. */
    @Test
    void withoutAStartTheDaysOfTheWorkAreNumbered() {
        String told = plan("class-brick", "--each", "15g", "--people", "8").out();
        assertTrue(told.contains("By the clock, for work that begins at 9:00"), told);
        assertTrue(told.contains("day 1, 9:00  A: Needles into the presoak."), told);
        assertTrue(told.contains("The last needles come out of a bath day 1, 15:30"), told);
        assertTrue(told.contains("day 4, 15:30  A: If any needles are still damp"), told);
    }

    @Test
    void thoseUnderEighteenStandBackFromTheStove() throws IOException {
        WrittenNotebook.empty(notebook).with("dyes/brick.md",
                "---\ntitle: Brick\nkind: dye\nform: powder\nlabel: {says: []}\n---\n");
        Path target = folder.resolve("minors");
        plan("class-brick", "--each", "15g", "--people", "8", "--minors", "--start", "2026-06-13T09:00", "--to",
                target.toString()).ends(0);
        String slip = Jsoup.parse(Files.readString(target.resolve("slip.html"))).text().replace('\u202f', ' ');
        assertTrue(slip.contains("Stand back from the stove: the teacher does what is done there"), slip);
        assertTrue(slip.contains("Bath on the stove, needles in (the teacher). Heat to 88 °C (the teacher)."), slip);
        assertTrue(slip.contains("Hold at 88 °C (the teacher)."), slip);
        assertTrue(slip.contains("Heat off (the teacher)."), slip);
        assertTrue(slip.contains("Out of the bath. Rinse. Dry."), "cool needles are theirs: " + slip);
        String phone = Files.readString(target.resolve("plan.ics")).replace("\r\n ", "").replace('\u202f', ' ');
        assertTrue(phone.contains("Bath on the stove\\, needles in (the teacher). Heat to 88 °C (the teacher)"), phone);
        List<String> hers = planned("class-brick", "--each", "15g", "--people", "8", "--minors").get("clock").valueStream()
                .filter(due -> due.get("by_teacher").asBoolean()).map(due -> due.get("kind").asString()).toList();
        assertEquals(List.of("on", "rise", "hold", "off"), hers);
        assertFalse(plan("class-brick", "--each", "15g", "--people", "8").out().contains("(the teacher)"));
    }

    /** After 28 days of soaking it is day 29; after three of cooling and 35 of drying, day 67. */
    @Test
    void theDaysOfLongWorkAreNumberedOn() {
        WrittenNotebook.empty(notebook).with("methods/slow.md", """
                ---
                title: Slow
                for: 50 g
                presoak: {water: 5 L, for: 28 days}
                bath: {vessel: wide-pan, water: 3 L, dye: [{is: brick, amount: 2 % owf}]}
                heat: [{to: 88 °C, over: 10 min, hold: 20 min}]
                cool: 3 days
                dry: 35 days
                rinse: after-drying
                ---
                """);
        String told = plan("slow", "--each", "15g", "--people", "2").out();
        assertTrue(told.contains("day 29, 9:00  A: Make up the bath."), told);
        assertTrue(told.contains("day 32, 9:30  A: Out of the bath."), told);
        assertTrue(told.contains("day 67, about 9:30  A: Rinse."), told);
    }

    @Test
    void needlesThatWereDyedBeforeAreNoBareOnes() {
        WrittenNotebook.empty(notebook)
                .with("days/2026-05-10/gold.md", "---\ntitle: Gold\nneedles: {lot: plenty, weight: 45 g}\n"
                        + "bath: {vessel: wide-pan, water: 3 L, dye: [{is: brick, amount: 1 % owf}]}\n"
                        + "kept: {weight: 44 g, how: dry, used: [{weight: 10 g, in: tray}]}\n---\n")
                .with("days/2026-05-11/rust.md", "---\ntitle: Rust\nneedles: {from: 2026-05-10-gold, weight: 20 g}\n"
                        + "bath: {vessel: wide-pan, water: 3 L, dye: [{is: brick, amount: 1 % owf}]}\n---\n");
        String enough = plan("2026-05-11-rust", "--each", "14 g").out().replace('\u202f', ' ');
        assertTrue(enough.contains("A on needles dyed before as “Gold”: 14 g, 14 g of them left"), enough);
        assertFalse(enough.contains("Lots with enough"), "it has its needles: " + enough);
        assertTrue(enough.contains("These needles had been dyed before, as “Gold”: on bare ones another colour comes out."),
                enough);
        String both = plan("2026-05-11-rust", "class-brick", "--each", "15 g").out().replace('\u202f', ' ');
        assertTrue(both.contains("A on needles dyed before as “Gold”: 15 g, but only 14 g of them left"), both);
        assertTrue(both.contains("Lots with enough"), "the other method's needles have still to be found: " + both);
        assertEquals(14, planned("2026-05-11-rust", "--each", "14 g").get("dyed").get(0).get("left_g").asDouble(), 1e-9);
    }

    /** 18 bundles of 15 g in a pan that takes eight: six in each of three, 90 g with 104 mL/g of presoak, 9360 mL. */
    @Test
    void everyPotHasItsOwnBin() {
        String told = plan("class-brick", "--each", "15g", "--people", "18").out().replace('\u202f', ' ');
        assertTrue(told.contains("A presoak bin for each pot of Brick for a class, 3 × 9360 mL"), told);
        assertTrue(told.contains("From the shelf, with their packs: White vinegar, Brick, Table salt"), told);
    }

    @Test
    void wrongCallsSaySo() {
        plan("class-brik", "--each", "15g").ends(1).says("did you mean “class-brick”?");
        plan("class-brick", "--each", "0 g").ends(2).says("name one above 0 g");
        plan("class-brick", "--each", "15g", "--people", "0").ends(2).says("name 1 to 500");
        plan("class-brick", "--each", "15g", "--start", "Saturday").ends(2).says("such as 2026-06-13T09:00");
        plan("class-brick", "--each", "15g", "--start", "2026-02-30T09:00").ends(2).says("no time to begin");
        plan("class-brick", "--each", "15g", "--start", "+999999999-12-31T23:59").ends(2).says("no time to begin");
        plan("class-brick", "--each", "15g", "--vessel", "tub").ends(2).says("There is no vessel “tub”");
        plan("class-brick", "iron", "copper", "--each", "15g", "--vessel", "wide-pan", "--vessel", "wide-pan").ends(2)
                .says("one vessel for all");
        plan("class-brick", "class-brick", "--each", "15g").ends(2).says("named twice");
        plan("--each", "15g").ends(2);
    }
}
