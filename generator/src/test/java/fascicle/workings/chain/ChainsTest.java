package fascicle.workings.chain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.bath.Magnitude;
import fascicle.notebook.Edition;
import fascicle.notebook.WrittenNotebook;
import fascicle.notebook.edition.EditionCut;
import fascicle.workings.EntryWorking;
import fascicle.workings.Workings;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A standing bath: an exhausted bath that is used again with fresh dye for what was taken up (ICAR e-course, lesson 6). */
class ChainsTest {

    /**
     * Glasses of a bath of 2 L that gave up half its dye: neutral greys of half and of 70.71 % of the light, L* 76.0693
     * and 87.3479 by CIE 15, and nothing lost.
     */
    private static final String HALF_TAKEN_UP_OF_2_L = "glass: {plain: {lab: [100, 0, 0]}, before: {lab: [76.0693, 0, 0]}, "
            + "after: {lab: [87.3479, 0, 0]}, left: 2 L}";

    @TempDir
    private Path folder;

    private WrittenNotebook notebook;

    @BeforeEach
    void aPotOfBrick() {
        notebook = WrittenNotebook.small(folder);
        pot("2026-05-09/first", "weight: 100 g", "{water: 2 L, dye: [{is: brick, amount: 2 % owf}], assistants: "
                + "[{is: salt, amount: 40 g}]}", "glass: {left: 1.9 L}");
    }

    private void pot(String name, String needles, String bath, String more) {
        notebook.with("days/" + name + ".md",
                "---\nneedles: {lot: scalded-2025, " + needles + "}\nbath: " + bath + "\n" + more + "\nshare: open\n---\n");
    }

    private Workings workings() {
        return Workings.of(notebook.read().notebook());
    }

    private Standing standing(String id) {
        Workings workings = workings();
        return Chains.of(workings).standing(workings.entry(id).orElseThrow()).orElseThrow();
    }

    private Chain chain() {
        return Chains.of(workings()).all().get(0);
    }

    private static List<String> ids(Chain chain) {
        return chain.batches().stream().map(Chain.Batch::entry).map(EntryWorking::id).toList();
    }

    private static double grams(Standing standing) {
        return standing.dye().get(0).grams().value().orElseThrow();
    }

    private static double lacking(Standing standing) {
        return standing.dye().get(0).topUp().value().orElseThrow();
    }

    /** 2 % on 100 g are 2 g, of which 30 % stay: 0.6 g. The next 50 g want 1 g: 0.4 g are lacking. */
    @Test
    void theMakersOwnShareGoesBeforeAll() {
        pot("2026-05-10/second", "weight: 50 g", "{reuses: 2026-05-09-first, left: 30 %}", "");
        Standing standing = standing("2026-05-10-second");
        assertEquals(0.6, grams(standing), 1e-9);
        assertEquals(0.4, lacking(standing), 1e-9);
        assertEquals(1900, standing.liquorMl().orThrow(), 1e-9);
        assertEquals(Optional.empty(), standing.why());
        assertTrue(standing.dye().get(0).grams().low().isEmpty(), "nobody knows how well she judged");
    }

    /** Two teaspoons of a liquid dye, 10 mL on 50 g, of which 30 % stay: 3 mL. The next 25 g want 5 mL: 2 mL are lacking. */
    @Test
    void aLiquidDyeIsReckonedByVolumeWhereItsDensityIsNotKnown() {
        notebook.with("dyes/rain-blue.md", "---\nkind: dye\nform: liquid\n---\n");
        pot("2026-05-12/first", "weight: 50 g", "{water: 2 L, dye: [{is: rain-blue, amount: 2 tsp}]}", "");
        pot("2026-05-13/second", "weight: 25 g", "{reuses: 2026-05-12-first, left: 30 %}", "");
        Standing standing = standing("2026-05-13-second");
        assertEquals(3, standing.dye().get(0).ml().value().orElseThrow(), 1e-9);
        assertEquals(2, standing.dye().get(0).topUpMl().value().orElseThrow(), 1e-9);
        assertTrue(standing.dye().get(0).grams().value().isEmpty());
        assertEquals(Optional.empty(), standing.why());
    }

    @Test
    void itIsToldWhoJudgesWhatWasLeft() {
        pot("2026-05-10/second", "weight: 50 g", "{reuses: 2026-05-09-first, left: 30 %}", HALF_TAKEN_UP_OF_2_L);
        pot("2026-05-11/third", "weight: 50 g", "{reuses: 2026-05-10-second}", "");
        assertEquals(List.of(true, false, false), chain().batches().stream().map(Chain.Batch::judged).toList());
    }

