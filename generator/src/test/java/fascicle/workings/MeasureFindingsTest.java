package fascicle.workings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fascicle.bath.Uptake;
import fascicle.notebook.Finding;
import fascicle.notebook.Today;
import fascicle.notebook.WrittenNotebook;
import fascicle.workings.proof.Proofreading;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Figures that can be read and are hardly what their maker meant. */
class MeasureFindingsTest {

    private static final String GLASSES = "plain: {lab: [100, 0, 0]}, before: {lab: [76.07, 0, 0]}, after: {lab: [87.35, 0, 0]}";

    @TempDir
    private Path folder;

    private WrittenNotebook notebook;

    @BeforeEach
    void begin() {
        notebook = WrittenNotebook.small(folder);
    }

    @Test
    void moreBathLeftThanThereWas() {
        pot("water: 2 L, assistants: [{is: white-vinegar, amount: 60 mL}]", "glass: {" + GLASSES + ", left: 3 L}");
        found("days/2026-05-09/pot.md:4:101: warning: “left: 3 L” is more than there was: the bath of “pot” had 2.06 L of "
                + "liquor; check both");
        pot("water: 2 L, assistants: [{is: white-vinegar, amount: 60 mL}]", "glass: {" + GLASSES + ", left: 2.1 L}");
        found();
    }

    @Test
    void aGlassOfNothingTellsOfNoUptake() {
        pot("water: 2 L", "glass: {" + GLASSES + ", left: 0 L}");
        found("days/2026-05-09/pot.md:4:101: warning: “left: 0 L” is a glass of nothing, and no uptake is reckoned from it; "
                + "write how much bath was left, or leave it out");
        Uptake uptake = Workings.of(notebook.read().notebook()).entry("2026-05-09-pot").orElseThrow().uptake().orElseThrow();
        assertEquals(Optional.of(Uptake.Why.NO_VOLUMES), uptake.why());
    }

    @Test
    void aVesselFullerThanCanBeStirred() {
        notebook.with("vessels.yaml", "small-pot: {shape: round, diameter: 18 cm, height: 14 cm}\nwide-pan: {title: Wide pan}\n");
        pot("vessel: small-pot, depth: 13 cm");
        found("days/2026-05-09/pot.md:3:34: warning: the bath of “pot” fills 95.38 % of the height of “small-pot” once the "
                + "needles are in, more than the 75 % that can be stirred and carried; take a larger vessel, less liquor, "
                + "or two pots");
        pot("vessel: small-pot, depth: 10 cm");
        found();
    }

    private static final String JAR_AND_BIN = """
            wide-pan: {title: Wide pan, made-of: enamel}
            jar: {title: Three-litre jar, shape: round, diameter: 12 cm, height: 26 cm, made-of: glass}
            bin: {title: Presoak bin, shape: round, diameter: 32 cm, height: 30 cm, made-of: plastic}
            """;

    @Test
    void plasticOrGlassOnTheStove() {
        notebook.with("vessels.yaml", JAR_AND_BIN);
        pot("vessel: bin, water: 2 L", "heat: [{to: 88 °C, hold: 1 h}]");
        found("days/2026-05-09/pot.md:3:16: warning: the bath of “pot” is heated in “Presoak bin”, which is plastic "
                + "(vessels.yaml:3:82): on a stove or in an oven it softens and drops its hot liquor; name an enamel or "
                + "stainless pot under “vessel:”, or write “on: sun” under “heat:” if the sun alone warms it");
        pot("vessel: jar, water: 2 L", "heat: [{to: 88 °C, on: oven}]");
        found("days/2026-05-09/pot.md:3:16: warning: the bath of “pot” is heated in “Three-litre jar”, which is glass "
                + "(vessels.yaml:2:86): on a stove or in an oven it cracks, unless its maker says that it may stand there; "
                + "name an enamel or stainless pot under “vessel:”, or write “on: sun” under “heat:” if the sun alone "
                + "warms it");
    }

