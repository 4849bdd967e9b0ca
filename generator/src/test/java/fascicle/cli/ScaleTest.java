package fascicle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.notebook.WrittenNotebook;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A recipe for another weight: dyes follow the needles, salt follows the bath, and the bath keeps its ratio. */
class ScaleTest {

    @TempDir
    private Path folder;

    @BeforeEach
    void write() {
        WrittenNotebook.small(folder)
                .with("days/2026-05-09/pot.md", """
                        ---
                        title: Brick pot
                        tag: 41
                        needles: {lot: scalded-2025, weight: 40 g}
                        presoak: {water: 4 L}
                        bath:
                          water: 2400 mL
                          dye: [{is: brick, amount: 2 % owf}, {is: brick, amount: 40 mL of 1 % stock}]
                          assistants: [{is: salt, amount: 20 g}, {is: salt, amount: a handful}]
                        after: [{as: iron, water: 1 L}]
                        ---
                        """)
                .with("days/2026-05-09/unweighed.md", "---\nneedles: {lot: scalded-2025}\n"
                        + "bath: {water: 1 L, dye: [{is: brick, amount: 2 % owf}], "
                        + "assistants: [{is: salt, amount: 20 g}]}\n---\n")
                .with("days/2026-05-09/damp.md", "---\nneedles: {lot: scalded-2025, weight: 60 g, weighed: damp}\n"
                        + "bath: {water: 1 L, dye: [{is: brick, amount: 2 % owf}]}\n---\n")
                .with("days/2026-05-09/faulty.md", "---\nneedles: {lot: nowhere}\n---\n")
                .with("methods/weightless.md", "---\ntitle: Weightless\n---\n");
    }

    private Call scale(String what, String needles, Object... options) {
        return options.length == 0 ? Call.of("scale", folder, what, "--needles", needles)
                : Call.of("scale", folder, what, "--needles", needles, options[0]);
    }

    private static String plain(String text) {
        return text.replace('\u202f', ' ');
    }

    @ParameterizedTest
    @ValueSource(strings = {"about 50 g", "~50g"})
    void aWeightToWorkOutIsExact(String rough) {
        Call call = scale("2026-05-09-pot", rough);
        assertEquals(2, call.status());
        assertTrue(call.err().contains("“" + rough + "” is rough, and a weight to work out is exact; write it without “about”, "
                + "such as 50 g."), call.err());
    }

    @Test
    void whatIsUnknownBecauseOfAnErrorIsSaidBeforeTheAnswer() {
        WrittenNotebook.empty(folder)
                .with("dyes/blue-stone.md", "---\nkind: mordnt\nmetal: copper\n---\n")
                .with("dyes/unused.md", "---\nkind: dey\n---\n")
                .with("needles/dim.md", "---\nlength: long\n---\n")
                .with("vessels.yaml", "dim-pot: {made-of: coppr}\n")
                .with("days/2026-05-10/first.md", "---\nneedles: {lot: dim, weight: 40 g}\n"
                        + "bath: {water: 1 L, dye: [{is: blue-stone, amount: 1 g}]}\n---\n")
                .with("days/2026-05-10/again.md", "---\nneedles: {lot: scalded-2025, weight: 40 g}\n"
                        + "bath: {reuses: 2026-05-10-first, water: 1 L}\n---\n");
        Call first = scale("2026-05-10-first", "40g").ends(0);
        List<String> said = first.err().lines().toList();
        assertEquals(List.of("needles/dim.md has errors", "dyes/blue-stone.md has errors"),
                said.stream().map(line -> line.substring(0, line.indexOf(':'))).toList());
        assertTrue(said.get(1).contains("“mordnt”"), said.get(1));
        assertTrue(said.get(1).endsWith("; what rests on it is not known here."), said.get(1));
        assertTrue(plain(first.out()).contains("a thing of which nothing is known here"), first.out());
        assertTrue(scale("2026-05-10-again", "40g").ends(0).err().startsWith("dyes/blue-stone.md has errors: "));
        assertTrue(scale("weightless", "40g", "--vessel=dim-pot").ends(0).err()
                .startsWith("vessels.yaml has errors: "));
    }

    @Test
    void aBathOrNeedlesOfAnEntryWithErrorsNameItsFile() {
        WrittenNotebook.empty(folder)
                .with("days/2026-05-10/odd.md", "---\nneedles: {lot: scalded-2025, weight: 40 g}\nbath: {wter: 1 L}\n---\n")
                .with("days/2026-05-11/again.md", "---\nneedles: {lot: scalded-2025, weight: 40 g}\n"
                        + "bath: {reuses: 2026-05-10-odd, water: 1 L}\n---\n")
                .with("days/2026-05-11/over.md", "---\nneedles: {from: 2026-05-10-odd, weight: 40 g}\n"
                        + "bath: {water: 1 L}\n---\n");
        assertTrue(scale("2026-05-11-again", "40g").ends(0).err().startsWith("days/2026-05-10/odd.md has errors: "));
        assertTrue(scale("2026-05-11-over", "40g").ends(0).err().startsWith("days/2026-05-10/odd.md has errors: "));
    }

