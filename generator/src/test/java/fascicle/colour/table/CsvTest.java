package fascicle.colour.table;

import static fascicle.colour.table.Tables.assertLab;
import static fascicle.colour.table.Tables.kinds;
import static fascicle.colour.table.Tables.labs;
import static fascicle.colour.table.Tables.read;
import static fascicle.colour.table.Tables.words;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.colour.Lab;
import fascicle.colour.Rgb;
import fascicle.colour.table.ReadingTable.Kind;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.time.Duration;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Plain tables, as programs and spreadsheets write them. */
class CsvTest {

    private static final Lab BRICK = new Lab(36.2, 23.9, 22.1);

    @Test
    void columnsAreKnownInTheirUsualSpellings() {
        for (String names : List.of(
                "L,a,b", "L*,a*,b*", "l*,A*,B*", "LAB_L,LAB_A,LAB_B", "CIE_L,CIE_A,CIE_B", "CIE L*,CIE a*,CIE b*",
                "Lab L,Lab a,Lab b", "L*(D50),a*(D50),b*(D50)", "L* (D50/2°),a* (D50/2°),b* (D50/2°)",
                "L_D50,a_D50,b_D50", "L* D50 2 deg,a* D50 2 deg,b* D50 2 deg", "\"L*\",\"a*\",\"b*\"", "L , a , b")) {
            assertEquals(List.of(BRICK), labs(read(names + "\n36.2,23.9,22.1\n")), names);
        }
    }

    @Test
    void tabsSemicolonsAndCommasPartTheCells() {
        for (String separator : List.of("\t", ";", ",")) {
            String table = String.join(separator, "Bundle", "a*", "L*", "b*", "Note") + "\r\n"
                    + String.join(separator, "\"1; upper, third\"", "23.9", "36.2", "22.1", "") + "\r\n";
            assertEquals(List.of(BRICK), labs(read(table)));
            assertEquals(List.of(2), read(table).readings().stream().map(ReadingTable.Read::line).toList());
        }
    }

    @Test
    void titlesMayStandAboveTheColumnsAndBlankLinesAnywhere() {
        String table = """
                \uFEFFReadings of a bundle, five
                Date;12 March
                "a note
                in two lines"

                Name;L*;a*;b*
                one;36.2;23.9;22.1
                ;;;

                two;36.2;23.9;22.1
                """;
        assertEquals(List.of(BRICK, BRICK), labs(read(table)));
        assertEquals(List.of(7, 10), read(table).readings().stream().map(ReadingTable.Read::line).toList());
        assertEquals(read(table), read(table.replace("\n", "\r\n")));
    }

    @Test
    void threeNumbersInEachLineAreLabWithoutAnyNames() {
        assertEquals(List.of(BRICK, BRICK), labs(read("36.2,23.9,22.1\n36.2,23.9,22.1")));
        assertEquals(List.of(BRICK), labs(read("36,2;23,9;22,1\n")));
        assertEquals(List.of(BRICK), labs(read("36.2\t23.9\t22.1\t\n")));
        assertEquals(
                "in line 2: “green” under “a” is not a number", words("36.2,23.9,22.1\n36.2,green,22.1"));
        assertEquals("in line 2: the line has 2 values, but there are 3 columns", words("36.2,23.9,22.1\n36.2,23.9"));
    }

    @Test
    void aDecimalCommaIsReadOnlyWhereItCanBeNothingElse() {
        assertEquals(List.of(BRICK), labs(read("L*;a*;b*\n36,2;23,9;22,1\n")));
        assertEquals(List.of(BRICK), labs(read("L*\ta*\tb*\n36,2\t23,9\t22,1\n")));
        assertEquals(List.of(BRICK), labs(read("L*,a*,b*\n\"36,2\",\"23,9\",\"22,1\"\n")));
        assertEquals(
                "in line 2: the line has 6 values, but there are 3 columns; numbers with decimal commas need points, "
                        + "or semicolons between the cells",
                words("L*,a*,b*\n36,2,23,9,22,1\n"));
        assertEquals(
                "in line 1: no line names the columns, and here are 6 numbers; without names there have to be three, "
                        + "L*, a* and b*, with decimal points",
                words("36,2,23,9,22,1\n"));
        assertEquals("in line 2: “1.036,2” under “L*” is not a number", words("L*;a*;b*\n1.036,2;23,9;22,1\n"));
    }

