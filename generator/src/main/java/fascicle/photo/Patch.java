package fascicle.photo;

import fascicle.colour.Lab;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A patch of known colour in a picture: a grey card, or one of the patches of a chart.
 *
 * @param at where it lies
 * @param known its colour under D50
 */
public record Patch(Area at, Lab known) {

    /** As many patches as any chart has; a table of more is no chart's. */
    public static final int MOST = 300;

    /**
     * A grey card.
     *
     * @param at where it lies
     * @param percent its reflectance, above 0 and at most 100
     * @return a patch without chroma
     * @throws IllegalArgumentException if the reflectance is out of range
     */
    public static Patch grey(Area at, double percent) {
        if (!(percent > 0 && percent <= 100)) {
            throw new IllegalArgumentException("not the reflectance of a card: " + percent + " %");
        }
        return new Patch(at, Lab.ofReflectance(percent / 100));
    }

    /**
     * The patches of a chart that lie in equal rows. Of each the middle half is read, since no hand outlines a chart to
     * the pixel.
     *
     * @param at where the chart lies
     * @param columns patches in a row
     * @param known the colours from the upper left, row by row
     * @return a patch for each colour
     * @throws IllegalArgumentException if the colours do not fill rows
     */
    public static List<Patch> inRows(Area at, int columns, List<Lab> known) {
        if (columns < 1 || known.isEmpty() || known.size() % columns != 0) {
            throw new IllegalArgumentException(known.size() + " colours do not fill rows of " + columns);
        }
        double width = at.width() / columns;
        double height = at.height() / (known.size() / columns);
        return IntStream.range(0, known.size()).mapToObj(place -> new Patch(new Area(
                at.x() + (place % columns + 0.25) * width, at.y() + (place / columns + 0.25) * height, width / 2,
                height / 2), known.get(place))).toList();
    }
}
