package fascicle.photo;

import fascicle.colour.Lab;
import fascicle.colour.Matrix;
import fascicle.colour.Xyz;
import java.util.Optional;

/**
 * How far a card's reading lies from all that a grey card can look like in daylight: from the line of daylight between
 * 5000 and 7500 K, as a camera records it that balances for 6504 K or for the light itself.
 *
 * <p>Distances are taken in a* and b* at the lightness of an 18 % card, so that exposure does not matter.
 */
final class CardTint {

    /**
     * What a card's own tint and a camera's balance may add; common practice, no source. Wrapping paper (about L* 65,
     * a* 6, b* 20) lies 7 beyond the line, a card under tungsten light over 20.
     */
    private static final double ALLOWED = 6;

    private static final double MIDDLE_GREY = 0.18;

    /** Daylight of 7504 K (CIE 15:2004, illuminant D75). */
    private static final Xyz D75 = new Xyz(0.2990 / 0.3149, 1, (1 - 0.2990 - 0.3149) / 0.3149);

    private static final Lab WARMEST = recorded(Xyz.D50);
    private static final Lab COOLEST = recorded(D75);

    private CardTint() {}

    /**
     * The name of the tint.
     *
     * @param reading of the card in the picture, white being D50
     * @return nothing where it is within what a grey card can look like
     */
    static Optional<String> of(Xyz reading) {
        if (!(reading.y() > 0)) {
            return Optional.empty();
        }
        Lab lab = atMiddleGrey(reading);
        double distance = StrictMath.min(distance(lab, WARMEST), distance(lab, COOLEST));
        return distance <= ALLOWED ? Optional.empty() : Optional.of(name(lab.hueDegrees()));
    }

    private static String name(double hue) {
        if (hue < 20 || hue >= 330) {
            return "pink";
        }
        if (hue < 85) {
            return "orange or brown";
        }
        if (hue < 105) {
            return "yellow";
        }
        if (hue < 200) {
            return "green";
        }
        return hue < 285 ? "blue" : "purple";
    }

    /** From the stretch between a colour and the grey axis. */
    private static double distance(Lab lab, Lab end) {
        double along = (lab.a() * end.a() + lab.b() * end.b()) / (end.a() * end.a() + end.b() * end.b());
        double share = StrictMath.max(0, StrictMath.min(1, along));
        double a = lab.a() - share * end.a();
        double b = lab.b() - share * end.b();
        return StrictMath.sqrt(a * a + b * b);
    }

    /** How a grey looks in a light that the camera takes for 6504 K. */
    private static Lab recorded(Xyz light) {
        Matrix adaptation = Xyz.adaptation(Xyz.D65, Xyz.D50);
        return atMiddleGrey(Xyz.of(adaptation.times(light.toArray())));
    }

    private static Lab atMiddleGrey(Xyz xyz) {
        double scale = MIDDLE_GREY / xyz.y();
        return new Xyz(scale * xyz.x(), MIDDLE_GREY, scale * xyz.z()).toLab();
    }
}
