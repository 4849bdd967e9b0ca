package fascicle.book.page;

import java.util.List;

/**
 * A photograph that colours were read off, or that is only shown.
 *
 * @param source the way to the copy for browsers that do not choose
 * @param sources the ways to all copies, as {@code srcset} writes them
 * @param width of the picture in pixels
 * @param height of the picture in pixels
 * @param alternative what it shows, for those who do not see it
 * @param outlines the areas that were read, drawn to lie over it
 * @param caption what is outlined, and what it was read against
 * @param cautions what to heed about colours read off it, in sentences
 */
public record Photograph(String source, String sources, int width, int height, String alternative, Markup outlines,
        String caption, List<String> cautions) {}
