package fascicle.book.lookup;

import fascicle.book.figures.Figures;
import fascicle.book.words.Words;
import fascicle.notebook.Dye;
import fascicle.notebook.HeatStep;
import fascicle.notebook.Ids;
import fascicle.notebook.Notebook;
import fascicle.notebook.Noted;
import fascicle.notebook.Span;
import fascicle.workings.EntryWorking;
import fascicle.workings.PartFigures;
import fascicle.workings.Workings;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What an answer says of an entry beside its name: in few words what was done and what came out. */
public final class Gist {

    private final Words words;
    private final Figures figures;
    private final Map<String, Dye> dyes;

    /**
     * Gists of one edition's entries.
     *
     * @param workings what they are of
     * @param words the book's words
     */
    public Gist(Workings workings, Words words) {
        this.words = words;
        this.figures = new Figures(words);
        this.dyes = Notebook.byId(workings.notebook().dyes(), Dye::id);
    }

    /**
     * A thing and how much of it.
     *
     * @param title what it is called
     * @param amount how much; nothing where unknown
     */
    public record Part(String title, Optional<String> amount) {

        /**
         * Both in words.
         *
         * @return such as {@code Brick 1.5 %}
         */
        public String text() {
            return amount.map(known -> title + " " + known).orElse(title);
        }
    }

    /**
     * The dyes, each with its share on the weight of the needles.
     *
     * @param working an entry
     * @return in the order of the recipe
     */
    public List<Part> dyes(EntryWorking working) {
        return working.bath().dye().stream().map(dye -> new Part(dye.called(),
                figures.amount(dye.owfPercent(), "percent", dye.about() || dye.spooned()))).toList();
    }

    /**
     * The bath's first acid.
     *
     * @param working an entry
     * @return with its volume or mass, else as written
     */
    public Optional<Part> acid(EntryWorking working) {
        return working.bath().assistants().stream().filter(this::isAcid).findFirst().map(acid ->
                new Part(acid.called(), figures.amount(acid.ml(), "ml", acid.amountAbout())
                        .or(() -> figures.amount(acid.grams(), "g", acid.amountAbout() || acid.spooned()))
                        .or(acid::asWritten)));
    }

    private boolean isAcid(PartFigures part) {
        return Optional.ofNullable(dyes.get(Ids.key(part.is()))).flatMap(Dye::kind).map(Noted::value)
                .filter(Dye.Kind.ACID::equals).isPresent();
    }

    /**
     * The longest hold of the bath, and where it was held.
     *
     * @param working an entry
     * @return such as {@code 88 °C, 2 h}; nothing where nothing was held
     */
    public Optional<String> hold(EntryWorking working) {
        Optional<HeatStep> longest = Optional.empty();
        for (HeatStep step : working.entry().recipe().heat()) {
            if (step.hold().isPresent() && (longest.isEmpty() || minutes(step) > minutes(longest.get()))) {
                longest = Optional.of(step);
            }
        }
        return longest.map(step -> {
            List<String> pieces = new ArrayList<>();
            step.to().ifPresent(to -> pieces.add(reached(to.value())));
            step.hold().ifPresent(hold -> pieces.add(hold.value() instanceof Span.Overnight
                    ? words.say("span.overnight") : hold.written()));
            return String.join(words.say("pieces"), pieces);
        });
    }

    /** Overnight is longer than any time that is written beside it. */
    private static double minutes(HeatStep step) {
        return step.hold().map(hold -> hold.value() instanceof Span.Timed timed
                ? timed.time().value() : Double.POSITIVE_INFINITY).orElse(0.0);
    }

    private String reached(HeatStep.To to) {
        return to instanceof HeatStep.Degrees degrees ? figures.amount(degrees.temperature().value(), "celsius",
                degrees.temperature().about()) : words.name("look", (HeatStep.Look) to);
    }

    /**
     * How evenly the batch took.
     *
     * @param working an entry
     * @return such as {@code 4 of 5}
     */
    public Optional<String> evenness(EntryWorking working) {
        int evenness = Lookup.evenness(working);
        return evenness == 0 ? Optional.empty() : Optional.of(words.say("evenness", evenness));
    }
}
