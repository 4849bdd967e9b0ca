package fascicle.site;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What lies by the pot is one sheet of paper, be it American or European. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PaperTest {

    /** A paper, in inches: ANSI Y14.1 and ISO 216. */
    enum Paper {
        LETTER(8.5, 11),
        A4(210 / 25.4, 297 / 25.4);

        private final double width;
        private final double height;

        Paper(double width, double height) {
            this.width = width;
            this.height = height;
        }
    }

    private Browser browser;

    @BeforeAll
    void open() {
        browser = Browser.open(Browser.LAPTOP);
    }

    @AfterAll
    void close() {
        if (browser != null) {
            browser.close();
        }
    }

    @ParameterizedTest
    @EnumSource
    void a_method_is_one_sheet(Paper paper) {
        PublishedBook book = PublishedBook.ofTheDemo();
        List<String> longer = new ArrayList<>();
        for (String address : book.files()) {
            if (address.startsWith("methods/") && address.endsWith(".html") && sheets(book.file(address), paper) != 1) {
                longer.add(address);
            }
        }
        assertEquals(List.of(), longer);
    }

    /** Two pots, two more and one with a mordant, a plant and iron, and a line for each of six tags. */
    @ParameterizedTest
    @EnumSource
    void a_slip_is_one_sheet(Paper paper, @TempDir Path folder) {
        Path target = folder.resolve("day");
        Run run = Program.run("plan", Checkout.root().resolve("content").toString(), "slow-simmer", "2026-05-09-brick",
                "iron-dip", "--people", "6", "--each", "15g", "--to", target.toString());
        assertEquals(0, run.status(), run.words());
        assertEquals(5, sheets(target.resolve("slip.html"), paper));
    }

    @Test
    void eight_in_one_pot_still_have_one_sheet(@TempDir Path folder) {
        Path target = folder.resolve("day");
        Run run = Program.run("plan", Checkout.root().resolve("content").toString(), "iron-dip", "--people", "8", "--each",
                "11g", "--to", target.toString());
        assertEquals(0, run.status(), run.words());
        assertEquals(1, sheets(target.resolve("slip.html"), Paper.LETTER));
    }

    private long sheets(Path file, Paper paper) {
        browser.show(file);
        Map<String, Object> printed = browser.driver().executeCdpCommand("Page.printToPDF",
                Map.of("paperWidth", paper.width, "paperHeight", paper.height, "printBackground", true));
        String text = new String(Base64.getDecoder().decode((String) printed.get("data")), StandardCharsets.ISO_8859_1);
        return text.lines().filter(line -> line.contains("/Type /Page") && !line.contains("/Pages")).count();
    }
}
