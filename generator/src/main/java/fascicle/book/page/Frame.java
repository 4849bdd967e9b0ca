package fascicle.book.page;

import java.util.List;

/**
 * What stands round every page.
 *
 * @param language of the notebook, as a BCP 47 tag
 * @param title of the page
 * @param book the book's title
 * @param edition the book's edition, in words
 * @param home the way to the cover
 * @param about the way to what the figures mean
 * @param style the way to the style
 * @param lookUp the way to the look-up
 * @param lists the ways to the lists
 * @param trail from the cover to this page, itself last
 */
public record Frame(String language, String title, String book, String edition, String home, String about,
        String style, String lookUp, List<Door> lists, List<Link> trail) {

    /**
     * A way to a list.
     *
     * @param text the list's name
     * @param href the way there
     * @param here whether the page is that list or belongs to it
     */
    public record Door(String text, String href, boolean here) {}
}
