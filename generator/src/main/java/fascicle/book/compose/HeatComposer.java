package fascicle.book.compose;

import fascicle.bath.HeatStage;
import fascicle.book.figures.Figures;
import fascicle.book.gist.Heating;
import fascicle.book.page.Fact;
import fascicle.book.page.Plot;
import fascicle.book.plot.HeatPlot;
import fascicle.book.words.Words;
import fascicle.measure.Unit;
import fascicle.notebook.HeatStep;
import fascicle.notebook.Recipe;
import fascicle.notebook.Span;
import fascicle.workings.BathFigures;
import fascicle.workings.Boil;
import fascicle.workings.EntryWorking;
import fascicle.workings.HeatCourse;
import fascicle.workings.PartFigures;
import fascicle.workings.Workings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The plot of a bath's heating: what is known of it is drawn, and what is not is said. */
final class HeatComposer {

    private final Workings workings;
    private final Words words;
    private final Figures figures;
    private final Heating heating;
    private final Boil boil;

    HeatComposer(Materials materials) {
        this.workings = materials.workings();
        this.words = materials.words();
        this.figures = materials.figures();
        this.heating = new Heating(materials.words());
        this.boil = Boil.of(workings.notebook().cover());
    }

    /**
     * The plot of an entry, unless its method's page shows the very same: a page is read on a phone at the stove, and
     * nothing is drawn twice.
     */
    Optional<Plot> ofEntry(EntryWorking working) {
        Optional<Plot> ofMethod = working.entry().method().flatMap(id -> workings.method(id.value()))
                .flatMap(method -> of(method.method().recipe(), method.bath()));
        return of(working.entry().recipe(), working.bath()).filter(plot -> !ofMethod.equals(Optional.of(plot)));
    }

    /** How hot a bath is, and for how long; nothing where no time of it is known. */
    Optional<Plot> of(Recipe recipe, BathFigures bath) {
        HeatCourse course = HeatCourse.of(recipe.heat());
        List<HeatStage> lines = course.known();
        if (lines.stream().mapToDouble(HeatStage::minutes).sum() <= 0) {
            return Optional.empty();
        }
        List<PartFigures> later = bath.parts().stream().filter(part -> minutes(part).isPresent()).toList();
        List<HeatPlot.Addition> additions = new ArrayList<>();
        List<Fact> facts = new ArrayList<>();
        for (PartFigures part : later) {
            String number = String.valueOf(facts.size() + 1);
            additions.add(new HeatPlot.Addition(minutes(part).orElseThrow(), number));
            facts.add(Fact.of(number, words.say("plot.heating-addition", part.called(),
                    figures.lasting(minutes(part).orElseThrow()))));
        }
        HeatPlot plot = new HeatPlot(lines, boil.celsius(), additions);
        String said = said(lines, course, Heating.thermometer(recipe.heat()));
        String reading = words.say("plot.heating-reading");
        return Optional.of(new Plot("heating", words.say("plot.heating-title"), plot.svg(words, said),
                later.isEmpty() ? reading : reading + " " + words.say("plot.heating-numbers"), said, facts, 0));
    }

    private static Optional<Double> minutes(PartFigures part) {
        return part.part().at().map(at -> at.value()).filter(Span.Timed.class::isInstance)
                .map(at -> ((Span.Timed) at).time().value());
    }

    private String said(List<HeatStage> lines, HeatCourse course, Unit thermometer) {
        List<HeatStep> beyond = course.beyond();
        List<String> pieces = new ArrayList<>();
        pieces.add(words.say("plot.heating-from", figures.temperature(lines.get(0).from(), thermometer, false)));
        double now = 0;
        for (HeatStage line : lines) {
            if (line.from() != line.to()) {
                pieces.add(words.say("plot.heating-to", figures.temperature(line.to(), thermometer, false),
                        figures.lasting(now + line.over())));
            }
            now += line.minutes();
            boolean stays = line.from() == line.to() ? line.minutes() > 0 : line.hold() > 0;
            if (stays) {
                pieces.add(words.say("plot.heating-held", figures.lasting(now)));
            }
        }
        double hot = lines.stream().mapToDouble(line -> line.minutesAbove(HeatCourse.HOT)).sum();
        List<String> sentences = new ArrayList<>();
        sentences.add(words.say("sentence", String.join(words.say("pieces"), pieces)));
        sentences.add(words.say(beyond.isEmpty() ? "plot.heating-hot" : "plot.heating-hot-drawn",
                figures.amount(hot, "min", course.about())));
        if (course.about()) {
            sentences.add(words.say("plot.heating-about"));
        }
        heating.steps(beyond).ifPresent(steps -> sentences.add(words.say("plot.heating-beyond", steps)));
        String boils = figures.temperature(boil.celsius(), thermometer, false);
        sentences.add(boil.said() ? words.say("plot.boil", boils, Figures.atMost(boil.metres(), 0))
                : boil.refused().map(height -> words.say("plot.boil-refused", boils, height))
                        .orElseGet(() -> words.say("plot.boil-sea", boils)));
        return String.join(" ", sentences);
    }
}