    @Test
    void aPersonAtTheStoveReadsALineForEachThing() {
        // By hand: 120 g is three times 40 g.
        Call scaled = scale("2026-05-09-pot", "120g").ends(0);
        assertEquals("""
                Brick pot, for 120 g of dry needles
                Bath
                  Water: 7200 mL
                  Liquor, water and all: 7320 mL
                  Brick: 2.4 g
                  Brick: 120 mL of 1 % stock, 1.2 g in it
                  Table salt: 60 g
                  Table salt: not known (“a handful”)
                Presoak
                  Water: 12000 mL
                Iron
                  Water: 3000 mL
                pH, estimated: not known: add “alkalinity: … mg/L” under “water:” in notebook.yaml, from the supplier’s report or a strip
                """, plain(scaled.out().substring(0, scaled.out().indexOf("Caution\n"))));
        List<String> cautions = scaled.out().lines().dropWhile(line -> !line.equals("Caution")).skip(1).toList();
        assertEquals("  Iron salts can kill a small child who swallows them: locked away.", cautions.get(2));
        assertEquals("  The label on the pack, local rules and licensed practice come before anything written here.",
                cautions.get(cautions.size() - 1));
        assertEquals("", scaled.err());
    }

    @Test
    void theSameIsGivenAsData() {
        JsonNode data = JsonMapper.shared().readTree(scale("2026-05-09-pot", "120g", "--json").ends(0).out());
        assertTrue(Set.copyOf(data.propertyNames()).containsAll(
                Set.of("of", "needles_g", "liquor_ml", "water_ml", "vessel", "pots", "parts", "cautions")));
        assertEquals("2026-05-09-pot", data.get("of").asString());
        assertEquals(120, data.get("needles_g").asDouble());
        assertEquals(7320, data.get("liquor_ml").asDouble());
        assertEquals(7200, data.get("water_ml").asDouble());
        JsonNode parts = data.get("parts");
        for (JsonNode part : parts) {
            assertTrue(Set.copyOf(part.propertyNames()).containsAll(
                    Set.of("is", "g", "ml", "by", "spoons", "spoons_error_percent", "stock")), part.toString());
        }
        assertEquals(2.4, parts.get(0).get("g").asDouble());
        assertEquals("needles", parts.get(0).get("by").asString());
        assertEquals(1, parts.get(1).get("stock").get("percent").asDouble());
        assertEquals(120, parts.get(1).get("stock").get("ml").asDouble());
        assertEquals("bath", parts.get(2).get("by").asString());
        assertTrue(parts.get(3).get("g").isNull());
    }

    private static final String PANS = """
            wide-pan: {title: Wide pan, shape: oval, length: 42 cm, width: 28 cm, height: 12 cm, made-of: enamel}
            box: {title: Box, shape: rectangular, length: 30 cm, width: 26 cm, height: 10 cm, made-of: enamel}
            bin: {title: Presoak bin, shape: round, diameter: 32 cm, height: 30 cm, made-of: plastic}
            jar: {title: Jar, shape: round, diameter: 12 cm, height: 26 cm, made-of: glass}
            """;

    private String inVessel(String needles, String vessel) {
        WrittenNotebook.empty(folder).with("vessels.yaml", PANS)
                .with("methods/simmer.md", "---\nbath: {vessel: wide-pan, ratio: 50}\nheat: [{to: 88 °C}]\n---\n")
                .with("methods/steep.md", "---\nbath: {vessel: wide-pan, ratio: 50}\n---\n");
        return plain(scale("simmer", needles, "--vessel=" + vessel).ends(0).out());
    }

    /**
     * By hand: 15 g in 750 mL take 780 mL with the needles, which on the oval's 42 · 28 · π/4 = 923.6 cm² stand 0.84 cm
     * high, and in three pots' worth of them 2.5 cm.
     */
    @Test
    void aPuddleInAWidePanIsSaid() {
        String puddle = inVessel("15g", "wide-pan");
        assertTrue(puddle.contains("Bath, in Wide pan, 7 % full, 0.8 cm deep with the needles\n"), puddle);
        assertTrue(puddle.contains("  It stands only 0.8 cm deep in this vessel: needles lie bare"), puddle);
        String bath = inVessel("45g", "wide-pan");
        assertTrue(bath.contains("Bath, in Wide pan, 21 % full, 2.5 cm deep with the needles\n"), bath);
        assertFalse(bath.contains("needles lie bare"), bath);
        JsonNode data = JsonMapper.shared().readTree(Call.of("scale", folder, "simmer", "--needles", "15g", "--json").ends(0).out());
        assertEquals(780 / (42 * 28 * Math.PI / 4), data.get("depth_cm").asDouble(), 1e-6);
        assertTrue(data.get("cautions").toString().contains("needles lie bare"));
    }

