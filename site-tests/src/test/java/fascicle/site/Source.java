package fascicle.site;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A file of the demo notebook, read by the eye of a test: line by line, without the program's own reader.
 *
 * @param path relative to the notebook, with {@code /}
 * @param lines all its lines
 */
record Source(String path, List<String> lines) {

    private static final Pattern SHARE = Pattern.compile("share: *(studio|students|open) *");
    private static final Pattern HEADING = Pattern.compile("(#+) .*?(?:\\((studio|students) only\\))? *");
    private static final int LONG_ENOUGH = 20;

    /** A stretch of the maker's own words, and the editions that may show it. */
    record Words(String words, Edition share, String path) {}

    /** Every Markdown file of the demo. */
    static List<Source> demo() {
        Path notebook = Checkout.root().resolve("content");
        try (Stream<Path> files = Files.walk(notebook)) {
            List<Source> sources = new ArrayList<>();
            for (Path file : files.filter(path -> path.toString().endsWith(".md")).sorted().toList()) {
                String path = notebook.relativize(file).toString().replace('\\', '/');
                sources.add(new Source(path, Files.readAllLines(file)));
            }
            return sources;
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    /** Whom the file is shared with; the maker alone where it says nothing. */
    Edition share() {
        return frontMatter().stream()
                .map(SHARE::matcher)
                .filter(Matcher::matches)
                .map(share -> Edition.of(share.group(1)))
                .findFirst()
                .orElse(Edition.STUDIO);
    }

    /** The lines between the two rules. */
    List<String> frontMatter() {
        return lines.subList(1, end());
    }

    private int end() {
        return 1 + lines.subList(1, lines.size()).indexOf("---");
    }

    /**
     * The body in stretches of plain words, as they must stand on a page if they stand there at all; a section that is
     * closed to lower editions says so of its words.
     */
    List<Words> words() {
        List<Words> words = new ArrayList<>();
        Deque<Section> open = new ArrayDeque<>();
        for (String line : lines.subList(end() + 1, lines.size())) {
            Matcher heading = HEADING.matcher(line);
            if (heading.matches()) {
                int level = heading.group(1).length();
                open.removeIf(section -> section.level() >= level);
                Edition closed = heading.group(2) == null ? Edition.OPEN : Edition.of(heading.group(2));
                open.push(new Section(level, closed));
            }
            Edition share = open.stream().map(Section::share).reduce(share(), Source::morePrivate);
            for (String stretch : plain(line).split("[^\\p{L}\\p{N} ]+")) {
                if (stretch.strip().length() >= LONG_ENOUGH) {
                    words.add(new Words(stretch.strip(), share, path));
                }
            }
        }
        return words;
    }

    private record Section(int level, Edition share) {}

    private static Edition morePrivate(Edition one, Edition other) {
        return one.ordinal() <= other.ordinal() ? one : other;
    }

    /** Text as these tests compare it: lower case, every run of blanks one blank, links without their addresses. */
    static String plain(String text) {
        return text.replaceAll("\\]\\([^)]*\\)", "|").replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }
}
