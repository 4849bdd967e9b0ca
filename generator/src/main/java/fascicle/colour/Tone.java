package fascicle.colour;

import java.util.Locale;

/**
 * Which way a colour has shifted, in the words of the trade.
 *
 * <p>The rule (common practice, no source):
 *
 * <ol>
 *   <li>Below CIEDE2000 2 a colour has hardly changed.
 *   <li>A colour that only darkens pales in hue as in a shadow, on its way to black: a* and b* shrink with L* + 16,
 *       which in Lab is the same surface in less light. One that only lightens is thinned with white: a* and b*
 *       shrink with 100 − L*. What a* and b* do beyond that is the shift in tone.
 *   <li>Where this shift is smaller than the change in L*, and either below 2 or below a quarter of that change, the
 *       colour is only darker or only lighter.
 *   <li>Else it is warmer where the shift points to within 80° of a red orange (hue 55°), and cooler elsewhere. What
 *       goes square to that direction goes to green or to magenta; neither is called warm.
 * </ol>
 */
public enum Tone {
    HARDLY_CHANGED, ONLY_DARKER, ONLY_LIGHTER, WARMER, COOLER;

    private static final double HARDLY = 2;
    private static final double BESIDE_LIGHTNESS = 0.25;
    private static final double WARM_HUE = 55;
    private static final double WARM_REACH = 80;

    /**
     * The tone of a shift.
     *
     * @param from the colour before
     * @param to the colour after
     * @return its one word
     */
    public static Tone of(Lab from, Lab to) {
        if (ColourDifference.ciede2000(from, to) < HARDLY) {
            return HARDLY_CHANGED;
        }
        double lightness = to.lightness() - from.lightness();
        double kept = kept(from.lightness(), to.lightness());
        Lab shift = new Lab(0, to.a() - kept * from.a(), to.b() - kept * from.b());
        double change = StrictMath.abs(lightness);
        if (shift.chroma() < change && shift.chroma() < StrictMath.max(HARDLY, BESIDE_LIGHTNESS * change)) {
            return lightness < 0 ? ONLY_DARKER : ONLY_LIGHTER;
        }
        double apart = StrictMath.abs(shift.hueDegrees() - WARM_HUE);
        return StrictMath.min(apart, 360 - apart) <= WARM_REACH ? WARMER : COOLER;
    }

    /** In words of the data: {@code only darker}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** The share of a* and b* that stays when a colour only darkens or only lightens; from 0 to 1. */
    private static double kept(double before, double after) {
        double whole = after < before ? before + 16 : 100 - before;
        double rest = after < before ? after + 16 : 100 - after;
        // Fluorescent whites and noise below black lie beyond both ends.
        return whole > 0 ? StrictMath.max(0, rest / whole) : 1;
    }
}
