package fascicle.workings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.bath.Uptake;
import fascicle.notebook.WrittenNotebook;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a maker's glasses tell. */
class UptakesTest {

    /** Neutral greys of half and of 70.71 % of the light: L* 76.0693 and 87.3413 by CIE 15, L* = 116 ∛Y − 16. */
    private static final String HALF = "{lab: [76.0693, 0, 0]}";
    private static final String MORE = "{lab: [87.3479, 0, 0]}";

    @TempDir
    private Path folder;

    private Uptake of(String glass) {
        return Workings.of(WrittenNotebook.small(folder).with("days/2026-05-09/pot.md", """
                ---
                needles: {lot: scalded-2025, weight: 45 g}
                bath: {water: 1 L}
                glass: %s
                ---
                """.formatted(glass)).read().notebook()).entry("2026-05-09-pot").orElseThrow().uptake().orElseThrow();
    }

    @Test
    void aMeteredBathThatGaveUpHalfItsDye() {
        Uptake uptake = of("{plain: {lab: [100, 0, 0]}, before: " + HALF + ", after: " + MORE + ", left: 1 L}");
        assertEquals(50, uptake.percent().orElseThrow(), 0.05);
        // 1 % of each intensity: 0.01 / (0.30103 · ln 10) · √(0.25 + 1 + 0.25) = 1.77 %
        assertEquals(50 - 1.77, uptake.low().orElseThrow(), 0.06);
    }

    @Test
    void aPictureOfItIsFiveTimesAsUnsure() {
        Uptake uptake = of("{plain: {hex: \"#ffffff\"}, before: " + HALF + ", after: " + MORE + ", left: 1 L}");
        assertEquals(50 - 8.83, uptake.low().orElseThrow(), 0.1);
    }

    @Test
    void bothGlassesDilutedOrEachByItself() {
        assertEquals(50, of("{plain: {lab: [100, 0, 0]}, before: " + HALF + ", after: " + MORE
                + ", diluted: 10, left: 1 L}").percent().orElseThrow(), 0.05);
        assertEquals(90, of("{plain: {lab: [100, 0, 0]}, before: " + HALF + ", after: " + MORE
                + ", diluted: {before: 10, after: 2}, left: 1 L}").percent().orElseThrow(), 0.05);
        assertEquals(95, of("{plain: {lab: [100, 0, 0]}, before: " + HALF + ", after: " + MORE
                + ", diluted: {before: 10}, left: 1 L}").percent().orElseThrow(), 0.05);
    }

    @Test
    void aGlassIsWetWhateverIsSaid() {
        assertTrue(of("{plain: {lab: [100, 0, 0]}, before: {lab: [76.0693, 0, 0], when: wet}, after: " + MORE
                + ", left: 1 L}").percent().isPresent());
    }

    @Test
    void judgedByEyeOrHalfMissingItTellsNothing() {
        assertEquals(Optional.of(Uptake.Why.NO_GLASSES), of("{before: {like: 17}, after: " + MORE + "}").why());
        assertEquals(Optional.of(Uptake.Why.NO_GLASSES), of("{left: 2.4 L}").why());
    }
}
