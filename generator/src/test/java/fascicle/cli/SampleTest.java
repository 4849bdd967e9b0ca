package fascicle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.colour.Lab;
import fascicle.colour.Rgb;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** A maker reads a colour off a photograph, and learns how sure that is. */
class SampleTest {

    @TempDir
    Path folder;

    private Path photo = Path.of("");

    @BeforeEach
    void aPhotograph() throws IOException {
        photo = Files.write(folder.resolve("brick.png"), FlatPicture.table().with(10, 10, 40, 60, 0x7f4632)
                .with(60, 10, 15, 20, FlatPicture.GREY_18).with(60, 50, 15, 20, FlatPicture.GREY_18).png());
    }

    private static JsonNode json(Call call) {
        return new ObjectMapper().readTree(call.ends(0).out());
    }

    private static void assertColour(String hex, JsonNode lab, double within) {
        Lab expected = Rgb.read(hex).orElseThrow().toLab();
        assertEquals(expected.lightness(), lab.get(0).asDouble(), within);
        assertEquals(expected.a(), lab.get(1).asDouble(), within);
        assertEquals(expected.b(), lab.get(2).asDouble(), within);
    }

    /** The colours of the picture are chosen, and sRGB says what they are (check values of lab-srgb.csv). */
    @Test
    void whatWasPaintedIsRead() {
        JsonNode read = json(Call.of("sample", photo, "--needles", "15,20,30,40", "--card", "62,12,11,16", "--json"));
        // The card is painted in 8 bits, and so 0.03 of a step too light.
        assertColour("#7f4632", read.get("lab"), 0.15);
        assertEquals(6, read.get("uncertainty_de00").asDouble());
        assertTrue(read.get("unlevelness_de00").asDouble() < 0.01);
        assertTrue(read.get("pixels").asInt() > 10_000);
        assertEquals(0, read.get("cautions").size(), read.toString());
    }

    @Test
    void itIsToldToAPersonAsAnEstimate() {
        Call.of("sample", photo, "--needles", "15,20,30,40", "--card", "62,12,11,16", "--card", "62,52,11,16").ends(0)
                .prints("Moderate reddish brown", "An estimate: within ΔE00\u00a06.0 of the truth.", "Unlevelness ΔE00\u00a00.0");
    }

    @Test
    void withoutACardItIsByEyeAndNobodyKnowsHowSure() {
        JsonNode read = json(Call.of("sample", photo, "--needles", "15,20,30,40", "--json"));
        assertTrue(read.get("by_eye").asBoolean());
        assertTrue(read.get("uncertainty_de00").isNull());
        assertEquals(1, read.get("cautions").size());
        Call.of("sample", photo, "--needles", "15,20,30,40").ends(0).prints("By eye", "Heed: ");
    }

    @Test
    void aDarkerCardMeansLighterNeedles() {
        double by18 = json(Call.of("sample", photo, "--needles", "15,20,30,40", "--card", "62,12,11,16", "--json"))
                .get("lab").get(0).asDouble();
        double by9 = json(Call.of("sample", photo, "--needles", "15,20,30,40", "--card", "62,12,11,16", "--grey", "9 %",
                "--json")).get("lab").get(0).asDouble();
        assertTrue(by9 < by18 - 5, by9 + " " + by18);
    }

    /** Eight things of known colour, read as they are: the meter that read them is what is left unsure. */
    @Test
    void thingsOfKnownColourTeachHowSurePhotographsAre() throws IOException {
        FlatPicture picture = FlatPicture.table().with(80, 10, 15, 20, FlatPicture.GREY_18);
        StringBuilder table = new StringBuilder("photo,x,y,width,height,L,a,b\n");
        int[] colours = {0x7f4632, 0xb08d57, 0x6b7c3b, 0x3a3a6d, 0xd4a017, 0x9e2b25, 0x4e4a47, 0xefe6d0};
        for (int i = 0; i < colours.length; i++) {
            double x = 2 + i % 4 * 18;
            double y = i < 4 ? 10 : 50;
            picture.with(x, y, 15, 30, colours[i]);
            Lab known = Rgb.read(String.format(java.util.Locale.ROOT, "#%06x", colours[i])).orElseThrow().toLab();
            table.append("tiles.png,").append(x + 2).append(',').append(y + 5).append(",10,20,").append(known.lightness())
                    .append(',').append(known.a()).append(',').append(known.b()).append('\n');
        }
        Files.write(folder.resolve("tiles.png"), picture.png());
        Path tiles = Files.writeString(folder.resolve("tiles.csv"), table);
        JsonNode learnt = json(Call.of("sample", "--known", tiles, "--card", "82,12,11,16", "--json"));
        assertEquals(8, learnt.get("known").size());
        assertEquals(1, learnt.get("uncertainty_de00").asDouble());
        assertEquals(1, learnt.get("cautions").size(), learnt.toString());
        assertTrue(learnt.get("cautions").get(0).asString().startsWith("all lie in one photograph"), learnt.toString());
        Call.of("sample", "--known", tiles, "--card", "82,12,11,16").ends(0)
                .prints("Write it into notebook.yaml: photo-uncertainty: 1.0", "nineteen times of twenty");
        Files.writeString(tiles, table.substring(0, table.lastIndexOf("tiles.png")));
        Call.of("sample", "--known", tiles, "--card", "82,12,11,16").ends(0).prints("Heed: this rests on 7 things");
    }

