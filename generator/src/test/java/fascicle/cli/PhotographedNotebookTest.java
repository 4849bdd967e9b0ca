package fascicle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.notebook.WrittenNotebook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** A notebook whose colours were read off photographs becomes a book that shows them. */
class PhotographedNotebookTest {

    private static final String DAY = "days/2026-05-09/";
    private static final String READ = "photo: {file: bench.png, needles: [15, 20, 30, 40], card: {at: [62, 12, 11, 16]}}";

    @TempDir
    Path folder;

    private WrittenNotebook written = WrittenNotebook.empty(Path.of(""));
    private Path book = Path.of("");

    @BeforeEach
    void aNotebook() {
        book = folder.resolve("book");
        written = WrittenNotebook.small(folder.resolve("notebook")).with(DAY + "bench.png", bench());
    }

    private static byte[] bench() {
        return FlatPicture.table().with(10, 10, 40, 60, 0x7f4632).with(60, 10, 15, 20, FlatPicture.GREY_18).png();
    }

    private WrittenNotebook entry(String name, String keys, String body) {
        return written.with(DAY + name + ".md", "---\ntitle: " + name + "\nneedles: {lot: scalded-2025, weight: 45 g}\n"
                + keys + "\n---\n" + body);
    }

    private Call publish(String... more) {
        String[] call = new String[4 + more.length];
        System.arraycopy(new String[] {"publish", written.folder().toString(), "--to", book.toString()}, 0, call, 0, 4);
        System.arraycopy(more, 0, call, 4, more.length);
        return Call.of((Object[]) call);
    }

    private JsonNode colour() throws IOException {
        return new ObjectMapper().readTree(Files.readAllBytes(book.resolve("data/book.json"))).get("entries").get(0)
                .get("colour");
    }

    private Document page(String address) throws IOException {
        return Jsoup.parse(Files.readString(book.resolve(address)));
    }

    private List<String> pictures() {
        return Call.tree(book).keySet().stream().filter(file -> file.startsWith("pictures/")).toList();
    }

    @Test
    void theColourIsInTheDataAndThePictureOnThePage() throws IOException {
        entry("brick", "colour: [" + READ.replace("photo:", "{photo:") + "}]", "");
        publish().ends(0);
        assertEquals("#7f4632", colour().get("hex").asString());
        assertEquals("photo", colour().get("by").asString());
        assertEquals(6, colour().get("uncertainty_de00").asDouble());
        Element picture = page("entries/2026-05-09-brick.html").selectFirst(".photograph");
        assertTrue(picture != null && picture.text().contains("the grey card of 18 % it was read against"));
        Element image = picture.selectFirst("img");
        assertEquals(3, image.attr("srcset").split(", ").length);
        for (String source : image.attr("srcset").split(", ")) {
            assertTrue(Files.exists(book.resolve("entries").resolve(source.split(" ")[0])), source);
        }
        assertEquals("1200", image.attr("width"));
        assertEquals("M15 20h30v40h-30z", picture.selectFirst("path.read-needles").attr("d"));
        assertEquals("M62 12h11v16h-11z", picture.selectFirst("path.read-card").attr("d"));
        assertEquals(3, pictures().size());
    }

    @Test
    void onePictureOfSeveralPotsIsPublishedOnce() throws IOException {
        entry("brick", "colour: [{" + READ + "}]", "");
        entry("again", "colour: [{" + READ + "}]", "");
        publish().ends(0);
        assertEquals(3, pictures().size());
    }

