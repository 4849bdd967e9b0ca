package fascicle.book.binding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Whatever step a run died at, a whole book stands after the next one has begun, and nothing is lost. */
class InterruptedRunTest {
  @TempDir Path folder;
  private Shelf shelf;
  private Place place;

  @BeforeEach
  void layOut() throws IOException {
    shelf = Shelf.in(folder);
    place = shelf.place();
  }

  /** What a run that was replacing the first book by the second left when it died, step by step. */
  enum Died {
    ON_TAKING_THE_LOCK(Shelf.FIRST) {
      @Override
      void leave(Shelf shelf, Place place) throws Exception {
        shelf.publish(Shelf.FIRST);
        Files.createFile(place.lock());
      }
    },
    ON_MAKING_THE_NEW_FOLDER(Shelf.FIRST) {
      @Override
      void leave(Shelf shelf, Place place) throws Exception {
        ON_TAKING_THE_LOCK.leave(shelf, place);
        Files.createDirectory(place.fresh());
      }
    },
    ON_MARKING_THE_NEW_FOLDER(Shelf.FIRST) {
      @Override
      void leave(Shelf shelf, Place place) throws Exception {
        ON_MAKING_THE_NEW_FOLDER.leave(shelf, place);
        Files.createFile(place.fresh().resolve(Manifest.NAME));
      }
    },
    AFTER_A_FEW_PAGES(Shelf.FIRST) {
      @Override
      void leave(Shelf shelf, Place place) throws Exception {
        ON_MAKING_THE_NEW_FOLDER.leave(shelf, place);
        Shelf.write(place.fresh().resolve(Manifest.NAME), Manifest.head("studio"));
        Shelf.write(place.fresh().resolve("index.html"), "sec");
        Files.createDirectory(place.fresh().resolve("entries"));
        Files.createLink(
            place.fresh().resolve("entries/brick.html"), place.target().resolve("entries/brick.html"));
      }
    },
    AMID_THE_MANIFEST(Shelf.FIRST) {
      @Override
      void leave(Shelf shelf, Place place) throws Exception {
        AFTER_A_FEW_PAGES.leave(shelf, place);
        Shelf.write(place.fresh().resolve(Manifest.NAME), Manifest.head("studio") + "8a9136aa 3");
      }
    },
    BEFORE_THE_FIRST_RENAME(Shelf.FIRST) {
      @Override
      void leave(Shelf shelf, Place place) throws Exception {
        shelf.publish(Shelf.FIRST);
        shelf.publish(Shelf.SECOND, shelf.folder().resolve("made"));
        Files.move(shelf.folder().resolve("made"), place.fresh());
      }
    },
    BETWEEN_THE_RENAMES(Shelf.FIRST) {
      @Override
      void leave(Shelf shelf, Place place) throws Exception {
        BEFORE_THE_FIRST_RENAME.leave(shelf, place);
        Files.move(place.target(), place.aside());
      }
    },
    BETWEEN_THE_RENAMES_AND_SOMEBODY_MADE_THE_FOLDER(Shelf.FIRST) {
      @Override
      void leave(Shelf shelf, Place place) throws Exception {
        BETWEEN_THE_RENAMES.leave(shelf, place);
        Files.createDirectory(place.target());
      }
    },
    AFTER_THE_SECOND_RENAME(Shelf.SECOND) {
      @Override
      void leave(Shelf shelf, Place place) throws Exception {
        BETWEEN_THE_RENAMES.leave(shelf, place);
        Files.move(place.fresh(), place.target());
      }
    },
    AMID_DELETING_THE_OLD(Shelf.SECOND) {
      @Override
      void leave(Shelf shelf, Place place) throws Exception {
        AFTER_THE_SECOND_RENAME.leave(shelf, place);
        Files.delete(place.aside().resolve("entries/ochre.html"));
        Files.delete(place.aside().resolve("methods/simmer.html"));
        Files.delete(place.aside().resolve("methods"));
      }
    },
    ON_DELETING_THE_OLD_MANIFEST(Shelf.SECOND) {
      @Override
      void leave(Shelf shelf, Place place) throws Exception {
        AFTER_THE_SECOND_RENAME.leave(shelf, place);
        Folders.deleteTree(place.aside());
        Files.createDirectory(place.aside());
      }
    };

    final Map<String, String> whole;

    Died(Map<String, String> whole) {
      this.whole = whole;
    }

    abstract void leave(Shelf shelf, Place place) throws Exception;
  }

  @ParameterizedTest
  @EnumSource
  void theNextRunFindsOneWholeBookAndTidiesUp(Died died) throws Exception {
    died.leave(shelf, place);
    shelf.open().close();
    assertEquals(died.whole, Shelf.pages(shelf.book()));
    assertEquals(List.of("book", "notebook"), shelf.names());
    assertEquals(new Bound(0, died.whole.size(), 0), shelf.publish(died.whole), "whole by its manifest");
  }

