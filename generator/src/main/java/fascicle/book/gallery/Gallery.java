package fascicle.book.gallery;

import fascicle.notebook.Edition;
import fascicle.notebook.Entry;
import fascicle.notebook.NeedleLot;
import fascicle.notebook.Notebook;
import fascicle.notebook.Reading;
import fascicle.photo.Darkroom;
import fascicle.photo.UnreadablePhotograph;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The photographs of one edition: those that its readings were taken from, and those that its notes show. */
public final class Gallery {

    /** No photographs at all. */
    public static final Gallery EMPTY = new Gallery();

    private final Map<String, Shown> shown = new HashMap<>();
    private final Map<String, String> whyNot = new HashMap<>();
    private final Map<String, Print> prints = new TreeMap<>();

    private Gallery() {}

    /** A copy on demand: one of those of a picture, which are made together. */
    private record Print(Path file, Shown picture, int place, Darkroom darkroom) {}

    /**
     * The photographs of an edition.
     *
     * @param notebook the edition's notebook
     * @param edition whom the book is for
     * @param inNotes the pictures that notes name, as paths relative to the notebook
     * @param root the notebook's folder
     * @param darkroom what makes the copies
     * @return the gallery; a picture of the notes that cannot be shown is not in it
     */
    public static Gallery of(Notebook notebook, Edition edition, Set<String> inNotes, Path root, Darkroom darkroom) {
        Gallery gallery = new Gallery();
        read(notebook, edition).forEach(taken ->
                gallery.hang(taken.path(), new Shown(taken.picture()), root, darkroom));
        List<String> others = inNotes.stream().filter(path -> !gallery.shown.containsKey(path)).sorted().toList();
        List<Looked> looked = others.parallelStream().map(path -> look(path, root, darkroom)).toList();
        looked.forEach(one -> one.shown().ifPresentOrElse(found -> gallery.hang(one.path(), found, root, darkroom),
                () -> gallery.whyNot.put(one.path(), one.whyNot())));
        return gallery;
    }

    /** The pictures that readings were taken from, of what the edition shows whole. */
    private static Stream<Reading.Taken> read(Notebook notebook, Edition edition) {
        Stream<Reading> ofEntries = notebook.entries().stream().map(Entry::readings).flatMap(Collection::stream);
        Stream<Reading> ofLots = notebook.lots().stream().filter(lot -> edition.shows(lot.share()))
                .map(NeedleLot::readings).flatMap(Collection::stream);
        return Stream.concat(ofEntries, ofLots).flatMap(reading -> reading.colour()
                instanceof Reading.Photograph photograph ? photograph.taken().stream() : Stream.empty());
    }

    /** What came of looking at a picture. */
    private record Looked(String path, Optional<Shown> shown, String whyNot) {}

    /** Makes the copies too, so that a picture which cannot be shown is known before any page is made. */
    private static Looked look(String path, Path root, Darkroom darkroom) {
        try {
            Path file = root.resolve(path);
            if (!Files.isRegularFile(file)) {
                return new Looked(path, Optional.empty(), "is not there");
            }
            if (!file.toRealPath().startsWith(root.toRealPath())) {
                return new Looked(path, Optional.empty(), "lies outside the notebook");
            }
            Shown shown = new Shown(darkroom.picture(file));
            darkroom.prints(file, shown.widths());
            return new Looked(path, Optional.of(shown), "");
        } catch (UnreadablePhotograph unreadable) {
            return new Looked(path, Optional.empty(), unreadable.words());
        } catch (InvalidPathException unnamable) {
            return new Looked(path, Optional.empty(), "is not there");
        } catch (IOException failed) {
            return new Looked(path, Optional.empty(), "could not be read");
        }
    }

    private void hang(String path, Shown picture, Path root, Darkroom darkroom) {
        shown.put(path, picture);
        List<Integer> widths = picture.widths();
        for (int place = 0; place < widths.size(); place++) {
            prints.putIfAbsent(picture.address(widths.get(place)),
                    new Print(root.resolve(path), picture, place, darkroom));
        }
    }

    /**
     * A photograph.
     *
     * @param path its file, relative to the notebook
     * @return how it is shown, if this edition shows it
     */
    public Optional<Shown> find(String path) {
        return Optional.ofNullable(shown.get(path));
    }

    /**
     * Why a picture that notes name is not shown.
     *
     * @param path its file, relative to the notebook
     * @return the end of a sentence about the picture; nothing where it is shown
     */
    public Optional<String> whyNot(String path) {
        return shown.containsKey(path) ? Optional.empty()
                : Optional.of(whyNot.getOrDefault(path, "is not there"));
    }

    /**
     * The addresses of all copies.
     *
     * @return in order
     */
    public List<String> addresses() {
        return List.copyOf(prints.keySet());
    }

    /**
     * Makes a copy.
     *
     * @param address one of {@link #addresses}
     * @return a JPEG without metadata
     * @throws IllegalArgumentException if there is no such copy
     * @throws UncheckedIOException if the picture has changed since it was looked at, or the disk fails
     */
    public byte[] bytes(String address) {
        Print print = prints.get(address);
        if (print == null) {
            throw new IllegalArgumentException("the gallery has no such copy: " + address);
        }
        // Who asks for another copy of the same picture at the same time waits, and finds it made.
        synchronized (print.picture()) {
            return made(print);
        }
    }

    private static byte[] made(Print print) {
        try {
            return print.darkroom().prints(print.file(), print.picture().widths()).get(print.place());
        } catch (UnreadablePhotograph changed) {
            throw new UncheckedIOException(new IOException("the picture " + print.file().getFileName()
                    + " was changed while the book was made, and now " + changed.words()));
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
