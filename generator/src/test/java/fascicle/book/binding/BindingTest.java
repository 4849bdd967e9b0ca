package fascicle.book.binding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A book is written whole or not at all, and what did not change is not touched. */
class BindingTest {
  private static final FileTime LONG_AGO = FileTime.fromMillis(1_000_000_000_000L);
  @TempDir Path folder;
  private Shelf shelf;

  @BeforeEach
  void layOut() throws IOException {
    shelf = Shelf.in(folder);
  }

  @Test
  void aFirstBookHoldsItsPagesAndItsManifestAndNothingElse() throws Exception {
    assertEquals(new Bound(4, 0, 0), shelf.publish(Shelf.FIRST));
    assertEquals(Shelf.FIRST, Shelf.pages(shelf.book()));
    assertEquals(List.of("book", "notebook"), shelf.names());
    assertEquals(
        List.of("entries/brick.html", "entries/ochre.html", "index.html", "methods/simmer.html"),
        List.copyOf(Manifest.parse(manifest(), shelf.book()).sheets().keySet()));
  }

  @Test
  void aChangedBookReplacesTheOldOneAndCountsWhatItDid() throws Exception {
    shelf.publish(Shelf.FIRST);
    assertEquals(new Bound(2, 1, 2), shelf.publish(Shelf.SECOND));
    assertEquals(Shelf.SECOND, Shelf.pages(shelf.book()));
    assertFalse(Files.exists(shelf.book().resolve("methods")), "a folder without pages goes too");
    assertEquals(List.of("book", "notebook"), shelf.names());
  }

  @Test
  void theManifestIsTheSameInWhateverOrderThePagesCome() throws Exception {
    shelf.publish(new TreeMap<>(Shelf.FIRST));
    String forwards = manifest();
    Path other = shelf.folder().resolve("other");
    shelf.publish(new TreeMap<>(Shelf.FIRST).descendingMap(), other);
    assertEquals(forwards, Files.readString(other.resolve(Manifest.NAME)));
  }

  @Test
  void anUnchangedFileStaysTheSameFileAndAChangedOneIsNew() throws Exception {
    shelf.publish(Shelf.FIRST);
    Path kept = shelf.book().resolve("entries/brick.html");
    Path changed = shelf.book().resolve("index.html");
    Files.setLastModifiedTime(kept, LONG_AGO);
    Object keptKey = key(kept);
    Object changedKey = key(changed);
    shelf.publish(Shelf.SECOND);
    assertEquals(LONG_AGO, Files.getLastModifiedTime(kept));
    assumeTrue(keptKey != null, "the file system tells files apart");
    assertEquals(keptKey, key(kept));
    assertNotEquals(changedKey, key(changed));
  }

  @Test
  void ifNothingChangedTheTargetIsNotTouched() throws Exception {
    shelf.publish(Shelf.FIRST);
    for (Path path : List.of(shelf.book().resolve("entries"), shelf.book().resolve(Manifest.NAME), shelf.book())) {
      Files.setLastModifiedTime(path, LONG_AGO);
    }
    Object key = key(shelf.book());
    assertEquals(new Bound(0, 4, 0), shelf.publish(Shelf.FIRST));
    assertEquals(key, key(shelf.book()));
    assertEquals(LONG_AGO, Files.getLastModifiedTime(shelf.book()));
    assertEquals(LONG_AGO, Files.getLastModifiedTime(shelf.book().resolve("entries")));
    assertEquals(LONG_AGO, Files.getLastModifiedTime(shelf.book().resolve(Manifest.NAME)));
    assertEquals(List.of("book", "notebook"), shelf.names());
  }

  @Test
  void ifOnlyPagesAreGoneTheRestStays() throws Exception {
    shelf.publish(Shelf.FIRST);
    Map<String, String> fewer = new TreeMap<>(Shelf.FIRST);
    fewer.remove("entries/ochre.html");
    assertEquals(new Bound(0, 3, 1), shelf.publish(fewer));
    assertEquals(fewer, Shelf.pages(shelf.book()));
  }

  @Test
  void aPageEditedSinceIsMendedEvenAtTheSameSizeAndTime() throws Exception {
    shelf.publish(Shelf.FIRST);
    Path page = shelf.book().resolve("entries/ochre.html");
    FileTime time = Files.getLastModifiedTime(page);
    Files.writeString(page, "OCHRE");
    Files.setLastModifiedTime(page, time);
    assertEquals(new Bound(1, 3, 0), shelf.publish(Shelf.FIRST));
    assertEquals(Shelf.FIRST, Shelf.pages(shelf.book()));
  }

