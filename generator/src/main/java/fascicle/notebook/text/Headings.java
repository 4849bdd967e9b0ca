package fascicle.notebook.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.commonmark.node.Heading;
import org.commonmark.node.Node;
import org.commonmark.node.SourceSpan;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.text.TextContentRenderer;

/**
 * The headings that divide a body into sections: those of the document itself, not those inside lists or quotations.
 *
 * @param lines the body's lines
 * @param all the headings in order
 */
public record Headings(List<String> lines, List<Head> all) {

    private static final Parser MARKDOWN = Parser.builder().includeSourceSpans(IncludeSourceSpans.BLOCKS).build();
    private static final TextContentRenderer PLAIN = TextContentRenderer.builder().build();

    /**
     * A heading.
     *
     * @param level 1 to 6
     * @param text its text without markup
     * @param from its first line, from 0
     * @param to the line after its last
     */
    public record Head(int level, String text, int from, int to) {}

    /**
     * Finds the headings of a body.
     *
     * @param markdown the body
     * @return its lines and headings
     */
    public static Headings of(String markdown) {
        List<Head> heads = new ArrayList<>();
        for (Node node = MARKDOWN.parse(markdown).getFirstChild(); node != null; node = node.getNext()) {
            if (node instanceof Heading heading) {
                List<SourceSpan> spans = heading.getSourceSpans();
                heads.add(new Head(heading.getLevel(), PLAIN.render(heading).strip(),
                        spans.get(0).getLineIndex(), spans.get(spans.size() - 1).getLineIndex() + 1));
            }
        }
        return new Headings(markdown.lines().toList(), List.copyOf(heads));
    }

    /**
     * The line at which a heading's section ends: where the next heading of its level or a higher one stands.
     *
     * @param head one of these headings
     * @return the line after the section's last
     */
    public int endOf(Head head) {
        return all.stream().filter(other -> other.from() > head.from() && other.level() <= head.level())
                .mapToInt(Head::from).findFirst().orElse(lines.size());
    }

    /**
     * The heading a line belongs to, if a heading stands there.
     *
     * @param line a line, from 0
     * @return that heading
     */
    public Optional<Head> at(int line) {
        return all.stream().filter(head -> head.from() <= line && line < head.to()).findFirst();
    }
}
