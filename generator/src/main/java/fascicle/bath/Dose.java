package fascicle.bath;

/**
 * How much of a thing goes with each gram of needles, each millilitre of liquor, or each batch.
 *
 * @param follows what the amount goes with
 * @param grams mass for one of that; of a stock the mass of what is dissolved
 * @param millilitres volume for one of that; of a stock the volume of solution
 * @param liquid whether it adds to the liquor
 */
public record Dose(Basis follows, Magnitude grams, Magnitude millilitres, boolean liquid) {

    /**
     * The mass in a batch.
     *
     * @param batch the batch
     * @return in g
     */
    public Magnitude gramsIn(Batch batch) {
        return grams.times(batch.size(follows));
    }

    /**
     * The volume in a batch.
     *
     * @param batch the batch
     * @return in mL
     */
    public Magnitude millilitresIn(Batch batch) {
        return millilitres.times(batch.size(follows));
    }

    /**
     * An amount that was written for one batch, made to follow its basis: {@code q/m₀} or {@code q/V₀}, so that in
     * another batch it comes to {@code q·m₁/m₀} or {@code q·V₁/V₀}. An amount that follows something already, as
     * {@code % owf} and {@code g/L} do, stays as it is.
     *
     * @param basis what a bare amount follows
     * @param written the batch it was written for
     * @return the dose; unknown where the batch's size is unknown
     */
    public Dose following(Basis basis, Batch written) {
        if (follows != Basis.BATCH || basis == Basis.BATCH) {
            return this;
        }
        Magnitude size = written.size(basis);
        return new Dose(basis, grams.over(size), millilitres.over(size), liquid);
    }

    /**
     * The same thing in an amount that nobody knows.
     *
     * @return the dose with neither mass nor volume
     */
    public Dose unknown() {
        return new Dose(follows, Magnitude.UNKNOWN, Magnitude.UNKNOWN, liquid);
    }
}
