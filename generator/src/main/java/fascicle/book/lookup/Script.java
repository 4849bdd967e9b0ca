package fascicle.book.lookup;

import java.util.Collection;
import java.util.HexFormat;
import java.util.List;
import java.util.function.Consumer;

/** Data as text that may stand in a script: JSON whose strings hold nothing that a script or a page could misread. */
final class Script {

    private final StringBuilder text = new StringBuilder();

    /** An object's member; the first begins the object. */
    Script member(String name) {
        text.append(text.length() == 0 || text.charAt(text.length() - 1) == '{' ? "" : ",\n");
        string(name);
        text.append(':');
        return this;
    }

    Script begin() {
        text.append('{');
        return this;
    }

    Script end() {
        text.append('}');
        return this;
    }

    Script number(long number) {
        text.append(number);
        return this;
    }

    Script string(String value) {
        text.append('"');
        value.codePoints().forEach(this::letter);
        text.append('"');
        return this;
    }

    Script strings(Collection<String> values) {
        return list(List.copyOf(values), this::string);
    }

    <T> Script list(List<T> items, Consumer<T> item) {
        text.append('[');
        for (int at = 0; at < items.size(); at++) {
            text.append(at == 0 ? "" : ",");
            item.accept(items.get(at));
        }
        text.append(']');
        return this;
    }

    private void letter(int point) {
        if (point == '"' || point == '\\') {
            text.append('\\').append((char) point);
        } else if (point == '\n') {
            text.append("\\n");
        } else if (point < 128 && point >= ' ' && point != '<' && point != 127) {
            text.append((char) point);
        } else if (point == '<' || isUnseen(point)) {
            for (char unit : Character.toChars(point)) {
                text.append("\\u").append(HexFormat.of().toHexDigits(unit));
            }
        } else {
            text.appendCodePoint(point);
        }
    }

    /** Controls, line ends, marks of direction, halves of letters: all that an eye or a parser may pass over. */
    private static boolean isUnseen(int point) {
        return switch (Character.getType(point)) {
            case Character.CONTROL, Character.FORMAT, Character.SURROGATE, Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR, Character.PRIVATE_USE, Character.UNASSIGNED -> true;
            default -> false;
        };
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
