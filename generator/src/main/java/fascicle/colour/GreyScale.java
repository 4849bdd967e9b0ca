package fascicle.colour;

/** Grades of the grey scales of ISO 105. */
public final class GreyScale {

    private GreyScale() {}

    /** The grade of a change in colour, ISO 105-A05. */
    public static Grade change(Lab original, Lab tested) {
        throw new IllegalStateException("not graded yet: " + original + tested);
    }

    /** The grade of staining, ISO 105-A04. */
    public static Grade staining(Lab unstained, Lab stained) {
        throw new IllegalStateException("not graded yet: " + unstained + stained);
    }
}