    @Test
    void whatCannotTeachIsNotTaken() throws IOException {
        Path card = Files.writeString(folder.resolve("card.csv"), "x;y;width;height;L;a;b\n62;12;11;16;49,5;0;0\n");
        Call.of("sample", photo, "--known", card, "--card", "62,12,11,16").ends(2).says("Row 1 of the table lies on the "
                + "card itself");
        Path mistaken = Files.writeString(folder.resolve("mistaken.csv"), "x;y;width;height;L;a;b\n15;20;30;40;90;0;0\n");
        Call told = Call.of("sample", photo, "--known", mistaken, "--card", "62,12,11,16").ends(0)
                .prints("an area or a known colour is likely mistaken; look first at row 1");
        assertFalse(told.out().contains("photo-uncertainty"), told.out());
    }

    @Test
    void aChartStandsInATable() throws IOException {
        FlatPicture picture = FlatPicture.table().with(10, 10, 30, 60, 0x7f4632);
        StringBuilder table = new StringBuilder("L;a;b\n");
        int[] colours = {0x9e2b25, 0x6b7c3b, 0x3a3a6d, 0xd4a017, 0xefefef, 0x767676, 0x6f3a5f, 0x3f5b34, 0x404040};
        for (int i = 0; i < colours.length; i++) {
            picture.with(50 + i % 3 * 15, 10 + i / 3 * 20, 15, 20, colours[i]);
            Lab known = Rgb.read(String.format(java.util.Locale.ROOT, "#%06x", colours[i])).orElseThrow().toLab();
            table.append(known.lightness()).append(';').append(known.a()).append(';').append(known.b()).append('\n');
        }
        Path file = Files.write(folder.resolve("chart.png"), picture.png());
        Path chart = Files.writeString(folder.resolve("chart.csv"), table);
        JsonNode read = json(Call.of("sample", file, "--needles", "15,20,20,40", "--card", "50,10,45,60", "--chart",
                chart, "--columns", "3", "--json"));
        assertColour("#7f4632", read.get("lab"), 0.2);
        assertEquals(4, read.get("uncertainty_de00").asDouble());
        assertTrue(read.get("left_over_de00").asDouble() < 0.1);
        Call.of("sample", file, "--needles", "15,20,20,40", "--card", "50,10,45,60", "--chart", chart).ends(2)
                .says("--columns");
        Call.of("sample", file, "--needles", "15,20,20,40", "--card", "50,10,45,60", "--chart", chart, "--columns", "4")
                .ends(2).says("9 colours, which do not fill rows of 4");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "15,20,30 | 62,12,11,16 | 18 | “15,20,30” after --needles is no area",
        "15,20,130,40 | 62,12,11,16 | 18 | does not lie in the picture",
        "15,20,30,0 | 62,12,11,16 | 18 | does not lie in the picture",
        "a,b,c,d | 62,12,11,16 | 18 | is no area",
        "15,20,30,40 | 62,12,11 | 18 | after --card is no area",
        "15,20,30,40 | 62,12,11,16 | 0 | after --grey is no card's reflectance",
        "15,20,30,40 | 62,12,11,16 | dark | after --grey is no card's reflectance"})
    void aWrongAreaOrCardIsSaid(String needles, String card, String grey, String words) {
        Call.of("sample", photo, "--needles", needles, "--card", card, "--grey", grey).ends(2).says(words);
    }

    @Test
    void whatIsNoPhotographIsRefusedInWords() throws IOException {
        Path heic = Files.writeString(folder.resolve("bench.heic"), "\0\0\0\30ftypheic\0\0\0\0mif1heic");
        Call.of("sample", heic, "--needles", "15,20,30,40").ends(1).says("bench.heic", "HEIC", "JPEG");
        Call.of("sample", folder.resolve("nowhere.jpg"), "--needles", "15,20,30,40").ends(2).says("nowhere.jpg");
        Call.of("sample", "--needles", "15,20,30,40").ends(2).says("names no photograph");
        Call.of("sample", photo).ends(2).says("--needles");
        Path torn = Files.writeString(folder.resolve("torn.csv"), "x,y,width,height,L,a\n1,2,3,4,5,6\n");
        Call.of("sample", photo, "--known", torn, "--card", "62,12,11,16").ends(2).says("lacks the column b");
    }
}