    @Test
    void aCaptionSaysWhatThePictureIsOf() throws IOException {
        for (String name : List.of("wet", "weeks", "cloth")) {
            written.with(DAY + name + ".png", FlatPicture.table().with(10, 10, 40, 60, 0x7f4632 + name.length())
                    .with(60, 10, 15, 20, FlatPicture.GREY_18).png());
        }
        entry("brick", "colour: [{" + READ + "}, {" + READ.replace("bench", "wet") + ", when: wet}]\nwindow: [{after: 6 "
                + "weeks, " + READ.replace("bench", "weeks") + "}]\nfastness: {rub-dry: {before: {lab: [94, 0, 2]}, after: {"
                + READ.replace("bench", "cloth") + "}}}", "");
        publish().ends(0);
        List<String> captions = page("entries/2026-05-09-brick.html").select(".photograph figcaption").eachText();
        assertEquals(4, captions.size());
        assertTrue(captions.get(0).startsWith("Outlined: "), captions.toString());
        assertTrue(captions.get(1).startsWith("Wet, and so compared with nothing. Outlined: "), captions.toString());
        assertTrue(captions.get(2).startsWith("After 6 weeks in the light. Outlined: "), captions.toString());
        assertTrue(captions.get(3).startsWith("The bath in a glass, or a rubbed cloth. Outlined: "), captions.toString());
    }

    @Test
    void withoutACardItIsKeptAndComparedWithNothing() throws IOException {
        entry("brick", "colour: [{photo: {file: bench.png, needles: [15, 20, 30, 40]}}]", "");
        publish().ends(0).says(DAY + "brick.md:4:25: warning: the picture “bench.png”: ");
        assertTrue(colour().isNull());
        Document page = page("entries/2026-05-09-brick.html");
        assertTrue(page.text().contains("by eye"), page.text());
        assertEquals(1, page.select(".photograph").size());
    }

    @Test
    void whatTheMakerLearntOfHerPhoneCounts() throws IOException {
        written.with("notebook.yaml", "form: 1\ntitle: A small notebook\nkitchen: metric\nphoto-uncertainty: 2.5\n");
        entry("brick", "colour: [{" + READ + "}]", "");
        publish().ends(0);
        assertEquals(2.5, colour().get("uncertainty_de00").asDouble());
    }

    @Test
    void picturesInTheMakersWordsAreShown() throws IOException {
        entry("brick", "colour: [{hex: \"#7f4632\"}]", "![Bundles on the bench](bench.png)\n\n![Gone](gone.png)\n");
        publish().ends(0).says("brick.md:8:1: warning: the picture “gone.png” is taken out");
        Element notes = page("entries/2026-05-09-brick.html").selectFirst(".notes");
        assertEquals("Bundles on the bench", notes.selectFirst("img").attr("alt"));
        assertEquals(List.of("Bundles on the bench", "Gone"), notes.select(".picture").eachText());
        assertEquals(3, pictures().size());
    }

    @Test
    void aPictureThatCannotBeReadIsAFindingWhereItIsNamedAndTheRestGoesOn() throws IOException {
        byte[] whole = bench();
        written.with(DAY + "torn.png", java.util.Arrays.copyOf(whole, whole.length / 2));
        entry("good", "colour: [{" + READ + "}]", "");
        entry("torn", "colour:\n  - photo:\n      file: torn.png\n      needles: [15, 20, 30, 40]", "");
        publish().ends(1).says(DAY + "torn.md:6:13: error: the picture “torn.png” ");
        publish("--despite-errors").ends(0);
        assertEquals("#7f4632", colour().get("hex").asString());
    }

    @Test
    void aPictureThatIsOnlyShownMustBeWholeToo() {
        written.with(DAY + "torn.png", java.util.Arrays.copyOf(bench(), bench().length / 2));
        entry("shown", "colour: [{lab: [36, 23, 23]}, {photo: {file: torn.png}}]", "");
        publish().ends(1).says("shown.md:4:46: error: the picture “torn.png” ");
    }

    /** Its colour lies in the upper part, and what is lost of it in the lower. */
    @Test
    void aPictureThatIsDamagedBelowWhatIsReadIsAFindingToo() throws IOException {
        java.io.ByteArrayOutputStream jpeg = new java.io.ByteArrayOutputStream();
        javax.imageio.ImageIO.write(javax.imageio.ImageIO.read(new java.io.ByteArrayInputStream(bench())), "jpeg", jpeg);
        byte[] bytes = jpeg.toByteArray();
        java.util.Arrays.fill(bytes, bytes.length - 400, bytes.length - 2, (byte) 0x55);
        written.with(DAY + "low.jpg", bytes);
        entry("low", "colour: [{photo: {file: low.jpg, needles: [15, 12, 30, 10], card: {at: [62, 12, 11, 10]}}}]", "");
        publish().ends(1).says("low.md:4:25: error: the picture “low.jpg” is damaged");
    }

