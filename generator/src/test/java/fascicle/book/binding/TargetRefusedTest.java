package fascicle.book.binding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A book is never put where it could cost somebody a file; a refusal says why and changes nothing. */
class TargetRefusedTest {
  @TempDir Path folder;
  private Shelf shelf;

  @BeforeEach
  void layOut() throws IOException {
    shelf = Shelf.in(folder);
  }

  /** Checks that the target is refused with these words and that nothing on the shelf has changed. */
  private void refused(Path target, String... words) throws IOException {
    Map<String, String> before = Shelf.tree(shelf.folder());
    String sentence = shelf.refusal(target);
    for (String word : words) {
      assertTrue(sentence.contains(word), sentence);
    }
    assertTrue(sentence.contains("choose"), "says what to do: " + sentence);
    assertEquals(before, Shelf.tree(shelf.folder()));
  }

  @Test
  void aFolderWithAStrangersFile() throws Exception {
    Shelf.write(shelf.book().resolve("novel.txt"), "chapter one");
    refused(shelf.book(), "novel.txt", "empty or new folder");
  }

  @Test
  void aFolderWithAnEmptyFolderInIt() throws Exception {
    Files.createDirectories(shelf.book().resolve("drafts"));
    refused(shelf.book(), "drafts/");
  }

  @Test
  void theFirstStrangersAreNamedAndTheRestCounted() throws Exception {
    for (String name : new String[] {"e", "d", "c", "b", "a"}) {
      Shelf.write(shelf.book().resolve(name + ".txt"), name);
    }
    refused(shelf.book(), "(a.txt, b.txt, c.txt and 2 more)");
  }

  @ParameterizedTest
  @ValueSource(strings = {"novel.txt", "entries/novel.txt", "new/folder/novel.txt", "fascicle.manifest.bak"})
  void aBookWithAStrangersFileAnywhereInIt(String stranger) throws Exception {
    shelf.publish(Shelf.FIRST);
    Shelf.write(shelf.book().resolve(stranger), "mine");
    refused(shelf.book(), "(" + stranger + ")");
  }

  @Test
  void aBookInWhichALinkTookAPagesPlace() throws Exception {
    shelf.publish(Shelf.FIRST);
    Files.delete(shelf.book().resolve("index.html"));
    BindingTest.link(shelf.book().resolve("index.html"), shelf.notebook().resolve("notebook.yaml"));
    refused(shelf.book(), "index.html");
  }

  @Test
  void aBookInWhichALinkTookAFoldersPlace() throws Exception {
    shelf.publish(Shelf.FIRST);
    Path away = Files.move(shelf.book().resolve("entries"), shelf.folder().resolve("away"));
    BindingTest.link(shelf.book().resolve("entries"), away);
    refused(shelf.book(), "(entries)");
  }

  @Test
  void litterIsOnlyAPlainFile() throws Exception {
    shelf.publish(Shelf.FIRST);
    Shelf.write(shelf.book().resolve(".DS_Store/novel.txt"), "mine");
    refused(shelf.book(), ".DS_Store/novel.txt");
  }

  @Test
  void anotherEditionNamesBoth() throws Exception {
    shelf.publish(Shelf.FIRST);
    Map<String, String> before = Shelf.tree(shelf.folder());
    String sentence =
        assertThrows(
                TargetRefused.class, () -> Binding.open(shelf.book(), shelf.notebook(), "students").close())
            .getMessage();
    assertTrue(sentence.contains("“studio”") && sentence.contains("“students”"), sentence);
    assertEquals(before, Shelf.tree(shelf.folder()));
  }

  @Test
  void aFile() throws Exception {
    Shelf.write(shelf.book(), "a file");
    refused(shelf.book(), "is a file");
    refused(shelf.book().resolve("below"), "is a file");
  }

  @Test
  void theNotebookAndWhatLiesInItAndWhatContainsIt() throws Exception {
    refused(shelf.notebook(), "is the notebook");
    refused(shelf.notebook().resolve("book"), "lies in the notebook");
    refused(shelf.notebook().resolve("a/b/book"), "lies in the notebook");
    refused(shelf.folder(), "contains the notebook");
    refused(shelf.notebook().resolve("../notebook/./book"), "lies in the notebook");
  }

  @Test
  void theNotebookByWayOfLinks() throws Exception {
    Path link = BindingTest.link(shelf.folder().resolve("link"), shelf.notebook());
    refused(link, "is the notebook");
    refused(link.resolve("book"), "lies in the notebook");
    Path into = BindingTest.link(shelf.folder().resolve("into"), shelf.notebook().resolve("book"));
    refused(into, "lies in the notebook");
    Path up = BindingTest.link(shelf.folder().resolve("up"), shelf.folder());
    refused(up, "contains the notebook");
    String sentence =
        assertThrows(
                TargetRefused.class,
                () -> Binding.open(shelf.notebook().resolve("book"), link, "studio").close())
            .getMessage();
    assertTrue(sentence.contains("lies in the notebook"), sentence);
  }

