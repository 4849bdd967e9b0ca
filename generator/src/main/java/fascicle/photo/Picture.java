package fascicle.photo;

import java.util.List;

/**
 * A picture as it stands upright.
 *
 * @param hash of its content, as hexadecimal digits
 * @param width in pixels
 * @param height in pixels
 */
public record Picture(String hash, int width, int height) {

    /** For a phone, for a laptop, for whoever looks closely; in pixels. */
    private static final List<Integer> WIDTHS = List.of(480, 960, 1600);

    /**
     * The widths of the copies that are made to be published.
     *
     * @return in pixels, ascending; none wider than the picture itself
     */
    public List<Integer> printWidths() {
        return WIDTHS.stream().map(printed -> Math.min(printed, width)).distinct().toList();
    }
}
