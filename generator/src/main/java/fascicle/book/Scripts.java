package fascicle.book;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** The book's own scripts, as they come with the program. */
final class Scripts {

    /** What stands as it is: strings, and regular expressions, which begin where a value may. */
    private static final String LITERAL = "'(?:\\\\.|[^'\\\\])*+'|\"(?:\\\\.|[^\"\\\\])*+\"|`(?:\\\\.|[^`\\\\])*+`"
            + "|(?<=[(,=:?!&|\\[]|[(,=:?!&|\\[] |return )"
            + "/(?![*/])(?:\\\\.|\\[(?:\\\\.|[^\\]\\\\])*+]|[^/\\\\\\n\\[])++/";

    /**
     * Comments, empty lines, space beside a sign, a block's last semicolon: a phone by the stove loads none of them.
     * Our scripts end every statement with a semicolon, so that no line needs its end, and have no loop without a body.
     */
    private static final Pattern NEEDLESS = Pattern.compile("(" + LITERAL + ")|//[^\\n]*+|/\\*(?s:.)*?\\*/|;\\s*+(?=})"
            + "|\\s*+(?:([{(\\[;,:?=<>*&|!}])\\s*+|([)\\].])[ \\t]*+|(?<![-+] )([-+])[ \\t]*+(?![-+]))|(\\n)\\s*+");

    private Scripts() {}

    /** A script's bytes; its name is that of a resource. */
    static byte[] bytes(String name) {
        try (InputStream file = Scripts.class.getResourceAsStream("scripts/" + name)) {
            if (file == null) {
                throw new IllegalStateException("the program came without its script: " + name);
            }
            return light(new String(file.readAllBytes(), StandardCharsets.UTF_8)).getBytes(StandardCharsets.UTF_8);
        } catch (IOException failed) {
            throw new UncheckedIOException("the script cannot be read: " + name, failed);
        }
    }

    /** The same script without what only those read who change it. */
    static String light(String script) {
        return NEEDLESS.matcher(script).replaceAll(found -> {
            String kept = IntStream.rangeClosed(1, found.groupCount()).mapToObj(found::group).filter(Objects::nonNull)
                    .findFirst().orElse("");
            return Matcher.quoteReplacement(kept);
        }).replaceAll("\\n{2,}", "\n").strip() + "\n";
    }
}
