package fascicle.workings.plan;

import fascicle.notebook.Recipe;
import java.util.Optional;

/**
 * A way of working that is planned by: a method, or an entry that is to be done again.
 *
 * @param id its id
 * @param called its title
 * @param recipe what is done
 * @param lot the id of the needle lot it was done on, or is for
 */
public record Chosen(String id, String called, Recipe recipe, Optional<String> lot) {

    /**
     * Whether there is a dyebath that names no dye.
     *
     * @return true where whoever dyes has still to choose
     */
    public boolean leavesDyeOpen() {
        return recipe.bath().dye().isEmpty() && recipe.bath().extract().isEmpty() && recipe.bath().reuses().isEmpty();
    }
}
