package fascicle.workings;

import fascicle.bath.BoilingPoint;
import fascicle.notebook.Cover;
import fascicle.notebook.Findings;
import fascicle.notebook.Noted;
import fascicle.notebook.Recipe;
import fascicle.notebook.Span;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/** Says where a recipe asks for heat beyond an open pot's, for time beyond anyone's, or for no time at all. */
final class HeatChecks {

    private static final double HOUR = 60;
    private static final double DAY = 24 * HOUR;

    private final Findings findings;
    private final Boil boil;

    HeatChecks(Findings findings, Cover cover) {
        this.findings = findings;
        this.boil = Boil.of(cover);
        cover.height().filter(height -> boil.refused().isPresent()).ifPresent(height ->
                findings.warning(height.place(),
                        "“" + height.written() + "” is no height of a workshop, which lies from "
                        + Say.figure(BoilingPoint.LOWEST).replace('-', '−') + " m to "
                        + Say.figure(BoilingPoint.HIGHEST) + " m above the sea; check the figure and its unit (the "
                        + "boil at the sea is taken instead)"));
    }

    /** Checks all heating, soaking, cooling and drying of a recipe. */
    void check(Recipe recipe) {
        HeatLimits.beyond(recipe, boil.celsius()).forEach(this::beyond);
        HeatLimits.steps(recipe).forEach(step -> {
            none("over", step.over());
            none("hold", step.hold());
        });
        recipe.presoak().ifPresent(presoak -> none("for", presoak.time()));
        none("cool", recipe.cool());
        none("dry", recipe.dry());
    }

    private void beyond(Beyond beyond) {
        if (beyond instanceof Beyond.TooHot hot) {
            findings.warning(hot.asked().place(), "“" + hot.asked().written() + "” is hotter than an open pot gets, on "
                    + "the stove or in the oven: " + boils() + "; write “to: boil” or a lower temperature, and check "
                    + "whether °F is meant");
        } else if (beyond instanceof Beyond.Ice ice) {
            findings.warning(ice.asked().place(), "“" + ice.asked().written() + "” is below 0 °C, where a bath is ice; "
                    + "check the figure and its unit");
        } else if (beyond instanceof Beyond.TooLong time) {
            findings.warning(time.asked().place(),
                    "“" + time.key() + ": " + time.asked().written() + "” is longer than "
                    + length(time.most()) + ", the most one expects of " + switch (time.taking()) {
                        case HEATING -> "heating";
                        case SUN -> "the sun";
                        case SOAKING -> "a soak";
                        case BATH -> "a bath";
                        case COOLING -> "cooling";
                        case DRYING -> "drying";
                    } + "; check the figure and its unit");
        }
    }

    private String boils() {
        String celsius = new BigDecimal(boil.celsius()).setScale(1, RoundingMode.HALF_UP).toPlainString() + " °C";
        return boil.said() ? "water boils at " + celsius + " at the workshop's height of " + Say.figure(boil.metres())
                + " m" : "water boils at " + celsius + " at the sea (lower in the hills: say "
                + (boil.refused().isEmpty() ? "" : "a right ") + "“height:” in notebook.yaml)";
    }

    private void none(String key, Optional<Noted<Span>> noted) {
        noted.filter(span -> HeatLimits.minutes(span) <= 0).ifPresent(span -> findings.warning(span.place(),
                "“" + key + ": " + span.written() + "” is no time at all; write how long, or leave “" + key + "” out"));
    }

    private static String length(double minutes) {
        return minutes > DAY ? Say.figure(minutes / DAY) + " days" : Say.figure(minutes / HOUR) + " h";
    }
}
