package fascicle.workings;

/**
 * On how many of so many dye days something worked, and how far that can be trusted.
 *
 * @param worked days on which it worked
 * @param of days with a verdict; at least one
 */
public record Share(int worked, int of) {

    /** The normal distribution's quantile that leaves 2.5 % on either side. */
    private static final double Z = 1.959963984540054;

    /**
     * A share of days.
     *
     * @throws IllegalArgumentException if there are no days, or more that worked than there are
     */
    public Share {
        if (of < 1 || worked < 0 || worked > of) {
            throw new IllegalArgumentException("not a share of days: " + worked + " of " + of);
        }
    }

    /**
     * The lower end of the Wilson score interval at 95 %: with p the share, n the days and z = 1.959963984540054,
     * (p + z²/2n − z·√(p(1 − p)/n + z²/4n²)) / (1 + z²/n). After E. B. Wilson (1927), "Probable Inference, the Law of
     * Succession, and Statistical Inference", Journal of the American Statistical Association 22, 209–212.
     *
     * @return from 0, which it is exactly where nothing worked
     */
    public double low() {
        return worked == 0 ? 0 : (middle() - half()) / spread();
    }

    /**
     * The upper end of the same interval.
     *
     * @return up to 1, which it is exactly where everything worked
     */
    public double high() {
        return worked == of ? 1 : (middle() + half()) / spread();
    }

    private double share() {
        return (double) worked / of;
    }

    private double middle() {
        return share() + Z * Z / (2.0 * of);
    }

    private double half() {
        return Z * StrictMath.sqrt(share() * (1 - share()) / of + Z * Z / (4.0 * of * of));
    }

    private double spread() {
        return 1 + Z * Z / of;
    }
}
