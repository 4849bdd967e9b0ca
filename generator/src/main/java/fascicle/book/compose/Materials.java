package fascicle.book.compose;

import fascicle.book.address.Addresses;
import fascicle.book.figures.Figures;
import fascicle.book.prose.Prose;
import fascicle.book.words.Words;
import fascicle.notebook.Dye;
import fascicle.notebook.Edition;
import fascicle.notebook.Ids;
import fascicle.notebook.Notebook;
import fascicle.notebook.Vessel;
import fascicle.workings.ColourFigures;
import fascicle.workings.Workings;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What every page of a book is made from. Values do not change; safe for use from several threads.
 *
 * @param workings what the book is about
 * @param edition who it is for
 * @param addresses where its pages are
 * @param words its own words
 * @param figures how its figures are written
 * @param prose how the maker's words are written
 * @param ties how entries lead to later ones
 * @param dyes dyes and assistants by {@link Ids#key}
 * @param vessels vessels by {@link Ids#key}
 * @param bareColours bare colours of lots, by the lot's id
 * @param style the address of the style
 */
public record Materials(Workings workings, Edition edition, Addresses addresses, Words words, Figures figures,
        Prose prose, Ties ties, Map<String, Dye> dyes, Map<String, Vessel> vessels, Map<String, ColourFigures> bareColours,
        String style) {

    /**
     * Gathers what pages are made from.
     *
     * @param workings what the book is about
     * @param edition who it is for
     * @param addresses where its pages are
     * @param words its own words
     * @param figures how its figures are written
     * @param bareColours bare colours of lots, by the lot's id
 * @param style the address of the style
     * @return the materials
     */
    public static Materials of(Workings workings, Edition edition, Addresses addresses, Words words, Figures figures,
            String style) {
        Notebook notebook = workings.notebook();
        Map<String, ColourFigures> bareColours = new HashMap<>();
        workings.lots().forEach(lot -> lot.colour().ifPresent(colour -> bareColours.put(lot.lot().id(), colour)));
        return new Materials(workings, edition, addresses, words, figures, new Prose(addresses::ofFile),
                new Ties(workings), Notebook.byId(notebook.dyes(), Dye::id),
                Notebook.byId(notebook.vessels(), Vessel::id), Map.copyOf(bareColours), style);
    }

    Optional<Dye> dye(String id) {
        return Optional.ofNullable(dyes.get(Ids.key(id)));
    }

    Optional<Vessel> vessel(String id) {
        return Optional.ofNullable(vessels.get(Ids.key(id)));
    }

    boolean isStudio() {
        return edition == Edition.STUDIO;
    }
}
