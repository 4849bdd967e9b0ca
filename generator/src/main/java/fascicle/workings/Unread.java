package fascicle.workings;

import fascicle.notebook.Dye;
import fascicle.notebook.Place;
import java.util.Set;

/**
 * The files with errors. What such a file says was not read, so that nothing of it is missed: its errors say enough.
 *
 * @param files their paths
 */
record Unread(Set<String> files) {

    /** Whether something stands in a file with errors. */
    boolean holds(Place place) {
        return files.contains(place.file());
    }

    /** Whether vessels may be missing because their file could not be read. */
    boolean holdsVessels() {
        return files.contains("vessels.yaml");
    }

    /** Whether the thing that a line of a recipe names has a file with errors. */
    boolean holds(Line line) {
        return line.thing().dye().map(Dye::place).filter(this::holds).isPresent();
    }
}
