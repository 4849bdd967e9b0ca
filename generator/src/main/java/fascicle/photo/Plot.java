package fascicle.photo;

import java.util.Arrays;
import java.util.List;

/** The pixels of an area, heaped in so many parts by so many. */
final class Plot {

    private final Region region;
    private final int side;
    private final Pile[] piles;

    /**
     * A plot without pixels yet.
     *
     * @param region where it lies among the stored pixels
     * @param side parts along each side
     */
    Plot(Region region, int side) {
        this.region = region;
        this.side = side;
        piles = new Pile[side * side];
        Arrays.setAll(piles, part -> new Pile());
    }

    Region region() {
        return region;
    }

    Pile pileAt(int x, int y) {
        int across = (x - region.x()) * side / region.width();
        int down = (y - region.y()) * side / region.height();
        return piles[down * side + across];
    }

    /** The whole area. */
    Light light() {
        Pile whole = new Pile();
        for (Pile part : piles) {
            whole.addAll(part);
        }
        return whole.trimmed();
    }

    /** Each part, row by row. */
    List<Light> parts() {
        return Arrays.stream(piles).map(Pile::trimmed).toList();
    }
}
