package fascicle.bench;

import fascicle.book.address.Addresses;
import fascicle.book.figures.Figures;
import fascicle.book.lookup.Folding;
import fascicle.book.lookup.IndexFile;
import fascicle.book.lookup.Lookup;
import fascicle.book.words.Words;
import fascicle.notebook.read.NotebookReader;
import fascicle.site.Browser;
import fascicle.workings.EntryWorking;
import fascicle.workings.PartFigures;
import fascicle.workings.Workings;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;
import tools.jackson.databind.json.JsonMapper;

/**
 * What looking up costs in the browser, from disk: bytes, milliseconds until the page can answer, and milliseconds a
 * keystroke of 200 questions typed letter by letter; beside a plain scan and, for the first 40 of the questions, two
 * general search libraries with their own saved indexes, each over the same words.
 *
 * <p>To be run by hand: {@code site-tests/bench-look-up}.
 */
public final class LookUpBenchmark {

    private static final int ROUNDS = 7;
    private static final int QUESTIONS = 200;
    private static final int FEWER_QUESTIONS = 40;
    private static final int SHOWN = 20;
    private static final JsonMapper JSON = JsonMapper.shared();

    private final Path scratch;
    private final Browser browser;
    private final List<Map<String, Object>> measured = new ArrayList<>();
    private final List<String> questions = new ArrayList<>();
    private double blank;

    private LookUpBenchmark(Path scratch, Browser browser) {
        this.scratch = scratch;
        this.browser = browser;
    }

