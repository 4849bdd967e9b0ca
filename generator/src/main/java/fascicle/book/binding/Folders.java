package fascicle.book.binding;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Small work on files and folders; symbolic links inside a folder are never followed. */
final class Folders {
  private Folders() {}

  static boolean exists(Path path) {
    return Files.exists(path, LinkOption.NOFOLLOW_LINKS);
  }

  static boolean isEmpty(Path folder) throws IOException {
    try (DirectoryStream<Path> entries = Files.newDirectoryStream(folder)) {
      return !entries.iterator().hasNext();
    }
  }

  /** Makes the folders above a path, adding each to a list of those made, the innermost first. */
  static void makeParents(Path path, List<Path> made) throws IOException {
    Deque<Path> missing = new ArrayDeque<>();
    for (Path p = path.getParent(); p != null && !Files.exists(p); p = p.getParent()) {
      missing.addFirst(p);
    }
    for (Path folder : missing) {
      try {
        Files.createDirectory(folder);
        made.add(0, folder);
      } catch (FileAlreadyExistsException anotherRunWasQuicker) {
        // Theirs to remove, then.
      }
    }
  }

  /** Removes those folders again that are still empty. */
  static void unmake(List<Path> folders) {
    for (Path folder : folders) {
      try {
        Files.deleteIfExists(folder);
      } catch (IOException inUse) {
        return;
      }
    }
  }

  /** Gives a folder the permissions of another, so that a private book stays private. */
  static void copyPermissions(Path from, Path to) throws IOException {
    PosixFileAttributeView source = Files.getFileAttributeView(from, PosixFileAttributeView.class);
    if (source != null) {
      Files.setPosixFilePermissions(to, source.readAttributes().permissions());
    }
  }

  /** Makes a second name for a file, as {@link Files#createLink} does. */
  @FunctionalInterface
  interface Linking {
    void link(Path name, Path file) throws IOException;
  }

  /** Keeps an old file in a new folder: the same file where links are possible, else a copy as old as it. */
  static void keep(Path from, Path to, Linking linking) throws IOException {
    try {
      linking.link(to, from);
    } catch (IOException | UnsupportedOperationException noLinks) {
      Files.copy(from, to, StandardCopyOption.COPY_ATTRIBUTES, LinkOption.NOFOLLOW_LINKS);
    }
  }

  /** Removes one of our unfinished folders as far as the disk lets us; the next run removes the rest. */
  static void discard(Path folder) {
    try {
      if (exists(folder)) {
        deleteTree(folder);
      }
    } catch (IOException left) {
      // Marked as ours, so the next run may remove it.
    }
  }

  static void deleteTree(Path folder) throws IOException {
    Files.walkFileTree(
        folder,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
            Files.delete(file);
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult postVisitDirectory(Path inner, @Nullable IOException failure)
              throws IOException {
            if (failure != null) {
              throw failure;
            }
            Files.delete(inner);
            return FileVisitResult.CONTINUE;
          }
        });
  }
}
