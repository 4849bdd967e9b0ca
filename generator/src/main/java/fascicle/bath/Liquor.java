package fascicle.bath;

import java.util.List;

/**
 * The liquid of a bath: the water poured in, the liquid parts, and what stood in it from the bath before.
 *
 * <p>A liquid part whose volume nobody knows (a splash) is not counted, and makes the figures rough.
 *
 * @param water poured in, mL; unknown where the bath is impossible
 * @param total all the liquid, mL
 * @param liquidParts the liquid parts together, mL
 * @param impossible whether the liquid parts alone are more than the liquor
 */
public record Liquor(Magnitude water, Magnitude total, Magnitude liquidParts, boolean impossible) {

    /** A bath of which no volume is known. */
    public static final Liquor UNKNOWN = new Liquor(Magnitude.UNKNOWN, Magnitude.UNKNOWN, Magnitude.UNKNOWN, false);

    /** How far the liquid parts may exceed the liquor by rounding alone, as a share of it. */
    private static final double ROUNDING = 1e-9;

    /**
     * The liquor of a bath whose water was measured.
     *
     * <p>V = water + standing + a + b·m + c·V, where a, b and c are the liquid parts of a batch, of a gram of needles
     * and of a millilitre of liquor; so V = (water + standing + a + b·m) / (1 − c).
     *
     * @param water poured in, mL
     * @param standing left from the bath before, mL; zero for a fresh bath
     * @param needles dry needles, g
     * @param doses what is added, liquid or not
     * @return the liquor; impossible where c is 1 or more
     */
    public static Liquor poured(Magnitude water, Magnitude standing, Magnitude needles, List<Dose> doses) {
        Magnitude poured = water.plus(standing);
        Magnitude share = Magnitude.ZERO;
        boolean splash = false;
        for (Dose dose : liquids(doses)) {
            Magnitude millilitres = dose.follows() == Basis.BATH
                    ? dose.millilitres()
                    : dose.millilitresIn(new Batch(needles, Magnitude.UNKNOWN));
            if (!millilitres.known()) {
                splash = true;
            } else if (dose.follows() == Basis.BATH) {
                share = share.plus(millilitres);
            } else {
                poured = poured.plus(millilitres);
            }
        }
        if (share.orThrow() >= 1) {
            return new Liquor(water, Magnitude.UNKNOWN, Magnitude.UNKNOWN, true);
        }
        Magnitude total = poured.over(Magnitude.ONE.minus(share)).about(splash);
        return new Liquor(water, total, total.minus(water).minus(standing), false);
    }

    /**
     * The liquor of a bath that is filled up to a volume; the water is what is left of it.
     *
     * @param total all the liquid, mL
     * @param standing left from the bath before, mL, of which no more is taken than there is room for; zero for a fresh
     *     bath
     * @param needles dry needles, g
     * @param doses what is added, liquid or not
     * @return the liquor; impossible where the liquid parts alone are more than it
     */
    public static Liquor filled(Magnitude total, Magnitude standing, Magnitude needles, List<Dose> doses) {
        if (!total.known()) {
            return UNKNOWN;
        }
        Magnitude parts = Magnitude.ZERO;
        boolean splash = false;
        for (Dose dose : liquids(doses)) {
            Magnitude millilitres = dose.millilitresIn(new Batch(needles, total));
            splash |= !millilitres.known();
            parts = millilitres.known() ? parts.plus(millilitres) : parts;
        }
        parts = parts.about(splash);
        if (parts.orThrow() > total.orThrow() * (1 + ROUNDING)) {
            return new Liquor(Magnitude.UNKNOWN, total, parts, true);
        }
        Magnitude water = total.minus(parts).minus(standing);
        if (water.known() && water.orThrow() < 0) {
            water = Magnitude.of(0, water.about());
        }
        return new Liquor(water, total, parts, false);
    }

    /**
     * The same liquor where nobody said how much water was poured.
     *
     * @return the liquor without its water
     */
    public Liquor withoutWater() {
        return new Liquor(Magnitude.UNKNOWN, total, liquidParts, impossible);
    }

    /**
     * Whether a figure of the liquor is rough.
     *
     * @return true where the water or the whole is
     */
    public boolean about() {
        return water.about() || total.about();
    }

    private static List<Dose> liquids(List<Dose> doses) {
        return doses.stream().filter(Dose::liquid).toList();
    }
}
