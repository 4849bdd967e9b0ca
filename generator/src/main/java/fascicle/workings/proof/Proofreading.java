package fascicle.workings.proof;

import fascicle.notebook.Finding;
import fascicle.notebook.Findings;
import fascicle.notebook.Notebook;
import fascicle.workings.Found;
import fascicle.workings.Workings;
import fascicle.workings.stock.OverdyeChecks;
import fascicle.workings.stock.ShelfChecks;
import fascicle.workings.stock.Stocktaking;
import java.util.List;
import java.util.stream.Collectors;

/** Joins what reading found with what only computing reveals. */
public final class Proofreading {

    private Proofreading() {}

    /**
     * A notebook that has been proofed.
     *
     * @param notebook what is left of it without the faulty entries
     * @param findings everything found, in order of file, line and column
     */
    public record Proof(Notebook notebook, List<Finding> findings) {}

    /**
     * Proofs a notebook.
     *
     * @param notebook the whole notebook, as read
     * @param read what reading it found
     * @return the notebook without entries whose bath cannot be, and all findings
     */
    public static Proof of(Notebook notebook, List<Finding> read) {
        Workings workings = Workings.of(notebook);
        Found found = workings.found(read.stream().filter(finding -> finding.level() == Finding.Level.ERROR)
                .map(finding -> finding.place().file()).collect(Collectors.toSet()));
        Findings all = new Findings();
        all.addAll(read);
        all.addAll(found.findings());
        Stocktaking stock = Stocktaking.of(workings);
        new ShelfChecks(notebook, stock, all).check();
        new OverdyeChecks(workings, stock, all).check();
        return new Proof(found.faulty().isEmpty() ? notebook : notebook.without(found.faulty()), all.sorted());
    }
}
