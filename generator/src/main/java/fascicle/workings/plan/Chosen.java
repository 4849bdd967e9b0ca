package fascicle.workings.plan;

import fascicle.notebook.Recipe;

/**
 * A way of working that is planned by: a method, or an entry that is to be done again.
 *
 * @param id its id
 * @param called its title
 * @param recipe what is done
 */
public record Chosen(String id, String called, Recipe recipe) {

    /**
     * Whether there is a dyebath that names no dye.
     *
     * @return true where whoever dyes has still to choose
     */
    public boolean leavesDyeOpen() {
        return recipe.bath().dye().isEmpty() && recipe.bath().extract().isEmpty() && recipe.bath().reuses().isEmpty();
    }
}
