package fascicle.notebook;

import java.text.Normalizer;
import java.util.Locale;

/** How ids are compared: in normalisation form C and without case (Unicode Standard Annex 15). */
public final class Ids {

    private Ids() {}

    /**
     * The form of an id by which it is looked up.
     *
     * @param id an id as written
     * @return equal for ids that are the same
     */
    public static String key(String id) {
        if (isPlain(id)) {
            return id;
        }
        String composed = Normalizer.normalize(id, Normalizer.Form.NFC);
        return Normalizer.normalize(composed.toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT), Normalizer.Form.NFC);
    }

    /** Most ids are small letters, digits and hyphens, and are their own keys. */
    private static boolean isPlain(String id) {
        for (int at = 0; at < id.length(); at++) {
            char letter = id.charAt(at);
            if (letter > 'z' || letter >= 'A' && letter <= 'Z') {
                return false;
            }
        }
        return true;
    }

    /**
     * Whether two ids name the same thing.
     *
     * @param one an id
     * @param other another
     * @return true where they differ in case or composition at most
     */
    public static boolean same(String one, String other) {
        return key(one).equals(key(other));
    }

}
