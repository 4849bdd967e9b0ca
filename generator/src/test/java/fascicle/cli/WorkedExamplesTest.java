package fascicle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.notebook.WrittenNotebook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Published worked examples of dye laboratories, and a practitioner's pot, through the commands. */
class WorkedExamplesTest {

    @TempDir
    private Path folder;

    private WrittenNotebook notebook;

    @BeforeEach
    void write() {
        notebook = WrittenNotebook.small(folder)
                .with("dyes/wetter.md", "---\nkind: wetting\nform: liquid\n---\n")
                .with("dyes/alkali.md", "---\nkind: alkali\nform: powder\n---\n");
    }

    private JsonNode entry(String id) throws IOException {
        Path book = folder.resolve("../book-" + folder.getFileName()).normalize();
        Call.of("publish", folder, "--to", book).ends(0);
        JsonNode data = JsonMapper.shared().readTree(Files.readString(book.resolve("data/book.json")));
        return data.get("entries").valueStream().filter(entry -> entry.get("id").asString().equals(id)).findFirst()
                .orElseThrow();
    }

    private JsonNode scaled(String id, String... more) {
        Object[] call = new Object[more.length + 4];
        call[0] = "scale";
        call[1] = folder;
        call[2] = id;
        call[more.length + 3] = "--json";
        System.arraycopy(more, 0, call, 3, more.length);
        return JsonMapper.shared().readTree(Call.of(call).ends(0).out());
    }

    /** "Dyeing calculation in lab dip" (Textile Calculation, 2015-01): 37.5 mL of stocks, so 12.5 mL of water. */
    @Test
    void aLabDipOfFiveGramsAtOneToTen() throws IOException {
        notebook.with("days/2026-05-09/dip.md", """
                ---
                needles: {lot: scalded-2025, weight: 5 g}
                bath:
                  ratio: 10
                  dye: [{is: brick, amount: 7.5 mL of 1 % stock}]
                  assistants:
                    - {is: wetter, amount: 2.5 mL of 1 % stock}
                    - {is: salt, amount: 10 mL of 1 % stock}
                    - {is: salt, amount: 10 mL of 20 % stock}
                    - {is: alkali, amount: 5 mL of 1 % stock}
                    - {is: alkali, amount: 2.5 mL of 20 % stock}
                ---
                """);
        JsonNode bath = entry("2026-05-09-dip").get("bath");
        assertEquals(50, bath.get("liquor_ml").asDouble(), 1e-6);
        assertEquals(12.5, bath.get("water_ml").asDouble(), 1e-6);
        assertEquals(1.5, bath.get("dye").get(0).get("owf_percent").asDouble(), 1e-6);
        assertEquals(40, bath.get("assistants").get(2).get("g_per_l").asDouble(), 1e-6);
        JsonNode twice = scaled("2026-05-09-dip", "--needles", "10 g");
        assertEquals(25, twice.get("water_ml").asDouble(), 1e-6);
        assertEquals(15, twice.get("parts").get(0).get("stock").get("ml").asDouble(), 1e-6);
    }

    /** The same recipe at 1:5 fits while dyed at 1.5 %; at 3 % the stocks alone are 30 mL of 25: a stronger one is asked for. */
    @Test
    void aBathThatItsStocksOverfill() {
        String bath = """
                ---
                needles: {lot: scalded-2025, weight: 5 g}
                bath:
                  ratio: 5
                  dye: [{is: brick, amount: %s of 1 %% stock}]
                  assistants:
                    - {is: wetter, amount: 1.25 mL of 1 %% stock}
                    - {is: salt, amount: 5 mL of 1 %% stock}
                    - {is: salt, amount: 5 mL of 20 %% stock}
                    - {is: alkali, amount: 2.5 mL of 1 %% stock}
                    - {is: alkali, amount: 1.25 mL of 20 %% stock}
                ---
                """;
        notebook.with("days/2026-05-09/dip.md", bath.formatted("7.5 mL"));
        Call.of("proof", folder).ends(0);
        notebook.with("days/2026-05-09/dip.md", bath.formatted("15 mL"));
        String findings = Call.of("proof", folder).ends(1).out();
        assertTrue(findings.contains("the liquid parts come to 30 mL but the liquor is only 25 mL: use a stronger stock"),
                findings);
    }

