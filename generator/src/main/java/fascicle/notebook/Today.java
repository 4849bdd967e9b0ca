package fascicle.notebook;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/** The day up to which a notebook tells. A book knows no clock, so that it is the same at any hour. */
public final class Today {

    /** What is gathered, bought, kept or read may lie ahead of the newest dye day by a year, and no more. */
    private static final int DAYS_AHEAD = 366;

    private Today() {}

    /**
     * The newest date of a notebook: of dye days, of what was gathered, bought or kept, and of readings in the window,
     * which were taken so long after their dye day. A date that {@linkplain #isFarAhead lies far ahead} of all dye days
     * is a slip of the pen, and does not count.
     *
     * @param notebook any notebook
     * @return the date; nothing where the notebook has none
     */
    public static Optional<LocalDate> of(Notebook notebook) {
        Optional<LocalDate> newest = newestDyeDay(notebook);
        Stream<LocalDate> gathered = notebook.lots().stream().flatMap(lot -> lot.gathered().stream()).map(Noted::value);
        Stream<LocalDate> bought = notebook.dyes().stream().flatMap(dye -> dye.bought().stream())
                .flatMap(purchase -> purchase.on().stream()).map(Noted::value);
        Stream<LocalDate> kept = notebook.entries().stream().flatMap(entry -> entry.kept().flatMap(Kept::since).stream())
                .map(Noted::value);
        Stream<LocalDate> read = notebook.entries().stream()
                .flatMap(entry -> entry.window().stream().map(window -> window.on(entry.date())));
        Stream<LocalDate> sound = Stream.of(gathered, bought, kept, read).flatMap(dates -> dates)
                .filter(date -> !isFarAhead(date, newest));
        return Stream.concat(newest.stream(), sound).max(Comparator.naturalOrder());
    }

    /**
     * The newest day on which something was dyed.
     *
     * @param notebook any notebook
     * @return the date; nothing where nothing was dyed yet
     */
    public static Optional<LocalDate> newestDyeDay(Notebook notebook) {
        return Stream.concat(notebook.days().stream().map(Day::date), notebook.entries().stream().map(Entry::date))
                .max(Comparator.naturalOrder());
    }

    /**
     * Whether a date lies more than a year after every dye day.
     *
     * @param date any date
     * @param newest the newest dye day; without one no date is far ahead
     * @return whether it is taken for a slip of the pen
     */
    public static boolean isFarAhead(LocalDate date, Optional<LocalDate> newest) {
        return newest.filter(day -> date.isAfter(day.plusDays(DAYS_AHEAD))).isPresent();
    }
}
