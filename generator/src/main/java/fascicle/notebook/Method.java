package fascicle.notebook;

import fascicle.measure.Quantity;
import java.util.List;
import java.util.Optional;

/**
 * A way of working that entries follow and students are taught, with what it leaves to the method it follows filled
 * in.
 *
 * @param id its file's name
 * @param place where its file begins
 * @param title its title; nothing where the id must do
 * @param share who may see more than its title
 * @param follows the id of the method it follows
 * @param forWeight the weight of dry needles its amounts are for
 * @param skill whom it suits
 * @param needles what it says of the needles
 * @param recipe what is done
 * @param target the colour it aims at
 * @param notes its steps, in the maker's words
 * @param titleOnly whether nothing but its title may be shown: it is not shared itself, and its recipe is here only for
 *     the arithmetic of entries that follow it
 */
public record Method(String id, Place place, Optional<Noted<String>> title, Edition share,
        Optional<Noted<String>> follows, Optional<Noted<Quantity>> forWeight, Optional<Noted<Skill>> skill,
        Needles needles, Recipe recipe, Optional<Reading> target, List<Note> notes,
        boolean titleOnly) {

    /**
     * What the method is called.
     *
     * @return its title, or its id where it has none
     */
    public String called() {
        return title.map(Noted::value).orElse(id);
    }

    /**
     * The same method with other words.
     *
     * @param changed its notes
     * @return a copy
     */
    public Method withNotes(List<Note> changed) {
        return new Method(id, place, title, share, follows, forWeight, skill, needles, recipe, target, changed,
                titleOnly);
    }

    /**
     * The method as it stands behind entries that are shown where it is not shared itself.
     *
     * @return a copy of which only the title may be shown
     */
    public Method behindEntries() {
        return new Method(id, place, title, share, follows, forWeight, skill, needles, recipe, target, List.of(),
                true);
    }

    /** Whom a method suits. */
    public enum Skill implements Word {
        /** A first dye day. */
        FIRST,
        /** Some practice. */
        SOME,
        /** A sure hand. */
        SURE
    }
}