    /**
     * A US tablespoon of 5 % vinegar in a US gallon, in water of pH 7.5 and an alkalinity of 0, 50, 100 and 200 mg/L as
     * CaCO₃: computed by charge balance from the constants of NIST Standard Reference Database 46 and of Plummer and
     * Busenberg (1982), closed system, 25 °C.
     */
    @ParameterizedTest
    @CsvSource({"0, 3.639", "50, 4.419", "100, 4.922", "200, 5.835"})
    void aSpoonOfVinegarHardlySoursAGallonOfHardWater(int alkalinity, double acidity) throws IOException {
        notebook.with("notebook.yaml", "form: 1\ntitle: Hard water\nkitchen: us\nwater: {alkalinity: " + alkalinity
                        + " mg/L}\n")
                .with("dyes/white-vinegar.md", "---\nkind: acid\nform: liquid\nacidity: 5 %\nacid: acetic\n---\n")
                .with("days/2026-05-09/gallon.md", """
                        ---
                        needles: {lot: scalded-2025, weight: 2 oz}
                        bath: {water: 1 gallon, dye: [{is: brick, amount: 1 % owf}], assistants: [{is: white-vinegar, amount: 1 tbsp}]}
                        ---
                        """);
        // The published figures are of a tablespoon in a gallon of solution; 15 mL on 3785 move them by less than 0.01.
        assertEquals(acidity, entry("2026-05-09-gallon").get("bath").get("ph_estimate").asDouble(), 0.01);
    }

    /** By hand: π/4 · 42 · 28 cm² is 923.6 cm², so 3 L stand 3.248 cm deep and, with 50 g of needles, fill 27.97 % of 12 cm. */
    @Test
    void howDeepAndHowFull() throws IOException {
        notebook.with("days/2026-05-09/full.md", """
                ---
                needles: {lot: scalded-2025, weight: 50 g}
                bath: {vessel: wide-pan, water: 3 L, dye: [{is: brick, amount: 1 % owf}]}
                ---
                """);
        JsonNode bath = entry("2026-05-09-full").get("bath");
        assertEquals(3.248, bath.get("depth_cm").asDouble(), 5e-4);
        assertEquals(27.97, bath.get("filled_percent").asDouble(), 5e-3);
    }

    /** 40 g of fibre at 2 % owf from a 1 % stock at 1:30: computed from the formulas of the same pages. */
    @Test
    void fortyGramsAtOneToThirty() throws IOException {
        notebook.with("days/2026-05-09/thirty.md", """
                ---
                needles: {lot: scalded-2025, weight: 40 g}
                bath: {ratio: 30, dye: [{is: brick, amount: 80 mL of 1 % stock}]}
                ---
                """);
        JsonNode bath = entry("2026-05-09-thirty").get("bath");
        assertEquals(1200, bath.get("liquor_ml").asDouble(), 1e-6);
        assertEquals(1120, bath.get("water_ml").asDouble(), 1e-6);
        assertEquals(0.8, bath.get("dye").get(0).get("g").asDouble(), 1e-6);
        assertEquals(2, bath.get("dye").get(0).get("owf_percent").asDouble(), 1e-6);
        assertEquals(0.6667, bath.get("dye").get(0).get("g_per_l").asDouble(), 1e-4);
    }

    /** NIST Handbook 44, Appendix C: eight ounces are 226.796185 g, of which 2 % are 4.5359 g. */
    @Test
    void eightOuncesAtTwoPerCent() {
        notebook.with("days/2026-05-09/ounces.md", """
                ---
                needles: {lot: scalded-2025, weight: 50 g}
                bath: {ratio: 30, dye: [{is: brick, amount: 2 % owf}]}
                ---
                """);
        JsonNode scaled = scaled("2026-05-09-ounces", "--needles", "8oz");
        assertEquals(226.796185, scaled.get("needles_g").asDouble(), 1e-6);
        assertEquals(4.5359, scaled.get("parts").get(0).get("g").asDouble(), 1e-4);
    }

    /**
     * Water about three inches deep in a small pot, two teaspoons of liquid dye and a quarter of a cup of salt (common
     * practice, no source). By hand, with NIST Handbook 44's spoons and the USDA's cup of salt (292 g): a round pot of
     * 8 in holds π/4 · 20.32² · 7.62 = 2471.1 mL at that depth.
     */
    @Test
    void aPractitionersSmallPot() {
        notebook.with("notebook.yaml", "form: 1\ntitle: A small pot\nkitchen: us\nbalance: 1 g\n")
                .with("vessels.yaml", "small: {shape: round, diameter: 8 in, height: 6 in}\n"
                        + "wide-pan: {shape: round, diameter: 12 in, height: 5 in}\n")
                .with("dyes/sunset.md", "---\nkind: dye\nform: liquid\n---\n")
                .with("dyes/table-salt.md", "---\nkind: salt\nform: crystals\n---\n")
                .with("days/2026-05-09/small.md", """
                        ---
                        needles: {lot: scalded-2025, weight: 2 oz}
                        bath:
                          vessel: small
                          depth: 3 in
                          dye: [{is: sunset, amount: 2 tsp}]
                          assistants: [{is: table-salt, amount: 1/4 cup}]
                        ---
                        """);
        JsonNode same = scaled("2026-05-09-small", "--needles", "2 oz");
        assertEquals(2471.1, same.get("liquor_ml").asDouble(), 0.05);
        assertEquals(43.58, same.get("ratio").asDouble(), 0.01);
        assertEquals("2 tsp", same.get("parts").get(0).get("spoons").asString());
        assertEquals("1/4 cup", same.get("parts").get(1).get("spoons").asString());
        assertEquals(73, same.get("parts").get(1).get("g").asDouble(), 1e-9);
        assertEquals(1, same.get("pots").asInt());
        JsonNode half = scaled("2026-05-09-small", "--needles", "1 oz");
        assertEquals(2471.1, half.get("liquor_ml").asDouble(), 0.05, "the depth covers them, however few they are");
        assertEquals("1 tsp", half.get("parts").get(0).get("spoons").asString(), "dye follows the needles");
        assertEquals("1/4 cup", half.get("parts").get(1).get("spoons").asString(), "salt follows the water");
        assertTrue(half.get("cautions").toString().contains("Expect it paler"), half.toString());
        JsonNode wide = scaled("2026-05-09-small", "--needles", "2 oz", "--vessel", "wide-pan");
        assertEquals(5560.0, wide.get("liquor_ml").asDouble(), 0.1, "π/4 · 30.48² · 7.62");
        assertEquals("1/2 cup + 1 tbsp", wide.get("parts").get(1).get("spoons").asString());
        assertEquals(0, wide.get("parts").get(1).get("spoons_error_percent").asDouble(), 1e-6);
    }

