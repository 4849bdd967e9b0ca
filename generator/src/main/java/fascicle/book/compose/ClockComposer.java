package fascicle.book.compose;

import fascicle.book.batch.OddWords;
import fascicle.book.figures.Figures;
import fascicle.book.gist.Doings;
import fascicle.book.page.Timetable;
import fascicle.book.words.Words;
import fascicle.notebook.Cover;
import fascicle.workings.EntryWorking;
import fascicle.workings.HeatLimits;
import fascicle.workings.Workings;
import fascicle.workings.clock.Clock;
import fascicle.workings.clock.Stage;
import fascicle.workings.clock.Time;
import fascicle.workings.clock.Work;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The steps of a recipe by the clock, as a table. */
final class ClockComposer {

    private static final double MINUTES_IN_A_DAY = 24 * 60;

    /** After these nobody needs to be told why the time is not known. */
    private static final Set<Stage.Kind> IN_THEIR_OWN_TIME = EnumSet.of(Stage.Kind.DRY, Stage.Kind.FINISH);

    /** How long what takes its own time goes on. */
    private static final Map<Stage.Kind, String> UNTIL = Map.of(Stage.Kind.COOL, "clock.until-cool",
            Stage.Kind.HALF_DRY, "clock.until-half-dry", Stage.Kind.DRY, "clock.until-dry");

    private final Workings workings;
    private final Words words;
    private final Figures figures;
    private final Doings doings;

    ClockComposer(Materials materials) {
        this.workings = materials.workings();
        this.words = materials.words();
        this.figures = materials.figures();
        this.doings = new Doings(words, id -> materials.index().dye(id).map(dye -> dye.called()).orElse(id));
    }

    /**
     * The clock of an entry, unless its method's page shows the same but for how long another liquor takes to heat:
     * that page is the one that lies beside the stove, and twice would make every page heavier.
     */
    Optional<Timetable> ofEntry(EntryWorking working) {
        Cover cover = workings.notebook().cover();
        Work work = Work.of(working, cover);
        Optional<Timetable> byMethod = working.entry().method().flatMap(id -> workings.method(id.value()))
                .flatMap(method -> of(Work.of(method, cover).inLiquorsOf(work)));
        return of(work).filter(clock -> !byMethod.equals(Optional.of(clock)));
    }

    /** The clock of some work; nothing where the recipe gives no time for anything. */
    Optional<Timetable> of(Work work) {
        Clock clock = Clock.of(work);
        List<Stage> stages = clock.stages().stream().filter(stage -> stage.kind() != Stage.Kind.KEEP).toList();
        if (stages.stream().noneMatch(stage -> stage.until().known() && !stage.until().equals(Time.START))) {
            return Optional.empty();
        }
        List<Timetable.Row> rows = new ArrayList<>();
        Optional<Stage> before = Optional.empty();
        List<Stage> together = new ArrayList<>();
        for (Stage stage : stages) {
            if (!together.isEmpty() && !isAtOnce(together.get(together.size() - 1), stage)) {
                rows.add(row(clock, together, before));
                before = Optional.of(together.get(together.size() - 1));
                together.clear();
            }
            together.add(stage);
        }
        rows.add(row(clock, together, before));
        return Optional.of(new Timetable(List.copyOf(rows), notes(stages, work)));
    }

    /** Whether a stage begins in the same moment as the one before it. */
    private static boolean isAtOnce(Stage before, Stage stage) {
        return before.from().equals(before.until()) && before.from().equals(stage.from())
                && (before.isMoment() || before.from().known());
    }

    private Timetable.Row row(Clock clock, List<Stage> together, Optional<Stage> before) {
        Stage last = together.get(together.size() - 1);
        return new Timetable.Row(when(clock, together.get(0).from(), before), together.stream().map(doings::say)
                .map(said -> words.say("sentence", said)).toList(), length(last));
    }

    private String when(Clock clock, Time time, Optional<Stage> before) {
        if (!time.known()) {
            return before.filter(stage -> !stage.isMoment())
                    .map(stage -> words.say("clock.when-"
                            + stage.kind().name().toLowerCase(Locale.ROOT).replace('_', '-')))
                    .orElse(words.say("clock.then"));
        }
        double minutes = time.minutes().getAsDouble();
        if (time.mornings() == 0) {
            return time.about() ? words.say("about", figures.lasting(minutes)) : figures.lasting(minutes);
        }
        if (minutes == 0) {
            return time.mornings() == 1 ? words.say("clock.next-morning")
                    : words.say("clock.morning", time.mornings() + 1);
        }
        double hour = clock.sinceMidnight(time).orElseThrow();
        int days = (int) (hour / MINUTES_IN_A_DAY);
        return words.say("clock.day-and-hour", days + 1, Figures.hours(hour - days * MINUTES_IN_A_DAY));
    }

    private Optional<String> length(Stage stage) {
        Time from = stage.from();
        Time until = stage.until();
        if (stage.isMoment() || from.known() && from.equals(until)) {
            return Optional.empty();
        }
        if (!until.known() || !from.known() && until.mornings() == from.mornings()) {
            return Optional.of(words.say(UNTIL.getOrDefault(stage.kind(), "table.unknown")));
        }
        if (until.mornings() > from.mornings()) {
            return Optional.of(words.say("span.overnight"));
        }
        String lasting = figures.lasting(until.minutes().getAsDouble() - from.minutes().orElseThrow());
        return Optional.of(until.about() && !from.about() || stage.estimated() ? words.say("about", lasting) : lasting);
    }

    private List<String> notes(List<Stage> stages, Work work) {
        List<String> notes = new ArrayList<>(HeatLimits.beyond(work.recipe(), work.boil()).stream()
                .map(new OddWords(words)::said).distinct().toList());
        if (stages.stream().anyMatch(stage -> stage.estimated() && stage.until().known()
                && !stage.from().minutes().equals(stage.until().minutes()))) {
            notes.add(words.say("clock.note-estimate"));
        }
        if (stages.stream().anyMatch(stage -> stage.kind() == Stage.Kind.LIFT && stage.endsBath())) {
            notes.add(words.say("clock.note-lift"));
        }
        if (stages.stream().anyMatch(stage -> stage.until().mornings() > 0)) {
            notes.add(words.say("clock.note-morning"));
        }
        stages.stream().filter(stage -> lost(stage) && !IN_THEIR_OWN_TIME.contains(stage.kind()))
                .map(stage -> words.say("clock.why-" + stage.kind().name().toLowerCase(Locale.ROOT).replace('_', '-')))
                .distinct().forEach(notes::add);
        work.dampKeeps().value().ifPresent(keeps -> notes.add(words.say("clock.note-keeps", figures.lasting(keeps))));
        return List.copyOf(notes);
    }

    /** Whether nobody knows how long a stage takes: its length, not its beginning, is what is missing. */
    private static boolean lost(Stage stage) {
        return !stage.isMoment() && stage.from().known() && !stage.until().known();
    }
}
