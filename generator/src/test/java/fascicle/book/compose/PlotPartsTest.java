package fascicle.book.compose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.bath.Amount;
import fascicle.book.SampleNotebook;
import fascicle.book.address.Addresses;
import fascicle.book.address.Shelf;
import fascicle.book.figures.Figures;
import fascicle.book.gallery.Gallery;
import fascicle.book.ledger.Ledger;
import fascicle.book.page.Fact;
import fascicle.book.page.Link;
import fascicle.book.page.Plot;
import fascicle.book.words.Words;
import fascicle.colour.Lab;
import fascicle.measure.Kitchen;
import fascicle.measure.UnreadableQuantity;
import fascicle.notebook.Bath;
import fascicle.notebook.Edition;
import fascicle.notebook.Entry;
import fascicle.notebook.Noted;
import fascicle.notebook.Origin;
import fascicle.notebook.Part;
import fascicle.notebook.Place;
import fascicle.notebook.Reading;
import fascicle.notebook.Recipe;
import fascicle.workings.Workings;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Plots as they stand on pages, and the same in words. */
class PlotPartsTest {

    private final Workings workings = Workings.of(SampleNotebook.notebook());
    private final Materials materials = materials(workings);

    private static Materials materials(Workings workings) {
        return new Materials(Ledger.of(workings, Edition.STUDIO), new Addresses(workings, new Figures(Words.shipped())),
                Gallery.EMPTY, Words.shipped(), "style.css");
    }

    /** The plots of one notebook. */
    private record Plots(Materials materials) {
        Optional<Plot> plot(Shelf shelf, String id) {
            return new PlotComposer(materials, Ways.fromFolder(materials))
                    .of(shelf, materials.index().group(shelf, id).orElseThrow());
        }
    }

    private Optional<Plot> of(Shelf shelf, String id) {
        return new Plots(materials).plot(shelf, id);
    }

    private static Plots with(Entry entry) {
        return new Plots(materials(Workings.of(SampleNotebook.withOneMore(entry))));
    }

    /** The sample's brick, with so much dye and in another colour. */
    private static Entry entry(String name, String amount, Lab colour) {
        Entry like = SampleNotebook.entries().get(0);
        Bath bath = like.recipe().bath();
        Recipe recipe = like.recipe();
        Recipe other = new Recipe(recipe.presoak(), recipe.before(), new Bath(bath.vessel(), bath.water(), bath.from(),
                List.of(part(amount)), bath.assistants(), bath.extract(), bath.reuses(), bath.left(), bath.ph()),
                recipe.heat(), recipe.cool(), recipe.after(), recipe.dry(), recipe.rinse(), recipe.finish());
        return new Entry("2026-06-01-" + name, LocalDate.parse("2026-06-01"), name,
                Place.of("days/2026-06-01/" + name + ".md"), Optional.empty(), Optional.empty(), Edition.OPEN,
                Optional.empty(), like.needles(), other,
                List.of(new Reading(new Reading.Metered(colour, "as measured"), false, Place.of("x"))), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty(), List.of(), Optional.empty(), List.of());
    }

    private static Part part(String amount) {
        try {
            return new Part(new Noted<>("brick", "brick", Place.of("x"), Origin.OWN), Optional.of(new Noted<>(
                    Amount.read(amount, Kitchen.METRIC), amount, Place.of("x"), Origin.OWN)), Optional.empty(),
                    Optional.empty());
        } catch (UnreadableQuantity unreadable) {
            throw new IllegalArgumentException(amount, unreadable);
        }
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
    void theEndsOfAFamilyAreNamedAndLedTo() {
        Plot plot = with(entry("pale", "1 % owf", new Lab(38, 22, 22))).plot(Shelf.FAMILIES, "brown").orElseThrow();
        assertEquals(List.of("Lightest", "Darkest", "Strongest", "Greyest"),
                plot.facts().stream().map(Fact::label).toList());
        assertEquals(List.of(new Link("pale", Optional.of("../entries/2026-06-01-pale.html")), Link.plain("L* 38.0")),
                plot.facts().get(0).values());
        assertEquals(Link.plain("C* 31.1"), plot.facts().get(3).values().get(1), "the chroma of 22, 22");
    }

    @Test
    void aDyesDepthsInWordsAndNumbers() {
        Plot plot = with(entry("pale", "0.5 % owf", new Lab(44, 24, 20))).plot(Shelf.DYES, "brick").orElseThrow();
        assertEquals("3 colours at 2 depths, 0.5\u202f% to 1.5\u202f% owf: L* from 36 to 44.", plot.said());
        assertEquals("1", plot.facts().get(0).label());
        assertEquals(List.of(new Link("Scalded", Optional.of("../conditions/scalded.html")),
                Link.plain("L* 44 at 0.5\u202f%, 36 at 1.5\u202f%")), plot.facts().get(0).values());
        assertTrue(plot.drawing().html().contains("<title>pale: 0.5\u202f% owf, Scalded, L* 44.0</title>"),
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
        assertEquals("From the colour when new: after 6 weeks the same, as far as these readings tell "
                + "(ΔE00\u00a04.0 ±\u00a06.1).", plot.said());
        assertTrue(fading.of(workings.entry("2026-05-20-brick-again").orElseThrow()).isEmpty());
    }
}
