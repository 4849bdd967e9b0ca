package fascicle.book.plot;

import fascicle.book.page.Markup;
import fascicle.book.words.Words;
import fascicle.colour.Lab;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * How a colour changed in the light: time against the difference from the colour when new.
 *
 * @param points the readings by time, the new colour at 0 first; two at least
 */
public record FadingPlot(List<Point> points) {

    private static final String WORD = "fading";
    private static final double DAYS_IN_A_WEEK = 7;

    /** From here on weeks are read more readily than days. */
    private static final double FIRST_IN_WEEKS = 21;

    /** Smaller changes are hardly seen: an axis that filled itself with them would cry wolf. */
    private static final double LEAST_DIFFERENCE = 5;

    private static final double WIDTH = 340;
    private static final double LEFT = 46;
    private static final double RIGHT = 318;
    private static final double TOP = 52;
    private static final double BOTTOM = 190;
    private static final double LENGTH = 42;

    /** About how wide a letter and how high a line are; what would run into others is left to the text beneath. */
    private static final double LETTER = 6.2;
    private static final double LINE = 13;
    private static final double GAP = 7;

    /** How far above a needle's foot its words stand, clear of the line that joins the feet. */
    private static final double ABOVE = 24;

    /**
     * One reading.
     *
     * @param days how long it had been in the light, from 0
     * @param difference CIEDE2000 from the colour when new, from 0
     * @param colour what it is drawn in
     * @param label what stands beside it, in words; empty for nothing
     */
    public record Point(double days, double difference, Lab colour, String label) {}

    /** What is taken up on the board. */
    private record Box(double left, double right, double top, double bottom) {

        boolean meets(Box other) {
            return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
        }
    }

    /**
     * Readings in time.
     *
     * @throws IllegalArgumentException if there are fewer than two, or one lies before the first day
     */
    public FadingPlot {
        points = points.stream().sorted(Comparator.comparingDouble(Point::days)).toList();
        if (points.size() < 2 || points.get(0).days() < 0) {
            throw new IllegalArgumentException("no time to plot: " + points);
        }
    }

    /**
     * The plot.
     *
     * @param words the book's words
     * @param said what it shows, in words and numbers
     * @return an SVG drawing
     */
    public Markup svg(Words words, String said) {
        double last = points.get(points.size() - 1).days();
        boolean weeks = last >= FIRST_IN_WEEKS;
        double unit = weeks ? DAYS_IN_A_WEEK : 1;
        Ticks time = Ticks.fromNought(last / unit, 1);
        Ticks change = Ticks.fromNought(points.stream().mapToDouble(Point::difference).max().orElseThrow(),
                LEAST_DIFFERENCE);
        Scale across = Scale.even(time, LEFT, RIGHT);
        Scale up = Scale.even(change, BOTTOM, TOP);
        double highest = StrictMath.min(TOP, points.stream()
                .mapToDouble(point -> up.at(point.difference()) - LENGTH).min().orElse(TOP));
        Drawing drawing = new Drawing(WORD, Drawing.Role.IMG, WIDTH, highest, BOTTOM + 44,
                words.say("plot.fading-title"), said);
        drawing.begin("axes").bottomAxis(time, across, LEFT, RIGHT, BOTTOM,
                        words.say(weeks ? "plot.axis-weeks" : "plot.axis-days"))
                .leftAxis(change, up, LEFT, TOP, BOTTOM, words.say("plot.axis-difference")).end();
        drawing.begin("course").line(points.stream().flatMapToDouble(point -> DoubleStream.of(
                across.at(point.days() / unit), up.at(point.difference()))).toArray()).end();
        drawing.beginNeedles();
        for (Point point : points) {
            drawing.needle(stroke(point, across, up, unit), point.colour());
        }
        labels(drawing.end().begin("numbers"), across, up, unit);
        return drawing.end().done();
    }

    private static Stroke stroke(Point point, Scale across, Scale up, double unit) {
        return new Stroke(across.at(point.days() / unit), up.at(point.difference()), LENGTH, 0);
    }

    /** Each label to the left of its needle, else to its right, else nowhere. */
    private void labels(Drawing drawing, Scale across, Scale up, double unit) {
        List<Box> taken = new ArrayList<>();
        for (Point point : points) {
            Stroke stroke = stroke(point, across, up, unit);
            taken.add(new Box(stroke.x() - 3, stroke.x() + 3, stroke.y() - LENGTH, stroke.y()));
        }
        for (Point point : points.stream().filter(one -> !one.label().isEmpty()).toList()) {
            Stroke stroke = stroke(point, across, up, unit);
            double y = stroke.y() - ABOVE;
            double width = point.label().codePointCount(0, point.label().length()) * LETTER;
            Box left = new Box(stroke.x() - GAP - width, stroke.x() - GAP, y - LINE, y);
            Box right = new Box(stroke.x() + GAP, stroke.x() + GAP + width, y - LINE, y);
            if (left.left() > LEFT && taken.stream().noneMatch(left::meets)) {
                drawing.text(left.right(), y, Drawing.Anchor.END, point.label());
                taken.add(left);
            } else if (right.right() <= WIDTH && taken.stream().noneMatch(right::meets)) {
                drawing.text(right.left(), y, Drawing.Anchor.START, point.label());
                taken.add(right);
            }
        }
    }
}