  @ParameterizedTest
  @EnumSource
  void theNextRunPublishesAsIfNothingHadHappened(Died died) throws Exception {
    died.leave(shelf, place);
    Map<String, String> third = Map.of("index.html", "third", "entries/brick.html", "brick, 45 g");
    shelf.publish(third);
    assertEquals(third, Shelf.pages(shelf.book()));
    assertEquals(List.of("book", "notebook"), shelf.names());
  }

  @Test
  void aFirstBookThatDiedBeforeItsRenameLeavesNone() throws Exception {
    shelf.publish(Shelf.FIRST);
    Files.move(place.target(), place.fresh());
    shelf.open().close();
    assertEquals(List.of("notebook"), shelf.names());
  }

  @Test
  void litterStillInTheOldFolderIsCarriedOverByTheNextRun() throws Exception {
    Died.AMID_DELETING_THE_OLD.leave(shelf, place);
    Shelf.write(place.aside().resolve("entries/.DS_Store"), "finder");
    shelf.open().close();
    Map<String, String> expected = new TreeMap<>(Shelf.SECOND);
    expected.put("entries/.DS_Store", "finder");
    assertEquals(expected, Shelf.pages(shelf.book()));
  }

  @Test
  void aFolderOfLitterThatWasPutAsideComesBack() throws Exception {
    Shelf.write(place.aside().resolve(".DS_Store"), "finder");
    shelf.open().close();
    assertEquals(Map.of(".DS_Store", "finder"), Shelf.pages(shelf.book()));
    assertEquals(List.of("book", "notebook"), shelf.names());
  }

  @Test
  void aStrangersFileInTheOldFolderIsMovedOverAndNamedNeverDeleted() throws Exception {
    Died.AFTER_THE_SECOND_RENAME.leave(shelf, place);
    Shelf.write(place.aside().resolve("entries/notes.txt"), "mine");
    assertTrue(shelf.refusal(shelf.book()).contains("entries/notes.txt"));
    assertEquals("mine", Files.readString(shelf.book().resolve("entries/notes.txt")));
    assertEquals(List.of("book", "notebook"), shelf.names());
  }

  @Test
  void aStrangersFileWhosePlaceIsTakenStaysWhereItIs() throws Exception {
    Died.AFTER_THE_SECOND_RENAME.leave(shelf, place);
    Shelf.write(place.aside().resolve("entries/rust.html"), "mine, not in the old manifest");
    assertTrue(shelf.refusal(shelf.book()).contains(place.aside().toString()));
    assertEquals("mine, not in the old manifest", Files.readString(place.aside().resolve("entries/rust.html")));
    assertEquals(Shelf.SECOND, Shelf.pages(shelf.book()));
    assertTrue(shelf.refusal(shelf.book()).contains(place.aside().toString()), "and again");
  }

  @Test
  void aStrangersFolderAtTheTargetIsRefusedAndTheOldBookKeptAside() throws Exception {
    Died.BETWEEN_THE_RENAMES.leave(shelf, place);
    Shelf.write(place.target().resolve("novel.txt"), "mine");
    assertTrue(shelf.refusal(shelf.book()).contains("novel.txt"));
    assertEquals(Map.of("novel.txt", "mine"), Shelf.pages(shelf.book()));
    assertEquals(Shelf.FIRST, Shelf.pages(place.aside()));
  }

  @Test
  void anOldFolderWithATamperedManifestIsLeftAlone() throws Exception {
    Died.AFTER_THE_SECOND_RENAME.leave(shelf, place);
    Files.writeString(
        place.aside().resolve(Manifest.NAME), Manifest.head("studio") + "00000000 8 ../notebook/notebook.yaml\n");
    Map<String, String> before = Shelf.tree(shelf.folder());
    shelf.refusal(shelf.book());
    assertEquals(before, Shelf.tree(shelf.folder()));
  }

  @Test
  void linksInLeftFoldersAreRemovedOrMovedButNeverFollowed() throws Exception {
    Died.AFTER_A_FEW_PAGES.leave(shelf, place);
    BindingTest.link(place.fresh().resolve("notebook"), shelf.notebook());
    shelf.open().close();
    assertFalse(Files.exists(place.fresh()));
    assertTrue(Files.exists(shelf.notebook().resolve("notebook.yaml")));
  }

  @Test
  void theOldBookIsReachedThroughALinkThatLeadsNowhereSinceTheRunDied() throws Exception {
    Died.BETWEEN_THE_RENAMES.leave(shelf, place);
    Path link = BindingTest.link(shelf.folder().resolve("link"), Path.of("book"));
    Binding.open(link, shelf.notebook(), "studio").close();
    assertEquals(Shelf.FIRST, Shelf.pages(shelf.book()));
  }
}
