package fascicle.workings;

import fascicle.bath.Magnitude;

/**
 * A plant that is drawn out, for one weight of needles.
 *
 * @param plant how much of it, g
 * @param water it is drawn out in, mL
 */
record Drawn(Magnitude plant, Magnitude water) {

    /** As much of each for other needles: so many times as much. */
    Drawn times(Magnitude factor) {
        return new Drawn(plant.times(factor), water.times(factor));
    }

    /** Its figures. */
    ExtractFigures figures() {
        return new ExtractFigures(plant.value(), water.value(), plant.about() || water.about());
    }
}
