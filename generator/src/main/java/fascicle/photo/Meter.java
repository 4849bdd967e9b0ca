package fascicle.photo;

import fascicle.colour.Matrix;
import java.util.List;

/** Reads the light of areas off a picture, decoding no more of it than holds them all. */
final class Meter {

    /** At or near the brightest number: what lies beyond was cut off. */
    private static final double TOO_BRIGHT = 253.0 / 255;

    private final Negative negative;

    Meter(Negative picture) {
        negative = picture;
    }

    /**
     * Fills the plots.
     *
     * @throws UnreadablePhotograph if the picture is damaged, or can be seen through where a colour is read
     */
    void read(List<Plot> plots) throws UnreadablePhotograph {
        Region all = plots.stream().map(Plot::region).reduce(Region::with).orElseThrow();
        Pixels pixels = Decoder.decode(negative, all);
        for (Plot plot : plots) {
            fill(plot, pixels, all);
        }
    }

    private void fill(Plot plot, Pixels pixels, Region decoded) throws UnreadablePhotograph {
        int highest = pixels.highest();
        int tooBright = (int) StrictMath.ceil(TOO_BRIGHT * highest);
        double[][] light = negative.profile().light(highest);
        double[] luminance = luminance(negative.profile().toXyz());
        Region region = plot.region();
        Pixels.Reader reader = pixels.new Reader();
        for (int y = region.y(); y < region.y() + region.height(); y++) {
            int[] row = reader.row(y - decoded.y());
            if (reader.seeThrough()) {
                throw new UnreadablePhotograph("can be seen through, so that its colours depend on what lies behind; "
                        + FileKind.SAVE_AS_JPEG);
            }
            for (int x = region.x(); x < region.x() + region.width(); x++) {
                int at = 3 * (x - decoded.x());
                int first = row[at];
                int second = row[at + 1];
                int third = row[at + 2];
                double red = light[0][first];
                double green = light[1][second];
                double blue = light[2][third];
                int most = StrictMath.max(first, StrictMath.max(second, third));
                int least = StrictMath.min(first, StrictMath.min(second, third));
                plot.pileAt(x, y).add(red, green, blue,
                        luminance[0] * red + luminance[1] * green + luminance[2] * blue, most >= tooBright, least == 0);
            }
        }
    }

    /** How much each primary adds to Y. */
    private static double[] luminance(Matrix toXyz) {
        return new double[] {toXyz.times(1, 0, 0)[1], toXyz.times(0, 1, 0)[1], toXyz.times(0, 0, 1)[1]};
    }
}
