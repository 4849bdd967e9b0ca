package fascicle.cli;

import fascicle.bath.Batch;
import fascicle.book.Plan;
import fascicle.book.binding.Binding;
import fascicle.book.binding.TargetRefused;
import fascicle.book.theme.Theme;
import fascicle.book.theme.ThemeBroken;
import fascicle.notebook.Cover;
import fascicle.notebook.Entry;
import fascicle.notebook.Ids;
import fascicle.notebook.Method;
import fascicle.notebook.Notebook;
import fascicle.notebook.Recipe;
import fascicle.notebook.Vessel;
import fascicle.workings.Workings;
import fascicle.workings.plan.Ask;
import fascicle.workings.plan.DayPlan;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.format.ResolverStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Plans a class or a dye day. */
@Command(name = "plan", mixinStandardHelpOptions = true,
        description = "Plans a class or a dye day: what to lay out, weigh and heat, the clock, the cautions.")
final class PlanCommand implements Callable<Integer> {

    private static final int MOST_PEOPLE = 500;

    private static final DateTimeFormatter DAY_AND_HOUR = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'H:mm", Locale.ROOT)
            .withResolverStyle(ResolverStyle.STRICT);

    private final Terminal terminal;

    @Parameters(index = "0", paramLabel = "NOTEBOOK", description = "The notebook's folder.")
    private Path notebook = Path.of("");

    @Parameters(index = "1..*", arity = "1..*", paramLabel = "METHOD-OR-ENTRY",
            description = "The ids of methods, or of entries to be done again, the first to be begun first.")
    private List<String> wanted = List.of();

    @Option(names = "--each", required = true, paramLabel = "WEIGHT",
            description = "The dry needles that each person dyes by each method, such as 15g.")
    private String each = "";

    @Option(names = "--people", paramLabel = "N", description = "How many people dye; one if left out.")
    private int people = 1;

    @Option(names = "--vessel", paramLabel = "VESSEL",
            description = "The id of a vessel, once for each method in their order, or once for all; the method's own "
                    + "if left out.")
    private List<String> vessels = List.of();

    @Option(names = "--start", paramLabel = "TIME", description = "When work begins, such as 2026-06-13T09:00.")
    private String start = "";

    @Option(names = "--minors",
            description = "Plan for people under eighteen: no powders and no stove for them, no metal salts but "
                    + "dissolved alum.")
    private boolean minors;

    @Option(names = "--to", paramLabel = "DIR",
            description = "Write the sheet, the stove slips, the calendar and the data into this folder.")
    private @Nullable Path target;

    @Option(names = "--json", description = "Print the plan as data.")
    private boolean json;

    PlanCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        if (target != null) {
            NotebookFolder.named(target);
        }
        Notebook sound = NotebookFolder.sound(notebook, wanted, vessels, terminal);
        Ask ask = ask(sound);
        Workings workings = Workings.of(sound);
        for (Ask.Choice choice : ask.choices()) {
            plannable(workings, sound, choice.id());
        }
        long pots = DayPlan.pots(workings, ask);
        if (pots > Batch.MOST_POTS) {
            throw new WrongCall("This would take " + pots + " pots, more than " + Batch.MOST_POTS + "; name a larger "
                    + "vessel by --vessel, fewer people or less for each.");
        }
        DayPlan made = DayPlan.of(workings, ask);
        Plan plan = new Plan(workings, made);
        if (target != null) {
            write(plan, sound, target);
        }
        if (json) {
            terminal.print(plan.data());
        } else {
            plan.lines().forEach(terminal::print);
        }
        return made.batches().isEmpty() ? Status.ERRORS : Status.DONE;
    }

    /** Refuses what nobody can plan by: no recipe, or a bath that is there no more. */
    private void plannable(Workings workings, Notebook sound, String id) {
        Recipe recipe = sound.entry(id).map(Entry::recipe).or(() -> sound.method(id).map(Method::recipe)).orElseThrow();
        if (recipe.equals(Recipe.UNSAID)) {
            throw new WrongNotebook("“" + id + "” has no recipe to plan by; write its bath, or name another.");
        }
        recipe.bath().reuses().ifPresent(reused -> {
            throw new WrongNotebook("“" + id + "” went into the bath that “" + reused.value() + "” left, which cannot "
                    + "be poured anew; plan by the entry that made that bath, or by a method.");
        });
        UnweighedRecipe.hint(workings, id).ifPresent(terminal::say);
    }

    private void write(Plan plan, Notebook sound, Path folder) throws IOException {
        try (Binding binding = Binding.open(folder, notebook, "plan")) {
            plan.files(theme(sound)).forEach(file -> {
                try {
                    binding.put(file.address(), file.bytes());
                } catch (IOException disk) {
                    throw new java.io.UncheckedIOException(disk);
                }
            });
            binding.finish();
        } catch (TargetRefused refused) {
            throw new WrongCall(String.valueOf(refused.getMessage()));
        } catch (ThemeBroken broken) {
            throw new IllegalStateException("the shipped theme is broken", broken);
        }
        terminal.say("The sheet, the slips" + (start.isEmpty() ? "" : ", the calendar") + " and the data are in "
                + folder + "; the sheet tells what is on your shelf, the slips are for students too. Open: "
                + folder.resolve("plan.html")
                + (start.isEmpty() ? ". For a calendar say when work begins: --start 2026-06-13T09:00" : ""));
    }

    /** The notebook's own theme where it comes with the program, else the usual one. */
    private static Theme theme(Notebook sound) throws ThemeBroken {
        String named = sound.cover().theme();
        return Theme.shipped(Theme.isShipped(named) ? named : Cover.UNSAID.theme());
    }

    private Ask ask(Notebook sound) {
        if (people < 1 || people > MOST_PEOPLE) {
            throw new WrongCall("“" + people + "” people cannot be planned for; name 1 to " + MOST_PEOPLE + ".");
        }
        if (vessels.size() > 1 && vessels.size() != wanted.size()) {
            throw new WrongCall("You name " + counted(wanted.size(), "method") + " and "
                    + counted(vessels.size(), "vessel") + "; name one vessel for all, or one for each method.");
        }
        List<Ask.Choice> choices = IntStream.range(0, wanted.size())
                .mapToObj(i -> new Ask.Choice(NamedRecipe.id(sound, wanted.get(i)), vessel(sound, i))).toList();
        if (choices.stream().map(Ask.Choice::id).map(Ids::key).distinct().count() < choices.size()) {
            throw new WrongCall("A method or entry is named twice; name each once.");
        }
        return new Ask(choices, WeightToDye.grams(each, sound.cover().kitchen()), people, minors, begins());
    }

    private static String counted(int many, String what) {
        return many + " " + what + (many == 1 ? "" : "s");
    }

    private Optional<Vessel> vessel(Notebook sound, int place) {
        return vessels.isEmpty() ? Optional.empty()
                : Optional.of(KnownVessels.find(sound, vessels.size() == 1 ? vessels.get(0) : vessels.get(place)));
    }

    private Optional<LocalDateTime> begins() {
        String written = start.strip().replace(' ', 'T');
        try {
            if (written.isEmpty()) {
                return Optional.empty();
            }
            if (written.matches("[0-9]{4}-.*")) {
                return Optional.of(DAY_AND_HOUR.parse(written, LocalDateTime::from));
            }
        } catch (DateTimeParseException none) {
            // Said below, in words.
        }
        throw new WrongCall("“" + start + "” is no time to begin; write a date and an hour, such as 2026-06-13T09:00.");
    }
}