    @Test
    void aMethodIsWarnedOfItsJarToo() {
        notebook.with("vessels.yaml", JAR_AND_BIN)
                .with("methods/low-water-simmer.md", "---\nfor: 50 g\nbath: {vessel: jar, water: 2 L}\nheat: [{to: 88 °C}]\n---\n");
        assertEquals(List.of("methods/low-water-simmer.md"), Proofreading.of(notebook.read().notebook(), List.of()).findings()
                .stream().filter(finding -> finding.message().contains("is heated in")).map(finding -> finding.place().file())
                .toList());
    }

    @ParameterizedTest
    @ValueSource(strings = {"cool: 1 h", "heat: [{to: 45 °C, hold: 8 h, on: sun}]"})
    void aJarInTheSunOrABinOfColdWater(String heat) {
        notebook.with("vessels.yaml", JAR_AND_BIN);
        pot("vessel: jar, water: 2 L", heat);
        found();
        pot("vessel: bin, water: 2 L", heat);
        found();
    }

    @Test
    void aBathAboveTheBrimCannotBe() {
        pot("vessel: wide-pan, water: 12 L");
        found("days/2026-05-09/pot.md:3:33: warning: “12 L” makes 12 L of liquor, which cannot be: “wide-pan” holds 11.08 L "
                + "to the brim; check the water, the weight of the needles, or the vessel");
    }

    @Test
    void aDepthInAVesselWhoseMeasuresCannotBe() {
        notebook.with("vessels.yaml", "wide-pan: {shape: oval, length: 42 cm, width: 0 cm, height: 12 cm}\n");
        pot("vessel: wide-pan, depth: 7 cm");
        found("days/2026-05-09/pot.md:3:33: warning: “depth: 7 cm” tells no volume, because the measures of “wide-pan” "
                        + "(vessels.yaml:1:11) are not all known; it needs a shape, with length and width or with a "
                        + "diameter, each above 0 cm",
                "vessels.yaml:1:47: error: “width”: “0 cm” cannot be: a vessel measures more than 0 cm; measure its inside, "
                        + "or leave “width” out");
    }

    @Test
    void bundlesOfNothingAndMoreThanAPotTakes() {
        notebook.with("days/2026-05-09/pot.md", "---\nneedles: {lot: scalded-2025, bundles: 0}\n---\n");
        found("days/2026-05-09/pot.md:2:39: warning: “0” bundles are no needles to reckon with; write how many there were, such "
                + "as 3, or what they weighed");
        notebook.with("days/2026-05-09/pot.md", "---\nneedles: {lot: scalded-2025, bundles: 4000}\n---\n");
        found("days/2026-05-09/pot.md:2:39: warning: 60 kg of needles is more than 5 kg in one pot; check the figure and its "
                + "unit");
        notebook.with("days/2026-05-09/pot.md", "---\nneedles: {lot: scalded-2025, bundles: -3}\n---\n");
        found("days/2026-05-09/pot.md:2:39: error: “bundles”: “-3” is out of range; expected is a number from 0 to 100000");
    }

    @Test
    void aGlassOfPlainWaterDarkerThanTheBath() {
        pot("water: 1 L", "glass: {plain: {hex: \"#402020\"}, before: {hex: \"#a03020\"}, after: {hex: \"#e8c8c0\"}, left: 1 L}");
        found("days/2026-05-09/pot.md:4:16: warning: the glass of plain water is darker than that of the bath of “pot”, which "
                + "cannot be in the same light, and no uptake is reckoned from it; check that “plain” and “before” are not "
                + "mixed up, or read them again side by side");
    }

    /** A German degree is 17.848 mg/L, so that 57 are above 1000 mg/L and 56 below. */
    @Test
    void alkalinityInDegrees() {
        cover("water: {alkalinity: 57 °dH}");
        found("notebook.yaml:4:21: warning: “alkalinity: 57 °dH” is more than the 1000 mg/L that one expects at most of water "
                + "from a tap or a well; check the figure and its unit");
        cover("water: {alkalinity: 56 dH}");
        found();
        cover("water: {alkalinity: 1001 ppm}");
        assertEquals(1, notebook.read().findings().size() + Workings.of(notebook.read().notebook()).found().findings().size());
    }

    @Test
    void aWordBeforeAFigureIsNoUnit() {
        cover("water: {alkalinity: about 120 mg/L}");
        found("notebook.yaml:4:21: error: “alkalinity”: “about 120 mg/L” does not begin with a number; write a number, such "
                + "as 1.5; a rough figure begins with about");
    }

