package fascicle.book.page;

import java.util.List;

/**
 * Slips to print and to fill in by hand at the stove, one for each pot. They stand alone and belong to no book.
 *
 * @param frame what stands round them
 * @param slips the slips
 */
public record SlipPage(Frame frame, List<Slip> slips) implements Page {

    @Override
    public String template() {
        return "slip.ftlh";
    }

    /**
     * A slip.
     *
     * @param pot which pot
     * @param said what is in it, in a line
     * @param checks what is to be checked before anyone begins
     * @param baths what goes into each of its baths
     * @param mind what to know while it is made up, in sentences
     * @param defer whom to ask, in a sentence
     * @param steps what is done, with the hour it is planned for
     * @param cautions what may hurt someone at this pot
     * @param tags how many bundles want a tag, each with its weight; so many lines to fill in
     */
    public record Slip(String pot, String said, List<String> checks, List<Bath> baths, List<String> mind, String defer,
            List<PlanPage.Due> steps, List<String> cautions, List<String> tags) {}

    /**
     * A bath of a slip.
     *
     * @param title its name
     * @param amounts what is poured and added, in the order of the sheet
     */
    public record Bath(String title, List<String> amounts) {}
}
