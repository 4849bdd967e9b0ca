package fascicle.book.binding;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/**
 * Keeps a second run away from a target, by a file that the operating system locks: a run that dies
 * lets go of it by dying. The file is removed on {@link #close()}.
 */
final class Lock implements AutoCloseable {
  /** Locks of this process: opening a locked file a second time and closing it could unlock it. */
  private static final Set<Path> HELD = ConcurrentHashMap.newKeySet();

  private static final Set<OpenOption> OPEN =
      Set.of(StandardOpenOption.READ, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
  private static final byte[] WORDS =
      "A run of Fascicle is writing the book beside this file.\n".getBytes(StandardCharsets.UTF_8);

  private final Path file;
  private final FileChannel channel;

  private Lock(Path file, FileChannel channel) {
    this.file = file;
    this.channel = channel;
  }

  /** Takes the lock, or refuses if another run has it or the file is not one of ours. */
  static Lock take(Path file) throws TargetRefused, IOException {
    if (!HELD.add(file)) {
      throw busy(file);
    }
    try {
      while (true) {
        Lock lock = tryOnce(file);
        if (lock != null) {
          return lock;
        }
      }
    } catch (TargetRefused | IOException | RuntimeException e) {
      HELD.remove(file);
      throw e;
    }
  }

  /** Null if the file was removed by the run before us while we opened it. */
  private static @Nullable Lock tryOnce(Path file) throws TargetRefused, IOException {
    try {
      Files.createFile(file);
    } catch (FileAlreadyExistsException leftOrHeld) {
      // Whether it is held, the lock itself will tell.
    }
    FileChannel channel = null;
    try {
      Object before = identity(file);
      channel = FileChannel.open(file, OPEN);
      boolean opened = Objects.equals(before, identity(file));
      if (channel.tryLock() == null) {
        throw busy(file);
      }
      if (opened && Objects.equals(before, identity(file))) {
        sign(file, channel);
        Lock lock = new Lock(file, channel);
        channel = null;
        return lock;
      }
      return null;
    } catch (NoSuchFileException removed) {
      return null;
    } catch (OverlappingFileLockException e) {
      throw busy(file);
    } finally {
      if (channel != null) {
        channel.close();
      }
    }
  }

  private static @Nullable Object identity(Path file) throws IOException {
    return Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS).fileKey();
  }

  /** Writes what the file is for, unless somebody else's words stand in it. */
  private static void sign(Path file, FileChannel channel) throws TargetRefused, IOException {
    ByteBuffer found = ByteBuffer.allocate((int) Math.min(channel.size(), WORDS.length + 1));
    while (found.hasRemaining() && channel.read(found) >= 0) {}
    if (found.flip().hasRemaining() && !found.equals(ByteBuffer.wrap(WORDS))) {
      throw new TargetRefused(
          file + " stands in the way and is not Fascicle's; rename it or choose another folder for the book.");
    }
    channel.write(ByteBuffer.wrap(WORDS), 0);
  }

  private static TargetRefused busy(Path file) {
    return new TargetRefused(
        "another run of Fascicle is writing this book (it holds " + file
            + "); wait until it has ended, then publish again.");
  }

  @Override
  public void close() throws IOException {
    try (channel) {
      // Before the lock is let go, so that no other run's file is removed.
      Files.deleteIfExists(file);
    } finally {
      HELD.remove(file);
    }
  }
}
