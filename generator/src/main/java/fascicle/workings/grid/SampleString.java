package fascicle.workings.grid;

import fascicle.colour.HueOrder;
import fascicle.colour.Lab;
import fascicle.workings.ColourFigures;
import fascicle.workings.EntryWorking;
import java.util.Comparator;
import java.util.List;

/** The order in which dyed samples hang on a string. */
public enum SampleString {
    /** By hue, then the greys: {@link HueOrder}. */
    HUE(Comparator.comparingDouble(Sample::hue).thenComparingDouble(sample -> sample.colour().lightness())),
    /** From light to dark. */
    LIGHTNESS(Comparator.comparingDouble((Sample sample) -> -sample.colour().lightness())
            .thenComparingDouble(Sample::hue)),
    /** Year by year, and by hue within a year. */
    YEAR(Comparator.comparingInt((Sample sample) -> sample.entry().entry().date().getYear())
            .thenComparing(HUE.order));

    private final Comparator<Sample> order;

    SampleString(Comparator<Sample> order) {
        this.order = order;
    }

    /**
     * Hangs samples up.
     *
     * @param entries any entries
     * @return those that have a colour, in this order; of equal colours the first by id
     */
    public List<EntryWorking> of(List<EntryWorking> entries) {
        return entries.stream().flatMap(entry -> entry.colour().map(ColourFigures::lab)
                        .map(colour -> Sample.of(entry, colour)).stream())
                .sorted(order.thenComparing(sample -> sample.entry().id()))
                .map(Sample::entry).toList();
    }

    /** What a sample is ordered by, worked out once. */
    private record Sample(EntryWorking entry, Lab colour, double hue) {

        static Sample of(EntryWorking entry, Lab colour) {
            return new Sample(entry, colour, HueOrder.place(colour));
        }
    }
}
