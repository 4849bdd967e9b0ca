package fascicle.workings;

import fascicle.colour.Lab;
import fascicle.notebook.Entry;
import fascicle.notebook.Outcome;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Entries that have something in common.
 *
 * @param kind what they have in common
 * @param id which one: a family's name in lower case with hyphens, a condition's, lot's, dye's or method's id, a day
 *     ({@code 2026-05-09}) or a year
 * @param title what it is called
 * @param entries its entries, oldest first
 * @param days its dye days by verdict
 * @param median the median colour of the entries that worked
 * @param start the recipe to start from
 */
public record Group(Kind kind, String id, String title, List<EntryWorking> entries, VerdictDays days,
        Optional<Lab> median, Optional<Start> start) {

    /** What entries may have in common. */
    public enum Kind {
        /** The ISCC–NBS hue group of the result. */
        FAMILY,
        /** The condition of the needles. */
        CONDITION,
        /** The needle lot. */
        LOT,
        /** A dye or assistant that was used. */
        DYE,
        /** The method followed, itself or through another. */
        METHOD,
        /** The dye day. */
        DAY,
        /** The year. */
        YEAR;

        /**
         * The kind in words of the data.
         *
         * @return lower case
         */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * Dye days, not pots: a day on which one pot worked and another failed counts under both verdicts and once in all.
     *
     * @param worked days with an entry that worked
     * @param partly days with an entry that partly worked
     * @param failed days with an entry that failed
     * @param judged days with any of these
     * @param all days with any entry
     */
    public record VerdictDays(int worked, int partly, int failed, int judged, int all) {

        /** No days at all. */
        public static final VerdictDays NONE = new VerdictDays(0, 0, 0, 0, 0);

        /**
         * Counts the dye days of some entries.
         *
         * @param entries any entries
         * @return their days by verdict
         */
        public static VerdictDays of(List<EntryWorking> entries) {
            return new VerdictDays(days(entries, Outcome.Verdict.WORKED), days(entries, Outcome.Verdict.PARTLY),
                    days(entries, Outcome.Verdict.FAILED), days(entries, entry -> entry.verdict().isPresent()),
                    days(entries, entry -> true));
        }

        private static int days(List<EntryWorking> entries, Outcome.Verdict verdict) {
            return days(entries, entry -> entry.verdict().filter(verdict::equals).isPresent());
        }

        private static int days(List<EntryWorking> entries, Predicate<Entry> counted) {
            return (int) entries.stream().map(EntryWorking::entry).filter(counted).map(Entry::date).distinct().count();
        }

        /**
         * On how many of the days with a verdict something worked.
         *
         * @return the share; nothing where no day has a verdict
         */
        public Optional<Share> share() {
            return judged == 0 ? Optional.empty() : Optional.of(new Share(worked, judged));
        }
    }

    /**
     * The entries to look at first: those that worked, the most even first; of equals the nearest to its target, then
     * the newest.
     *
     * @param most how many at most
     * @return up to so many entries
     */
    public List<EntryWorking> best(int most) {
        return entries.stream().filter(EntryWorking::worked).sorted(Best.FIRST).limit(most).toList();
    }

    /**
     * The recipe to start from.
     *
     * @param entry the entry that shows it
     * @param days on how many dye days the same recipe worked
     */
    public record Start(EntryWorking entry, int days) {

        /**
         * Whether it worked on one day only.
         *
         * @return true for a single success
         */
        public boolean once() {
            return days == 1;
        }
    }
}
