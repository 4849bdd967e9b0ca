package fascicle.workings;

import fascicle.notebook.Entry;
import fascicle.notebook.Findings;
import fascicle.notebook.Ids;
import fascicle.notebook.Kept;
import fascicle.notebook.NeedleLot;
import fascicle.notebook.Notebook;
import fascicle.notebook.Noted;
import fascicle.notebook.Today;
import fascicle.notebook.WindowReading;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;

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
        notebook.lots().forEach(lot -> lot.gathered().ifPresent(date -> ahead("gathered", date, newest)));
        notebook.dyes().forEach(dye -> dye.bought().forEach(purchase -> purchase.on()
                .ifPresent(date -> ahead("on", date, newest))));
        notebook.entries().forEach(entry -> entry.kept().flatMap(Kept::since)
                .ifPresent(date -> ahead("since", date, newest)));
        for (Entry entry : notebook.entries()) {
            entry.window().forEach(window -> read(entry, window, newest));
            entry.needles().lot().ifPresent(lot -> gathered(entry, lot));
            entry.needles().from().ifPresent(from -> earlier(entry, from, "the needles"));
            entry.recipe().bath().reuses().ifPresent(reuses -> earlier(entry, reuses, "the bath"));
            entry.kept().flatMap(Kept::since).ifPresent(since -> {
                if (since.value().isBefore(entry.date())) {
                    findings.warning(since.place(), "kept since “" + since.written() + "”, but the needles were dyed on "
                            + entry.date() + "; one of the dates is wrong");
                }
            });
        }
    }

    private void ahead(String key, Noted<LocalDate> date, Optional<LocalDate> newest) {
        if (Today.isFarAhead(date.value(), newest)) {
            findings.warning(date.place(), "“" + key + ": " + date.written() + "” is more than a year after the newest dye "
                    + "day, " + newest.orElseThrow() + ", and does not count as today; check the year");
        }
    }

    private void read(Entry entry, WindowReading window, Optional<LocalDate> newest) {
        LocalDate date = window.on(entry.date());
        if (Today.isFarAhead(date, newest)) {
            findings.warning(window.after().place(), "“after: " + window.after().written() + "” puts this reading on " + date
                    + ", more than a year after the newest dye day, " + newest.orElseThrow() + ", and does not count as today; "
                    + "check the figure and its unit, such as “after: 6 weeks”");
        }
    }

    private void gathered(Entry entry, Noted<String> named) {
        Optional.ofNullable(lots.get(Ids.key(named.value()))).flatMap(NeedleLot::gathered).ifPresent(gathered -> {
            if (gathered.value().isAfter(entry.date())) {
                findings.warning(named.place(), "needles of “" + named.written() + "” were gathered on " + gathered.value()
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
