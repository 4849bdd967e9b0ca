package fascicle.book.binding;

import java.nio.file.Path;
import java.util.Objects;

/**
 * Where a book stands, and the names beside it that a run may use for a while.
 *
 * @param target the book's folder, by its real path
 */
record Place(Path target) {

  /** The new book while it is being made. */
  Path fresh() {
    return beside("new");
  }

  /** The old book while the new one takes its place. */
  Path aside() {
    return beside("old");
  }

  /** The file that keeps a second run out. */
  Path lock() {
    return beside("lock");
  }

  private Path beside(String what) {
    Path name = Objects.requireNonNull(target.getFileName(), "a checked target has a name");
    return target.resolveSibling("." + name + ".fascicle-" + what);
  }
}
