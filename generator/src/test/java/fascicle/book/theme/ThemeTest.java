package fascicle.book.theme;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.book.page.EntriesPage;
import fascicle.book.page.Frame;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ThemeTest {

    private static final EntriesPage PAGE = new EntriesPage(new Frame("en", "<i>Title</i>", "Book", "Edition", "index.html",
            "about.html", "style/x.css", "look-up.html", List.of(), List.of()), List.of());

    @TempDir
    private Path folder = Path.of("unset");

    @BeforeEach
    void copyTheShippedTheme() throws IOException {
        for (String file : Theme.TEMPLATES) {
            copy(file);
        }
        copy(Theme.STYLE);
        copy("alegreya.woff2");
    }

    private void copy(String file) throws IOException {
        try (InputStream from = Theme.class.getResourceAsStream("/themes/longleaf/" + file)) {
            Files.write(folder.resolve(file), java.util.Objects.requireNonNull(from, file).readAllBytes());
        }
    }

    private ThemeBroken refused(String template) throws IOException {
        Files.writeString(folder.resolve("entries.ftlh"), template);
        return assertThrows(ThemeBroken.class, () -> Theme.in(folder), template);
    }

    private String rendered(String template) throws Exception {
        Files.writeString(folder.resolve("entries.ftlh"), template);
        return new String(Theme.in(folder).render(PAGE), StandardCharsets.UTF_8);
    }

    @Test
    void aWholeThemeLoads() throws Exception {
        assertTrue(rendered("<#import \"frame.ftlh\" as f><@f.frame>x</@f.frame>").contains("<!DOCTYPE html>"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"${frame?api}", "${'1'?interpret}", "${'1'?eval}", "${'1'?eval_json}", "${'1'?evalJson}",
        "${'freemarker.template.utility.Execute'?new()}", "${frame.title?no_esc}", "${frame.title? no_esc}",
        "${frame.title?<#-- x -->noEsc}", "<#noautoesc>${frame.title}</#noautoesc>", "<#noAutoEsc>x</#noAutoEsc>",
        "<#outputformat 'plainText'>x</#outputformat>", "<#ftl output_format='plainText'>", "<#setting locale='de'>",
        "<#include '../../secret.txt'>", "<#include \"/etc/passwd\">", "<#import frame.title as x>", "${.now}",
        "<#include 'other.ftlh'>", "<#-- ${frame?api} -->"})
    void aTemplateThatReachesTooFarIsRefused(String template) throws IOException {
        ThemeBroken broken = refused("one\ntwo\n" + template);
        assertEquals("entries.ftlh", broken.faults().get(0).file());
        assertEquals(3, broken.faults().get(0).line());
        assertTrue(broken.getMessage().contains("expected"), broken.getMessage());
    }

    @ParameterizedTest
    @ValueSource(strings = {"frame.class", "frame.getClass", "frame.getClass()", "frame.hashCode()", "frame.title()",
        "frame.title.class", "frame.toString()", "rows.getClass()", "statics", "say.class", "frame.trail.stream()",
        ".get_optional_template('/etc/passwd').include()", "template", "frame.template()"})
    void nothingButComponentsOfPagesIsReachable(String expression) {
        assertThrows(ThemeBroken.WhileRendering.class, () -> rendered("${" + expression + "}"));
    }

    @Test
    void aBrokenTemplateIsRefusedWithItsLine() throws IOException {
        assertEquals(2, refused("\n<#if true>").faults().get(0).line());
    }

    @Test
    void aMissingFileIsNamed() throws IOException {
        Files.delete(folder.resolve(Theme.STYLE));
        assertTrue(assertThrows(ThemeBroken.class, () -> Theme.in(folder)).getMessage().startsWith("style.css:1:1: error: expected"));
        copy(Theme.STYLE);
        Files.delete(folder.resolve("group.ftlh"));
        assertEquals("group.ftlh", assertThrows(ThemeBroken.class, () -> Theme.in(folder)).faults().get(0).file());
    }

    @Test
    void whatTheStyleNamesLiesBesideItAndIsPublishedWithIt() throws Exception {
        assertEquals(List.of("style/alegreya.woff2"), Theme.in(folder).besideStyle());
        Files.writeString(folder.resolve(Theme.STYLE), "body { }\n.top { background: url(\"bark.png\") }\n");
        assertTrue(assertThrows(ThemeBroken.class, () -> Theme.in(folder)).getMessage()
                .startsWith("style.css:2:20: error: found url(\"bark.png\"), expected a file"));
        for (String elsewhere : List.of("url(https://example.org/x.png)", "url(\"../secret.png\")", "@import \"x.css\"")) {
            Files.writeString(folder.resolve(Theme.STYLE), elsewhere);
            assertTrue(assertThrows(ThemeBroken.class, () -> Theme.in(folder)).getMessage()
                    .startsWith("style.css:1:1: error: found"), elsewhere);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"lists.css", "look-up.css"})
    void whatSomePagesNeedIsPublishedBesideTheStyle(String further) throws Exception {
        Files.writeString(folder.resolve(further), ".ask { color: red; }\n");
        Theme theme = Theme.in(folder);
        assertEquals(List.of("style/alegreya.woff2", "style/" + further), theme.besideStyle());
        assertEquals(".ask{color:red}\n", new String(theme.fileBesideStyle("style/" + further), UTF_8));
        Files.writeString(folder.resolve(further), ".ask { background: url(\"bark.png\") }\n");
        assertTrue(assertThrows(ThemeBroken.class, () -> Theme.in(folder)).getMessage()
                .startsWith(further + ":1:20: error: found url(\"bark.png\"), expected a file"));
        Files.writeString(folder.resolve(further), "\n@import \"x.css\"");
        assertTrue(assertThrows(ThemeBroken.class, () -> Theme.in(folder)).getMessage()
                .startsWith(further + ":2:1: error: found"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"lists", "look-up"})
    void aThemeThatIsCalledLikeAFurtherStyleKeepsBoth(String called) throws Exception {
        Files.writeString(folder.resolve(called + ".css"), ".ask { color: red; }\n");
        Path own = Files.createDirectory(folder.resolve(called));
        try (var files = Files.list(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, own.resolve(file.getFileName()));
            }
        }
        Theme theme = Theme.in(own);
        assertFalse(theme.besideStyle().contains(theme.styleAddress()), theme.styleAddress());
    }

    @Test
    void aStyleIsPublishedWithoutNeedlessSpaceAndWithEveryQuotedOne() throws Exception {
        String style = "/* why */\n@media (a: b) {\n  .x > .y, .z { margin: 0 -1px calc(1px + 2px) ; content: \"a : { b\"; }\n}\n";
        Files.writeString(folder.resolve(Theme.STYLE), style);
        assertEquals("@media (a:b){.x>.y,.z{margin:0 -1px calc(1px + 2px);content:\"a : { b\"}}\n",
                new String(Theme.in(folder).style(), UTF_8));
    }

    @Test
    void aTemplateThatFailsSaysWhere() {
        ThemeBroken.WhileRendering failed =
                assertThrows(ThemeBroken.WhileRendering.class, () -> rendered("one\n${frame.nothing}"));
        assertTrue(failed.getMessage().startsWith("entries.ftlh:2:1: error: "), failed.getMessage());
    }

    @Test
    void wordsThatAreNotThereFail() {
        assertThrows(ThemeBroken.WhileRendering.class, () -> rendered("${say('no.such.key')}"));
    }

    @Test
    void everythingIsEscaped() throws Exception {
        assertEquals("&lt;i&gt;Title&lt;/i&gt;", rendered("${frame.title}"));
    }

    @Test
    void otherBracketsArePlainText() throws Exception {
        assertEquals("[#if x] [=1+1] #{1}", rendered("[#if x] [=1+1] #{1}"));
    }

    @Test
    void noShippedThemeHasAnOddName() {
        assertThrows(ThemeBroken.class, () -> Theme.shipped("../longleaf"));
        assertThrows(ThemeBroken.class, () -> Theme.shipped("nothere"));
    }

    @Test
    void aThemeIsNamedAfterItsFolder() throws Exception {
        assertEquals("style/longleaf.css", Theme.shipped("longleaf").styleAddress());
        assertFalse(Theme.in(folder).styleAddress().contains(".."));
    }
}
