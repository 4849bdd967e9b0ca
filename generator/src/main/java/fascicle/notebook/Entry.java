package fascicle.notebook;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One pot on one dye day, with what it leaves out filled in.
 *
 * @param id its day and its name: {@code 2026-05-09-brick-half}
 * @param date the dye day
 * @param name its file's or its pot's name
 * @param place where it begins
 * @param title its title; nothing where the name must do
 * @param tag the short number on the bag
 * @param share who may see it
 * @param method the id of the method it follows
 * @param needles its bundle
 * @param recipe what was done
 * @param colour readings of the dyed needles
 * @param glass the bath in a glass
 * @param target the colour that was aimed at
 * @param outcome how it came out
 * @param fastness how it rubs
 * @param window how it fades
 * @param kept what is left of it
 * @param notes the maker's words about this pot
 */
public record Entry(String id, LocalDate date, String name, Place place, Optional<Noted<String>> title,
        Optional<Noted<String>> tag, Edition share, Optional<Noted<String>> method, Needles needles, Recipe recipe,
        List<Reading> colour, Optional<Glass> glass, Optional<Reading> target, Optional<Outcome> outcome,
        Optional<Fastness> fastness, List<WindowReading> window, Optional<Kept> kept, List<Note> notes) {

    /**
     * What the entry is called.
     *
     * @return its title, or its name where it has none
     */
    public String called() {
        return title.map(Noted::value).orElse(name);
    }

    /**
     * The verdict, if one was given.
     *
     * @return whether it worked
     */
    public Optional<Outcome.Verdict> verdict() {
        return outcome.flatMap(Outcome::verdict).map(Noted::value);
    }

    /**
     * Every colour that was read or judged for this entry, of needles, baths and cloths alike.
     *
     * @return the readings, in the order of the form
     */
    public List<Reading> readings() {
        Stream<Reading> glasses = glass.stream().flatMap(bath ->
                Stream.of(bath.plain(), bath.before(), bath.after()).flatMap(Optional::stream));
        Stream<Reading> cloths = fastness.stream().flatMap(rubbed -> Stream.of(rubbed.rubDry(), rubbed.rubWet()))
                .flatMap(Optional::stream).flatMap(rub -> rub.readings().stream());
        return Stream.of(colour.stream(), glasses, target.stream(), cloths, window.stream().map(WindowReading::reading))
                .flatMap(readings -> readings).toList();
    }

    /**
     * The same entry with other words.
     *
     * @param changed its notes
     * @return a copy
     */
    public Entry withNotes(List<Note> changed) {
        return new Entry(id, date, name, place, title, tag, share, method, needles, recipe, colour, glass, target,
                outcome, fastness, window, kept, changed);
    }

    /**
     * The same entry with other references to entries.
     *
     * @param bundle its needles
     * @param steps its recipe
     * @param readings its colour
     * @return a copy
     */
    public Entry withReferences(Needles bundle, Recipe steps, List<Reading> readings) {
        return new Entry(id, date, name, place, title, tag, share, method, bundle, steps, readings, glass, target,
                outcome, fastness, window, kept, notes);
    }

    /**
     * The same entry with other readings.
     *
     * @param readings of the dyed needles
     * @param glasses of the bath
     * @param aim of the target
     * @param rubbed of cloths
     * @param faded of the half in the light
     * @return a copy
     */
    public Entry withReadings(List<Reading> readings, Optional<Glass> glasses, Optional<Reading> aim,
            Optional<Fastness> rubbed, List<WindowReading> faded) {
        return new Entry(id, date, name, place, title, tag, share, method, needles, recipe, readings, glasses, aim,
                outcome, rubbed, faded, kept, notes);
    }

    /**
     * The same entry without what is the studio's own: what was kept of it.
     *
     * @return a copy
     */
    public Entry withoutKept() {
        return new Entry(id, date, name, place, title, tag, share, method, needles, recipe, colour, glass, target,
                outcome, fastness, window, Optional.empty(), notes);
    }
}
