package fascicle.book.binding;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** Whether a book may stand at a place at all, before anything is touched. */
final class TargetCheck {
  private static final int LINKS_AT_MOST = 40;

  private TargetCheck() {}

  /** Follows the target's links and refuses a place where no book can stand. */
  static Place place(Path target, Path notebook) throws TargetRefused, IOException {
    Path real = real(target, 0);
    Path parent = real.getParent();
    if (parent == null || real.getFileName() == null) {
      throw new TargetRefused("“" + target + "” is the root of a disk; choose a folder in it.");
    }
    keepOff(notebook.toRealPath(), real, target);
    Path standing = real;
    while (!Files.exists(standing) && standing.getParent() != null) {
      standing = standing.getParent();
    }
    if (!Files.isDirectory(standing)) {
      throw new TargetRefused(
          "“" + target + "” cannot be a folder, for “" + standing.getFileName()
              + "” is a file; choose an empty or new folder.");
    }
    if (standing.equals(real)) {
      // A mounted disk cannot be renamed, and the folders beside it are on another disk.
      if (!Files.getFileStore(real).equals(Files.getFileStore(parent))) {
        throw new TargetRefused(
            "“" + target + "” is a disk of its own, which cannot be replaced in one piece; choose a folder in it.");
      }
      if (!Files.isWritable(real)) {
        throw new AccessDeniedException(target.toString());
      }
    }
    return new Place(real);
  }

  /** Refuses what the folder at the place already holds, if the book may not replace it. */
  static void mayReplace(Path target, Holding old, String edition) throws TargetRefused {
    if (!old.foreign().isEmpty()) {
      throw new TargetRefused(
          "“" + target + "” holds what Fascicle did not make (" + old.firstForeign()
              + "); choose an empty or new folder.");
    }
    Manifest manifest = old.manifest();
    if (manifest != null && !manifest.edition().equals(edition)) {
      throw new TargetRefused(
          "“" + target + "” holds the edition “" + manifest.edition() + "”, which the edition “" + edition
              + "” must not replace; choose another folder for it.");
    }
  }

  /** Asks the file system whether folders are the same, since it alone knows how it takes case and mounts. */
  private static void keepOff(Path notebook, Path target, Path called) throws TargetRefused, IOException {
    for (Path p = target; p != null; p = p.getParent()) {
      if (Files.exists(p) && Files.isSameFile(p, notebook)) {
        throw new TargetRefused(
            p.equals(target)
                ? "“" + called + "” is the notebook itself; choose a folder outside it."
                : "“" + called + "” lies in the notebook; choose a folder outside it.");
      }
    }
    if (Files.exists(target)) {
      for (@Nullable Path p = notebook.getParent(); p != null; p = p.getParent()) {
        if (Files.isSameFile(p, target)) {
          throw new TargetRefused(
              "“" + called + "” contains the notebook; choose an empty or new folder.");
        }
      }
    }
  }

  /** The real path of something that need not exist, by way of links that may lead to nothing yet. */
  private static Path real(Path path, int links) throws TargetRefused, IOException {
    Path absolute = path.toAbsolutePath();
    if (Files.exists(absolute)) {
      return absolute.toRealPath();
    }
    if (Files.isSymbolicLink(absolute)) {
      if (links == LINKS_AT_MOST) {
        throw new TargetRefused("“" + path + "” is a link that leads in a circle; choose an empty or new folder.");
      }
      return real(absolute.resolveSibling(Files.readSymbolicLink(absolute)), links + 1);
    }
    Path parent = absolute.getParent();
    Path name = absolute.getFileName();
    return parent == null || name == null ? absolute : real(parent, links).resolve(name).normalize();
  }
}
