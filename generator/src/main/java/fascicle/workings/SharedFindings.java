package fascicle.workings;

import fascicle.notebook.Finding;
import fascicle.notebook.Findings;
import fascicle.notebook.Place;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Collects what was found in recipes that share lines: a method's with those who follow it, one pot's with the others
 * of its file. At one place each kind of finding is said by the first recipe alone. What a method lends and is no fault
 * of the method is said where the borrower begins.
 */
final class SharedFindings {

    /** What differs between recipes with the same fault. */
    private static final Pattern NAMES_AND_FIGURES = Pattern.compile("“[^”]*”|\\d+(?:\\.\\d+)?(?: (?:mL|L|g|kg)\\b)?");

    private final Findings findings;
    private final Set<String> methods;
    private final Set<Kind> said = new HashSet<>();

    /**
     * Begins to collect.
     *
     * @param findings where all of it goes
     * @param methods the files of methods
     */
    SharedFindings(Findings findings, Set<String> methods) {
        this.findings = findings;
        this.methods = methods;
    }

    /** A fault at a place, whatever names and figures it is told with, and where it is said. */
    private record Kind(Place place, Place saidAt, Finding.Level level, String words) {

        static Kind of(Finding finding, Place saidAt) {
            return new Kind(finding.place(), saidAt, finding.level(),
                    NAMES_AND_FIGURES.matcher(finding.message()).replaceAll("…"));
        }
    }

    /**
     * Takes what was found in one recipe; those who lend come before those who borrow.
     *
     * @param found what was found
     * @param whole where its entry or method begins
     * @param followed where the methods begin that it follows
     */
    void add(List<Finding> found, Place whole, List<Place> followed) {
        List<Finding> fresh = found.stream().filter(finding -> !isSaid(finding, followed)).toList();
        for (Finding finding : fresh) {
            boolean lent = isLent(finding, whole);
            findings.addAll(List.of(lent ? borrowed(finding, whole) : finding));
            said.add(Kind.of(finding, lent ? whole : finding.place()));
        }
    }

    private boolean isSaid(Finding finding, List<Place> followed) {
        return said.contains(Kind.of(finding, finding.place()))
                || followed.stream().anyMatch(method -> said.contains(Kind.of(finding, method)));
    }

    /** Whether something stands in a method's file and was found in another recipe. */
    boolean isLent(Finding finding, Place whole) {
        String file = finding.place().file();
        return methods.contains(file) && !file.equals(whole.file());
    }

    private static Finding borrowed(Finding finding, Place whole) {
        return new Finding(whole, finding.level(), "following " + finding.place() + ": " + finding.message());
    }
}
