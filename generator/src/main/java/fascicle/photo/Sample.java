package fascicle.photo;

import fascicle.colour.Lab;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A colour read off a photograph.
 *
 * @param lab the colour under D50
 * @param against what it was read against
 * @param pixels how many pixels of the needles took part, the trimmed ones left out
 * @param unlevelness mean CIEDE2000 of the parts of the area from their mean
 * @param uncertainty how far from the truth a colour of this kind may lie, as CIEDE2000
 * @param leftOver mean CIEDE2000 of patches from their known colours as read; nothing where all are grey
 * @param cautions what to heed, the gravest first
 */
public record Sample(Lab lab, Against against, int pixels, double unlevelness, double uncertainty,
        OptionalDouble leftOver, List<Caution> cautions) {

    /** What a colour was read against. */
    public enum Against {
        /** Nothing: it is a judgement by eye, and is compared with nothing. */
        NOTHING,
        /** One grey card or several. */
        GREY_CARD,
        /** Patches enough of known colour. */
        CHART
    }

    /**
     * The same sample, when it is known how far such photographs lie from the truth; never surer than its chart fits,
     * nor than its cautions allow.
     *
     * @param found as CIEDE2000
     * @return a copy
     */
    public Sample withUncertainty(double found) {
        return new Sample(lab, against, pixels, unlevelness, Certainty.of(found, leftOver, cautions), leftOver,
                cautions);
    }
}
