package fascicle.workings;

import fascicle.colour.ColourNames;
import fascicle.colour.Lab;
import fascicle.colour.Tone;
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
        return of(entry.colour(), lot.flatMap(found -> sure(found.colour())), entry.target().flatMap(Colours::aim));
    }

    /** The colour of a lot's bare needles; nothing without a dry reading in figures. */
    static Optional<ColourFigures> of(NeedleLot lot) {
        return of(lot.colour(), Optional.empty(), Optional.empty());
    }

    /** The mean of what may be compared among readings. */
    static Optional<Difference.Sure> sure(List<Reading> readings) {
        List<Reading.Measurement> measured = Reading.measured(readings);
        return measured.isEmpty() ? Optional.empty()
                : Optional.of(new Difference.Sure(Lab.mean(Reading.comparable(readings)), leastSure(measured)));
    }

    /** What an entry aimed at: a colour that was written down is exact, one that was measured is as sure as that. */
    private static Optional<Difference.Sure> aim(Reading target) {
        boolean chosen = target.colour() instanceof Reading.Metered || target.colour() instanceof Reading.Screen;
        return chosen ? target.colour().lab().map(lab -> new Difference.Sure(lab, 0)) : sure(List.of(target));
    }

    private static Optional<ColourFigures> of(List<Reading> readings, Optional<Difference.Sure> bare,
            Optional<Difference.Sure> target) {
        List<Reading.Measurement> measured = Reading.measured(readings);
        return sure(readings).map(mean -> new ColourFigures(mean.lab(), Reading.comparable(readings), by(measured),
                mean.uncertainty(), unlevelness(measured), ColourNames.nearest(mean.lab()),
                bare.map(from -> Difference.of(from, mean)), bare.map(from -> tone(from, mean)),
                target.map(aim -> Difference.of(aim, mean))));
    }

    /** Which way a colour went, where the readings tell that it went anywhere. */
    private static Tone tone(Difference.Sure from, Difference.Sure to) {
        return Difference.of(from, to).tells() ? Tone.of(from.lab(), to.lab()) : Tone.HARDLY_CHANGED;
    }

    private static double leastSure(List<Reading.Measurement> measured) {
        return measured.stream().mapToDouble(Reading.Measurement::uncertainty).max().orElseThrow();
    }

    /**
     * Of all readings together, but photographs apart: a photograph's figure already is a mean over many needles, and
     * errs otherwise than a meter.
     */
    private static OptionalDouble unlevelness(List<Reading.Measurement> measured) {
        List<Lab> byEachNeedle = colours(measured, false);
        List<Lab> off = byEachNeedle.size() >= ENOUGH_FOR_UNLEVELNESS ? byEachNeedle : colours(measured, true);
        return off.size() < ENOUGH_FOR_UNLEVELNESS ? OptionalDouble.empty()
                : OptionalDouble.of(Unlevelness.of(off));
    }

    private static List<Lab> colours(List<Reading.Measurement> measured, boolean photographed) {
        return measured.stream().filter(one -> (one.kind() == Reading.Kind.PHOTOGRAPH) == photographed)
                .flatMap(one -> one.colours().stream()).toList();
    }

    private static String by(List<Reading.Measurement> measured) {
        List<Reading.Kind> kinds = measured.stream().map(Reading.Measurement::kind).distinct().toList();
        if (kinds.size() > 1) {
            return "mixed";
        }
        return switch (kinds.get(0)) {
            case METER -> "lab";
            case SCREEN -> "hex";
            case PHOTOGRAPH -> "photo";
        };
    }
}
