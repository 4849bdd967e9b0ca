package fascicle.book.compose;

import fascicle.book.figures.Figures;
import fascicle.book.page.Plot;
import fascicle.book.plot.FadingPlot;
import fascicle.book.words.Words;
import fascicle.colour.ColourDifference;
import fascicle.colour.Lab;
import fascicle.notebook.WindowReading;
import fascicle.workings.ColourFigures;
import fascicle.workings.EntryWorking;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The plot of an entry's fading in the light. */
final class FadingComposer {

    private static final double MINUTES_IN_A_DAY = 1440;
    private static final int DAYS_IN_A_WEEK = 7;

    private final Words words;
    private final Figures figures;

    FadingComposer(Materials materials) {
        this.words = materials.words();
        this.figures = materials.figures();
    }

    /** How an entry's colour changed; nothing where none was read before and after. */
    Optional<Plot> of(EntryWorking working) {
        List<FadingPlot.Point> readings = readings(working);
        if (readings.isEmpty()) {
            return Optional.empty();
        }
        List<FadingPlot.Point> points = new ArrayList<>();
        working.colour().map(ColourFigures::lab).ifPresent(fresh ->
                points.add(new FadingPlot.Point(0, 0, fresh, words.say("plot.new"))));
        points.addAll(readings);
        FadingPlot plot = new FadingPlot(points);
        String said = words.say("plot.fading-said", String.join(words.say("plot.then"), readings.stream()
                .map(reading -> words.say("plot.faded", time(reading.days()), reading.label())).toList()));
        return Optional.of(new Plot("fading", words.say("plot.fading-title"), plot.svg(words, said),
                words.say("plot.fading-reading"), said, List.of(), 0));
    }

    /** The dry readings of the half that lay in the light, each with its difference from the mean when new. */
    private List<FadingPlot.Point> readings(EntryWorking working) {
        List<FadingPlot.Point> readings = new ArrayList<>();
        for (WindowReading window : working.entry().window()) {
            Optional<Lab> now = window.reading().wet() ? Optional.empty() : window.reading().colour().lab();
            if (now.isPresent() && working.colour().isPresent()) {
                double faded = ColourDifference.ciede2000(working.colour().get().lab(), now.get());
                readings.add(new FadingPlot.Point(window.after().value().value() / MINUTES_IN_A_DAY, faded, now.get(),
                        figures.difference(faded)));
            }
        }
        return readings;
    }

    private String time(double days) {
        if (days % DAYS_IN_A_WEEK == 0) {
            return words.say("plot.weeks", (int) days / DAYS_IN_A_WEEK);
        }
        return days == 1 ? words.say("plot.days", 1) : words.say("plot.days", Figures.atMost(days, 1));
    }
}
