package fascicle.book.prose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import fascicle.book.SampleNotebook;
import fascicle.book.lookup.Folding;
import fascicle.notebook.Note;
import java.util.Optional;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What may be looked up of the maker's words is what the page shows of them. */
class PlainTextTest {

    private static Note note(String markdown) {
        return SampleNotebook.note(markdown, "days/2026-05-09/brick.md");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Took evenly. The *sheaths* stayed **pale**.", "# Watch it\n\nSee [the dye](../../dyes/brick.md).",
        "1. Soak.\n2. Simmer 3 h.\n\n- rinse\n- dry", "| minute | °C |\n|---:|---:|\n| 15 | 60 |\n", "un*frigging*believable",
        "![a pot](pot.jpg) on the stove", "[x]: ../secret.md\n\nsee [x]", "<!-- not for you -->seen", "<script>hidden</script> shown",
        "caf&eacute; &amp; tea", "a\\*b", "```\ncode here\n```", "`in line` code", "[not a link](at all, no)", "[a](b(c)d) e",
        "<https://example.org/page>", "line one\nline two  \nline three", "~~~ fence\ntext\n~~~", "> quoted\n> words", "snake_case_word",
        "[link][ref]\n\n[ref]: /x 'title'", "a [b]( c ) d", "x<b>y</b>z", "___", "", "3*4 = 12", "[](empty) text", "2. to 3. cups", "we took\n14. days", "1) one\n2) two\n\n7. seven\n8. eight",
        "*all* of **it**, and ***more***", "`a`b", "a*`b`*c", "  3. indented", "text [x]\n[y]", "text\n1. item", "[a](u \"title\") b"})
    void theWordsAreThoseOfThePage(String markdown) {
        String page = Jsoup.parseBodyFragment(new Prose(file -> Optional.empty(), file -> Optional.empty()).html(note(markdown), "").html())
                .body().text();
        assertEquals(Folding.words(page), Folding.words(PlainText.of(note(markdown))), markdown);
    }

    @Test
    void whatThePageHidesIsNotFound() {
        String text = PlainText.of(note("See [that](../2026-01-01/unshown.md) <!-- between us --> <script>spell()</script>"));
        for (String hidden : new String[] {"unshown", "between", "spell"}) {
            assertFalse(Folding.words(text).contains(hidden), text);
        }
    }
}
