package fascicle.book.prose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.book.SampleNotebook;
import fascicle.book.gallery.Gallery;
import fascicle.notebook.Finding;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ProseTest {

    private static final String FILE = "days/2026-05-09/brick.md";
    private static final Map<String, String> PAGES =
            Map.of("dyes/brick.md", "dyes/brick.html", "days/2025-05-09/brick.md", "entries/2025-05-09-brick.html");

    private static String html(String markdown) {
        return new Prose(path -> Optional.ofNullable(PAGES.get(path)), path -> Optional.empty())
                .html(SampleNotebook.note(markdown, FILE), "../").html();
    }

    private static List<String> findings(String markdown) {
        return TakenOut.of(SampleNotebook.note(markdown, FILE), PAGES.keySet(), Gallery.EMPTY).stream().map(Finding::toString)
                .toList();
    }

    @Test
    void headingsStandBelowThePagesOwnAndSkipNoLevel() {
        assertEquals("<h3>One</h3>\n<h4>Two</h4>\n<h5>Six</h5>", html("# One\n\n## Two\n\n###### Six").strip());
        assertEquals("<h3>Two</h3>\n<h4>Three</h4>\n<h3>One</h3>", html("## Two\n\n### Three\n\n# One").strip());
    }

    /** What may stand in what: the HTML standard, content models of each element. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "<blockquote><b>one<ul><li>two</li></ul></b></blockquote> | <blockquote>one<ul><li>two</li></ul></blockquote>",
        "<h2><p>one</p></h2> | <p>one</p>",
        "<li>one</li> | one",
        "<ul>one<p>two</p><li>three</li></ul> | <ul><li>one</li><li><p>two</p></li><li>three</li></ul>",
        "<dl><dt>one</dt><dd>two</dd></dl> | <dl><dt>one</dt><dd>two</dd></dl>",
        "<dl><dd>one</dd><dt>two</dt></dl> | <div><div>one</div><div>two</div></div>",
        "<dd>one</dd> | one",
        "<h3></h3> | ''",
        "<table><tr><td>1<td>2<tr><td>3</table> | <div class=\"scroll\" tabindex=\"0\"><table><tbody><tr><td>1</td>"
            + "<td>2</td></tr><tr><td>3</td><td></td></tr></tbody></table></div>",
        "<table><caption>one</caption><tr></tr></table> | one"})
    void whatStandsInTheWrongPlaceIsMended(String written, String published) {
        assertEquals(published, html(written).replaceAll(">\\s+<", "><").strip());
    }

    @Test
    void tablesKeepTheirAlignmentInABoxOfTheirOwn() {
        String table = html("| a | b | c |\n|:--|:-:|--:|\n| 1 | 2 | 3 |");
        assertTrue(table.startsWith("<div class=\"scroll\" tabindex=\"0\"><table>"), table);
        assertTrue(table.contains("<th class=\"left\">a</th>") && table.contains("<td class=\"centre\">2</td>")
                && table.contains("<td class=\"right\">3</td>"), table);
    }

    @Test
    void linksToFilesOfTheNotebookLeadToThePagesOfTheBook() {
        assertEquals("<p><a href=\"../dyes/brick.html\">dye</a></p>", html("[dye](../../dyes/brick.md#level-tsp)").strip());
        assertEquals("<p><a href=\"../entries/2025-05-09-brick.html\">old</a></p>",
                html("[old](../2025-05-09/brick.md)").strip());
        assertEquals("<p>gone, here</p>", html("[gone](../../dyes/gone.md), [here](#here)").strip());
    }

    @ParameterizedTest
    @ValueSource(strings = {"[x](gone.md)", "[x](../../../../etc/passwd)", "[x](/etc/passwd)", "[x](receipt.pdf)"})
    void linksToWhatTheBookDoesNotHoldAreTextWithAWarning(String markdown) {
        assertEquals("<p>x</p>", html(markdown).strip());
        assertEquals(1, findings(markdown).size(), findings(markdown).toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"https://example.org/a?b=1", "http://example.org/", "mailto:someone@example.org"})
    void linksOutOfTheBookStay(String address) {
        assertEquals("<p><a href=\"" + address + "\">out</a></p>", html("[out](" + address + ")").strip());
        assertEquals(List.of(), findings("[out](" + address + ")"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"[x](javascript:alert(1))", "[x](JaVaScRiPt:alert(1))", "[x](data:text/html,hello)",
        "[x](<java\tscript:alert(1)>)", "<a href=\"java&#10;script:alert(1)\">x</a>", "[x](vbscript:x)", "[x](//evil.example/)",
        "[x](file:///etc/passwd)", "<a href='&#x1;javascript:alert(1)'>x</a>", "[x](\\\\evil.example)"})
    void linksThatRunOrReachTooFarAreTakenOut(String markdown) {
        assertFalse(html(markdown).contains("href"), html(markdown));
        assertEquals(1, findings(markdown).size(), findings(markdown).toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"</main><script>alert(1)</script>", "a <script>alert(1)</script>", "<iframe src=x></iframe>",
        "<p onclick=alert(1)>x</p>", "a <b style='position:fixed'>b</b>", "<svg><script>x</script></svg>",
        "<style>*{display:none}</style>", "<form><input name=a></form>", "<IMG SRC=x onerror=alert(1)>",
        "<object data=x></object>", "<meta http-equiv=refresh content=0>", "![alt](x.jpg)", "<math><mtext><img src=x onerror=y>"})
    void whatRunsOrLoadsIsTakenOutWithAWarning(String markdown) {
        String html = html(markdown).toLowerCase(Locale.ROOT);
        for (String gone : List.of("<script", "<iframe", "onclick", "onerror", "style", "<svg", "<form", "<input", "<img",
                "<object", "<meta", "</main", "alert(1)</", "<math")) {
            assertFalse(html.contains(gone), html);
        }
        assertFalse(findings(markdown).isEmpty());
        assertTrue(findings(markdown).stream().allMatch(finding -> finding.contains(": warning: ")));
    }

    @Test
    void aWarningStandsWhereTheTextStands() {
        assertEquals(List.of("days/2026-05-09/brick.md:12:5: warning: <script> is taken out: a page holds plain text, "
                + "lists, tables and links"), findings("One\n\n\ud83d\ude00 a <script>"));
    }

    @Test
    void picturesGiveWayToTheirWords() {
        assertEquals("<p><span class=\"picture\">The pot</span></p>", html("![The pot](pot.jpg)").strip());
    }

    @Test
    void plainTextMakesNoFinding() {
        assertEquals(List.of(), findings("# A\n\n- 1 < 2\n- <b>bold</b> [x](../../dyes/brick.md)\n\n<!-- note to self -->"));
        assertFalse(html("a\n\n<!-- note to self -->\n\nb").contains("self"));
    }

    @Test
    void noIdNoClassNoUnclosedTagSurvives() {
        assertTrue(html("<b id=x class=y>a<i>b").startsWith("<p><b>a<i>b</i></b></p>"));
    }

    @Test
    void templateSyntaxIsText() {
        assertEquals("<p>${1+1} &lt;#assign x=1&gt; [=2]</p>", html("${1+1} <#assign x=1> [=2]").strip());
    }

    @ParameterizedTest
    @ValueSource(strings = {">", "<b>", "*a ", "[", "- ", "<div>", "![", "[a](", "<blockquote>\n\n"})
    void textNestedWithoutEndIsStillTextEvenOnASmallStack(String piece) throws InterruptedException {
        AtomicReference<String> html = new AtomicReference<>("");
        Thread small = new Thread(null, () -> {
            html.set(html(piece.repeat(10_000) + "end"));
            findings(piece.repeat(10_000) + "end");
            html.updateAndGet(text -> text + "found");
        }, "small", 512 * 1024);
        small.start();
        small.join();
        assertTrue(html.get().contains("end") && html.get().endsWith("found"));
    }
}