    @Test
    void theLightIsReadFromTheColumnsOrTheTitles() {
        Lab adapted = Lab.ofD65(36.2, 23.9, 22.1);
        assertEquals(List.of(adapted), labs(read("L*(D65),a*(D65),b*(D65)\n36.2,23.9,22.1")));
        assertEquals(List.of(adapted), labs(read("Illuminant,D65\nObserver,2°\nL*,a*,b*\n36.2,23.9,22.1")));
        assertEquals(List.of(adapted), labs(read("Illuminant: D65\nL*,a*,b*\n36.2,23.9,22.1")));
        String ten = "; export them under D50 and the 2° observer, or export the spectrum";
        assertEquals(
                "in line 1: the colours are under D65 and the 10° observer" + ten,
                words("L*(D65/10°),a*(D65/10°),b*(D65/10°)\n36.2,23.9,22.1"));
        assertEquals(
                "in line 2: the colours are under D65 and the 10° observer" + ten,
                words("Readings D65/10°\nL*,a*,b*\n36.2,23.9,22.1"));
        assertEquals(
                "in line 2: the colours are under D50 and the 10° observer" + ten,
                words("Observer;10°\nL*;a*;b*\n36.2;23.9;22.1"));
        assertEquals(
                "in line 1: the colours are under F11 and the 2° observer" + ten,
                words("L*(F11),a*(F11),b*(F11)\n36.2,23.9,22.1"));
        assertEquals(
                "in line 1: the colours are under A and the 10° observer" + ten,
                words("L*(A/10),a*(A/10),b*(A/10)\n36.2,23.9,22.1"));
    }

    @Test
    void ofSeveralLightsD50IsTaken() {
        assertEquals(
                List.of(BRICK),
                labs(read("L*(D65),a*(D65),b*(D65),L*(D50),a*(D50),b*(D50)\n1,2,3,36.2,23.9,22.1")));
        assertEquals(
                List.of(BRICK),
                labs(read("L*(D65/10),a*(D65/10),b*(D65/10),L*(D50/2),a*(D50/2),b*(D50/2)\n1,2,3,36.2,23.9,22.1")));
    }

    @Test
    void differencesAndOtherColumnsAreNoColours() {
        assertEquals(
                List.of(BRICK),
                labs(read("dL*,da*,db*,L* C* h,L std,L*,a*,b*,C*,h\n1,2,3,4,5,36.2,23.9,22.1,32,42\n")));
        assertTrue(words("dL*,da*,db*\n1,2,3\n")
                .startsWith("in line 1: no columns of colour among “dL*”, “da*”, “db*”;"));
    }

    @Test
    void bMayBeBlueOrTheBOfLab() {
        String both = "R,G,B,L,a,b\n127,70,50,36.2,23.9,22.1\n";
        assertEquals(List.of(BRICK), labs(read(both)));
        assertEquals(List.of(Kind.SCREEN), kinds(read("R,G,B\n127,70,50\n")));
        assertEquals(List.of(new Rgb(127, 70, 50).toLab()), labs(read("r,g,b\n127,70,50\n")));
        assertTrue(words("R,G,B,L,A,B\n127,70,50,36.2,23.9,22.1\n").startsWith("in line 1: two columns tell the same"));
    }

    @Test
    void theScreensColoursAreThoseOfTwoOtherLibraries() throws IOException {
        List<String> lines = checkValues();
        StringBuilder rgb = new StringBuilder("Name,R,G,B\n");
        StringBuilder hex = new StringBuilder("Name;Hex\n");
        StringBuilder d50 = new StringBuilder("Name\tL*\ta*\tb*\n");
        StringBuilder d65 = new StringBuilder("Name,L*(D65),a*(D65),b*(D65)\n");
        for (String line : lines) {
            String[] cells = line.split(",");
            Rgb colour = Rgb.read(cells[1]).orElseThrow();
            rgb.append("x,").append(colour.red()).append(',').append(colour.green()).append(',')
                    .append(colour.blue()).append('\n');
            hex.append("x;").append(cells[1]).append('\n');
            d50.append("x\t").append(String.join("\t", Arrays.copyOfRange(cells, 2, 5))).append('\n');
            d65.append("x,").append(String.join(",", Arrays.copyOfRange(cells, 5, 8))).append('\n');
        }
        for (String table : List.of(rgb.toString(), hex.toString(), d50.toString(), d65.toString())) {
            List<Lab> labs = labs(read(table));
            assertEquals(62, labs.size());
            for (int i = 0; i < 62; i++) {
                String[] cells = lines.get(i).split(",");
                Lab published = new Lab(
                        Double.parseDouble(cells[2]), Double.parseDouble(cells[3]), Double.parseDouble(cells[4]));
                assertLab(published, labs.get(i), 3e-4);
            }
        }
    }

