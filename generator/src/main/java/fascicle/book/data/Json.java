package fascicle.book.data;

import fascicle.bath.Magnitude;
import fascicle.book.figures.Figures;
import fascicle.colour.Lab;
import fascicle.notebook.Noted;
import fascicle.notebook.Word;
import java.io.StringWriter;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Consumer;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.json.JsonWriteFeature;

/** A JSON text in the making: members in the order written, unknowns null, one item of a list on a line. */
final class Json {

    private static final JsonFactory FACTORY = JsonFactory.builder()
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .disable(JsonWriteFeature.ESCAPE_FORWARD_SLASHES)
            .build();

    private final StringWriter text = new StringWriter();
    private final JsonGenerator generator = FACTORY.createGenerator(ObjectWriteContext.empty(), text);

    /** The text, once its outermost object is written. */
    String finished() {
        generator.close();
        return text + "\n";
    }

    void object(Runnable members) {
        generator.writeStartObject();
        members.run();
        generator.writeEndObject();
    }

    void object(String name, Runnable members) {
        generator.writeName(name);
        object(members);
    }

    /** An object, or null as a whole where there is nothing to tell. */
    <T> void object(String name, Optional<T> known, Consumer<T> members) {
        if (known.isEmpty()) {
            unknown(name);
        } else {
            object(name, () -> members.accept(known.get()));
        }
    }

    /** A list of objects. */
    <T> void items(String name, List<T> items, Consumer<T> members) {
        generator.writeName(name);
        generator.writeStartArray();
        for (T item : items) {
            generator.writeRaw('\n');
            object(() -> members.accept(item));
        }
        generator.writeEndArray();
    }

    /** A list of lists. */
    <T> void rows(String name, List<T> rows, Consumer<T> cells) {
        generator.writeName(name);
        generator.writeStartArray();
        for (T row : rows) {
            generator.writeStartArray();
            cells.accept(row);
            generator.writeEndArray();
        }
        generator.writeEndArray();
    }

    void cell(String text) {
        generator.writeString(text);
    }

    void cell(double value) {
        generator.writeNumber(value);
    }

    void texts(String name, List<String> values) {
        generator.writeName(name);
        generator.writeStartArray();
        values.forEach(generator::writeString);
        generator.writeEndArray();
    }

    void text(String name, String value) {
        generator.writeStringProperty(name, value);
    }

    void text(String name, Optional<String> value) {
        value.ifPresentOrElse(known -> text(name, known), () -> unknown(name));
    }

    <W extends Word> void word(String name, Optional<Noted<W>> value) {
        text(name, value.map(word -> word.value().word()));
    }

    void number(String name, int value) {
        generator.writeNumberProperty(name, value);
    }

    void count(String name, OptionalInt value) {
        if (value.isEmpty()) {
            unknown(name);
        } else {
            number(name, value.getAsInt());
        }
    }

    void yes(String name, boolean value) {
        generator.writeBooleanProperty(name, value);
    }

    void figure(String name, OptionalDouble value) {
        if (value.isEmpty()) {
            unknown(name);
        } else {
            generator.writeNumberProperty(name, Figures.datum(value.getAsDouble()));
        }
    }

    /** A truth that may not be known. */
    void maybe(String name, Optional<Boolean> value) {
        value.ifPresentOrElse(known -> yes(name, known), () -> unknown(name));
    }

    /** A size to its last digit, for whoever goes on reckoning with it: its value and whether it is rough. */
    void exact(String name, Magnitude size) {
        if (!size.known()) {
            unknown(name);
            return;
        }
        generator.writeName(name);
        generator.writeStartArray();
        generator.writeNumber(size.orThrow());
        generator.writeNumber(size.about() ? 1 : 0);
        generator.writeEndArray();
    }

    /** A size to its last digit that is never rough; left out where it is not known. */
    void exact(String name, OptionalDouble value) {
        value.ifPresent(known -> generator.writeNumberProperty(name, known));
    }

    /** A truth that is only told where it holds. */
    void mark(String name, boolean holds) {
        if (holds) {
            generator.writeNumberProperty(name, 1);
        }
    }

    void lab(String name, Optional<Lab> value) {
        if (value.isEmpty()) {
            unknown(name);
            return;
        }
        generator.writeName(name);
        generator.writeStartArray();
        generator.writeNumber(Figures.datum(value.get().lightness()));
        generator.writeNumber(Figures.datum(value.get().a()));
        generator.writeNumber(Figures.datum(value.get().b()));
        generator.writeEndArray();
    }

    void unknown(String name) {
        generator.writeNullProperty(name);
    }
}
