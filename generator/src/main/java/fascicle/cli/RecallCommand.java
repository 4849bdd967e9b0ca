package fascicle.cli;

import fascicle.book.data.Answers;
import fascicle.book.lookup.Answer;
import fascicle.book.lookup.Lookup;
import fascicle.book.lookup.Order;
import fascicle.book.lookup.Question;
import fascicle.book.lookup.Trait;
import fascicle.book.words.Words;
import fascicle.notebook.Edition;
import fascicle.notebook.Notebook;
import fascicle.notebook.read.Suggestion;
import fascicle.workings.Workings;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Looks entries up, as the book's own look-up does. */
@Command(name = "recall", mixinStandardHelpOptions = true,
        description = "Looks entries up: by words or a tag, by what they have in common, or near a colour. Each of "
                + "CONDITION, LOT, DYE, METHOD, FAMILY, YEAR and VERDICT may be given several times; any one of them "
                + "is enough.")
final class RecallCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Parameters(index = "0", paramLabel = "NOTEBOOK", description = "The notebook's folder.")
    private Path notebook = Path.of("");

    @Parameters(index = "1..*", arity = "0..*", paramLabel = "WORDS",
            description = "Words of titles and notes, or their beginnings; or a tag.")
    private List<String> words = List.of();

    @Option(names = "--condition", paramLabel = "CONDITION", description = "What was done to the needles: scalded.")
    private List<String> conditions = List.of();

    @Option(names = "--lot", paramLabel = "LOT", description = "The id of a needle lot.")
    private List<String> lots = List.of();

    @Option(names = "--dye", paramLabel = "DYE", description = "The id of a dye or an assistant.")
    private List<String> dyes = List.of();

    @Option(names = "--method", paramLabel = "METHOD", description = "The id of a method.")
    private List<String> methods = List.of();

    @Option(names = "--family", paramLabel = "FAMILY", description = "A colour family: brown, yellow-green.")
    private List<String> families = List.of();

    @Option(names = "--year", paramLabel = "YEAR", description = "A year: 2026.")
    private List<String> years = List.of();

    @Option(names = "--verdict", paramLabel = "VERDICT", description = "worked, partly or failed.")
    private List<String> verdicts = List.of();

    @Option(names = "--near", paramLabel = "COLOUR",
            description = "The nearest first: a screen colour (#7f4632), Lab (36.2,27.4,20.1), or an entry's "
                    + "tag or id.")
    private String near = "";

    @Option(names = "--order", paramLabel = "ORDER",
            description = "date (the newest first), evenness, lightness, hue, owf or near.")
    private String order = "";

    @Option(names = "--json", description = "Print the entries as data.")
    private boolean json;

    RecallCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        Notebook sound = NotebookFolder.sound(notebook, terminal);
        Workings workings = Workings.of(sound);
        Question question = question(workings);
        Words said = Words.shipped();
        Answer answer = Lookup.of(workings, said).ask(question);
        if (json) {
            terminal.print(Answers.recalled(answer.found(), workings, Edition.STUDIO));
        } else {
            RecalledWords shown = new RecalledWords(workings, said, terminal.coloured());
            answer.found().forEach(found -> shown.of(found).forEach(terminal::print));
        }
        RecalledWords.remarks(answer, said).forEach(terminal::say);
        leftOut(sound);
        return answer.found().isEmpty() ? Status.ERRORS : Status.DONE;
    }

    private Question question(Workings workings) {
        Question question = Question.ANY.words(String.join(" ", words));
        KnownChoices known = new KnownChoices(workings);
        for (Trait trait : Trait.values()) {
            for (String id : given(trait)) {
                question = question.choosing(trait, known.id(trait, id));
            }
        }
        if (!near.isEmpty()) {
            NearColour.Taken taken = NearColour.of(near, workings);
            taken.remark().ifPresent(terminal::say);
            question = question.near(taken.colour());
        }
        return order.isEmpty() ? question : question.in(meant());
    }

    private Order meant() {
        List<String> known = Stream.of(Order.values()).map(Order::word).toList();
        Order meant = Order.named(order).orElseThrow(() -> new WrongCall("“" + order + "” is no order; "
                + Suggestion.of(order, known).map(nearest -> "did you mean “" + nearest + "”?")
                        .orElse("write one of " + String.join(", ", known) + ".")));
        if (meant == Order.NEAR && near.isEmpty()) {
            throw new WrongCall("The order “near” needs a colour; name it with --near.");
        }
        return meant;
    }

    private List<String> given(Trait trait) {
        return switch (trait) {
            case CONDITION -> conditions;
            case VERDICT -> verdicts;
            case YEAR -> years;
            case FAMILY -> families;
            case LOT -> lots;
            case DYE -> dyes;
            case METHOD -> methods;
        };
    }

    private void leftOut(Notebook read) {
        int missing = read.missing().size();
        if (missing > 0) {
            terminal.say((missing == 1 ? "1 file or pot has" : missing + " files or pots have")
                    + " errors and could not be looked at; see: " + Called.program() + " proof "
                    + CommandLinePath.of(notebook));
        }
    }
}