    @Test
    void whatRoughlyStoodInThePotStaysRough() {
        pot("2026-05-09/first", "weight: 100 g", "{water: 2 L}", "glass: {left: about 1.9 L}");
        pot("2026-05-10/second", "weight: 50 g", "{reuses: 2026-05-09-first}", "");
        assertEquals(Magnitude.of(1900, true), standing("2026-05-10-second").liquorMl());
    }

    /** 40 g of salt in 2 L; 100 g of needles carry 100 mL away and leave 1900 mL: 38 g. In 1.9 L of 20 g/L nothing lacks. */
    @Test
    void saltStaysButForWhatTheNeedlesCarryOut() {
        pot("2026-05-10/second", "weight: 50 g", "{reuses: 2026-05-09-first, left: 30 %}", "");
        pot("2026-05-10/wider", "weight: 50 g", "{reuses: 2026-05-09-first, left: 30 %, water: 0.3 L}", "");
        Standing.Assistant salt = standing("2026-05-10-second").assistants().get(0);
        assertEquals(38, salt.grams().orElseThrow(), 1e-9);
        assertEquals(0, salt.topUpGrams().orElseThrow(), 1e-9);
        assertEquals(2.2 * 20 - 38, standing("2026-05-10-wider").assistants().get(0).topUpGrams().orElseThrow(), 1e-9);
    }

    /** 2 g, a quarter left: 0.5; 0.3 g more: 0.8, half left: 0.4. The third 100 g at 2 % lack 1.6 g. */
    @Test
    void dyeIsCarriedThroughSeveralBaths() {
        pot("2026-05-10/second", "weight: 50 g",
                "{reuses: 2026-05-09-first, left: 25 %, dye: [{is: brick, amount: 0.3 g}]}", "");
        pot("2026-05-11/third", "weight: 100 g", "{reuses: 2026-05-10-second, left: 50 %}", "");
        assertEquals(0.4, grams(standing("2026-05-11-third")), 1e-9);
        assertEquals(1.6, lacking(standing("2026-05-11-third")), 1e-9);
        assertEquals(List.of("2026-05-09-first", "2026-05-10-second", "2026-05-11-third"), ids(chain()));
    }

    /** A next bath of 95 g at a ratio of 10 has room for 950 of the 1900 mL: half of everything. */
    @Test
    void noMoreIsTakenThanThereIsRoomFor() {
        pot("2026-05-10/second", "weight: 95 g", "{reuses: 2026-05-09-first, left: 30 %, ratio: 10}", "");
        Standing standing = standing("2026-05-10-second");
        assertEquals(0.3, grams(standing), 1e-9);
        assertEquals(19, standing.assistants().get(0).grams().orElseThrow(), 1e-9);
        assertEquals(950, standing.liquorMl().orThrow(), 1e-9);
    }

    /** A powder takes no room, though its pack says how many mL it holds: the 950 mL stand as before. */
    @Test
    void aPowderTakesNoRoom() {
        notebook.with("dyes/earth.md", "---\nkind: dye\nform: powder\npack: {holds: 500 mL}\n---\n");
        pot("2026-05-10/second", "weight: 95 g",
                "{reuses: 2026-05-09-first, left: 30 %, ratio: 10, dye: [{is: earth, amount: 1 packet}]}", "");
        assertEquals(950, standing("2026-05-10-second").liquorMl().orThrow(), 1e-9);
        assertEquals(0.3, grams(standing("2026-05-10-second")), 1e-9);
    }

    /**
     * By its glasses a bath gave up half of its 2 g: 1 g stays, and 2 % on 100 g want 1 g more. A meter's 1 % of each
     * intensity is 1.77 % of the dye, 0.01 / (0.30103 · ln 10) · √(0.25 + 1 + 0.25): 0.035 g either way.
     */
    @Test
    void glassesTellWhatWasLeft() {
        pot("2026-05-09/first", "weight: 100 g", "{water: 2 L, dye: [{is: brick, amount: 2 % owf}]}", HALF_TAKEN_UP_OF_2_L);
        pot("2026-05-10/second", "weight: 100 g", "{reuses: 2026-05-09-first}", "");
        Estimate left = standing("2026-05-10-second").dye().get(0).grams();
        assertEquals(1, left.value().orElseThrow(), 0.001);
        assertEquals(0.965, left.low().orElseThrow(), 0.002);
        assertEquals(1.035, left.high().orElseThrow(), 0.002);
        Estimate topUp = standing("2026-05-10-second").dye().get(0).topUp();
        assertEquals(1, topUp.value().orElseThrow(), 0.001);
        assertEquals(0.965, topUp.low().orElseThrow(), 0.002);
        assertEquals(1.035, topUp.high().orElseThrow(), 0.002);
    }

