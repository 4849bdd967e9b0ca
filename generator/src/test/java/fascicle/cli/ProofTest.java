package fascicle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.notebook.WrittenNotebook;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Findings stand on standard output in the form that editors jump to. */
class ProofTest {

    private static final Pattern GNU = Pattern.compile("([^:]+):(\\d+):(\\d+): (error|warning): (.+)");

    @TempDir
    private Path folder;

    private WrittenNotebook faulty() {
        return WrittenNotebook.small(folder)
                .with("days/2026-05-09/late.md", "---\ntitle: Late\ncolor: red\nbath: {water: lots}\n---\n")
                .with("days/2026-05-02/early.md", "---\nneedles: {lot: nowhere}\n---\n")
                .with("dyes/odd.md", "---\nkind: paint\nform: sand\n---\n");
    }

    @Test
    void findingsComeInOrderOfFileLineAndColumn() {
        Call proof = Call.of("proof", faulty().folder()).ends(1);
        record Spot(String file, int line, int column) {}
        List<Spot> spots = new ArrayList<>();
        proof.out().lines().forEach(line -> {
            Matcher gnu = GNU.matcher(line);
            assertTrue(gnu.matches(), line);
            spots.add(new Spot(gnu.group(1), Integer.parseInt(gnu.group(2)), Integer.parseInt(gnu.group(3))));
        });
        assertTrue(spots.size() >= 5, proof.out());
        assertEquals(spots.stream().sorted(Comparator.comparing(Spot::file).thenComparing(Spot::line)
                .thenComparing(Spot::column)).toList(), spots);
        assertTrue(spots.contains(new Spot("days/2026-05-09/late.md", 3, 1)), proof.out());
        assertTrue(spots.contains(new Spot("dyes/odd.md", 2, 7)), proof.out());
        proof.says(" errors, ");
        assertEquals(1, proof.words().size());
    }

    @Test
    void theSameFindingsAreGivenAsData() {
        Path notebook = faulty().folder();
        List<String> lines = Call.of("proof", notebook).out().lines().toList();
        Call call = Call.of("proof", notebook, "--json").ends(1);
        assertEquals("", call.err());
        JsonNode findings = JsonMapper.shared().readTree(call.out()).get("findings");
        List<String> said = new ArrayList<>();
        for (JsonNode finding : findings) {
            assertEquals(Set.of("file", "line", "column", "level", "message"), Set.copyOf(finding.propertyNames()));
            said.add(finding.get("file").asString() + ":" + finding.get("line").asInt() + ":"
                    + finding.get("column").asInt() + ": " + finding.get("level").asString() + ": "
                    + finding.get("message").asString());
        }
        assertEquals(lines, said);
    }

    @Test
    void warningsAloneAreNoFailure() {
        Path notebook = WrittenNotebook.small(folder).with("days/2026-05-09/pot.md", "---\ntitle:\n---\n").folder();
        Call.of("proof", notebook).ends(0).prints(": warning: ").says("0 errors, ");
        Call.of("proof", notebook, "--json").ends(0).prints("\"warning\"");
    }

    @Test
    void aNotebookWithoutFaultHasNothingToMend() {
        Call clean = Call.of("proof", WrittenNotebook.small(folder).folder()).ends(0);
        assertEquals("", clean.out());
        assertEquals("Nothing to mend.\n", clean.err());
        JsonNode data = JsonMapper.shared().readTree(Call.of("proof", folder, "--json").ends(0).out());
        assertEquals(0, data.get("findings").size());
    }

    @Test
    void aFindingIsOneLineWhateverAValueHolds() {
        Path notebook = WrittenNotebook.small(folder)
                .with("days/2026-05-09/pot.md", "---\nmethod: \"no\\nsuch\\u001b[31m\"\n---\n").folder();
        Call proof = Call.of("proof", notebook).ends(1);
        long errors = proof.out().lines().filter(line -> line.contains(": error: ")).count();
        assertEquals(errors, proof.out().lines().filter(line -> GNU.matcher(line).matches()
                && line.contains(": error: ")).count());
        assertEquals(proof.out().lines().count(), proof.out().lines().filter(line -> GNU.matcher(line).matches()).count());
    }
}
