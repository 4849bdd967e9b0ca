package fascicle.photo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.colour.ColourDifference;
import fascicle.colour.Lab;
import fascicle.colour.LinearRgb;
import fascicle.colour.Matrix;
import fascicle.colour.Rgb;
import fascicle.photo.Caution.Kind;
import fascicle.photo.Sample.Against;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A chart of patches drawn as a camera would see them whose channels mix by a matrix of our choice. */
class ChartTest {

    private static final int COLUMNS = 6;
    private static final int SIZE = 100;

    /** Colours of the needle trade's range, invented, and greys. */
    private static final List<String> PATCHES = List.of(
            "7b4f2c", "b08d57", "6b7c3b", "3f5b34", "54507d", "9e4b45",
            "b4905d", "6f4a5f", "5e8a86", "a8663a", "8d8f4e", "4d6a8a",
            "c9b48a", "a0a0a0", "7a7a7a", "555555", "343434", "c8c8c8");

    /** Neither the primaries nor the white of sRGB: warm light, and channels that see each other's colours. */
    private static final Matrix CAMERA = Matrix.ofRows(
            new double[] {0.85, 0.14, 0.02}, new double[] {0.12, 0.65, 0.05}, new double[] {0.03, 0.10, 0.40});

    @TempDir
    Path folder;

    @Test
    void aCamerasOwnSenseOfColourIsMended() throws Exception {
        Sample sample = sample(0, patches(PATCHES.size(), 0));
        assertEquals(Against.CHART, sample.against());
        assertTrue(difference(sample, 0) < 1, sample.lab().toString());
        assertTrue(sample.leftOver().orElseThrow() < 0.5, sample.leftOver().toString());
        assertEquals(4, sample.uncertainty());
        assertEquals(List.of(), sample.cautions());
    }

    /** With one grey patch alone, the mixing of channels stays. */
    @Test
    void aChartTellsMoreThanAGreyCard() throws Exception {
        List<Patch> card = patches(PATCHES.size(), 0).subList(14, 15);
        Sample sample = sample(2, card);
        assertEquals(Against.GREY_CARD, sample.against());
        assertTrue(sample.leftOver().isEmpty());
        assertTrue(difference(sample, 2) > 2 * difference(sample(2, patches(PATCHES.size(), 0)), 2));
    }

    @Test
    void patchesTooFewOrAllGreyFixNoMatrix() throws Exception {
        assertEquals(Against.GREY_CARD, sample(0, patches(5, 0)).against());
        assertEquals(Against.GREY_CARD, sample(0, patches(18, 0).subList(13, 18)).against());
        Patch one = patches(1, 0).get(0);
        assertEquals(Against.GREY_CARD, sample(0, List.of(one, one, one, one, one, one, one)).against());
        assertEquals(Against.CHART, sample(0, patches(6, 0)).against());
    }

    /** Each patch is said to be the next one. */
    @Test
    void aChartThatDoesNotFitIsTold() throws Exception {
        Sample sample = sample(0, patches(PATCHES.size(), 1));
        assertEquals(Kind.CHART_MISFIT, sample.cautions().get(0).kind());
        assertTrue(sample.leftOver().orElseThrow() > 4);
        assertEquals(2 * sample.leftOver().orElseThrow(), sample.uncertainty());
    }

    /** A patch at the edge of the numbers no longer tells of light, and pulls no other colour with it. */
    @Test
    void aPatchWhoseLightIsCutOffTakesNoPart() throws Exception {
        List<Patch> patches = new ArrayList<>(patches(PATCHES.size(), 0));
        patches.set(17, new Patch(patches.get(17).at(), new Lab(90, 0, 0)));
        Path file = Pictures.write(folder, "chart.png", Pictures.pngOf(Pictures.painted(
                COLUMNS * SIZE, 3 * SIZE, (x, y) -> patchAt(x, y) == 17 ? 0xffffff : seen(patchAt(x, y)))));
        Sample sample = Darkroom.withoutCache().sample(file, area(0), patches);
        assertEquals(List.of(Kind.CARD_CLIPPED), sample.cautions().stream().map(Caution::kind).toList());
        assertTrue(difference(sample, 0) < 1);
        assertTrue(sample.leftOver().orElseThrow() < 0.5);
    }

    private Sample sample(int needles, List<Patch> patches) throws Exception {
        Path file = Pictures.write(folder, "chart.png", Pictures.pngOf(
                Pictures.painted(COLUMNS * SIZE, 3 * SIZE, (x, y) -> seen(patchAt(x, y)))));
        return Darkroom.withoutCache().sample(file, area(needles), patches);
    }

    private static double difference(Sample sample, int patch) {
        return ColourDifference.ciede2000(known(patch), sample.lab());
    }

    private static List<Patch> patches(int count, int shift) {
        List<Patch> patches = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            patches.add(new Patch(area(i), known((i + shift) % PATCHES.size())));
        }
        return patches;
    }

    private static Lab known(int patch) {
        return Rgb.read(PATCHES.get(patch)).orElseThrow().toLab();
    }

    private static int seen(int patch) {
        LinearRgb light = LinearRgb.of(Rgb.read(PATCHES.get(patch)).orElseThrow());
        double[] channels = CAMERA.times(light.red(), light.green(), light.blue());
        Rgb rgb = new LinearRgb(channels[0], channels[1], channels[2]).toRgb();
        return rgb.red() << 16 | rgb.green() << 8 | rgb.blue();
    }

    private static int patchAt(int x, int y) {
        return y / SIZE * COLUMNS + x / SIZE;
    }

    private static Area area(int patch) {
        double width = 100.0 / COLUMNS;
        double height = 100.0 / 3;
        return new Area(patch % COLUMNS * width + 2, patch / COLUMNS * height + 4, width - 4, height - 8);
    }
}
