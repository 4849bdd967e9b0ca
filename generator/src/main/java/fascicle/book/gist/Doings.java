package fascicle.book.gist;

import fascicle.book.batch.StepNames;
import fascicle.book.words.Words;
import fascicle.notebook.Noted;
import fascicle.notebook.Word;
import fascicle.workings.clock.Stage;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Stages of the work in words: on pages, in plans and in calendars alike. */
public final class Doings {

    private final Words words;
    private final Heating heating;
    private final UnaryOperator<String> called;
    private final boolean forMinors;

    /**
     * Stages in the book's words.
     *
     * @param words the book's words
     * @param called finds what the dye or assistant of an id is called
     */
    public Doings(Words words, UnaryOperator<String> called) {
        this(words, called, false);
    }

    private Doings(Words words, UnaryOperator<String> called, boolean forMinors) {
        this.words = words;
        this.heating = new Heating(words);
        this.called = called;
        this.forMinors = forMinors;
    }

    /**
     * The same words where people under eighteen dye.
     *
     * @return words that say what only the teacher does
     */
    public Doings forMinors() {
        return new Doings(words, called, true);
    }

    /**
     * A stage.
     *
     * @param stage what is done, or goes on
     * @return such as {@code Heat to 88 °C}
     */
    public String say(Stage stage) {
        return forMinors && stage.isAtTheStove() ? words.say("plan.by-teacher", plain(stage)) : plain(stage);
    }

    private String plain(Stage stage) {
        return switch (stage.kind()) {
            case SOAK -> words.say("clock.soak");
            case MAKE -> in(stage, "clock.make", "clock.make", "clock.make-treatment");
            case TOP_UP -> words.say("clock.top-up");
            case IN -> in(stage, "clock.in", "clock.in-extract", "clock.in-treatment");
            case ON -> in(stage, "clock.on", "clock.on-extract", "clock.on-treatment");
            case RISE -> rise(stage);
            case HOLD -> stage.step().flatMap(heating::at).map(at -> words.say("clock.hold", at))
                    .orElse(words.say("clock.hold-on"));
            case ADD -> stage.part().map(part -> words.say("clock.add", called.apply(part.is().value()),
                    part.at().map(heating::span).orElse(""))).orElse("");
            case OFF -> words.say("clock.off");
            case COOL -> words.say("clock.cool");
            case STAND -> words.say("clock.stand");
            case OUT -> stage.vat() == Stage.Vat.BIN ? words.say("clock.out-presoak")
                    : in(stage, "clock.out", "clock.out-extract", "clock.out-treatment");
            case LIFT -> in(stage, "clock.lift", "clock.lift-extract", "clock.lift-treatment");
            case HALF_DRY -> words.say("clock.half-dry");
            case RINSE -> words.say("clock.rinse");
            case DRY -> words.say("clock.dry");
            case FINISH -> words.say("clock.finish");
            case KEEP -> words.say("clock.use-by");
        };
    }

    private String in(Stage stage, String bath, String extract, String treatment) {
        return switch (stage.vat()) {
            case EXTRACT -> words.say(extract);
            case BEFORE, AFTER -> words.say(treatment, treatment(stage));
            case BIN, DYEBATH, NONE -> words.say(bath);
        };
    }

    private String treatment(Stage stage) {
        return StepNames.treatment(stage.purpose().map(Word::word), words);
    }

    private String rise(Stage stage) {
        Optional<String> to = stage.step().flatMap(step -> step.to().map(Noted::value)).map(heating::reached);
        if (to.isEmpty()) {
            return words.say("clock.heat-on");
        }
        boolean down = stage.estimated() && stage.from().known()
                && stage.from().minutes().equals(stage.until().minutes());
        return words.say(down ? "clock.keep-at" : "clock.heat", to.get());
    }
}
