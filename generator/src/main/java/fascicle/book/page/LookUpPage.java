package fascicle.book.page;

import java.util.List;

/**
 * The page on which entries are looked up: what may be asked, which the page's script answers, and the lists that lead
 * to the same entries without a script.
 *
 * @param frame what stands round it
 * @param entries how many entries the book holds
 * @param groups what may be chosen, the readiest first
 * @param orders in which orders the answers may stand, the usual one first
 * @param lists the lists that lead to the same entries
 * @param verdicts the marks that entries bear in the lists
 * @param sheet a swatch that the script fills in
 */
public record LookUpPage(Frame frame, int entries, List<ChoiceGroup> groups, List<Order> orders, List<Link> lists,
        List<Verdict> verdicts, Markup sheet) implements Page {

    @Override
    public String template() {
        return "look-up.ftlh";
    }

    /**
     * Choices of one kind; an entry answers if it is one of those chosen.
     *
     * @param part the question's part, as addresses spell it
     * @param title what is chosen
     * @param open whether it always stands open
     * @param plain whether its choices are lists that a reader without scripts would want at hand
     * @param choices the choices
     */
    public record ChoiceGroup(String part, String title, boolean open, boolean plain, List<Choice> choices) {}

    /**
     * One choice.
     *
     * @param id as addresses spell it
     * @param list what it is called, and the way to the list of its entries where the book has one
     * @param count how many entries it has
     */
    public record Choice(String id, Link list, int count) {}

    /**
     * An order of the answers.
     *
     * @param id as addresses spell it
     * @param title what the answers go by
     */
    public record Order(String id, String title) {}
}
