package fascicle.photo;

import fascicle.colour.Lab;
import fascicle.photo.Caution.Kind;
import fascicle.photo.Sample.Against;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Samples and pictures as lines of text, each figure to its last bit. */
final class KeptText {

    private static final int HEAD = 8;

    private KeptText() {}

    static byte[] of(Sample sample) {
        List<String> lines = new ArrayList<>(List.of(
                exact(sample.lab().lightness()), exact(sample.lab().a()), exact(sample.lab().b()),
                sample.against().name(), Integer.toString(sample.pixels()), exact(sample.unlevelness()),
                exact(sample.uncertainty()),
                sample.leftOver().isPresent() ? exact(sample.leftOver().getAsDouble()) : ""));
        for (Caution caution : sample.cautions()) {
            lines.add(caution.kind().name());
            lines.add(caution.words());
        }
        return bytes(lines);
    }

    /**
     * The sample.
     *
     * @throws RuntimeException if these are not the lines of one
     */
    static Sample sample(byte[] kept) {
        List<String> lines = lines(kept);
        List<Caution> cautions = new ArrayList<>();
        for (int i = HEAD; i < lines.size(); i += 2) {
            cautions.add(new Caution(Kind.valueOf(lines.get(i)), lines.get(i + 1)));
        }
        String leftOver = lines.get(7);
        return new Sample(new Lab(number(lines, 0), number(lines, 1), number(lines, 2)), Against.valueOf(lines.get(3)),
                Integer.parseInt(lines.get(4)), number(lines, 5), number(lines, 6),
                leftOver.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(leftOver)),
                List.copyOf(cautions));
    }

    static byte[] of(Picture picture) {
        return bytes(List.of(picture.hash(), Integer.toString(picture.width()), Integer.toString(picture.height())));
    }

    /**
     * The picture.
     *
     * @throws RuntimeException if these are not the lines of one
     */
    static Picture picture(byte[] kept) {
        List<String> lines = lines(kept);
        return new Picture(lines.get(0), Integer.parseInt(lines.get(1)), Integer.parseInt(lines.get(2)));
    }

    /** A figure in hexadecimal digits, which differ between no two versions of Java. */
    static String exact(double figure) {
        return Double.toHexString(figure);
    }

    private static double number(List<String> lines, int at) {
        return Double.parseDouble(lines.get(at));
    }

    private static byte[] bytes(List<String> lines) {
        return String.join("\n", lines).getBytes(StandardCharsets.UTF_8);
    }

    private static List<String> lines(byte[] kept) {
        return List.of(new String(kept, StandardCharsets.UTF_8).split("\n", -1));
    }
}
