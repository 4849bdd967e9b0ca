package fascicle.book.address;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.text.Normalizer;
import java.util.HexFormat;
import java.util.regex.Pattern;

/** File names that any disk can hold, and how a link spells them. */
final class FileNames {

    private static final String REFUSED = "/\\:*?\"<>|~";
    private static final Pattern DEVICE = Pattern.compile("(?i)(con|prn|aux|nul|com[0-9]|lpt[0-9])(\\..*)?");
    private static final int MOST_BYTES = 200;
    private static final int KEPT_LETTERS = 40;
    private static final String UNRESERVED = "-._~/";

    private FileNames() {}

    /**
     * An id as part of a file name: in normalisation form C; what some disk refuses is spelt {@code ~} and its code.
     * Different ids have different names.
     *
     * @param id any id
     * @return a name without an ending
     */
    static String of(String id) {
        String composed = Normalizer.normalize(id, Normalizer.Form.NFC);
        StringBuilder name = new StringBuilder(composed.length());
        for (int i = 0; i < composed.length(); i++) {
            char letter = composed.charAt(i);
            boolean edge = (letter == '.' || letter == ' ') && (i == 0 || i == composed.length() - 1);
            if (edge || REFUSED.indexOf(letter) >= 0 || Character.isISOControl(letter)) {
                name.append('~').append(HexFormat.of().toHexDigits((byte) letter));
            } else {
                name.append(letter);
            }
        }
        if (DEVICE.matcher(name).matches()) {
            name.append('~');
        }
        String full = name.toString();
        return full.getBytes(StandardCharsets.UTF_8).length <= MOST_BYTES ? full : shortened(full);
    }

    private static String shortened(String name) {
        int kept = name.offsetByCodePoints(0, Math.min(KEPT_LETTERS, name.codePointCount(0, name.length())));
        return name.substring(0, kept) + "~~" + digest(name);
    }

    private static String digest(String text) {
        try {
            byte[] sum = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(sum, 0, 8);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java platform has SHA-256", impossible);
        }
    }

    /**
     * An address as a link spells it: UTF-8, percent-encoded but for unreserved characters (RFC 3986).
     *
     * @param address a path with {@code /}
     * @return the link
     */
    static String link(String address) {
        StringBuilder link = new StringBuilder(address.length());
        for (byte part : address.getBytes(StandardCharsets.UTF_8)) {
            char letter = (char) (part & 0xff);
            boolean plain = letter < 0x80 && (Character.isLetterOrDigit(letter) || UNRESERVED.indexOf(letter) >= 0);
            if (plain) {
                link.append(letter);
            } else {
                link.append('%').append(HexFormat.of().withUpperCase().toHexDigits(part));
            }
        }
        return link.toString();
    }
}
