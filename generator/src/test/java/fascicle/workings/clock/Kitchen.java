package fascicle.workings.clock;

import fascicle.notebook.WrittenNotebook;
import fascicle.notebook.read.NotebookReader;
import fascicle.workings.Workings;
import java.nio.file.Path;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** A notebook with one method after another, and their clocks in short words. */
final class Kitchen {

    private final WrittenNotebook notebook;

    Kitchen(Path folder) {
        notebook = WrittenNotebook.small(folder);
    }

    /** A method of these lines, beside its title and weight. */
    Kitchen method(String id, String... lines) {
        notebook.with("methods/" + id + ".md", "---\ntitle: " + id + "\nfor: 50 g\n" + String.join("\n", lines) + "\n---\n");
        return this;
    }

    Kitchen cover(String lines) {
        notebook.with("notebook.yaml", "form: 1\ntitle: A small notebook\nkitchen: metric\n" + lines + "\n");
        return this;
    }

    /** An entry of these lines. */
    Kitchen entry(String name, String... lines) {
        notebook.with("days/2026-05-09/" + name + ".md", "---\n" + String.join("\n", lines) + "\n---\n");
        return this;
    }

    Work work(String id) {
        Workings workings = workings();
        return Work.of(workings.method(id).orElseThrow(), workings.notebook().cover());
    }

    private Workings workings() {
        NotebookReader.Result read = notebook.read();
        if (!read.findings().isEmpty()) {
            throw new AssertionError(read.findings());
        }
        return Workings.of(read.notebook());
    }

    Clock entryClock(String id) {
        Workings workings = workings();
        return Clock.of(Work.of(workings.entry(id).orElseThrow(), workings.notebook().cover()));
    }

    Clock clock(String id, double grams) {
        return Clock.of(work(id).scaledTo(workings().scale(id, grams, Optional.empty()).orElseThrow()));
    }

    Clock clock(String id) {
        return Clock.of(work(id));
    }

    Clock clock(String id, String start) {
        return Clock.of(work(id), LocalTime.parse(start));
    }

    /** Each stage on a line: when, what, until when. */
    static String said(Clock clock) {
        return clock.stages().stream().map(Kitchen::said).collect(Collectors.joining("\n"));
    }

    static String said(Stage stage) {
        String what = stage.kind().name().toLowerCase(Locale.ROOT)
                + (stage.vat() == Stage.Vat.NONE ? "" : " " + stage.vat().name().toLowerCase(Locale.ROOT))
                + stage.part().map(part -> " " + part.is().value()).orElse("");
        return said(stage.from()) + " " + what + (stage.isMoment() ? "" : " until " + said(stage.until()));
    }

    private static String said(Time time) {
        if (!time.known()) {
            return "?";
        }
        double minutes = time.minutes().orElseThrow();
        String about = time.about() ? "~" : "";
        return about + (time.mornings() == 0 ? "" : "morning " + time.mornings() + " + ") + (minutes % 1 == 0
                ? String.valueOf((long) minutes) : String.valueOf(minutes));
    }

    static String lines(String... lines) {
        return String.join("\n", List.of(lines));
    }
}
