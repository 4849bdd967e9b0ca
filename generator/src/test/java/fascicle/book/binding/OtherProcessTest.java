package fascicle.book.binding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Runs that meet, die or run out of disk, as real processes. */
class OtherProcessTest {
  @TempDir Path folder;
  private Shelf shelf;

  @BeforeEach
  void layOut() throws IOException {
    shelf = Shelf.in(folder);
  }

  /** A run of its own: binds a page of some size, then finishes, waits or dies. */
  static final class Run {
    public static void main(String[] arguments) throws Exception {
      try (Binding binding =
          Binding.open(Path.of(arguments[0]), Path.of(arguments[1]), "studio")) {
        binding.put("entries/page.html", "x".repeat(Integer.parseInt(arguments[2])).getBytes(StandardCharsets.UTF_8));
        switch (arguments[3]) {
          case "finishes" -> System.out.println(binding.finish());
          case "waits" -> {
            System.out.println("waiting");
            System.out.flush();
            System.in.read();
          }
          default -> Runtime.getRuntime().halt(9);
        }
      } catch (TargetRefused e) {
        System.out.println(e.getMessage());
        System.exit(2);
      } catch (IOException e) {
        System.out.println(e.getMessage());
        System.exit(3);
      }
    }
  }

  private Process run(Path in, List<String> before, String target, int size, String how) throws IOException {
    List<String> command = new ArrayList<>(before);
    command.addAll(
        List.of(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-XX:-UsePerfData", "-Xshare:auto",
            "-cp", System.getProperty("java.class.path"), Run.class.getName(),
            target, shelf.notebook().toString(), Integer.toString(size), how));
    return new ProcessBuilder(command).directory(in.toFile()).redirectErrorStream(true).start();
  }

  private static String words(Process process) throws IOException {
    return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
  }

  @Test
  void aSecondRunOfThisProcessIsRefusedAndTheFirstGoesOn() throws Exception {
    try (Binding first = shelf.open()) {
      String sentence = shelf.refusal(shelf.book());
      assertTrue(sentence.contains("another run"), sentence);
      // Refusing it must not have unlocked the first, for other processes neither.
      Process second = run(folder, List.of(), shelf.book().toString(), 1, "finishes");
      assertTrue(words(second).contains("another run"));
      assertEquals(2, second.waitFor());
      first.put("index.html", new byte[] {'1'});
      first.finish();
    }
    assertEquals(Map.of("index.html", "1"), Shelf.pages(shelf.book()));
    assertEquals(List.of("book", "notebook"), shelf.names());
  }

  @Test
  void aRunBesideAnotherProcessIsRefusedUntilThatHasEnded() throws Exception {
    shelf.publish(Shelf.FIRST);
    Process first = run(folder, List.of(), shelf.book().toString(), 1, "waits");
    try {
      byte[] said = first.getInputStream().readNBytes("waiting".length());
      assertEquals("waiting", new String(said, StandardCharsets.UTF_8));
      assertTrue(shelf.refusal(shelf.book()).contains("another run"));
      assertTrue(Files.exists(shelf.place().fresh()), "the refused run left the other's work alone");
    } finally {
      first.getOutputStream().close();
    }
    assertEquals(0, first.waitFor());
    assertEquals(new Bound(2, 1, 2), shelf.publish(Shelf.SECOND));
    assertEquals(List.of("book", "notebook"), shelf.names());
  }

  @Test
  void runsOnOtherTargetsDoNotMeet() throws Exception {
    try (Binding first = shelf.open()) {
      shelf.publish(Shelf.FIRST, shelf.folder().resolve("other"));
      first.put("index.html", new byte[] {'1'});
      first.finish();
    }
    assertEquals(List.of("book", "notebook", "other"), shelf.names());
  }

  @Test
  void aRunThatWasKilledIsTidiedUpByTheNext() throws Exception {
    shelf.publish(Shelf.FIRST);
    Process killed = run(folder, List.of(), shelf.book().toString(), 100, "dies");
    assertEquals("", words(killed));
    assertEquals(9, killed.waitFor());
    assertTrue(Files.exists(shelf.place().fresh()) && Files.exists(shelf.place().lock()), "it died amid its work");
    assertEquals(Shelf.FIRST, Shelf.pages(shelf.book()));
    shelf.publish(Shelf.SECOND);
    assertEquals(Shelf.SECOND, Shelf.pages(shelf.book()));
    assertEquals(List.of("book", "notebook"), shelf.names());
  }

  /** A limit on a file's size stands for the full disk: the write fails half-way, as it would there. */
  @Test
  void aFullDiskLeavesTheOldBookWholeAndNothingElse() throws Exception {
    assumeTrue(Files.isExecutable(Path.of("/bin/sh")), "a shell that can set limits");
    shelf.publish(Shelf.FIRST);
    Map<String, String> before = Shelf.tree(shelf.book());
    List<String> limited = Arrays.asList("/bin/sh", "-c", "ulimit -f 64 && exec \"$@\"", "sh");
    Process small = run(folder, limited, shelf.book().toString(), 100, "dies");
    words(small);
    assumeTrue(small.waitFor() == 9, "the limit leaves small files alone");
    Process large = run(folder, limited, shelf.book().toString(), 1_000_000, "finishes");
    String words = words(large);
    assertEquals(3, large.waitFor(), words);
    assertFalse(words.isBlank());
    assertEquals(before, Shelf.tree(shelf.book()));
    assertEquals(List.of("book", "notebook"), shelf.names());
  }

  @Test
  void theEmptyFolderARunStandsInCanBeItsTargetAndSoCanTheBook() throws Exception {
    assumeTrue(!System.getProperty("os.name").startsWith("Windows"), "a folder in use can be renamed");
    Files.createDirectory(shelf.book());
    for (int size : new int[] {1, 2}) {
      Process here = run(shelf.book(), List.of(), ".", size, "finishes");
      String words = words(here);
      assertEquals(0, here.waitFor(), words);
      assertEquals(Map.of("entries/page.html", "x".repeat(size)), Shelf.pages(shelf.book()));
    }
    assertEquals(List.of("book", "notebook"), shelf.names());
    assertNotEquals(0, run(shelf.notebook(), List.of(), ".", 1, "finishes").waitFor());
  }
}
