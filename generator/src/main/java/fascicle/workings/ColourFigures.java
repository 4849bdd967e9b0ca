package fascicle.workings;

import fascicle.colour.ColourName;
import fascicle.colour.Lab;
import fascicle.colour.Tone;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A colour in figures.
 *
 * @param lab mean of the comparable readings, D50
 * @param readings the comparable readings, in order
 * @param by how they were read: {@code lab}, {@code hex}, {@code photo}, or {@code mixed}
 * @param uncertainty how far from the truth the mean may lie, as CIEDE2000: that of the least sure reading, since what
 *     an instrument or a light does wrong it does wrong each time
 * @param unlevelness mean CIEDE2000 of the readings from their mean; unknown below three readings of a kind
 * @param name the nearest ISCC–NBS name and its family
 * @param shift from the bare lot; unknown where the lot has no colour
 * @param tone which way the shift goes; hardly changed where the readings cannot tell the two colours apart
 * @param target from the target; unknown where there is none
 */
public record ColourFigures(Lab lab, List<Lab> readings, String by, double uncertainty, OptionalDouble unlevelness,
        ColourName name, Optional<Difference> shift, Optional<Tone> tone, Optional<Difference> target) {

    /**
     * The mean with its uncertainty, to be compared with others.
     *
     * @return the colour and how sure it is
     */
    public Difference.Sure sure() {
        return new Difference.Sure(lab, uncertainty);
    }

    /**
     * The difference from another colour.
     *
     * @param other that colour
     * @return how far they lie apart, and how sure that is
     */
    public Difference from(ColourFigures other) {
        return Difference.of(sure(), other.sure());
    }
}
