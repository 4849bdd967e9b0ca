package fascicle.book.plot;

import fascicle.bath.HeatStage;
import fascicle.book.figures.Figures;
import fascicle.book.page.Markup;
import fascicle.book.words.Words;
import fascicle.workings.HeatCourse;
import java.util.ArrayList;
import java.util.List;

/**
 * How hot a bath is, and for how long: time against temperature.
 *
 * @param lines what is known of the heating, one line after the other; it takes time
 * @param boil where water boils in the workshop, °C
 * @param additions what goes in later
 */
public record HeatPlot(List<HeatStage> lines, double boil, List<Addition> additions) {

    private static final String WORD = "heating";
    private static final double MINUTES_IN_AN_HOUR = 60;

    /** From here on hours are read more readily than minutes. */
    private static final double FIRST_IN_HOURS = 120;

    private static final double WIDTH = 340;
    private static final double LEFT = 46;
    private static final double RIGHT = 326;
    private static final double TOP = 26;
    private static final double BOTTOM = 170;

    /** How far a mark hangs below the line, its number below that, and how far words stand from a broken line. */
    private static final double MARK = 12;
    private static final double NUMBER = 12;
    private static final double ABOVE = 4;

    /** How high words are. */
    private static final double LETTERS = 13;
    private static final double BELOW = 12;

    /**
     * Something that goes in later.
     *
     * @param minutes after the heating begins
     * @param label what stands at its mark
     */
    public record Addition(double minutes, String label) {}

    /**
     * A course of heating.
     *
     * @throws IllegalArgumentException if it takes no time
     */
    public HeatPlot {
        lines = List.copyOf(lines);
        additions = List.copyOf(additions);
        if (!(minutes(lines) > 0)) {
            throw new IllegalArgumentException("no time to plot: " + lines);
        }
    }

    /**
     * How long all of it takes.
     *
     * @return in min
     */
    public double minutes() {
        return minutes(lines);
    }

    private static double minutes(List<HeatStage> lines) {
        return lines.stream().mapToDouble(HeatStage::minutes).sum();
    }

    /**
     * How hot it is at a time.
     *
     * @param minutes after the beginning, up to {@link #minutes()}
     * @return in °C
     */
    public double celsius(double minutes) {
        double begun = 0;
        for (HeatStage line : lines) {
            double since = minutes - begun;
            if (since < line.over()) {
                return line.from() + (line.to() - line.from()) * since / line.over();
            }
            if (since <= line.minutes()) {
                return line.to();
            }
            begun += line.minutes();
        }
        return lines.get(lines.size() - 1).to();
    }

    /**
     * The plot.
     *
     * @param words the book's words
     * @param said what it shows, in words and numbers
     * @return an SVG drawing
     */
    public Markup svg(Words words, String said) {
        boolean hours = minutes() >= FIRST_IN_HOURS;
        double unit = hours ? MINUTES_IN_AN_HOUR : 1;
        Ticks time = Ticks.fromNought(minutes() / unit, 1);
        Ticks heat = Ticks.round(coldest(), hottest(), 1);
        Scale across = Scale.even(time, LEFT, RIGHT);
        Scale up = Scale.even(heat, BOTTOM, TOP);
        Drawing drawing = new Drawing(WORD, Drawing.Role.IMG, WIDTH, StrictMath.min(TOP, up.at(boil) - LETTERS),
                BOTTOM + 44, words.say("plot.heating-title"), said);
        drawing.begin("axes").bottomAxis(time, across, LEFT, RIGHT, BOTTOM,
                        words.say(hours ? "plot.axis-hours" : "plot.axis-minutes"))
                .leftAxis(heat, up, LEFT, TOP, BOTTOM, words.say("plot.axis-celsius")).end();
        drawing.begin("limits").line(LEFT, up.at(HeatCourse.HOT), RIGHT, up.at(HeatCourse.HOT))
                .line(LEFT, up.at(boil), RIGHT, up.at(boil)).end();
        drawing.begin("course").line(corners(across, up, unit)).end();
        drawing.begin("numbers").text(RIGHT, up.at(boil) - ABOVE, Drawing.Anchor.END,
                        words.say("plot.boil-line", Figures.fixed(boil, 1)))
                .text(RIGHT, up.at(HeatCourse.HOT) + BELOW, Drawing.Anchor.END,
                        words.say("plot.hot-line", Figures.atMost(HeatCourse.HOT, 0)));
        for (Addition addition : additions.stream().filter(one -> one.minutes() <= minutes()).toList()) {
            double x = across.at(addition.minutes() / unit);
            double y = up.at(celsius(addition.minutes()));
            drawing.line(x, y, x, y + MARK).text(x, y + MARK + NUMBER, Drawing.Anchor.MIDDLE, addition.label());
        }
        return drawing.end().done();
    }

    private double coldest() {
        return lines.stream().mapToDouble(line -> StrictMath.min(line.from(), line.to()))
                .reduce(HeatCourse.ROOM, StrictMath::min);
    }

    private double hottest() {
        return lines.stream().mapToDouble(line -> StrictMath.max(line.from(), line.to()))
                .reduce(StrictMath.max(boil, HeatCourse.HOT), StrictMath::max);
    }

    private double[] corners(Scale across, Scale up, double unit) {
        List<Double> corners = new ArrayList<>();
        double now = 0;
        for (HeatStage line : lines) {
            for (double[] corner : new double[][] {{now, line.from()}, {now + line.over(), line.to()},
                {now + line.minutes(), line.to()}}) {
                List<Double> place = List.of(across.at(corner[0] / unit), up.at(corner[1]));
                if (corners.size() < 2 || !corners.subList(corners.size() - 2, corners.size()).equals(place)) {
                    corners.addAll(place);
                }
            }
            now += line.minutes();
        }
        return corners.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
