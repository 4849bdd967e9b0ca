package fascicle.workings.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fascicle.notebook.WrittenNotebook;
import fascicle.workings.Scaled;
import fascicle.workings.Workings;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What each of two pots is given of what is for the whole batch. The trough holds 50 × 20 × 16 cm = 16 L, of which three
 * quarters are filled: 100 g in 10 L are one pot, 200 g are two.
 */
class SharingTest {

    @TempDir
    private Path folder;

    private Scaled eachOfTwoPots(String part) {
        WrittenNotebook notebook = WrittenNotebook.small(folder)
                .with("vessels.yaml", "trough: {shape: rectangular, length: 50 cm, width: 20 cm, height: 16 cm}\n")
                .with("dyes/earth.md", "---\nkind: dye\nform: powder\npack: {holds: 500 mL}\n---\n")
                .with("methods/two.md", "---\nfor: 100 g\nbath: {vessel: trough, ratio: 100, dye: [" + part + "]}\n---\n");
        Ask ask = new Ask(List.of(new Ask.Choice("two", Optional.empty())), 100, 2, false, Optional.empty());
        List<PotGroup> groups = DayPlan.of(Workings.of(notebook.read().notebook()), ask).batches().get(0).groups();
        assertEquals(List.of(2), groups.stream().map(PotGroup::pots).toList());
        return groups.get(0).scaled();
    }

    @Test
    void aPacketOfPowderPoursNothingHoweverItsPackIsMeasured() {
        Scaled pot = eachOfTwoPots("{is: earth, amount: 1 packet, by: batch}");
        assertEquals(250, pot.parts().get(0).ml().orElseThrow(), 1e-9);
        assertEquals(10_000, pot.liquorMl().orElseThrow(), 1e-9);
        assertEquals(10_000, pot.waterMl().orElseThrow(), 1e-9);
    }

    @Test
    void aStockOfAPowderPours() {
        Scaled pot = eachOfTwoPots("{is: earth, amount: 400 mL of 1 % stock, by: batch}");
        assertEquals(200, pot.parts().get(0).ml().orElseThrow(), 1e-9);
        assertEquals(9_800, pot.waterMl().orElseThrow(), 1e-9);
    }

    @Test
    void aLiquidPours() {
        assertEquals(9_700, eachOfTwoPots("{is: white-vinegar, amount: 600 mL, by: batch}").waterMl().orElseThrow(), 1e-9);
    }
}
