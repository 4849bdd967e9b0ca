package fascicle.photo;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Set;

/** Tells by its first bytes what a file holds, whatever its name says; refuses in words what is not read. */
enum FileKind {
    JPEG,
    PNG;

    /** How a picture of another kind becomes one that can be read. */
    static final String SAVE_AS_JPEG =
            "save it as JPEG: set the camera of the phone to save JPEG, or export the picture as JPEG";

    /** What leads to a whole file again. */
    static final String COPY_AGAIN = "copy it from the phone or camera again";

    private static final Set<String> HEIC_BRANDS =
            Set.of("heic", "heix", "heim", "heis", "hevc", "hevx", "hevm", "hevs", "mif1", "msf1");
    private static final Set<String> AVIF_BRANDS = Set.of("avif", "avis");
    private static final String[] TEXT_STARTS = {"<", "{", "%!", "---", "#"};

    /** How much of a file is looked at to tell a text from anything else. */
    private static final int GLANCE = 512;

    static FileKind of(byte[] content) throws UnreadablePhotograph {
        if (content.length == 0) {
            throw new UnreadablePhotograph("is an empty file; " + COPY_AGAIN);
        }
        if (starts(content, 0, "\u00ff\u00d8\u00ff")) {
            return JPEG;
        }
        if (starts(content, 0, "\u0089PNG\r\n\u001a\n")) {
            return PNG;
        }
        throw new UnreadablePhotograph("is " + otherKind(content));
    }

    private static String otherKind(byte[] content) {
        if (starts(content, 4, "ftyp")) {
            return boxed(content);
        }
        if (starts(content, 0, "RIFF") && starts(content, 8, "WEBP")) {
            return notRead("a WebP picture");
        }
        if (starts(content, 0, "GIF8")) {
            return "a GIF, which holds too few colours; take the photograph it was made from, and " + SAVE_AS_JPEG;
        }
        if (starts(content, 0, "II*\0") || starts(content, 0, "MM\0*")) {
            return notRead("a TIFF or a camera's raw picture");
        }
        if (starts(content, 0, "IIU\0") || starts(content, 0, "IIRO") || starts(content, 0, "IIRS")) {
            return notRead("a camera's raw picture");
        }
        if (starts(content, 0, "BM")) {
            return notRead("a BMP picture");
        }
        if (starts(content, 0, "%PDF")) {
            return "a PDF and no picture; save the photograph in it as JPEG";
        }
        if (starts(content, 0, "8BPS")) {
            return notRead("a picture program's own file");
        }
        if (starts(content, 0, "\u00ff\n") || starts(content, 4, "JXL ")) {
            return notRead("a JPEG XL picture");
        }
        if (starts(content, 4, "jP  ")) {
            return notRead("a JPEG 2000 picture");
        }
        return isText(content)
                ? "a text and no picture; name the photograph's own file here, a JPEG or PNG"
                : "no JPEG and no PNG, or a damaged one; " + COPY_AGAIN + ", or " + SAVE_AS_JPEG;
    }

    /** Of a file in the boxes of ISO/IEC 14496-12 the brand tells the kind. */
    private static String boxed(byte[] content) {
        String brand = text(content, 8, 4);
        if (HEIC_BRANDS.contains(brand)) {
            return notRead("a HEIC picture");
        }
        if (AVIF_BRANDS.contains(brand)) {
            return notRead("an AVIF picture");
        }
        return brand.equals("crx ") ? notRead("a camera's raw picture") : "a film and no picture; take a photograph";
    }

    private static String notRead(String kind) {
        return kind + ", which cannot be read here; " + SAVE_AS_JPEG;
    }

    private static boolean isText(byte[] content) {
        String glance = text(content, 0, GLANCE);
        return Arrays.stream(TEXT_STARTS).anyMatch(glance.stripLeading()::startsWith)
                || glance.chars().allMatch(letter -> letter >= ' ' || "\n\r\t".indexOf(letter) >= 0);
    }

    private static boolean starts(byte[] content, int at, String signature) {
        return text(content, at, signature.length()).equals(signature);
    }

    private static String text(byte[] content, int at, int length) {
        int from = StrictMath.min(at, content.length);
        return new String(content, from, StrictMath.min(length, content.length - from), StandardCharsets.ISO_8859_1);
    }
}