    /** By hand: 40 g of husks in 1.8 L for 50 g of needles are 24 g in 1.08 L for 30 g. */
    @Test
    void aPlantIsDrawnOutForTheNeedlesThereAre() throws IOException {
        notebook.with("dyes/husks.md", "---\nkind: dye\nform: plant\n---\n")
                .with("methods/plant.md", """
                        ---
                        for: 50 g
                        bath: {ratio: 50, dye: [{is: husks, amount: 80 % owf}], extract: {of: 40 g, state: dried, water: 1.8 L}}
                        ---
                        """)
                .with("days/2026-05-09/plant.md", "---\nmethod: plant\nneedles: {lot: scalded-2025, weight: 30 g}\n---\n");
        JsonNode drawn = entry("2026-05-09-plant").get("bath").get("extract");
        assertEquals(24, drawn.get("of_g").asDouble(), 1e-9);
        assertEquals(1080, drawn.get("water_ml").asDouble(), 1e-9);
        JsonNode scaled = scaled("2026-05-09-plant", "--needles", "60 g").get("extract");
        assertEquals(48, scaled.get("of_g").asDouble(), 1e-9);
        assertEquals(2160, scaled.get("water_ml").asDouble(), 1e-9);
        assertEquals(80, scaled("plant", "--needles", "100 g").get("extract").get("of_g").asDouble(), 1e-9);
    }

    /** 2 L less what the needles carried: 1.6 L were left for 40 g, so 0.8 L go to 20 g; nobody said what was poured on top. */
    @Test
    void anOldBathIsNoFreshOne() {
        notebook.with("days/2026-05-09/one.md", """
                        ---
                        needles: {lot: scalded-2025, weight: 40 g}
                        bath: {water: 2 L, dye: [{is: brick, amount: 1 g}]}
                        glass: {left: 1.6 L}
                        ---
                        """)
                .with("days/2026-05-10/two.md", """
                        ---
                        needles: {lot: scalded-2025, weight: 40 g}
                        bath: {reuses: 2026-05-09-one}
                        ---
                        """);
        JsonNode scaled = scaled("2026-05-10-two", "--needles", "20 g");
        assertEquals(800, scaled.get("standing_ml").asDouble(), 1e-9);
        assertTrue(scaled.get("water_ml").isNull(), scaled.toString());
        assertTrue(scaled.get("cautions").toString().contains("cannot be poured anew"), scaled.toString());
        notebook.with("days/2026-05-10/less.md", """
                ---
                needles: {lot: scalded-2025, weight: 40 g}
                bath: {reuses: 2026-05-09-one, ratio: 30, assistants: [{is: white-vinegar, amount: 20 mL}]}
                ---
                """);
        assertEquals(1180, scaled("2026-05-10-less", "--needles", "40 g").get("standing_ml").asDouble(), 1e-9,
                "1200 mL less the vinegar: there is no room for 1600");
    }

    @Test
    void aBatchTooLargeForItsPotIsSharedOut() {
        // By hand: 54 L and 1.8 L of needles, where the oval takes ¾ · π/4 · 42 · 28 · 12 mL = 8.3 L.
        JsonNode scaled = scaled("low-water-simmer", "--needles", "900 g");
        assertEquals(7, scaled.get("pots").asInt());
        assertEquals(100 * (54 + 1.8) / 7 / (42 * 28 * 12 * Math.PI / 4000), scaled.get("filled_percent").asDouble(), 1e-6);
    }

    @Test
    void aVesselOrAKitchenThatIsNoneIsAWrongCall() {
        Call.of("scale", folder, "low-water-simmer", "--needles", "9 g", "--vessel", "wide-pann").ends(2)
                .says("did you mean “wide-pan”?");
        Call.of("scale", folder, "low-water-simmer", "--needles", "9 g", "--kitchen", "french").ends(2)
                .says("us, metric or imperial");
    }
}
