package fascicle.workings;

import fascicle.notebook.Findings;
import fascicle.notebook.HeatStep;
import fascicle.notebook.Noted;
import fascicle.notebook.Part;
import fascicle.notebook.Place;
import fascicle.notebook.Recipe;
import fascicle.notebook.Span;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Whether what is added later comes while the bath goes on: while it is heated, or while it cools. A bath of which
 * nobody knows how long it takes is never over.
 */
final class AdditionChecks {

    private static final double HOUR = 60;
    private static final double DAY = 24 * HOUR;

    /** The longest that a pot takes to get hot where nobody says how long ({@code common practice, no source}). */
    private static final double LONGEST_RISE = 4 * HOUR;

    private final Findings findings;

    AdditionChecks(Findings findings) {
        this.findings = findings;
    }

    /**
     * Checks the additions of a recipe.
     *
     * @param recipe as written
     * @param whole where its entry or method begins
     */
    void check(Recipe recipe, Place whole) {
        Stream.concat(recipe.before().stream(), recipe.after().stream()).forEach(treatment ->
                check(treatment.with().stream(), treatment.heat(), Optional.empty(), "", whole));
        check(Stream.concat(recipe.bath().dye().stream(), recipe.bath().assistants().stream()), recipe.heat(),
                recipe.cool(), recipe.cool().isEmpty() ? ", or say how long the bath goes on under “cool:”" : "",
                whole);
    }

    private void check(Stream<Part> parts, List<HeatStep> heat, Optional<Noted<Span>> cool, String mend, Place whole) {
        if (heat.isEmpty() && cool.isEmpty() || !heat.isEmpty() && isEndless(heat)) {
            return;
        }
        Length heating = heat.stream().map(AdditionChecks::length).reduce(Length.NONE, Length::plus);
        Length cooling = cool.map(span -> Length.of(span.value())).orElse(Length.NONE);
        String took = heat.isEmpty() ? "its cooling takes " + cooling.said() : "its heat takes " + heating.said()
                + (cool.isEmpty() ? "" : " and its cooling " + cooling.said());
        double over = heating.plus(cooling).minutes();
        // Of what is added months later that alone is said.
        parts.flatMap(part -> part.at().stream()).filter(at -> at.value() instanceof Span.Timed timed
                && timed.time().value() > over && timed.time().value() <= HeatLimits.LONGEST_SOAK).forEach(at ->
                        own(at, heat, cool, whole).ifPresent(place -> findings.warning(place, "“at: " + at.written()
                                + "” " + (place.equals(at.place()) ? "" : "(" + at.place() + ") ")
                                + "comes when the bath is over: " + took + "; check the time and its unit" + mend)));
    }

    /**
     * Where an entry or method itself says so: its addition, else its heat or cooling; what all is lent is said of the
     * lender.
     */
    private static Optional<Place> own(Noted<Span> at, List<HeatStep> heat, Optional<Noted<Span>> cool, Place whole) {
        Stream<Noted<?>> heats = heat.stream().flatMap(step ->
                Stream.<Optional<? extends Noted<?>>>of(step.to(), step.over(), step.hold()).flatMap(Optional::stream));
        return Stream.of(Stream.of(at), heats, cool.stream()).<Noted<?>>flatMap(noted -> noted).map(Noted::place)
                .filter(place -> place.file().equals(whole.file())).findFirst();
    }

    /** Whether nothing but the look of the water tells when a step ends. */
    private static boolean isEndless(List<HeatStep> heat) {
        return heat.stream().anyMatch(step -> step.over().isEmpty() && step.hold().isEmpty()
                && step.to().filter(to -> to.value() instanceof HeatStep.Look).isPresent())
                || heat.stream().allMatch(step -> step.over().isEmpty() && step.hold().isEmpty());
    }

    private static Length length(HeatStep step) {
        Length rise = step.over().map(over -> Length.of(over.value()))
                .orElse(step.to().isPresent() ? new Length(LONGEST_RISE, true) : Length.NONE);
        return rise.plus(step.hold().map(hold -> Length.of(hold.value())).orElse(Length.NONE));
    }

    /** How long something takes, or takes at most. */
    private record Length(double minutes, boolean atMost) {

        static final Length NONE = new Length(0, false);

        /** A night is over within a day. */
        static Length of(Span span) {
            return span instanceof Span.Timed timed ? new Length(timed.time().value(), false) : new Length(DAY, true);
        }

        Length plus(Length other) {
            return new Length(minutes + other.minutes, atMost || other.atMost);
        }

        String said() {
            String length = minutes > DAY ? Say.figure(minutes / DAY) + " days"
                    : minutes < 2 * HOUR ? Say.figure(minutes) + " min" : Say.figure(minutes / HOUR) + " h";
            return atMost ? length + " at most" : length;
        }
    }
}
