package fascicle.workings.acidity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.notebook.Finding;
import fascicle.notebook.WrittenNotebook;
import fascicle.workings.EntryWorking;
import fascicle.workings.Workings;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How sour a bath is, as far as the notebook tells. */
class AciditiesTest {

    private static final String TAP = "water: {alkalinity: 100 mg/L, ph: 7.5}\n";

    @TempDir
    private Path folder;

    private WrittenNotebook notebook(String water) {
        return WrittenNotebook.small(folder)
                .with("notebook.yaml", "form: 1\ntitle: A small notebook\nkitchen: us\n" + water);
    }

    private static WrittenNotebook pot(WrittenNotebook notebook, String name, String bath) {
        return notebook.with("days/2026-05-09/" + name + ".md",
                "---\nneedles: {lot: scalded-2025, weight: 45 g}\n" + bath + "\n---\n");
    }

    private AcidityFigures of(WrittenNotebook notebook, String bath) {
        var read = pot(notebook, "pot", bath).read();
        assertEquals(0, read.findings().stream().filter(found -> found.level() == Finding.Level.ERROR).count(),
                () -> read.findings().toString());
        Workings workings = Workings.of(read.notebook());
        return Acidities.of(workings).bath(workings.entry("2026-05-09-pot").orElseThrow());
    }

    private AcidityFigures of(String bath) {
        return of(notebook(TAP), bath);
    }

    private static double cold(AcidityFigures acidity) {
        return acidity.cold().orElseThrow(() -> new AssertionError("unknown: " + acidity.why()));
    }

    private String why(String bath) {
        return of(bath).why().orElseThrow().word();
    }

    /** acid.csv: a US tablespoon in a litre at 100 mg/L reads 4.063 closed, 4.066 once all carbon dioxide is gone. */
    @Test
    void aSpoonOfVinegarInALitreOfTapWater() {
        AcidityFigures acidity = of("bath: {water: 1 L, assistants: [{is: white-vinegar, amount: 1 tbsp}]}");
        assertEquals(4.063, cold(acidity), 0.001);
        assertEquals(4.066, acidity.heated().orElseThrow(), 0.001);
    }

    /** acid.csv: a US tablespoon, 14.9 g by the United States' food tables, read 4.063 in that litre. */
    @Test
    void aWeighedVinegarIsAsSourAsAPouredOne() {
        assertEquals(4.063, cold(of("bath: {water: 1 L, assistants: [{is: white-vinegar, amount: 14.9 g}]}")), 0.005);
    }

    /** acid.csv: the same in a litre of water without alkalinity reads 3.344. */
    @Test
    void rainHasNothingToAnswerVinegarWith() {
        assertEquals(3.344, cold(of(notebook(""),
                "bath: {water: 1 L, from: rain, assistants: [{is: white-vinegar, amount: 1 tbsp}]}")), 0.001);
    }

    @Test
    void softenedWaterIsTheTapsAndAWellIsNot() {
        assertEquals(4.063, cold(of(
                "bath: {water: 1 L, from: softened, assistants: [{is: white-vinegar, amount: 1 tbsp}]}")), 0.001);
        assertEquals("well", why("bath: {water: 1 L, from: well, assistants: [{is: white-vinegar, amount: 1 tbsp}]}"));
    }

    /** 100 mL of 1 L stand, and 400 mL of tap water fill the half litre, with the powder and without it. */
    @Test
    void aPowderTakesNoWatersPlaceInAReusedBath() {
        WrittenNotebook notebook = notebook(TAP)
                .with("dyes/earth.md", "---\nkind: dye\nform: powder\npack: {holds: 500 mL}\n---\n")
                .with("days/2026-05-08/first.md", "---\nneedles: {lot: scalded-2025, weight: 45 g}\nbath: {water: 1 L, "
                        + "assistants: [{is: white-vinegar, amount: 60 mL}]}\nglass: {left: 100 mL}\n---\n");
        double without = cold(of(notebook, "bath: {reuses: 2026-05-08-first, water: 400 mL}"));
        assertEquals(without, cold(of(notebook,
                "bath: {reuses: 2026-05-08-first, water: 400 mL, dye: [{is: earth, amount: 1/2 packet}]}")), 1e-9);
    }

    @Test
    void withoutAnyAcidABathIsItsWater() {
        assertEquals(7.5, cold(of("bath: {water: 1 L, dye: [{is: brick, amount: 1 % owf}], assistants: "
                + "[{is: salt, amount: 10 g}]}")), 1e-6);
    }

    /** Published table of acids: 10 mmol/L of citric acid read 2.62; that is 1.92124 g in a litre. */
    @Test
    void citricAcidIsWeighed() {
        WrittenNotebook notebook = notebook("")
                .with("dyes/citric-acid.md", "---\nkind: acid\nform: crystals\n---\n");
        assertEquals(2.62, cold(of(notebook,
                "bath: {water: 1 L, from: rain, assistants: [{is: citric-acid, amount: 1.92124 g}]}")), 0.03);
        AcidityFigures stock = of(notebook, "bath: {ratio: 22.222222222, from: rain, assistants: "
                + "[{is: citric-acid, amount: 19.2124 mL of 10 % stock}]}");
        assertEquals(2.62, cold(stock), 0.03);
    }