    @Test
    void withoutPlainWaterOnlyARangeIsKnown() {
        pot("2026-05-09/first", "weight: 100 g", "{water: 2 L, dye: [{is: brick, amount: 2 % owf}]}",
                "glass: {before: {hex: \"#ea8e63\"}, after: {hex: \"#f1cdb6\"}, left: 1.9 L}");
        pot("2026-05-10/second", "weight: 50 g", "{reuses: 2026-05-09-first}", "");
        Standing standing = standing("2026-05-10-second");
        assertTrue(standing.dye().get(0).grams().value().isEmpty());
        assertEquals(0, standing.dye().get(0).grams().low().orElseThrow());
        assertEquals(Optional.of(new Standing.Why(Standing.Kind.RANGE, "2026-05-09-first")), standing.why());
    }

    @Test
    void whereNobodySaysWhatWasLeftItIsNotKnown() {
        pot("2026-05-10/second", "weight: 50 g", "{reuses: 2026-05-09-first}", "");
        Standing standing = standing("2026-05-10-second");
        assertEquals(Estimate.UNKNOWN, standing.dye().get(0).grams());
        assertEquals(Estimate.UNKNOWN, standing.dye().get(0).topUp());
        assertEquals(Optional.of(new Standing.Why(Standing.Kind.SHARE, "2026-05-09-first")), standing.why());
    }

    @Test
    void anAmountNobodyKnowsStaysUnknown() {
        pot("2026-05-09/first", "weight: 100 g", "{water: 2 L, dye: [{is: brick, amount: a pinch}]}", "");
        pot("2026-05-10/second", "weight: 50 g", "{reuses: 2026-05-09-first, left: 30 %}", "");
        Standing standing = standing("2026-05-10-second");
        assertEquals(Estimate.UNKNOWN, standing.dye().get(0).grams());
        assertEquals(Optional.of(new Standing.Why(Standing.Kind.DYE_AMOUNT, "2026-05-09-first")), standing.why());
    }

    /**
     * The last bath now, for another batch like it: 0.6 g came, and half of it was taken up; 2 % on 50 g want 1 g, of
     * which 0.7 g are lacking.
     */
    @Test
    void theChainSaysWhatAnotherBatchNeeds() {
        pot("2026-05-10/second", "weight: 50 g", "{reuses: 2026-05-09-first, left: 30 %, ratio: 40}", HALF_TAKEN_UP_OF_2_L);
        assertEquals(0.3, grams(chain().next()), 0.001);
        assertEquals(0.7, lacking(chain().next()), 0.001);
    }

    @Test
    void aBathThatWentTwoWaysIsFollowedAndRemarkedOn() {
        pot("2026-05-10/one", "weight: 50 g", "{reuses: 2026-05-09-first}", "");
        pot("2026-05-10/two", "weight: 50 g", "{reuses: 2026-05-09-first}", "");
        pot("2026-05-11/after-one", "weight: 50 g", "{reuses: 2026-05-10-one}", "");
        assertEquals(List.of("2026-05-09-first", "2026-05-10-one", "2026-05-11-after-one", "2026-05-10-two"),
                ids(chain()));
        assertEquals(List.of("days/2026-05-10/two.md:3:16: warning: the bath of “2026-05-09-first” went to “2026-05-10-one” "
                + "already; a bath stands in one pot, so name the entry that used it last, or check both"), warnings());
    }

