package fascicle.photo;

/**
 * How far from the truth a colour read off a photograph may lie, as CIEDE2000: what is assumed until the maker has
 * photographed things of known colour.
 */
final class Certainty {

    /** With a grey card, which mends the light's colour and strength but not the camera's own sense of colour. */
    static final double AGAINST_GREY_CARD = 6;

    /** With a chart, which mends the camera's sense of colour too. */
    static final double AGAINST_CHART = 4;

    /**
     * With nothing; common practice, no source. A light of 5000 K taken for 6500 K moves twelve middling colours by a
     * CIEDE2000 of 4, and with half a stop or a whole one of exposure by 7 to 16.
     */
    static final double AGAINST_NOTHING = 15;

    private Certainty() {}

    /** A chart that fits worse than is assumed says so itself. */
    static double of(Correction correction) {
        return switch (correction.against()) {
            case NOTHING -> AGAINST_NOTHING;
            case GREY_CARD -> AGAINST_GREY_CARD;
            case CHART -> StrictMath.max(AGAINST_CHART, correction.leftOver().orElse(AGAINST_CHART));
        };
    }
}