    @Test
    void amountsOfNothing() {
        pot("water: 3 L, dye: [{is: brick, amount: 0 % owf}], assistants: [{is: salt, amount: 0 g}, {is: salt, amount: 0 tsp}]");
        found("days/2026-05-09/pot.md:3:46: warning: “0 % owf” of Brick is nothing; fill in how much it was, or leave the "
                        + "line out",
                "days/2026-05-09/pot.md:3:89: warning: “0 g” of Table salt is nothing; fill in how much it was, or leave "
                        + "the line out",
                "days/2026-05-09/pot.md:3:114: warning: “0 tsp” of Table salt is nothing; fill in how much it was, or "
                        + "leave the line out");
    }

    @Test
    void aMethodForNothing() {
        notebook.with("methods/low-water-simmer.md", "---\nfor: 0 g\nbath: {water: 3 L}\n---\n");
        found("methods/low-water-simmer.md:2:6: warning: “for: 0 g” is no weight of needles; write what the amounts are for, "
                + "such as “for: 50 g”, or leave it out");
    }

    /** Alkalinity (“M”, methyl orange) is titrated with strong acid to an end point of 4.3 to 4.5 (glossaries of water treatment). */
    @Test
    void sourWaterHasNoAlkalinity() {
        cover("water: {alkalinity: 90 mg/L, ph: 2}");
        found("notebook.yaml:4:34: warning: “ph: 2” and “alkalinity: 90 mg/L” cannot both be: below a pH of about 4.3 water "
                + "has no alkalinity; compare both with the supplier's report");
    }

    @Test
    void waterAsNoTapGivesIt() {
        cover("water: {alkalinity: 1200 mg/L, ph: 11}");
        found("notebook.yaml:4:21: warning: “alkalinity: 1200 mg/L” is more than the 1000 mg/L that one expects at most of "
                        + "water from a tap or a well; check the figure and its unit",
                "notebook.yaml:4:36: warning: “ph: 11” is outside 4.5 to 10, where water from a tap or a well lies; check "
                        + "the reading");
    }

    @Test
    void aBalanceForSacks() {
        cover("balance: 1 kg");
        found("notebook.yaml:4:10: warning: “balance: 1 kg” is a coarser step than 100 g, by which no dye is weighed; check "
                + "the figure and its unit (0.1 g is usual)");
    }

    @Test
    void dampNeedlesThatKeepNotAtAllOrForever() {
        cover("damp-keeps: 0 days");
        found("notebook.yaml:4:13: warning: “damp-keeps: 0 days” is no time at all; write how long damp needles keep cold, "
                + "such as 3 days, or leave it out");
        cover("damp-keeps: 31 days");
        found("notebook.yaml:4:13: warning: “damp-keeps: 31 days” is longer than 30 days, and damp needles grow mould "
                + "before; check the figure and its unit");
    }

    @ParameterizedTest
    @ValueSource(strings = {"45 m", "8 mm"})
    void needlesOfNoPine(String length) {
        notebook.with("needles/scalded-2025.md", "---\ncondition: scalded\nlength: " + length + "\n---\n");
        found("needles/scalded-2025.md:3:9: warning: “length: " + length + "” is outside 1 cm to 1 m, where the needles of "
                + "pines lie; check the figure and its unit");
    }

    @ParameterizedTest
    @ValueSource(strings = {"310 g", "0.31 g"})
    void aTeaspoonOfNothingThatDyes(String weight) {
        notebook.with("dyes/brick.md", "---\nkind: dye\nlevel-tsp: {weight: " + weight + "}\n---\n");
        found("dyes/brick.md:3:21: warning: “weight: " + weight + "” is outside 0.5 to 15 g, which a level teaspoon of "
                + "anything weighs; check the figure, and that it is for one teaspoon");
    }

    @Test
    void aPlantMayBeAsLightAsItIs() {
        notebook.with("dyes/brick.md", "---\nkind: dye\nform: plant\nlevel-tsp: {weight: 0.2 g}\n---\n");
        found();
    }

