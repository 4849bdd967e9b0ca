package fascicle.book.page;

import java.util.List;

/**
 * What the figures mean.
 *
 * @param frame what stands round it
 * @param sections the texts
 * @param kitchen the kitchen measures in force
 */
public record AboutPage(Frame frame, List<Section> sections, List<Fact> kitchen) implements Page {

    @Override
    public String template() {
        return "about.ftlh";
    }

    /**
     * One text.
     *
     * @param title its heading
     * @param paragraphs its paragraphs
     */
    public record Section(String title, List<String> paragraphs) {}
}
