package fascicle.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What README.md says under “Every key”: each example reads, and no key that the program knows is left out. */
class ReadmeKeysTest {

    private static final String DAYS = "days/<date>/<words>.md";
    private static final Pattern ROW = Pattern.compile("\\| (.+?) \\| (.+) \\| `(.+)` \\|");

    /** A key that nothing is called, nor nearly: the reader answers with those it knows. */
    private static final String NO_KEY = "zzzzzzzz";
    private static final Pattern KNOWN = Pattern.compile("“" + NO_KEY + "” is not known here; the keys known here are (.*)");

    /**
     * A row of a table.
     *
     * @param table the file the table is about; nothing for the pieces
     * @param key what its first cell names, without what is said beside it
     * @param says the second cell
     * @param example the third
     */
    private record Row(String table, String key, String says, String example) {

        /** A file that holds the example, and with it whatever else a file of that kind must have. */
        private WrittenNotebook in(WrittenNotebook notebook, String written, String more) {
            String keys = (switch (key) {
                case "a reading" -> "colour: [" + written + "]";
                case "a part" -> "finish: [" + written + "]";
                case "a step of heat" -> "heat: [" + written + "]";
                default -> written;
            }) + "\n";
            return switch (table) {
                case "notebook.yaml" -> notebook.with(table, (key.equals("form") ? "" : "form: 1\n") + keys + more);
                case "vessels.yaml" -> notebook.with(table, "wide-pan: {shape: round, diameter: 26 cm, height: 12 cm}\n"
                        + "another:\n" + (keys + more).indent(2));
                default -> notebook.with(table.replaceAll("<date>", "2026-05-09").replaceAll("<\\w+>", "another"),
                        "---\n" + keys + more + "---\n");
            };
        }

        private boolean isPiece() {
            return key.startsWith("a ");
        }

        private boolean names(String name) {
            return says.contains("`" + name + "`") || says.contains("`" + name + ":")
                    || Pattern.compile("[{ ]" + Pattern.quote(name) + ":").matcher(example).find();
        }

        @Override
        public String toString() {
            return table + " · " + key + " · " + example;
        }
    }

    @TempDir
    private Path folder;

    static List<Row> rows() throws IOException {
        String readme = Files.readString(Path.of("..", "README.md"));
        String section = readme.substring(readme.indexOf("\n## Every key\n") + 1);
        String table = "";
        List<Row> rows = new ArrayList<>();
        for (String line : section.substring(0, section.indexOf("\n## ")).lines().toList()) {
            Matcher row = ROW.matcher(line);
            if (row.matches()) {
                rows.add(new Row(table, row.group(1).replaceAll("`(.*?)`.*", "$1"), row.group(2), row.group(3)));
            } else if (line.startsWith("`")) {
                table = line.substring(1, line.indexOf('`', 1));
            } else if (line.startsWith("Pieces")) {
                table = DAYS;
            }
        }
        return rows;
    }

    static List<Row> firstRows() throws IOException {
        return rows().stream().collect(Collectors.toMap(Row::table, row -> row, (first, later) -> first)).values().stream()
                .toList();
    }

    @ParameterizedTest
    @MethodSource("rows")
    void anExampleReadsAsItStands(Row row) {
        assertEquals(List.of(), row.in(notebook(row), row.example(), "").findings());
    }

    /** What a file knows at its top; a method knows what an entry does. */
    @ParameterizedTest
    @MethodSource("firstRows")
    void noKeyOfAFileIsLeftOut(Row row) throws IOException {
        List<String> keys = known(row, row.example(), NO_KEY + ": 1\n");
        assertTrue(keys.contains(row.key()), row + ": " + keys);
        Set<String> told = heads(row.table());
        if (row.table().startsWith("methods/")) {
            told.addAll(heads(DAYS));
        }
        told.add("name"); // of a pot, which the row of “pots” tells
        assertEquals(Set.of(), without(keys, told::contains));
    }

