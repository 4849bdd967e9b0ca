package fascicle.measure;

/** What a quantity measures. Every dimension has one base unit, in which values are compared and computed. */
public enum Dimension {
    /** Mass; the base unit is the gram. */
    MASS("a mass", "45 g"),
    /** Volume; the base unit is the millilitre. */
    VOLUME("a volume", "250 mL"),
    /** Length; the base unit is the centimetre. */
    LENGTH("a length", "7 cm"),
    /** Temperature on a scale, not a difference; the base unit is the degree Celsius. */
    TEMPERATURE("a temperature", "85 °C"),
    /** Duration; the base unit is the minute. */
    TIME("a time", "2 h 30 min");

    private final String phrase;
    private final String example;

    Dimension(String phrase, String example) {
        this.phrase = phrase;
        this.example = example;
    }

    /** The dimension in a sentence, with its article: {@code "a mass"}. */
    public String phrase() {
        return phrase;
    }

    /** A quantity of this dimension as a maker would write it: {@code "45 g"}. */
    public String example() {
        return example;
    }
}
