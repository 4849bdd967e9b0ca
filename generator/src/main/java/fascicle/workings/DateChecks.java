package fascicle.workings;

import fascicle.notebook.Entry;
import fascicle.notebook.Findings;
import fascicle.notebook.Ids;
import fascicle.notebook.Kept;
import fascicle.notebook.NeedleLot;
import fascicle.notebook.Note;
import fascicle.notebook.Notebook;
import fascicle.notebook.Noted;
import fascicle.notebook.Today;
import fascicle.notebook.WindowReading;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.stream.Stream;

/** Whether things happened one after the other. */
final class DateChecks {

    private final Notebook notebook;
    private final Findings findings;
    private final Map<String, NeedleLot> lots;
    private final Map<String, Entry> entries;

    DateChecks(Notebook notebook, Findings findings) {
        this.notebook = notebook;
        this.findings = findings;
        lots = Notebook.byId(notebook.lots(), NeedleLot::id);
        entries = Notebook.byId(notebook.entries(), Entry::id);
    }

    /** Checks every entry, lot and purchase. */
    void check() {
        Optional<LocalDate> newest = Today.newestDyeDay(notebook);
        years(newest);
        notebook.lots().forEach(lot -> lot.gathered().ifPresent(date -> ahead("gathered", date, newest)));
        notebook.dyes().forEach(dye -> dye.bought().forEach(purchase -> purchase.on()
                .ifPresent(date -> ahead("on", date, newest))));
        // Of a dye day in a wrong year that alone is said.
        notebook.entries().stream().filter(entry -> newest.filter(entry.date()::isAfter).isEmpty()).forEach(entry -> {
            entry.kept().flatMap(Kept::since).ifPresent(date -> ahead("since", date, newest));
            entry.window().forEach(window -> read(entry, window, newest));
        });
        for (Entry entry : notebook.entries()) {
            entry.needles().lot().ifPresent(lot -> gathered(entry, lot));
            entry.needles().from().ifPresent(from -> earlier(entry, from, "the needles"));
            entry.recipe().bath().reuses().ifPresent(reuses -> earlier(entry, reuses, "the bath"));
            entry.kept().flatMap(Kept::since).ifPresent(since -> {
                if (since.value().isBefore(entry.date())) {
                    findings.warning(since.place(),
                            "kept since “" + since.written() + "”, but the needles were dyed on "
                            + entry.date() + "; one of the dates is wrong");
                }
            });
        }
    }

    private void ahead(String key, Noted<LocalDate> date, Optional<LocalDate> newest) {
        if (Today.isFarAhead(date.value(), newest)) {
            findings.warning(date.place(), "“" + key + ": " + date.written() + "” is more than a year after the newest "
                    + "dye day, " + newest.orElseThrow() + ", and does not count as today; check the year");
        }
    }

    /** Between two dye days that lie far apart one year may be wrong: that of a day that stands alone, or the later. */
    private void years(Optional<LocalDate> newest) {
        NavigableSet<LocalDate> days = Today.dyeDays(notebook);
        for (LocalDate day : days) {
            LocalDate before = days.lower(day);
            if (before != null && Today.isLongPause(before, day)) {
                String years = ChronoUnit.YEARS.between(before, day) + " years ";
                if (Today.isAlone(before, days) && !Today.isAlone(day, days)) {
                    year(before, years + "before the next one, " + day);
                } else {
                    year(day, years + "after the dye day before it, " + before
                            + (newest.filter(day::isAfter).isPresent() ? ", and does not count as today" : ""));
                }
            }
        }
    }

    private void year(LocalDate day, String howFar) {
        Stream.concat(notebook.entries().stream().filter(entry -> entry.date().equals(day)).map(Entry::place),
                notebook.days().stream().filter(notes -> notes.date().equals(day))
                        .flatMap(notes -> notes.notes().stream()).map(Note::place)).findFirst().ifPresent(place ->
                findings.warning(place, "this dye day, " + day + ", comes " + howFar + "; check the year"));
    }

    private void read(Entry entry, WindowReading window, Optional<LocalDate> newest) {
        LocalDate date = window.on(entry.date());
        if (Today.isFarAhead(date, newest)) {
            findings.warning(window.after().place(),
                    "“after: " + window.after().written() + "” puts this reading on " + date
                    + ", more than a year after the newest dye day, " + newest.orElseThrow() + ", and does not count "
                    + "as today; check the figure and its unit, such as “after: 6 weeks”");
        }
    }

    private void gathered(Entry entry, Noted<String> named) {
        Optional.ofNullable(lots.get(Ids.key(named.value()))).flatMap(NeedleLot::gathered).ifPresent(gathered -> {
            if (gathered.value().isAfter(entry.date())) {
                findings.warning(named.place(),
                        "needles of “" + named.written() + "” were gathered on " + gathered.value()
                        + ", after this dye day of " + entry.date() + "; check both dates, and whether another lot is "
                        + "meant");
            }
        });
    }

    private void earlier(Entry entry, Noted<String> named, String what) {
        Optional.ofNullable(entries.get(Ids.key(named.value()))).ifPresent(other -> {
            if (other.date().isAfter(entry.date())) {
                findings.warning(named.place(), what + " came from “" + named.written() + "”, dyed on " + other.date()
                        + ", after this dye day of " + entry.date() + "; name an earlier entry");
            }
        });
    }
}
