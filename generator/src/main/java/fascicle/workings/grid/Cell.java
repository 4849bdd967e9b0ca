package fascicle.workings.grid;

import fascicle.colour.Lab;
import fascicle.notebook.Outcome;
import fascicle.workings.ColourFigures;
import fascicle.workings.EntryWorking;
import fascicle.workings.Group;
import fascicle.workings.Workings;
import java.util.List;
import java.util.Optional;

/**
 * Entries that meet in one place of a grid.
 *
 * @param entries the entries, oldest first; none where it was never tried
 * @param days their dye days by verdict
 * @param median their colour, as far as they came out
 */
public record Cell(List<EntryWorking> entries, Group.VerdictDays days, Optional<Median> median) {

    /**
     * The median colour of some of a cell's entries.
     *
     * @param colour the median, coordinate by coordinate
     * @param of which entries it is taken from
     * @param entries those that have a colour
     */
    public record Median(Lab colour, Outcome.Verdict of, List<EntryWorking> entries) {}

    /** A cell whose colour is that of what worked. */
    static Cell ofWhatWorked(Workings workings, List<EntryWorking> entries) {
        return new Cell(List.copyOf(entries), workings.days(entries),
                median(entries, Outcome.Verdict.WORKED));
    }

    /** A cell whose colour is that of what worked; where nothing did, of what partly worked. */
    static Cell ofWhatCameOut(Workings workings, List<EntryWorking> entries) {
        return new Cell(List.copyOf(entries), workings.days(entries),
                median(entries, Outcome.Verdict.WORKED).or(() -> median(entries, Outcome.Verdict.PARTLY)));
    }

    private static Optional<Median> median(List<EntryWorking> entries, Outcome.Verdict verdict) {
        List<EntryWorking> coloured = entries.stream()
                .filter(entry -> entry.entry().verdict().filter(verdict::equals).isPresent())
                .filter(entry -> entry.colour().isPresent()).toList();
        List<Lab> colours = coloured.stream().flatMap(entry -> entry.colour().stream()).map(ColourFigures::lab)
                .toList();
        return colours.isEmpty() ? Optional.empty() : Optional.of(new Median(Lab.median(colours), verdict, coloured));
    }
}
