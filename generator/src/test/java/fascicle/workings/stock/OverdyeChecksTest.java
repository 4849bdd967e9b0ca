package fascicle.workings.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fascicle.notebook.Finding;
import fascicle.notebook.WrittenNotebook;
import fascicle.workings.proof.Proofreading;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Nobody can dye more needles again than were dyed. */
class OverdyeChecksTest {

    @TempDir
    private Path folder;

    private WrittenNotebook notebook;

    @BeforeEach
    void begin() {
        notebook = WrittenNotebook.small(folder);
    }

    @Test
    void fourHundredGramsOfTenThatWereDyed() {
        dyed("weight: 10 g");
        again("b", "weight: 400 g");
        found("days/2026-05-10/b.md:2:39: warning: with these, 400 g of needles from “2026-05-09-a” were dyed again, more than "
                + "the 10 g that were dyed there; check the weights");
    }

    /** 20 + 20 = 40 g are there, 20 + 20 + 20 = 60 g are not. */
    @Test
    void severalThatTogetherTookMore() {
        dyed("weight: 45 g");
        again("b", "weight: 20 g");
        again("c", "weight: 20 g");
        found();
        again("d", "weight: 20 g");
        found("days/2026-05-10/d.md:2:39: warning: with these, 60 g of needles from “2026-05-09-a” were dyed again, more than "
                + "the 45 g that were dyed there; check the weights");
    }

    @Test
    void allOfThemMayBeDyedAgainAndWeighATrifleMore() {
        dyed("weight: 45 g");
        again("b", "weight: 46 g");
        found();
        again("b", "weight: 48 g");
        found("days/2026-05-10/b.md:2:39: warning: with these, 48 g of needles from “2026-05-09-a” were dyed again, more than "
                + "the 45 g that were dyed there; check the weights");
    }

    /** Three bundles of 15 g are about 45 g. */
    @Test
    void roughWeightsHaveRoom() {
        dyed("lot: scalded-2025, bundles: 3");
        again("b", "weight: 54 g");
        found();
        again("b", "weight: 60 g");
        found("days/2026-05-10/b.md:2:39: warning: with these, 60 g of needles from “2026-05-09-a” were dyed again, more than "
                + "the 45 g that were dyed there; check the weights");
        dyed("weight: 45 g");
        again("b", "weight: about 54 g");
        found();
    }

    @Test
    void dampOrUnweighedNeedlesTellNothing() {
        dyed("weight: 10 g");
        again("b", "weight: 40 g, weighed: damp");
        found();
        dyed("weight: 10 g, weighed: fresh");
        again("b", "weight: 40 g");
        found();
    }

    @Test
    void anOverDyeOfAnOverDyeIsComparedWithThat() {
        dyed("weight: 45 g");
        again("b", "weight: 20 g");
        notebook.with("days/2026-05-11/c.md", "---\nneedles: {from: 2026-05-10-b, weight: 30 g}\n---\n");
        found("days/2026-05-11/c.md:2:39: warning: with these, 30 g of needles from “2026-05-10-b” were dyed again, more than "
                + "the 20 g that were dyed there; check the weights");
    }

    @Test
    void ofWhatWasKeptAndWeighedDryThatAloneIsSaid() {
        notebook.with("days/2026-05-09/a.md", "---\nneedles: {weight: 10 g}\nkept: {weight: 10 g, how: dry}\n---\n");
        again("b", "weight: 400 g");
        found("days/2026-05-09/a.md:3:16: warning: baskets and over-dyes took 400 g of what was kept, which weighs “10 g”; check "
                + "the weights");
        notebook.with("days/2026-05-09/a.md", "---\nneedles: {weight: 10 g}\nkept: {weight: 25 g, how: damp}\n---\n");
        found("days/2026-05-10/b.md:2:39: warning: with these, 400 g of needles from “2026-05-09-a” were dyed again, more than "
                + "the 10 g that were dyed there; check the weights");
    }

    private void dyed(String needles) {
        notebook.with("days/2026-05-09/a.md", "---\nneedles: {" + needles + "}\n---\n");
    }

    private void again(String name, String needles) {
        notebook.with("days/2026-05-10/" + name + ".md", "---\nneedles: {from: 2026-05-09-a, " + needles + "}\n---\n");
    }

    private void found(String... expected) {
        var read = notebook.read();
        assertEquals(String.join("\n", expected), String.join("\n", Proofreading.of(read.notebook(), read.findings())
                .findings().stream().map(Finding::toString).toList()));
    }
}
