package fascicle.cli;

import fascicle.notebook.WrittenNotebook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A school of dyeing that plans its days: its notebook, and what its plans say. */
final class DyeSchool {

    private static final String COVER = "form: 1\ntitle: A school of dyeing\nkitchen: metric\nbalance: 0.1 g\n";

    private final Path folder;
    private final WrittenNotebook notebook;

    private DyeSchool(Path folder) {
        this.folder = folder;
        this.notebook = WrittenNotebook.small(folder.resolve("notebook"));
    }

    /** A school with a powder and a liquid dye. */
    static DyeSchool in(Path folder) {
        return new DyeSchool(folder).with("notebook.yaml", COVER)
                .with("dyes/brick.md", "---\ntitle: Brick\nkind: dye\nform: powder\nlabel: {says: []}\n---\n")
                .with("dyes/rain-blue.md", "---\ntitle: Rain blue\nkind: dye\nform: liquid\nlabel: {says: []}\n---\n");
    }

    /** A school with a method for its class, one with copper, one with iron, and an entry; too little of the dye is left. */
    static DyeSchool withAClass(Path folder) {
        return new DyeSchool(folder)
                .with("notebook.yaml", COVER + "damp-keeps: 3 days\nwater: {alkalinity: 0 mg/L}\n")
                .with("needles/plenty.md", "---\ntitle: Plenty\nweight: 300 g\n---\n")
                .with("dyes/brick.md", """
                        ---
                        title: Brick
                        kind: dye
                        form: powder
                        level-tsp: {weight: 3.1 g}
                        pack: {holds: 2 g, price: 4}
                        bought: [{on: 2026-01-01, packs: 1}]
                        label: {says: []}
                        ---
                        """)
                .with("dyes/blue-stone.md", "---\ntitle: Blue stone\nkind: mordant\nform: crystals\nmetal: copper\n---\n")
                .with("dyes/iron-water.md", "---\ntitle: Iron water\nkind: mordant\nform: liquid\nmetal: iron\n"
                        + "label: {signal: warning, says: [H302]}\n---\n")
                .with("methods/class-brick.md", """
                        ---
                        title: Brick for a class
                        for: 50 g
                        presoak: {water: 5 L, with: [{is: white-vinegar, amount: 200 mL}], for: 1 h}
                        bath:
                          vessel: wide-pan
                          water: 3 L
                          dye: [{is: brick, amount: 2 % owf}]
                          assistants: [{is: salt, amount: 40 g}, {is: white-vinegar, amount: 60 mL}]
                        heat: [{to: 88 °C, over: 30 min, hold: 2 h}]
                        cool: 3 h
                        rinse: before-drying
                        dry: 1 day
                        ---
                        1. Vinegar into the water, then the dye through a cloth.

                        ## For a class (students only)

                        Nobody under sixteen at the stove.
                        """)
                .with("methods/copper.md", """
                        ---
                        for: 50 g
                        before: [{as: mordant, water: 2 L, with: [{is: blue-stone, amount: 2 % owf}]}]
                        bath: {vessel: wide-pan, water: 2 L}
                        ---
                        """)
                .with("methods/iron.md", """
                        ---
                        title: Iron dip
                        for: 50 g
                        bath: {vessel: wide-pan, water: 2 L, dye: [{is: brick, amount: 1 % owf}]}
                        after: [{as: iron, water: 2 L, with: [{is: iron-water, amount: 20 mL}]}]
                        ---
                        """)
                .with("days/2026-05-09/pot.md", """
                        ---
                        title: Brick pot
                        tag: 41
                        needles: {lot: plenty, weight: 40 g}
                        bath: {vessel: wide-pan, water: 2 L, dye: [{is: brick, amount: 0.4 g}]}
                        ---
                        """);
    }

    /** The same with a file. */
    DyeSchool with(String file, String text) {
        notebook.with(file, text);
        return this;
    }

    /** The same with a method for 50 g, called by its id. */
    DyeSchool method(String id, String recipe) {
        return with("methods/" + id + ".md", "---\ntitle: " + id + "\nfor: 50 g\n" + recipe + "---\n");
    }

    Path notebook() {
        return notebook.folder();
    }

    Call plan(String... call) {
        return Call.of(Stream.concat(Stream.of("plan", notebook()), Stream.of(call)).toArray());
    }

    /** What a plan says on the terminal. */
    String said(String... call) {
        return plain(plan(call).ends(0).out());
    }

    /** A plan as data. */
    JsonNode planned(String... call) {
        return JsonMapper.shared().readTree(plan(and(call, "--json")).out());
    }

    /** A page of a plan that is written into a folder. */
    Document page(String file, String... call) throws IOException {
        Path target = folder.resolve("planned");
        plan(and(call, "--to", target.toString())).ends(0);
        return Jsoup.parse(plain(Files.readString(target.resolve(file))));
    }

    /** What the slips of a plan say goes into each bath. */
    List<String> slips(String... call) throws IOException {
        return page("slip.html", call).select(".slip .amounts").eachText().stream().map(String::strip).toList();
    }

    private static String[] and(String[] call, String... more) {
        return Stream.concat(Stream.of(call), Stream.of(more)).toArray(String[]::new);
    }

    private static String plain(String text) {
        return text.replace('\u202f', ' ');
    }
}