  @Test
  void aPageLostOrCutShortSinceIsMended() throws Exception {
    shelf.publish(Shelf.FIRST);
    Files.delete(shelf.book().resolve("index.html"));
    Files.writeString(shelf.book().resolve("entries/ochre.html"), "");
    assertEquals(new Bound(2, 2, 0), shelf.publish(Shelf.FIRST));
    assertEquals(Shelf.FIRST, Shelf.pages(shelf.book()));
  }

  @Test
  void aManifestWithAWrongChecksumIsMended() throws Exception {
    shelf.publish(Shelf.FIRST);
    String right = manifest();
    Files.writeString(shelf.book().resolve(Manifest.NAME), right.replaceFirst("\n[0-9a-f]{8} ", "\n00000000 "));
    assertEquals(new Bound(0, 4, 0), shelf.publish(Shelf.FIRST));
    assertEquals(right, manifest());
  }

  @Test
  void aPageThatBecomesAFolderAndBack() throws Exception {
    Map<String, String> page = Map.of("entries", "a list");
    Map<String, String> pages = Map.of("entries/brick.html", "brick");
    shelf.publish(page);
    assertEquals(new Bound(1, 0, 1), shelf.publish(pages));
    assertEquals(pages, Shelf.pages(shelf.book()));
    shelf.publish(page);
    assertEquals(page, Shelf.pages(shelf.book()));
  }

  @Test
  void whereLinksAreImpossibleAFileIsCopiedWithItsTime() throws Exception {
    Path from = Shelf.write(shelf.folder().resolve("page.html"), "brick");
    Files.setLastModifiedTime(from, LONG_AGO);
    List<Folders.Linking> without =
        List.of(
            (name, file) -> {
              throw new UnsupportedOperationException();
            },
            (name, file) -> {
              throw new FileSystemException("too many links");
            });
    for (Folders.Linking linking : without) {
      Path to = shelf.folder().resolve("kept-" + without.indexOf(linking) + ".html");
      Folders.keep(from, to, linking);
      assertEquals("brick", Files.readString(to));
      assertEquals(LONG_AGO, Files.getLastModifiedTime(to));
    }
  }

  @Test
  void closingWithoutFinishingLeavesTheOldBookAndNothingElse() throws Exception {
    shelf.publish(Shelf.FIRST);
    Map<String, String> before = Shelf.tree(shelf.book());
    try (Binding binding = shelf.open()) {
      binding.put("index.html", bytes("half a book"));
      assertEquals(before, Shelf.tree(shelf.book()));
    }
    assertEquals(before, Shelf.tree(shelf.book()));
    assertEquals(List.of("book", "notebook"), shelf.names());
  }

  @Test
  void closingAFirstBookWithoutFinishingLeavesNoFolderAtAll() throws Exception {
    Path deep = shelf.folder().resolve("a/b/book");
    try (Binding binding = Binding.open(deep, shelf.notebook(), "studio")) {
      binding.put("entries/brick.html", bytes("brick"));
    }
    assertEquals(List.of("notebook"), shelf.names());
  }

  @Test
  void aBookThatFailedToWriteAPageCannotBeFinished() throws Exception {
    shelf.publish(Shelf.FIRST);
    Map<String, String> before = Shelf.tree(shelf.book());
    try (Binding binding = shelf.open()) {
      // Stands for any failing disk: a file where the new book's folder must be.
      Shelf.write(shelf.place().fresh().resolve("entries"), "in the way");
      assertThrows(IOException.class, () -> binding.put("entries/rust.html", bytes("rust")));
      binding.put("index.html", bytes("second"));
      assertThrows(IOException.class, binding::finish);
    }
    assertEquals(before, Shelf.tree(shelf.book()));
    assertEquals(List.of("book", "notebook"), shelf.names());
  }

  @Test
  void ifTheNewBookCannotBePutInTheOldOneComesBack() throws Exception {
    shelf.publish(Shelf.FIRST);
    Map<String, String> before = Shelf.tree(shelf.book());
    assertThrows(IOException.class, () -> Changeover.run(shelf.place(), null), "there is no new book to put in");
    assertEquals(before, Shelf.tree(shelf.book()));
    assertEquals(List.of("book", "notebook"), shelf.names());
  }

  @Test
  void aFinishedOrClosedBookTakesNoMorePages() throws Exception {
    Binding binding = shelf.open();
    binding.put("index.html", bytes("first"));
    binding.finish();
    assertThrows(IllegalStateException.class, () -> binding.put("late.html", bytes("late")));
    assertThrows(IllegalStateException.class, binding::finish);
    binding.close();
    binding.close();
    assertThrows(IllegalStateException.class, () -> binding.put("late.html", bytes("late")));
    assertEquals(Map.of("index.html", "first"), Shelf.pages(shelf.book()));
  }

