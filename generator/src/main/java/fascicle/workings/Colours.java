package fascicle.workings;

import fascicle.colour.ColourDifference;
import fascicle.colour.ColourNames;
import fascicle.colour.Lab;
import fascicle.colour.Unlevelness;
import fascicle.notebook.Entry;
import fascicle.notebook.NeedleLot;
import fascicle.notebook.Reading;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Works out what readings say together. */
final class Colours {

    /** From how many readings on a batch's unlevelness is told. */
    private static final int ENOUGH_FOR_UNLEVELNESS = 3;

    private Colours() {}

    /** The colour of an entry's dyed needles; nothing without a dry reading in figures. */
    static Optional<ColourFigures> of(Entry entry, Optional<NeedleLot> lot) {
        return of(entry.colour(), lot.flatMap(Colours::bare),
                entry.target().flatMap(target -> target.colour().lab()));
    }

    /** The colour of a lot's bare needles; nothing without a dry reading in figures. */
    static Optional<ColourFigures> of(NeedleLot lot) {
        return of(lot.colour(), Optional.empty(), Optional.empty());
    }

    private static Optional<ColourFigures> of(List<Reading> readings, Optional<Lab> bare, Optional<Lab> target) {
        List<Lab> comparable = Reading.comparable(readings);
        if (comparable.isEmpty()) {
            return Optional.empty();
        }
        Lab mean = Lab.mean(comparable);
        OptionalDouble unlevelness = comparable.size() < ENOUGH_FOR_UNLEVELNESS
                ? OptionalDouble.empty()
                : OptionalDouble.of(Unlevelness.of(comparable));
        return Optional.of(new ColourFigures(mean, comparable, by(readings), unlevelness, ColourNames.nearest(mean),
                difference(bare, mean), difference(target, mean)));
    }

    private static Optional<Lab> bare(NeedleLot lot) {
        List<Lab> readings = Reading.comparable(lot.colour());
        return readings.isEmpty() ? Optional.empty() : Optional.of(Lab.mean(readings));
    }

    private static OptionalDouble difference(Optional<Lab> from, Lab colour) {
        return from.isPresent()
                ? OptionalDouble.of(ColourDifference.ciede2000(from.get(), colour))
                : OptionalDouble.empty();
    }

    private static String by(List<Reading> readings) {
        List<String> ways = readings.stream()
                .filter(reading -> !reading.wet() && reading.colour().lab().isPresent())
                .map(reading -> reading.colour() instanceof Reading.Metered ? "lab" : "hex")
                .distinct().toList();
        return ways.size() == 1 ? ways.get(0) : "mixed";
    }
}
