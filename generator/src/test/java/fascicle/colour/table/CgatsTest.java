package fascicle.colour.table;

import static fascicle.colour.table.Tables.assertLab;
import static fascicle.colour.table.Tables.kinds;
import static fascicle.colour.table.Tables.labs;
import static fascicle.colour.table.Tables.read;
import static fascicle.colour.table.Tables.words;
import static org.junit.jupiter.api.Assertions.assertEquals;

import fascicle.colour.Lab;
import fascicle.colour.table.ReadingTable.Kind;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The form of CGATS.17 (ISO 28178): keywords, names of columns, readings. */
class CgatsTest {

    private static final String BRICK = """
            CGATS.17
            ORIGINATOR "a meter's program"
            # three bundles on one day
            KEYWORD "BUNDLE"
            WEIGHTING_FUNCTION "ILLUMINANT, D50"
            WEIGHTING_FUNCTION "OBSERVER, 2 degree"
            NUMBER_OF_FIELDS 5
            BEGIN_DATA_FORMAT
            SAMPLE_ID SAMPLE_NAME
            LAB_L LAB_A LAB_B
            END_DATA_FORMAT
            NUMBER_OF_SETS 3
            BEGIN_DATA
            1 "brick, upper third" 36.2 23.9 22.1
            2 "brick, \"\"tips\"\"\"    38.5 22.4 23.0 # a dry one
            3 plain 37.1 24.2 -1.5e0
            END_DATA
            """;

    @Test
    void readingsAreTakenInTheirOrderWithTheirLines() {
        ReadingTable table = read(BRICK);
        assertEquals(
                List.of(new Lab(36.2, 23.9, 22.1), new Lab(38.5, 22.4, 23), new Lab(37.1, 24.2, -1.5)), labs(table));
        assertEquals(List.of(14, 15, 16), table.readings().stream().map(ReadingTable.Read::line).toList());
        assertEquals(List.of(Kind.LAB, Kind.LAB, Kind.LAB), kinds(table));
    }

    @Test
    void lineEndsTabsAndAMarkAtTheBeginningChangeNothing() {
        assertEquals(read(BRICK), read(BRICK.replace("\n", "\r\n")));
        assertEquals(read(BRICK), read(BRICK.replace("\n", "\r")));
        assertEquals(read(BRICK), read("\uFEFF" + BRICK));
        assertEquals(read(BRICK), read(BRICK.replace("LAB_L LAB_A LAB_B", "LAB_L\tLAB_A\t\tLAB_B")));
        assertEquals(read(BRICK), read(BRICK.replace("CGATS.17", "MYFORM 2").replace("# three", "#three")));
    }

    @Test
    void countsMayBeMissingAndColumnsStandInOneLine() {
        String bare = """
                TABLE
                BEGIN_DATA_FORMAT LAB_B LAB_L LAB_A END_DATA_FORMAT
                BEGIN_DATA
                22.1 36.2 23.9
                END_DATA
                """;
        assertEquals(List.of(new Lab(36.2, 23.9, 22.1)), labs(read(bare)));
    }

    @Test
    void allTablesOfAFileThatHoldColoursAreTaken() {
        String notes = """
                BEGIN_DATA_FORMAT
                STEP DENSITY
                END_DATA_FORMAT
                BEGIN_DATA
                1 0.4
                END_DATA
                """;
        String further = """
                BEGIN_DATA
                4 again 30 20 10
                END_DATA
                """;
        assertEquals(List.of(14, 15, 16, 19), read(notes + BRICK.substring(9) + further).readings().stream()
                .map(read -> read.line() - 5).toList());
    }

    @Test
    void labUnderD65IsAdaptedHoweverTheTableSaysIt() {
        Lab adapted = Lab.ofD65(36.2, 23.9, 22.1);
        String d50 = "WEIGHTING_FUNCTION \"ILLUMINANT, D50\"";
        for (String said : List.of(
                "WEIGHTING_FUNCTION \"ILLUMINANT, D65\"",
                "ILLUMINATION \"D65\"",
                "ILLUMINANT D65",
                "ILLUMINATION_NAME \"d65\"",
                "MEASUREMENT_SOURCE \"Illumination=D65 ObserverAngle=2 Filter=No\"")) {
            assertEquals(adapted, labs(read(BRICK.replace(d50, said))).get(0), said);
        }
        // A lamp's angle is no illuminant.
        String ring = "NOTE \"illumination a ring at 45\"";
        assertEquals(new Lab(36.2, 23.9, 22.1), labs(read(BRICK.replace(d50, ring))).get(0));
    }

