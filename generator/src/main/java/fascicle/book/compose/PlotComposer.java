package fascicle.book.compose;

import fascicle.book.address.Shelf;
import fascicle.book.figures.Figures;
import fascicle.book.page.Fact;
import fascicle.book.page.Link;
import fascicle.book.page.Plot;
import fascicle.book.plot.ColourPlane;
import fascicle.book.plot.DepthPlot;
import fascicle.book.words.Words;
import fascicle.colour.Lab;
import fascicle.workings.ColourFigures;
import fascicle.workings.EntryWorking;
import fascicle.workings.Group;
import fascicle.workings.grid.Ladder;
import fascicle.workings.grid.SampleString;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/** Plots of what entries have in common: a family's colours, a dye's depths. */
final class PlotComposer {

    private final Materials materials;
    private final Ways ways;
    private final Words words;
    private final Figures figures;

    PlotComposer(Materials materials, Ways ways) {
        this.materials = materials;
        this.ways = ways;
        this.words = materials.words();
        this.figures = materials.figures();
    }

    /** The plot of a group; nothing below two points, and of groups whose colours have no figure in common. */
    Optional<Plot> of(Shelf shelf, Group group) {
        return switch (shelf) {
            case FAMILIES -> colours(group.entries());
            case DYES -> depths(group.id());
            case DAYS, METHODS, LOTS, CONDITIONS, YEARS -> Optional.empty();
        };
    }

    private Optional<Plot> colours(List<EntryWorking> entries) {
        List<EntryWorking> coloured = SampleString.HUE.of(entries);
        if (coloured.size() < 2) {
            return Optional.empty();
        }
        ColourPlane plane = new ColourPlane(coloured.stream().map(entry -> {
            Link way = ways.entry(entry);
            return new ColourPlane.Point(lab(entry), way.href(),
                    words.say("plot.colours-point", way.text(), figures.lab(lab(entry))));
        }).toList());
        DoubleSummaryStatistics a = range(coloured, Lab::a);
        DoubleSummaryStatistics b = range(coloured, Lab::b);
        DoubleSummaryStatistics lightness = range(coloured, Lab::lightness);
        String said = words.say("plot.colours-said", coloured.size(), whole(a.getMin()), whole(a.getMax()),
                whole(b.getMin()), whole(b.getMax()), whole(lightness.getMin()), whole(lightness.getMax()));
        int drawn = plane.drawn().size();
        String all = drawn == coloured.size() ? said : said + " " + words.say("plot.some-hues", drawn);
        return Optional.of(new Plot("colours", words.say("plot.colours-title"), plane.svg(words, all),
                words.say("plot.colours-reading"), all, ends(coloured), drawn));
    }

    /** The colours that lie farthest out; nothing between colours that lie equally far. */
    private List<Fact> ends(List<EntryWorking> coloured) {
        List<Fact> ends = new ArrayList<>();
        if (isSpread(range(coloured, Lab::lightness))) {
            ends.add(end("plot.lightest", "plot.lightness", coloured, Lab::lightness, 1));
            ends.add(end("plot.darkest", "plot.lightness", coloured, Lab::lightness, -1));
        }
        if (isSpread(range(coloured, Lab::chroma))) {
            ends.add(end("plot.strongest", "plot.chroma", coloured, Lab::chroma, 1));
            ends.add(end("plot.greyest", "plot.chroma", coloured, Lab::chroma, -1));
        }
        return List.copyOf(ends);
    }

    private static boolean isSpread(DoubleSummaryStatistics range) {
        return range.getMax() > range.getMin();
    }

    private Fact end(String label, String figure, List<EntryWorking> coloured, ToDoubleFunction<Lab> of, int sign) {
        EntryWorking farthest = coloured.stream()
                .max(Comparator.comparingDouble(entry -> sign * of.applyAsDouble(lab(entry)))).orElseThrow();
        return new Fact(words.say(label), List.of(ways.entry(farthest),
                Link.plain(words.say(figure, Figures.fixed(of.applyAsDouble(lab(farthest)), 1)))), Optional.empty());
    }

    private Optional<Plot> depths(String dye) {
        Ladder ladder = Ladder.of(materials.workings(), dye);
        List<DepthPlot.Point> points = new ArrayList<>();
        for (int row = 0; row < ladder.rows().size(); row++) {
            for (int rung = 0; rung < ladder.rungs().size(); rung++) {
                points.addAll(points(ladder, row, rung));
            }
        }
        long depths = points.stream().mapToDouble(DepthPlot.Point::owfPercent).distinct().count();
        if (depths < 2) {
            return Optional.empty();
        }
        DepthPlot plot = new DepthPlot(points);
        DoubleSummaryStatistics owf = points.stream().mapToDouble(DepthPlot.Point::owfPercent).summaryStatistics();
        DoubleSummaryStatistics lightness =
                points.stream().mapToDouble(point -> point.colour().lightness()).summaryStatistics();
        String said = words.say("plot.depths-said", points.size(), depths, depth(owf.getMin()), depth(owf.getMax()),
                whole(lightness.getMin()), whole(lightness.getMax()));
        int drawn = plot.drawn().size();
        String all = drawn == points.size() ? said : said + " " + words.say("plot.some-depths", drawn);
        return Optional.of(new Plot("depths", words.say("plot.depths-title"), plot.svg(words, all),
                words.say("plot.depths-reading"), all,
                IntStream.range(0, ladder.rows().size()).filter(row -> !plot.middles(row + 1).isEmpty())
                        .mapToObj(row -> course(ladder.rows().get(row).condition(), row + 1, plot)).toList(), drawn));
    }

    private List<DepthPlot.Point> points(Ladder ladder, int row, int rung) {
        Ladder.Rung depth = ladder.rungs().get(rung);
        String condition = ways.condition(ladder.rows().get(row).condition()).text();
        return ladder.rows().get(row).cells().get(rung).entries().stream().filter(entry -> entry.colour().isPresent())
                .map(entry -> {
                    Link way = ways.entry(entry);
                    return new DepthPlot.Point(depth.owfPercent(), row + 1, lab(entry), way.href(),
                            words.say("plot.depths-point", way.text(),
                                    figures.amount(depth.owfPercent(), "percent", depth.about()), condition,
                                    Figures.fixed(lab(entry).lightness(), 1)));
                }).toList();
    }

    /** A condition behind its number, and how its lightness falls. */
    private Fact course(String condition, int row, DepthPlot plot) {
        List<DepthPlot.Middle> middles = plot.middles(row);
        DepthPlot.Middle first = middles.get(0);
        DepthPlot.Middle last = middles.get(middles.size() - 1);
        String begins = words.say("plot.at-depth", whole(first.lightness()), depth(first.owfPercent()));
        String course = middles.size() == 1 ? begins
                : words.say("plot.by-depth", begins, whole(last.lightness()), depth(last.owfPercent()));
        return new Fact(String.valueOf(row), List.of(ways.condition(condition), Link.plain(course)), Optional.empty());
    }

    private String depth(double owf) {
        return figures.amount(owf, "percent", false);
    }

    private static String whole(double value) {
        return Figures.fixed(value, 0);
    }

    private static Lab lab(EntryWorking coloured) {
        return coloured.colour().map(ColourFigures::lab).orElseThrow();
    }

    private static DoubleSummaryStatistics range(List<EntryWorking> coloured, ToDoubleFunction<Lab> of) {
        return coloured.stream().map(PlotComposer::lab).mapToDouble(of).summaryStatistics();
    }
}
