package fascicle.notebook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Collects findings. The same finding said twice counts once, and one file says at most {@value #MOST_OF_ONE_FILE}.
 *
 * <p>Not safe for use from several threads.
 */
public final class Findings {

    /** How many findings one file may have before the rest is only hinted at. */
    public static final int MOST_OF_ONE_FILE = 100;

    private final Set<Finding> all = new HashSet<>();
    private final Map<String, Integer> ofFile = new HashMap<>();
    private final List<Finding> errors = new ArrayList<>();

    /**
     * Notes an error.
     *
     * @param place where
     * @param message what was found, what was expected, how to mend it
     */
    public void error(Place place, String message) {
        Finding error = new Finding(place, Finding.Level.ERROR, message);
        errors.add(error);
        add(error);
    }

    /**
     * Notes a warning.
     *
     * @param place where
     * @param message what was found and what would be better
     */
    public void warning(Place place, String message) {
        add(new Finding(place, Finding.Level.WARNING, message));
    }

    /**
     * Takes over findings made elsewhere.
     *
     * @param findings the findings to add
     */
    public void addAll(Iterable<Finding> findings) {
        for (Finding finding : findings) {
            if (finding.level() == Finding.Level.ERROR) {
                error(finding.place(), finding.message());
            } else {
                add(finding);
            }
        }
    }

    private void add(Finding finding) {
        if (all.contains(finding)) {
            return;
        }
        int already = ofFile.merge(finding.place().file(), 1, Integer::sum);
        if (already <= MOST_OF_ONE_FILE) {
            all.add(finding);
        } else if (already == MOST_OF_ONE_FILE + 1) {
            all.add(new Finding(finding.place(), Finding.Level.ERROR,
                    "there is more to mend in this file than is shown here; mend these first and read it again"));
        }
    }

    /**
     * How many errors were said so far, repeats included: a mark for {@link #errorsSince}.
     *
     * @return the count
     */
    public int mark() {
        return errors.size();
    }

    /**
     * The errors said since a mark, each once: what kept a piece of the notebook from being read.
     *
     * @param mark an earlier {@link #mark}
     * @return the errors, empty where all went well
     */
    public List<Finding> errorsSince(int mark) {
        return errors.subList(mark, errors.size()).stream().distinct().sorted().toList();
    }

    /**
     * The findings in order of file, line and column.
     *
     * @return a copy
     */
    public List<Finding> sorted() {
        List<Finding> sorted = new ArrayList<>(all);
        sorted.sort(null);
        return List.copyOf(sorted);
    }
}