    /** Two level teaspoons of 3 g are 6 g, and as household spoons wander by a fifth, 4.8 to 7.2 g. */
    @Test
    void whatWasSpoonedOrWrittenAsRoughIsNoSurerInThePot() {
        notebook.with("dyes/spooned.md", "---\nkind: dye\nform: powder\nlevel-tsp: {weight: 3 g, weighed: 10}\n---\n");
        pot("2026-05-09/first", "weight: 100 g", "{water: 2 L, dye: [{is: spooned, amount: 2 tsp}, {is: brick, amount: about "
                + "2 g}]}", "");
        var dyes = List.copyOf(Contents.of(workings().entry("2026-05-09-first").orElseThrow().bath().dye()).things().values());
        assertEquals(6, dyes.get(0).grams().value().orElseThrow(), 1e-9);
        assertEquals(4.8, dyes.get(0).grams().low().orElseThrow(), 1e-9);
        assertEquals(7.2, dyes.get(0).grams().high().orElseThrow(), 1e-9);
        assertEquals(Estimate.judged(2), dyes.get(1).grams());
    }

    /** A less private book knows nothing of the earlier bath, and so cannot say that there was one. */
    @Test
    void aBathWhoseBeginningIsMorePrivateIsRemarkedOn() {
        pot("2026-05-10/second", "weight: 50 g", "{reuses: 2026-05-09-first}", "");
        assertEquals(List.of(), warnings());
        shared("2026-05-09/first", "studio");
        pot("2026-05-11/third", "weight: 50 g", "{reuses: 2026-05-10-second}", "");
        String rest = " book this bath will read as fresh, without the dye, the acid and the cautions of "
                + "“2026-05-09-first”; share that entry too, or keep this one";
        assertEquals(List.of("days/2026-05-10/second.md:3:16: warning: in the students’ and the open" + rest,
                "days/2026-05-11/third.md:3:16: warning: in the students’ and the open" + rest), warnings());
        shared("2026-05-09/first", "students");
        shared("2026-05-11/third", "students");
        assertEquals(List.of("days/2026-05-10/second.md:3:16: warning: in the open" + rest), warnings());
    }

    private void shared(String name, String with) {
        try {
            Path file = folder.resolve("days/" + name + ".md");
            notebook.with("days/" + name + ".md", Files.readString(file).replaceAll("share: \\w+", "share: " + with));
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    @Test
    void leftOfNoBathAndABathThatGrewDarker() {
        pot("2026-05-09/first", "weight: 100 g", "{water: 2 L, left: 30 %}",
                "glass: {plain: {hex: \"#ffffff\"}, before: {hex: \"#aaaaaa\"}, after: {hex: \"#888888\"}, left: 2 L}");
        List<String> warnings = warnings();
        assertEquals(2, warnings.size(), () -> warnings.toString());
        assertTrue(warnings.get(0).startsWith("days/2026-05-09/first.md:3:26: warning: “left: 30 %” is a share of"), warnings.get(0));
        assertTrue(warnings.get(1).startsWith("days/2026-05-09/first.md:4:67: warning: by its glasses"), warnings.get(1));
    }

    private List<String> warnings() {
        return workings().found().findings().stream().map(Object::toString).filter(found -> found.contains("bath")).toList();
    }

    /** A circle is an error that leaves its entries out; figures must come to an end all the same. */
    @Test
    void whatIsNotThereIsSaidAndNothingRunsInACircle() {
        pot("2026-05-10/lost", "weight: 50 g", "{reuses: 2026-05-09-private}", "");
        pot("2026-05-11/a", "weight: 50 g", "{reuses: 2026-05-11-b}", "");
        pot("2026-05-11/b", "weight: 50 g", "{reuses: 2026-05-11-a}", "");
        Workings workings = workings();
        Chains chains = Chains.of(workings);
        assertEquals(List.of(), chains.all());
        workings.entries().forEach(entry -> assertTrue(chains.standing(entry).map(Standing::dye).orElse(List.of())
                .isEmpty()));
    }

    /** Where the earlier entry is more private than the edition, the bath reads as if nobody had said whose it was. */
    @Test
    void anEditionTellsNothingOfAChainItDoesNotShow() {
        pot("2026-05-10/second", "weight: 50 g", "{reuses: 2026-05-09-first, left: 30 %}", "");
        notebook.with("days/2026-05-09/first.md", "---\nneedles: {lot: scalded-2025, weight: 100 g}\n"
                + "bath: {water: 2 L, dye: [{is: brick, amount: 2 % owf}]}\n---\n");
        Workings open = Workings.of(EditionCut.of(notebook.read().notebook(), Edition.OPEN));
        assertEquals(Optional.empty(), Chains.of(open).standing(open.entry("2026-05-10-second").orElseThrow()));
        assertEquals(List.of(), Chains.of(open).all());
    }
}
