package fascicle.book.swatch;

import fascicle.book.page.Markup;
import fascicle.colour.Lab;
import java.util.List;
import java.util.Optional;
import org.jsoup.nodes.Entities;

/**
 * A colour drawn as a fascicle: tapering needles whose strokes take turns through the readings, in a sheath of the bare
 * lot's colour; a target is the thread tied round them. Where a screen cannot show a colour as strong as it is, a
 * corner of the ground is turned down. Every colour stands in an SVG attribute, none in a style; only
 * the neutral ground behind it is the style's.
 *
 * @param readings the colours that were read; none for a colour that is not known
 * @param sheath the bare lot's colour
 * @param target the colour aimed at
 * @param title what the swatch shows, in words
 */
public record Swatch(List<Lab> readings, Optional<Lab> sheath, Optional<Lab> target, String title) {

    /** The neutral ground (a* = b* = 0) on which colours are judged. */
    private static final Lab GROUND = new Lab(84, 0, 0);

    private static final Lab UNKNOWN_SHEATH = new Lab(60, 0, 0);
    private static final int MOST_NEEDLES = 24;

    /** How a swatch lies. */
    private enum Lay {
        /** Needles fan out from the sheath. */
        FAN("large", "0 0 240 224", 19, "M101 172q19 5 38 0l-4 40q-15 6-30 0z",
                "M102 181q18 5 36 0M103 191q17 5 34 0M104 201q16 5 32 0",
                "M99 163q21 6 42 0M99 169q21 6 42 0M139 166q22 8 20 34M139 168q10 14 6 30", "4.5"),
        /** Needles lie side by side and fill the cell. */
        SIDE_BY_SIDE("small", "0 0 48 72", 7, "M12 57q12 3 24 0l-3 13q-9 2-18 0z", "M13 62q11 3 22 0M14 66q10 2 20 0",
                "M8 53q16 4 32 0", "4"),
        /** The same, hanging from a cord by its sheath. */
        HUNG("hung", "0 -6 48 102", 7, "M12 57q12 3 24 0l-3 13q-9 2-18 0z", "M13 62q11 3 22 0M14 66q10 2 20 0",
                "M8 53q16 4 32 0", "4");

        private final String style;
        private final String box;
        private final int needles;
        private final String sheath;
        private final String scales;
        private final String thread;
        private final String threadWidth;

        Lay(String style, String box, int needles, String sheath, String scales, String thread, String threadWidth) {
            this.style = style;
            this.box = box;
            this.needles = needles;
            this.sheath = sheath;
            this.scales = scales;
            this.thread = thread;
            this.threadWidth = threadWidth;
        }

        /** The side of the corner that is turned down where a colour is stronger than a screen can show. */
        int corner() {
            return this == FAN ? 18 : 8;
        }

        Needle needle(int number, int count) {
            return switch (this) {
                case FAN -> Needle.fanned(number, count, needles);
                case SIDE_BY_SIDE -> Needle.sideBySide(number, count, needles);
                case HUNG -> Needle.hanging(number, count, needles);
            };
        }
    }

    /**
     * For an entry's own page: the needles fan.
     *
     * @return an SVG drawing
     */
    public Markup large() {
        return drawn(Lay.FAN);
    }

    /**
     * For a cell of a table: the needles lie side by side.
     *
     * @return an SVG drawing
     */
    public Markup small() {
        return drawn(Lay.SIDE_BY_SIDE);
    }

    /**
     * For the sample string: the needles hang from a cord.
     *
     * @return an SVG drawing
     */
    public Markup hung() {
        return drawn(Lay.HUNG);
    }

    /**
     * A small swatch without its colours, for a script to fill in: every needle, the sheath and the thread can be told
     * by their classes.
     *
     * @param title what an unfilled swatch shows, in words
     * @return an SVG drawing
     */
    public static Markup unfilled(String title) {
        Lay lay = Lay.SIDE_BY_SIDE;
        StringBuilder svg = begun(lay, title);
        for (int number = 0; number < lay.needles; number++) {
            svg.append("<path class=\"needle\" d=\"");
            lay.needle(number, lay.needles).drawTo(svg);
            svg.append("\"/>");
        }
        svg.append("<path class=\"sheath\" d=\"").append(lay.sheath).append("\"/><path class=\"scales\" d=\"")
                .append(lay.scales).append("\"/><path class=\"thread\" d=\"").append(lay.thread)
                .append("\" fill=\"none\" stroke-width=\"").append(lay.threadWidth).append("\"/></svg>");
        return new Markup(svg.toString());
    }

    private static StringBuilder begun(Lay lay, String title) {
        StringBuilder svg = new StringBuilder(1024);
        svg.append("<svg class=\"swatch ").append(lay.style).append("\" viewBox=\"").append(lay.box)
                .append("\" role=\"img\"><title>").append(Entities.escape(title))
                .append("</title>");
        if (lay == Lay.HUNG) {
            return svg.append("<g transform=\"matrix(1 0 0 -1 0 66)\">");
        }
        return svg.append("<rect class=\"ground\" width=\"100%\" height=\"100%\" fill=\"").append(hex(GROUND))
                .append("\"/>");
    }

    private Markup drawn(Lay lay) {
        StringBuilder svg = begun(lay, title);
        int turns = Math.max(1, readings.size());
        for (int reading = 0; reading < turns; reading++) {
            strokes(svg, lay, reading, turns);
        }
        filled(svg, lay.sheath, sheath.orElse(UNKNOWN_SHEATH));
        svg.append("<path class=\"scales\" d=\"").append(lay.scales).append("\"/>");
        if (clipped() && lay != Lay.HUNG) {
            svg.append("<path class=\"clipped\" d=\"M0 0h").append(lay.corner()).append("L0 ").append(lay.corner())
                    .append("z\"/>");
        }
        target.ifPresent(colour -> svg.append("<path class=\"thread\" d=\"").append(lay.thread)
                .append("\" fill=\"none\" stroke=\"").append(hex(colour)).append("\" stroke-width=\"")
                .append(lay.threadWidth).append("\"/>"));
        return new Markup(svg.append(lay == Lay.HUNG ? "</g></svg>" : "</svg>").toString());
    }

    /** Whether a screen shows any of its readings weaker than it is. */
    private boolean clipped() {
        return readings.stream().anyMatch(colour -> !colour.displayable());
    }

    /** The needles of one reading: every so-manieth, so that strokes take turns. One path, since pages hold many. */
    private void strokes(StringBuilder svg, Lay lay, int reading, int turns) {
        int needles = Math.max(lay.needles, Math.min(turns, MOST_NEEDLES));
        if (reading >= needles) {
            return;
        }
        StringBuilder path = new StringBuilder(256);
        for (int number = reading; number < needles; number += turns) {
            lay.needle(number, needles).drawTo(path);
        }
        if (readings.isEmpty()) {
            svg.append("<path class=\"unread\" d=\"").append(path).append("\" fill=\"none\"/>");
        } else {
            filled(svg, path.toString(), readings.get(reading));
        }
    }

    private static void filled(StringBuilder svg, String path, Lab colour) {
        svg.append("<path d=\"").append(path).append("\" fill=\"").append(hex(colour)).append("\"/>");
    }

    private static String hex(Lab colour) {
        return colour.toRgb().hex();
    }
}
