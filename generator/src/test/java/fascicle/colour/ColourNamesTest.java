package fascicle.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.colour.CheckValues.Row;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class ColourNamesTest {

    private static final List<Row> STANDARD = CheckValues.rows("iscc-nbs.csv");

    @Test
    void theNamesAreTheStandards() {
        assertEquals(267, ColourNames.all().size());
        for (int i = 0; i < 267; i++) {
            Row row = STANDARD.get(i);
            ColourName name = ColourNames.all().get(i);
            assertEquals(i + 1, name.number());
            assertEquals(row.text("name"), name.name());
            assertEquals(row.text("abbr"), name.abbreviation());
            assertEquals(row.text("level1"), name.family());
        }
    }

    @Test
    void everyCentroidNamesItself() {
        for (ColourName name : ColourNames.all()) {
            assertEquals(name, ColourNames.nearest(name.centroid()));
        }
    }

    /** The published figures are under D65, the centroids here under D50: only adapted do they agree. */
    @Test
    void centroidsAreUnderD50() {
        for (int i = 0; i < 267; i++) {
            Row row = STANDARD.get(i);
            Lab published = Lab.ofD65(row.number("L65"), row.number("a65"), row.number("b65"));
            assertTrue(ColourDifference.cielab(published, ColourNames.all().get(i).centroid()) < 0.02, row::toString);
            assertEquals(i + 1, ColourNames.nearest(published).number());
        }
    }

    @Test
    void thirteenFamiliesStandInTheStandardsOrder() {
        TreeMap<Integer, String> families = new TreeMap<>();
        STANDARD.forEach(row -> families.put(Integer.parseInt(row.text("level1_no")), row.text("level1")));
        assertEquals(13, families.size());
        assertEquals(List.copyOf(families.values()), ColourNames.families());
    }

    @Test
    void namesKeepTheSpellingOfTheStandard() {
        assertTrue(ColourNames.families().contains("Gray"));
        for (ColourName name : ColourNames.all()) {
            assertFalse(name.name().toLowerCase(Locale.ROOT).contains("grey"), name.name());
        }
        assertEquals("Brownish gray", ColourNames.nearest(Rgb.read("#5b504f").orElseThrow().toLab()).name());
    }

    /** That list places its centroids some units away, the vivid ones further, yet each keeps its family. */
    @Test
    void anotherPublishedListOfCentroidsFallsInTheSameFamilies() {
        for (Row row : CheckValues.rows("maximum-contrast.csv")) {
            Lab lab = new Rgb((int) row.number("red"), (int) row.number("green"), (int) row.number("blue")).toLab();
            String family = ColourNames.all().get((int) row.number("number") - 1).family();
            assertEquals(family, ColourNames.nearest(lab).family(), row::toString);
        }
    }

    @Test
    void passingOverNamesUnmeasuredNeverChangesTheNearest() {
        Set<Integer> met = new HashSet<>();
        for (int lightness = 0; lightness <= 100; lightness += 10) {
            for (int a = -80; a <= 80; a += 16) {
                for (int b = -80; b <= 80; b += 16) {
                    Lab lab = new Lab(lightness, a, b);
                    ColourName nearest = ColourNames.all().stream()
                            .min(Comparator.comparingDouble(name -> ColourDifference.ciede2000(lab, name.centroid())))
                            .orElseThrow();
                    assertEquals(nearest, ColourNames.nearest(lab));
                    met.add(nearest.number());
                }
            }
        }
        assertTrue(met.size() > 100, "names met: " + met.size());
    }
}
