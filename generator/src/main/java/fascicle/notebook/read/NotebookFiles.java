package fascicle.notebook.read;

import fascicle.notebook.Findings;
import fascicle.notebook.Place;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Finds the notebook's files by the folders they lie in. Hidden files and what is no Markdown are left alone. */
final class NotebookFiles {

    /** The folders a notebook has. */
    static final List<String> FOLDERS = List.of("needles", "dyes", "methods", "days");

    private static final String ENDING = ".md";
    private static final Set<String> OTHER_ENDINGS = Set.of(".markdown", ".mdown", ".mkd", ".txt");

    private final Path root;
    private final Findings findings;
    private final List<String> unread = new ArrayList<>();

    NotebookFiles(Path root, Findings findings) {
        this.root = root;
        this.findings = findings;
    }

    /** The Markdown files of a folder, as paths relative to the notebook, in order. */
    List<String> in(String folder) throws IOException {
        List<String> files = new ArrayList<>();
        for (String child : children(folder)) {
            String path = folder + "/" + child;
            if (Files.isDirectory(root.resolve(path))) {
                if (!folder.equals("days")) {
                    sayOutOfReach(path, "files of " + folder + "/ lie right in it");
                }
            } else if (child.endsWith(ENDING)) {
                files.add(path);
            } else {
                checkEnding(path, child);
            }
        }
        return files;
    }

    /** The folders of dye days, in order. */
    List<String> days() throws IOException {
        List<String> days = new ArrayList<>();
        for (String child : children("days")) {
            if (Files.isDirectory(root.resolve("days/" + child))) {
                days.add("days/" + child);
            } else if (child.toLowerCase(Locale.ROOT).endsWith(ENDING)) {
                findings.error(Place.of("days/" + child), "an entry lies in the folder of its day, as in "
                        + "days/2026-05-09/brick.md; move this file there");
            }
        }
        return days;
    }

    /** Says so where a folder looks like one of the notebook's but is not spelled like it. */
    void checkStrangers() throws IOException {
        for (String child : children("")) {
            boolean folder = Files.isDirectory(root.resolve(child));
            if (folder && !FOLDERS.contains(child)) {
                Optional<String> near = Suggestion.of(child, FOLDERS);
                if (near.isPresent()) {
                    sayOutOfReach(child, "did you mean “" + near.get() + "/”?");
                }
            } else if (!folder && (child.equals("notebook.yml") || child.equals("vessels.yml"))) {
                findings.warning(Place.of(child), "this file is not read; name it "
                        + child.replace(".yml", ".yaml"));
            }
        }
    }

    private void sayOutOfReach(String folder, String hint) throws IOException {
        for (String child : children(folder)) {
            if (child.endsWith(ENDING)) {
                findings.warning(Place.of(folder + "/" + child), "nothing in “" + folder + "/” is read: " + hint);
                return;
            }
        }
    }

    private void checkEnding(String path, String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        if (lower.endsWith(ENDING) || OTHER_ENDINGS.stream().anyMatch(lower::endsWith)) {
            unread.add(path);
        }
    }

    /** Says so where a file looks like writing and nothing has read it: tables are read where an entry names them. */
    void sayUnread(Set<String> named) {
        unread.stream().filter(path -> !named.contains(path)).forEach(path -> findings.warning(Place.of(path),
                "this file is not read; if it belongs to the notebook, end its name in “.md”"));
    }

    private List<String> children(String folder) throws IOException {
        Path path = root.resolve(folder);
        List<String> names = new ArrayList<>();
        if (!Files.isDirectory(path)) {
            return names;
        }
        if (!path.toRealPath().startsWith(root.toRealPath())) {
            findings.error(Place.of(folder), "this folder is a link that leaves the notebook, so it was not read; put "
                    + "the folder itself here");
            return names;
        }
        try (DirectoryStream<Path> stream = Files.newDirectoryStream(path)) {
            for (Path child : stream) {
                String name = child.getFileName().toString();
                if (!name.startsWith(".")) {
                    names.add(name);
                }
            }
        } catch (java.nio.file.AccessDeniedException denied) {
            findings.error(Place.of(folder), "this folder may not be read; give yourself the right to read it");
        }
        names.sort(null);
        return names;
    }

    /** A file's name without its ending, composed. */
    static String idOf(String file) {
        String name = file.substring(file.lastIndexOf('/') + 1);
        return Normalizer.normalize(name.substring(0, name.length() - ENDING.length()), Normalizer.Form.NFC);
    }
}
