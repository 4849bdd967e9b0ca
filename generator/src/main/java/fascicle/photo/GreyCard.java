package fascicle.photo;

import fascicle.colour.Matrix;
import fascicle.colour.Xyz;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Divides the picture's light by the card's known reflectance against its reading.
 *
 * <p>Divided is what the eye's three kinds of cones catch (the linear Bradford transform from the card's reading to its
 * known colour), and not the channels of the picture. For light of 5003 K that a camera recorded without balancing its
 * white, 12 smooth reflectances come back with a CIEDE2000 of at most 0.03, and 2.9 (median 1.1) where channels of
 * linear sRGB are divided; for light of 6504 K with at most 1.0 either way; for tungsten (illuminant A) with at most
 * 2.9 against 23. A camera that balanced its white by channels has done its harm before, and nothing is left to divide.
 */
final class GreyCard {

    /** A card darker than this in any cone gives nothing to divide by. */
    private static final double DARKEST = 1e-5;

    private GreyCard() {}

    /**
     * The correction by one card or the mean of several.
     *
     * @param cards at least one
     * @return nothing where the cards are black
     */
    static Optional<Correction> correction(List<Known> cards, Profile profile) {
        double[] reading = new double[3];
        double[] known = new double[3];
        for (Known card : cards) {
            Light light = card.light();
            add(reading, profile.toXyz().times(light.red(), light.green(), light.blue()));
            add(known, Xyz.of(card.lab()).toArray());
        }
        for (double component : reading) {
            if (!(component > DARKEST)) {
                return Optional.empty();
            }
        }
        Matrix division = Xyz.adaptation(Xyz.of(reading), Xyz.of(known));
        return Optional.of(new Correction(Sample.Against.GREY_CARD, division.times(profile.toXyz()),
                OptionalDouble.empty()));
    }

    private static void add(double[] sum, double[] xyz) {
        for (int i = 0; i < 3; i++) {
            sum[i] += xyz[i];
        }
    }
}
