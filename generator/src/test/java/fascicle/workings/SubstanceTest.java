package fascicle.workings;

import static fascicle.workings.Draft.known;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.bath.Basis;
import fascicle.bath.Magnitude;
import fascicle.measure.Kitchen;
import fascicle.notebook.Dye;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** How spoons, packs and liquids become grams and millilitres. */
class SubstanceTest {

    private static final OptionalDouble UNKNOWN = OptionalDouble.empty();

    @Test
    void theMakersOwnSpoonTellsWhatAPowderWeighs() {
        PartFigures part = dye(Kitchen.METRIC, label("brick").form(Dye.Form.POWDER).levelTeaspoon("3.1 g").density(9),
                "1/2 tsp");
        assertEquals(1.55, known(part.grams()), 1e-12);
        assertEquals(2.5, known(part.ml()));
        assertTrue(part.spooned());
        assertFalse(part.about(), "spooned is said of its own");
    }

    @Test
    void aTablespoonOfTheUsKitchenHoldsThreeLevelTeaspoons() {
        assertEquals(9.3, known(dye(Kitchen.US, label("brick").form(Dye.Form.POWDER).levelTeaspoon("3.1 g"), "1 tbsp")
                .grams()), 1e-12);
    }

    @Test
    void elseItsDensityTells() {
        PartFigures part = dye(Kitchen.METRIC, label("brick").form(Dye.Form.POWDER).density(0.6), "1 tsp");
        assertEquals(3, known(part.grams()), 1e-12);
        assertTrue(part.spooned());
    }

    @Test
    void elseNothingDoes() {
        PartFigures part = dye(Kitchen.METRIC, label("brick").form(Dye.Form.POWDER), "1 tsp");
        assertEquals(UNKNOWN, part.grams());
        assertEquals(5, known(part.ml()));
    }

    /** USDA National Nutrient Database for Standard Reference: table salt 6.0 g (02047), baking soda 4.6 g (18372). */
    @Test
    void tableSaltAndBakingSodaHaveAPublishedWeight() {
        PartFigures salt = dye(Kitchen.US, label("salt").kind(Dye.Kind.SALT), "1 tsp");
        assertEquals(6.0, known(salt.grams()), 1e-12);
        assertTrue(salt.spooned());
        assertEquals(4.6, known(dye(Kitchen.US, label("baking-soda").kind(Dye.Kind.ALKALI), "1 tsp").grams()), 1e-12);
        assertEquals(6.0 * 15 / 4.92892159375,
                known(dye(Kitchen.METRIC, label("table-salt"), "1 tbsp").grams()), 1e-12);
        assertEquals(UNKNOWN, dye(Kitchen.US, label("glaubers-salt").kind(Dye.Kind.SALT), "1 tsp").grams());
    }

    @Test
    void aLiquidsDensityWorksBothWays() {
        Workroom.Label amber = label("amber").form(Dye.Form.LIQUID).density(1.25);
        assertEquals(12.5, known(dye(Kitchen.METRIC, amber, "10 mL").grams()), 1e-12);
        assertEquals(8, known(dye(Kitchen.METRIC, amber, "10 g").ml()), 1e-12);
        assertFalse(dye(Kitchen.METRIC, amber, "2 tsp").spooned(), "a liquid in a spoon is poured");
        assertEquals(UNKNOWN, dye(Kitchen.METRIC, label("amber").form(Dye.Form.LIQUID), "10 g").ml());
    }

    /** A spoon whose weight she only guessed makes the grams rough, and not the spoon. */
    @Test
    void massAndVolumeAreEachAsSureAsTheyAre() {
        PartFigures part = dye(Kitchen.METRIC, label("brick").form(Dye.Form.POWDER).levelTeaspoon("about 3 g"), "1 tsp");
        assertEquals(Magnitude.of(3, true), part.mass());
        assertEquals(Magnitude.of(5), part.volume());
        assertTrue(dye(Kitchen.METRIC, label("brick").form(Dye.Form.POWDER).levelTeaspoon("3 g"), "1 tsp").mass().about(),
                "spoons wander");
    }

    /** 400 mL of a 10 % stock hold 40 g of the thing, which at 1.25 g/mL is 32 mL of it; poured it is what was poured. */
    @Test
    void howMuchOfAThingAsItIsSold() {
        Workroom.Label amber = label("amber").form(Dye.Form.LIQUID).density(1.25);
        Magnitude density = Magnitude.of(1.25);
        assertEquals(Magnitude.of(32), dye(Kitchen.METRIC, amber, "400 mL of 10 % stock").volumeAsSold(density));
        assertEquals(Magnitude.of(400), dye(Kitchen.METRIC, amber, "400 mL of 10 % stock").volume());
        assertEquals(Magnitude.of(10), dye(Kitchen.METRIC, amber, "10 mL").volumeAsSold(density));
        assertEquals(Magnitude.UNKNOWN, dye(Kitchen.METRIC, label("brick").form(Dye.Form.POWDER), "10 g")
                .volumeAsSold(Magnitude.UNKNOWN));
    }

