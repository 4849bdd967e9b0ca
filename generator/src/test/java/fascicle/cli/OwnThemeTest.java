package fascicle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.notebook.WrittenNotebook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A maker copies the theme that comes with the program, changes it, and is told what is wrong with it. */
class OwnThemeTest {

    @TempDir
    private Path folder;
    private Path notebook;
    private Path theme;
    private Path book;

    @BeforeEach
    void copyTheShippedTheme() throws IOException {
        notebook = folder.resolve("notebook");
        WrittenNotebook.small(notebook).with("days/2026-05-09/good.md", "---\nneedles: {lot: scalded-2025}\n---\n");
        book = folder.resolve("book");
        theme = Files.createDirectory(folder.resolve("My look"));
        try (var files = Files.list(Path.of("..", "themes", "longleaf"))) {
            for (Path file : files.toList()) {
                Files.copy(file, theme.resolve(file.getFileName().toString()));
            }
        }
    }

    private Call publish() {
        return Call.of("publish", notebook, "--to", book, "--theme", theme);
    }

    /** The example of themes/README.md. */
    @Test
    void aCopyWithAnotherHeadingAndAnotherPaperIsPublished() throws IOException {
        change("about.ftlh", "<h1>${frame.title}</h1>", "<h1>${frame.title}</h1>\n<p>${frame.book}, ${frame.edition}</p>");
        Files.writeString(theme.resolve("style.css"), "\n:root { --paper: #fdfdf5; }\n", java.nio.file.StandardOpenOption.APPEND);
        publish().ends(0);
        String about = Files.readString(book.resolve("about.html"));
        assertTrue(about.matches("(?s).*<h1>[^<]+</h1>\\n<p>[^<]+, [^<]+</p>.*"), about);
        try (var styles = Files.list(book.resolve("style"))) {
            List<Path> all = styles.filter(file -> file.toString().endsWith(".css"))
                    .filter(file -> !file.endsWith("look-up.css") && !file.endsWith("lists.css")).toList();
            assertEquals(1, all.size(), all.toString());
            assertTrue(Files.readString(all.get(0)).contains("#fdfdf5"));
            assertTrue(about.contains("style/" + all.get(0).getFileName()), about);
        }
    }

    @Test
    void everythingThatIsWrongIsToldInOneRunWhereItStandsAndTheOldBookStaysWhole() throws IOException {
        publish().ends(0);
        var before = Call.tree(book);
        Files.delete(theme.resolve("groups.ftlh"));
        Files.writeString(theme.resolve("about.ftlh"), "one\n  <#if true>\n");
        Files.writeString(theme.resolve("entries.ftlh"), "one\n<#list rows as row>${row.entry.text}</#lists>\n");
        Files.writeString(theme.resolve("cover.ftlh"), "${counts?no_esc}\n ${.now}");
        Call call = publish().ends(1);
        String shown = theme.toString().replace('\\', '/') + "/";
        call.says(shown + "groups.ftlh:1:1: error: expected a file of this name in the theme",
                shown + "about.ftlh:2:13: error: ", shown + "entries.ftlh:2:38: error: ", shown + "cover.ftlh:1:9: error: expected ",
                shown + "cover.ftlh:2:4: error: expected ", "5 errors in the theme. No book was written: mend them");
        assertEquals(before, Call.tree(book));
    }

    @Test
    void namesThatAPageDoesNotHaveAreToldWithThoseThatItHas() throws IOException {
        publish().ends(0);
        var before = Call.tree(book);
        Files.writeString(theme.resolve("about.ftlh"), "one\n  ${frame.titel}\n");
        Files.writeString(theme.resolve("entries.ftlh"), "${say('book.no-such-words')}");
        Files.writeString(theme.resolve("entry.ftlh"), "<#if verdikt??>x</#if>");
        Files.writeString(theme.resolve("group.ftlh"), "\n\n${start.days}");
        Call call = publish().ends(1);
        call.says("/about.ftlh:2:3: error: “titel” is nothing that Frame has (did you mean “title”?); it has: ",
                " language, title, ",
                "/entries.ftlh:1:1: error: the book has no words for “book.no-such-words”",
                "/entry.ftlh:1:1: error: “verdikt” is nothing that EntryPage has (did you mean “verdict”?); it has: frame, ",
                "/group.ftlh:3:3: error: “start” is not known on every page; expected “<#if start??>” round it",
                "4 errors in the theme. ");
        assertEquals(before, Call.tree(book));
    }

    @Test
    void oneErrorIsOne() throws IOException {
        Files.delete(theme.resolve("style.css"));
        publish().ends(1).says("style.css:1:1: error: expected a file", "1 error in the theme. No book was written: mend it,");
        assertFalse(Files.exists(book));
    }

    @Test
    void aFolderThatIsNoneIsAWrongCallAndOneWithoutAThemeIsABrokenTheme() {
        Call.of("publish", notebook, "--to", book, "--theme", folder.resolve("nowhere"))
                .ends(2).says("There is no folder", "name the folder of a theme");
        Call.of("publish", notebook, "--to", book, "--theme", notebook)
                .ends(1).says("/style.css:1:1: error: expected a file", "/entry.ftlh:1:1: error: expected a file");
        assertFalse(Files.exists(book));
    }

    private void change(String file, String from, String to) throws IOException {
        String text = Files.readString(theme.resolve(file));
        assertTrue(text.contains(from), file);
        Files.writeString(theme.resolve(file), text.replace(from, to));
    }
}
