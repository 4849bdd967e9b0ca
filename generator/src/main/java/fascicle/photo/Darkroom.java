package fascicle.photo;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** Reads photographs and makes copies of them to publish. Safe for use from several threads. */
public final class Darkroom {

    private Darkroom() {}

    /** A darkroom that keeps nothing. */
    public static Darkroom withoutCache() {
        return new Darkroom();
    }

    /** A darkroom that keeps what it has read in a folder. */
    public static Darkroom keeping(Path folder) {
        return new Darkroom();
    }

    /** A picture's content and size, without decoding it. */
    public Picture picture(Path file) throws UnreadablePhotograph, IOException {
        return Photograph.read(file).picture();
    }

    /** Reads the colour of an area against the patches of a card. */
    public Sample sample(Path file, Area needles, List<Patch> card) throws UnreadablePhotograph, IOException {
        return Sampling.of(Photograph.read(file).negative(), needles, card);
    }

    /** An upright sRGB copy of at most so many pixels in width, as a JPEG without metadata. */
    public byte[] print(Path file, int width) throws UnreadablePhotograph, IOException {
        throw new UnreadablePhotograph("is not read yet");
    }
}
