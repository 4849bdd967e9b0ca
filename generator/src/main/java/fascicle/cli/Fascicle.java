package fascicle.cli;

import fascicle.notebook.Edition;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The program. */
@Command(name = "fascicle", versionProvider = Version.class, mixinStandardHelpOptions = true,
        description = "Turns a dye notebook into a method book.",
        synopsisSubcommandLabel = "COMMAND",
        commandListHeading = "%nCommands:%n",
        subcommands = {BeginCommand.class, JotCommand.class, PlanCommand.class, ProofCommand.class,
            PublishCommand.class, RecallCommand.class, SampleCommand.class, ScaleCommand.class})
public final class Fascicle {

    private Fascicle() {}

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
        line.setCommandName(Called.program());
        line.getCommandSpec().usageMessage().footer("", "Help for a command: " + Called.program().replace("%", "%%")
                + " COMMAND --help");
        line.setOut(terminal.out());
        line.setErr(terminal.err());
        line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
        line.setExpandAtFiles(false);
        line.registerConverter(Edition.class, word -> Edition.named(word)
                .orElseThrow(() -> new CommandLine.TypeConversionException(word)));
        line.getSubcommands().values().forEach(command -> command.getCommandSpec().versionProvider(new Version()));
        line.setUsageHelpAutoWidth(true);
        line.setParameterExceptionHandler((wrong, args) -> {
            terminal.say(CallWords.of(wrong));
            terminal.say("Help: " + wrong.getCommandLine().getCommandSpec().qualifiedName() + " --help");
            return Status.WRONG_CALL;
        });
        line.setExecutionExceptionHandler((failed, command, parsed) -> explain(failed, terminal));
        if (arguments.length == 0) {
            line.usage(terminal.err());
            return Status.WRONG_CALL;
        }
        try {
            return line.execute(arguments);
        } catch (OutOfMemoryError | StackOverflowError tooMuch) {
            return explain(tooMuch, terminal);
        }
    }

    private static int explain(Throwable failed, Terminal terminal) {
        if (failed instanceof WrongCall || failed instanceof WrongNotebook) {
            terminal.say(String.valueOf(failed.getMessage()));
            return failed instanceof WrongCall ? Status.WRONG_CALL : Status.ERRORS;
        }
        terminal.say(FailureWords.of(failed));
        return Status.FAILED;
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
