package fascicle.workings.clock;

import fascicle.bath.Magnitude;
import fascicle.notebook.HeatStep;
import java.util.OptionalDouble;

/**
 * An estimate of how long a pot takes to get hot on a stove, where the recipe does not say: all the liquor has the heat
 * capacity of water, 4.186 J/(mL·K), and 1 kW goes into it; rounded up to five minutes ({@code common practice, no
 * source}). It keeps anyone from lighting the stove for nothing, and is no more than that.
 */
final class HeatingUp {

    private static final double JOULES = 4.186;
    private static final double WATTS = 1000;
    private static final double SECONDS_IN_A_MINUTE = 60;
    private static final double STEP = 5;

    private HeatingUp() {}

    /** The minutes from one temperature to another, °C; unknown where the liquor, in mL, is. */
    static Magnitude minutes(OptionalDouble liquor, double from, double to) {
        if (to <= from) {
            return Magnitude.of(0, true);
        }
        return liquor.isEmpty() ? Magnitude.UNKNOWN
                : Magnitude.of(StrictMath.ceil(liquor.getAsDouble() * JOULES * (to - from)
                        / (WATTS * SECONDS_IN_A_MINUTE) / STEP) * STEP, true);
    }

    /** About how hot water is that looks so, °C, for this estimate alone; never more than the boil. */
    static double celsius(HeatStep.Look look, double boil) {
        return StrictMath.min(boil, switch (look) {
            case STEAMING -> 80;
            case BELOW_SIMMER -> 90;
            case SIMMER -> 95;
            case BOIL -> 100;
        });
    }
}
