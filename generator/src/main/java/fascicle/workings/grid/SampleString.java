package fascicle.workings.grid;

import fascicle.colour.Lab;
import fascicle.workings.ColourFigures;
import fascicle.workings.EntryWorking;
import java.util.Comparator;
import java.util.List;

/** The order in which dyed samples hang on a string. */
public enum SampleString {
    /** Round the circle of hues, then the greys from dark to light. */
    HUE(Comparator.comparing(Sample::grey)
            .thenComparingDouble(sample -> sample.grey() ? 0 : sample.hue())
            .thenComparingDouble(sample -> sample.colour().lightness())),
    /** From light to dark. */
    LIGHTNESS(Comparator.comparingDouble((Sample sample) -> -sample.colour().lightness())
            .thenComparingDouble(Sample::hue)),
    /** Year by year, and by hue within a year. */
    YEAR(Comparator.comparingInt((Sample sample) -> sample.entry().entry().date().getYear())
            .thenComparing(HUE.order));

    /** Below this chroma C*ab a hue tells nothing to the eye: common practice, no source. */
    private static final double LEAST_CHROMA = 4;

    /** Where the circle of hues is cut, in degrees: between purple and red, since no brown lies there. */
    private static final double START = 350;

    private final Comparator<Sample> order;

    SampleString(Comparator<Sample> order) {
        this.order = order;
    }

    /**
     * Hangs samples up.
     *
     * @param entries any entries
     * @return those that have a colour, in this order; of equal colours the first by id
     */
    public List<EntryWorking> of(List<EntryWorking> entries) {
        return entries.stream().flatMap(entry -> entry.colour().map(ColourFigures::lab)
                        .map(colour -> Sample.of(entry, colour)).stream())
                .sorted(order.thenComparing(sample -> sample.entry().id()))
                .map(Sample::entry).toList();
    }

    /**
     * Whether a colour has too little chroma to have a hue.
     *
     * @param colour any colour
     * @return true below a C*ab of 4
     */
    public static boolean isGrey(Lab colour) {
        return colour.chroma() < LEAST_CHROMA;
    }

    /** What a sample is ordered by, worked out once. */
    private record Sample(EntryWorking entry, Lab colour, double hue, boolean grey) {

        static Sample of(EntryWorking entry, Lab colour) {
            return new Sample(entry, colour, (colour.hueDegrees() - START + 360) % 360, isGrey(colour));
        }
    }
}
