package fascicle.workings;

import fascicle.measure.Quantity;
import fascicle.notebook.Bath;
import fascicle.notebook.HeatStep;
import fascicle.notebook.Noted;
import fascicle.notebook.Recipe;
import fascicle.notebook.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Whether an open pot can be as hot as a recipe asks, and whether anyone works as long as it says. How long is too long
 * is {@code common practice, no source}.
 */
public final class HeatLimits {

    /** What the weather and the rounding of a Fahrenheit figure may add to the boil, °C. */
    private static final double WEATHER = 1;

    private static final double DAY = 24 * 60;
    private static final double NIGHT = 12 * 60;
    private static final double LONGEST_HEAT = DAY;
    private static final double LONGEST_SUN = 30 * DAY;
    /** As long as anything lies in a bath, minutes ({@code common practice, no source}). */
    static final double LONGEST_SOAK = 30 * DAY;
    private static final double LONGEST_COOLING = 7 * DAY;
    private static final double LONGEST_DRYING = 60 * DAY;

    private final double boil;
    private final List<Beyond> beyond = new ArrayList<>();

    private HeatLimits(double boil) {
        this.boil = boil;
    }

    /**
     * What a recipe asks for beyond them.
     *
     * @param recipe as written
     * @param boil where water boils, °C
     * @return each temperature and time that is, in the order of the recipe's keys
     */
    public static List<Beyond> beyond(Recipe recipe, double boil) {
        HeatLimits limits = new HeatLimits(boil);
        steps(recipe).forEach(limits::step);
        recipe.presoak().ifPresent(presoak -> limits.time("for", presoak.time(), LONGEST_SOAK, Beyond.Taking.SOAKING));
        recipe.parts().forEach(part -> limits.time("at", part.at(), LONGEST_SUN, Beyond.Taking.BATH));
        limits.time("cool", recipe.cool(), LONGEST_COOLING, Beyond.Taking.COOLING);
        limits.time("dry", recipe.dry(), LONGEST_DRYING, Beyond.Taking.DRYING);
        return List.copyOf(limits.beyond);
    }

    /** All heating of a recipe: of its bath, of treatments, and of what is drawn out. */
    static List<HeatStep> steps(Recipe recipe) {
        List<HeatStep> steps = new ArrayList<>(recipe.heat());
        recipe.before().forEach(treatment -> steps.addAll(treatment.heat()));
        recipe.after().forEach(treatment -> steps.addAll(treatment.heat()));
        recipe.bath().extract().map(Bath.Extract::heat).ifPresent(steps::addAll);
        return List.copyOf(steps);
    }

    /** How long something is, in minutes; a night is as long as a night. */
    static double minutes(Noted<Span> span) {
        return span.value() instanceof Span.Timed timed ? timed.time().value() : NIGHT;
    }

    private void step(HeatStep step) {
        step.to().ifPresent(to -> {
            if (to.value() instanceof HeatStep.Degrees degrees) {
                temperature(to.map(unused -> degrees.temperature()));
            }
        });
        step.from().ifPresent(this::temperature);
        boolean sun = step.isInTheSun();
        Beyond.Taking taking = sun ? Beyond.Taking.SUN : Beyond.Taking.HEATING;
        time("over", step.over(), sun ? LONGEST_SUN : LONGEST_HEAT, taking);
        time("hold", step.hold(), sun ? LONGEST_SUN : LONGEST_HEAT, taking);
    }

    private void temperature(Noted<Quantity> asked) {
        double celsius = asked.value().value();
        if (celsius > boil + WEATHER) {
            beyond.add(new Beyond.TooHot(asked, boil));
        } else if (celsius < 0) {
            beyond.add(new Beyond.Ice(asked));
        }
    }

    private void time(String key, Optional<Noted<Span>> asked, double most, Beyond.Taking taking) {
        asked.filter(span -> minutes(span) > most)
                .ifPresent(span -> beyond.add(new Beyond.TooLong(key, span, most, taking)));
    }
}
