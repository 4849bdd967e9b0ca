package fascicle.book.gist;

import fascicle.book.figures.Figures;
import fascicle.book.words.Words;
import fascicle.notebook.Conditions;
import fascicle.notebook.Dye;
import fascicle.notebook.Ids;
import fascicle.notebook.Needles;
import fascicle.notebook.Noted;
import fascicle.notebook.Notebook;
import fascicle.notebook.Outcome;
import fascicle.workings.EntryWorking;
import fascicle.workings.NeedleFigures;
import fascicle.workings.PartFigures;
import fascicle.workings.Workings;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What was done and what came out, in few words: needles, dyes, acid, liquor ratio, hold, evenness. */
public final class Gist {

    private final Words words;
    private final Figures figures;
    private final Amounts amounts;
    private final Heating heating;
    private final Conditions conditions;
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
        this.amounts = new Amounts(words);
        this.heating = new Heating(words);
        this.conditions = Conditions.of(workings.notebook().cover());
        this.dyes = Notebook.byId(workings.notebook().dyes(), Dye::id);
    }

    /**
     * A thing and how much of it.
     *
     * @param title what it is called
     * @param amount how much; nothing where unknown
     */
    public record Part(String title, Optional<String> amount) {}

    /**
     * What was done, in one line.
     *
     * @param working an entry
     * @return empty where nothing of it is known
     */
    public String line(EntryWorking working) {
        return Stream.of(needles(working), together(dyes(working)), together(acids(working)),
                        figures.amount(working.bath().ratio(), "ratio", working.bath().about()), held(working))
                .flatMap(Optional::stream).collect(Collectors.joining(words.say("gist.between")));
    }

    /**
     * The dyes of the bath.
     *
     * @param working an entry
     * @return in the order of the recipe
     */
    public List<Part> dyes(EntryWorking working) {
        return working.bath().dye().stream().map(this::part).toList();
    }

    /**
     * The acids of the bath.
     *
     * @param working an entry
     * @return in the order of the recipe
     */
    public List<Part> acids(EntryWorking working) {
        return working.bath().assistants().stream().filter(this::isAcid).map(this::part).toList();
    }

    /**
     * How long and where the needles were held.
     *
     * @param working an entry
     * @return such as {@code held 2 h at 88 °C}; nothing where the recipe says neither
     */
    public Optional<String> held(EntryWorking working) {
        return heating.held(working.entry().recipe().heat());
    }

    /**
     * How evenly the batch took.
     *
     * @param working an entry
     * @return such as {@code 4 of 5}
     */
    public Optional<String> evenness(EntryWorking working) {
        return working.entry().outcome().flatMap(Outcome::evenness)
                .map(evenness -> words.say("evenness", evenness.value()));
    }

    /**
     * A part in words.
     *
     * @param part a dye or an acid
     * @return such as {@code Brick 1.5 % owf}
     */
    public String said(Part part) {
        return part.amount().map(amount -> words.say("gist.part", part.title(), amount)).orElse(part.title());
    }

    private Optional<String> needles(EntryWorking working) {
        NeedleFigures needles = working.needles();
        Needles.Weighed state = working.entry().needles().state();
        Optional<String> condition = needles.condition()
                .map(id -> conditions.find(id).map(Conditions.Condition::title).orElse(id));
        Optional<String> weight = figures.amount(needles.grams(), "g", needles.about());
        Optional<String> weighed = weight.isEmpty() || state == Needles.Weighed.DRY ? Optional.empty()
                : Optional.of(words.name("weighed", state));
        String text = Stream.of(condition, weight, weighed).flatMap(Optional::stream)
                .collect(Collectors.joining(words.say("pieces")));
        return text.isEmpty() ? Optional.empty() : Optional.of(text);
    }

    private boolean isAcid(PartFigures part) {
        return Optional.ofNullable(dyes.get(Ids.key(part.is()))).flatMap(Dye::kind).map(Noted::value)
                .filter(Dye.Kind.ACID::equals).isPresent();
    }

    private Part part(PartFigures part) {
        return new Part(part.called(), amounts.inBrief(part));
    }

    private Optional<String> together(List<Part> parts) {
        return parts.isEmpty() ? Optional.empty()
                : Optional.of(parts.stream().map(this::said).collect(Collectors.joining(words.say("gist.and"))));
    }
}
