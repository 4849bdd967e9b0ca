package fascicle.cli;

import fascicle.book.batch.BatchWords;
import fascicle.book.caution.CautionWords;
import fascicle.book.data.Answers;
import fascicle.book.words.Words;
import fascicle.measure.Kitchen;
import fascicle.notebook.Notebook;
import fascicle.notebook.Recipe;
import fascicle.notebook.Vessel;
import fascicle.workings.Measuring;
import fascicle.workings.Scaled;
import fascicle.workings.Workings;
import fascicle.workings.acidity.Acidities;
import fascicle.workings.acidity.AcidityFigures;
import fascicle.workings.care.Care;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Works a recipe out for another weight of needles. */
@Command(name = "scale", mixinStandardHelpOptions = true,
        description = "Works out the quantities of an entry or a method for another weight of dry needles.")
final class ScaleCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Parameters(index = "0", paramLabel = "NOTEBOOK", description = "The notebook's folder.")
    private Path notebook = Path.of("");

    @Parameters(index = "1", paramLabel = "ENTRY-OR-METHOD",
            description = "The id of an entry (2026-05-09-brick-half), its tag, or the id of a method.")
    private String id = "";

    @Option(names = "--needles", required = true, paramLabel = "WEIGHT",
            description = "The weight of dry needles, such as 120g or 4oz.")
    private String needles = "";

    @Option(names = "--vessel", paramLabel = "VESSEL",
            description = "The id of the vessel to use instead of the recipe's own.")
    private String vessel = "";

    @Option(names = "--kitchen", paramLabel = "us|metric|imperial",
            description = "Whose spoons and cups are at hand; the notebook's own if left out.")
    private String kitchen = "";

    @Option(names = "--json", description = "Print the quantities as data.")
    private boolean json;

    ScaleCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        Notebook sound = NotebookFolder.sound(notebook, List.of(id),
                vessel.isEmpty() ? List.of() : List.of(vessel), terminal);
        double grams = WeightToDye.grams(needles, sound.cover().kitchen());
        Workings workings = Workings.of(sound);
        Measuring measuring = workings.measuring().in(kitchen(sound));
        String asked = NamedRecipe.id(sound, id);
        Scaled scaled = workings.scale(asked, grams, vessel(sound)).orElseThrow();
        UnweighedRecipe.hint(workings, asked).ifPresent(terminal::say);
        List<String> remarks = new BatchWords(measuring, Words.shipped()).remarks(scaled);
        List<String> cautions = cautions(sound, asked, scaled);
        AcidityFigures acidity = Acidities.of(workings).bath(scaled, recipe(sound, asked).bath());
        if (json) {
            terminal.print(Answers.scaled(scaled, measuring, acidity,
                    Stream.concat(remarks.stream(), cautions.stream()).toList()));
        } else {
            ScaledWords.of(scaled, title(sound, scaled), measuring, acidity, remarks, cautions)
                    .forEach(terminal::print);
        }
        return Status.DONE;
    }

    private static String title(Notebook read, Scaled scaled) {
        return read.entry(scaled.of()).map(entry -> entry.called())
                .or(() -> read.method(scaled.of()).map(method -> method.called())).orElse(scaled.of());
    }

    private Optional<Vessel> vessel(Notebook read) {
        return vessel.isEmpty() ? Optional.empty() : Optional.of(KnownVessels.find(read, vessel));
    }

    private Kitchen kitchen(Notebook read) {
        return kitchen.isEmpty() ? read.cover().kitchen() : Kitchen.named(kitchen).orElseThrow(() ->
                new WrongCall("“" + kitchen + "” is no kitchen; it is us, metric or imperial."));
    }

    private static List<String> cautions(Notebook read, String asked, Scaled scaled) {
        return CautionWords.of(Care.of(read).uses(recipe(read, asked), scaled.vessel()), Words.shipped());
    }

    private static Recipe recipe(Notebook read, String asked) {
        return read.entry(asked).map(entry -> entry.recipe())
                .or(() -> read.method(asked).map(method -> method.recipe())).orElseThrow();
    }
}
