package fascicle.book.lookup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.book.SampleNotebook;
import fascicle.book.words.Words;
import fascicle.colour.ColourDifference;
import fascicle.colour.Lab;
import fascicle.notebook.Edition;
import fascicle.notebook.WrittenNotebook;
import fascicle.notebook.edition.EditionCut;
import fascicle.workings.Workings;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a maker asks of a notebook, and what it answers. */
class LookupTest {

    private static final Words WORDS = Words.shipped();

    @TempDir
    private Path folder;

    private Lookup book = Lookup.of(Workings.of(SampleNotebook.with(List.of())), WORDS);

    @BeforeEach
    void write() {
        WrittenNotebook.small(folder)
                .with("needles/faded-2024.md", "---\ntitle: Faded needles\nspecies: Pinus nigra\ncondition: light-faded\n"
                        + "---\nFrom the ridge above the lake.\n")
                .with("dyes/ochre.md", "---\ntitle: Ochre\nkind: dye\nform: powder\n---\nClumps in cold water.\n")
                .with("days/2025-04-01/gold.md", entry("Gold on faded needles", "7", "faded-2024", "ochre", "3 % owf",
                        "[62.0, 12.0, 48.0]", "worked", 5, "Took at once. Une drôle de lumière."))
                .with("days/2026-05-09/brick.md", entry("Brick, full strength", "41", "scalded-2025", "brick",
                        "2 % owf", "[36.2, 27.4, 20.1]", "worked", 4, "Even to the tips."))
                .with("days/2026-05-09/brick-half.md", entry("Brick, half strength", "42", "scalded-2025", "brick",
                        "1 % owf", "[44.0, 22.0, 18.0]", "partly", 2, "Patchy near the sheath."))
                .with("days/2026-06-20/grey.md", entry("Ashes", "brick", "faded-2024", "ochre", "0.5 % owf",
                        "[50.0, 1.0, 2.0]", "failed", 3, "Hardly any colour; see tag 41."))
                .with("days/2026-07-01/unread.md", "---\nneedles: {lot: scalded-2025}\noutcome: {faults: [uneven]}\n---\n");
        book = Lookup.of(workings(Edition.STUDIO), WORDS);
    }

    private static String entry(String title, String tag, String lot, String dye, String owf, String lab,
            String verdict, int evenness, String notes) {
        return """
                ---
                title: "%s"
                tag: %s
                method: low-water-simmer
                needles: {lot: %s, weight: 45 g}
                bath: {dye: [{is: %s, amount: %s}]}
                colour: [{lab: %s}]
                outcome: {verdict: %s, evenness: %d}
                share: open
                ---
                %s
                """.formatted(title, tag, lot, dye, owf, lab, verdict, evenness, notes);
    }

    private Workings workings(Edition edition) {
        return Workings.of(EditionCut.of(WrittenNotebook.empty(folder).read().notebook(), edition));
    }

    private List<String> ask(Question question) {
        return book.ask(question).found().stream().map(found -> found.entry().entry().name()).toList();
    }

    private List<String> words(String typed) {
        return ask(Question.ANY.words(typed));
    }

    @Test
    void everythingIsThereNewestFirst() {
        assertEquals(List.of("unread", "grey", "brick", "brick-half", "gold"), words(""));
        assertEquals(words(""), words("  …  "));
    }

    @Test
    void everyWordTypedMustBeFoundByItsBeginning() {
        assertEquals(List.of("brick", "brick-half"), words("streng"));
        assertEquals(List.of("brick-half"), words("STRENGTH patch"));
        assertEquals(List.of(), words("strength ashes"));
        assertEquals(List.of("gold"), words("lumiere DROLE"));
    }

    @Test
    void wordsOfTheLotTheDyeTheMethodTheConditionTheColourAndTheFaultsLeadToTheirEntries() {
        assertEquals(List.of("grey", "gold"), words("ridge"));
        assertEquals(List.of("grey", "gold"), words("clumps"));
        assertEquals(List.of("grey", "gold"), words("nigra faded"));
        assertEquals(List.of("unread", "brick", "brick-half"), words("scalded"));
        assertEquals(List.of("grey", "brick", "brick-half", "gold"), words("low-water"));
        assertEquals(List.of("unread"), words("uneven"));
        assertTrue(words("moder reddish").contains("brick"));
        assertEquals(List.of("grey", "brick", "brick-half", "gold"), words("table salt"));
    }

    @Test
    void aTagComesAloneThoughOthersSpeakOfIt() {
        assertEquals(List.of("brick"), words("41"));
        assertEquals(List.of("brick"), words(" 41 "));
        assertEquals(List.of("grey"), words("41 tag"));
        assertEquals(List.of("grey"), words("Brick"), "a tag may be a word");
    }

    @Test
    void aSlipIsForgivenAndSaid() {
        Answer answer = book.ask(Question.ANY.words("pacthy"));
        assertEquals(List.of(new Answer.Instead("pacthy", List.of("patchy"))), answer.instead());
        assertEquals(1, answer.found().size());
        assertEquals(List.of(), book.ask(Question.ANY.words("patc")).instead(), "a beginning is no slip");
        assertEquals(List.of(), words("xyz"), "three letters are too few to guess from");
        assertEquals(List.of(new Answer.Instead("qqqqq", List.of())), book.ask(Question.ANY.words("qqqqq")).instead());
    }