  @Test
  void anAddressTwiceIsTheCallersMistakeAndSpoilsNothing() throws Exception {
    try (Binding binding = shelf.open()) {
      binding.put("index.html", bytes("first"));
      assertThrows(IllegalArgumentException.class, () -> binding.put("Index.html", bytes("again")));
      assertThrows(IllegalArgumentException.class, () -> binding.put("../index.html", bytes("out")));
      assertEquals(new Bound(1, 0, 0), binding.finish());
    }
    assertEquals(Map.of("index.html", "first"), Shelf.pages(shelf.book()));
  }

  @Test
  void severalThreadsMayPutPagesAtOnce() throws Exception {
    shelf.publish(Map.of("entries/0/0.html", "0", "entries/0/1.html", "other"));
    int threads = 8;
    int each = 150;
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    try (Binding binding = shelf.open()) {
      List<Future<?>> running = new ArrayList<>();
      for (int t = 0; t < threads; t++) {
        int from = t;
        running.add(
            pool.submit(
                () -> {
                  for (int i = from; i < threads * each; i += threads) {
                    // Neighbours go to different threads, so that these meet in making a folder.
                    binding.put("entries/" + i / 10 + "/" + i + ".html", bytes("" + i));
                  }
                  return null;
                }));
      }
      for (Future<?> future : running) {
        future.get();
      }
      assertEquals(new Bound(threads * each - 1, 1, 0), binding.finish());
    } finally {
      pool.shutdownNow();
    }
    Map<String, String> pages = Shelf.pages(shelf.book());
    assertEquals(threads * each, pages.size());
    pages.forEach((address, text) -> assertTrue(address.endsWith("/" + text + ".html"), address));
  }

  @Test
  void ofThreadsThatPutTheSameAddressOneWins() throws Exception {
    ExecutorService pool = Executors.newFixedThreadPool(4);
    try (Binding binding = shelf.open()) {
      List<Future<Boolean>> running = new ArrayList<>();
      for (int t = 0; t < 4; t++) {
        running.add(
            pool.submit(
                () -> {
                  try {
                    binding.put("index.html", bytes("one"));
                    return true;
                  } catch (IllegalArgumentException second) {
                    return false;
                  }
                }));
      }
      int won = 0;
      for (Future<Boolean> future : running) {
        won += future.get() ? 1 : 0;
      }
      assertEquals(1, won);
    } finally {
      pool.shutdownNow();
    }
  }

  @Test
  void anEmptyFolderIsTaken() throws Exception {
    Files.createDirectory(shelf.book());
    assertEquals(new Bound(4, 0, 0), shelf.publish(Shelf.FIRST));
    assertEquals(Shelf.FIRST, Shelf.pages(shelf.book()));
    assertEquals(List.of("book", "notebook"), shelf.names());
  }

  @Test
  void aMissingParentIsMade() throws Exception {
    Path deep = shelf.folder().resolve("a/b/book");
    shelf.publish(Shelf.FIRST, deep);
    assertEquals(Shelf.FIRST, Shelf.pages(deep));
  }

  @Test
  void aLinkToAFolderIsFollowedAndStaysALink() throws Exception {
    Path real = Files.createDirectories(shelf.folder().resolve("disk/real"));
    Path link = link(shelf.folder().resolve("link"), real);
    shelf.publish(Shelf.FIRST, link);
    shelf.publish(Shelf.SECOND, link);
    assertTrue(Files.isSymbolicLink(link));
    assertEquals(Shelf.SECOND, Shelf.pages(real));
    assertEquals(List.of("disk", "link", "notebook"), shelf.names());
  }

  @Test
  void aLinkToAFolderThatIsNotThereYetIsFollowedToo() throws Exception {
    Path link = link(shelf.folder().resolve("link"), Path.of("disk/real"));
    shelf.publish(Shelf.FIRST, link);
    assertEquals(Shelf.FIRST, Shelf.pages(shelf.folder().resolve("disk/real")));
  }

  @Test
  void aRelativePathWithDotsIsFollowed() throws Exception {
    Path here = Path.of("").toAbsolutePath();
    assumeTrue(here.getRoot().equals(shelf.folder().getRoot()), "on the same disk");
    Path relative = here.relativize(shelf.folder()).resolve("not-there/../book/.");
    shelf.publish(Shelf.FIRST, relative);
    assertEquals(Shelf.FIRST, Shelf.pages(shelf.book()));
    assertEquals(List.of("book", "notebook"), shelf.names());
  }

