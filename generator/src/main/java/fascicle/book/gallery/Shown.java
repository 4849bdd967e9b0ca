package fascicle.book.gallery;

import fascicle.photo.Picture;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A photograph as a book shows it.
 *
 * @param picture its content and size
 */
public record Shown(Picture picture) {

    /** What a page shows where the browser does not choose. */
    private static final int USUAL = 960;

    /** As much of the content's hash as tells any two photographs of a maker apart. */
    private static final int LETTERS = 16;

    /**
     * The widths of its copies.
     *
     * @return in pixels, ascending; none wider than the picture itself
     */
    public List<Integer> widths() {
        return picture.printWidths();
    }

    /**
     * Where a copy stands. The address follows from the content alone, so that it tells nothing of the maker's files.
     *
     * @param width one of {@link #widths}
     * @return an address of the book
     */
    public String address(int width) {
        return "pictures/" + picture.hash().substring(0, LETTERS) + "-" + width + ".jpg";
    }

    /**
     * The copy for browsers that do not choose.
     *
     * @param root the way from the page to the book's top
     * @return the way to the copy
     */
    public String source(String root) {
        return root + address(Math.min(USUAL, picture.width()));
    }

    /**
     * All copies, as HTML's {@code srcset} writes them.
     *
     * @param root the way from the page to the book's top
     * @return each copy's way and width
     */
    public String sources(String root) {
        return widths().stream().map(width -> root + address(width) + " " + width + "w")
                .collect(Collectors.joining(", "));
    }
}