  @Test
  void theNotebookInAnotherCaseWhereTheFileSystemDoesNotCare() throws Exception {
    Path shouted = shelf.folder().resolve("NOTEBOOK");
    assumeTrue(Files.exists(shouted), "a file system that does not care about case");
    refused(shouted, "is the notebook");
    refused(shouted.resolve("book"), "lies in the notebook");
  }

  @Test
  void aNeighbourWhoseNameBeginsAlikeIsNotTheNotebook() throws Exception {
    shelf.publish(Shelf.FIRST, shelf.folder().resolve("notebook-book"));
    assertEquals(Shelf.FIRST, Shelf.pages(shelf.folder().resolve("notebook-book")));
  }

  @Test
  void theRootOfADisk() {
    String sentence = shelf.refusal(shelf.folder().getRoot());
    assertTrue(sentence.contains("root of a disk") || sentence.contains("contains the notebook"), sentence);
  }

  @Test
  void theWorkingFolderWhenItHoldsOtherThings() {
    // These tests run in the program's own folder, which holds its sources.
    assertTrue(Files.exists(Path.of("pom.xml")));
    for (String here : new String[] {"", ".", "./."}) {
      String sentence = shelf.refusal(Path.of(here));
      assertTrue(sentence.contains("“" + here + "”") && sentence.contains("holds what Fascicle did not make"), sentence);
    }
  }

  @Test
  void aLinkThatLeadsInACircle() throws Exception {
    BindingTest.link(shelf.folder().resolve("one"), Path.of("two"));
    Path two = BindingTest.link(shelf.folder().resolve("two"), Path.of("one"));
    refused(two, "circle");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "my own list\n",
        "fascicle manifest, form 2\nedition studio\n",
        "fascicle manifest, form 1\nedition studio\n00000000 8 ../notebook/notebook.yaml\n",
        "fascicle manifest, form 1\nedition studio\n00000000 8 /notebook/notebook.yaml\n",
      })
  void aManifestThatCannotBeTrusted(String manifest) throws Exception {
    shelf.publish(Shelf.FIRST);
    Files.writeString(shelf.book().resolve(Manifest.NAME), manifest);
    refused(shelf.book(), "manifest");
  }

  @Test
  void aManifestThatIsNoTextOrNoFile() throws Exception {
    Path manifest = shelf.book().resolve(Manifest.NAME);
    shelf.publish(Shelf.FIRST);
    Files.delete(manifest);
    Files.createDirectory(manifest);
    refused(shelf.book(), "not a plain file");
    Files.delete(manifest);
    Files.write(manifest, new byte[] {(byte) 0xff, (byte) 0xfe, 0});
    assertTrue(shelf.refusal(shelf.book()).contains("not text"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"new", "old"})
  void aNeighbourOfOurNameThatWeDidNotMake(String which) throws Exception {
    shelf.publish(Shelf.FIRST);
    Path neighbour = shelf.folder().resolve(".book.fascicle-" + which);
    Shelf.write(neighbour.resolve("novel.txt"), "mine");
    refused(shelf.book(), neighbour.toString(), "rename it");
    Files.delete(neighbour.resolve("novel.txt"));
    Files.delete(neighbour);
    Shelf.write(neighbour, "a file of mine");
    refused(shelf.book(), neighbour.toString(), "rename it");
  }

  @Test
  void aLinkOfOurNameIsNotFollowed() throws Exception {
    shelf.publish(Shelf.FIRST);
    shelf.publish(Shelf.SECOND, shelf.folder().resolve("other"));
    BindingTest.link(shelf.place().fresh(), shelf.folder().resolve("other"));
    String sentence = shelf.refusal(shelf.book());
    assertTrue(sentence.contains("rename it"), sentence);
    assertEquals(Shelf.SECOND, Shelf.pages(shelf.folder().resolve("other")));
  }

  @Test
  void aFileOfOurLocksNameThatWeDidNotMake() throws Exception {
    Shelf.write(shelf.place().lock(), "my door key");
    refused(shelf.book(), shelf.place().lock().toString(), "rename it");
  }

  @Test
  void aMountedDisk() throws Exception {
    Path disk = Path.of("/dev/shm");
    assumeTrue(Files.isDirectory(disk) && !Files.getFileStore(disk).equals(Files.getFileStore(Path.of("/dev"))));
    assertTrue(shelf.refusal(disk).contains("disk of its own"));
  }
}
