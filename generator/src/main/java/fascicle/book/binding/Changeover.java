package fascicle.book.binding;

import java.io.IOException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Puts a new book in the old one's place, and mends what a run that died on the way left.
 *
 * <p>The steps are: the old book is renamed aside; the new one is renamed in; what we did not make moves
 * over from the old folder to the new; our own files in the old folder are deleted, its manifest last.
 * So at each moment one whole book stands at the target or beside it, and the manifest in the folder
 * aside says which of its files are ours for as long as there are any.
 */
final class Changeover {
  private Changeover() {}

  /**
   * Changes the books over. If this throws, the old book is whole.
   *
   * @param old the manifest of the book at the target, or null where none stands
   */
  static void run(Place place, @Nullable Manifest old) throws IOException {
    boolean replaces = Folders.exists(place.target());
    if (replaces) {
      move(place.target(), place.aside());
    }
    try {
      move(place.fresh(), place.target());
    } catch (IOException e) {
      if (replaces) {
        putBack(place, e);
      }
      throw e;
    }
    if (replaces) {
      try {
        clear(place.aside(), old, place.target());
      } catch (IOException e) {
        // The new book stands; what could not be cleared is the next run's to mend or to name.
      }
    }
  }

  private static void putBack(Place place, IOException why) {
    try {
      move(place.aside(), place.target());
    } catch (IOException e) {
      why.addSuppressed(e); // the next run puts it back
    }
  }

  /** Mends what an interrupted run left, so that one whole book or none stands at the target. */
  static void recover(Place place) throws TargetRefused, IOException {
    if (Folders.exists(place.aside())) {
      recoverAside(place);
    }
    if (Folders.exists(place.fresh())) {
      if (!Manifest.marks(place.fresh())) {
        throw inTheWay(place.fresh());
      }
      Folders.deleteTree(place.fresh());
    }
  }

  private static void recoverAside(Place place) throws TargetRefused, IOException {
    if (!Files.isDirectory(place.aside(), LinkOption.NOFOLLOW_LINKS)) {
      throw inTheWay(place.aside());
    }
    Holding aside = Holding.of(place.aside());
    if (aside.manifest() == null && !aside.ours()) {
      throw inTheWay(place.aside());
    }
    Holding target = Holding.of(place.target());
    if (target.manifest() != null) {
      clear(place.aside(), aside.manifest(), place.target());
      if (Folders.exists(place.aside())) {
        throw inTheWay(place.aside());
      }
    } else if (target.ours()) {
      // The run died between the two renames; somebody may have made an empty folder since.
      if (Folders.exists(place.target())) {
        clear(place.target(), null, place.aside());
      }
      move(place.aside(), place.target());
    }
    // Otherwise somebody else's files stand at the target: it will be refused, and nothing is lost.
  }

  /** Deletes our files from a folder, moves all others into another folder, and removes what is empty. */
  private static void clear(Path from, @Nullable Manifest ours, Path into) throws IOException {
    Set<String> listed = ours == null ? Set.of() : ours.sheets().keySet();
    Files.walkFileTree(
        from,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
            String address = Address.of(file, from);
            if (attributes.isRegularFile() && listed.contains(address)) {
              Files.delete(file);
            } else if (!address.equals(Manifest.NAME)) {
              carry(file, attributes, Address.in(into, address));
            }
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult postVisitDirectory(Path folder, @Nullable IOException failure)
              throws IOException {
            if (failure != null) {
              throw failure;
            }
            if (!folder.equals(from)) {
              deleteIfEmpty(folder);
            }
            return FileVisitResult.CONTINUE;
          }
        });
    boolean onlyManifest;
    try (var entries = Files.list(from)) {
      onlyManifest = entries.allMatch(entry -> entry.equals(from.resolve(Manifest.NAME)));
    }
    if (onlyManifest) {
      Files.deleteIfExists(from.resolve(Manifest.NAME));
      Files.delete(from);
    }
  }

  /** Moves a file that is not ours; where its place is taken, only litter may go. */
  private static void carry(Path file, BasicFileAttributes attributes, Path to) throws IOException {
    try {
      Path parent = to.getParent();
      if (parent != null) {
        Files.createDirectories(parent);
      }
      Files.move(file, to);
    } catch (IOException taken) {
      if (Holding.isLitter(file, attributes)) {
        Files.delete(file);
      }
    }
  }

  private static void deleteIfEmpty(Path folder) throws IOException {
    try {
      Files.delete(folder);
    } catch (DirectoryNotEmptyException somebodyElses) {
      // It stays, with what it holds.
    }
  }

  private static void move(Path from, Path to) throws IOException {
    Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
  }

  private static TargetRefused inTheWay(Path path) {
    return new TargetRefused(
        path + " stands in the way and holds what Fascicle did not make; rename it or choose another"
            + " folder for the book.");
  }
}
