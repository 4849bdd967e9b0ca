package fascicle.workings;

import fascicle.colour.Lab;
import fascicle.notebook.Finding;
import fascicle.notebook.NeedleLot;
import fascicle.notebook.Notebook;
import java.util.List;
import java.util.Optional;

/** Everything that is computed from one edition's notebook. */
public final class Workings {

    private Workings() {}

    /**
     * Computes a notebook's figures.
     *
     * @param notebook an edition's notebook
     * @return its workings
     */
    public static Workings of(Notebook notebook) {
        return new Workings();
    }
}
