package fascicle.measure;

/** A text that holds no quantity that can be read without guessing. Its message is one plain sentence. */
public final class UnreadableQuantity extends Exception {
    private static final int LONGEST_QUOTE = 60;

    private final String found;
    private final String expected;
    private final String mend;

    /**
     * @param found the text as written
     * @param problem what is wrong with it, as the rest of a sentence that begins with the text: {@code "has no unit"}
     * @param expected what should stand there: {@code "a mass, such as 45 g"}
     * @param mend what the maker can do, beginning with a verb: {@code "write g after the number"}
     */
    public UnreadableQuantity(String found, String problem, String expected, String mend) {
        super("“" + shortened(found) + "” " + problem + "; " + mend);
        this.found = found;
        this.expected = expected;
        this.mend = mend;
    }

    /** The text as written, in full. */
    public String found() {
        return found;
    }

    /** What should stand there, with an example. */
    public String expected() {
        return expected;
    }

    /** What the maker can do about it, beginning with a verb. */
    public String mend() {
        return mend;
    }

    private static String shortened(String text) {
        String line = text.replaceAll("[\\p{Cntrl}\\u2028\\u2029]", " ");
        return line.codePointCount(0, line.length()) <= LONGEST_QUOTE
                ? line
                : line.substring(0, line.offsetByCodePoints(0, LONGEST_QUOTE)) + "…";
    }
}
