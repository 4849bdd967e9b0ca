package fascicle.workings;

import fascicle.bath.Magnitude;
import java.util.Optional;

/**
 * A presoak, or a treatment with a bath of its own.
 *
 * @param as what a treatment is for
 * @param mixture what is in it
 * @param shared whether several pots share it, so that it is one bin whatever the needles
 */
record Soak(Optional<String> as, Mixture mixture, boolean shared) {

    /** The same for another weight of needles, in g; of a shared bin nothing can be said. */
    Soak scaledTo(Magnitude grams) {
        return new Soak(as, shared ? mixture.unknown() : mixture.scaledTo(grams), shared);
    }

    /** Its figures. */
    SoakFigures figures() {
        return new SoakFigures(as, mixture.liquor().water().value(), mixture.liquor().total().value(),
                mixture.liquor().about(), mixture.partFigures(), shared);
    }
}
