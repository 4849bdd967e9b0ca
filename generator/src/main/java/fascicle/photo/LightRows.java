package fascicle.photo;

/** A picture's rows as light of its own primaries, in single precision; what can be seen through lies on white. */
final class LightRows {

    private final int highest;
    private final float[][] light;
    private final Pixels.Reader reader;
    private final float[] row;

    LightRows(Pixels pixels, Profile profile) {
        highest = pixels.highest();
        light = single(profile.light(highest));
        reader = pixels.new Reader();
        row = new float[3 * pixels.width()];
    }

    /** The light of a row: red, green and blue of each pixel in turn. The next row overwrites it. */
    float[] row(int y) {
        int[] numbers = reader.row(y);
        if (reader.seeThrough()) {
            layOnWhite(numbers, reader.opacity());
        }
        float[] red = light[0];
        float[] green = light[1];
        float[] blue = light[2];
        for (int i = 0; i < numbers.length; i += 3) {
            row[i] = red[numbers[i]];
            row[i + 1] = green[numbers[i + 1]];
            row[i + 2] = blue[numbers[i + 2]];
        }
        return row;
    }

    /** As pages show it: the numbers themselves are mixed, not the light. */
    private void layOnWhite(int[] numbers, int[] opacity) {
        for (int i = 0; i < numbers.length; i++) {
            long covered = opacity[i / 3];
            numbers[i] = (int) ((numbers[i] * covered + highest * (highest - covered) + highest / 2) / highest);
        }
    }

    private static float[][] single(double[][] curves) {
        float[][] single = new float[curves.length][];
        for (int channel = 0; channel < curves.length; channel++) {
            single[channel] = new float[curves[channel].length];
            for (int i = 0; i < curves[channel].length; i++) {
                single[channel][i] = (float) curves[channel][i];
            }
        }
        return single;
    }
}
