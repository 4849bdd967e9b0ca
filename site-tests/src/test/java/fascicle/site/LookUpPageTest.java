package fascicle.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.colour.ColourDifference;
import fascicle.colour.Lab;
import fascicle.colour.Rgb;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.concurrent.locks.LockSupport;
import java.util.function.Predicate;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;
import tools.jackson.databind.JsonNode;

/** A maker at the stove looks an entry up, with three touches, with words, by a colour, or by keys alone. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class LookUpPageTest {

    private static final String PAGE = "look-up.html";

    @TempDir
    static Path folder;

    private PublishedBook book;
    private Browser browser;

    @BeforeAll
    void publishAndOpen() {
        book = PublishedBook.ofTheDemo();
        browser = Browser.open(Browser.PHONE);
    }

    @AfterAll
    void close() {
        if (browser != null) {
            browser.close();
        }
    }

    @BeforeEach
    void phone() {
        browser.width(Browser.PHONE);
    }

    @Test
    void what_worked_on_scalded_needles_last_year_takes_three_touches() {
        ask("");
        touch("condition", "scalded");
        touch("year", "2025");
        touch("verdict", "worked");
        assertEquals(entries(scaldedThatWorkedIn2025()), new TreeSet<>(answers()));
        assertEquals("Scalded; worked; 2025", text(".question"));
        assertTrue(text(".found").startsWith(answers().size() + " entries, in order of date"), text(".found"));
        assertEquals(List.of(), browser.complaints());
    }

    @Test
    void the_year_before_todays_is_called_last_year() {
        ask("");
        String said = (String) browser.script("return [...document.querySelectorAll('.choice-remark')]"
                + ".map(remark => remark.closest('label').querySelector('input').value).join()");
        String last = (String) browser.script("return String(new Date().getFullYear() - 1)");
        boolean known = book.entries().stream().anyMatch(id -> id.startsWith(last));
        assertEquals(known ? last : "", said);
    }

    @Test
    void an_answer_says_what_was_done_and_shows_the_colour() {
        JsonNode entry = book.data().required("entries").valueStream()
                .filter(one -> one.required("tag").isNumber() && one.required("colour").isObject()
                        && one.required("outcome").path("verdict").isString())
                .findFirst().orElseThrow();
        String tag = String.valueOf(entry.required("tag").asInt());
        ask("#words=" + tag);
        WebElement answer = browser.driver().findElement(By.cssSelector(".answer"));
        assertEquals(entry.required("title").asString(), answer.findElement(By.cssSelector(".answer-title a")).getText());
        assertTrue(answer.getText().contains("Tag " + tag), answer.getText());
        assertEquals("verdict " + entry.required("outcome").required("verdict").asString(),
                answer.findElement(By.cssSelector(".verdict")).getDomAttribute("class"));
        assertTrue(answer.getText().contains("owf"), answer.getText());
        assertTrue(answer.getText().contains(entry.required("colour").required("name").asString()), answer.getText());
        assertEquals("0", browser.script("return String([...document.querySelectorAll('.answer .needle')]"
                + ".filter(needle => !/^#[0-9a-f]{6}$/.test(needle.getAttribute('fill'))).length)"));
    }

    @Test
    void every_question_has_an_address_that_asks_it_again() {
        ask("");
        touch("condition", "scalded");
        touch("condition", "shade-dried");
        touch("verdict", "worked");
        type("words", "plum");
        type("near", "#7F4632");
        browser.driver().findElement(By.cssSelector("select[name=order] option[value=lightness]")).click();
        String address = (String) browser.script("return location.hash");
        assertEquals("#condition=shade-dried,scalded&verdict=worked&words=plum&near=7f4632&order=lightness", address);
        List<String> found = answers();
        String question = text(".question");
        assertFalse(found.isEmpty());
        ask(address);
        assertEquals(found, answers());
        assertEquals(question, text(".question"));
        assertEquals("plum", value("words"));
        assertEquals("7f4632", value("near"));
        assertEquals("#7f4632", value("pick"));
        assertEquals("lightness", value("order"));
        assertEquals(3L, browser.script("return document.querySelectorAll('.choice :checked').length"));
    }

    @Test
    void what_an_address_asks_and_the_book_does_not_know_is_left_out_and_said() {
        ask("#condition=boiled,scalded&colour=red&near=brown&order=price&constructor=1");
        assertEquals("Scalded", text(".question"));
        String said = text(".heed");
        for (String unknown : List.of("condition=boiled", "colour=red", "near=brown", "order=price", "constructor=1")) {
            assertTrue(said.contains("“" + unknown + "”"), said);
        }
        assertFalse(answers().isEmpty());
        assertEquals(List.of(), browser.complaints());
    }

    @Test
    void the_way_back_undoes_a_touch_and_not_a_letter() {
        ask("");
        touch("condition", "scalded");
        type("words", "plum");
        waitFor("#condition=scalded&words=plum");
        touch("verdict", "worked");
        waitFor("#condition=scalded&verdict=worked&words=plum");
        browser.driver().navigate().back();
        waitFor("#condition=scalded&words=plum");
        assertFalse(browser.driver().findElement(By.cssSelector("input[value=worked]")).isSelected());
        assertEquals("plum", value("words"));
        assertEquals("Scalded; the words “plum”", text(".question"));
        browser.driver().navigate().back();
        waitFor("");
        assertEquals("Every entry of the book", text(".question"));
        assertEquals("", value("words"));
    }

    @Test
    void the_nearest_colours_come_first_with_their_differences() {
        ask("#near=7f4632");
        Lab asked = new Rgb(0x7f, 0x46, 0x32).toLab();
        double before = 0;
        List<String> told = texts(".answer-difference");
        List<String> found = answers();
        assertEquals(24, told.size());
        for (int i = 0; i < told.size(); i++) {
            JsonNode lab = entry(found.get(i)).required("colour").required("lab");
            double difference = ColourDifference.ciede2000(asked,
                    new Lab(lab.required(0).asDouble(), lab.required(1).asDouble(), lab.required(2).asDouble()));
            assertEquals(difference, Double.parseDouble(told.get(i).replaceAll("ΔE00[\\s\u00a0]([0-9.]+) .*", "$1")),
                    0.06, found.get(i));
            assertTrue(difference >= before - 0.02, found.get(i));
            before = difference;
        }
        assertTrue(text(".found").contains("in order of nearness"), text(".found"));
    }

    @Test
    void more_like_this_asks_for_the_nearest_colours_of_the_whole_book() {
        ask("#condition=scalded");
        String first = answers().get(0);
        browser.driver().findElement(By.cssSelector(".answer .alike")).click();
        waitUntil("return location.hash.startsWith('#near=')");
        assertEquals(first, answers().get(0));
        assertTrue(text(".question").startsWith("compared with #"), text(".question"));
        assertEquals("H2", browser.script("return document.activeElement.tagName"));
    }

    @Test
    void where_nothing_answers_the_page_says_what_to_leave_out() {
        String empty = emptyPair();
        ask(empty);
        assertEquals(List.of(), answers());
        assertEquals("Nothing in this book answers all of that.", text(".found"));
        List<WebElement> ways = browser.driver().findElements(By.cssSelector(".loosen button"));
        assertEquals(2, ways.size());
        String said = ways.get(0).getText();
        assertTrue(said.matches("without “.+”: \\d+ entr(y|ies)"), said);
        ways.get(0).click();
        String count = said.substring(said.lastIndexOf(": ") + 2);
        assertTrue(text(".found").startsWith(count + ", in order of"), said + ", but " + text(".found"));
        assertFalse(answers().isEmpty());
        assertEquals("H2", browser.script("return document.activeElement.tagName"), "the focus is not lost");
        browser.driver().navigate().back();
        waitFor(empty);
    }

    @Test
    void a_slip_is_said_with_what_was_taken_instead() {
        ask("#words=brikc");
        assertFalse(answers().isEmpty());
        assertTrue(text(".heed").contains("“brikc”") && text(".heed").contains("brick"), text(".heed"));
    }

    @Test
    void a_keyboard_alone_leads_from_the_first_key_to_an_answer() {
        ask("");
        tabTo("input[value=scalded]");
        key(Keys.SPACE);
        assertTrue(on("input[value=scalded]"), "a touch leaves the focus where it is");
        tabTo("input[value=worked]");
        key(Keys.SPACE);
        tabTo("input[value='2025']");
        key(Keys.SPACE);
        List<String> found = answers();
        assertEquals(entries(scaldedThatWorkedIn2025()), new TreeSet<>(found));
        tabTo(".answer-title a");
        assertTrue((Boolean) browser.script("const seen = document.activeElement.getBoundingClientRect();"
                + "const foot = document.querySelector('.found').getBoundingClientRect();"
                + "return seen.bottom <= foot.top || seen.top >= foot.bottom"), "what has the focus is seen");
        key(Keys.ENTER);
        waitUntil("return location.pathname.endsWith('" + book.addressOf(found.get(0)) + "')");
    }

    @Test
    void typing_then_the_enter_key_leads_to_the_answers() {
        ask("");
        type("words", "plum");
        key(Keys.ENTER);
        assertEquals("H2", browser.script("return document.activeElement.tagName"));
        assertEquals(List.of(), browser.complaints());
    }

    @Test
    void without_scripts_the_lists_lead_to_the_same_entries() {
        browser.driver().executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", true));
        try {
            browser.show(book.file(PAGE));
            assertTrue(browser.driver().findElement(By.cssSelector(".without")).isDisplayed());
            assertFalse(browser.driver().findElement(By.cssSelector("form.ask")).isDisplayed());
            assertFalse(browser.driver().findElement(By.cssSelector(".answering")).isDisplayed());
            browser.driver().findElement(By.cssSelector(".without a[href='conditions/scalded.html']")).click();
            assertEquals("Scalded", browser.driver().findElement(By.tagName("h1")).getText());
        } finally {
            browser.driver().executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", false));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "#near=7f4632&words=brick", "#condition=scalded&year=2025", "#words=xyzzyxyzzyxyzzyxyzzyxyzzyxyzzy"})
    void the_page_fits_the_narrowest_phone_and_twice_the_text(String address) {
        ask(address);
        browser.script("document.querySelectorAll('details').forEach(fold => fold.open = true); return 1");
        assertEquals(0, browser.width(320).sidewaysScroll());
        browser.script("document.documentElement.style.fontSize = '200%'; return 1");
        assertEquals(0, browser.sidewaysScroll());
    }

    @Test
    void touches_are_large_enough_for_a_wet_thumb() {
        ask("");
        browser.driver().executeCdpCommand("Emulation.setTouchEmulationEnabled", Map.of("enabled", true));
        try {
            ask("");
            // 44 CSS pixels: WCAG 2.2, success criterion 2.5.5.
            assertEquals(0L, browser.script("return [...document.querySelectorAll('.choice, .ask summary, .ask select,"
                    + " .ask input[type=text], .ask input[type=color]')].filter(touched => touched.offsetParent"
                    + " && touched.getBoundingClientRect().height < 44).length"));
        } finally {
            browser.driver().executeCdpCommand("Emulation.setTouchEmulationEnabled", Map.of("enabled", false));
        }
    }

    @Test
    void a_long_list_grows_as_it_is_read() {
        ask("");
        assertEquals(24, answers().size());
        browser.script("document.querySelector('.show-more').scrollIntoView(); return 1");
        waitUntil("return document.querySelectorAll('.answer').length === " + book.entries().size());
        List<String> all = answers();
        assertEquals(new TreeSet<>(book.entries()), new TreeSet<>(all));
        assertEquals(book.entries().size(), all.size());
        assertFalse(browser.driver().findElement(By.cssSelector(".show-more")).isDisplayed());
    }

    @Test
    void a_long_list_grows_by_a_button_which_leads_on_to_what_is_new() {
        ask("");
        browser.script("document.querySelector('.show-more').focus({preventScroll: true});"
                + "document.querySelector('.show-more').click(); return 1");
        assertEquals(25L, browser.script("return document.querySelector('.answers.later').start"));
        assertEquals(answers().get(24), browser.script("return decodeURIComponent("
                + "document.activeElement.getAttribute('href')).replace(/^entries.|.html$/g, '')"));
    }

    @Test
    void paper_keeps_the_question_and_the_answers() {
        ask("#condition=scalded");
        browser.onPaper(true);
        try {
            assertFalse(browser.driver().findElement(By.cssSelector("form.ask")).isDisplayed());
            assertEquals("Scalded", text(".question"));
            assertTrue(browser.driver().findElement(By.cssSelector(".answer .swatch")).isDisplayed());
        } finally {
            browser.onPaper(false);
        }
    }

    @Test
    void titles_of_a_stranger_are_only_text() throws IOException {
        List<String> titles = List.of("</script><script>document.title='owned'</script><img src=x onerror=alert(1)>",
                "\u202eתפוח ألف", "\ud83c\udf32 &amp; ${7*7} {0} $& $1", "\"'><svg onload=alert(1)>");
        Path notebook = folder.resolve("notebook");
        write(notebook.resolve("notebook.yaml"), "form: 1\ntitle: Odd\nkitchen: metric\n"
                + "conditions: {odd: '</script><b onclick=alert(1)>{0}'}\n");
        write(notebook.resolve("needles/lot.md"), "---\ncondition: odd\ncolour: [{lab: [60, 5, 25]}]\n---\n");
        for (int i = 0; i < titles.size(); i++) {
            write(notebook.resolve("days/2026-05-0" + (i + 1) + "/pot.md"), "---\ntitle: '"
                    + titles.get(i).replace("'", "''") + "'\ntag: '<i>" + i + "'\nneedles: {lot: lot, weight: 30 g}\n"
                    + "colour: [{lab: [40, 20, 20]}]\n---\n");
        }
        PublishedBook odd = PublishedBook.publish(notebook, folder.resolve("book"));
        browser.show(odd.file(PAGE));
        List<String> shown = new ArrayList<>(texts(".answer-title a"));
        assertEquals(new TreeSet<>(titles), new TreeSet<>(shown));
        browser.driver().findElement(By.cssSelector("input[value=odd]")).findElement(By.xpath("..")).click();
        assertEquals("</script><b onclick=alert(1)>{0}", text(".question"));
        assertEquals("Look it up · Odd", browser.driver().getTitle());
        assertEquals(0L, browser.script("return document.querySelectorAll('main img, main b, main i, svg svg').length"));
        type("words", "<b>{0} $& \"”");
        waitUntil("return location.hash.includes('words=')");
        assertEquals("</script><b onclick=alert(1)>{0}; the words “<b>{0} $& \"””", text(".question"));
        assertEquals(List.of(), browser.complaints());
    }

    @Test
    void its_scripts_are_small_and_never_take_text_for_markup() {
        String scripts = book.text("scripts/engine.js") + book.text("scripts/look-up.js");
        assertTrue(scripts.length() <= 40 * 1024, "characters: " + scripts.length());
        for (String door : List.of("innerHTML", "outerHTML", "insertAdjacentHTML", "document.write", "eval(", "new Function",
                "DOMParser", "createContextualFragment")) {
            assertFalse(scripts.contains(door), door);
        }
    }

    // --- What a reader does, and what the page says ---

    private void ask(String address) {
        browser.driver().get("about:blank");
        browser.driver().get(book.file(PAGE).toUri() + address);
    }

    private void touch(String part, String id) {
        WebElement label = browser.driver()
                .findElement(By.cssSelector("input[name=" + part + "][value='" + id + "']"))
                .findElement(By.xpath(".."));
        browser.script("arguments[0].scrollIntoView({block: 'center'}); return 1", label);
        label.click();
    }

    private void type(String name, String words) {
        WebElement field = browser.driver().findElement(By.cssSelector("input[name=" + name + "]"));
        field.sendKeys(words);
    }

    private void key(Keys key) {
        // Not typed into the element: a colour's field would take the key for its value.
        new Actions(browser.driver()).sendKeys(key).perform();
    }

    private void tabTo(String selector) {
        for (int tabs = 0; tabs < 100; tabs++) {
            if (on(selector)) {
                return;
            }
            key(Keys.TAB);
        }
        throw new AssertionError("not reached by the tab key: " + selector);
    }

    private boolean on(String selector) {
        return (Boolean) browser.script("return document.activeElement.matches(arguments[0])", selector);
    }

    private void waitFor(String address) {
        waitUntil("return location.hash === '" + address + "'");
    }

    private void waitUntil(String condition) {
        long end = System.nanoTime() + 5_000_000_000L;
        while (!browser.script(condition).equals(true)) {
            assertTrue(System.nanoTime() < end, condition + " in five seconds; the address is "
                    + browser.driver().getCurrentUrl());
            LockSupport.parkNanos(20_000_000L);
        }
    }

    private String text(String selector) {
        return browser.driver().findElement(By.cssSelector(selector)).getText();
    }

    @SuppressWarnings("unchecked")
    private List<String> texts(String selector) {
        return (List<String>) browser.script("return [...document.querySelectorAll(arguments[0])]"
                + ".map(found => found.textContent)", selector);
    }

    private String value(String name) {
        return (String) browser.script("return document.querySelector('.ask [name=' + arguments[0] + ']').value", name);
    }

    /** The ids of the entries that are shown, in order. */
    @SuppressWarnings("unchecked")
    private List<String> answers() {
        return (List<String>) browser.script("return [...document.querySelectorAll('.answer-title a')]"
                + ".map(way => decodeURIComponent(way.getAttribute('href').slice('entries/'.length, -'.html'.length)))");
    }

    private JsonNode entry(String id) {
        return book.data().required("entries").valueStream()
                .filter(entry -> entry.required("id").asString().equals(id)).findFirst().orElseThrow();
    }

    private TreeSet<String> entries(Predicate<JsonNode> which) {
        TreeSet<String> ids = new TreeSet<>();
        book.data().required("entries").valueStream().filter(which).forEach(entry -> ids.add(entry.required("id").asString()));
        assertFalse(ids.isEmpty(), "the demo has such entries");
        return ids;
    }

    private static Predicate<JsonNode> scaldedThatWorkedIn2025() {
        return entry -> entry.required("date").asString().startsWith("2025")
                && entry.required("needles").required("condition").asString("").equals("scalded")
                && entry.required("outcome").path("verdict").asString("").equals("worked");
    }

    /** A condition and a year, both in the demo, that no entry has together. */
    private String emptyPair() {
        TreeSet<String> pairs = new TreeSet<>();
        TreeSet<String> conditions = new TreeSet<>();
        TreeSet<String> years = new TreeSet<>();
        book.data().required("entries").forEach(entry -> {
            String condition = entry.required("needles").required("condition").asString("");
            String year = entry.required("date").asString().substring(0, 4);
            if (!condition.isEmpty()) {
                conditions.add(condition);
                pairs.add(condition + year);
            }
            years.add(year);
        });
        return conditions.stream().flatMap(condition -> years.stream()
                        .filter(year -> !pairs.contains(condition + year))
                        .map(year -> String.format(Locale.ROOT, "#condition=%s&year=%s", condition, year)))
                .findFirst().orElseThrow(() -> new AssertionError("every condition was dyed in every year of the demo"));
    }

    private static void write(Path file, String text) throws IOException {
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }
}