    /** 30 g in 1500 mL take 1560 mL, which in a box of 30 by 26 cm stand 2 cm high. */
    @Test
    void twoCentimetresCoverABundle() {
        assertFalse(inVessel("30g", "box").contains("needles lie bare"));
        assertTrue(inVessel("29.9g", "box").contains("needles lie bare"));
    }

    @Test
    void whatIsNotKnownToHoldAnythingHasNoDepth() {
        JsonNode data = JsonMapper.shared().readTree(scale("2026-05-09-pot", "120g", "--json").ends(0).out());
        assertTrue(data.get("depth_cm").isNull());
        assertTrue(data.get("filled_percent").isNull());
    }

    /** Three pots of a batch stand as deep as one of them. */
    @Test
    void eachOfSeveralPotsHasItsDepth() {
        String batch = inVessel("300g", "box");
        // 15.6 L at 5.85 L a box, three quarters of 7.8 L, are three boxes of 5.2 L: 6.7 cm.
        assertTrue(batch.contains("Bath, in 3 × Box, each 67 % full, 6.7 cm deep, with 100 g of needles"), batch);
    }

    @Test
    void plasticAndGlassAreWarnedOfOnTheStoveAlone() {
        String bin = inVessel("400g", "bin");
        assertTrue(bin.contains("\nCaution\n  Presoak bin: plastic softens on a stove or in an oven"), bin);
        assertTrue(inVessel("30g", "jar").contains("\nCaution\n  Jar: glass cracks on a stove or in an oven"));
        assertFalse(scale("steep", "400g", "--vessel=bin").ends(0).out().contains("plastic"));
    }

    @Test
    void anEntryIsNamedByItsTagOrItsIdAndAMethodByItsId() {
        assertEquals(scale("2026-05-09-pot", "80 g").ends(0), scale("41", "80 g").ends(0));
        assertEquals(scale("2026-05-09-pot", "80 g"), scale("2026-05-09-POT", "80 g"));
        // By hand: 100 g is twice 50 g; 3 L and 40 g become 6 L and 80 g.
        assertTrue(plain(scale("low-water-simmer", "100 g").ends(0).out()).contains("Table salt: 80 g"));
    }

    @Test
    void ouncesAreGrams() {
        // One avoirdupois ounce is 28.349523125 g (NIST Handbook 44, Appendix C).
        JsonNode data = JsonMapper.shared().readTree(scale("41", "4 oz", "--json").ends(0).out());
        assertEquals(4 * 28.349523125, data.get("needles_g").asDouble(), 1e-6);
        assertEquals(2 * 4 * 28.349523125 / 100, data.get("parts").get(0).get("g").asDouble(), 1e-6);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '"', textBlock = """
            0 g     | name one above 0 g
            -5 g    | “-5 g” is below zero
            1,500 g | can be read in two ways
            100     | has no unit
            5 cm    | is a length, not a mass
            lots    | does not begin with a number
            ""      | is empty
            """)
    void aWeightThatIsNoneIsRefused(String weight, String why) {
        Call refused = scale("41", weight).ends(2).says(why);
        assertEquals(1, refused.words().size());
        assertEquals("", refused.out());
    }

    @Test
    void whatIsNotThereIsSaidWithTheNearest() {
        scale("low-water-simer", "5 g").ends(1).says("did you mean “low-water-simmer”?");
        scale("2026-05-09-pott", "5 g").ends(1).says("did you mean “2026-05-09-pot”?");
        scale("?", "5 g").ends(1).says("Nothing here is called “?”; name an entry");
        scale("2026-05-09-faulty", "5 g").ends(1).says("“2026-05-09-faulty” has errors: ", "nowhere");
    }

    @Test
    void withoutAWeightOfItsOwnOnlyWhatFollowsFromTheNeedlesIsKnown() {
        // By hand: 2 % of 5 g.
        Call unweighed = scale("2026-05-09-unweighed", "5 g").ends(0).says("does not say what its own needles weighed");
        assertTrue(plain(unweighed.out()).contains("Brick: 0.1 g\n  Table salt: not known (“20 g”)"), unweighed.out());
        scale("2026-05-09-damp", "5 g").ends(0).says("was weighed damp, so only amounts in % owf can be worked out");
        scale("weightless", "5 g").ends(0).says("“for:” in a method");
        assertEquals("", scale("41", "5 g").err());
    }

    @Test
    void aWeightBeyondAnyNumberIsRefused() {
        scale("41", "9".repeat(400) + " g").ends(2);
    }
}
