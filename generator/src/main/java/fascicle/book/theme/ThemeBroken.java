package fascicle.book.theme;

/** A theme that cannot be used, in words for whoever made it. */
public final class ThemeBroken extends Exception {

    private static final long serialVersionUID = 1L;

    private final String template;
    private final int line;

    /**
     * A theme that cannot be used.
     *
     * @param template the file
     * @param line its line, from 1
     * @param message what was found and what was expected
     */
    public ThemeBroken(String template, int line, String message) {
        super(template + ":" + line + ": " + message);
        this.template = template;
        this.line = line;
    }

    /**
     * The file that is broken.
     *
     * @return its name in the theme
     */
    public String template() {
        return template;
    }

    /**
     * Where it is broken.
     *
     * @return the line, from 1
     */
    public int line() {
        return line;
    }

    /** Thrown where a page is made, and no caller can mend a theme. */
    public static final class WhileRendering extends RuntimeException {

        private static final long serialVersionUID = 1L;

        /**
         * Wraps a broken theme.
         *
         * @param broken what is broken
         */
        public WhileRendering(ThemeBroken broken) {
            super(broken.getMessage(), broken);
        }
    }
}
