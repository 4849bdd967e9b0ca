package fascicle.photo;

/**
 * A camera that sees as the standard observer does, and so better than any that can be bought.
 *
 * @param light what it is held in
 * @param balance how far it makes the light's white a neutral one: 0 not at all, 1 wholly
 * @param exposure linear signal of a perfect white; above 1 it is cut off
 */
record Camera(Illuminant light, double balance, double exposure) {

    /** Wholly balanced, with some room above a white. */
    static Camera in(Illuminant light) {
        return new Camera(light, 1, 0.85);
    }

    Camera balanced(double share) {
        return new Camera(light, share, exposure);
    }

    Camera exposed(double signalOfWhite) {
        return new Camera(light, balance, signalOfWhite);
    }

    /** What it makes of a thing in its light: linear sRGB, not cut off yet. */
    double[] linear(Spectrum thing) {
        double[] seen = Square.times(Square.adaptation(light.white(), aim()), light.tristimulus(thing));
        double[] signal = RgbSpace.SRGB.linear(seen);
        return new double[] {exposure * signal[0], exposure * signal[1], exposure * signal[2]};
    }

    /** What becomes of the light's white: its way to the white of sRGB, gone in part. */
    private double[] aim() {
        double[] from = light.white();
        double[] aim = new double[3];
        for (int i = 0; i < 3; i++) {
            aim[i] = from[i] + balance * (RgbSpace.white()[i] - from[i]);
        }
        return aim;
    }
}
