package fascicle.bench;

import fascicle.site.Browser;
import fascicle.site.PublishedBook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Measures how soon the lists of a large book are seen, opened from the disk in Chromium, beside a page that says one
 * word.
 *
 * <p>Run it with {@code site-tests/bench-lists [SIZE] [ROUNDS]}; 10000 entries and 9 rounds unless told otherwise. The
 * pages take turns in each round, so that a drift of the machine meets all of them alike, and a first round is thrown
 * away. Seen is what the browser itself calls first-contentful-paint: milliseconds from the opening until the first
 * words or drawings stand on the screen. The whole page has then been laid out as far as it was read; the second
 * figure is when all of it was.
 */
public final class ListBenchmark {

    private static final String TIMES =
            """
            const done = arguments[0];
            const ready = () => {
              const paint = performance.getEntriesByName('first-contentful-paint')[0];
              const whole = performance.getEntriesByType('navigation')[0].loadEventEnd;
              if (paint && whole) done([paint.startTime, whole]); else setTimeout(ready, 20);
            };
            ready();
            """;

    private ListBenchmark() {}

    /** Prints a table: each page's bytes, and the least, middle and longest time until it was seen and was whole. */
    public static void main(String[] arguments) throws IOException {
        int size = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 10_000;
        int rounds = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 9;
        Path scratch = Files.createTempDirectory("fascicle-bench");
        try {
            SeededNotebook.write(scratch.resolve("notebook"), size, 1);
            PublishedBook book = PublishedBook.publish(scratch.resolve("notebook"), scratch.resolve("book"), "--despite-errors");
            measure(pages(book, scratch), rounds, size);
        } finally {
            delete(scratch);
        }
    }

    /** The page of one word, the list of all entries, and the longest page of a group of each kind. */
    private static Map<String, Path> pages(PublishedBook book, Path scratch) throws IOException {
        Map<String, Path> pages = new LinkedHashMap<>();
        pages.put("one word", Files.writeString(scratch.resolve("word.html"),
                "<!DOCTYPE html><html lang=\"en\"><meta charset=\"utf-8\"><title>word</title><p>word"));
        pages.put("entries.html", book.file("entries.html"));
        for (String kind : List.of("years", "conditions", "dyes", "methods")) {
            String longest = book.pages().stream()
                    .filter(address -> address.startsWith(kind + "/"))
                    .max(Comparator.comparingLong(address -> bytes(book.file(address))))
                    .orElseThrow();
            pages.put(longest, book.file(longest));
        }
        return pages;
    }

    private static void measure(Map<String, Path> pages, int rounds, int size) {
        Map<String, List<double[]>> times = new LinkedHashMap<>();
        try (Browser browser = Browser.open(Browser.LAPTOP)) {
            for (int round = 0; round <= rounds; round++) {
                for (Map.Entry<String, Path> page : pages.entrySet()) {
                    browser.show(page.getValue());
                    List<?> told = (List<?>) browser.driver().executeAsyncScript(TIMES);
                    if (round > 0) {
                        times.computeIfAbsent(page.getKey(), name -> new ArrayList<>()).add(told.stream()
                                .mapToDouble(time -> ((Number) time).doubleValue()).toArray());
                    }
                }
            }
        }
        System.out.printf(Locale.ROOT, "%d entries, %d rounds%n%-34s %9s %23s %26s%n", size, rounds,
                "milliseconds, least middle longest", "KB", "seen", "whole");
        times.forEach((name, all) -> System.out.printf(Locale.ROOT, "%-34s %9.1f %s   %s%n", name,
                bytes(pages.getOrDefault(name, Path.of(""))) / 1000.0, spread(all, 0), spread(all, 1)));
    }

    private static String spread(List<double[]> times, int which) {
        double[] figures = times.stream().mapToDouble(both -> both[which]).toArray();
        double median = Timing.median(figures);
        Arrays.sort(figures);
        return String.format(Locale.ROOT, "%7.0f %7.0f %7.0f", figures[0], median, figures[figures.length - 1]);
    }

    private static long bytes(Path file) {
        return file.toFile().length();
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
