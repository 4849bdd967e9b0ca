package fascicle.photo;

import java.util.List;
import java.util.OptionalDouble;

/**
 * How far from the truth a colour read off a photograph may lie, as CIEDE2000: what is assumed until the maker has
 * photographed things of known colour.
 */
final class Certainty {

    /**
     * With a grey card, which mends the light's colour and strength but not the camera's own sense of colour; common
     * practice, no source.
     */
    static final double AGAINST_GREY_CARD = 6;

    /** With a chart, which mends the camera's sense of colour too; common practice, no source. */
    static final double AGAINST_CHART = 4;

    /**
     * With nothing; common practice, no source. A light of 5000 K taken for 6500 K moves twelve middling colours by a
     * CIEDE2000 of 4, and with half a stop or a whole one of exposure by 7 to 16.
     */
    static final double AGAINST_NOTHING = 15;

    /**
     * With a caution about light or areas; common practice, no source. Drawn pictures whose card or needles were marked
     * a little beside the thing, or whose light was cut off, were read with errors of 5 to 20.
     */
    private static final double AGAINST_DOUBT = 12;

    /** What a fit leaves over is a mean over patches that it was made to meet: needles it never saw lie farther off. */
    private static final double BEYOND_THE_FIT = 2;

    private Certainty() {}

    /**
     * How far a reading may lie from the truth.
     *
     * @param usual what is assumed or known of readings of its kind
     * @param leftOver what its patches leave over
     * @param cautions what there is to heed
     */
    static double of(double usual, OptionalDouble leftOver, List<Caution> cautions) {
        double fit = StrictMath.max(usual, BEYOND_THE_FIT * leftOver.orElse(0));
        return cautions.stream().map(Caution::kind).anyMatch(Caution.Kind::isGrave)
                ? StrictMath.max(fit, AGAINST_DOUBT) : fit;
    }

    /** What is assumed of a kind of reading. */
    static double usual(Sample.Against against) {
        return switch (against) {
            case NOTHING -> AGAINST_NOTHING;
            case GREY_CARD -> AGAINST_GREY_CARD;
            case CHART -> AGAINST_CHART;
        };
    }
}