    @Test
    void whatIsNotReckonedWithIsNamed() {
        WrittenNotebook notebook = notebook(TAP)
                .with("dyes/alum.md", "---\nkind: mordant\nform: powder\n---\n")
                .with("dyes/soda.md", "---\nkind: alkali\nform: powder\n---\n")
                .with("dyes/hulls.md", "---\nkind: dye\nform: plant\n---\n")
                .with("dyes/drops.md", "---\nkind: wetting\nform: liquid\n---\n")
                .with("dyes/mystery.md", "---\nform: liquid\n---\n")
                .with("dyes/sour.md", "---\nkind: acid\nform: liquid\nacidity: 5 %\n---\n")
                .with("dyes/thin-vinegar.md", "---\nkind: acid\nform: liquid\n---\n")
                .with("dyes/plain-vinegar.md", "---\nkind: acid\n---\n")
                .with("dyes/lemon.md", "---\nkind: acid\n---\n");
        String[][] known = {
            {"assistants: [{is: soda, amount: 3 g}]", "alkali: soda"},
            {"assistants: [{is: alum, amount: 3 g}]", "mordant: alum"},
            {"dye: [{is: hulls, amount: 100 g}]", "plant"},
            {"extract: {of: 100 g, water: 1 L}", "plant"},
            {"assistants: [{is: mystery, amount: 3 mL}]", "kind: mystery"},
            {"assistants: [{is: sour, amount: 30 mL}]", "acid-kind: sour"},
            {"assistants: [{is: thin-vinegar, amount: 30 mL}]", "acid-strength: thin-vinegar"},
            {"assistants: [{is: plain-vinegar, amount: 30 mL}]", "acid-strength: plain-vinegar"},
            {"assistants: [{is: plain-vinegar, amount: 30 g}]", "acid-strength: plain-vinegar"},
            {"assistants: [{is: lemon, amount: 30 mL}]", "acid-strength: lemon"},
            {"assistants: [{is: white-vinegar, amount: a splash}]", "acid-amount: white-vinegar"}};
        for (String[] row : known) {
            assertEquals(row[1], of(notebook, "bath: {water: 1 L, " + row[0] + "}").why().orElseThrow().word());
        }
        assertTrue(of(notebook, "bath: {water: 1 L, assistants: [{is: drops, amount: 3 mL}]}").cold().isPresent());
    }

    @Test
    void whatIsMissingIsNamed() {
        assertEquals("liquor", why("bath: {assistants: [{is: white-vinegar, amount: 30 mL}]}"));
        assertEquals("water", of(notebook(""), "bath: {water: 1 L}").why().orElseThrow().word());
    }

    /** Half a litre of a litre's bath with 3 in 1 L: a shared bin is taken whole, whatever its pots weigh. */
    @Test
    void aSharedBinIsTakenWhole() {
        Workings workings = Workings.of(notebook(TAP).with("days/2026-05-09/pots.md", """
                ---
                presoak: {water: 1 L, with: [{is: white-vinegar, amount: 1 tbsp}]}
                pots:
                  - {name: one, needles: {lot: scalded-2025, weight: 20 g}}
                  - {name: two, needles: {lot: scalded-2025, weight: 90 g}}
                ---
                """).read().notebook());
        for (String name : new String[] {"one", "two"}) {
            EntryWorking pot = workings.entry("2026-05-09-" + name).orElseThrow();
            assertEquals(4.063, cold(Acidities.of(workings).presoak(pot.presoak().orElseThrow())), 0.001);
        }
    }

    @Test
    void aRecipeScaledByItsNeedlesIsAsSourAsItWas() {
        String bath = "bath: {ratio: 60, assistants: [{is: white-vinegar, amount: 60 mL}]}";
        double written = cold(of(bath));
        Workings workings = Workings.of(pot(notebook(TAP), "pot", bath).read().notebook());
        EntryWorking pot = workings.entry("2026-05-09-pot").orElseThrow();
        assertEquals(written, cold(Acidities.of(workings).bath(
                workings.scale("2026-05-09-pot", 120).orElseThrow(), pot.entry().recipe().bath())), 1e-9);
    }

    /**
     * A litre with a spoon (14.787 mL) leaves 955 mL and 45 g of needles carry 45 mL out: 95.5 % of the acid stay. Filled
     * up with 60 mL of rain, that is the pH of 0.955 spoons in 1015 mL.
     */
    @Test
    void aReusedBathKeepsItsAcidButForWhatTheNeedlesCarriedOut() {
        WrittenNotebook notebook = notebook("");
        pot(notebook, "first", "bath: {water: 1 L, from: rain, assistants: [{is: white-vinegar, amount: 1 tbsp}]}\n"
                + "glass: {left: 955 mL}");
        AcidityFigures second = of(notebook,
                "bath: {reuses: 2026-05-09-first, from: rain, water: 60 mL}");
        double spoons = 0.955 * 14.78676478125 * 0.05 / 60.052 / 1.015;
        // Ostwald's dilution law: h² = Ka(c − h)
        double ka = StrictMath.pow(10, -4.756);
        double hydrogen = (-ka + StrictMath.sqrt(ka * ka + 4 * ka * spoons)) / 2;
        assertEquals(-StrictMath.log10(hydrogen), cold(second), 0.001);
    }

    @Test
    void whatDisturbedTheBathBeforeDisturbsItStill() {
        WrittenNotebook notebook = notebook(TAP).with("dyes/soda.md", "---\nkind: alkali\nform: powder\n---\n");
        pot(notebook, "first", "bath: {water: 1 L, assistants: [{is: soda, amount: 1 g}]}\nglass: {left: 900 mL}");
        assertEquals("alkali: soda", of(notebook, "bath: {reuses: 2026-05-09-first, water: 100 mL}").why().orElseThrow()
                .word());
        pot(notebook, "first", "bath: {water: 1 L, assistants: [{is: white-vinegar, amount: 30 mL}]}");
        assertEquals("liquor", of(notebook, "bath: {reuses: 2026-05-09-first}").why().orElseThrow().word(),
                "nobody said how much was left");
    }
}