    /** Measures, prints a table, and writes the JSON file if one was asked for. */
    public static void main(String[] args) throws IOException {
        int entries = 10_000;
        Optional<Path> json = Optional.empty();
        for (int i = 0; i < args.length; i++) {
            if (args[i].equals("--json")) {
                json = Optional.of(Path.of(args[++i]));
            } else {
                entries = Integer.parseInt(args[i]);
            }
        }
        Path scratch = Files.createTempDirectory("fascicle-look-up");
        try (Browser browser = Browser.open(Browser.LAPTOP)) {
            browser.driver().manage().timeouts().scriptTimeout(Duration.ofMinutes(10)).pageLoadTimeout(Duration.ofMinutes(10));
            LookUpBenchmark benchmark = new LookUpBenchmark(scratch, browser);
            benchmark.measure(entries);
            if (json.isPresent()) {
                Files.write(json.get(), JSON.writerWithDefaultPrettyPrinter().writeValueAsBytes(benchmark.measured));
            }
        } finally {
            try (Stream<Path> files = Files.walk(scratch)) {
                for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(file);
                }
            }
        }
    }

    private void measure(int entries) throws IOException {
        SeededNotebook.write(scratch.resolve("notebook"), entries, 1);
        Workings workings = Workings.of(NotebookReader.read(scratch.resolve("notebook")).notebook());
        Words words = Words.shipped();
        long start = System.nanoTime();
        Lookup lookup = Lookup.of(workings, words);
        byte[] index = IndexFile.bytes(lookup, workings, new Addresses(workings, new Figures(words)), words);
        System.out.printf(Locale.ROOT, "Index of %d entries made in %.1f s%n", workings.entries().size(),
                (System.nanoTime() - start) / 1e9);
        List<List<String>> corpus = corpus(workings);
        ask(corpus);
        blank = ready("blank", "");
        System.out.printf(Locale.ROOT, "A blank page is ready in %.0f ms%n", blank);
        System.out.printf("%-34s %8s %8s %9s %9s %9s %9s%n", "", "raw MB", "gzip MB", "ready ms", "median ms", "p95 ms", "worst ms");

        Files.write(scratch.resolve("look-up.js"), index);
        Files.write(scratch.resolve("engine.js"), resource("/fascicle/book/scripts/engine.js"));
        row("this book's look-up", questions, index, script("look-up.js") + script("engine.js")
                + "<script>const book = fascicle.open(fascicleIndex);"
                + "self.ask = words => book.ask({words: words}).entries.slice(0, " + SHOWN + ").map(book.card)</script>");

        byte[] texts = ("self.corpus=" + JSON.writeValueAsString(corpus)).getBytes(StandardCharsets.UTF_8);
        Files.write(scratch.resolve("corpus.js"), texts);
        row("plain scan", questions, texts, script("corpus.js") + "<script>const folded = corpus.map(c => (c[0] + ' ' + c[1]).toLowerCase());"
                + "self.ask = words => { const w = words.trim().split(' ');"
                + "return folded.map((t, i) => i).filter(i => w.every(x => folded[i].includes(x))).slice(0, " + SHOWN + ") }</script>");

        Files.write(scratch.resolve("lunr.js"), resource("/META-INF/resources/webjars/lunr/2.3.9/lunr.min.js"));
        saved("lunr 2.3.9", "lunr.js", "lunr(function () { this.pipeline.reset(); this.searchPipeline.reset(); this.ref('i');"
                + "this.field('title'); this.field('text'); corpus.forEach((c, i) => this.add({i: i, title: c[0], text: c[1]})); })",
                "lunr.Index.load(JSON.parse(saved))",
                "found.query(q => words.trim().split(' ').forEach(w => q.term(w, {presence: lunr.Query.presence.REQUIRED,"
                        + "wildcard: lunr.Query.wildcard.TRAILING})))");
        Path mini = Path.of("site-tests/target/minisearch/package/dist/umd/index.js");
        mini = Files.exists(mini) ? mini : Path.of("target/minisearch/package/dist/umd/index.js");
        if (Files.exists(mini)) {
            Files.copy(mini, scratch.resolve("minisearch.js"));
            String options = "{fields: ['title', 'text'], idField: 'i'}";
            saved("MiniSearch 7.2.0", "minisearch.js", "(() => { const m = new MiniSearch(" + options + ");"
                    + "m.addAll(corpus.map((c, i) => ({i: i, title: c[0], text: c[1]}))); return m })()",
                    "MiniSearch.loadJSON(saved, " + options + ")",
                    "found.search(words, {prefix: true, combineWith: 'AND'})");
        } else {
            System.out.println("MiniSearch was not measured: npm brought it not");
        }
    }

    /** Title and everything that an entry is found by, as one text. */
    private static List<List<String>> corpus(Workings workings) {
        List<List<String>> corpus = new ArrayList<>();
        for (EntryWorking working : workings.entries()) {
            Stream<String> notes = working.entry().notes().stream().map(note -> note.markdown());
            Stream<String> things = working.parts().map(PartFigures::called);
            Stream<String> lot = working.needles().lot().stream().map(found -> found.called());
            corpus.add(List.of(working.entry().called(), Stream.of(notes, things, lot).flatMap(all -> all)
                    .collect(Collectors.joining(" ")).replace('<', ' ')));
        }
        return corpus;
    }

    /** Half of the questions are of one word, half of two that stand in one entry; common words are likelier. */
    private void ask(List<List<String>> corpus) {
        Random random = new Random(11);
        Set<String> drawn = new LinkedHashSet<>();
        while (drawn.size() < QUESTIONS) {
            List<String> words = Folding.words(corpus.get(random.nextInt(corpus.size())).get(1)).stream()
                    .filter(word -> word.length() > 2).toList();
            String first = words.get(random.nextInt(words.size()));
            drawn.add(drawn.size() % 2 == 0 ? first : first + " " + words.get(random.nextInt(words.size())));
        }
        questions.addAll(drawn);
    }

    private void saved(String name, String library, String make, String load, String query) throws IOException {
        page("make", script("corpus.js") + script(library));
        String made = (String) browser.script("return JSON.stringify(" + make + ")");
        byte[] data = ("self.saved=" + JSON.writeValueAsString(made)).getBytes(StandardCharsets.UTF_8);
        Files.write(scratch.resolve("saved.js"), data);
        // The libraries take seconds for a first letter, and all questions a quarter of an hour.
        row(name, questions.subList(0, FEWER_QUESTIONS), data, script("saved.js") + script(library) + "<script>const found = " + load + ";"
                + "self.ask = words => " + query + ".slice(0, " + SHOWN + ")</script>");
    }

    private void row(String name, List<String> asked, byte[] data, String body) throws IOException {
        double ready = ready("measured", body);
        List<Double> sorted = new ArrayList<>();
        // A few questions a call, since the driver waits for no call longer than three minutes.
        for (int from = 0; from < asked.size(); from += 10) {
            JSON.readTree((String) browser.script("""
                    const times = [];
                    for (const question of arguments[0]) {
                      for (let at = 1; at <= question.length; at++) {
                        const typed = question.slice(0, at);
                        if (typed.endsWith(' ')) continue;
                        const start = performance.now();
                        ask(typed);
                        times.push(performance.now() - start);
                      }
                    }
                    return JSON.stringify(times);
                    """, asked.subList(from, Math.min(asked.size(), from + 10))))
                    .forEach(time -> sorted.add(time.asDouble()));
        }
        sorted.sort(Comparator.naturalOrder());
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("name", name);
        row.put("raw_mb", data.length / 1e6);
        row.put("gzip_mb", gzipped(data) / 1e6);
        row.put("ready_ms_over_blank", ready - blank);
        row.put("median_ms", sorted.get(sorted.size() / 2));
        row.put("p95_ms", sorted.get(sorted.size() * 95 / 100));
        row.put("worst_ms", sorted.get(sorted.size() - 1));
        measured.add(row);
        System.out.printf(Locale.ROOT, "%-34s %8.2f %8.2f %9.0f %9.2f %9.2f %9.2f%n", row.values().toArray());
    }

    /** The median time from opening a page to the end of its last script. */
    private double ready(String name, String body) throws IOException {
        page(name, body);
        List<Double> times = new ArrayList<>();
        for (int round = 0; round < ROUNDS; round++) {
            browser.show(scratch.resolve(name + ".html"));
            times.add(((Number) browser.script("return ready")).doubleValue());
        }
        times.sort(Comparator.naturalOrder());
        return times.get(ROUNDS / 2);
    }

    private void page(String name, String body) throws IOException {
        Path page = Files.writeString(scratch.resolve(name + ".html"), "<!doctype html><meta charset='utf-8'><title>page</title>"
                + body + "<script>self.ready = performance.now()</script>");
        browser.show(page);
    }

    private static String script(String file) {
        return "<script src='" + file + "'></script>";
    }

    private static byte[] resource(String name) throws IOException {
        try (InputStream file = LookUpBenchmark.class.getResourceAsStream(name)) {
            return Objects.requireNonNull(file, name).readAllBytes();
        }
    }

    private static int gzipped(byte[] data) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (GZIPOutputStream gzip = new GZIPOutputStream(out) {{ def.setLevel(9); }}) {
            gzip.write(data);
        }
        return out.size();
    }
}
