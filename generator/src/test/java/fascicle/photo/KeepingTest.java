package fascicle.photo;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import fascicle.colour.Lab;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeepingTest {

    private static final Area NEEDLES = new Area(5, 5, 40, 90);
    private static final List<Patch> CARD = List.of(
            Patch.grey(new Area(55, 5, 40, 40), 18),
            new Patch(new Area(55, 55, 40, 40), new Lab(48.3, 0.1, -0.7)));

    @TempDir
    Path folder;

    private Path kept;
    private Path file;

    @BeforeEach
    void takeAPhotograph() {
        kept = folder.resolve("kept").resolve("here");
        file = Pictures.write(folder, "brick.jpg", Pictures.jpeg(
                Pictures.painted(200, 150, (x, y) -> x < 100 ? 0x7f4632 + x % 5 * 0x030201 : 0x777777)));
    }

    @Test
    void whatIsKeptEqualsWhatIsFreshToTheLastBit() throws Exception {
        Sample fresh = Darkroom.withoutCache().sample(file, NEEDLES, CARD);
        byte[] print = Darkroom.withoutCache().print(file, 80);
        Picture picture = Darkroom.withoutCache().picture(file);
        for (int i = 0; i < 2; i++) {
            Darkroom darkroom = Darkroom.keeping(kept);
            assertEquals(fresh, darkroom.sample(file, NEEDLES, CARD));
            assertArrayEquals(print, darkroom.print(file, 80));
            assertEquals(picture, darkroom.picture(file));
        }
        assertEquals(1, Darkroom.withoutCache().sample(file, NEEDLES, CARD).cautions().size());
    }

    @Test
    void aFileOfTheSamePlaceSizeAndTimeIsNotReadAgain() throws Exception {
        Darkroom darkroom = Darkroom.keeping(kept);
        Sample sample = darkroom.sample(file, NEEDLES, CARD);
        byte[] print = darkroom.print(file, 80);
        FileTime time = Files.getLastModifiedTime(file);
        Files.write(file, new byte[(int) Files.size(file)]);
        Files.setLastModifiedTime(file, time);
        assertEquals(sample, darkroom.sample(file, NEEDLES, CARD));
        assertArrayEquals(print, darkroom.prints(file, List.of(80)).get(0));
        Files.setLastModifiedTime(file, FileTime.fromMillis(time.toMillis() + 1));
        assertThrows(UnreadablePhotograph.class, () -> darkroom.sample(file, NEEDLES, CARD));
    }

    @Test
    void anotherQuestionHasAnotherAnswer() throws Exception {
        Darkroom darkroom = Darkroom.keeping(kept);
        Sample sample = darkroom.sample(file, NEEDLES, CARD);
        assertNotEquals(sample, darkroom.sample(file, new Area(5, 5, 39, 90), CARD));
        assertNotEquals(sample, darkroom.sample(file, NEEDLES, CARD.subList(0, 1)));
        assertNotEquals(sample.lab(),
                darkroom.sample(file, NEEDLES, List.of(Patch.grey(new Area(55, 5, 40, 40), 20))).lab());
        assertNotEquals(darkroom.print(file, 80).length, darkroom.print(file, 81).length);
    }

    /** The same picture under another name is known by its content. */
    @Test
    void contentDecidesAndNotTheName() throws Exception {
        Sample sample = Darkroom.keeping(kept).sample(file, NEEDLES, CARD);
        Path copy = Files.copy(file, folder.resolve("copy.jpg"));
        assertEquals(sample, Darkroom.keeping(kept).sample(copy, NEEDLES, CARD));
        assertEquals(Darkroom.keeping(kept).picture(file), Darkroom.keeping(kept).picture(copy));
    }

    @Test
    void damagedAndForeignFilesAreReplaced() throws Exception {
        Darkroom darkroom = Darkroom.keeping(kept);
        Sample sample = darkroom.sample(file, NEEDLES, CARD);
        byte[] print = darkroom.print(file, 80);
        List<Path> files = files();
        for (Path each : files) {
            byte[] content = Files.readAllBytes(each);
            content[content.length - 1] ^= 1;
            Files.write(each, content);
        }
        assertEquals(sample, darkroom.sample(file, NEEDLES, CARD));
        assertArrayEquals(print, darkroom.print(file, 80));
        for (Path each : files) {
            Files.writeString(each, "not ours");
        }
        assertEquals(sample, darkroom.sample(file, NEEDLES, CARD));
        assertArrayEquals(print, darkroom.print(file, 80));
        assertEquals(files, files());
        for (Path each : files) {
            assertNotEquals("not ours".length(), Files.size(each));
        }
    }

    @Test
    void aFolderThatCannotBeWrittenFailsNothing() throws Exception {
        Path blocked = Files.writeString(folder.resolve("a file"), "in the way");
        assertEquals(Darkroom.withoutCache().sample(file, NEEDLES, CARD),
                Darkroom.keeping(blocked.resolve("folder")).sample(file, NEEDLES, CARD));
    }

    @Test
    void whatIsRefusedIsRefusedAgain() {
        Path text = Pictures.write(folder, "a.jpg", Pictures.text("no picture"));
        for (int i = 0; i < 2; i++) {
            assertThrows(UnreadablePhotograph.class, () -> Darkroom.keeping(kept).picture(text));
        }
    }

    /** SHA-256 of "abc": FIPS 180-4, example B.1 of its first edition. */
    @Test
    void contentIsNamedByItsHash() {
        assertEquals("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
                Photograph.hash(Pictures.text("abc")));
    }

    /** XDG Base Directory Specification 0.8: the variable if it is an absolute path, else {@code $HOME/.cache}. */
    @Test
    void theUsersFolderIsTheUsualOne() {
        Path home = folder.toAbsolutePath();
        Path set = home.resolve("set");
        assertEquals(set.resolve("fascicle"), UsersFolder.of("Linux", home, Map.of("XDG_CACHE_HOME", set.toString())));
        assertEquals(home.resolve(".cache/fascicle"), UsersFolder.of("Linux", home, Map.of("XDG_CACHE_HOME", "set")));
        assertEquals(home.resolve(".cache/fascicle"), UsersFolder.of("Linux", home, Map.of()));
        assertEquals(home.resolve("Library/Caches/fascicle"), UsersFolder.of("Mac OS X", home, Map.of()));
        assertEquals(set.resolve("fascicle"), 
                UsersFolder.of("WINDOWS 11", home, Map.of("LOCALAPPDATA", set.toString())));
    }

    private List<Path> files() throws Exception {
        try (Stream<Path> files = Files.list(kept)) {
            return files.sorted().toList();
        }
    }
}