    @Test
    void codesOfColoursAreReadAndOthersTold() {
        assertEquals(List.of(new Rgb(127, 70, 50).toLab()), labs(read("hex\n7F4632\n")));
        assertEquals(
                "in line 2: “brick” under “sRGB hex” is no colour code; write one such as #7f4632",
                words("Name,sRGB hex\none,brick\n"));
    }

    @Test
    void meansOfScreenColoursKeepTheirFractions() {
        Lab lab = labs(read("R,G,B\n127.5,70.25,150\n")).get(0);
        assertLab(new Rgb(128, 70, 150).toLab(), lab, 0.6);
        assertTrue(lab.lightness() < new Rgb(128, 70, 150).toLab().lightness());
    }

    @Test
    void theScaleOfTheScreenMayBeSaidAndIsNotGuessed() {
        Lab grey = labs(read("R,G,B\n51,51,51\n")).get(0);
        assertLab(grey, labs(read("R (0-1),G (0-1),B (0-1)\n0.2,0.2,0.2\n")).get(0), 1e-9);
        assertLab(grey, labs(read("R (%),G (%),B (%)\n20,20,20\n")).get(0), 1e-9);
        assertLab(grey, labs(read("R (0-255),G (0-255),B (0-255)\n51.0,51.0,51.0\n")).get(0), 1e-9);
        assertEquals(
                "in line 1: no figure under “R”, “G” and “B” exceeds 1, so that they may run from 0 to 1 or from "
                        + "0 to 255; say which in their names, as in “R (0-1)” or “R (0-255)”",
                words("R,G,B\n0.2,0.2,0.2\n"));
        assertEquals(
                "in line 1: no figure under “R”, “G” and “B” exceeds 100, so that they may run from 0 to 100 or "
                        + "from 0 to 255; say which in their names, as in “R (0-100)” or “R (0-255)”",
                words("R,G,B\n20.5,20,20\n"));
        assertEquals(
                "in line 1: “R (0-1)” and “G” do not count alike; export them to the same scale",
                words("R (0-1),G,B\n0.2,0.2,0.2\n"));
        assertEquals("in line 2: “G” is 256; sRGB runs from 0 to 255", words("R,G,B\n20,256,20\n"));
        assertEquals("in line 2: “B” is -1; sRGB runs from 0 to 255", words("R,G,B\n20,25,-1\n"));
    }

    @Test
    void xyzCountsToAHundred() {
        Lab grey = labs(read("X,Y,Z\n17.35732224,18,14.8518828\n")).get(0);
        assertLab(Lab.ofReflectance(0.18), grey, 1e-4);
        assertLab(grey, labs(read("X (0-1),Y (0-1),Z (0-1)\n0.1735732224,0.18,0.148518828\n")).get(0), 1e-9);
        assertTrue(words("X,Y,Z\n0.17,0.18,0.15\n")
                .startsWith("in line 1: no figure under “Y” exceeds 1, so that they may run from 0 to 1 or"));
        assertEquals(
                "in line 2: “Z” is 140; X, Y and Z run from 0 to about 100", words("X,Y,Z\n20,20,140\n"));
        assertEquals(
                "in line 2: X, Y and Z are no colour of a surface; Y of a perfect white is 100",
                words("X,Y,Z\n100,125,100\n"));
        // Chromaticities are no XYZ.
        assertEquals(
                "in line 1: “x” and “y” and “Y” are there, but no column for Z; export all three",
                words("x,y,Y\n0.34,0.35,18\n"));
        assertEquals(List.of(Kind.XYZ), kinds(read("x,y,X,Y,Z\n0.34,0.35,17,18,15\n")));
    }

