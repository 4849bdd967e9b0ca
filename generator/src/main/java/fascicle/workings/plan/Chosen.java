package fascicle.workings.plan;

import fascicle.notebook.Note;
import fascicle.notebook.Recipe;
import java.util.List;
import java.util.Optional;

/**
 * A way of working that is planned by: a method, or an entry that is to be done again.
 *
 * @param id its id
 * @param called its title
 * @param recipe what is done
 * @param steps the maker's words on how it is done: a method's own, then those of the method that one follows, and so
 *     on
 * @param lot the id of the needle lot it was done on, or is for
 */
public record Chosen(String id, String called, Recipe recipe, List<Told> steps, Optional<String> lot) {

    /**
     * What a method says of how it is done.
     *
     * @param method its title
     * @param notes the maker's words
     */
    public record Told(String method, List<Note> notes) {}
}
