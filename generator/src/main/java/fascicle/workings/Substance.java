package fascicle.workings;

import fascicle.bath.Amount;
import fascicle.bath.Basis;
import fascicle.bath.Dose;
import fascicle.bath.Magnitude;
import fascicle.bath.Stock;
import fascicle.measure.Dimension;
import fascicle.measure.Kitchen;
import fascicle.measure.Quantity;
import fascicle.measure.Unit;
import fascicle.notebook.Dye;
import fascicle.notebook.Noted;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * A dye or assistant as something that is weighed, spooned or poured.
 *
 * @param id its file's name, or the name a recipe gave it where there is no such file
 * @param dye what its file says
 * @param kitchen whose spoons are meant
 */
record Substance(String id, Optional<Dye> dye, Kitchen kitchen) {

    /** A level US teaspoon of table salt: USDA National Nutrient Database for Standard Reference, item 02047. */
    private static final double TEASPOON_OF_TABLE_SALT = 6.0;

    /** A US cup of table salt: the same item; heavier than 48 of its teaspoons. */
    private static final double CUP_OF_TABLE_SALT = 292;

    private static final double CUP = Unit.US_CUP.size().doubleValue();

    /** A level US teaspoon of baking soda: the same database, item 18372. */
    private static final double TEASPOON_OF_BAKING_SODA = 4.6;

    /** What a US cup of distilled vinegar weighs, g: the same database, item 02053. */
    private static final double CUP_OF_VINEGAR = 238;

    /** Up to here a liquid acid is a household's, g in 100 mL, and weighs what vinegar does to a few hundredths. */
    private static final double DILUTE = 10;

    private static final Set<Unit> CUPS = EnumSet.of(Unit.US_CUP, Unit.METRIC_CUP, Unit.IMPERIAL_CUP);

    private static final Set<Unit> SPOONS_AND_CUPS = EnumSet.of(Unit.US_CUP, Unit.METRIC_CUP, Unit.IMPERIAL_CUP,
            Unit.US_TABLESPOON, Unit.METRIC_TABLESPOON, Unit.US_TEASPOON, Unit.METRIC_TEASPOON);

    /** Units in which nobody measures a powder. */
    private static final Set<Unit> OF_LIQUIDS = EnumSet.of(Unit.MILLILITRE, Unit.LITRE, Unit.DROP,
            Unit.US_FLUID_OUNCE, Unit.US_PINT, Unit.US_QUART, Unit.US_GALLON,
            Unit.IMPERIAL_FLUID_OUNCE, Unit.IMPERIAL_PINT, Unit.IMPERIAL_QUART, Unit.IMPERIAL_GALLON);

    /** What it is called: its title, or its id. */
    String called() {
        return dye.map(Dye::called).orElse(id);
    }

    /**
     * Whether an amount of it adds to the liquor: if it is a liquid, or comes in a stock solution; where its form is
     * not said, if it is an acid of a given strength or measured as only liquids are.
     */
    boolean isLiquid(Optional<Amount> amount) {
        if (amount.orElse(null) instanceof Amount.OfStock) {
            return true;
        }
        Optional<Dye.Form> form = dye.flatMap(Dye::form).map(Noted::value);
        if (form.isPresent()) {
            return form.get() == Dye.Form.LIQUID;
        }
        boolean dissolvedAcid = kind().filter(Dye.Kind.ACID::equals).isPresent()
                && dye.flatMap(Dye::acidity).isPresent();
        return dissolvedAcid
                || amount.orElse(null) instanceof Amount.Measured measured
                        && OF_LIQUIDS.contains(measured.volume().unit());
    }

    /** Whether an amount of it is a powder measured by volume. */
    boolean isSpooned(Optional<Amount> amount) {
        return amount.orElse(null) instanceof Amount.Measured && !isLiquid(amount);
    }

    /** Whether an amount of it is measured in spoons or cups, be it a powder or a liquid. */
    boolean isBySpoon(Optional<Amount> amount) {
        return amount.orElse(null) instanceof Amount.Measured measured
                && SPOONS_AND_CUPS.contains(measured.volume().unit());
    }

    /** Whether an amount of it is a powder measured by volume, and nothing tells what that weighs. */
    boolean lacksDensity(Optional<Amount> amount) {
        return isSpooned(amount) && !gramsPerMillilitre(false).known();
    }

    /**
     * What an amount of it follows: {@code % owf} the needles and {@code g/L} the bath, always; a bare amount what the
     * recipe says; else dyes and mordants the needles and everything else the bath.
     *
     * @param amongDyes whether it stands in a list of dyes, where what is of no known kind counts as a dye
     */
    Basis basis(Optional<Amount> amount, Optional<Basis> by, boolean amongDyes) {
        if (amount.orElse(null) instanceof Amount.OnNeedles) {
            return Basis.NEEDLES;
        }
        if (amount.orElse(null) instanceof Amount.PerLitre) {
            return Basis.BATH;
        }
        return by.orElseGet(() -> switch (kind().orElse(amongDyes ? Dye.Kind.DYE : Dye.Kind.OTHER)) {
            case DYE, MORDANT -> Basis.NEEDLES;
            default -> Basis.BATH;
        });
    }

    /** Whether it is a plant, of which any amount may be right. */
    boolean isPlant() {
        return dye.flatMap(Dye::form).map(Noted::value).filter(Dye.Form.PLANT::equals).isPresent();
    }

