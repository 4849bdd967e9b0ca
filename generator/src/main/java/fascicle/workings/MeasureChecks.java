package fascicle.workings;

import fascicle.measure.Quantity;
import fascicle.notebook.Cover;
import fascicle.notebook.Dye;
import fascicle.notebook.Findings;
import fascicle.notebook.Notebook;
import fascicle.notebook.Noted;
import java.util.Optional;

/**
 * Whether what a notebook says of its workroom and of what stands on the shelf is such as these things are. The bounds
 * are {@code common practice, no source} where none is named.
 */
final class MeasureChecks {

    private static final double COARSEST_BALANCE = 100;
    private static final double MOST_ALKALINITY = 1000;

    /**
     * At this end point of its titration water has no alkalinity left (4.3 to 4.5, methyl orange; glossaries of water
     * treatment).
     */
    private static final double NO_ALKALINITY = 4.3;

    private static final double SOUREST_WATER = 4.5;
    private static final double SWEETEST_WATER = 10;
    private static final double MINUTES_IN_A_DAY = 1440;
    private static final double LONGEST_DAMP = 30;
    private static final double LIGHTEST_TEASPOON = 0.5;
    private static final double HEAVIEST_TEASPOON = 15;
    private static final double SHORTEST_NEEDLE = 1;
    private static final double LONGEST_NEEDLE = 100;

    /**
     * From here on acetic acid is labelled as burning the skin (Regulation (EC) No 1272/2008, Annex VI, index
     * 607-002-00-6; {@code from memory}).
     */
    private static final double BURNS = 25;

    private final Notebook notebook;
    private final Findings findings;

    MeasureChecks(Notebook notebook, Findings findings) {
        this.notebook = notebook;
        this.findings = findings;
    }

    /** Checks the cover, the lots and the dyes. */
    void check() {
        Cover cover = notebook.cover();
        cover.balance().filter(step -> step.value().value() > COARSEST_BALANCE).ifPresent(step -> odd("balance", step,
                "is a coarser step than " + Say.weight(COARSEST_BALANCE) + ", by which no dye is weighed; check the "
                        + "figure and its unit (0.1 g is usual)"));
        water(cover);
        cover.dampKeeps().ifPresent(this::damp);
        notebook.lots().forEach(lot -> lot.length().ifPresent(this::needle));
        notebook.dyes().forEach(this::dye);
    }

    private void water(Cover cover) {
        cover.alkalinity().filter(alkalinity -> alkalinity.value() > MOST_ALKALINITY).ifPresent(alkalinity ->
                odd("alkalinity", alkalinity, "is more than the " + Say.figure(MOST_ALKALINITY) + " mg/L that one "
                        + "expects at most of water from a tap or a well; check the figure and its unit"));
        cover.ph().ifPresent(ph -> {
            Optional<Noted<Double>> alkalinity = cover.alkalinity().filter(noted -> noted.value() > 0);
            if (ph.value() < NO_ALKALINITY && alkalinity.isPresent()) {
                odd("ph", ph, "and “alkalinity: " + alkalinity.get().written() + "” cannot both be: below a pH of "
                        + "about " + Say.figure(NO_ALKALINITY) + " water has no alkalinity; compare both with the "
                        + "supplier's report");
            } else if (ph.value() < SOUREST_WATER || ph.value() > SWEETEST_WATER) {
                odd("ph", ph, "is outside " + Say.figure(SOUREST_WATER) + " to " + Say.figure(SWEETEST_WATER)
                        + ", where water from a tap or a well lies; check the reading");
            }
        });
    }

    private void damp(Noted<Quantity> keeps) {
        double days = keeps.value().value() / MINUTES_IN_A_DAY;
        if (days <= 0) {
            odd("damp-keeps", keeps, "is no time at all; write how long damp needles keep cold, such as 3 days, or "
                    + "leave it out");
        } else if (days > LONGEST_DAMP) {
            odd("damp-keeps", keeps, "is longer than " + Say.figure(LONGEST_DAMP) + " days, and damp needles grow "
                    + "mould before; check the figure and its unit");
        }
    }

    private void needle(Noted<Quantity> length) {
        double centimetres = length.value().value();
        if (centimetres < SHORTEST_NEEDLE || centimetres > LONGEST_NEEDLE) {
            odd("length", length, "is outside 1 cm to 1 m, where the needles of pines lie; check the figure and its "
                    + "unit");
        }
    }

    private void dye(Dye dye) {
        dye.levelTeaspoon().map(Dye.LevelTeaspoon::weight).ifPresent(weight -> teaspoon(dye, weight));
        dye.bought().stream().flatMap(purchase -> purchase.packs().stream()).filter(packs -> packs.value() <= 0)
                .forEach(packs -> odd("packs", packs, "is no purchase; write how many packs it was, or take it out"));
        dye.acidity().ifPresent(acidity -> acidity(dye, acidity));
    }

    private void teaspoon(Dye dye, Noted<Quantity> weight) {
        double grams = weight.value().value();
        boolean light = grams < LIGHTEST_TEASPOON && !is(dye, Dye.Form.PLANT);
        if (light || grams > HEAVIEST_TEASPOON) {
            odd("weight", weight, "is outside " + Say.figure(LIGHTEST_TEASPOON) + " to " + Say.figure(HEAVIEST_TEASPOON)
                    + " g, which a level teaspoon of anything weighs; check the figure, and that it is for one "
                    + "teaspoon");
        }
    }

    private void acidity(Dye dye, Noted<Double> acidity) {
        boolean citric = dye.acid().map(Noted::value).filter(Dye.Acid.CITRIC::equals).isPresent();
        boolean dry = is(dye, Dye.Form.POWDER) || is(dye, Dye.Form.CRYSTALS);
        if (acidity.value() <= 0) {
            odd("acidity", acidity, "is no acid; write what the label says, such as 5 %, or leave it out");
        } else if (acidity.value() >= BURNS && !citric && !dry) {
            odd("acidity", acidity, "is an acid that burns skin, eyes and lungs: it is for someone who knows how to "
                    + "dilute it, and its label decides; household vinegar has about 5 % (if it is citric acid, add "
                    + "“acid: citric”)");
        }
    }

    private static boolean is(Dye dye, Dye.Form form) {
        return dye.form().map(Noted::value).filter(form::equals).isPresent();
    }

    private void odd(String key, Noted<?> value, String why) {
        findings.warning(value.place(), "“" + key + ": " + value.written() + "” " + why);
    }
}