  @Test
  void theSystemsLitterIsCarriedOver() throws Exception {
    shelf.publish(Shelf.FIRST);
    Shelf.write(shelf.book().resolve(".DS_Store"), "finder");
    Shelf.write(shelf.book().resolve("entries/Thumbs.db"), "thumbs");
    Shelf.write(shelf.book().resolve("methods/desktop.ini"), "icon");
    assertEquals(new Bound(2, 1, 2), shelf.publish(Shelf.SECOND));
    Map<String, String> expected = new TreeMap<>(Shelf.SECOND);
    expected.put(".DS_Store", "finder");
    expected.put("entries/Thumbs.db", "thumbs");
    expected.put("methods/desktop.ini", "icon"); // in a folder the new book no longer has
    assertEquals(expected, Shelf.pages(shelf.book()));
    assertEquals(List.of("book", "notebook"), shelf.names());
    assertEquals(new Bound(0, 3, 0), shelf.publish(Shelf.SECOND), "and is no change");
  }

  @Test
  void litterWhoseFolderBecameAPageGoes() throws Exception {
    shelf.publish(Map.of("entries/brick.html", "brick"));
    Shelf.write(shelf.book().resolve("entries/.DS_Store"), "finder");
    shelf.publish(Map.of("entries", "a list"));
    assertEquals(Map.of("entries", "a list"), Shelf.pages(shelf.book()));
    assertEquals(List.of("book", "notebook"), shelf.names());
  }

  @Test
  void aFolderWithNothingButLitterIsAsGoodAsEmpty() throws Exception {
    Shelf.write(shelf.book().resolve(".DS_Store"), "finder");
    shelf.publish(Map.of("index.html", "first"));
    assertEquals(Map.of("index.html", "first", ".DS_Store", "finder"), Shelf.pages(shelf.book()));
    assertEquals(List.of("book", "notebook"), shelf.names());
  }

  @Test
  void aFileThatSomebodySavedWhileWeWroteIsNotLost() throws Exception {
    shelf.publish(Shelf.FIRST);
    try (Binding binding = shelf.open()) {
      binding.put("index.html", bytes("second"));
      Shelf.write(shelf.book().resolve("entries/notes.txt"), "mine");
      binding.finish();
    }
    assertEquals(Map.of("index.html", "second", "entries/notes.txt", "mine"), Shelf.pages(shelf.book()));
    assertTrue(shelf.refusal(shelf.book()).contains("entries/notes.txt"));
  }

  @Test
  void aPrivateFolderStaysPrivate() throws Exception {
    shelf.publish(Shelf.FIRST);
    assumeTrue(Files.getFileStore(shelf.book()).supportsFileAttributeView("posix"), "permissions by POSIX");
    Files.setPosixFilePermissions(shelf.book(), PosixFilePermissions.fromString("rwx------"));
    shelf.publish(Shelf.SECOND);
    assertEquals("rwx------", PosixFilePermissions.toString(Files.getPosixFilePermissions(shelf.book())));
  }

  @Test
  void deniedPermissionIsAFailureOfTheDiskAndTheOldBookStays() throws Exception {
    shelf.publish(Shelf.FIRST);
    assumeTrue(Files.getFileStore(shelf.book()).supportsFileAttributeView("posix"), "permissions by POSIX");
    Map<String, String> before = Shelf.tree(shelf.book());
    for (Path closed : List.of(shelf.folder(), shelf.book())) {
      Files.setPosixFilePermissions(closed, PosixFilePermissions.fromString("r-xr-xr-x"));
      try {
        assumeTrue(!Files.isWritable(closed), "permissions bind this user");
        assertThrows(IOException.class, () -> shelf.publish(Shelf.SECOND));
      } finally {
        Files.setPosixFilePermissions(closed, PosixFilePermissions.fromString("rwxr-xr-x"));
      }
      assertEquals(before, Shelf.tree(shelf.book()));
      assertEquals(List.of("book", "notebook"), shelf.names());
    }
  }

  @Test
  void aPageThatCannotBeReadIsWrittenAnew() throws Exception {
    shelf.publish(Shelf.FIRST);
    Path page = shelf.book().resolve("index.html");
    assumeTrue(Files.getFileStore(page).supportsFileAttributeView("posix"), "permissions by POSIX");
    Files.setPosixFilePermissions(page, PosixFilePermissions.fromString("---------"));
    assumeTrue(!Files.isReadable(page), "permissions bind this user");
    shelf.publish(Shelf.FIRST);
    assertEquals("first", Files.readString(page));
  }

  private String manifest() throws IOException {
    return Files.readString(shelf.book().resolve(Manifest.NAME));
  }

  private static Object key(Path path) throws IOException {
    return Files.readAttributes(path, BasicFileAttributes.class).fileKey();
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  static Path link(Path link, Path to) {
    try {
      return Files.createSymbolicLink(link, to);
    } catch (IOException | UnsupportedOperationException e) {
      assumeTrue(false, "links can be made here");
      return link;
    }
  }
}
