package fascicle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The sheet, the slips, the calendar and the data of a planned day are written into a folder of their own. */
class PlanFilesTest {

    @TempDir
    private Path folder;

    private DyeSchool school;

    @BeforeEach
    void write() {
        school = DyeSchool.withAClass(folder);
    }

    @Test
    void theSheetTheSlipsTheCalendarAndTheDataAreWritten() throws IOException {
        Path target = folder.resolve("saturday");
        school.plan("class-brick", "--each", "15g", "--people", "8", "--start", "2026-06-13T09:00", "--to", target.toString())
                .ends(0).says("Open: ");
        Document sheet = Jsoup.parse(Files.readString(target.resolve("plan.html")));
        String said = sheet.text().replace('\u202f', ' ');
        assertTrue(said.contains("8 people, 15 g of dry needles each"), said);
        assertTrue(said.contains("This sheet is the teacher’s"), said);
        assertTrue(said.contains("240 mL of 1 % stock"), said);
        assertTrue(said.contains("too little on the shelf"), said);
        assertTrue(said.contains("Lots with enough for everyone: Plenty (260 g left)"), said);
        assertTrue(said.contains("The label on the pack, local rules and licensed practice come before anything"),
                said);
        assertTrue(said.contains("Vinegar into the water, then the dye through a cloth.")
                && said.contains("Nobody under sixteen at the stove."), "the maker's own words on it: " + said);
        assertTrue(said.contains("Make up the bath. Out of the presoak. Bath on the stove, needles in. Heat to 88 °C. 0:30"),
                said);
        assertTrue(said.contains("Out of the bath. Rinse. Dry. 1 day"), said);
        Document slips = Jsoup.parse(Files.readString(target.resolve("slip.html")));
        assertEquals(8, slips.select("table.blank").last().select("tbody tr").size(), "a line for each tag");
        assertTrue(slips.select(".slip").stream().allMatch(slip -> slip.select(".caution li").size() > 4),
                "each slip may be cut off, and has its own cautions");
        String poured = slips.select(".slip .amounts").text().replace('\u202f', ' ');
        assertTrue(poured.contains("Bath: Water: 6960 mL") && poured.contains("Presoak: Water: 12000 mL"), poured);
        assertFalse(poured.contains("7344"), "nobody pours the sum of it: " + poured);
        String calendar = Files.readString(target.resolve("plan.ics"));
        assertTrue(calendar.contains("DTSTART:20260613T100000\r\n"), calendar);
        assertEquals(school.plan("class-brick", "--each", "15g", "--people", "8", "--start", "2026-06-13T09:00", "--json").out(),
                Files.readString(target.resolve("plan.json")));
        assertTrue(Files.exists(target.resolve(sheet.select("link[rel=stylesheet]").attr("href"))));
    }

    /**
     * The data and the calendar byte for byte, whatever the machine, its language and the order in which it keeps sets.
     * Where they differ, what is written now is laid in {@code target/golden}, to be read and, if it is right, taken over.
     */
    @ParameterizedTest
    @ValueSource(strings = {"plan.json", "plan.ics"})
    void theSamePlanGivesTheSameBytes(String file) throws IOException {
        Path target = folder.resolve("golden");
        school.plan("class-brick", "iron", "--each", "15g", "--people", "8", "--start", "2026-06-13T09:00", "--to",
                target.toString()).ends(0);
        byte[] written = Files.readAllBytes(target.resolve(file));
        byte[] golden = new byte[0];
        try (InputStream resource = PlanTest.class.getResourceAsStream("golden/" + file)) {
            golden = resource == null ? golden : resource.readAllBytes();
        }
        if (!Arrays.equals(golden, written)) {
            Files.write(Files.createDirectories(Path.of("target/golden")).resolve(file), written);
        }
        assertEquals(new String(golden, StandardCharsets.UTF_8), new String(written, StandardCharsets.UTF_8));
    }

    @Test
    void eventsKeepTheirIdsWhenTheHourMoves() throws IOException {
        List<String> ids = Stream.of("2026-06-13T09:00", "2026-06-13T09:30", "2026-06-20T09:00").map(start -> {
            Path target = folder.resolve("at-" + start.replace(':', '-'));
            school.plan("class-brick", "--each", "15g", "--people", "8", "--start", start, "--to", target.toString()).ends(0);
            try {
                return Files.readAllLines(target.resolve("plan.ics")).stream().filter(line -> line.startsWith("UID:"))
                        .toList().toString();
            } catch (IOException unread) {
                throw new java.io.UncheckedIOException(unread);
            }
        }).toList();
        assertEquals(ids.get(0), ids.get(1), "the same morning, half an hour later");
        assertFalse(ids.get(0).equals(ids.get(2)), "another day");
    }

    @Test
    void aPlanNeverReplacesABook() {
        Path book = folder.resolve("book");
        Call.of("publish", school.notebook(), "--to", book).ends(0);
        school.plan("class-brick", "--each", "15g", "--to", book.toString()).ends(2).says("must not replace");
        assertTrue(Files.exists(book.resolve("index.html")));
        assertFalse(Files.exists(book.resolve("plan.html")));
    }
}
