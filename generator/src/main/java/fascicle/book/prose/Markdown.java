package fascicle.book.prose;

import java.util.List;
import org.commonmark.Extension;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.Node;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;

/** CommonMark with tables, nested no deeper than anyone writes, so that no text can exhaust the stack. */
final class Markdown {

    private static final int DEEPEST = 40;
    private static final List<Extension> EXTENSIONS = List.of(TablesExtension.create());
    private static final HtmlRenderer RENDERER = HtmlRenderer.builder().extensions(EXTENSIONS).build();
    private static final Parser PLAIN = parser(IncludeSourceSpans.NONE);
    private static final Parser LOCATED = parser(IncludeSourceSpans.BLOCKS_AND_INLINES);

    private Markdown() {}

    private static Parser parser(IncludeSourceSpans spans) {
        return Parser.builder().extensions(EXTENSIONS).maxOpenBlockParsers(DEEPEST).maxInlineNesting(DEEPEST)
                .includeSourceSpans(spans).build();
    }

    /** The HTML of a text, with the maker's own HTML in it as written. */
    static String dirtyHtml(String markdown) {
        return RENDERER.render(PLAIN.parse(markdown));
    }

    /** The tree of a text, each node with its place. */
    static Node located(String markdown) {
        return LOCATED.parse(markdown);
    }
}