    @Test
    void aSpectrumIsKnownByItsWavelengths() {
        for (String names : List.of(
                "%d", "%dnm", "%d nm", "R %dnm", "R%d", "R[%d]", "nm%d", "Reflectance %d nm", "%d.0")) {
            assertLab(Lab.ofReflectance(0.18), labs(read(spectrum(names, "0.18"))).get(0), 1e-9);
        }
    }

    @Test
    void aSpectrumIsInPerCentIfAnyFigureOfTheTableExceedsTwo() {
        String percent = spectrum("%d nm", "18");
        assertLab(Lab.ofReflectance(0.18), labs(read(percent)).get(0), 1e-9);
        String black = spectrum("%d nm", "1.5").split("\n")[1];
        assertLab(Lab.ofReflectance(0.015), labs(read(percent + black)).get(1), 1e-9);
        assertLab(Lab.ofReflectance(0.015), labs(read(spectrum("%d nm (%)", "1.5"))).get(0), 1e-9);
        assertLab(Lab.ofReflectance(0.015), labs(read(spectrum("R% %dnm", "1.5"))).get(0), 1e-9);
        assertEquals(
                "in line 2: the spectrum reflects more than a perfect white; if it is in per cent, say so in the names "
                        + "of its columns, as in “400 nm (%)”",
                words(spectrum("%d nm", "1.5")));
        assertEquals(
                "in line 2: “400 nm” is 250; of the light that falls on it, a surface reflects 0 to 100",
                words(spectrum("%d nm", "250")));
    }

    @Test
    void wavelengthsMayStandInAnyOrderButHaveToCoverTheSpectrum() {
        String backwards = IntStream.rangeClosed(0, 30).mapToObj(i -> String.valueOf(700 - 10 * i))
                .collect(Collectors.joining(","));
        String ramp = IntStream.rangeClosed(0, 30).mapToObj(i -> String.valueOf(0.1 + 0.02 * (30 - i)))
                .collect(Collectors.joining(","));
        Lab lab = labs(read(backwards + "\n" + ramp + "\n")).get(0);
        assertTrue(lab.a() > 0 && lab.b() > 0, "more long waves than short ones: " + lab);
        assertEquals(
                "in line 1: the spectrum is at 2 wavelengths from 450 to 550 nm; it has to begin by 420, to end from "
                        + "680, and to leave no gap wider than 20",
                words("Name,450,550\nx,0.1,0.2\n"));
    }

    @Test
    void labOutsideItsRangeIsTold() {
        assertEquals("in line 2: “L*” is 136.2; lightness runs from 0 to 100", words("L*,a*,b*\n136.2,2,3\n"));
        assertEquals("in line 2: “L*” is -0.6; lightness runs from 0 to 100", words("L*,a*,b*\n-0.6,2,3\n"));
        assertEquals("in line 2: “b*” is 201; no colour lies beyond -200 or 200", words("L*,a*,b*\n36,2,201\n"));
        assertEquals("in line 2: “a*” is -230; no colour lies beyond -200 or 200", words("L*,a*,b*\n36,-230,1\n"));
        // A hair outside is noise, or a white that glows.
        assertEquals(
                List.of(new Lab(0, 0.1, 0.1), new Lab(100, 1, -3)),
                labs(read("L*,a*,b*\n−0.4,0.1,0.1\n104,1,−3\n")));
    }

    @Test
    void whatIsMissingOrTooMuchIsTold() {
        assertEquals(
                "in line 1: “L*” and “a*” are there, but no column for b; export all three",
                words("Name,L*,a*\nx,36,2\n"));
        assertEquals("in line 3: the line has 2 values, but there are 3 columns", words("L*;a*;b*\n1;2;3\n1;2\n"));
        assertEquals("in line 2: the line has 4 values, but there are 3 columns", words("L*;a*;b*\n1;2;3;4\n"));
        assertEquals(
                "in line 2: nothing stands under “a*”; write a number, or leave the line out",
                words("L*;a*;b*\n1;;3\n"));
        assertEquals("in line 2: columns are named, but no reading follows", words("Title\nL*,a*,b*\n\n"));
        assertEquals(
                "in line 2: a quote opens and does not close, or something follows it",
                words("Name,L*,a*,b*\n\"one,1,2,3\n"));
        assertTrue(words("A letter to a friend\nof two lines\n").contains("no columns of colour among"));
    }