    @Test
    void acidsThatAreNone() {
        notebook.with("dyes/white-vinegar.md", "---\nkind: acid\nform: liquid\nacidity: 0 %\n---\n");
        found("dyes/white-vinegar.md:4:10: warning: “acidity: 0 %” is no acid; write what the label says, such as 5 %, or "
                + "leave it out");
    }

    @Test
    void acidsThatBurn() {
        notebook.with("dyes/white-vinegar.md", "---\nkind: acid\nform: liquid\nacidity: 80 %\n---\n");
        found("dyes/white-vinegar.md:4:10: warning: “acidity: 80 %” is an acid that burns skin, eyes and lungs: it is for "
                + "someone who knows how to dilute it, and its label decides; household vinegar has about 5 % (if it is "
                + "citric acid, add “acid: citric”)");
        notebook.with("dyes/white-vinegar.md", "---\nkind: acid\nacid: citric\nform: liquid\nacidity: 50 %\n---\n");
        found();
    }

    @Test
    void aPurchaseOfNothing() {
        notebook.with("dyes/brick.md", "---\nkind: dye\npack: {holds: 50 g}\nbought: [{on: 2026-03-01, packs: 0}]\n---\n");
        found("dyes/brick.md:4:34: warning: “packs: 0” is no purchase; write how many packs it was, or take it out");
    }

    @Test
    void aDateACenturyAheadIsNotToday() {
        notebook.with("dyes/brick.md", "---\nkind: dye\nbought: [{on: 2999-03-01, packs: 1}, {on: 2026-06-01, packs: 1}]\n---\n")
                .with("needles/scalded-2025.md", "---\ncondition: scalded\ngathered: 2925-10-04\n---\n");
        pot("water: 3 L", "kept: {weight: 40 g, since: 2126-05-11}");
        found("days/2026-05-09/pot.md:4:29: warning: “since: 2126-05-11” is more than a year after the newest dye day, "
                        + "2026-05-09, and does not count as today; check the year",
                "dyes/brick.md:3:15: warning: “on: 2999-03-01” is more than a year after the newest dye day, 2026-05-09, and "
                        + "does not count as today; check the year",
                "needles/scalded-2025.md:3:11: warning: “gathered: 2925-10-04” is more than a year after the newest dye day, "
                        + "2026-05-09, and does not count as today; check the year");
        assertEquals(Optional.of(LocalDate.parse("2026-06-01")), Today.of(notebook.read().notebook()));
    }

    /** 3000 weeks from 2026-05-09 are 57 years; 30 weeks are 210 days, of which 22 are left in May: the 5th of December. */
    @Test
    void aReadingInTheWindowTakenInAnotherLifeIsNotToday() {
        pot("water: 3 L", "window: [{after: 30 weeks, lab: [40, 20, 20]}, {after: 3000 weeks, lab: [50, 10, 10]}]");
        found("days/2026-05-09/pot.md:4:56: warning: “after: 3000 weeks” puts this reading on 2083-11-06, more than a year "
                + "after the newest dye day, 2026-05-09, and does not count as today; check the figure and its unit, such as "
                + "“after: 6 weeks”");
        assertEquals(Optional.of(LocalDate.parse("2026-12-05")), Today.of(notebook.read().notebook()));
        pot("water: 3 L", "window: [{after: 999999999999 weeks, lab: [50, 10, 10]}]");
        assertEquals(Optional.of(LocalDate.parse("2026-05-09")), Today.of(notebook.read().notebook()));
    }

    private void cover(String line) {
        notebook.with("notebook.yaml", "form: 1\ntitle: A notebook\nkitchen: metric\n" + line + "\n");
    }

    /** Writes a pot with a bath of its own, and lines from line 4 on. */
    private void pot(String bath, String... lines) {
        notebook.with("days/2026-05-09/pot.md", "---\nneedles: {weight: 45 g}\nbath: {" + bath + "}\n"
                + String.join("\n", lines) + "\n---\n");
    }

    private void found(String... expected) {
        var read = notebook.read();
        List<String> said = Proofreading.of(read.notebook(), read.findings()).findings().stream()
                .map(Finding::toString).toList();
        assertEquals(String.join("\n", expected), String.join("\n", said));
    }
}
