package fascicle.workings;

import fascicle.bath.Uptake;
import fascicle.colour.Lab;
import fascicle.colour.LinearRgb;
import fascicle.notebook.Glass;
import fascicle.notebook.Noted;
import fascicle.notebook.Reading;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Finds out what the glasses of a bath tell of its dye. */
final class Uptakes {

    /** How far an intensity is off, as a share of it: read by a meter ({@code common practice, no source}). */
    private static final double ERROR_OF_A_METER = 0.01;

    /** The same, off a photograph or a screen ({@code common practice, no source}). */
    private static final double ERROR_OF_A_PICTURE = 0.05;

    private Uptakes() {}

    /**
     * The dye a bath gave up. Whether a reading is of something wet says nothing here, since a bath is.
     *
     * @param glass what was seen
     * @param liquor V₀, mL
     * @return the share, a range, or why neither is known
     */
    static Uptake of(Glass glass, OptionalDouble liquor) {
        Optional<LinearRgb> before = glass.before().flatMap(Uptakes::light);
        Optional<LinearRgb> after = glass.after().flatMap(Uptakes::light);
        if (before.isEmpty() || after.isEmpty()) {
            return Uptake.unknown(Uptake.Why.NO_GLASSES);
        }
        boolean metered = Stream.of(glass.plain(), glass.before(), glass.after()).flatMap(Optional::stream)
                .flatMap(reading -> reading.colour().measured().stream())
                .allMatch(measured -> measured.kind() == Reading.Kind.METER);
        Uptake.Glasses seen = new Uptake.Glasses(glass.plain().flatMap(Uptakes::light), before.get(), after.get(),
                times(glass.diluted().before()), times(glass.diluted().after()),
                metered ? ERROR_OF_A_METER : ERROR_OF_A_PICTURE);
        OptionalDouble left = glass.measuredLeft().stream().mapToDouble(noted -> noted.value().value()).findFirst();
        return Uptake.of(seen, liquor, left);
    }

    private static Optional<LinearRgb> light(Reading reading) {
        return reading.colour().measured().map(measured -> LinearRgb.of(Lab.mean(measured.colours())));
    }

    private static double times(Optional<Noted<Double>> diluted) {
        return diluted.map(Noted::value).orElse(1.0);
    }
}
