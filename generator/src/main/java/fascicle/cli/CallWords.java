package fascicle.cli;

import fascicle.notebook.Edition;
import fascicle.notebook.read.Suggestion;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** Says in a plain sentence why a call cannot be read, and what to write instead. */
final class CallWords {

    private CallWords() {}

    /** The sentence. */
    static String of(CommandLine.ParameterException wrong) {
        CommandSpec command = wrong.getCommandLine().getCommandSpec();
        if (wrong instanceof CommandLine.MissingParameterException missing) {
            return lacking(command, missing.getMissing());
        }
        if (wrong instanceof CommandLine.UnmatchedArgumentException unmatched) {
            return unknown(command, unmatched.getUnmatched().get(0));
        }
        if (wrong instanceof CommandLine.OverwrittenOptionException twice) {
            return called(twice.getOverwritten()) + " stands twice in this call; name it once.";
        }
        ArgSpec argument = wrong.getArgSpec();
        return argument == null ? "This call names no command."
                : unreadable(argument, String.valueOf(wrong.getValue()));
    }

    private static String lacking(CommandSpec command, List<ArgSpec> missing) {
        List<ArgSpec> whole = new ArrayList<>(command.positionalParameters());
        command.options().stream().filter(option -> option.required() || missing.contains(option)).forEach(whole::add);
        return "The call lacks " + missing.stream().map(CallWords::written).collect(Collectors.joining(" and "))
                + "; write it as: " + command.qualifiedName() + " "
                + whole.stream().map(CallWords::written).collect(Collectors.joining(" "));
    }

    private static String unknown(CommandSpec command, String word) {
        if (word.length() > 1 && word.startsWith("-")) {
            String option = word.split("=", 2)[0];
            return "There is no option “" + option + "” here"
                    + Suggestion.of(option, command.optionsMap().keySet())
                            .map(near -> "; did you mean “" + near + "”?").orElse("; leave it out.");
        }
        if (!command.subcommands().isEmpty()) {
            return "There is no command “" + word + "”; the commands are "
                    + String.join(", ", command.subcommands().keySet()) + ".";
        }
        return "“" + word + "” is one word too many for this command; put a name that holds spaces in quotes.";
    }

    private static String unreadable(ArgSpec argument, String value) {
        Class<?> type = argument.type();
        if (type == Edition.class) {
            return "“" + value + "” is no edition; write studio, students or open.";
        }
        if (type == int.class) {
            return "“" + value + "” is no whole number; write one after " + called(argument) + ".";
        }
        if (type == boolean.class) {
            return called(argument) + " takes no value; leave “" + value + "” out.";
        }
        return "“" + value + "” cannot be a file's or a folder's name; name another.";
    }

    /** An argument as it is written in a call. */
    private static String written(ArgSpec argument) {
        return argument.isOption() ? called(argument) + " " + argument.paramLabel() : argument.paramLabel();
    }

    private static String called(ArgSpec argument) {
        return argument instanceof OptionSpec option ? option.longestName() : argument.paramLabel();
    }
}
