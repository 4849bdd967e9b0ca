package fascicle.book.compose;

import fascicle.book.address.Addresses;
import fascicle.book.figures.Figures;
import fascicle.book.gallery.Gallery;
import fascicle.book.gist.Gist;
import fascicle.book.ledger.Ledger;
import fascicle.book.page.EntryRow;
import fascicle.book.prose.Prose;
import fascicle.book.words.Words;
import fascicle.notebook.Edition;
import fascicle.workings.Workings;
import fascicle.workings.care.Care;
import fascicle.workings.acidity.Acidities;
import fascicle.workings.chain.Chains;
import fascicle.workings.stock.Stocktaking;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/**
 * What every page of a book is made from. It does not change but for rows that it keeps; safe for use from several
 * threads.
 */
public final class Materials {

    private final Ledger ledger;
    private final Addresses addresses;
    private final Gallery gallery;
    private final Words words;
    private final Figures figures;
    private final Prose prose;
    private final Index index;
    private final Ties ties;
    private final Gist gist;
    private final Care care;
    private final String style;
    private final Map<String, EntryRow> rows = new ConcurrentHashMap<>();

    /**
     * Gathers what pages are made from.
     *
     * @param ledger what the book is about, and who it is for
     * @param addresses where its pages are
     * @param gallery its photographs
     * @param words its own words
     * @param style the address of the style
     */
    public Materials(Ledger ledger, Addresses addresses, Gallery gallery, Words words, String style) {
        Workings workings = ledger.workings();
        this.ledger = ledger;
        this.addresses = addresses;
        this.gallery = gallery;
        this.words = words;
        this.figures = new Figures(words);
        this.prose = new Prose(addresses::ofFile, gallery::find);
        this.index = new Index(workings);
        this.ties = new Ties(workings);
        this.gist = new Gist(workings, words);
        this.care = Care.of(workings.notebook());
        this.style = style;
    }

    Workings workings() {
        return ledger.workings();
    }

    Edition edition() {
        return ledger.edition();
    }

    Addresses addresses() {
        return addresses;
    }

    Gallery gallery() {
        return gallery;
    }

    Words words() {
        return words;
    }

    Figures figures() {
        return figures;
    }

    Prose prose() {
        return prose;
    }

    Index index() {
        return index;
    }

    Gist gist() {
        return gist;
    }

    Acidities acidities() {
        return ledger.acidities();
    }

    Chains chains() {
        return ledger.chains();
    }

    /** The studio's shelf; nothing in any other book. */
    Optional<Stocktaking> stock() {
        return ledger.stock();
    }

    Ties ties() {
        return ties;
    }

    Care care() {
        return care;
    }

    String style() {
        return style;
    }

    /** A row of a list, composed once for all pages from which ways are the same. */
    EntryRow row(String key, Supplier<EntryRow> compose) {
        return rows.computeIfAbsent(key, unused -> compose.get());
    }

    boolean isStudio() {
        return edition() == Edition.STUDIO;
    }
}
