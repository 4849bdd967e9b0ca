package fascicle.cli;

import fascicle.book.data.Answers;
import fascicle.notebook.Finding;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Reads everything and prints the findings. */
@Command(name = "proof", mixinStandardHelpOptions = true,
        description = "Reads the whole notebook and prints what needs mending, each with its file, line and column.")
final class ProofCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Parameters(paramLabel = "NOTEBOOK", description = "The notebook's folder.")
    private Path notebook = Path.of("");

    @Option(names = "--json", description = "Print the findings as data.")
    private boolean json;

    ProofCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        List<Finding> findings = NotebookFolder.proof(notebook, terminal).findings();
        if (json) {
            terminal.print(Answers.findings(findings));
        } else {
            findings.forEach(finding -> terminal.print(finding.toString()));
            terminal.say(findings.isEmpty() ? "Nothing to mend." : NotebookFolder.count(findings) + ".");
        }
        return NotebookFolder.hasErrors(findings) ? Status.ERRORS : Status.DONE;
    }
}
