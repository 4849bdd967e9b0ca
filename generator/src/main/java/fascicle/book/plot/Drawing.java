package fascicle.book.plot;

import fascicle.book.figures.Figures;
import fascicle.book.page.Markup;
import fascicle.colour.Lab;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.jsoup.nodes.Entities;

/** A plot while it is drawn: a neutral board with hairlines, words and needles. */
final class Drawing {

    /** The neutral ground (a* = b* = 0) on which colours are judged; the same as behind swatches. */
    private static final Lab GROUND = new Lab(84, 0, 0);

    /** How far a tick reaches out of its axis. */
    private static final int TICK = 4;

    /** Empty ground above everything. */
    private static final double MARGIN = 12;

    private static final String HAIRLINES = " fill=\"none\" stroke=\"#000\"";

    /** Where words begin and end. */
    enum Anchor {
        /** They begin here, or as those around them do. */
        START,
        /** They stand in the middle of here. */
        MIDDLE,
        /** They end here. */
        END
    }

    /** Whether needles lead to entries; a drawing without ways is one picture to those who hear it. */
    enum Role {
        /** Its needles are ways. */
        GROUP,
        /** It is a picture. */
        IMG
    }

    private final StringBuilder svg = new StringBuilder(4096);

    /**
     * Begins a plot of a kind; no page has two of one kind, so that its parts can be named after it. The board reaches
     * from above the highest needle to the foot.
     */
    Drawing(String word, Role role, double width, double highest, double foot, String title, String said) {
        String id = "plot-" + word;
        double top = StrictMath.floor(highest) - MARGIN;
        svg.append("<svg class=\"plot ").append(word).append("\" viewBox=\"")
                .append(places(0, top, width, foot - top)).append("\" role=\"")
                .append(role == Role.IMG ? "img" : "group").append("\" aria-labelledby=\"").append(id)
                .append("-title\" aria-describedby=\"").append(id).append("-said\"><title id=\"").append(id)
                .append("-title\">").append(Entities.escape(title)).append("</title><desc id=\"").append(id)
                .append("-said\">").append(Entities.escape(said)).append("</desc><rect class=\"ground\"");
        at("y", top).append(" width=\"100%\" height=\"100%\" fill=\"").append(GROUND.toRgb().hex()).append("\"/>");
    }

    private static String places(double... places) {
        return DoubleStream.of(places).mapToObj(Figures::place).collect(Collectors.joining(" "));
    }

    private StringBuilder at(String attribute, double place) {
        return svg.append(' ').append(attribute).append("=\"").append(Figures.place(place)).append('"');
    }

    /** What belongs together; drawings are read by their title, so hairlines and numbers are not read out. */
    Drawing begin(String style) {
        svg.append("<g class=\"").append(style).append("\" aria-hidden=\"true\">");
        return this;
    }

    /** The needles, which may be ways to their entries. */
    Drawing beginNeedles() {
        svg.append("<g class=\"needles\">");
        return this;
    }

    /** Ends what belongs together. */
    Drawing end() {
        svg.append("</g>");
        return this;
    }

    /** A part of the board over whose edge no hairline is drawn. */
    Drawing beginWindow(double left, double top, double width, double height) {
        svg.append("<svg class=\"guides\" aria-hidden=\"true\"").append(HAIRLINES);
        at("x", left);
        at("y", top);
        at("width", width);
        at("height", height).append(" viewBox=\"").append(places(left, top, width, height)).append("\">");
        return this;
    }

    /** Ends the part of the board. */
    Drawing endWindow() {
        svg.append("</svg>");
        return this;
    }

    /** A hairline through some places: x and y by turns. */
    Drawing line(double... places) {
        return hairlines("M" + places(places));
    }

    private Drawing hairlines(String path) {
        svg.append("<path d=\"").append(path).append('"').append(HAIRLINES).append("/>");
        return this;
    }

    /** A ring in a window. */
    Drawing ring(double x, double y, double radius) {
        svg.append("<circle");
        at("cx", x);
        at("cy", y);
        at("r", radius).append("/>");
        return this;
    }

    /** Words along the board's width. */
    Drawing text(double x, double y, Anchor anchor, String text) {
        svg.append("<text");
        at("x", x);
        at("y", y).append(switch (anchor) {
            case START -> "";
            case MIDDLE -> " text-anchor=\"middle\"";
            case END -> " text-anchor=\"end\"";
        }).append('>').append(Entities.escape(text)).append("</text>");
        return this;
    }

    /** An axis at the foot of a plot, its numbers and what they are. */
    Drawing bottomAxis(Ticks ticks, Scale scale, double left, double right, double y, String title) {
        StringBuilder hairs = new StringBuilder("M" + places(left, y) + 'H' + Figures.place(right));
        for (double value : ticks.at()) {
            hairs.append('M').append(places(scale.at(value), y)).append('v').append(TICK);
        }
        hairlines(hairs.toString());
        svg.append("<g text-anchor=\"middle\">");
        List<String> labels = ticks.labels();
        for (int i = 0; i < labels.size(); i++) {
            text(scale.at(ticks.at().get(i)), y + 17, Anchor.START, labels.get(i));
        }
        return text((left + right) / 2, y + 34, Anchor.START, title).end();
    }

    /** An axis at the left of a plot, its numbers and what they are. */
    Drawing leftAxis(Ticks ticks, Scale scale, double x, double top, double bottom, String title) {
        leftAxis(ticks, scale, x, top, bottom);
        svg.append("<text transform=\"translate(").append(places(14, (top + bottom) / 2))
                .append(")rotate(-90)\" text-anchor=\"middle\">").append(Entities.escape(title)).append("</text>");
        return this;
    }

    /** The same without words. */
    Drawing leftAxis(Ticks ticks, Scale scale, double x, double top, double bottom) {
        StringBuilder hairs = new StringBuilder("M" + places(x, top) + 'V' + Figures.place(bottom));
        for (double value : ticks.at()) {
            hairs.append('M').append(places(x, scale.at(value))).append("h-").append(TICK);
        }
        hairlines(hairs.toString());
        svg.append("<g text-anchor=\"end\">");
        List<String> labels = ticks.labels();
        for (int i = 0; i < labels.size(); i++) {
            text(x - 7, scale.at(ticks.at().get(i)) + 4.2, Anchor.START, labels.get(i));
        }
        return end();
    }

    /** A needle in its colour. */
    Drawing needle(Stroke stroke, Lab colour) {
        svg.append("<path d=\"").append(stroke.path()).append("\" fill=\"").append(colour.toRgb().hex()).append("\"/>");
        return this;
    }

    /** A needle that says what it is, and leads there where the book has a page of it. */
    Drawing needle(Stroke stroke, Lab colour, String title, Optional<String> href) {
        svg.append(href.map(to -> "<a href=\"" + Entities.escape(to) + "\">").orElse("<g>"))
                .append("<title>").append(Entities.escape(title)).append("</title>");
        needle(stroke, colour);
        svg.append(href.isPresent() ? "</a>" : "</g>");
        return this;
    }

    /** The finished plot. */
    Markup done() {
        return new Markup(svg.append("</svg>").toString());
    }
}
