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
 */
public record Method(String id, Place place, Optional<Noted<String>> title, Edition share,
        Optional<Noted<String>> follows, Optional<Noted<Quantity>> forWeight, Optional<Noted<Skill>> skill,
        Needles needles, Recipe recipe, Optional<Reading> target, List<Note> notes) {

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
        return new Method(id, place, title, share, follows, forWeight, skill, needles, recipe, target, changed);
    }

    /**
     * The plain facts of a method that is not shared itself, but which something shown follows.
     *
     * @return a copy with its title and skill, and nothing of its recipe or words
     */
    public Method plainFacts() {
        return new Method(id, place, title, share, follows, Optional.empty(), skill, Needles.UNSAID, Recipe.UNSAID,
                Optional.empty(), List.of());
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
