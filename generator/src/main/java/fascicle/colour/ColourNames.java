package fascicle.colour;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The 267 names of the ISCC–NBS system, and the one that suits a colour best. */
public final class ColourNames {

    private static final List<ColourName> ALL = load();
    private static final List<String> FAMILIES = ALL.stream().map(ColourName::family).distinct().toList();

    private ColourNames() {}

    /**
     * The name whose centroid lies nearest by CIEDE2000 under D50; of equally near ones, that of the lower number.
     *
     * <p>The standard bounds its blocks by Munsell hue, value and chroma; the nearest centroid stands in for them, so a
     * colour near a block's edge may get its neighbour's name.
     */
    public static ColourName nearest(Lab colour) {
        ColourName nearest = nearestByCielab(colour);
        double least = ColourDifference.ciede2000(colour, nearest.centroid());
        for (ColourName name : ALL) {
            if (ColourDifference.ciede2000AtLeast(colour, name.centroid()) > least) {
                continue;
            }
            double difference = ColourDifference.ciede2000(colour, name.centroid());
            if (difference < least || (difference == least && name.number() < nearest.number())) {
                nearest = name;
                least = difference;
            }
        }
        return nearest;
    }

    /** All names in the order of their numbers. */
    public static List<ColourName> all() {
        return ALL;
    }

    /** The thirteen hue groups of the first level, in the standard's order from pink to black. */
    public static List<String> families() {
        return FAMILIES;
    }

    /** A good first guess, so that most names can be passed over unmeasured. */
    private static ColourName nearestByCielab(Lab colour) {
        ColourName nearest = ALL.get(0);
        double least = Double.POSITIVE_INFINITY;
        for (ColourName name : ALL) {
            double difference = ColourDifference.cielab(colour, name.centroid());
            if (difference < least) {
                nearest = name;
                least = difference;
            }
        }
        return nearest;
    }

    private static List<ColourName> load() {
        try (InputStream stream = ColourNames.class.getResourceAsStream("colour-names.csv")) {
            if (stream == null) {
                throw new IllegalStateException("colour-names.csv is missing from the program");
            }
            BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8));
            return reader.lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(ColourNames::read)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static ColourName read(String line) {
        String[] cells = line.split(",");
        Lab centroid = Rgb.read(cells[4]).orElseThrow().toLab();
        return new ColourName(Integer.parseInt(cells[0]), cells[1], cells[2], cells[3], centroid);
    }
}