    /** What it is for, where its file says so. */
    Optional<Dye.Kind> kind() {
        return dye.flatMap(Dye::kind).map(Noted::value);
    }

    /** An amount as a dose; a bare amount as one for the batch it was written for. */
    Dose dose(Optional<Amount> written) {
        boolean liquid = isLiquid(written);
        Amount amount = written.orElse(null);
        if (amount instanceof Amount.OnNeedles owf) {
            Magnitude grams = Magnitude.of(owf.percent().doubleValue() / 100, owf.about());
            return new Dose(Basis.NEEDLES, grams, millilitres(grams, liquid), liquid);
        }
        if (amount instanceof Amount.PerLitre perLitre) {
            Magnitude grams = Magnitude.of(perLitre.grams().doubleValue() / 1000, perLitre.about());
            return new Dose(Basis.BATH, grams, millilitres(grams, liquid), liquid);
        }
        if (amount instanceof Amount.OfStock stock) {
            Magnitude millilitres = size(stock.volume());
            double dissolved = new Stock(stock.percent().doubleValue()).grams(1);
            return new Dose(Basis.BATCH, millilitres.times(dissolved), millilitres, true);
        }
        if (amount instanceof Amount.Weighed weighed) {
            return ofMass(size(weighed.mass()), liquid);
        }
        if (amount instanceof Amount.Measured measured) {
            Magnitude volume = size(measured.volume());
            return !liquid && byTheCup(measured.volume())
                    ? new Dose(Basis.BATCH, volume.times(CUP_OF_TABLE_SALT / CUP), volume, false)
                    : ofVolume(volume, liquid);
        }
        if (amount instanceof Amount.Packs packs) {
            return pack(packs, liquid);
        }
        return new Dose(Basis.BATCH, Magnitude.UNKNOWN, Magnitude.UNKNOWN, liquid);
    }

    /** A quantity as a size in its base unit. */
    static Magnitude size(Quantity quantity) {
        return Magnitude.of(quantity.value(), quantity.about());
    }

    private Dose pack(Amount.Packs packs, boolean liquid) {
        Magnitude count = Magnitude.of(packs.count().doubleValue(), packs.about());
        Optional<Quantity> holds = dye.flatMap(Dye::pack).flatMap(Dye.Pack::holds).map(Noted::value);
        if (holds.isEmpty()) {
            return new Dose(Basis.BATCH, Magnitude.UNKNOWN, Magnitude.UNKNOWN, liquid);
        }
        Magnitude size = count.times(size(holds.get()));
        return holds.get().unit().dimension() == Dimension.MASS ? ofMass(size, liquid) : ofVolume(size, liquid);
    }

    private Dose ofMass(Magnitude grams, boolean liquid) {
        return new Dose(Basis.BATCH, grams, millilitres(grams, liquid), liquid);
    }

    private Dose ofVolume(Magnitude millilitres, boolean liquid) {
        return new Dose(Basis.BATCH, millilitres.times(gramsPerMillilitre(liquid)), millilitres, liquid);
    }

    /** The volume of a liquid's mass; that of a powder's mass is nobody's business. */
    private Magnitude millilitres(Magnitude grams, boolean liquid) {
        Magnitude density = gramsPerMillilitre(true);
        return !liquid ? Magnitude.UNKNOWN
                : grams.over(!density.known() && isDiluteAcid() ? Magnitude.of(CUP_OF_VINEGAR / CUP, true) : density);
    }

    private boolean isDiluteAcid() {
        return kind().filter(Dye.Kind.ACID::equals).isPresent()
                && dye.flatMap(Dye::acidity).filter(acidity -> acidity.value() <= DILUTE).isPresent();
    }

    /** A liquid's density; a powder's by the maker's own spoon, else its density, else a published weight. */
    private Magnitude gramsPerMillilitre(boolean liquid) {
        Magnitude density = dye.flatMap(Dye::density).map(noted -> Magnitude.of(noted.value()))
                .orElse(Magnitude.UNKNOWN);
        if (liquid) {
            return density;
        }
        Magnitude bySpoon = dye.flatMap(Dye::levelTeaspoon)
                .map(spoon -> size(spoon.weight().value()).over(Magnitude.of(teaspoon(kitchen))))
                .orElse(Magnitude.UNKNOWN);
        if (bySpoon.known()) {
            return bySpoon;
        }
        return density.known() ? density : published();
    }

    private boolean isTableSalt() {
        return isNamed("table salt") || kind().filter(Dye.Kind.SALT::equals).isPresent() && isNamed("salt");
    }

    /** Table salt measured in cups and weighed by nobody has a published weight of its own. */
    private boolean byTheCup(Quantity volume) {
        return isTableSalt() && dye.flatMap(Dye::levelTeaspoon).isEmpty() && dye.flatMap(Dye::density).isEmpty()
                && CUPS.contains(volume.unit());
    }

    private Magnitude published() {
        if (isTableSalt()) {
            return Magnitude.of(TEASPOON_OF_TABLE_SALT / teaspoon(Kitchen.US));
        }
        return isNamed("baking soda")
                ? Magnitude.of(TEASPOON_OF_BAKING_SODA / teaspoon(Kitchen.US))
                : Magnitude.UNKNOWN;
    }

    private boolean isNamed(String name) {
        return name.equals(plain(id)) || name.equals(plain(called()));
    }

    private static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replace('-', ' ').strip();
    }

    private static double teaspoon(Kitchen kitchen) {
        return Unit.named("tsp", kitchen).orElseThrow().size().doubleValue();
    }
}
