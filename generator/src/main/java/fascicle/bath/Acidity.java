package fascicle.bath;

/**
 * The pH that a bath of acid and tap water comes to, by the balance of its charges at 25 °C. An estimate: vinegar holds
 * more than acetic acid, needles give off acids of their own, and hot baths read otherwise.
 *
 * @param cold with all the carbon dioxide that came with the water
 * @param heated once heating has driven off what the air does not keep in it; never below the cold one, since heating
 *     takes nothing in. Where acid outweighs alkalinity that is as if all carbon dioxide were gone; where alkalinity
 *     outweighs the acid the air's own share keeps the pH of boiled tap water between 8 and 9
 */
public record Acidity(double cold, double heated) {

    /**
     * The acidity of a bath.
     *
     * @param dissolved what is in it
     * @param litres of liquor; more than 0
     * @return its pH, cold and heated
     * @throws IllegalArgumentException if there is no liquor
     */
    public static Acidity of(Dissolved dissolved, double litres) {
        if (!(litres > 0) || !Double.isFinite(litres)) {
            throw new IllegalArgumentException("a bath has more than 0 L of liquor: " + litres);
        }
        Dissolved inALitre = dissolved.times(1 / litres);
        double cold = Equilibria.phClosed(inALitre);
        return new Acidity(cold, StrictMath.max(cold, Equilibria.phOpen(inALitre)));
    }
}
