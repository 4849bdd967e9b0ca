package fascicle.notebook;

import fascicle.bath.Amount;
import fascicle.bath.Basis;
import java.util.Optional;

/**
 * One line of a recipe: a thing and how much of it.
 *
 * @param is the id of a dye or assistant
 * @param amount how much; nothing where the maker left it out
 * @param by what a bare amount follows when the batch grows; nothing where left to the rule
 * @param at how long after the start it is added; nothing where it is in from the start
 */
public record Part(Noted<String> is, Optional<Noted<Amount>> amount, Optional<Noted<Basis>> by,
        Optional<Noted<Span>> at) {}