    @Test
    void aPictureNoDiskCanNameIsTakenOut() throws IOException {
        entry("odd", "colour: [{hex: \"#7f4632\"}]", "![x](a%00b.jpg)");
        publish().ends(0).says("odd.md:6:1: warning: the picture “a%00b.jpg” is taken out");
    }

    @Test
    void aTargetTakenByEyeIsComparedWithNothing() throws IOException {
        entry("aimed", "colour: [{lab: [36, 23, 23]}]\ntarget: {photo: {file: bench.png, needles: [15, 20, 30, 40]}}", "");
        publish().ends(0);
        assertTrue(colour().get("target_de00").isNull());
    }

    /** Neither its pages nor its picture nor the picture's name. */
    @Test
    void aPrivateEntrysPictureIsInNoLowerEdition() throws IOException {
        entry("brick", "colour: [{hex: \"#7f4632\"}]\nshare: open", "");
        entry("secret", "colour: [{" + READ + "}]", "![The bench](bench.png)");
        publish("--edition", "open").ends(0);
        assertEquals(List.of(), pictures());
        SortedMap<String, String> open = Call.tree(book);
        assertFalse(open.values().stream().anyMatch(file -> file.contains("bench")), "its name");
    }

    @Test
    void aPictureInAClosedSectionIsInNoLowerEdition() throws IOException {
        entry("brick", "colour: [{hex: \"#7f4632\"}]\nshare: open", "Took evenly.\n\n## The bench (studio only)\n\n"
                + "![The bench](bench.png)\n");
        publish().ends(0);
        assertEquals(3, pictures().size());
        book = folder.resolve("open");
        publish("--edition", "open").ends(0);
        assertEquals(List.of(), pictures());
    }

    @Test
    void aPictureByALinkThatLeavesTheNotebookIsNotRead() throws IOException {
        Files.createSymbolicLink(written.folder().resolve(DAY + "out.png"),
                Files.write(folder.resolve("elsewhere.png"), bench()));
        entry("linked", "colour: [{photo: {file: out.png, needles: [15, 20, 30, 40]}}]", "");
        entry("worded", "colour: [{hex: \"#7f4632\"}]", "![Elsewhere](out.png)");
        publish("--despite-errors").ends(0).says(DAY + "linked.md:4:25: error: the picture “out.png” lies outside the "
                + "notebook", "worded.md:6:1: warning: the picture “out.png” is taken out, and its words stand in its "
                + "place: it lies outside the notebook");
        assertEquals(List.of(), pictures());
    }

    @Test
    void aLotThatIsNotSharedKeepsItsColourAndLosesItsPicture() throws IOException {
        written.with("needles/pale.png", bench()).with("needles/scalded-2025.md", "---\ntitle: Scalded\nspecies: Pinus nigra\n"
                + "condition: scalded\ncolour: [{" + READ.replace("bench.png", "pale.png") + "}]\n---\n");
        entry("brick", "colour: [{lab: [30, 20, 20]}]\nshare: open", "");
        publish("--edition", "open").ends(0);
        assertEquals(List.of(), pictures());
        assertTrue(colour().get("shift_de00").asDouble() > 0);
        assertEquals(0, page("lots/scalded-2025.html").select(".photograph").size());
    }

    @Test
    void theMakersFilesStayAsTheyAreAndASecondBookIsTheSame() throws IOException {
        entry("brick", "colour: [{" + READ + "}]", "");
        SortedMap<String, String> before = Call.tree(written.folder());
        publish().ends(0);
        SortedMap<String, String> first = Call.tree(book);
        publish().ends(0).says("nothing changed");
        assertEquals(first, Call.tree(book));
        assertEquals(before, Call.tree(written.folder()));
    }
}
