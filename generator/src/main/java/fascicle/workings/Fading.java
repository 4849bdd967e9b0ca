package fascicle.workings;

import fascicle.colour.Grade;
import fascicle.colour.GreyScale;
import fascicle.colour.Lab;
import fascicle.notebook.Entry;
import fascicle.notebook.WindowReading;
import java.util.List;
import java.util.Optional;

/**
 * What the light has done to the half left in it.
 *
 * @param window the reading
 * @param days for which it lay in the light
 * @param faded from the entry's mean colour when fresh; unknown without both colours, and of wet needles
 * @param grade of the change after ISO 105-A05, approximate; unknown where the change is
 */
public record Fading(WindowReading window, double days, Optional<Difference> faded, Optional<Grade> grade) {

    private static final double MINUTES_IN_A_DAY = 1440;

    /** What the light has done to an entry, in the order of its readings. */
    static List<Fading> of(Entry entry, Optional<ColourFigures> fresh) {
        return entry.window().stream().map(window -> of(window, fresh)).toList();
    }

    private static Fading of(WindowReading window, Optional<ColourFigures> fresh) {
        Optional<Difference.Sure> now = Colours.sure(List.of(window.reading()));
        return new Fading(window, window.after().value().value() / MINUTES_IN_A_DAY,
                now.flatMap(faded -> fresh.map(before -> Difference.of(before.sure(), faded))),
                now.flatMap(faded -> fresh.map(before -> GreyScale.change(before.lab(), faded.lab()))));
    }

    /**
     * The colour now, where it may be compared.
     *
     * @return under D50
     */
    public Optional<Lab> lab() {
        return window.reading().measured().map(measured -> Lab.mean(measured.colours()));
    }
}
