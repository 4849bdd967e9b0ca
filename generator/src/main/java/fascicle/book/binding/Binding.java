package fascicle.book.binding;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentSkipListMap;
import org.jspecify.annotations.Nullable;

/**
 * Writes one book into its target folder, all of it or nothing.
 *
 * <p>The new book grows in a folder beside the target; files the old book already has are linked from
 * it, so that they stay the same files with the same times. {@link #finish()} changes the two over by
 * renaming. If nothing at all changed, the target is left alone. A run that dies at any moment leaves a
 * whole book, and the next run tidies up after it.
 *
 * <pre>{@code
 * try (Binding binding = Binding.open(target, notebook, "studio")) {
 *   binding.put("index.html", page);
 *   Bound bound = binding.finish();
 * }
 * }</pre>
 */
public final class Binding implements AutoCloseable {
  private enum State { OPEN, FINISHED, CLOSED }

  private final Place place;
  private final String edition;
  private final Lock lock;
  private final List<Path> parentsMade;
  private final Holding old;
  private final Contents contents = new Contents();
  private final ConcurrentSkipListMap<String, Manifest.Sheet> sheets = new ConcurrentSkipListMap<>();
  private final Set<String> unchanged = ConcurrentHashMap.newKeySet();
  private final Set<String> folders = ConcurrentHashMap.newKeySet();
  private volatile State state = State.OPEN;
  private volatile @Nullable IOException failure;

  private Binding(Place place, String edition, Lock lock, List<Path> parentsMade, Holding old) {
    this.place = place;
    this.edition = edition;
    this.lock = lock;
    this.parentsMade = parentsMade;
    this.old = old;
  }

  /**
   * Checks the target, recovers what an interrupted run left, takes the lock.
   *
   * @param target the book's folder, which may be missing; a link to a folder is followed
   * @param notebook the notebook's folder, which the target must keep clear of
   * @param edition the edition's name, in one line
   * @throws TargetRefused if the book must not stand there, or another run is writing it
   * @throws IOException if the disk fails or denies access
   * @throws IllegalArgumentException if the edition is blank or not one line
   */
  public static Binding open(Path target, Path notebook, String edition) throws TargetRefused, IOException {
    String head = new Manifest(edition, new ConcurrentSkipListMap<>()).text();
    Place place = TargetCheck.place(target, notebook);
    List<Path> parentsMade = new ArrayList<>();
    Lock lock = null;
    try {
      Folders.makeParents(place.target(), parentsMade);
      lock = Lock.take(place.lock());
      Changeover.recover(place);
      Holding old = Holding.of(place.target());
      TargetCheck.mayReplace(target, old, edition);
      begin(place, head);
      return new Binding(place, edition, lock, parentsMade, old);
    } catch (TargetRefused | IOException | RuntimeException e) {
      release(lock, parentsMade);
      throw e;
    }
  }

  /** Makes the new book's folder, marked as ours before anything else stands in it. */
  private static void begin(Place place, String head) throws IOException {
    Files.createDirectory(place.fresh());
    try {
      Files.writeString(place.fresh().resolve(Manifest.NAME), head, StandardOpenOption.CREATE_NEW);
      if (Folders.exists(place.target())) {
        Folders.copyPermissions(place.target(), place.fresh());
      }
    } catch (IOException e) {
      Folders.discard(place.fresh());
      throw e;
    }
  }

  /**
   * Puts one file into the book. Safe to call from several threads.
   *
   * @param address its path from the book's folder, with {@code /} between names, such as
   *     {@code entries/2026-05-09-brick.html}
   * @param content its bytes, which must not change afterwards
   * @throws IllegalArgumentException if the address is not such a path, or the book already holds it or
   *     one that differs from it only in case or in Unicode's composition
   * @throws IOException if the file cannot be written; the book can then no longer be finished
   * @throws IllegalStateException if the book is finished or closed
   */
  public void put(String address, byte[] content) throws IOException {
    requireOpen();
    contents.claim(address);
    try {
      if (old.has(place.target(), address, content)) {
        unchanged.add(address);
      } else {
        Files.write(room(address), content, StandardOpenOption.CREATE_NEW);
      }
      sheets.put(address, Manifest.Sheet.of(content));
    } catch (IOException e) {
      failure = e;
      throw e;
    }
  }

  /**
   * Puts the new book in the old one's place, once every {@link #put} has returned.
   *
   * @throws IOException if the disk fails, or failed in a {@code put}; the old book stays whole
   * @throws IllegalStateException if the book is finished or closed
   */
  public Bound finish() throws IOException {
    requireOpen();
    state = State.FINISHED;
    IOException earlier = failure;
    if (earlier != null) {
      throw new IOException("a page of the book could not be written: " + earlier.getMessage(), earlier);
    }
    Manifest manifest = new Manifest(edition, sheets);
    Bound bound = new Bound(sheets.size() - unchanged.size(), unchanged.size(), gone());
    if (bound.written() > 0 || !manifest.text().equals(old.manifestText())) {
      for (String address : unchanged) {
        Folders.keep(Address.in(place.target(), address), room(address), Files::createLink);
      }
      manifest.write(place.fresh());
      Changeover.run(place, old.manifest());
    }
    return bound;
  }

  /**
   * Lets go of the target. Without a {@link #finish()} the old book stays whole and nothing of the new
   * one is left. Closing twice does nothing.
   */
  @Override
  public void close() {
    if (state == State.CLOSED) {
      return;
    }
    state = State.CLOSED;
    Folders.discard(place.fresh());
    release(lock, parentsMade);
  }

  private void requireOpen() {
    if (state != State.OPEN) {
      throw new IllegalStateException("the book is already " + state.name().toLowerCase(Locale.ROOT));
    }
  }

  private int gone() {
    Manifest before = old.manifest();
    return before == null
        ? 0
        : (int) before.sheets().keySet().stream().filter(address -> !sheets.containsKey(address)).count();
  }

  /** The file of an address in the new book, its folder made once. */
  private Path room(String address) throws IOException {
    Path file = Address.in(place.fresh(), address);
    String folder = Address.folder(address);
    if (!folder.isEmpty() && !folders.contains(folder)) {
      Files.createDirectories(Address.in(place.fresh(), folder));
      folders.add(folder);
    }
    return file;
  }

  private static void release(@Nullable Lock lock, List<Path> parentsMade) {
    try {
      if (lock != null) {
        lock.close();
      }
    } catch (IOException left) {
      // An unlocked file beside the target keeps nobody out.
    }
    // Where the book stands, its parents are not empty and stay.
    Folders.unmake(parentsMade);
  }
}
