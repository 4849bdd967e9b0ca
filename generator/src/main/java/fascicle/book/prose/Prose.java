package fascicle.book.prose;

import fascicle.book.gallery.Shown;
import fascicle.book.page.Markup;
import fascicle.notebook.Note;
import java.util.Optional;
import java.util.function.Function;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.Entities;
import org.jsoup.nodes.TextNode;
import org.jsoup.parser.Parser;

/**
 * The maker's words as HTML that is safe to publish: Markdown, then a cleaner with a list of what may stay.
 *
 * <p>Links to other files of the notebook lead to the book's pages, where this edition has them; pictures of the
 * notebook are shown as copies without metadata, others give way to their words; headings step down below the page's
 * own, and what stands in the wrong place is mended.
 */
public final class Prose {

    private static final int HEADINGS_DOWN = 2;
    private static final int DEEPEST = 200;

    /** How much of a page's width a picture takes: all of a phone's, the measure of the text elsewhere. */
    private static final String SIZES = "(max-width: 44rem) 92vw, 40rem";

    private final Function<String, Optional<String>> pageOfFile;
    private final Function<String, Optional<Shown>> pictureOfFile;

    /**
     * Prose of one book.
     *
     * @param pageOfFile gives the way from the book's top to the page of a notebook file, if the book has one
     * @param pictureOfFile gives a notebook file as a picture, if the book shows it
     */
    public Prose(Function<String, Optional<String>> pageOfFile, Function<String, Optional<Shown>> pictureOfFile) {
        this.pageOfFile = pageOfFile;
        this.pictureOfFile = pictureOfFile;
    }

    /**
     * The HTML of a note.
     *
     * @param note the maker's words
     * @param root the way from the page to the book's top: nothing, or {@code ../}
     * @return clean HTML
     */
    public Markup html(Note note, String root) {
        Parser parser = Parser.htmlParser().setMaxDepth(DEEPEST);
        Document dirty = parser.parseInput("<body>" + Markdown.dirtyHtml(note.markdown()), SafeHtml.BASE);
        for (Element element : dirty.body().getAllElements()) {
            element.removeAttr("class").removeAttr("aria-hidden");
            switch (element.normalName()) {
                case "img" -> show(element, note.place().file(), root);
                case "a" -> lead(element, note.place().file(), root);
                case "h1", "h2", "h3", "h4", "h5", "h6" -> stepDown(element);
                case "td", "th" -> alignByClass(element);
                case "ol" -> keepPlainStart(element);
                default -> { }
            }
        }
        Document clean = SafeHtml.clean(dirty);
        Nesting.mend(clean.body());
        clean.getElementsByTag("table").wrap("<div class=\"scroll\" tabindex=\"0\"></div>");
        clean.outputSettings().prettyPrint(false).escapeMode(Entities.EscapeMode.xhtml);
        return new Markup(clean.body().html());
    }

    private void show(Element picture, String from, String root) {
        String words = picture.attr("alt").strip();
        Optional<Shown> shown = Destination.of(picture.attr("src"), from) instanceof Destination.NotebookFile file
                ? pictureOfFile.apply(file.path()) : Optional.empty();
        if (shown.isPresent()) {
            picture.clearAttributes();
            picture.attr("src", shown.get().source(root)).attr("srcset", shown.get().sources(root)).attr("sizes", SIZES)
                    .attr("width", String.valueOf(shown.get().picture().width()))
                    .attr("height", String.valueOf(shown.get().picture().height()))
                    .attr("alt", words).attr("loading", "lazy");
            if (!words.isEmpty()) {
                // Who does not see the picture has heard its words already.
                picture.after(captioned(words).attr("aria-hidden", "true"));
            }
        } else if (words.isEmpty()) {
            picture.remove();
        } else {
            picture.replaceWith(captioned(words));
        }
    }

    private static Element captioned(String words) {
        return new Element("span").addClass("picture").appendChild(new TextNode(words));
    }

    private void lead(Element link, String from, String root) {
        Destination destination = Destination.of(link.attr("href"), from);
        link.removeAttr("href");
        if (destination instanceof Destination.Outside outside) {
            link.attr("href", outside.address());
        } else if (destination instanceof Destination.NotebookFile file) {
            pageOfFile.apply(file.path()).ifPresent(page -> link.attr("href", root + page));
        }
        if (!link.hasAttr("href")) {
            link.unwrap();
        }
    }

    private static void stepDown(Element heading) {
        int level = heading.normalName().charAt(1) - '0';
        heading.tagName("h" + Math.min(6, level + HEADINGS_DOWN));
    }

    private static void alignByClass(Element cell) {
        switch (cell.attr("align")) {
            case "left" -> cell.addClass("left");
            case "right" -> cell.addClass("right");
            case "center" -> cell.addClass("centre");
            default -> { }
        }
    }

    private static void keepPlainStart(Element list) {
        if (!list.attr("start").matches("[0-9]{1,9}")) {
            list.removeAttr("start");
        }
    }
}