    @Test
    void whatWasSaidOfTheLightHoldsForTheNextTable() {
        String d65 = BRICK.replace("ILLUMINANT, D50", "ILLUMINANT, D65");
        List<Lab> labs = labs(read(d65 + "BEGIN_DATA\n4 x 36.2 23.9 22.1\nEND_DATA\n"));
        assertEquals(labs.get(0), labs.get(3));
    }

    @Test
    void anotherLightOrObserverIsToldAndNotTakenForD50() {
        assertEquals(
                "in line 8: the colours are under D50 and the 10° observer; export them under D50 and the 2° observer,"
                        + " or export the spectrum",
                words(BRICK.replace("OBSERVER, 2 degree", "OBSERVER, 10 degree")));
        assertEquals(
                "in line 8: the colours are under A and the 2° observer; export them under D50 and the 2° observer, or"
                        + " export the spectrum",
                words(BRICK.replace("ILLUMINANT, D50", "ILLUMINANT, A")));
        assertEquals(
                "in line 8: the colours are under D65 and the 10° observer; export them under D50 and the 2° observer,"
                        + " or export the spectrum",
                words(BRICK.replace("WEIGHTING_FUNCTION \"OBSERVER, 2 degree\"", "OBSERVER 10")
                        .replace("ILLUMINANT, D50", "ILLUMINANT, D65")));
    }

    @Test
    void aSpectrumIsReckonedHereWhateverTheMetersObserver() {
        for (String names : List.of("SPECTRAL_NM%d", "SPECTRAL_%d", "SPEC_%d", "NM_%d", "nm%d", "SPECTRAL_NM_%d")) {
            String table = spectrum(names, 0.18);
            assertLab(Lab.ofReflectance(0.18), labs(read(table)).get(0), 1e-9);
            assertEquals(List.of(Kind.SPECTRAL), kinds(read(table)));
        }
    }

    @Test
    void labComesBeforeASpectrumAndThatBeforeXyzAndThatBeforeTheScreen() {
        String all = """
                CGATS.17
                BEGIN_DATA_FORMAT
                RGB_R RGB_G RGB_B XYZ_X XYZ_Y XYZ_Z LAB_L LAB_A LAB_B
                END_DATA_FORMAT
                BEGIN_DATA
                127 70 50 20 18 10 36.2 23.9 22.1
                END_DATA
                """;
        assertEquals(List.of(Kind.LAB), kinds(read(all)));
        assertEquals(List.of(Kind.XYZ), kinds(read(all.replace("LAB_", "OLD_"))));
        assertEquals(List.of(Kind.SCREEN), kinds(read(all.replace("LAB_", "OLD_").replace("XYZ_", "NEW_"))));
        assertEquals(
                List.of(Kind.SCREEN),
                kinds(read(all.replace("LAB_", "OLD_").replace("XYZ_", "NEW_").replace("RGB_", "SRGB_"))));
    }

    @Test
    void theWhiteOfXyzIsThatOfItsLight() {
        String xyz = """
                CGATS.17
                ILLUMINATION "%s"
                BEGIN_DATA_FORMAT
                XYZ_X XYZ_Y XYZ_Z
                END_DATA_FORMAT
                BEGIN_DATA
                %s
                END_DATA
                """;
        // Whites from the chromaticities of D50 and D65 (CSS Color 4).
        assertLab(new Lab(100, 0, 0), labs(read(xyz.formatted("D50", "96.429568 100 82.510460"))).get(0), 1e-5);
        assertLab(new Lab(100, 0, 0), labs(read(xyz.formatted("D65", "95.045593 100 108.905775"))).get(0), 1e-5);
    }

    @Test
    void missingColumnsAreNamed() {
        assertEquals(
                "in line 8: “LAB_L” and “LAB_A” are there, but no column for b; export all three",
                words(BRICK.replace("LAB_B", "LAB_X")));
        assertEquals(
                "in line 8: no columns of colour among “SAMPLE_ID”, “SAMPLE_NAME”, “D_RED”, “D_GREEN”, “D_BLUE”; "
                        + "expected are L*, a* and b* (or LAB_L, LAB_A and LAB_B), a spectrum from 400 to 700 nm, "
                        + "X, Y and Z, a hex code, or R, G and B of sRGB",
                words(BRICK.replace("LAB_L LAB_A LAB_B", "D_RED D_GREEN D_BLUE")));
        assertEquals(
                "in line 8: two columns tell the same, “LAB_A” and “LAB_A”; leave in the one that counts",
                words(BRICK.replace("SAMPLE_ID", "LAB_A").replace("NUMBER_OF_FIELDS 5\n", "X 5\n")));
    }

