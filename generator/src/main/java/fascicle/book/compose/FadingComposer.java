package fascicle.book.compose;

import fascicle.book.figures.Figures;
import fascicle.book.page.Plot;
import fascicle.book.plot.FadingPlot;
import fascicle.book.words.Words;
import fascicle.workings.Difference;
import fascicle.workings.EntryWorking;
import fascicle.workings.Fading;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The plot of an entry's fading in the light. */
final class FadingComposer {

    private static final int DAYS_IN_A_WEEK = 7;

    private final Words words;
    private final Figures figures;

    FadingComposer(Materials materials) {
        this.words = materials.words();
        this.figures = materials.figures();
    }

    /** How an entry's colour changed; nothing where none was read before and after. */
    Optional<Plot> of(EntryWorking working) {
        List<Fading> faded = working.fading().stream().filter(one -> one.faded().isPresent())
                .sorted(Comparator.comparingDouble(Fading::days)).toList();
        if (faded.isEmpty() || working.colour().isEmpty()) {
            return Optional.empty();
        }
        List<FadingPlot.Point> points = new ArrayList<>();
        points.add(new FadingPlot.Point(0, 0, working.colour().get().lab(), words.say("plot.new")));
        faded.forEach(one -> one.lab().ifPresent(now -> points.add(new FadingPlot.Point(one.days(),
                one.faded().orElseThrow().de00(), now, grade(one)))));
        String said = words.say("plot.fading-said",
                String.join(words.say("plot.then"), faded.stream().map(this::said).toList()));
        return Optional.of(new Plot("fading", words.say("plot.fading-title"), new FadingPlot(points).svg(words, said),
                words.say("plot.fading-reading"), said, List.of(), 0));
    }

    private String said(Fading fading) {
        Difference faded = fading.faded().orElseThrow();
        return faded.tells() ? words.say("plot.faded", time(fading.days()), figures.difference(faded), grade(fading))
                : words.say("plot.same", time(fading.days()), figures.told(faded));
    }

    /** No grade where the readings cannot tell that anything has faded. */
    private String grade(Fading fading) {
        return fading.grade().filter(unused -> fading.faded().filter(Difference::tells).isPresent())
                .map(grade -> words.say("plot.grade", grade)).orElse("");
    }

    private String time(double days) {
        if (days % DAYS_IN_A_WEEK == 0) {
            return words.say("plot.weeks", (int) days / DAYS_IN_A_WEEK);
        }
        return days == 1 ? words.say("plot.days", 1) : words.say("plot.days", Figures.atMost(days, 1));
    }
}
