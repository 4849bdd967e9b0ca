package fascicle.notebook.read;

import fascicle.notebook.Findings;
import fascicle.notebook.Noted;
import fascicle.notebook.Place;
import fascicle.notebook.text.SourceText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

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
            Findings inside = new Findings();
            Optional<String> text = SourceText.read(root, path(file), inside).map(SourceText::text);
            inside.sorted().forEach(finding -> findings.error(file.place(), "the table “" + file.value()
                    + "” cannot be read: " + finding.message()));
            return text;
        });
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
                findings.error(place, named + "is not there; put it beside the entry, or mend its name");
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
