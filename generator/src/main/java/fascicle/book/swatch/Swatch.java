package fascicle.book.swatch;

import fascicle.book.page.Markup;
import fascicle.colour.Lab;
import java.util.List;
import java.util.Optional;
import org.jsoup.nodes.Entities;

/**
 * A colour drawn as a fascicle: tapering needles whose strokes take turns through the readings, in a sheath of the bare
 * lot's colour; a target is the thread tied round them. Every colour stands in an SVG attribute, none in a style.
 *
 * @param readings the colours that were read; none for a colour that is not known
 * @param sheath the bare lot's colour
 * @param target the colour aimed at
 * @param title what the swatch shows, in words
 */
public record Swatch(List<Lab> readings, Optional<Lab> sheath, Optional<Lab> target, String title) {

    /** The neutral ground (a* = b* = 0) on which colours are judged. */
    private static final Lab GROUND = new Lab(78, 0, 0);

    private static final Lab INK = new Lab(35, 0, 0);
    private static final Lab UNKNOWN_SHEATH = new Lab(60, 0, 0);
    private static final int MOST_NEEDLES = 24;
    private static final int BASE_Y = 178;
    private static final int TIP_Y = 14;

    /** How a swatch lies. */
    private enum Lay {
        /** Needles fan out from the sheath. */
        FAN("swatch large", 220, 15, 9, 4, 13, 100),
        /** Needles lie side by side and fill the cell. */
        SIDE_BY_SIDE("swatch small", 96, 7, 14, 12, 13, 30);

        private final String styles;
        private final int width;
        private final int needles;
        private final int thickness;
        private final int stepAtBase;
        private final int stepAtTip;
        private final int shoulder;

        Lay(String styles, int width, int needles, int thickness, int stepAtBase, int stepAtTip,
                int shoulder) {
            this.styles = styles;
            this.width = width;
            this.needles = needles;
            this.thickness = thickness;
            this.stepAtBase = stepAtBase;
            this.stepAtTip = stepAtTip;
            this.shoulder = shoulder;
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
     * For the sample string: the needles hang from the cord, tips down.
     *
     * @return an SVG drawing
     */
    public Markup hung() {
        return small();
    }

    private Markup drawn(Lay lay) {
        StringBuilder svg = new StringBuilder();
        svg.append("<svg class=\"").append(lay.styles).append("\" viewBox=\"0 0 ").append(lay.width)
                .append(" 200\" role=\"img\" focusable=\"false\"><title>").append(Entities.escape(title))
                .append("</title><rect width=\"").append(lay.width).append("\" height=\"200\" fill=\"")
                .append(hex(GROUND)).append("\"/>");
        int turns = Math.max(1, readings.size());
        for (int reading = 0; reading < turns; reading++) {
            strokes(svg, lay, reading, turns);
        }
        int half = lay.needles * lay.stepAtBase / 2 + 3;
        target.ifPresent(colour -> band(svg, lay.width / 2 - half - 2, 140, 2 * half + 4, 9, colour));
        band(svg, lay.width / 2 - half, 158, 2 * half, 34, sheath.orElse(UNKNOWN_SHEATH));
        return new Markup(svg.append("</svg>").toString());
    }

    /** The needles of one reading: every so-manieth, so that strokes take turns. One path, since pages hold many. */
    private void strokes(StringBuilder svg, Lay lay, int reading, int turns) {
        int needles = Math.max(lay.needles, Math.min(turns, MOST_NEEDLES));
        if (reading >= needles) {
            return;
        }
        svg.append("<path d=\"");
        for (int number = reading; number < needles; number += turns) {
            // Counted in half steps from the middle, to stay with whole numbers.
            int place = 2 * number - (needles - 1);
            int end = TIP_Y + (lay == Lay.FAN ? Math.abs(place) * 2 : number % 3 * 4);
            needle(svg, lay, middle(lay, place * lay.stepAtBase, needles), middle(lay, place * lay.stepAtTip, needles), end);
        }
        if (readings.isEmpty()) {
            svg.append("\" fill=\"none\" stroke=\"").append(hex(INK)).append("\" stroke-dasharray=\"4 3\"/>");
        } else {
            svg.append("\" fill=\"").append(hex(readings.get(reading))).append("\"/>");
        }
    }

    /** More needles than usual stand closer. */
    private static int middle(Lay lay, int offset, int needles) {
        return lay.width / 2 + offset * lay.needles / needles / 2;
    }

    /** One needle: widest in its sheath, bent outwards, ending in a point. */
    private static void needle(StringBuilder svg, Lay lay, int base, int tip, int end) {
        int half = lay.thickness / 2;
        int shoulder = shoulder(base, tip);
        svg.append('M').append(base - half).append(' ').append(BASE_Y)
                .append('Q').append(shoulder - half).append(' ').append(lay.shoulder).append(' ').append(tip)
                .append(' ').append(end)
                .append('Q').append(shoulder + half).append(' ').append(lay.shoulder).append(' ').append(base + half)
                .append(' ').append(BASE_Y).append('Z');
    }

    /** Where a needle begins to taper: a third of the way from its sheath to its tip. */
    private static int shoulder(int base, int tip) {
        return base + (tip - base) / 3;
    }

    private static void band(StringBuilder svg, int x, int y, int width, int height, Lab colour) {
        svg.append("<rect x=\"").append(x).append("\" y=\"").append(y).append("\" width=\"").append(width)
                .append("\" height=\"").append(height).append("\" rx=\"4\" fill=\"").append(hex(colour)).append("\"/>");
    }

    private static String hex(Lab colour) {
        return colour.toRgb().hex();
    }
}
