package fascicle.workings.care;

import java.util.List;
import java.util.stream.IntStream;

/**
 * What a dyebath does to the vessel that it stands in.
 *
 * @param sour whether an acid is in it
 * @param alkaline whether an alkali is in it, or in a treatment, which may be done in the same vessel
 * @param heated whether it stands on a stove or in an oven
 */
public record Strain(boolean sour, boolean alkaline, boolean heated) {

    /** Everything that baths do to vessels, each at its {@link #place}. */
    public static final List<Strain> ALL = IntStream.range(0, 8)
            .mapToObj(place -> new Strain((place & 1) != 0, (place & 2) != 0, (place & 4) != 0)).toList();

    /**
     * Where it stands among all there are.
     *
     * @return its index in {@link #ALL}
     */
    public int place() {
        return ALL.indexOf(this);
    }
}
