package fascicle.notebook.read;

import fascicle.notebook.Findings;
import fascicle.notebook.Noted;
import fascicle.notebook.Place;
import fascicle.notebook.text.SourceText;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/** Finds files that a file of the notebook names as seen from itself; none may lie outside the notebook. */
final class FilesBeside {

    private final Path root;
    private final Set<String> found = ConcurrentHashMap.newKeySet();

    FilesBeside(Path root) {
        this.root = root;
    }

    /** A picture that is there; what keeps it from being used is a finding where it is named. */
    Optional<Path> picture(Noted<String> file, Findings findings) {
        return found("picture", file, findings);
    }

    /** The text of a table; what keeps it from being read is a finding where it is named. */
    Optional<String> text(Noted<String> file, Findings findings) {
        return found("table", file, findings).flatMap(path -> {
            Optional<String> other = otherKind(path);
            if (other.isPresent()) {
                findings.error(file.place(), "the table “" + file.value() + "” " + other.get());
                return Optional.empty();
            }
            Findings inside = new Findings();
            Optional<String> text = SourceText.read(root, path(file), inside).map(SourceText::text);
            inside.sorted().forEach(finding -> findings.error(file.place(), "the table “" + file.value()
                    + "” cannot be read: " + finding.message()));
            return text;
        });
    }

    /** What a file is that is no text, by its first bytes. */
    private static Optional<String> otherKind(Path path) {
        byte[] first;
        try (InputStream in = Files.newInputStream(path)) {
            first = in.readNBytes(4);
        } catch (IOException unreadable) {
            // Whoever reads it whole says why.
            return Optional.empty();
        }
        return switch (new String(first, StandardCharsets.ISO_8859_1)) {
            case "PK\3\4" -> Optional.of("is a spreadsheet's or a word processor's own file; export it as CSV");
            case "\u00ff\u00d8\u00ff\u00e0", "\u00ff\u00d8\u00ff\u00e1", "\u0089PNG" ->
                    Optional.of("is a picture; read it with photo: instead");
            default -> Optional.empty();
        };
    }

    /** A file of nearly the same name in the same folder. */
    private static Optional<String> near(Path path) {
        try (Stream<Path> beside = Files.list(path.getParent())) {
            return Suggestion.of(path.getFileName().toString(),
                    beside.map(one -> one.getFileName().toString()).filter(name -> !name.endsWith(".md")).toList());
        } catch (IOException noFolder) {
            return Optional.empty();
        }
    }

    /** The files found so far, as paths from the notebook's folder. */
    Set<String> found() {
        return Set.copyOf(found);
    }

    /** The way from the notebook's folder to a file that was found, with {@code /}. */
    String path(Noted<String> file) {
        return root.normalize().relativize(resolved(file)).toString().replace('\\', '/');
    }

    private Path resolved(Noted<String> file) {
        return root.resolve(file.place().file()).resolveSibling(file.value()).normalize();
    }

    private Optional<Path> found(String what, Noted<String> file, Findings findings) {
        Place place = file.place();
        String named = "the " + what + " “" + file.value() + "” ";
        try {
            Path path = resolved(file);
            if (!path.startsWith(root.normalize())
                    || Files.exists(path) && !path.toRealPath().startsWith(root.toRealPath())) {
                findings.error(place, named + "lies outside the notebook; put it beside the entry and name it by its "
                        + "file alone");
            } else if (!Files.isRegularFile(path)) {
                findings.error(place, named + "is not there; " + near(path).map(name -> "did you mean “" + name + "”?")
                        .orElse("put it beside the entry, or mend its name"));
            } else {
                this.found.add(path(file));
                return Optional.of(path);
            }
        } catch (IOException | InvalidPathException unusable) {
            findings.error(place, named + "cannot be found; name a file beside the entry");
        }
        return Optional.empty();
    }
}
