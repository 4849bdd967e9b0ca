package fascicle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.notebook.WrittenNotebook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What students and their teacher must not read wrongly on a planned day. Worked by hand throughout. */
class ClassDayTest {

    @TempDir
    private Path folder;

    private WrittenNotebook notebook;

    @BeforeEach
    void write() {
        notebook = WrittenNotebook.small(folder.resolve("notebook"))
                .with("notebook.yaml", "form: 1\ntitle: A school of dyeing\nkitchen: metric\nbalance: 0.1 g\n")
                .with("needles/plenty.md", "---\ntitle: Plenty\nweight: 180 g\ngathered: 2026-01-01\n---\n")
                .with("dyes/rain-blue.md", "---\ntitle: Rain blue\nkind: dye\nform: liquid\n---\n")
                .with("dyes/fixer.md", "---\ntitle: Fixer\nkind: other\nform: powder\n---\n")
                .with("dyes/wax.md", "---\ntitle: Wax powder\nkind: other\nform: powder\n---\n")
                .with("dyes/iron-water.md", "---\ntitle: Iron water\nkind: mordant\nform: liquid\nmetal: iron\n---\n");
    }

    private void method(String id, String recipe) {
        notebook.with("methods/" + id + ".md", "---\ntitle: " + id + "\nfor: 50 g\n" + recipe + "---\n");
    }

    private Call plan(String... call) {
        return Call.of(Stream.concat(Stream.of("plan", notebook.folder()), Stream.of(call)).toArray());
    }

    private String said(String... call) {
        return plan(call).ends(0).out().replace('\u202f', ' ');
    }

    /** What a slip says goes into each bath. */
    private List<String> slip(String... call) throws IOException {
        Path target = folder.resolve("slips");
        plan(Stream.concat(Stream.of(call), Stream.of("--to", target.toString())).toArray(String[]::new)).ends(0);
        Document slips = Jsoup.parse(Files.readString(target.resolve("slip.html")));
        return slips.select(".slip .amounts").stream().map(Element::text)
                .map(text -> text.replace('\u202f', ' ').strip()).toList();
    }

    @Test
    void twoBathsOfOneNameAreTwoBaths() throws IOException {
        method("iron-twice", """
                before: [{as: iron, water: 1 L, with: [{is: iron-water, amount: 10 mL}]}]
                bath: {vessel: wide-pan, water: 2 L, dye: [{is: rain-blue, amount: 20 mL}]}
                after: [{as: iron, water: 2 L, with: [{is: iron-water, amount: 40 mL}]}]
                """);
        assertEquals(List.of("Iron, before the dyebath: Water: 1000 mL · Iron water: 10 mL",
                        "Bath: Water: 2000 mL · Rain blue: 20 mL",
                        "Iron, after the dyebath: Water: 2000 mL · Iron water: 40 mL"),
                slip("iron-twice", "--each", "25g", "--people", "2"));
        String told = said("iron-twice", "--each", "25g", "--people", "2");
        assertTrue(told.contains("Iron water, Iron, before the dyebath: 10 mL"), told);
        assertTrue(told.contains("Iron water, Iron, after the dyebath: 40 mL"), told);
        assertTrue(told.contains("A vessel for iron-twice: Iron, after the dyebath, 2040 mL"), told);
        assertTrue(Call.of("scale", notebook.folder(), "iron-twice", "--needles", "50g").ends(0).out()
                .replace('\u202f', ' ').contains("""
                        Iron, before the dyebath
                          Water: 1000 mL
                          Iron water: 10 mL
                        Iron, after the dyebath
                          Water: 2000 mL
                          Iron water: 40 mL
                        """));
    }

    @Test
    void bathsOfOneNameInARowAreCounted() throws IOException {
        method("rinses", """
                bath: {vessel: wide-pan, water: 2 L, dye: [{is: rain-blue, amount: 20 mL}]}
                after: [{water: 1 L}, {water: 2 L}, {as: iron, water: 3 L}]
                """);
        assertEquals(List.of("Bath: Water: 2000 mL · Rain blue: 20 mL", "Treatment 1, after the dyebath: Water: 1000 mL",
                        "Treatment 2, after the dyebath: Water: 2000 mL", "Iron: Water: 3000 mL"),
                slip("rinses", "--each", "50g"));
    }
}
