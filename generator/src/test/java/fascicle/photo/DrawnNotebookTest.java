package fascicle.photo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.colour.ColourDifference;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The photographs of the demonstration notebook show what they were drawn to show. */
class DrawnNotebookTest {

    private static final Path NOTEBOOK = Path.of("../content");

    @Test
    void needlesReadAsTheyWereDrawn() throws Exception {
        for (DemonstrationPhotographs.Shot shot : DemonstrationPhotographs.shots()) {
            if (shot.beside() == DemonstrationPhotographs.Beside.NOTHING) {
                continue;
            }
            for (DemonstrationPhotographs.Laid laid : shot.laid()) {
                Sample sample = Darkroom.withoutCache().sample(NOTEBOOK.resolve(shot.file()), laid.read(), card(shot));
                double miss = ColourDifference.ciede2000(laid.colour(), sample.lab());
                assertTrue(miss < 3, () -> shot.file() + " " + laid.colour() + " " + sample + " " + miss);
                assertEquals(List.of(), sample.cautions(), shot.file());
            }
        }
    }

    @Test
    void theyWeighLittleAndOneTellsAPlaceThatIsNotToBePublished() throws Exception {
        int telling = 0;
        for (DemonstrationPhotographs.Shot shot : DemonstrationPhotographs.shots()) {
            byte[] file = Files.readAllBytes(NOTEBOOK.resolve(shot.file()));
            assertTrue(file.length < 250_000, shot.file());
            telling += PhotographFilesTest.indexOf(file, "Exif".getBytes(StandardCharsets.US_ASCII)) >= 0 ? 1 : 0;
        }
        assertEquals(1, telling);
    }

    private static List<Patch> card(DemonstrationPhotographs.Shot shot) {
        if (shot.beside() == DemonstrationPhotographs.Beside.GREY_CARD) {
            return List.of(Patch.grey(Scene.within(Card.grey(shot.card())), 18));
        }
        List<Area> places = Scene.patches(Card.within(shot.card()), 24);
        List<Patch> card = new ArrayList<>();
        for (int i = 0; i < 24; i++) {
            card.add(new Patch(Scene.within(places.get(i)), Spectrum.chart().get(i).lab()));
        }
        return card;
    }
}