    @Test
    void anEmptyFileAPictureAndALogOfAMachineAreTold() {
        assertEquals("is empty; export the readings again", words(""));
        assertEquals("is empty; export the readings again", words("\uFEFF \r\n\t\n"));
        assertEquals("is no plain text; export the readings as CGATS or CSV, in UTF-8", words("\u0089PNG\0\0"));
        String log = "L*,a*,b*\n" + "1,2,3\n".repeat(10_000);
        assertEquals(10_000, read(log).readings().size());
        assertEquals("has more than 10000 readings; export fewer", words(log + "1,2,3\n"));
    }

    @Test
    void aTableIsNeverOfNoReadings() {
        assertThrows(IllegalArgumentException.class, () -> new ReadingTable(List.of()));
    }

    /** The words of a table are broken by nothing: whatever a file holds, it is read or told. */
    @Test
    void whateverIsCutOutOfATableItIsReadOrTold() {
        String table = "Title;\"x\"\nName;L*;a*;b*;400 nm\none;36,2;23.9;22.1;0.5\n\"two\";36.2;23.9;22.1;0.5\n";
        List<Integer> told = new ArrayList<>();
        for (int from = 0; from < table.length(); from++) {
            for (int to = from + 1; to <= table.length(); to++) {
                try {
                    ReadingTable.read(table.substring(0, from) + table.substring(to));
                } catch (UnreadableTable unreadable) {
                    told.add(from);
                }
            }
        }
        assertTrue(told.size() > 1000, "only " + told.size());
    }

    private static String spectrum(String names, String factor) {
        String columns = IntStream.rangeClosed(0, 30)
                .mapToObj(i -> names.replace("%d", String.valueOf(400 + 10 * i)))
                .collect(Collectors.joining(","));
        return columns + "\n" + String.join(",", Collections.nCopies(31, factor)) + "\n";
    }

    /** Two libraries' Lab of 62 colours; sources in the file. */
    private static List<String> checkValues() throws IOException {
        try (InputStream stream = Lab.class.getResourceAsStream("lab-srgb.csv")) {
            String text = new String(Objects.requireNonNull(stream).readAllBytes(), StandardCharsets.UTF_8);
            return text.lines().filter(line -> line.contains(",#")).toList();
        }
    }

    @Test
    void aColumnThatNamesAnotherLightIsNotPassedOver() {
        assertEquals(List.of(BRICK), labs(read("id;illuminant;L*;a*;b*\n1;D50;36,2;23,9;22,1\n")));
        assertEquals(List.of(BRICK), labs(read("Light/Observer,L,a,b\nD50/2,36.2,23.9,22.1\n")));
        for (String light : List.of("D65", "F11/10", "D50/10°")) {
            UnreadableTable refused = assertThrows(UnreadableTable.class,
                    () -> ReadingTable.read("id;Light/Observer;L*;a*;b*\n1;" + light + ";36,2;23,9;22,1\n"));
            assertTrue(refused.words().contains("in line 2: “" + light + "” stands under “Light/Observer”"),
                    refused.words());
        }
    }

    /** What no table has must not be looked at for minutes either. */
    @Test
    void aLineOfDashesIsReadAtOnce() {
        assertTimeoutPreemptively(Duration.ofSeconds(10), () -> assertThrows(UnreadableTable.class,
                () -> ReadingTable.read("-".repeat(50_000) + "\n" + "_".repeat(50_000) + "\n")));
    }

    @Test
    void aWavelengthNamedTwiceIsTold() {
        StringBuilder names = new StringBuilder("0590");
        StringBuilder factors = new StringBuilder(".18");
        for (int wavelength = 400; wavelength <= 700; wavelength += 10) {
            names.append(',').append(wavelength);
            factors.append(",.18");
        }
        assertThrows(UnreadableTable.class, () -> ReadingTable.read(names + "\n" + factors + "\n"));
    }
}