    /** What stands within it, in all rows of the same key; a pot knows what an entry does. */
    @ParameterizedTest
    @MethodSource("rows")
    void noKeyWithinItIsLeftOut(Row row) throws IOException {
        List<String> keys = known(row, row.example().replace("{", "{" + NO_KEY + ": 1, "), "");
        List<Row> telling = rows().stream().filter(one -> one.isPiece()
                || one.table().equals(row.table()) && one.key().equals(row.key())).toList();
        Set<String> told = row.key().equals("pots") ? heads(DAYS) : Set.of();
        assertEquals(Set.of(), without(keys, key -> told.contains(key)
                || telling.stream().anyMatch(one -> one.names(key))));
    }

    @Test
    void everyKindOfFileHasItsTable() throws IOException {
        assertEquals(Set.of("notebook.yaml", "needles/<lot>.md", "dyes/<dye>.md", "vessels.yaml", DAYS,
                "methods/<method>.md"), rows().stream().map(Row::table).collect(Collectors.toSet()));
    }

    @Test
    void everyWordThatAKeyMayHaveIsThere() throws IOException {
        String said = rows().stream().map(Row::says).collect(Collectors.joining());
        List<Word[]> words = List.of(Dye.Kind.values(), Dye.Type.values(), Dye.Form.values(), Dye.Acid.values(),
                Dye.Metal.values(), Vessel.Material.values(), Needles.Sheaths.values(), Needles.Weighed.values(),
                Recipe.Purpose.values(), Recipe.Rinse.values(), Bath.Source.values(), Bath.PhTool.values(),
                HeatStep.Look.values(), HeatStep.Source.values(), Outcome.Verdict.values(), Outcome.Feel.values(),
                Outcome.Fault.values(), Kept.How.values(), Method.Skill.values());
        assertEquals(List.of(), words.stream().flatMap(Stream::of).map(Word::word)
                .filter(word -> !said.contains("`" + word + "`")).toList());
    }

    /** The keys that the rows of a file's table are about. */
    private static Set<String> heads(String table) throws IOException {
        return rows().stream().filter(row -> row.table().equals(table)).map(Row::key)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<String> without(List<String> keys, Predicate<String> told) {
        return keys.stream().filter(told.negate()).collect(Collectors.toCollection(TreeSet::new));
    }

    private List<String> known(Row row, String written, String more) {
        return row.in(notebook(row), written, more).findings().stream().flatMap(finding -> KNOWN.matcher(finding).results())
                .flatMap(found -> Stream.of(found.group(1).split(", "))).toList();
    }

    /** The small notebook with what the examples name. */
    private WrittenNotebook notebook(Row row) {
        WrittenNotebook notebook = WrittenNotebook.small(folder)
                .with("methods/low-simmer.md", "---\nfor: 50 g\n---\n")
                .with("days/2026-05-02/brick.md", "---\ntag: 17\nneedles: {lot: scalded-2025, weight: 45 g}\n---\n");
        for (String thing : List.of("alum", "iron-water", "glycerin")) {
            notebook.with("dyes/" + thing + ".md", "---\nkind: other\n---\n");
        }
        if (row.example().contains("bench.txt")) {
            notebook.with("days/2026-05-09/bench.txt", "L,a,b\n36.2,27.4,20.1\n35.8,27.0,19.9\n");
        }
        if (row.example().contains("brick.jpg")) {
            notebook.with("days/2026-05-09/brick.jpg", greyAllOver());
        }
        return notebook;
    }

    private static byte[] greyAllOver() {
        BufferedImage picture = new BufferedImage(1600, 1200, BufferedImage.TYPE_INT_RGB);
        Graphics2D brush = picture.createGraphics();
        brush.setColor(Color.GRAY);
        brush.fillRect(0, 0, 1600, 1200);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            ImageIO.write(picture, "jpeg", bytes);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        return bytes.toByteArray();
    }
}
