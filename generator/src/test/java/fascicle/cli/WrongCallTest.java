package fascicle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A call that cannot be read gets one plain sentence and the way to the help; nothing is done. */
class WrongCallTest {

    private static final List<String> COMMANDS = List.of("begin", "jot", "proof", "publish", "scale");

    @Test
    void theProgramSaysWhichItIs() {
        for (String word : new String[] {"--version", "-V"}) {
            assertTrue(Call.of(word).ends(0).out().startsWith("Fascicle"));
        }
        COMMANDS.forEach(command -> assertTrue(Call.of(command, "--version").ends(0).out().startsWith("Fascicle")));
    }

    @Test
    void helpNamesEveryCommandAndEachHasItsOwn() {
        Call help = Call.of("--help").ends(0);
        COMMANDS.forEach(command -> help.prints("  " + command + " "));
        COMMANDS.forEach(command -> Call.of(command, "--help").ends(0).prints("Usage: fascicle " + command));
        assertEquals("", help.err());
    }

    @Test
    void aCallWithoutACommandShowsTheHelpButIsWrong() {
        Call alone = Call.of().ends(2);
        assertEquals("", alone.out());
        assertEquals(Call.of("--help").out(), alone.err());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            nonsense                          | There is no command “nonsense”; the commands are begin,
            --nonsense                        | There is no option “--nonsense” here
            proof                             | The call lacks NOTEBOOK; write it as: fascicle proof NOTEBOOK
            publish                           | write it as: fascicle publish NOTEBOOK --to DIR
            publish here                      | The call lacks --to DIR; write it as: fascicle publish NOTEBOOK --to DIR
            publish here --to                 | The call lacks --to DIR
            publish here --to a --edition     | The call lacks --edition EDITION
            publish here --to a --edition all | “all” is no edition; write studio, students or open.
            publish here --to a --editon open | did you mean “--edition”?
            publish here --to a --to b        | --to stands twice in this call; name it once.
            publish here there --to a         | “there” is one word too many
            proof here --json=perhaps         | --json takes no value; leave “perhaps” out.
            jot here --pots many              | “many” is no whole number; write one after --pots.
            jot here --pots 2.5               | “2.5” is no whole number
            scale here                        | write it as: fascicle scale NOTEBOOK ENTRY-OR-METHOD --needles WEIGHT
            begin                             | The call lacks DIR; write it as: fascicle begin DIR
            begin one two                     | “two” is one word too many
            begin @one two                    | “two” is one word too many
            """)
    void aNonsensicalCallIsExplainedInOneSentence(String call, String sentence) {
        Call wrong = Call.of((Object[]) call.split(" ")).ends(2).says(sentence);
        assertEquals("", wrong.out());
        assertEquals(2, wrong.words().size(), wrong.err());
        assertTrue(wrong.words().get(1).startsWith("Help: fascicle ") && wrong.err().endsWith("--help\n"), wrong.err());
        assertFalse(wrong.err().contains("required") || wrong.err().contains("index"), wrong.err());
    }

    @ParameterizedTest
    @ValueSource(strings = {"jot", "proof", "publish", "scale"})
    void anEmptyNameIsNotTheFolderOneIsIn(String command) {
        Object[] call = switch (command) {
            case "publish" -> new Object[] {command, "", "--to", "anywhere"};
            case "scale" -> new Object[] {command, "", "41", "--needles", "5 g"};
            default -> new Object[] {command, ""};
        };
        Call.of(call).ends(2).says("folder's name is empty");
    }
}
