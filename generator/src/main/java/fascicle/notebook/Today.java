package fascicle.notebook;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The day up to which a notebook tells. A book knows no clock, so that it is the same at any hour. */
public final class Today {

    /** What is gathered, bought, kept or read may lie ahead of the newest dye day by a year, and no more. */
    private static final int DAYS_AHEAD = 366;

    /** Years without a dye day after which a single day is rather a wrong year than a new beginning. */
    private static final int YEARS_OF_PAUSE = 10;

    private Today() {}

    /**
     * The newest date of a notebook: of dye days, of what was gathered, bought or kept, and of readings in the window,
     * which were taken so long after their dye day. A date that {@linkplain #isFarAhead lies far ahead} of all dye days
     * is a slip of the pen, and does not count; nor does a dye day in {@linkplain #newestDyeDay a wrong year}.
     *
     * @param notebook any notebook
     * @return the date; nothing where the notebook has none
     */
    public static Optional<LocalDate> of(Notebook notebook) {
        Optional<LocalDate> newest = newestDyeDay(notebook);
        Stream<LocalDate> gathered = notebook.lots().stream().flatMap(lot -> lot.gathered().stream()).map(Noted::value);
        Stream<LocalDate> bought = notebook.dyes().stream().flatMap(dye -> dye.bought().stream())
                .flatMap(purchase -> purchase.on().stream()).map(Noted::value);
        Stream<LocalDate> kept = notebook.entries().stream()
                .flatMap(entry -> entry.kept().flatMap(Kept::since).stream())
                .map(Noted::value);
        Stream<LocalDate> read = notebook.entries().stream()
                .filter(entry -> newest.filter(entry.date()::isAfter).isEmpty())
                .flatMap(entry -> entry.window().stream().map(window -> window.on(entry.date())));
        Stream<LocalDate> sound = Stream.of(gathered, bought, kept, read).flatMap(dates -> dates)
                .filter(date -> !isFarAhead(date, newest));
        return Stream.concat(newest.stream(), sound).max(Comparator.naturalOrder());
    }

    /**
     * The newest day on which something was dyed, of those that {@linkplain #soundDyeDays count}.
     *
     * @param notebook any notebook
     * @return the date; nothing where nothing was dyed yet
     */
    public static Optional<LocalDate> newestDyeDay(Notebook notebook) {
        return soundDyeDays(notebook).stream().max(Comparator.naturalOrder());
    }

    /**
     * The dye days by which stock is taken. A day counts once there is another within ten years of it, so that one
     * wrong year does not carry pace and use-by dates off, and a maker who begins again after a long pause is believed
     * from the second day on. Where no day has another so near, all count.
     *
     * @param notebook any notebook
     * @return each once, in order
     */
    public static NavigableSet<LocalDate> soundDyeDays(Notebook notebook) {
        NavigableSet<LocalDate> days = dyeDays(notebook);
        NavigableSet<LocalDate> sound = days.stream().filter(day -> !isAlone(day, days))
                .collect(Collectors.toCollection(TreeSet::new));
        return sound.isEmpty() ? days : sound;
    }

    /**
     * All days on which something was dyed.
     *
     * @param notebook any notebook
     * @return each once, in order
     */
    public static NavigableSet<LocalDate> dyeDays(Notebook notebook) {
        return Stream.concat(notebook.days().stream().map(Day::date), notebook.entries().stream().map(Entry::date))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /**
     * Whether there is no other dye day within ten years of a day.
     *
     * @param day a dye day
     * @param days all of them
     * @return whether it stands alone
     */
    public static boolean isAlone(LocalDate day, NavigableSet<LocalDate> days) {
        return Stream.of(Optional.ofNullable(days.lower(day)).map(before -> isLongPause(before, day)),
                Optional.ofNullable(days.higher(day)).map(after -> isLongPause(day, after)))
                .flatMap(Optional::stream).allMatch(pause -> pause);
    }

    /**
     * Whether more than ten years lie between two days.
     *
     * @param before the earlier one
     * @param after the later one
     * @return whether one of their years may be wrong
     */
    public static boolean isLongPause(LocalDate before, LocalDate after) {
        return after.isAfter(before.plusYears(YEARS_OF_PAUSE));
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
