package fascicle.notebook;

import fascicle.measure.Quantity;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Needles gathered and prepared together.
 *
 * @param id its file's name
 * @param place where its file begins
 * @param title its title; nothing where the id must do
 * @param share who may see more than the plain facts
 * @param species the pine's botanical name
 * @param condition the id of a condition
 * @param gathered when
 * @param length of a needle
 * @param weight of the lot
 * @param bundle how bundles were weighed
 * @param colour readings of the bare needles
 * @param blank readings of needles that went through presoak and heat without dye
 * @param notes the maker's words
 */
public record NeedleLot(String id, Place place, Optional<Noted<String>> title, Edition share,
        Optional<Noted<String>> species, Optional<Noted<String>> condition, Optional<Noted<LocalDate>> gathered,
        Optional<Noted<Quantity>> length, Optional<Noted<Quantity>> weight, Optional<Bundle> bundle,
        List<Reading> colour, List<Reading> blank, List<Note> notes) {

    /**
     * Bundles weighed together.
     *
     * @param weight of all of them
     * @param counted how many there were
     */
    public record Bundle(Noted<Quantity> weight, Noted<Double> counted) {

        /**
         * The weight of one bundle.
         *
         * @return in grams
         */
        public double grams() {
            return weight.value().value() / counted.value();
        }
    }

    /**
     * What the lot is called.
     *
     * @return its title, or its id where it has none
     */
    public String called() {
        return title.map(Noted::value).orElse(id);
    }

    /**
     * Every colour that was read of this lot.
     *
     * @return the readings of the bare needles, then those of the blank
     */
    public List<Reading> readings() {
        return Stream.concat(colour.stream(), blank.stream()).toList();
    }

    /**
     * The plain facts of a lot that is not shared itself: what its needles are and what figures of entries rest on.
     *
     * @return a copy without date, stock and words
     */
    public NeedleLot plainFacts() {
        return new NeedleLot(id, place, title, share, species, condition, Optional.empty(), length, Optional.empty(),
                bundle, colour, List.of(), List.of());
    }

    /**
     * The same lot with other words.
     *
     * @param changed its notes
     * @return a copy
     */
    public NeedleLot withNotes(List<Note> changed) {
        return new NeedleLot(id, place, title, share, species, condition, gathered, length, weight, bundle, colour,
                blank, changed);
    }

    /**
     * The same lot with other readings.
     *
     * @param bare of the bare needles
     * @param undyed of needles that went through the steps without dye
     * @return a copy
     */
    public NeedleLot withReadings(List<Reading> bare, List<Reading> undyed) {
        return new NeedleLot(id, place, title, share, species, condition, gathered, length, weight, bundle, bare,
                undyed, notes);
    }
}
