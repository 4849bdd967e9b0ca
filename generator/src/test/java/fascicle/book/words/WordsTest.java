package fascicle.book.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.notebook.Bath;
import fascicle.notebook.Dye;
import fascicle.notebook.HeatStep;
import fascicle.notebook.Kept;
import fascicle.notebook.Method;
import fascicle.notebook.Needles;
import fascicle.notebook.Outcome;
import fascicle.notebook.Recipe;
import fascicle.notebook.Word;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class WordsTest {

    private static final Words WORDS = Words.shipped();

    /** A key in the code or a template: a quoted string of small words with dots. */
    private static final Pattern QUOTED = Pattern.compile("[\"']([a-z][a-z0-9-]*(?:\\.[a-z0-9-]+)*\\.?)[\"']");

    private static final Pattern SAID = Pattern.compile("say\\([\"']([a-z0-9.-]+[a-z0-9])[\"']\\s*[,)]");

    private static final Map<String, Word[]> NAMED = Map.ofEntries(Map.entry("verdict", Outcome.Verdict.values()),
            Map.entry("feel", Outcome.Feel.values()), Map.entry("fault", Outcome.Fault.values()),
            Map.entry("weighed", Needles.Weighed.values()), Map.entry("sheaths", Needles.Sheaths.values()),
            Map.entry("rinse", Recipe.Rinse.values()), Map.entry("purpose", Recipe.Purpose.values()),
            Map.entry("source", Bath.Source.values()), Map.entry("ph-tool", Bath.PhTool.values()),
            Map.entry("look", HeatStep.Look.values()), Map.entry("held", HeatStep.Look.values()),
            Map.entry("heat-source", HeatStep.Source.values()),
            Map.entry("kept", Kept.How.values()), Map.entry("skill", Method.Skill.values()),
            Map.entry("dye-kind", Dye.Kind.values()), Map.entry("dye-type", Dye.Type.values()),
            Map.entry("dye-form", Dye.Form.values()), Map.entry("acid", Dye.Acid.values()),
            Map.entry("metal", Dye.Metal.values()));

    private static String sources() throws IOException {
        StringBuilder all = new StringBuilder();
        for (Path root : List.of(Path.of("src/main/java/fascicle/book"), Path.of("src/main/java/fascicle/cli"),
                Path.of("../themes/longleaf"))) {
            try (Stream<Path> files = Files.walk(root)) {
                for (Path file : files.filter(path -> path.toString().matches(".*\\.(java|ftlh)")).toList()) {
                    all.append(Files.readString(file));
                }
            }
        }
        return all.toString();
    }

    @Test
    void everyKeyThatIsSaidExists() throws IOException {
        Set<String> missing = new TreeSet<>(SAID.matcher(sources()).results().map(found -> found.group(1)).toList());
        missing.removeAll(WORDS.keys());
        assertEquals(Set.of(), missing);
    }

    @Test
    void everyFactHasItsLabel() throws IOException {
        Set<String> missing = new TreeSet<>(Pattern.compile("\"((?:fact|step|table|heading)\\.[a-z0-9-]+)\"")
                .matcher(sources()).results().map(found -> found.group(1)).toList());
        missing.removeAll(WORDS.keys());
        assertEquals(Set.of(), missing);
    }

    @Test
    void everyKeyIsUsed() throws IOException {
        Set<String> used = new TreeSet<>(QUOTED.matcher(sources()).results().map((MatchResult found) -> found.group(1)).toList());
        Set<String> idle = new TreeSet<>();
        for (String key : WORDS.keys()) {
            String plain = key.endsWith(".one") ? key.substring(0, key.length() - 4) : key;
            String kind = plain.contains(".") ? plain.substring(0, plain.indexOf('.')) : plain;
            boolean byKind = used.contains(kind + ".") || NAMED.containsKey(kind) && used.contains(kind);
            boolean byStart = used.stream().anyMatch(start -> start.endsWith("-") && plain.startsWith(start));
            if (!used.contains(plain) && !byKind && !byStart) {
                idle.add(key);
            }
        }
        assertEquals(Set.of(), idle);
    }

    @Test
    void everyWordOfTheNotebookHasItsWords() {
        NAMED.forEach((kind, words) -> Stream.of(words).forEach(word ->
                assertTrue(!WORDS.name(kind, word).isBlank(), kind + "." + word.word())));
    }

    @Test
    void oneIsSaidInTheSingular() {
        assertEquals("1 dye day", WORDS.say("count.days", 1));
        assertEquals("3 dye days", WORDS.say("count.days", 3));
        assertEquals("0 dye days", WORDS.say("count.days", 0));
    }

    @Test
    void aKeyThatIsNotThereIsAMistake() {
        assertThrows(IllegalArgumentException.class, () -> WORDS.say("no.such.key"));
    }

    @Test
    void whatIsGivenIsNotReadAsAPlaceholder() {
        assertEquals("about {1}", WORDS.say("about", "{1}"));
    }
}
