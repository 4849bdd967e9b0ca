package fascicle.book.prose;

import fascicle.book.gallery.Gallery;
import fascicle.notebook.Finding;
import fascicle.notebook.Note;
import fascicle.notebook.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.SourceSpan;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;

/** Says what the cleaner takes out of the maker's words, and where, without making a page. */
public final class TakenOut {

    private final Note note;
    private final Set<String> files;
    private final Gallery gallery;
    private final List<Finding> findings = new ArrayList<>();

    private TakenOut(Note note, Set<String> files, Gallery gallery) {
        this.note = note;
        this.files = files;
        this.gallery = gallery;
    }

    /**
     * What is taken out of a note.
     *
     * @param note the maker's words
     * @param files the notebook's files that have a page in the studio's book, or would have if they could be read
     * @param gallery the pictures of the studio's book
     * @return warnings, in the order of the text
     */
    public static List<Finding> of(Note note, Set<String> files, Gallery gallery) {
        TakenOut takenOut = new TakenOut(note, files, gallery);
        if (note.markdown().indexOf('<') >= 0 || note.markdown().indexOf('[') >= 0) {
            Markdown.located(note.markdown()).accept(takenOut.new Search());
        }
        return List.copyOf(takenOut.findings);
    }

    private final class Search extends AbstractVisitor {
        @Override
        public void visit(HtmlBlock block) {
            examine(Jsoup.parseBodyFragment(block.getLiteral()), block);
        }

        @Override
        public void visit(HtmlInline inline) {
            examine(Jsoup.parse(inline.getLiteral(), "", Parser.xmlParser()), inline);
        }

        @Override
        public void visit(Image image) {
            picture(image.getDestination(), image);
        }

        @Override
        public void visit(Link link) {
            link(link.getDestination(), link);
            visitChildren(link);
        }
    }

    private void examine(Document html, Node where) {
        for (Element element : html.getAllElements()) {
            String tag = element.normalName();
            if (tag.equals("img")) {
                picture(element.attr("src"), where);
            } else if (!tag.startsWith("#") && !tag.matches("html|head|body") && !SafeHtml.keeps(tag)) {
                warn(where, "<" + tag + "> is taken out: a page holds plain text, lists, tables and links");
            }
            if (tag.equals("a") && element.hasAttr("href")) {
                link(element.attr("href"), where);
            }
            for (Attribute attribute : element.attributes()) {
                String name = attribute.getKey().toLowerCase(Locale.ROOT);
                if (name.startsWith("on") || name.equals("style")) {
                    warn(where, name + " of <" + tag
                            + "> is taken out: a page carries no scripts or styles of its own");
                }
            }
        }
    }

    private void picture(String address, Node where) {
        String why = Destination.of(address, note.place().file()) instanceof Destination.NotebookFile file
                ? gallery.whyNot(file.path()).orElse("") : "is no file of the notebook; put it beside this file and "
                        + "name it by its file alone";
        if (!why.isEmpty()) {
            warn(where, "the picture “" + address + "” is taken out, and its words stand in its place: it " + why);
        }
    }

    private void link(String address, Node where) {
        Destination destination = Destination.of(address, note.place().file());
        if (destination instanceof Destination.Refused) {
            warn(where, "the link to \"" + address + "\" is taken out: links lead to http, https, mailto, or to a file "
                    + "of the notebook");
        } else if (destination instanceof Destination.Leaving) {
            warn(where, "the link to \"" + address + "\" is taken out: it leaves the notebook; name a file of the "
                    + "notebook, as seen from this one");
        } else if (destination instanceof Destination.NotebookFile file && !files.contains(file.path())) {
            warn(where, "the link to \"" + address + "\" is taken out: the book has no page of “" + file.path()
                    + "”; mend its name, or take the link out");
        }
    }

    private void warn(Node where, String message) {
        findings.add(new Finding(place(where), Finding.Level.WARNING, message));
    }

    private Place place(Node where) {
        Place start = note.place();
        if (where.getSourceSpans().isEmpty()) {
            return start;
        }
        SourceSpan span = where.getSourceSpans().get(0);
        String line = note.markdown().lines().skip(span.getLineIndex()).findFirst().orElse("");
        int column = line.codePointCount(0, Math.min(span.getColumnIndex(), line.length()));
        return new Place(start.file(), start.line() + span.getLineIndex(),
                (span.getLineIndex() == 0 ? start.column() : 1) + column);
    }
}
