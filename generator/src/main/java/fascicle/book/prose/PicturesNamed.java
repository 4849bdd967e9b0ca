package fascicle.book.prose;

import fascicle.notebook.Note;
import java.util.Set;
import java.util.TreeSet;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;

/** Finds the pictures that the maker's words name. */
public final class PicturesNamed {

    private PicturesNamed() {}

    /**
     * The notebook's own pictures in a note.
     *
     * @param note the maker's words
     * @return paths relative to the notebook, whether or not anything is there
     */
    public static Set<String> in(Note note) {
        Set<String> paths = new TreeSet<>();
        if (note.markdown().contains("![") || note.markdown().contains("<")) {
            for (Element picture : Parser.parse(Markdown.dirtyHtml(note.markdown()), SafeHtml.BASE).select("img")) {
                if (Destination.of(picture.attr("src"), note.place().file())
                        instanceof Destination.NotebookFile file) {
                    paths.add(file.path());
                }
            }
        }
        return paths;
    }
}
