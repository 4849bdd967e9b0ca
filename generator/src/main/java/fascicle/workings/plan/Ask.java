package fascicle.workings.plan;

import fascicle.notebook.Vessel;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;

/**
 * What is to be planned.
 *
 * @param choices the methods or entries, the first to be begun first
 * @param gramsEach dry needles that each person dyes by each of them, g; above 0
 * @param people how many people; 1 or more
 * @param minors whether anyone among them is under eighteen
 * @param start when work begins; nothing where that is open
 */
public record Ask(List<Choice> choices, double gramsEach, int people, boolean minors, Optional<LocalDateTime> start) {

    /**
     * A method, or an entry to be done again, and what it is done in.
     *
     * @param id its id, in any case
     * @param vessel what its bath stands in; nothing for its own
     */
    public record Choice(String id, Optional<Vessel> vessel) {}

    /**
     * What is to be planned.
     *
     * @throws IllegalArgumentException if there is nothing to do, no weight or nobody
     */
    public Ask {
        if (choices.isEmpty() || !(gramsEach > 0) || !Double.isFinite(gramsEach) || people < 1) {
            throw new IllegalArgumentException("nothing to plan: " + choices + ", " + gramsEach + " g, " + people);
        }
    }

    /**
     * The needles of one method.
     *
     * @return in g
     */
    public double gramsOfMethod() {
        return gramsEach * people;
    }

    /**
     * Whether it is a class: then others than the maker handle what is planned.
     *
     * @return false for the maker alone
     */
    public boolean isClass() {
        return people > 1 || minors;
    }
}
