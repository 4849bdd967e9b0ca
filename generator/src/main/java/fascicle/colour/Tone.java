package fascicle.colour;

/** Which way a colour has shifted. */
public enum Tone {
    HARDLY_CHANGED, ONLY_DARKER, ONLY_LIGHTER, WARMER, COOLER;

    /** The tone of a shift. */
    public static Tone of(Lab from, Lab to) {
        throw new IllegalStateException("not told yet: " + from + to);
    }

    /** In words of the data: {@code only darker}. */
    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
    }
}
