package fascicle.notebook.label;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The hazard statements of the Globally Harmonized System of Classification and Labelling of Chemicals (UN GHS, ninth
 * revised edition, Annex 3, section 1), those of earlier editions that still stand on packs, and the European Union's
 * additions to them (Regulation (EC) No 1272/2008, Annexes II and III).
 */
public final class HazardStatements {

    private static final String FILE = "hazard-statements.txt";
    private static final Map<String, String> WORDINGS = load();

    private HazardStatements() {}

    /**
     * The wording behind a code.
     *
     * @param code as the system spells it: {@code H318}, {@code H301+H311}, {@code H360FD}
     * @return its words, if there is such a statement
     */
    public static Optional<String> wording(String code) {
        return Optional.ofNullable(WORDINGS.get(code));
    }

    /**
     * All codes.
     *
     * @return in the order of the system
     */
    public static Set<String> codes() {
        return WORDINGS.keySet();
    }

    private static Map<String, String> load() {
        Map<String, String> wordings = new LinkedHashMap<>();
        try (InputStream stream = HazardStatements.class.getResourceAsStream(FILE)) {
            if (stream == null) {
                throw new IllegalStateException(FILE + " is missing from the program");
            }
            BufferedReader lines = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8));
            lines.lines().filter(line -> !line.isBlank() && !line.startsWith("#")).forEach(line -> {
                int gap = line.indexOf(' ');
                wordings.put(line.substring(0, gap), line.substring(gap + 1));
            });
        } catch (IOException failed) {
            throw new UncheckedIOException(FILE + " cannot be read", failed);
        }
        return Collections.unmodifiableMap(wordings);
    }
}
