package fascicle.book.plot;

import fascicle.book.page.Markup;
import fascicle.book.words.Words;
import fascicle.colour.Lab;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.DoubleStream;

/**
 * How dark a dye becomes with depth: owf, by equal factors, against L*.
 *
 * <p>L* was chosen, and not the shift from the bare needles, because a dyer asks how deep to go for how dark, has a
 * target whose L* is known, and reads the same axis for every condition; a shift needs a bare reading, and also grows
 * where a colour merely turns. Entries of one condition at one depth fan out from one lane; a number at its foot tells
 * the condition, and a hairline joins the medians of its depths.
 *
 * @param points the colours, by depth, then by condition, then from light to dark; two depths at least
 */
public record DepthPlot(List<Point> points) {

    /** How many needles are drawn at most. */
    public static final int MOST = 200;

    private static final Comparator<Point> BY_DEPTH = Comparator.comparingDouble(Point::owfPercent)
            .thenComparingInt(Point::row).thenComparingDouble(point -> -point.colour().lightness());

    private static final String WORD = "depths";
    private static final double LEAST_SPAN = 20;

    private static final double WIDTH = 340;
    private static final double LEFT = 46;
    private static final double RIGHT = 332;
    private static final double TOP = 48;
    private static final double BOTTOM = 252;
    private static final double INSET = 26;
    private static final double LANE = 15;
    private static final double LANES = 64;
    private static final double LENGTH = 42;
    private static final double LEAN = 9;
    private static final double WIDEST_FAN = 70;

    /** How far a number stands beneath its foot, and about how much that is in L*; and how far beside it. */
    private static final double NUMBER = 13;
    private static final double BENEATH = 1.5;
    private static final double BESIDE = 4;

    /**
     * One colour.
     *
     * @param owfPercent on the weight of the dry needles, per cent; above 0
     * @param row the number of its condition, from 1
     * @param colour its lightness, and what it is drawn in
     * @param href the way to its entry
     * @param title what it is, in words
     */
    public record Point(double owfPercent, int row, Lab colour, Optional<String> href, String title) {}

    /**
     * Where a condition's colours lie at a depth.
     *
     * @param owfPercent the depth
     * @param lightness their median L*
     */
    public record Middle(double owfPercent, double lightness) {}

