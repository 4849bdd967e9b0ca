package fascicle.workings.clock;

import fascicle.notebook.Bath;
import fascicle.notebook.HeatStep;
import fascicle.notebook.Noted;
import fascicle.notebook.Part;
import fascicle.notebook.Recipe;
import fascicle.notebook.Span;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Walks through the work once, from the soak to the drying rack, and notes when what is done. */
final class Walk {

    /** Whoever says to dry for less, before rinsing, means a little: {@code common practice, no source}. */
    private static final double A_LITTLE_DRYING = 12 * 60;

    /** A pot may be too hot to reach into for so long after its heat went off: {@code common practice, no source}. */
    private static final double COOLING = 3 * 60;

    private final Work work;
    private final Recipe recipe;
    private final Log log;

    private Walk(Work work, Log log) {
        this.work = work;
        this.recipe = work.recipe();
        this.log = log;
    }

    /** The work of a day that begins so. */
    static Log through(Work work, Day day) {
        Log log = new Log(day);
        new Walk(work, log).through(new Log(day));
        return log;
    }

    /** A plant is drawn out while the needles soak. */
    private void through(Log drawing) {
        recipe.presoak().ifPresent(this::soak);
        treatments(recipe.before(), work.before(), Stage.Vat.BEFORE);
        recipe.bath().extract().ifPresent(extract -> extract(extract, drawing));
        log.meanwhile(drawing);
        dye();
        treatments(recipe.after(), work.after(), Stage.Vat.AFTER);
        dry();
    }

    private void extract(Bath.Extract extract, Log drawing) {
        HeatedBath pot = new HeatedBath(drawing, Stage.Vat.EXTRACT, Optional.empty(), work.extract(), work.boil());
        pot.heat(extract.heat(), List.of());
        drawing.moment(pot.isHotAfter(extract.heat()) ? Stage.Kind.LIFT : Stage.Kind.OUT, Stage.Vat.EXTRACT,
                Optional.empty());
    }

    private void soak(Recipe.Presoak presoak) {
        log.goesOn(Stage.Kind.SOAK, Stage.Vat.BIN, Optional.empty(), after(presoak.time()));
        log.moment(Stage.Kind.OUT, Stage.Vat.BIN, Optional.empty());
    }

    /**
     * A treatment ends with its heat: how long it cools is nobody's to guess, and would make every later time
     * unknown, in a plan for all pots. Where its last step leaves it hot, the needles are lifted out, and the book says
     * how.
     */
    private void treatments(List<Recipe.Treatment> treatments, List<OptionalDouble> liquors, Stage.Vat vat) {
        for (int i = 0; i < treatments.size(); i++) {
            Recipe.Treatment treatment = treatments.get(i);
            Optional<Recipe.Purpose> purpose = treatment.as().map(Noted::value);
            OptionalDouble liquor = i < liquors.size() ? liquors.get(i) : OptionalDouble.empty();
            HeatedBath bath = new HeatedBath(log, vat, purpose, liquor, work.boil());
            log.makesReady(Stage.Kind.MAKE, vat, purpose);
            bath.heat(treatment.heat(), treatment.with());
            if (treatment.heat().isEmpty()) {
                log.goesOn(Stage.Kind.STAND, vat, purpose, log.now().unknown());
            }
            log.moment(bath.isHotAfter(treatment.heat()) ? Stage.Kind.LIFT : Stage.Kind.OUT, vat, purpose);
        }
    }

    private void dye() {
        List<Part> parts = Stream.concat(recipe.bath().dye().stream(), recipe.bath().assistants().stream()).toList();
        List<HeatStep> heat = recipe.heat();
        log.makesReady(recipe.bath().reuses().isPresent() ? Stage.Kind.TOP_UP : Stage.Kind.MAKE, Stage.Vat.DYEBATH,
                Optional.empty());
        HeatedBath bath = new HeatedBath(log, Stage.Vat.DYEBATH, Optional.empty(), work.liquor(), work.boil());
        bath.heat(heat, parts);
        boolean sunned = !heat.isEmpty() && HeatedBath.source(heat.get(heat.size() - 1)) == HeatStep.Source.SUN;
        if (recipe.cool().isPresent() || !sunned) {
            log.goesOn(heat.isEmpty() ? Stage.Kind.STAND : Stage.Kind.COOL, Stage.Vat.DYEBATH, Optional.empty(),
                    after(recipe.cool()));
        }
        boolean hot = bath.isHotAfter(heat) && recipe.cool().filter(Walk::isShort).isPresent();
        log.moment(hot ? Stage.Kind.LIFT : Stage.Kind.OUT, Stage.Vat.DYEBATH, Optional.empty());
    }

    private static boolean isShort(Noted<Span> cooling) {
        return cooling.value() instanceof Span.Timed timed && timed.time().value() < COOLING;
    }

    /** Needles are damp from the bath on, and once more where they were rinsed after they had dried. */
    private void dry() {
        Optional<Recipe.Rinse> rinse = recipe.rinse().map(Noted::value);
        Time damp = log.now();
        if (rinse.filter(Recipe.Rinse.BEFORE_DRYING::equals).isPresent()) {
            moment(Stage.Kind.RINSE);
        }
        Time dried = after(recipe.dry());
        if (rinse.filter(Recipe.Rinse.AFTER_DRYING::equals).isPresent()) {
            boolean wholly = recipe.dry().filter(span -> !(span.value() instanceof Span.Timed timed)
                    || timed.time().value() >= A_LITTLE_DRYING).isPresent();
            goesOn(wholly ? Stage.Kind.DRY : Stage.Kind.HALF_DRY, wholly ? dried.roughly() : dried);
            moment(Stage.Kind.RINSE);
            damp = wholly ? log.now() : damp;
            dried = log.now().unknown();
        }
        goesOn(Stage.Kind.DRY, dried);
        if (!recipe.finish().isEmpty()) {
            moment(Stage.Kind.FINISH);
        }
        if (work.dampKeeps().known()) {
            log.beside(Stage.Kind.KEEP, damp, damp.plus(work.dampKeeps()));
        }
    }

    private void moment(Stage.Kind kind) {
        goesOn(kind, log.now());
    }

    private void goesOn(Stage.Kind kind, Time until) {
        log.goesOn(kind, Stage.Vat.NONE, Optional.empty(), until);
    }

    private Time after(Optional<Noted<Span>> span) {
        return log.after(log.now(), span.map(Noted::value));
    }
}
