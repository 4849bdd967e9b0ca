package fascicle.workings;

import fascicle.bath.BoilingPoint;
import fascicle.measure.Quantity;
import fascicle.notebook.Bath;
import fascicle.notebook.Cover;
import fascicle.notebook.Findings;
import fascicle.notebook.HeatStep;
import fascicle.notebook.Noted;
import fascicle.notebook.Recipe;
import fascicle.notebook.Span;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * Whether an open pot can be as hot as a recipe asks, and whether anyone works as long as it says. How long is too long
 * is {@code common practice, no source}.
 */
final class HeatChecks {

    /** What the weather and the rounding of a Fahrenheit figure may add to the boil, °C. */
    private static final double WEATHER = 1;

    private static final double HOUR = 60;
    private static final double DAY = 24 * HOUR;
    private static final double NIGHT = 12 * HOUR;
    private static final double LONGEST_HEAT = DAY;
    private static final double LONGEST_SUN = 30 * DAY;
    /** As long as anything lies in a bath, minutes ({@code common practice, no source}). */
    static final double LONGEST_SOAK = 30 * DAY;
    private static final double LONGEST_COOLING = 7 * DAY;
    private static final double LONGEST_DRYING = 60 * DAY;

    private final Findings findings;
    private final Boil boil;

    HeatChecks(Findings findings, Cover cover) {
        this.findings = findings;
        this.boil = Boil.of(cover);
        cover.height().filter(height -> boil.refused().isPresent()).ifPresent(height ->
                findings.warning(height.place(), "“" + height.written() + "” is no height of a workshop, which lies from "
                        + Say.figure(BoilingPoint.LOWEST).replace('-', '−') + " m to " + Say.figure(BoilingPoint.HIGHEST)
                        + " m above the sea; check the figure and its unit (the boil at the sea is taken instead)"));
    }

    /** Checks all heating, soaking, cooling and drying of a recipe. */
    void check(Recipe recipe) {
        recipe.heat().forEach(this::step);
        recipe.before().forEach(treatment -> treatment.heat().forEach(this::step));
        recipe.after().forEach(treatment -> treatment.heat().forEach(this::step));
        recipe.bath().extract().map(Bath.Extract::heat).ifPresent(steps -> steps.forEach(this::step));
        recipe.presoak().ifPresent(presoak -> span("for", presoak.time(), LONGEST_SOAK, "a soak"));
        recipe.parts().forEach(part -> tooLong("at", part.at(), LONGEST_SUN, "a bath"));
        span("cool", recipe.cool(), LONGEST_COOLING, "cooling");
        span("dry", recipe.dry(), LONGEST_DRYING, "drying");
    }

    private void step(HeatStep step) {
        step.to().ifPresent(to -> {
            if (to.value() instanceof HeatStep.Degrees degrees) {
                temperature(to.map(unused -> degrees.temperature()));
            }
        });
        step.from().ifPresent(this::temperature);
        boolean sun = step.on().filter(on -> on.value() == HeatStep.Source.SUN).isPresent();
        double longest = sun ? LONGEST_SUN : LONGEST_HEAT;
        span("over", step.over(), longest, sun ? "the sun" : "heating");
        span("hold", step.hold(), longest, sun ? "the sun" : "heating");
    }

    private void temperature(Noted<Quantity> temperature) {
        double celsius = temperature.value().value();
        if (celsius > boil.celsius() + WEATHER) {
            findings.warning(temperature.place(), "“" + temperature.written() + "” is hotter than an open pot gets, on the "
                    + "stove or in the oven: " + boils() + "; write “to: boil” or a lower temperature, and check whether "
                    + "°F is meant");
        } else if (celsius < 0) {
            findings.warning(temperature.place(), "“" + temperature.written() + "” is below 0 °C, where a bath is ice; check "
                    + "the figure and its unit");
        }
    }

    private String boils() {
        String celsius = new BigDecimal(boil.celsius()).setScale(1, RoundingMode.HALF_UP).toPlainString() + " °C";
        return boil.said() ? "water boils at " + celsius + " at the workshop's height of " + Say.figure(boil.metres())
                + " m" : "water boils at " + celsius + " at the sea (lower in the hills: say "
                + (boil.refused().isEmpty() ? "" : "a right ") + "“height:” in notebook.yaml)";
    }

    private void span(String key, Optional<Noted<Span>> noted, double longest, String what) {
        tooLong(key, noted, longest, what);
        noted.filter(span -> minutes(span) <= 0).ifPresent(span -> findings.warning(span.place(), "“" + key + ": "
                + span.written() + "” is no time at all; write how long, or leave “" + key + "” out"));
    }

    private void tooLong(String key, Optional<Noted<Span>> noted, double longest, String what) {
        noted.filter(span -> minutes(span) > longest).ifPresent(span -> findings.warning(span.place(), "“" + key + ": "
                + span.written() + "” is longer than " + length(longest) + ", the most one expects of " + what
                + "; check the figure and its unit"));
    }

    /** How long it is, in minutes; a night is as long as a night. */
    private static double minutes(Noted<Span> span) {
        return span.value() instanceof Span.Timed timed ? timed.time().value() : NIGHT;
    }

    private static String length(double minutes) {
        return minutes > DAY ? Say.figure(minutes / DAY) + " days" : Say.figure(minutes / HOUR) + " h";
    }
}
