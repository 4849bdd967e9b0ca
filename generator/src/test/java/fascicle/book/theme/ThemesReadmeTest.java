package fascicle.book.theme;

import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.book.page.Markup;
import fascicle.book.page.Page;
import java.io.IOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * What themes/README.md says of each template is what its page has, in the words of the records themselves. Where it
 * is not, the text that should stand there is written to target/themes-readme.md.
 */
class ThemesReadmeTest {

    private static final Path README = Path.of("..", "themes", "README.md");
    private static final Path SOURCES = Path.of("src", "main", "java");
    private static final String BEGIN = "## What each template is given\n";

    @Test
    void theListOfTemplatesIsThatOfThePages() throws Exception {
        String readme = Files.readString(README);
        int begin = readme.indexOf(BEGIN);
        assertTrue(begin > 0, BEGIN);
        String expected = readme.substring(0, begin) + list();
        Files.writeString(Path.of("target", "themes-readme.md"), expected);
        assertTrue(expected.equals(readme), "take over the text of generator/target/themes-readme.md");
    }

    @Test
    void everyTemplateIsNamedAndEveryPageHasOne() throws Exception {
        String readme = Files.readString(README);
        for (String template : Theme.TEMPLATES) {
            assertTrue(readme.contains("`" + template + "`"), template);
        }
        for (Class<?> page : Page.class.getPermittedSubclasses()) {
            assertTrue(Theme.TEMPLATES.contains(((Page) sample(page)).template()), page.getName());
        }
    }

    private static String list() throws Exception {
        Map<String, Class<?>> pages = new TreeMap<>();
        for (Class<?> page : Page.class.getPermittedSubclasses()) {
            pages.merge(((Page) sample(page)).template(), page, (one, other) -> {
                throw new IllegalStateException("two pages with one template: " + one + ", " + other);
            });
        }
        Map<String, Class<?>> pieces = new TreeMap<>();
        StringBuilder list = new StringBuilder(BEGIN);
        for (Map.Entry<String, Class<?>> page : pages.entrySet()) {
            list.append("\n### `").append(page.getKey()).append("`\n\n");
            describe(page.getValue(), list, pieces);
        }
        list.append("\n## The pieces that pages are made of\n");
        Map<String, String> described = new TreeMap<>();
        while (!described.keySet().containsAll(pieces.keySet())) {
            for (Map.Entry<String, Class<?>> piece : new TreeMap<>(pieces).entrySet()) {
                StringBuilder text = new StringBuilder("\n### " + piece.getKey() + "\n\n");
                describe(piece.getValue(), text, pieces);
                described.put(piece.getKey(), text.toString());
            }
        }
        described.values().forEach(list::append);
        return list.toString();
    }

    private static void describe(Class<?> record, StringBuilder text, Map<String, Class<?>> pieces) throws IOException {
        Map<String, String> meanings = meanings(record);
        for (RecordComponent component : record.getRecordComponents()) {
            text.append("- `").append(component.getName()).append("`, ").append(kind(component.getGenericType(), pieces))
                    .append(": ").append(Optional.ofNullable(meanings.get(component.getName())).orElseThrow()).append('\n');
        }
    }

    /** Two records may hold rows of their own. */
    private static String named(Class<?> piece) {
        Class<?> whole = piece.getEnclosingClass();
        return whole == null ? piece.getSimpleName() : whole.getSimpleName() + "." + piece.getSimpleName();
    }

    private static String kind(Type type, Map<String, Class<?>> pieces) {
        if (type instanceof ParameterizedType of) {
            String inner = kind(of.getActualTypeArguments()[0], pieces);
            return of.getRawType() == List.class ? "list of " + inner : inner + " or nothing";
        }
        Class<?> plain = (Class<?>) type;
        if (plain == String.class) {
            return "text";
        } else if (plain == int.class || plain == Integer.class) {
            return "whole number";
        } else if (plain == boolean.class || plain == Boolean.class) {
            return "yes or no";
        } else if (plain == Markup.class) {
            return "finished HTML";
        }
        assertTrue(plain.isRecord(), plain + " is not for templates");
        String name = named(plain);
        pieces.put(name, plain);
        return name;
    }

    /** What the record's own comment says of each component. */
    private static Map<String, String> meanings(Class<?> record) throws IOException {
        Class<?> top = record.getNestHost();
        String source = Files.readString(SOURCES.resolve(top.getName().replace('.', '/') + ".java"));
        int at = source.indexOf("record " + record.getSimpleName() + "(");
        String comment = source.substring(source.lastIndexOf("/**", at), at);
        Matcher parameter = Pattern.compile("@param (\\w+) (.+?)(?=@param|\\*/)", Pattern.DOTALL).matcher(comment);
        Map<String, String> meanings = new LinkedHashMap<>();
        while (parameter.find()) {
            meanings.put(parameter.group(1), parameter.group(2).replaceAll("\\{@code ([^}]*)}", "`$1`")
                    .replaceAll("\\{@link (?:\\w*#)?([^}]*)}", "$1").replaceAll("\\s*\\n\\s*\\*?\\s*", " ").strip());
        }
        return meanings;
    }

    /** A record that says nothing. */
    private static Object sample(Class<?> type) throws ReflectiveOperationException {
        if (type == String.class) {
            return "";
        } else if (type == int.class || type == Integer.class) {
            return 0;
        } else if (type == boolean.class || type == Boolean.class) {
            return false;
        } else if (type == List.class) {
            return List.of();
        } else if (type == Optional.class) {
            return Optional.empty();
        }
        Class<?>[] types = Stream.of(type.getRecordComponents()).map(RecordComponent::getType).toArray(Class<?>[]::new);
        Object[] values = new Object[types.length];
        for (int i = 0; i < types.length; i++) {
            values[i] = sample(types[i]);
        }
        Constructor<?> made = type.getDeclaredConstructor(types);
        made.setAccessible(true);
        return made.newInstance(values);
    }
}
