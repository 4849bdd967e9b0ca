package fascicle.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The program. */
@Command(name = "fascicle", versionProvider = Version.class, mixinStandardHelpOptions = true,
        description = "Turns a dye notebook into a method book.",
        synopsisSubcommandLabel = "COMMAND",
        commandListHeading = "%nCommands:%n",
        subcommands = {BeginCommand.class, JotCommand.class, ProofCommand.class, PublishCommand.class,
            ScaleCommand.class},
        footer = "%nHelp for a command: fascicle COMMAND --help")
public final class Fascicle implements Runnable {

    @CommandLine.Spec
    private CommandLine.Model.@org.jspecify.annotations.Nullable CommandSpec spec;

    /**
     * Runs a command and leaves with its exit status.
     *
     * @param arguments the call
     */
    public static void main(String[] arguments) {
        Terminal terminal = Terminal.ofTheProcess();
        int status = run(terminal, arguments);
        terminal.flush();
        System.exit(status);
    }

    /**
     * Runs a command.
     *
     * @param terminal where its words and data go
     * @param arguments the call
     * @return the exit status
     */
    public static int run(Terminal terminal, String... arguments) {
        CommandLine line = new CommandLine(new Fascicle(), new WithTerminal(terminal));
        line.setOut(terminal.out());
        line.setErr(terminal.err());
        line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setUsageHelpAutoWidth(true);
        line.setParameterExceptionHandler((wrong, args) -> {
            terminal.say(String.valueOf(wrong.getMessage()) + ".");
            terminal.say("Help: fascicle " + helpOf(wrong.getCommandLine()) + "--help");
            return Status.WRONG_CALL;
        });
        line.setExecutionExceptionHandler((failed, command, parsed) -> explain(failed, terminal));
        return line.execute(arguments);
    }

    @Override
    public void run() {
        if (spec != null) {
            throw new CommandLine.ParameterException(spec.commandLine(), "A command is missing");
        }
    }

    private static String helpOf(CommandLine command) {
        String name = command.getCommandName();
        return name.equals("fascicle") ? "" : name + " ";
    }

    private static int explain(Exception failed, Terminal terminal) throws Exception {
        if (failed instanceof WrongCall wrong) {
            terminal.say(String.valueOf(wrong.getMessage()));
            return Status.WRONG_CALL;
        }
        if (failed instanceof AccessDeniedException denied) {
            terminal.say("“" + denied.getFile() + "” may not be read or written; give yourself the right to it.");
            return Status.FAILED;
        }
        if (failed instanceof FileSystemException disk) {
            terminal.say("The disk failed at “" + disk.getFile() + "”"
                    + (disk.getReason() == null ? "" : ": " + disk.getReason()) + ".");
            return Status.FAILED;
        }
        if (failed instanceof IOException disk) {
            terminal.say("The disk failed: " + disk.getMessage() + ".");
            return Status.FAILED;
        }
        throw failed;
    }

    /** Makes commands that know where their words go. */
    private record WithTerminal(Terminal terminal) implements CommandLine.IFactory {
        @Override
        public <K> K create(Class<K> type) throws Exception {
            try {
                return type.cast(type.getDeclaredConstructor(Terminal.class).newInstance(terminal));
            } catch (NoSuchMethodException other) {
                return CommandLine.defaultFactory().create(type);
            }
        }
    }
}
