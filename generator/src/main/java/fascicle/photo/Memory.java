package fascicle.photo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;

/**
 * What was found in photographs before: by their content, the question asked of it, and the method of answering.
 *
 * <p>A file's content is known again by its place, its size and the time of its last change, so that a thousand
 * photographs need not be read to learn that none has changed.
 */
final class Memory {

    /** To be raised whenever a reading, a caution's words or a print of the same file would come out otherwise. */
    private static final String METHOD = "method 1";

    private final Drawer drawer;

    Memory(Path folder) {
        drawer = new Drawer(folder);
    }

    Optional<Picture> picture(Path file) throws IOException {
        return understood(drawer.find(identity(file)), KeptText::picture);
    }

    void keep(String identity, Picture picture) {
        drawer.keep(identity, KeptText.of(picture));
    }

    Optional<Sample> sample(Picture picture, Area needles, List<Patch> card) {
        return understood(drawer.find(question(picture, needles, card)), KeptText::sample);
    }

    void keep(Picture picture, Area needles, List<Patch> card, Sample sample) {
        drawer.keep(question(picture, needles, card), KeptText.of(sample));
    }

    Optional<byte[]> print(Picture picture, List<Integer> widths, int place) {
        return drawer.find(question(picture, widths, place));
    }

    void keep(Picture picture, List<Integer> widths, int place, byte[] print) {
        drawer.keep(question(picture, widths, place), print);
    }

    /** What tells a file from itself after a change; taken before it is read. */
    static String identity(Path file) throws IOException {
        BasicFileAttributes attributes = Files.readAttributes(file, BasicFileAttributes.class);
        return METHOD + " file " + attributes.size() + ' ' + attributes.lastModifiedTime().to(TimeUnit.NANOSECONDS)
                + ' ' + file.toAbsolutePath().normalize();
    }

    /** What another version of the program has kept, in a form of its own, is as good as nothing. */
    private static <T> Optional<T> understood(Optional<byte[]> kept, Function<byte[], T> form) {
        try {
            return kept.map(form);
        } catch (RuntimeException otherForm) {
            return Optional.empty();
        }
    }

    private static String question(Picture picture, Area needles, List<Patch> card) {
        StringBuilder question = new StringBuilder(METHOD + " sample " + picture.hash() + text(needles));
        for (Patch patch : card) {
            question.append(" patch").append(text(patch.at()));
            append(question, patch.known().lightness(), patch.known().a(), patch.known().b());
        }
        return question.toString();
    }

    /** A print follows from those that were asked for together with it. */
    private static String question(Picture picture, List<Integer> widths, int place) {
        return METHOD + " print " + picture.hash() + ' ' + widths + ' ' + place;
    }

    private static String text(Area area) {
        StringBuilder text = new StringBuilder();
        append(text, area.x(), area.y(), area.width(), area.height());
        return text.toString();
    }

    private static void append(StringBuilder text, double... figures) {
        for (double figure : figures) {
            text.append(' ').append(KeptText.exact(figure));
        }
    }
}
