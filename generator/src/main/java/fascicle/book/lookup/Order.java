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
    /** As the sample string hangs: see {@link fascicle.colour.HueOrder}. */
    HUE,
    /** The least dye first: the sum of what is known of its dyes on the weight of the needles. */
    OWF,
    /** The nearest colour first. */
    NEAR;

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
