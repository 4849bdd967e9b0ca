package fascicle.bath;

/**
 * What decides a bath's acidity: the acids in it, and what its water brought along to answer them. Amounts add up, so
 * that a bath is the sum of its water, its acids and what stood in the pot before.
 *
 * @param acetic acetic acid, mol
 * @param citric citric acid, mol
 * @param alkalinity of the water, mol of charge: it stays, however much acid answers it
 * @param carbon dissolved inorganic carbon (carbon dioxide, bicarbonate and carbonate), mol
 */
public record Dissolved(double acetic, double citric, double alkalinity, double carbon) {

    /** Nothing at all. */
    public static final Dissolved NOTHING = new Dissolved(0, 0, 0, 0);

    /**
     * The pH of water of which nobody said it: most waterworks deliver about this ({@code common practice, no source}).
     */
    public static final double PH_OF_WATER = 7.5;

    /** Molar mass of acetic acid, g/mol: IUPAC atomic weights ({@code from memory}). */
    private static final double ACETIC_GRAMS = 60.052;

    /** Molar mass of anhydrous citric acid, g/mol: IUPAC atomic weights ({@code from memory}). */
    private static final double CITRIC_GRAMS = 192.124;

    /** mg/L as CaCO₃ in a thousandth of a mole of charge to the litre: half the molar mass of 100.087 g/mol. */
    private static final double CARBONATE_MILLIGRAMS = 50.0436;

    /** Refuses what cannot be in a bath. */
    public Dissolved {
        if (!(acetic >= 0 && citric >= 0 && alkalinity >= 0 && carbon >= 0)
                || !Double.isFinite(acetic + citric + alkalinity + carbon)) {
            throw new IllegalArgumentException("a bath holds 0 or more of a thing: " + acetic + ", " + citric + ", "
                    + alkalinity + ", " + carbon);
        }
    }

    /**
     * Acetic acid by weight.
     *
     * @param grams of the pure acid
     * @return the acid alone
     */
    public static Dissolved acetic(double grams) {
        return new Dissolved(grams / ACETIC_GRAMS, 0, 0, 0);
    }

    /**
     * Citric acid by weight.
     *
     * @param grams of the pure acid without water of crystallisation
     * @return the acid alone
     */
    public static Dissolved citric(double grams) {
        return new Dissolved(0, grams / CITRIC_GRAMS, 0, 0);
    }

    /**
     * Water from the mains. Its carbon follows from its alkalinity and its pH.
     *
     * @param litres how much
     * @param milligrams its alkalinity, mg/L as CaCO₃
     * @param ph its pH, {@link #PH_OF_WATER} where nobody read it
     * @return what is in it
     */
    public static Dissolved water(double litres, double milligrams, double ph) {
        double charge = milligrams / CARBONATE_MILLIGRAMS / 1000;
        return new Dissolved(0, 0, charge, Equilibria.carbon(charge, ph)).times(litres);
    }

    /**
     * Rain: no alkalinity, and as much carbon dioxide as the air gives it.
     *
     * @param litres how much
     * @return what is in it
     */
    public static Dissolved rain(double litres) {
        return NOTHING.openToTheAir(litres);
    }

    /**
     * The sum.
     *
     * @param other what is poured in besides
     * @return both
     */
    public Dissolved plus(Dissolved other) {
        return new Dissolved(acetic + other.acetic, citric + other.citric, alkalinity + other.alkalinity,
                carbon + other.carbon);
    }

    /**
     * A part, or so many times as much.
     *
     * @param factor 0 or more
     * @return so many times this
     */
    public Dissolved times(double factor) {
        return new Dissolved(acetic * factor, citric * factor, alkalinity * factor, carbon * factor);
    }

    /**
     * The same after heating has driven off carbon dioxide until the air gives back as much. Water that held less is
     * left as it was.
     *
     * @param litres of what it is dissolved in
     * @return with no more carbon than before
     */
    public Dissolved heated(double litres) {
        Dissolved open = openToTheAir(litres);
        return open.carbon < carbon ? open : this;
    }

    /**
     * The same after the air has taken or given carbon dioxide until neither gives any more.
     *
     * @param litres of what it is dissolved in
     * @return with the carbon of a bath open to the air
     */
    public Dissolved openToTheAir(double litres) {
        double ph = Equilibria.phOpen(times(1 / litres));
        return new Dissolved(acetic, citric, alkalinity, Equilibria.carbonOpen(ph) * litres);
    }
}
