package fascicle.book.plot;

import fascicle.book.page.Markup;
import fascicle.book.words.Words;
import fascicle.colour.Lab;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Colours in the plane of a* and b*, to one scale, so that distances are true. A needle is as long as its colour is
 * light; a strip beside the plane holds the same needles by L*, so that lightness is read from a place and a length.
 *
 * @param points the colours, in an order in which some of them can stand for all; one at least
 */
public record ColourPlane(List<Point> points) {

    /** How many needles are drawn at most: more would hide each other, and make the page heavy. */
    public static final int MOST = 400;

    private static final String WORD = "colours";
    private static final double LEAST_SPAN = 20;
    private static final Ticks LIGHTNESS = new Ticks(List.of(0.0, 50.0, 100.0));

    private static final double WIDTH = 340;
    private static final double LEFT = 46;
    private static final double TOP = 54;
    private static final double SIDE = 200;
    private static final double STRIP = 281;

    /**
     * One colour.
     *
     * @param colour its place, and what it is drawn in
     * @param href the way to its entry
     * @param title what it is, in words
     */
    public record Point(Lab colour, Optional<String> href, String title) {}

    /**
     * A plane of colours.
     *
     * @throws IllegalArgumentException if there are none
     */
    public ColourPlane {
        points = List.copyOf(points);
        if (points.isEmpty()) {
            throw new IllegalArgumentException("no plane of no colours: " + points);
        }
    }

    /**
     * The colours that are drawn.
     *
     * @return all, or as many as there is room for
     */
    public List<Point> drawn() {
        return Evenly.spread(points, MOST);
    }

    /** Both axes by one step and equally long: a* first. */
    List<Ticks> axes() {
        Ticks a = Ticks.about(points.stream().mapToDouble(point -> point.colour().a()), LEAST_SPAN);
        Ticks b = Ticks.about(points.stream().mapToDouble(point -> point.colour().b()), LEAST_SPAN);
        double step = StrictMath.max(a.step(), b.step());
        Ticks evenA = a.step() == step ? a : a.steppedBy(step);
        Ticks evenB = b.step() == step ? b : b.steppedBy(step);
        int steps = StrictMath.max(evenA.steps(), evenB.steps());
        return List.of(evenA.widenedTo(steps), evenB.widenedTo(steps));
    }

    /**
     * The plot.
     *
     * @param words the book's words
     * @param said what it shows, in words and numbers
     * @return an SVG drawing
     */
    public Markup svg(Words words, String said) {
        Ticks a = axes().get(0);
        Ticks b = axes().get(1);
        Scale across = Scale.even(a, LEFT, LEFT + SIDE);
        Scale up = Scale.even(b, TOP + SIDE, TOP);
        Drawing drawing = new Drawing(WORD, Drawing.Role.GROUP, WIDTH, highest(across, up), TOP + SIDE + 44,
                words.say("plot.colours-title"), said);
        guides(drawing, a, b, across, up);
        drawing.begin("axes").bottomAxis(a, across, LEFT, LEFT + SIDE, TOP + SIDE, words.say("plot.axis-a"))
                .leftAxis(b, up, LEFT, TOP, TOP + SIDE, words.say("plot.axis-b"));
        List<Point> lightestFirst = drawn().stream()
                .sorted(Comparator.comparingDouble((Point point) -> -point.colour().lightness())).toList();
        strip(drawing.end(), words.say("plot.axis-lightness"), lightestFirst);
        drawing.beginNeedles();
        // The longest first, so that the shorter ones stand before them.
        for (Point point : lightestFirst) {
            drawing.needle(stroke(point, across, up), point.colour(), point.title(), point.href());
        }
        return drawing.end().done();
    }

    private static Stroke stroke(Point point, Scale across, Scale up) {
        Lab colour = point.colour();
        return new Stroke(across.at(colour.a()), up.at(colour.b()), Stroke.length(colour.lightness()), 0);
    }

    /** Where the highest needle ends, or the axis where none reaches above it. */
    private double highest(Scale across, Scale up) {
        return drawn().stream().map(point -> stroke(point, across, up))
                .mapToDouble(stroke -> stroke.y() - stroke.length()).reduce(TOP, StrictMath::min);
    }

    /** Rings of equal chroma, one for each step of the axes, and a ray for every 30° of hue, about the greys. */
    private static void guides(Drawing drawing, Ticks a, Ticks b, Scale across, Scale up) {
        double x = across.at(0);
        double y = up.at(0);
        double perUnit = SIDE / (a.high() - a.low());
        double farthest = StrictMath.hypot(StrictMath.max(StrictMath.abs(a.low()), StrictMath.abs(a.high())),
                StrictMath.max(StrictMath.abs(b.low()), StrictMath.abs(b.high())));
        double reach = farthest * perUnit;
        double nearest = StrictMath.hypot(outside(a), outside(b));
        drawing.beginWindow(LEFT, TOP, SIDE, SIDE);
        for (double chroma = a.step(); chroma < farthest; chroma += a.step()) {
            if (chroma > nearest) {
                drawing.ring(x, y, chroma * perUnit);
            }
        }
        for (int hue = 0; hue < 360; hue += 30) {
            double angle = StrictMath.toRadians(hue);
            drawing.line(x, y, x + reach * StrictMath.cos(angle), y - reach * StrictMath.sin(angle));
        }
        drawing.endWindow();
    }

    /** How far an axis lies from nought; 0 where it holds it. */
    private static double outside(Ticks axis) {
        return StrictMath.max(0, StrictMath.max(axis.low(), -axis.high()));
    }

    /** The same needles by lightness, laid down; a slanting hairline shows how length grows with it. */
    private static void strip(Drawing drawing, String title, List<Point> points) {
        Scale up = Scale.even(LIGHTNESS, TOP + SIDE, TOP);
        drawing.begin("axes").leftAxis(LIGHTNESS, up, STRIP, TOP, TOP + SIDE)
                .line(STRIP + Stroke.length(0), TOP + SIDE, STRIP + Stroke.length(100), TOP)
                .text(STRIP + 4, TOP + SIDE + 34, Drawing.Anchor.MIDDLE, title).end().begin("strip");
        for (Point point : points) {
            drawing.needle(new Stroke(STRIP, up.at(point.colour().lightness()),
                    Stroke.length(point.colour().lightness()), 90), point.colour());
        }
        drawing.end();
    }
}
