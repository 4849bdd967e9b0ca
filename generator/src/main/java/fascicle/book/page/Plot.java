package fascicle.book.page;

import java.util.List;

/**
 * Colours drawn against figures, and the same in words.
 *
 * @param word what is drawn, by which a theme may tell plots apart: {@code colours}, {@code depths}, {@code fading}
 * @param title the same in words
 * @param drawing the plot, with its title and what it shows for those who do not see it
 * @param reading how it is read, in a sentence
 * @param said what it shows, in words and numbers
 * @param facts its ends and its parts in numbers
 * @param ways how many of its needles lead to an entry
 */
public record Plot(String word, String title, Markup drawing, String reading, String said, List<Fact> facts,
        int ways) {}
