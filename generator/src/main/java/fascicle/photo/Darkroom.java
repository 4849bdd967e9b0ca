package fascicle.photo;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads photographs and makes copies of them to publish. Safe for use from several threads, each of which holds one
 * picture in memory at a time; several programs may keep what they read in the same folder.
 */
public final class Darkroom {

    private final Optional<Memory> memory;

    private Darkroom(Optional<Memory> memory) {
        this.memory = memory;
    }

    /** A darkroom that keeps nothing. */
    public static Darkroom withoutCache() {
        return new Darkroom(Optional.empty());
    }

    /**
     * A darkroom that keeps what it has read in a folder, and finds it there again. The folder is made when there is
     * something to keep; where it cannot be written, everything is read anew.
     */
    public static Darkroom keeping(Path folder) {
        return new Darkroom(Optional.of(new Memory(folder)));
    }

    /** The folder in which the user's programs keep what can be made again, for {@link #keeping}. */
    public static Path usualFolder() {
        return UsersFolder.of(System.getProperty("os.name", ""), Path.of(System.getProperty("user.home", "")),
                System.getenv());
    }

    /**
     * A picture's content and size, without decoding it.
     *
     * @throws UnreadablePhotograph if the file is no whole picture of a kind that is read
     * @throws IOException if there is no such file, or the disk fails
     */
    public Picture picture(Path file) throws UnreadablePhotograph, IOException {
        return new Subject(file).picture();
    }

    /**
     * Reads the colour of an area against the patches of a card.
     *
     * @param needles where the needles lie; of their pixels the darkest and the brightest tenth are left out
     * @param card a grey card, several, or the patches of a chart; empty for a judgement by eye
     * @throws UnreadablePhotograph if the picture cannot be used
     * @throws IOException if there is no such file, or the disk fails
     */
    public Sample sample(Path file, Area needles, List<Patch> card) throws UnreadablePhotograph, IOException {
        Subject subject = new Subject(file);
        Optional<Sample> kept = Optional.empty();
        if (memory.isPresent()) {
            kept = memory.get().sample(subject.picture(), needles, card);
        }
        if (kept.isPresent()) {
            return kept.get();
        }
        Sample sample = Sampling.of(subject.photograph().negative(), needles, card);
        if (memory.isPresent()) {
            memory.get().keep(subject.picture(), needles, card, sample);
        }
        return sample;
    }

    /**
     * An upright sRGB copy of at most so many pixels in width, as a JPEG without metadata. A narrower picture keeps its
     * own width. What can be seen through is laid on white.
     *
     * @throws UnreadablePhotograph if the picture cannot be used
     * @throws IOException if there is no such file, or the disk fails
     * @throws IllegalArgumentException if the width is below 1
     */
    public byte[] print(Path file, int width) throws UnreadablePhotograph, IOException {
        return prints(file, List.of(width)).get(0);
    }

    /**
     * Copies of several widths, for which the picture is decoded once; each but the widest is made of the next wider
     * one.
     *
     * @return in the order of the widths
     * @throws UnreadablePhotograph if the picture cannot be used
     * @throws IOException if there is no such file, or the disk fails
     * @throws IllegalArgumentException if a width is below 1
     */
    public List<byte[]> prints(Path file, List<Integer> widths) throws UnreadablePhotograph, IOException {
        for (int width : widths) {
            if (width < 1) {
                throw new IllegalArgumentException("no print is this wide: " + width);
            }
        }
        Subject subject = new Subject(file);
        if (memory.isEmpty()) {
            return Print.of(subject.photograph().negative(), widths);
        }
        List<byte[]> kept = new ArrayList<>();
        for (int place = 0; place < widths.size(); place++) {
            memory.get().print(subject.picture(), widths, place).ifPresent(kept::add);
        }
        if (kept.size() == widths.size()) {
            return kept;
        }
        List<byte[]> prints = Print.of(subject.photograph().negative(), widths);
        for (int i = 0; i < prints.size(); i++) {
            memory.get().keep(subject.picture(), widths, i, prints.get(i));
        }
        return prints;
    }

    /** One file while one question is answered: it is read when it must be, and once. */
    private final class Subject {

        private final Path file;
        private Optional<Photograph> photograph = Optional.empty();
        private Optional<Picture> picture = Optional.empty();

        Subject(Path file) {
            this.file = file;
        }

        Photograph photograph() throws UnreadablePhotograph, IOException {
            if (photograph.isEmpty()) {
                String identity = Memory.identity(file);
                Photograph read = Photograph.read(file);
                photograph = Optional.of(read);
                picture = Optional.of(read.picture());
                memory.ifPresent(kept -> kept.keep(identity, read.picture()));
            }
            return photograph.orElseThrow();
        }

        Picture picture() throws UnreadablePhotograph, IOException {
            if (picture.isEmpty() && memory.isPresent()) {
                picture = memory.get().picture(file);
            }
            return picture.isPresent() ? picture.get() : photograph().picture();
        }
    }
}
