package fascicle.book.page;

import java.util.List;

/**
 * Slips to print and to fill in by hand at the stove, one for each pot. They stand alone and belong to no book.
 *
 * @param frame what stands round them
 * @param slips the slips
 * @param cautions what may hurt someone
 */
public record SlipPage(Frame frame, List<Slip> slips, List<String> cautions) implements Page {

    @Override
    public String template() {
        return "slip.ftlh";
    }

    /**
     * A slip.
     *
     * @param pot which pot
     * @param said what is in it, in a line
     * @param amounts what goes into it, thing by thing
     * @param steps what is done, with the hour it is planned for
     * @param tags how many bundles want a tag, each with its weight; so many lines to fill in
     */
    public record Slip(String pot, String said, List<String> amounts, List<PlanPage.Due> steps, List<String> tags) {}
}
