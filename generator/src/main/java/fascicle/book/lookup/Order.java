package fascicle.book.lookup;

import java.util.Locale;
import java.util.Optional;

/** How answers are put in order. Equals stand newest first, then by id; what is unknown stands last. */
public enum Order {
    /** Newest first. */
    DATE,
    /** The most even first. */
    EVENNESS,
    /** The lightest first. */
    LIGHTNESS,
    /** Round the circle from red by yellow, green and blue; then the greys, the lightest first. */
    HUE,
    /** The least dye first: the sum of what is known of its dyes on the weight of the needles. */
    OWF,
    /** The nearest colour first. */
    NEAR;

    /**
     * A colour of less chroma (C*ab) than this is a grey here, since its hue is hardly seen and wanders with every
     * reading ({@code common practice, no source}).
     */
    public static final double GREY_BELOW = 4;

    /**
     * Reads an order's name.
     *
     * @param text such as {@code evenness}, in any case
     * @return the order, or nothing
     */
    public static Optional<Order> named(String text) {
        for (Order order : values()) {
            if (order.word().equals(text.toLowerCase(Locale.ROOT))) {
                return Optional.of(order);
            }
        }
        return Optional.empty();
    }

    /**
     * The order in words of the data.
     *
     * @return lower case
     */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
