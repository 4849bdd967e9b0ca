package fascicle.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Every example of {@code form.md} reads with the findings that stand below it. */
class FormTest {

    private static final Pattern EXAMPLE = Pattern.compile(
            "^````(\\S+)\\n(.*?)^````\\n+```findings\\n(.*?)^```$", Pattern.MULTILINE | Pattern.DOTALL);

    @TestFactory
    Stream<DynamicTest> theExamplesOfTheForm() throws IOException {
        String form = resource("form.md");
        List<DynamicTest> tests = new ArrayList<>();
        String section = "";
        Matcher example = EXAMPLE.matcher(form);
        while (example.find()) {
            String above = form.substring(0, example.start());
            section = above.substring(above.lastIndexOf("\n## ") + 4).lines().findFirst().orElse(section);
            String file = example.group(1);
            String text = example.group(2);
            String expected = example.group(3);
            tests.add(DynamicTest.dynamicTest(section + " · " + above.strip().lines().reduce((a, b) -> b).orElse(""),
                    () -> assertEquals(expected, findings(file, text))));
        }
        assertEquals(form.split("```findings", -1).length - 1, tests.size(), "every example is run");
        return tests.stream();
    }

    private static String findings(String file, String text) throws IOException {
        Path folder = Files.createTempDirectory("form");
        List<String> findings = WrittenNotebook.small(folder).with(file, text).findings();
        try (Stream<Path> paths = Files.walk(folder)) {
            paths.sorted(java.util.Comparator.reverseOrder()).forEach(path -> path.toFile().delete());
        }
        return findings.isEmpty() ? "none\n" : String.join("\n", findings) + "\n";
    }

    private static String resource(String name) throws IOException {
        try (var stream = FormTest.class.getResourceAsStream(name)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
