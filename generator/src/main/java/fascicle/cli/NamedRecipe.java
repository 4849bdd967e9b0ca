package fascicle.cli;

import fascicle.notebook.Entry;
import fascicle.notebook.Ids;
import fascicle.notebook.Method;
import fascicle.notebook.Notebook;
import fascicle.notebook.read.Suggestion;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The entry or method that a call names: by id, or an entry by its tag. */
final class NamedRecipe {

    private NamedRecipe() {}

    /** The id of what is named; a wrong notebook where there is no such thing, or where it has errors. */
    static String id(Notebook read, String named) {
        return find(read, named).orElseThrow(() -> new WrongNotebook(whyNot(read, named)));
    }

    /** The id of what is named, if there is such a thing without errors. */
    static Optional<String> find(Notebook read, String named) {
        return ofTag(read, named).or(() -> read.entry(named).map(Entry::id))
                .or(() -> read.method(named).map(Method::id));
    }

    private static Optional<String> ofTag(Notebook read, String named) {
        return read.entries().stream().filter(entry -> entry.tag().filter(tag -> tag.value().equals(named)).isPresent())
                .map(Entry::id).findFirst();
    }

    private static String whyNot(Notebook read, String named) {
        return read.missing().stream().filter(missing -> Ids.same(missing.what(), named)).findFirst()
                .map(missing -> "“" + named + "” has errors: " + String.join("; ", missing.why()) + ".")
                .orElseGet(() -> "Nothing here is called “" + named + "”; " + Suggestion.of(named, names(read))
                        .map(near -> "did you mean “" + near + "”?")
                        .orElse("name an entry by its day and name, as in 2026-05-09-brick-half, by its tag, or a "
                                + "method."));
    }

    private static List<String> names(Notebook read) {
        return Stream.concat(read.entries().stream().map(Entry::id), read.methods().stream().map(Method::id)).toList();
    }
}
