package fascicle.book.lookup;

import fascicle.colour.Lab;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What is looked for.
 *
 * @param words words as typed, or a tag; blank for any
 * @param chosen ids by trait, spelt as in the book: one of a trait's is enough, every trait must fit
 * @param near the colour that answers are compared with
 * @param order the order of the answers; left out, the nearest first where a colour is given, else the newest
 */
public record Question(String words, Map<Trait, Set<String>> chosen, Optional<Lab> near, Optional<Order> order) {

    /** Asks for every entry. */
    public static final Question ANY = new Question("", Map.of(), Optional.empty(), Optional.empty());

    /** A question that does not change. */
    public Question {
        chosen = Map.copyOf(chosen);
    }

    /**
     * The same question with other words.
     *
     * @param typed words, or a tag
     * @return a copy
     */
    public Question words(String typed) {
        return new Question(typed, chosen, near, order);
    }

    /**
     * The same question with one more choice.
     *
     * @param trait what is chosen by
     * @param id what is chosen
     * @return a copy
     */
    public Question choosing(Trait trait, String id) {
        Map<Trait, Set<String>> more = new EnumMap<>(Trait.class);
        more.putAll(chosen);
        Set<String> ids = new LinkedHashSet<>(chosen.getOrDefault(trait, Set.of()));
        ids.add(id);
        more.put(trait, ids);
        return new Question(words, more, near, order);
    }

    /**
     * The same question near a colour.
     *
     * @param colour what to compare with
     * @return a copy
     */
    public Question near(Lab colour) {
        return new Question(words, chosen, Optional.of(colour), order);
    }

    /**
     * The same question in another order.
     *
     * @param wanted the order
     * @return a copy
     */
    public Question in(Order wanted) {
        return new Question(words, chosen, near, Optional.of(wanted));
    }

    /** The order that is meant; nothing is near where no colour is given. */
    Order meant() {
        Order meant = order.orElse(near.isPresent() ? Order.NEAR : Order.DATE);
        return meant == Order.NEAR && near.isEmpty() ? Order.DATE : meant;
    }
}
