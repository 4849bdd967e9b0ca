package fascicle.book.compose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.book.SampleNotebook;
import fascicle.book.address.Addresses;
import fascicle.book.figures.Figures;
import fascicle.book.gallery.Gallery;
import fascicle.book.ledger.Ledger;
import fascicle.book.page.Grid;
import fascicle.book.page.Link;
import fascicle.book.words.Words;
import fascicle.notebook.Edition;
import fascicle.workings.Workings;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Parts of the grids as they stand on the pages of methods and dyes. */
class GridPartsTest {

    private final Materials materials = materials();
    private final Ways ways = Ways.fromFolder(materials);

    @Test
    void aMethodsResultsLeadToItsDyesAndConditions() {
        Grid grid = new GridComposer(materials, ways).ofMethod("LOW-water-simmer").orElseThrow();
        assertTrue(grid.caption().startsWith("Simmering in little water"), grid.caption());
        assertEquals(List.of(new Link("Scalded", Optional.of("../conditions/scalded.html"))), grid.columns());
        assertEquals(List.of(new Link("Brick", Optional.of("../dyes/brick.html"))), grid.rows().get(0).head());
        Grid.Tried tried = tried(grid);
        assertEquals("Moderate reddish brown", tried.colour());
        assertEquals(Optional.of("#804334"), tried.hex());
        assertEquals(new Link("2 entries, 2 dye days",
                Optional.of("../look-up.html#dye=brick&condition=scalded")), tried.entries());
        assertEquals("worked on 2", tried.days().get(0).text());
    }

    @Test
    void whatWasNeverUsedHasNoPart() {
        assertTrue(new GridComposer(materials, ways).ofDye("salt").isEmpty(), "salt does not colour");
        assertTrue(new GridComposer(materials, ways).ofMethod("nothing").isEmpty());
        assertTrue(new LadderComposer(materials, ways).ofDye("brick").isEmpty(), "one depth is no ladder");
    }

    @Test
    void wordsThatAreLookedUpAreSpeltAsAnAddress() {
        assertEquals(Optional.of("../look-up.html#dye=r%C3%B6te%26&condition=my%20own"),
                ways.lookUp("r\u00f6te&", "my own").href());
    }

    private static Grid.Tried tried(Grid grid) {
        return grid.rows().get(0).cells().get(0).tried().orElseThrow();
    }

    private static Materials materials() {
        Workings workings = Workings.of(SampleNotebook.notebook());
        Words words = Words.shipped();
        return new Materials(Ledger.of(workings, Edition.STUDIO), new Addresses(workings, new Figures(words)), Gallery.EMPTY, words,
                "style.css");
    }
}
