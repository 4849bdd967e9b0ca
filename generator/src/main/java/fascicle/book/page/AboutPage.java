package fascicle.book.page;

import java.util.List;

/**
 * What the figures mean.
 *
 * @param frame what stands round it
 * @param brief the figures in a line each
 * @param sections the texts
 */
public record AboutPage(Frame frame, List<Fact> brief, List<Section> sections) implements Page {

    @Override
    public String template() {
        return "about.ftlh";
    }

    /**
     * One text.
     *
     * @param title its heading
     * @param paragraphs its paragraphs
     * @param measures the kitchen measures in force, where it is about them
     */
    public record Section(String title, List<String> paragraphs, List<Fact> measures) {}
}
