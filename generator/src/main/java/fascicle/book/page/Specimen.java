package fascicle.book.page;

import java.util.List;

/**
 * One colour with its caption.
 *
 * @param word what it shows, by which its form is chosen: {@code bare}, {@code dyed} or {@code target}
 * @param title the same in words
 * @param swatch the colour, large
 * @param lines its name and its figures
 */
public record Specimen(String word, String title, Markup swatch, List<String> lines) {}
