package fascicle.notebook;

import fascicle.notebook.read.NotebookReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A notebook on disk, for tests: the small one that most examples stand in, and what is added to it. */
public final class WrittenNotebook {

    private final Path folder;

    private WrittenNotebook(Path folder) {
        this.folder = folder;
    }

    /** An empty folder. */
    public static WrittenNotebook empty(Path folder) {
        return new WrittenNotebook(folder);
    }

    /** A notebook with a lot, a few dyes, a vessel and a method, and no entry. */
    public static WrittenNotebook small(Path folder) {
        return empty(folder)
                .with("notebook.yaml", """
                        form: 1
                        title: A small notebook
                        kitchen: metric
                        """)
                .with("needles/scalded-2025.md", """
                        ---
                        title: Scalded black pine
                        species: Pinus nigra
                        condition: scalded
                        length: 14 cm
                        bundle: {weight: 150 g, counted: 10}
                        colour: [{lab: [44.0, 12.1, 24.5]}, {lab: [41.8, 13.0, 23.9]}]
                        ---
                        """)
                .with("dyes/brick.md", """
                        ---
                        title: Brick
                        kind: dye
                        form: powder
                        level-tsp: {weight: 3.1 g, weighed: 10}
                        ---
                        """)
                .with("dyes/salt.md", """
                        ---
                        title: Table salt
                        kind: salt
                        form: crystals
                        ---
                        """)
                .with("dyes/white-vinegar.md", """
                        ---
                        title: White vinegar
                        kind: acid
                        form: liquid
                        acidity: 5 %
                        ---
                        """)
                .with("vessels.yaml", """
                        wide-pan: {shape: oval, length: 42 cm, width: 28 cm, height: 12 cm, made-of: enamel}
                        """)
                .with("methods/low-water-simmer.md", """
                        ---
                        title: Low-water simmer
                        for: 50 g
                        bath:
                          vessel: wide-pan
                          water: 3 L
                          assistants: [{is: salt, amount: 40 g}]
                        heat: [{to: 88 °C, over: 30 min, hold: 2 h}]
                        ---
                        """);
    }

    /** The same with a file added or replaced. */
    public WrittenNotebook with(String file, String text) {
        return with(file, text.getBytes(java.nio.charset.StandardCharsets.UTF_8));
    }

    /** The same with a file added or replaced. */
    public WrittenNotebook with(String file, byte[] bytes) {
        try {
            Path path = folder.resolve(file);
            Files.createDirectories(path.getParent());
            Files.write(path, bytes);
            return this;
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** Its folder. */
    public Path folder() {
        return folder;
    }

    /** Reads it. */
    public NotebookReader.Result read() {
        try {
            return NotebookReader.read(folder);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** Reads it, and gives the findings as they are printed. */
    public List<String> findings() {
        return read().findings().stream().map(Finding::toString).toList();
    }
}
