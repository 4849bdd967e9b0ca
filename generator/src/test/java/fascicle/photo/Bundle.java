package fascicle.photo;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * A bundle of needles in fascicles of three, tied near its sheaths and fanned out.
 *
 * @param x where it is tied, in pixels
 * @param y where it is tied
 * @param angle which way the needles point, in radians from the right downwards
 * @param length of a needle, in pixels
 * @param broad half the breadth of the bundle where it is tied
 * @param fan how far the outer needles turn away, in radians
 * @param fascicles how many there are
 */
record Bundle(double x, double y, double angle, double length, double broad, double fan, int fascicles) {

    private static final double[] SHEATH = {0.105, 0.058, 0.034};
    private static final double[] TWINE = {0.62, 0.53, 0.38};

    /**
     * Lays it on the table.
     *
     * @param colour linear light of a flat of the needles' reflectance
     * @param gloss of the needles, in linear light
     * @param vary how much one needle differs from another, about a share of its light
     */
    void lay(Canvas canvas, double[] colour, double gloss, double vary, long seed) {
        Random random = new Random(seed);
        List<List<Needle>> all = new ArrayList<>();
        for (int i = 0; i < fascicles; i++) {
            all.add(fascicle(random));
        }
        Canvas mask = new Canvas(canvas.width(), canvas.height());
        all.forEach(fascicle -> fascicle.forEach(needle -> needle.mark(mask)));
        canvas.shade(mask, (int) StrictMath.round(length / 90), 0.55);
        for (List<Needle> fascicle : all) {
            for (Needle needle : fascicle.subList(0, 3)) {
                needle.castShadow(canvas, 1.5, 0.32);
                double[] own = varied(colour, vary, random);
                double shine = gloss * (0.3 + 0.7 * random.nextDouble());
                needle.paint(canvas, along -> aged(own, along), shine);
            }
            Needle sheath = fascicle.get(3);
            sheath.castShadow(canvas, 2, 0.4);
            sheath.paint(canvas, Scene.scaled(SHEATH, 0.75 + 0.5 * random.nextDouble()), 0.02);
        }
        tie(canvas);
    }

    /** Three needles and their sheath. */
    private List<Needle> fascicle(Random random) {
        double side = StrictMath.max(-1.35, StrictMath.min(1.35, 0.6 * random.nextGaussian()));
        double back = length * (0.115 + 0.035 * random.nextGaussian());
        double turn = angle + fan * side + 0.018 * random.nextGaussian();
        double startX = x - back * StrictMath.cos(angle) - side * broad * StrictMath.sin(angle);
        double startY = y - back * StrictMath.sin(angle) + side * broad * StrictMath.cos(angle);
        double thick = length / 125 * (0.9 + 0.2 * random.nextDouble());
        List<Needle> needles = new ArrayList<>();
        for (int i = -1; i <= 1; i++) {
            double own = turn + 0.016 * i + 0.008 * random.nextGaussian();
            double reach = length * (0.97 + 0.06 * random.nextGaussian());
            double sag = 0.02 * reach * (random.nextGaussian() + side);
            double bendX = startX + reach / 2 * StrictMath.cos(turn) + sag * StrictMath.sin(own);
            double bendY = startY + reach / 2 * StrictMath.sin(turn) - sag * StrictMath.cos(own);
            needles.add(new Needle(startX, startY, bendX, bendY,
                    startX + reach * StrictMath.cos(own), startY + reach * StrictMath.sin(own), thick, 0.7));
        }
        double stub = 0.045 * length;
        needles.add(new Needle(startX - 4 * StrictMath.cos(turn), startY - 4 * StrictMath.sin(turn),
                startX + stub / 2 * StrictMath.cos(turn), startY + stub / 2 * StrictMath.sin(turn),
                startX + stub * StrictMath.cos(turn), startY + stub * StrictMath.sin(turn), 1.55 * thick, 0.35));
        return needles;
    }

    /** Needles of one bundle differ in depth more than in hue. */
    private static double[] varied(double[] colour, double vary, Random random) {
        double depth = 1 + vary * random.nextGaussian();
        double warmth = 0.35 * vary * random.nextGaussian();
        return new double[] {
            StrictMath.max(0.001, colour[0] * depth * (1 + warmth)), StrictMath.max(0.001, colour[1] * depth),
            StrictMath.max(0.001, colour[2] * depth * (1 - warmth))
        };
    }

    /** A needle is a little paler towards its sheath and browner at its tip. */
    private static double[] aged(double[] colour, double along) {
        double tip = StrictMath.max(0, (along - 0.86) / 0.14);
        double foot = StrictMath.max(0, 1 - along / 0.16);
        return new double[] {
            colour[0] * (1 + 0.10 * foot - 0.30 * tip), colour[1] * (1 + 0.08 * foot - 0.42 * tip),
            colour[2] * (1 + 0.04 * foot - 0.50 * tip)
        };
    }

    /** Seven turns of twine. */
    private void tie(Canvas canvas) {
        double half = 1.45 * broad;
        double thick = length / 130;
        for (int i = -3; i <= 3; i++) {
            double along = i * 0.92 * thick;
            double middleX = x + along * StrictMath.cos(angle);
            double middleY = y + along * StrictMath.sin(angle);
            double overX = -half * StrictMath.sin(angle);
            double overY = half * StrictMath.cos(angle);
            double lean = 0.5 * thick;
            Needle turn = new Needle(middleX - overX - lean, middleY - overY, middleX + 0.6 * lean, middleY,
                    middleX + overX + lean, middleY + overY, thick, 0);
            turn.castShadow(canvas, 2, 0.3);
            turn.paint(canvas, where -> Scene.scaled(TWINE, round(where)), 0.05);
        }
    }

    /** Twine round a bundle turns away from the light at both sides. */
    private static double round(double where) {
        double off = 2 * where - 1;
        return 1 - 0.45 * off * off;
    }
}
