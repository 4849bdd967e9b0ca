package fascicle.notebook;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/** The day up to which a notebook tells. A book knows no clock, so that it is the same at any hour. */
public final class Today {

    private static final double MINUTES_IN_A_DAY = 1440;

    private Today() {}

    /**
     * The newest date of a notebook: of dye days, of what was gathered, bought or kept, and of readings in the window,
     * which were taken so long after their dye day.
     *
     * @param notebook any notebook
     * @return the date; nothing where the notebook has none
     */
    public static Optional<LocalDate> of(Notebook notebook) {
        Stream<LocalDate> days = notebook.days().stream().map(Day::date);
        Stream<LocalDate> gathered = notebook.lots().stream().flatMap(lot -> lot.gathered().stream()).map(Noted::value);
        Stream<LocalDate> bought = notebook.dyes().stream().flatMap(dye -> dye.bought().stream())
                .flatMap(purchase -> purchase.on().stream()).map(Noted::value);
        return Stream.of(days, gathered, bought, notebook.entries().stream().flatMap(Today::of))
                .flatMap(dates -> dates).max(Comparator.naturalOrder());
    }

    private static Stream<LocalDate> of(Entry entry) {
        Stream<LocalDate> kept = entry.kept().flatMap(Kept::since).map(Noted::value).stream();
        Stream<LocalDate> read = entry.window().stream().map(window -> entry.date()
                .plusDays((long) StrictMath.floor(window.after().value().value() / MINUTES_IN_A_DAY)));
        return Stream.of(Stream.of(entry.date()), kept, read).flatMap(dates -> dates);
    }
}