    /**
     * Colours at depths.
     *
     * @throws IllegalArgumentException if there are fewer than two depths, or one is not above 0
     */
    public DepthPlot {
        points = points.stream().sorted(BY_DEPTH).toList();
        if (points.stream().mapToDouble(Point::owfPercent).distinct().count() < 2 || points.get(0).owfPercent() <= 0) {
            throw new IllegalArgumentException("no depths to compare: " + points);
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

    /**
     * How lightness falls on one condition.
     *
     * @param row the condition's number
     * @return its medians, by depth
     */
    public List<Middle> middles(int row) {
        Map<Double, List<Lab>> byDepth = new TreeMap<>();
        points.stream().filter(point -> point.row() == row).forEach(point ->
                byDepth.computeIfAbsent(point.owfPercent(), unused -> new ArrayList<>()).add(point.colour()));
        return byDepth.entrySet().stream()
                .map(depth -> new Middle(depth.getKey(), Lab.median(depth.getValue()).lightness())).toList();
    }

    /**
     * The plot.
     *
     * @param words the book's words
     * @param said what it shows, in words and numbers
     * @return an SVG drawing
     */
    public Markup svg(Words words, String said) {
        Ticks depths = Ticks.depths(points.get(0).owfPercent(), points.get(points.size() - 1).owfPercent());
        Ticks lightness = lightness();
        Scale across = Scale.logarithmic(depths, LEFT + INSET, RIGHT - INSET);
        Scale up = Scale.even(lightness, BOTTOM, TOP);
        double highest = StrictMath.min(TOP, points.stream()
                .mapToDouble(point -> up.at(point.colour().lightness()) - LENGTH).min().orElse(TOP));
        Drawing drawing = new Drawing(WORD, Drawing.Role.GROUP, WIDTH, highest, BOTTOM + 44,
                words.say("plot.depths-title"), said);
        drawing.begin("axes").bottomAxis(depths, across, LEFT, RIGHT, BOTTOM, words.say("plot.axis-depth"))
                .leftAxis(lightness, up, LEFT, TOP, BOTTOM, words.say("plot.axis-dark")).end();
        drawing.begin("course");
        for (int row : new TreeSet<>(points.stream().map(Point::row).toList())) {
            List<Middle> middles = middles(row);
            if (middles.size() > 1) {
                drawing.line(middles.stream().flatMapToDouble(middle -> DoubleStream.of(
                        lane(across, middle.owfPercent(), row), up.at(middle.lightness()))).toArray());
            }
        }
        needles(drawing.end(), across, up);
        return drawing.done();
    }

    /** The axis of L*, with room for a number beneath the darkest. */
    private Ticks lightness() {
        DoubleSummaryStatistics range =
                points.stream().mapToDouble(point -> point.colour().lightness()).summaryStatistics();
        return Ticks.round(range.getMin() - BENEATH, range.getMax(), LEAST_SPAN);
    }

    private void needles(Drawing drawing, Scale across, Scale up) {
        List<List<Point>> tufts = tufts(up);
        drawing.beginNeedles();
        for (List<Point> tuft : tufts) {
            double lean = StrictMath.min(LEAN, WIDEST_FAN / tuft.size());
            for (int i = 0; i < tuft.size(); i++) {
                Point point = tuft.get(i);
                drawing.needle(new Stroke(lane(across, point.owfPercent(), point.row()),
                                up.at(point.colour().lightness()), LENGTH, (i - (tuft.size() - 1) / 2.0) * lean),
                        point.colour(), point.title(), point.href());
            }
        }
        drawing.end().begin("numbers");
        for (int i = 0; i < tufts.size(); i++) {
            Point darkest = tufts.get(i).get(tufts.get(i).size() - 1);
            double x = lane(across, darkest.owfPercent(), darkest.row());
            double y = up.at(darkest.colour().lightness());
            String number = String.valueOf(darkest.row());
            if (i + 1 < tufts.size() && near(darkest, tufts.get(i + 1).get(0), up, NUMBER + LENGTH)) {
                drawing.text(x + BESIDE, y + BESIDE, Drawing.Anchor.START, number);
            } else {
                drawing.text(x, y + NUMBER, Drawing.Anchor.MIDDLE, number);
            }
        }
        drawing.end();
    }

    /** What was dyed alike and came out nearly as dark, lightest first: one fan, with one number beneath. */
    private List<List<Point>> tufts(Scale up) {
        List<List<Point>> tufts = new ArrayList<>();
        for (Point point : drawn()) {
            List<Point> last = tufts.isEmpty() ? List.of() : tufts.get(tufts.size() - 1);
            if (last.isEmpty() || !near(last.get(last.size() - 1), point, up, NUMBER + 3)) {
                tufts.add(new ArrayList<>());
            }
            tufts.get(tufts.size() - 1).add(point);
        }
        return tufts;
    }

    /** Whether two feet stand in one lane, and nearer to each other than this. */
    private static boolean near(Point lighter, Point darker, Scale up, double distance) {
        return lighter.row() == darker.row() && lighter.owfPercent() == darker.owfPercent()
                && up.at(darker.colour().lightness()) - up.at(lighter.colour().lightness()) < distance;
    }

    /** Conditions that were tried at one depth stand side by side about it. */
    private double lane(Scale across, double owf, int row) {
        List<Integer> rows =
                points.stream().filter(point -> point.owfPercent() == owf).map(Point::row).distinct().toList();
        double apart = StrictMath.min(LANE, LANES / rows.size());
        return across.at(owf) + (rows.indexOf(row) - (rows.size() - 1) / 2.0) * apart;
    }
}