    @Test
    void oneOfATraitIsEnoughAndEveryTraitMustFit() {
        Question worked = Question.ANY.choosing(Trait.VERDICT, "worked");
        assertEquals(List.of("brick", "gold"), ask(worked));
        assertEquals(List.of("brick", "brick-half", "gold"), ask(worked.choosing(Trait.VERDICT, "partly")));
        assertEquals(List.of("brick"), ask(worked.choosing(Trait.YEAR, "2026")));
        assertEquals(List.of("grey", "gold"), ask(Question.ANY.choosing(Trait.DYE, "ochre")));
        assertEquals(List.of(), ask(Question.ANY.choosing(Trait.LOT, "no-such-lot")));
    }

    @Test
    void aCountIsWhatThereWouldBeWithThatChoiceAlone() {
        Answer answer = book.ask(Question.ANY.choosing(Trait.VERDICT, "worked").choosing(Trait.YEAR, "2026"));
        assertEquals(List.of("worked", "partly", "failed"),
                book.choices(Trait.VERDICT).stream().map(Choice::id).toList());
        assertEquals(List.of(1, 1, 1), answer.counts().get(Trait.VERDICT), "of 2026, whatever the verdict");
        assertEquals(List.of(1, 1), answer.counts().get(Trait.YEAR), "of what worked, whatever the year");
        assertEquals(List.of("light-faded", "scalded"), book.choices(Trait.CONDITION).stream().map(Choice::id).toList());
        assertEquals(List.of(0, 1), answer.counts().get(Trait.CONDITION), "of what worked in 2026");
    }

    @Test
    void everyCountIsKeptByTakingTheChoice() {
        Question question = Question.ANY.words("needles").choosing(Trait.YEAR, "2026").choosing(Trait.DYE, "ochre");
        Answer answer = book.ask(question);
        for (Trait trait : Trait.values()) {
            for (int at = 0; at < book.choices(trait).size(); at++) {
                Map<Trait, Set<String>> chosen = new EnumMap<>(Trait.class);
                chosen.putAll(question.chosen());
                chosen.put(trait, Set.of(book.choices(trait).get(at).id()));
                assertEquals(ask(new Question(question.words(), chosen, question.near(), question.order())).size(),
                        answer.counts().getOrDefault(trait, List.of()).get(at), trait + " " + at);
            }
        }
    }

    @Test
    void whereNothingIsFoundItSaysWhatToLeaveOut() {
        Answer answer = book.ask(Question.ANY.words("strength").choosing(Trait.YEAR, "2025")
                .choosing(Trait.CONDITION, "light-faded"));
        assertEquals(List.of(new Answer.Loosened("words", 1)), answer.loosen());
        answer = book.ask(Question.ANY.words("strength").choosing(Trait.YEAR, "2025"));
        assertEquals(List.of(new Answer.Loosened("year", 2), new Answer.Loosened("words", 1)), answer.loosen());
        assertEquals(List.of(), book.ask(Question.ANY.words("strength")).loosen());
    }

    @Test
    void answersStandInTheOrderAskedForAndWhatIsUnknownLast() {
        assertEquals(List.of("gold", "brick", "grey", "brick-half", "unread"), ask(Question.ANY.in(Order.EVENNESS)));
        assertEquals(List.of("gold", "grey", "brick-half", "brick", "unread"), ask(Question.ANY.in(Order.LIGHTNESS)));
        assertEquals(List.of("grey", "brick-half", "brick", "gold", "unread"), ask(Question.ANY.in(Order.OWF)));
        assertEquals(List.of("brick", "brick-half", "gold", "grey", "unread"), ask(Question.ANY.in(Order.HUE)),
                "from red to yellow, then the grey");
        assertEquals(words(""), ask(Question.ANY.in(Order.NEAR)), "near to nothing");
    }

    @Test
    void nearAColourTheNearestComeFirstEachWithItsDifference() {
        Answer answer = book.ask(Question.ANY.near(new Lab(36.2, 27.4, 20.1)));
        assertEquals(List.of("brick", "brick-half", "grey", "gold", "unread"), answer.found().stream()
                .map(found -> found.entry().entry().name()).toList());
        assertEquals(0, answer.found().get(0).de00().orElseThrow());
        assertEquals(ColourDifference.ciede2000(new Lab(36.2, 27.4, 20.1), new Lab(44, 22, 18)),
                answer.found().get(1).de00().orElseThrow(), 1e-12);
        assertTrue(answer.found().get(4).de00().isEmpty());
        assertEquals(words(""), ask(Question.ANY.near(new Lab(36.2, 27.4, 20.1)).in(Order.DATE)));
    }

    @Test
    void anEditionAnswersOfWhatItShows() {
        assertEquals(5, words("").size());
        Lookup open = Lookup.of(workings(Edition.OPEN), WORDS);
        assertEquals(4, open.ask(Question.ANY).found().size());
        // The lot and the dye are not shared, so their words are the studio's own.
        assertEquals(List.of(), open.ask(Question.ANY.words("ridge")).found());
        assertEquals(List.of(), open.ask(Question.ANY.words("clumps")).found());
        assertFalse(open.ask(Question.ANY.words("nigra")).found().isEmpty());
    }

    @ParameterizedTest
    @ValueSource(strings = {"__proto__", "constructor", "toString", "hasOwnProperty", "\\", "\"", "</script>", "%00",
        "\ud800", "\u0000", "🌲", "*", ".*", "(", "a'b", "‮", "words", "null"})
    void anyWordsMayBeTyped(String typed) {
        book.ask(Question.ANY.words(typed));
        book.ask(Question.ANY.words(typed.repeat(2000)));
    }
}
