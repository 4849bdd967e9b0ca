package fascicle.notebook.read;

import fascicle.measure.UnreadableQuantity;

/** A value that cannot be read; its words become a finding. */
final class Unreadable extends Exception {

    private static final long serialVersionUID = 1L;

    private final String words;

    /**
     * Makes one.
     *
     * @param words what was found, what was expected, how to mend it
     */
    Unreadable(String words) {
        super(words);
        this.words = words;
    }

    /** The same complaint as the measures' own. */
    static Unreadable because(UnreadableQuantity quantity) {
        return new Unreadable(String.valueOf(quantity.getMessage()));
    }

    /** The same complaint, of a figure that is only part of what was written. */
    static Unreadable because(UnreadableQuantity quantity, String written) {
        return new Unreadable(because(quantity).words.replace("“" + quantity.found() + "”", "“" + written + "”"));
    }

    /** The words for the finding. */
    String inWords() {
        return words;
    }
}
