package fascicle.notebook;

import java.util.Locale;

/** One of a few words the notebook's form knows. Implemented by enums. */
public interface Word {

    /**
     * The constant's name.
     *
     * @return as in {@link Enum#name()}
     */
    String name();

    /**
     * The word as written in a notebook.
     *
     * @return lower case, hyphens between words
     */
    default String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
