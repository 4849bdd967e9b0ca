package fascicle.book.compose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.book.SampleNotebook;
import fascicle.book.address.Addresses;
import fascicle.book.address.Shelf;
import fascicle.book.figures.Figures;
import fascicle.book.page.Plot;
import fascicle.book.words.Words;
import fascicle.notebook.Edition;
import fascicle.workings.Workings;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Plots as they stand on pages, and the same in words. */
class PlotPartsTest {

    private final Workings workings = Workings.of(SampleNotebook.notebook());
    private final Materials materials = new Materials(workings, Edition.STUDIO,
            new Addresses(workings, new Figures(Words.shipped())), Words.shipped(), "style.css");
    private final Ways ways = Ways.fromFolder(materials);

    private Optional<Plot> of(Shelf shelf, String id) {
        return new PlotComposer(materials, ways).of(shelf, materials.index().group(shelf, id).orElseThrow());
    }

    @Test
    void aFamilysColoursInWordsAndNumbers() {
        Plot plot = of(Shelf.FAMILIES, "brown").orElseThrow();
        assertEquals("2 colours: a* from 26 to 26, b* from 21 to 21, L* from 36 to 36.", plot.said());
        assertEquals(List.of(), plot.facts(), "of two like colours none is the lightest");
        assertEquals(2, plot.ways());
        assertTrue(plot.drawing().html().contains(
                        "<a href=\"../entries/2026-05-09-brick.html\"><title>Brick on scalded"),
                plot.drawing().html());
    }

    @Test
    void oneDepthIsNoPlotNorIsWhatHasNoFigureInCommon() {
        assertTrue(of(Shelf.DYES, "brick").isEmpty());
        assertTrue(of(Shelf.YEARS, "2026").isEmpty());
    }

    @Test
    void fadingInWordsAndNumbers() {
        FadingComposer fading = new FadingComposer(materials);
        Plot plot = fading.of(workings.entry("2026-05-09-brick").orElseThrow()).orElseThrow();
        assertTrue(plot.said().matches("From the colour when new: after 6 weeks ΔE00\u00a0[0-9]\\.[0-9]\\."),
                plot.said());
        assertTrue(fading.of(workings.entry("2026-05-20-brick-again").orElseThrow()).isEmpty());
    }
}
