package fascicle.site;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** A notebook from a stranger: whatever stands in it, its book runs nothing, fetches nothing and looks like the book. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class HostileNotebookTest {

    private static final String TITLE =
            "\"><script>document.title='owned'</script><b onmouseover=alert(1)>&amp;${7*7}";

    private static final Map<String, String> FILES = Map.of(
            "notebook.yaml",
            """
            form: 1
            title: '</title><script>document.title="owned"</script> ${7*7} <#assign x = 1>'
            maker: '<img src=x onerror=alert(1)>'
            kitchen: metric
            conditions: {odd: '"><svg onload=alert(1)>'}
            """,
            "vessels.yaml",
            """
            pot: {title: '<iframe src="javascript:alert(1)"></iframe>', shape: round, diameter: 20 cm, height: 20 cm}
            """,
            "needles/lot.md",
            """
            ---
            title: '=HYPERLINK("https://example.org","<u>lot</u>")'
            species: '<script>document.title="owned"</script>'
            condition: odd
            colour: [{lab: [60, 5, 25]}]
            ---
            <style>body { display: none }</style>
            """,
            "dyes/dye.md",
            """
            ---
            title: '${"freemarker.template.utility.Execute"?new()("touch owned")}'
            kind: dye
            form: powder
            ---
            <#include "/etc/passwd"> <@f.frame> #{7+7} [=7+7] {{7+7}} <%= 7+7 %>
            """,
            "days/2026-05-09/pot.md",
            """
            ---
            title: '%s'
            tag: '+1" onload="alert(1)'
            needles: {lot: lot, weight: 30 g}
            bath: {vessel: pot, water: 2 L, dye: [{is: dye, amount: 1 g}]}
            colour: [{lab: [40, 20, 20]}]
            outcome: {verdict: worked}
            ---
            <script>document.title = 'owned'; alert(1)</script>

            Words <script src="https://example.org/owned.js"></script> and <img src=x onerror="document.title='owned'">
            and <svg onload="document.title='owned'"><a xlink:href="javascript:alert(1)">svg</a></svg>.

            [one](javascript:document.title='owned') [two](JaVaScRiPt:alert(1)) [three](&#106;avascript:alert(1))
            [four](java&#10;script:alert(1)) [five](data:text/html,<script>alert(1)</script>) [six](vbscript:x)
            [seven](//example.org/x) [eight](file:///etc/passwd) [nine](https://example.org/ "onmouseover=alert(1)")
            ![picture](javascript:alert(1)) ![far](https://example.org/far.png)

            <a href="  javascript:alert(1)" onclick="alert(1)" style="color:red" id="text">raw</a>
            <form action="https://example.org/"><input name=a autofocus onfocus="alert(1)"><button>send</button></form>
            <iframe src="https://example.org/"></iframe><object data="x"></object><embed src="x">
            <meta http-equiv="refresh" content="0; url=https://example.org/"><base href="https://example.org/">
            <link rel="stylesheet" href="https://example.org/x.css"><style>main { display: none }</style>
            <math><mtext><table><mglyph><style><img src=x onerror=alert(1)></style></mglyph></table></mtext></math>
            <noscript><p title="</noscript><img src=x onerror=alert(1)>"></noscript>
            </div></main></body></html> ${7*7} <#stop "here"> </textarea><!-- -->

            ```
            </code></pre><script>document.title = 'owned'</script>
            ```
            """
                    .formatted(TITLE.replace("'", "''")));

    @TempDir
    static Path folder;

    private PublishedBook book;
    private Browser browser;

    @BeforeAll
    void publish() throws IOException {
        Path notebook = folder.resolve("notebook");
        for (Map.Entry<String, String> file : FILES.entrySet()) {
            Path path = notebook.resolve(file.getKey());
            Files.createDirectories(path.getParent());
            Files.writeString(path, file.getValue());
        }
        book = PublishedBook.publish(notebook, folder.resolve("book"));
        browser = Browser.open(Browser.LAPTOP);
    }

    @AfterAll
    void close() {
        if (browser != null) {
            browser.close();
        }
    }

    @Test
    void nothing_runs_in_a_browser() {
        assertAll(book.pages().stream().map(address -> () -> {
            // An open dialog would make the next call throw.
            browser.show(book.file(address));
            assertEquals(book.page(address).title(), browser.driver().getTitle(), address);
            assertFalse(browser.driver().getTitle().startsWith("owned"), address);
            assertEquals(List.of(), browser.complaints(), address);
            assertTrue((Boolean) browser.script("return document.querySelector('main').offsetHeight > 0"), address);
            assertEquals(0L, browser.script("return performance.getEntriesByType('resource')"
                    + ".filter(fetched => !fetched.name.startsWith('file:')).length"), address);
        }));
    }

    @Test
    void every_page_is_valid() {
        assertEquals("", String.join("\n", new Nu().faults(book)));
    }

    @Test
    void every_kind_of_page_fits_a_phone_and_breaks_no_rule_of_access() {
        browser.width(320);
        assertAll(Kinds.of(book).stream().map(address -> () -> {
            browser.show(book.file(address));
            assertEquals(0, browser.sidewaysScroll(), address);
            assertEquals("", String.join("\n", Axe.violations(browser)), address);
        }));
    }

    @Test
    void nothing_that_could_run_is_left_on_a_page() {
        for (String address : book.pages()) {
            Document page = book.page(address);
            if (address.equals("look-up.html")) {
                withoutItsOwnQuestions(page);
            }
            page.select("template[data-doses] input[name=weight], script[src$=/scripts/open.js]").remove();
            assertEquals(
                    List.of(),
                    page.select("script, style, iframe, object, embed, form, input, button, base, img, math, "
                            + "meta[http-equiv=refresh], link[href^=http], [style], .notes svg, svg:not(.plot) a"),
                    address);
            assertEquals(1, page.select("main").size(), address);
            assertEquals(1, page.select("footer").size(), address);
            assertEquals(List.of("main"), page.select("[id=text]").stream().map(Element::tagName).toList(), address);
            assertEquals(List.of(), page.select(".notes [id]"), address + ": the maker's words carry no id");
            for (Element element : page.getAllElements()) {
                for (Attribute attribute : element.attributes()) {
                    String where = address + ": " + element.tagName() + " " + attribute;
                    assertFalse(attribute.getKey().startsWith("on"), where);
                    if (attribute.getKey().equals("href")) {
                        String way = attribute.getValue();
                        assertTrue(way.startsWith("https://example.org/") || way.matches("[#./a-zA-Z0-9%=&-]+"), where);
                        assertFalse(way.startsWith("//") || way.startsWith("/"), where);
                    }
                }
            }
        }
    }

    /** Takes out of the page on which entries are looked up what the book itself put there, and nothing else. */
    private static void withoutItsOwnQuestions(Document page) {
        page.select("main > script[src~=^(scripts|data)/[a-z-]+\\.js$]").remove();
        page.select("input[name~=^(words|near|pick|condition|verdict|year|family|lot|dye|method)$]").remove();
        page.select(".ask .without-colour, .answering .clear, .answering .show-more").remove();
        page.select("main > form.ask").unwrap();
    }

    @Test
    void what_the_maker_wrote_as_text_stays_text() throws IOException {
        Document entry = book.page("entries/2026-05-09-pot.html");
        assertEquals(TITLE, entry.select("h1").text());
        assertTrue(entry.text().contains("${7*7}"), "template signs are words like others");
        assertFalse(entry.text().contains("49"), entry.text());
        Document dye = book.page("dyes/dye.html");
        assertTrue(dye.select("h1").text().startsWith("${\"freemarker"), dye.select("h1").text());
        assertTrue(dye.text().contains("#{7+7} [=7+7] {{7+7}}"), dye.text());
        assertFalse(Files.exists(Checkout.root().resolve("owned")));
        assertEquals(TITLE, book.data().required("entries").required(0).required("title").asString());
    }

    @Test
    void no_cell_of_the_table_is_a_formula() {
        Map<String, String> row =
                TableOfEntriesTest.Table.of(book.text("data/entries.csv")).rows().get(0);
        assertEquals("'+1\" onload=\"alert(1)", row.get("tag"));
        assertEquals(TITLE, row.get("title"));
    }

    @Test
    void the_maker_is_told_what_was_taken_out() {
        Run proof = Program.run("proof", folder.resolve("notebook").toString());
        assertEquals(0, proof.status(), proof.words() + proof.output());
        String said = proof.words() + proof.output();
        assertTrue(said.contains("days/2026-05-09/pot.md:9:1: warning: "), said);
        assertTrue(said.contains("<script>"), said);
        assertTrue(said.contains("javascript:"), said);
    }
}