    @Test
    void linesWithTooFewOrTooManyValuesAreTold() {
        assertEquals(
                "in line 16: the line has 4 values, but there are 5 columns; a name with blanks has to stand in quotes",
                words(BRICK.replace("3 plain 37.1", "3 37.1")));
        assertEquals(
                "in line 16: the line has 6 values, but there are 5 columns; a name with blanks has to stand in quotes",
                words(BRICK.replace("3 plain 37.1", "3 plain one 37.1")));
    }

    @Test
    void countsThatDoNotAgreeAreTold() {
        assertEquals(
                "in line 12: NUMBER_OF_SETS is 4, but the readings are 3; the file may be cut short, export it again",
                words(BRICK.replace("NUMBER_OF_SETS 3", "NUMBER_OF_SETS 4")));
        assertEquals(
                "in line 7: NUMBER_OF_FIELDS is 4, but 5 columns are named; export the table again",
                words(BRICK.replace("NUMBER_OF_FIELDS 5", "NUMBER_OF_FIELDS 4")));
        assertEquals(
                "in line 12: NUMBER_OF_SETS “three” is not a whole number",
                words(BRICK.replace("NUMBER_OF_SETS 3", "NUMBER_OF_SETS three")));
    }

    @Test
    void anEndThatIsMissingIsTold() {
        assertEquals(
                "in line 13: BEGIN_DATA has no END_DATA; the file may be cut short, export it again",
                words(BRICK.replace("END_DATA\n", "")));
        assertEquals(
                "in line 8: BEGIN_DATA_FORMAT has no END_DATA_FORMAT; the file may be cut short, export it again",
                words(BRICK.substring(0, BRICK.indexOf("END_DATA_FORMAT"))));
        assertEquals("has no BEGIN_DATA; the file may be cut short, export it again", words("CGATS.17\nNOTE x\n"));
        assertEquals(
                "in line 2: the readings begin, but no BEGIN_DATA_FORMAT … END_DATA_FORMAT before them names their "
                        + "columns; export the table again",
                words("CGATS.17\nBEGIN_DATA\n1 2 3\nEND_DATA\n"));
        assertEquals(
                "in line 14: a quote opens and does not close", words(BRICK.replace("upper third\"", "upper third")));
    }

    @Test
    void whatIsNoNumberIsTold() {
        assertEquals(
                "in line 14: “36,2” has a decimal comma; write 36.2 with a point",
                words(BRICK.replace("36.2", "36,2")));
        assertEquals(
                "in line 14: “n/a” under “LAB_L” is not a number", words(BRICK.replace("36.2", "n/a")));
        for (String javas : List.of("NaN", "Infinity", "0x1p3", "1d", "36.2f", "1.2.3", "1e999", "٣")) {
            assertEquals(
                    "in line 14: “" + javas + "” under “LAB_L” is not a number", words(BRICK.replace("36.2", javas)));
        }
        assertEquals(
                "in line 14: nothing stands under “LAB_L”; write a number, or leave the line out",
                words(BRICK.replace("36.2", "\"\"")));
    }

    @Test
    void aTableWithoutReadingsIsTold() {
        String empty = BRICK.substring(0, BRICK.indexOf("NUMBER_OF_SETS")) + "BEGIN_DATA\nEND_DATA\n";
        assertEquals("in line 8: columns are named, but no reading follows", words(empty));
    }

    private static String spectrum(String names, double factor) {
        StringBuilder columns = new StringBuilder();
        StringBuilder values = new StringBuilder();
        for (int wavelength = 380; wavelength <= 730; wavelength += 10) {
            columns.append(names.replace("%d", String.valueOf(wavelength))).append(' ');
            values.append(factor).append('\t');
        }
        return "CGATS.17\nILLUMINATION \"A\"\nOBSERVER \"10\"\nBEGIN_DATA_FORMAT\n" + columns
                + "\nEND_DATA_FORMAT\nBEGIN_DATA\n" + values + "\nEND_DATA\n";
    }
}
