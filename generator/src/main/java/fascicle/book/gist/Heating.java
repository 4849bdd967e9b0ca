package fascicle.book.gist;

import fascicle.book.figures.Figures;
import fascicle.book.words.Words;
import fascicle.measure.Unit;
import fascicle.notebook.HeatStep;
import fascicle.notebook.Noted;
import fascicle.notebook.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Heating and times in words. */
public final class Heating {

    private final Words words;
    private final Figures figures;

    /**
     * Heating in the book's words.
     *
     * @param words the book's words
     */
    public Heating(Words words) {
        this.words = words;
        this.figures = new Figures(words);
    }

    /**
     * A time as written, or overnight in the book's words.
     *
     * @param span a noted time
     * @return such as {@code 2 h}
     */
    public String span(Noted<Span> span) {
        return span.value() instanceof Span.Overnight ? words.say("span.overnight") : span.written();
    }

    /**
     * All of a step.
     *
     * @param step a step of heating
     * @return where from and to, how long, on what
     */
    public String step(HeatStep step) {
        List<String> pieces = new ArrayList<>();
        step.from().ifPresent(from -> pieces.add(words.say("heat.from", figures.measured(from.value()))));
        step.to().ifPresent(to -> pieces.add(words.say("heat.to", reached(to.value()))));
        step.over().ifPresent(over -> pieces.add(words.say("heat.over", span(over))));
        step.hold().ifPresent(hold -> pieces.add(words.say("heat.hold", span(hold))));
        step.on().ifPresent(on -> pieces.add(words.name("heat-source", on.value())));
        return String.join(words.say("pieces"), pieces);
    }

    /**
     * All of several steps.
     *
     * @param steps in order
     * @return the steps; nothing where there are none
     */
    public Optional<String> steps(List<HeatStep> steps) {
        return steps.isEmpty() ? Optional.empty()
                : Optional.of(steps.stream().map(this::step).collect(Collectors.joining(words.say("heat.then"))));
    }

    /**
     * How long and where needles were held.
     *
     * @param steps in order
     * @return such as {@code held 2 h at 88 °C}; nothing where no step says either
     */
    public Optional<String> held(List<HeatStep> steps) {
        List<HeatStep> held = steps.stream().filter(step -> step.hold().isPresent()).toList();
        String said = (held.isEmpty() ? steps : held).stream().map(this::holding).flatMap(Optional::stream)
                .collect(Collectors.joining(words.say("heat.then")));
        return said.isEmpty() ? Optional.empty() : Optional.of(said);
    }

    /**
     * Where a step holds a bath.
     *
     * @param step a step of heating
     * @return such as {@code at 88 °C}; nothing where it does not say to what it heats, or on what
     */
    public Optional<String> at(HeatStep step) {
        return step.to().map(to -> where(to.value()))
                .or(() -> step.on().map(on -> words.name("heat-source", on.value())));
    }

    /**
     * What the maker's thermometer shows: °F where any temperature of some steps was written so.
     *
     * @param steps of one recipe
     * @return °F or °C
     */
    public static Unit thermometer(List<HeatStep> steps) {
        boolean fahrenheit = steps.stream().flatMap(step -> Stream.concat(step.from().map(Noted::value).stream(),
                        step.to().map(Noted::value).filter(HeatStep.Degrees.class::isInstance)
                                .map(to -> ((HeatStep.Degrees) to).temperature()).stream()))
                .anyMatch(temperature -> temperature.unit() == Unit.FAHRENHEIT);
        return fahrenheit ? Unit.FAHRENHEIT : Unit.CELSIUS;
    }

    private Optional<String> holding(HeatStep step) {
        Optional<String> where = at(step);
        Optional<String> time = step.hold().map(hold -> words.say("heat.hold", span(hold)));
        List<String> said = List.of(time, where).stream().flatMap(Optional::stream).toList();
        return said.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", said));
    }

    private String where(HeatStep.To to) {
        return to instanceof HeatStep.Look look ? words.name("held", look) : words.say("heat.at", reached(to));
    }

    /**
     * What is reached.
     *
     * @param to what a step heats to
     * @return such as {@code 88 °C} or {@code a simmer}
     */
    public String reached(HeatStep.To to) {
        if (to instanceof HeatStep.Look look) {
            return words.name("look", look);
        }
        return figures.measured(((HeatStep.Degrees) to).temperature());
    }
}
