package fascicle.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import tools.jackson.databind.json.JsonMapper;

/**
 * Measures what publishing a notebook costs beside what its libraries cost alone ({@link LibrariesAlone}).
 *
 * <p>Run it from the project's folder with {@code site-tests/bench [SIZE…] [--rounds N] [--json FILE]}, which builds
 * what is not built and then does {@code java -cp 'site-tests/target/site-tests-0.1.0.jar:generator/target/lib/*'
 * fascicle.bench.PublishBenchmark}. Sizes are 100, 1000 and 10000 entries, rounds 5, unless told otherwise.
 *
 * <p>Whole processes are timed, from start to end, one after the other in each round, so that a drift of the machine
 * meets all of them alike; compare ratios, not seconds. Each run writes into a fresh folder, and nothing is deleted
 * before the last has ended, since creating files right after deleting many can cost seconds. A first round is thrown
 * away. Peak memory is asked of GNU time, where it is installed.
 */
public final class PublishBenchmark {

    private static final String FLOOR = "libraries alone, no class-data archive";
    private static final String FLOOR_ARCHIVED = "libraries alone, class-data archive";
    private static final String PUBLISH = "publish, no class-data archive";
    private static final String PUBLISH_ARCHIVED = "publish, class-data archive";
    private static final String UNCHANGED = "publish again, nothing changed";
    private static final String CHANGED = "publish again, one entry changed";

    private final Path scratch;
    private final Programs programs;
    private final int rounds;
    private int folders;

    private PublishBenchmark(Path scratch, int rounds) throws IOException, InterruptedException, Run.Failed {
        this.scratch = scratch;
        this.rounds = rounds;
        Path sample = fresh();
        SeededNotebook.write(sample, 20, 1);
        this.programs = new Programs(scratch, sample);
    }

    private interface Program {
        List<String> command(Path target);
    }

    /** Measures, prints a table for each size, and writes the JSON file if one was asked for. */
    public static void main(String[] args) throws IOException, InterruptedException, Run.Failed {
        List<Integer> sizes = new ArrayList<>();
        int rounds = 5;
        String json = "";
        for (int i = 0; i < args.length; i++) {
            switch (args[i]) {
                case "--rounds" -> rounds = positive(args[++i]);
                case "--json" -> json = args[++i];
                default -> sizes.add(positive(args[i]));
            }
        }
        Path scratch = Files.createTempDirectory("fascicle-bench");
        try {
            PublishBenchmark benchmark = new PublishBenchmark(scratch, rounds);
            List<Measurement> measured = new ArrayList<>();
            for (int size : sizes.isEmpty() ? List.of(100, 1000, 10000) : sizes) {
                measured.add(benchmark.measure(size));
                System.out.println(measured.get(measured.size() - 1).table());
            }
            if (!json.isEmpty()) {
                Map<String, Object> data = new LinkedHashMap<>();
                data.put("java", Runtime.version().toString());
                data.put("processors", Runtime.getRuntime().availableProcessors());
                data.put("sizes", measured.stream().map(Measurement::data).toList());
                Files.write(Path.of(json), JsonMapper.builder().build().writerWithDefaultPrettyPrinter().writeValueAsBytes(data));
            }
        } finally {
            delete(scratch);
        }
    }

    private static int positive(String number) {
        if (!number.matches("[1-9][0-9]{0,6}")) {
            throw new IllegalArgumentException("not a whole number above 0: " + number);
        }
        return Integer.parseInt(number);
    }

    private Measurement measure(int entries) throws IOException, InterruptedException, Run.Failed {
        Path notebook = fresh();
        SeededNotebook.write(notebook, entries, 1);
        Map<String, Program> compared = new LinkedHashMap<>();
        compared.put(FLOOR, target -> programs.floor(notebook, target, false));
        compared.put(FLOOR_ARCHIVED, target -> programs.floor(notebook, target, true));
        Path published = fresh();
        try {
            Run.of(programs.publish(notebook, published), scratch);
        } catch (Run.Failed e) {
            return new Measurement(entries, alternate(compared), "", "", "publish was not measured: it " + e.getMessage());
        }
        String publish = programs.publishArchived() ? PUBLISH_ARCHIVED : PUBLISH;
        compared.put(publish, target -> programs.publish(notebook, target));
        List<Timing> timings = new ArrayList<>(alternate(compared));
        timings.addAll(again(notebook, published));
        return new Measurement(entries, timings, publish, programs.publishArchived() ? FLOOR_ARCHIVED : FLOOR, "");
    }

    /** Every program once a round, each into a folder of its own; the first round warms up and is not counted. */
    private List<Timing> alternate(Map<String, Program> compared) throws IOException, InterruptedException, Run.Failed {
        Map<String, List<Run>> runs = new LinkedHashMap<>();
        for (int round = 0; round <= rounds; round++) {
            for (Map.Entry<String, Program> program : compared.entrySet()) {
                Run run = Run.of(program.getValue().command(fresh()), scratch);
                if (round > 0) {
                    runs.computeIfAbsent(program.getKey(), name -> new ArrayList<>()).add(run);
                }
            }
        }
        return runs.entrySet().stream().map(named -> new Timing(named.getKey(), named.getValue())).toList();
    }

    /** Publishes into the same folder again: as it is, and after a sentence was added to the newest entry. */
    private List<Timing> again(Path notebook, Path published) throws IOException, InterruptedException, Run.Failed {
        List<Run> unchanged = new ArrayList<>();
        List<Run> changed = new ArrayList<>();
        Path newest;
        try (Stream<Path> files = Files.walk(notebook.resolve("days"))) {
            newest = files.filter(Files::isRegularFile).max(Comparator.naturalOrder()).orElseThrow();
        }
        for (int round = 1; round <= rounds; round++) {
            unchanged.add(Run.of(programs.publish(notebook, published), scratch));
            Files.writeString(newest, "\nSeen again on round " + round + ".\n", StandardOpenOption.APPEND);
            changed.add(Run.of(programs.publish(notebook, published), scratch));
        }
        return List.of(new Timing(UNCHANGED, unchanged), new Timing(CHANGED, changed));
    }

    /** A folder that does not exist yet. */
    private Path fresh() {
        return scratch.resolve("folder-" + ++folders);
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
