package fascicle.photo;

import java.io.Serial;

/**
 * A picture that cannot be used; the message says why and how to mend it, as the end of a sentence about the picture.
 */
public final class UnreadablePhotograph extends Exception {

    @Serial
    private static final long serialVersionUID = 1L;

    /**
     * A picture that cannot be used.
     *
     * @param words such as {@code is cut off in the middle; copy it from the phone again}
     */
    public UnreadablePhotograph(String words) {
        super(words);
    }

    /**
     * Why, and how to mend it.
     *
     * @return the words
     */
    public String words() {
        return String.valueOf(getMessage());
    }
}
