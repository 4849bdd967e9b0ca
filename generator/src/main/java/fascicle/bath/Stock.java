package fascicle.bath;

/**
 * A stock solution: so many grams of a thing in 100 mL of solution.
 *
 * <p>Its formulas are those by which dye laboratories pipette: mL of stock = needles g × % owf / % stock, and
 * mL of stock = liquor mL × g/L / (10 × % stock). Both say that 100 mL hold as many grams as the strength has per cent.
 *
 * @param percent its strength, g in 100 mL; above 0
 */
public record Stock(double percent) {

    /** Refuses a solution of nothing. */
    public Stock {
        if (!(percent > 0) || !Double.isFinite(percent)) {
            throw new IllegalArgumentException("a stock solution is stronger than 0 %: " + percent);
        }
    }

    /**
     * What is dissolved in a volume.
     *
     * @param millilitres of solution
     * @return in g
     */
    public double grams(double millilitres) {
        return millilitres * percent / 100;
    }

    /**
     * The volume that holds a mass.
     *
     * @param grams of the thing
     * @return in mL of solution
     */
    public double millilitres(double grams) {
        return grams * 100 / percent;
    }
}
