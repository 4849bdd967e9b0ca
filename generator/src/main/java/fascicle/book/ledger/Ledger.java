package fascicle.book.ledger;

import fascicle.notebook.Edition;
import fascicle.workings.Workings;
import fascicle.workings.acidity.Acidities;
import fascicle.workings.chain.Chains;
import fascicle.workings.stock.Stocktaking;
import java.util.Optional;

/**
 * What all pages and files of one book reckon with.
 *
 * @param workings the edition's figures
 * @param edition who the book is for
 * @param acidities how sour its baths are
 * @param chains its baths that were used again
 * @param stock what is left, and what things cost; nothing but in the studio's book, so that no other can tell of it
 */
public record Ledger(Workings workings, Edition edition, Acidities acidities, Chains chains,
        Optional<Stocktaking> stock) {

    /**
     * Reckons for a book.
     *
     * @param workings of the edition's notebook
     * @param edition who the book is for
     * @return its ledger
     */
    public static Ledger of(Workings workings, Edition edition) {
        return new Ledger(workings, edition, Acidities.of(workings), Chains.of(workings),
                edition == Edition.STUDIO ? Optional.of(Stocktaking.of(workings)) : Optional.empty());
    }
}
