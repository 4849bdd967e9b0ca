package fascicle.workings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.colour.ColourNames;
import fascicle.workings.grid.SampleString;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Colours are centroids of NBS Special Publication 440, by their numbers. */
class SampleStringTest {

    private final Workroom room = Workroom.usual();

    @Test
    void byHueItRunsFromRedToPurpleAndEndsInTheGreysFromDarkToLight() {
        hang("white-263", "#f2f3f4", "purple-216", "#9a4eae", "green-139", "#008856", "black-267", "#222222",
                "red-11", "#be0032", "grey-265", "#848482", "yellow-82", "#f3c300", "blue-176", "#00a1c2",
                "orange-48", "#f38400");
        assertEquals(List.of("red-11", "orange-48", "yellow-82", "green-139", "blue-176", "purple-216", "black-267",
                "grey-265", "white-263"), names(SampleString.HUE));
    }

    @Test
    void noBrownIsCutOffFromTheOthers() {
        ColourNames.all().forEach(name -> hang(name.number() + "-" + name.family().replace(' ', '-'),
                name.centroid().toRgb().hex()));
        List<String> hues = names(SampleString.HUE).stream().map(name -> name.substring(name.indexOf('-') + 1)).toList();
        int lastBrown = hues.lastIndexOf("Brown");
        assertTrue(lastBrown < hues.indexOf("Green") && lastBrown < hues.indexOf("Blue"), hues.toString());
    }

    @Test
    void byLightnessItRunsFromLightToDark() {
        hang("black-267", "#222222", "yellow-82", "#f3c300", "white-263", "#f2f3f4", "blue-179", "#00304e");
        assertEquals(List.of("white-263", "yellow-82", "blue-179", "black-267"), names(SampleString.LIGHTNESS));
    }

    @Test
    void byYearItRunsYearByYearAndByHueWithin() {
        room.entry("2026-01-01-red-11").hex("#be0032");
        room.entry("2025-12-31-blue-176").hex("#00a1c2");
        room.entry("2025-01-01-black-267").hex("#222222");
        room.entry("2025-06-01-red-11").hex("#be0032");
        assertEquals(List.of("2025-06-01-red-11", "2025-12-31-blue-176", "2025-01-01-black-267", "2026-01-01-red-11"),
                SampleString.YEAR.of(room.workings().entries()).stream().map(EntryWorking::id).toList());
    }

    @Test
    void whatHasNoColourHangsOnNoString() {
        room.entry("2026-05-01-a");
        room.entry("2026-05-01-b").wetLab(40, 10, 10);
        for (SampleString order : SampleString.values()) {
            assertTrue(order.of(room.workings().entries()).isEmpty());
        }
    }

    private void hang(String... namesAndColours) {
        for (int i = 0; i < namesAndColours.length; i += 2) {
            room.entry("2026-05-01-" + namesAndColours[i]).hex(namesAndColours[i + 1]);
        }
    }

    private List<String> names(SampleString order) {
        return order.of(room.workings().entries()).stream().map(entry -> entry.entry().name()).toList();
    }
}
