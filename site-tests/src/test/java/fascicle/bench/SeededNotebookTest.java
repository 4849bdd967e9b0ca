package fascicle.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;
import tools.jackson.dataformat.yaml.YAMLFactory;
import tools.jackson.dataformat.yaml.YAMLMapper;

class SeededNotebookTest {

    private static final ObjectMapper YAML = YAMLMapper.builder(
            YAMLFactory.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build()).build();

    @TempDir
    Path dir;

    @Test
    void theSameSeedGivesTheSameBytesInAnyLocale() throws IOException {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.ENGLISH);
            Map<String, String> once = write("once", 50, 7);
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertEquals(once, write("again", 50, 7));
            Locale.setDefault(Locale.forLanguageTag("tr"));
            assertEquals(once, write("once-more", 50, 7));
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void anotherSeedGivesAnotherNotebook() throws IOException {
        assertNotEquals(write("seven", 10, 7), write("eight", 10, 8));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 10, 300})
    void itHoldsTheEntriesAskedForAndEveryIdNamesSomething(int entries) throws IOException {
        Map<String, String> files = write("notebook", entries, 3);
        JsonNode vessels = YAML.readTree(files.getOrDefault("vessels.yaml", ""));
        Set<String> ids = new HashSet<>();
        Set<Integer> tags = new HashSet<>();
        for (Map.Entry<String, String> file : files.entrySet()) {
            if (file.getKey().startsWith("days/")) {
                JsonNode shared = frontMatter(file.getValue());
                String day = file.getKey().split("/")[1];
                String fileName = file.getKey().split("/")[2].replace(".md", "");
                for (JsonNode pot : pots(shared)) {
                    assertNamed(files, "methods", shared.path("method"));
                    assertNamed(files, "needles", pot.at("/needles/lot"));
                    assertTrue(vessels.has(pot.at("/bath/vessel").asString()), () -> "no such vessel: " + pot.at("/bath/vessel"));
                    Stream.concat(pot.at("/bath/dye").valueStream(), pot.at("/bath/assistants").valueStream())
                            .forEach(part -> assertNamed(files, "dyes", part.path("is")));
                    assertEarlier(ids, pot.at("/bath/reuses"));
                    assertEarlier(ids, pot.at("/needles/from"));
                    assertTrue(ids.add(day + "-" + pot.path("name").asString(fileName)), "an id used twice in " + file.getKey());
                    assertTrue(tags.add(pot.path("tag").asInt()), "a tag used twice in " + file.getKey());
                }
            }
        }
        assertEquals(entries, ids.size());
        assertEquals(40, count(files, "needles/"));
        assertEquals(60, count(files, "dyes/"));
        assertEquals(12, count(files, "methods/"));
    }

    /** The size that the published floors of this project were measured with. */
    @Test
    void anEntryHasAboutThirtyLinesOfFrontMatterAndNineteenHundredBytesOfBody() throws IOException {
        Map<String, String> days = new TreeMap<>(write("notebook", 500, 1));
        days.keySet().removeIf(name -> !name.startsWith("days/"));
        long lines = days.values().stream().mapToLong(text -> text.split("\n---\n")[0].lines().count() - 1).sum();
        long bytes = days.values().stream().mapToLong(text -> text.split("\n---\n", 2)[1].length()).sum();
        assertEquals(30, lines / 500.0, 3);
        assertEquals(1900, bytes / 500.0, 100);
    }

    @Test
    void itRefusesAFolderThatHoldsSomethingAndANegativeNumber() throws IOException {
        write("notebook", 1, 1);
        assertThrows(IllegalArgumentException.class, () -> SeededNotebook.write(dir.resolve("notebook"), 1, 1));
        assertThrows(IllegalArgumentException.class, () -> SeededNotebook.write(dir.resolve("other"), -1, 1));
    }

    private Map<String, String> write(String name, int entries, long seed) throws IOException {
        Path notebook = dir.resolve(name);
        SeededNotebook.write(notebook, entries, seed);
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> walk = Files.walk(notebook)) {
            for (Path file : walk.filter(Files::isRegularFile).toList()) {
                files.put(notebook.relativize(file).toString().replace('\\', '/'), Files.readString(file));
            }
        }
        return files;
    }

    private static JsonNode frontMatter(String text) {
        return YAML.readTree(text.split("\n---\n", 2)[0]);
    }

    private static List<JsonNode> pots(JsonNode shared) {
        List<JsonNode> pots = new ArrayList<>();
        shared.path("pots").forEach(pots::add);
        return pots.isEmpty() ? List.of(shared) : pots;
    }

    private static void assertNamed(Map<String, String> files, String folder, JsonNode id) {
        assertTrue(id.isMissingNode() || files.containsKey(folder + "/" + id.asString() + ".md"), () -> folder + " lacks " + id);
    }

    private static void assertEarlier(Set<String> ids, JsonNode id) {
        assertTrue(id.isMissingNode() || ids.contains(id.asString()), () -> "not an earlier entry: " + id);
    }

    private static long count(Map<String, String> files, String folder) {
        return files.keySet().stream().filter(name -> name.startsWith(folder)).count();
    }
}