    /** USDA, item 02053: a US cup of distilled vinegar, 236.588 mL, weighs 238 g; so 60 g are 59.64 mL. */
    @Test
    void aWeighedVinegarPoursAsVinegarDoes() {
        Workroom.Label vinegar = label("vinegar").kind(Dye.Kind.ACID).form(Dye.Form.LIQUID).acidity(5);
        PartFigures part = dye(Kitchen.METRIC, vinegar, "60 g");
        assertEquals(Magnitude.of(60), part.mass(), "as it was weighed");
        assertEquals(59.644, known(part.ml()), 1e-3);
        assertTrue(part.mlAbout(), "nobody measured its density");
        assertEquals(1059.644, liquorWith(vinegar, "60 g"), 1e-3);
        assertEquals(UNKNOWN, dye(Kitchen.METRIC, vinegar, "60 mL").grams(), "nobody asked what it weighs");
        assertEquals(60 / 1.1, known(dye(Kitchen.METRIC, vinegar.density(1.1), "60 g").ml()), 1e-9, "her own goes before");
        assertEquals(UNKNOWN, dye(Kitchen.METRIC, label("essence").kind(Dye.Kind.ACID).form(Dye.Form.LIQUID).acidity(25),
                "60 g").ml(), "a strong acid is heavier");
        assertEquals(UNKNOWN, dye(Kitchen.METRIC, label("verjuice").kind(Dye.Kind.ACID).form(Dye.Form.LIQUID), "60 g").ml());
    }

    @Test
    void withoutAFormTheUnitTellsLiquidFromPowder() {
        assertEquals(1010, liquorWith(label("drops"), "10 mL"));
        assertEquals(1000 + 0.1, liquorWith(label("drops"), "2 drops"), 1e-12);
        assertEquals(1000, liquorWith(label("drops"), "2 tsp"), "a spoon measures powders too");
        assertEquals(1015, liquorWith(label("vinegar").kind(Dye.Kind.ACID).acidity(5), "1 tbsp"));
        assertEquals(1000, liquorWith(label("brick").form(Dye.Form.POWDER), "10 mL"));
        assertEquals(1010, liquorWith(label("brick").form(Dye.Form.POWDER), "10 mL of 1 % stock"));
    }

    @Test
    void aPacketIsWhatIsInIt() {
        assertEquals(25, known(dye(Kitchen.METRIC, label("brick").pack("50 g", 0), "1/2 packet").grams()), 1e-12);
        assertEquals(UNKNOWN, dye(Kitchen.METRIC, label("brick"), "1/2 packet").grams());
        assertTrue(dye(Kitchen.METRIC, label("brick").pack("50 g", 0), "about 1/2 packet").about());
    }

    @Test
    void dyesAndMordantsFollowTheNeedlesAndTheRestTheBath() {
        assertEquals(Basis.NEEDLES, dye(Kitchen.METRIC, label("moss"), "1 g").by(), "among dyes it counts as one");
        assertEquals(Basis.NEEDLES, assistant(label("alum").kind(Dye.Kind.MORDANT), "1 g").by());
        assertEquals(Basis.BATH, assistant(label("salt").kind(Dye.Kind.SALT), "1 g").by());
        assertEquals(Basis.BATH, assistant(label("something"), "1 g").by());
        assertEquals(Basis.NEEDLES, assistant(label("salt").kind(Dye.Kind.SALT), "1 % owf").by());
        assertEquals(Basis.BATH, assistant(label("alum").kind(Dye.Kind.MORDANT), "1 g/L").by());
    }

    @Test
    void aThingIsCalledAsItsFileSpellsIt() {
        Workroom room = new Workroom(Kitchen.METRIC).thing(label("brick"));
        room.entry("2026-05-09-shout").weighing("45 g").water("1 L").dye("BRICK", "1 g");
        assertEquals("brick", room.worked("2026-05-09-shout").bath().dye().get(0).is());
    }

    private static Workroom.Label label(String id) {
        return new Workroom.Label(id);
    }

    private static PartFigures dye(Kitchen kitchen, Workroom.Label label, String amount) {
        String id = label.dye(kitchen).id();
        Workroom room = new Workroom(kitchen).thing(label);
        room.entry("2026-05-09-one").weighing("45 g").water("1 L").dye(id, amount);
        return room.worked("2026-05-09-one").bath().dye().get(0);
    }

    private static PartFigures assistant(Workroom.Label label, String amount) {
        return working(label, amount).bath().assistants().get(0);
    }

    private static double liquorWith(Workroom.Label label, String amount) {
        return known(working(label, amount).bath().liquorMl());
    }

    private static EntryWorking working(Workroom.Label label, String amount) {
        Workroom room = new Workroom(Kitchen.METRIC).thing(label);
        room.entry("2026-05-09-one").weighing("45 g").water("1 L").with(label.dye(Kitchen.METRIC).id(), amount);
        return room.worked("2026-05-09-one");
    }
}
