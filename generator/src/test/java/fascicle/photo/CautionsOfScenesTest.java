package fascicle.photo;

import static fascicle.photo.Caution.Kind.AREA_SMALL;
import static fascicle.photo.Caution.Kind.CARD_CLIPPED;
import static fascicle.photo.Caution.Kind.CARD_TINTED;
import static fascicle.photo.Caution.Kind.CHART_MISFIT;
import static fascicle.photo.Caution.Kind.NEEDLES_CLIPPED;
import static fascicle.photo.Caution.Kind.NO_CARD;
import static fascicle.photo.Caution.Kind.PICTURE_SMALL;
import static fascicle.photo.Caution.Kind.UNEVEN_LIGHT;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.colour.Lab;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Each thing that can be wrong with a picture is told, and nothing else is. */
class CautionsOfScenesTest {

    private static final Spectrum TAN = Spectrum.of("b08d57");
    private static final Spectrum PALE = Spectrum.of("efe6d0");

    /** A second card, below the first and to the left of it. */
    private static final Area OTHER_CARD = new Area(50, 74, 20, 22);

    @TempDir
    private Path folder;

    private static Scene daylight() {
        return Scene.before(Camera.in(Illuminant.D65), 5);
    }

    @Test
    void aGoodPictureHasNone() {
        assertEquals(List.of(), grey(daylight().needles(TAN).card(18)));
        assertEquals(List.of(), grey(daylight().light(0.03, 0.03).needles(TAN).card(18)));
        assertEquals(List.of(), grey(Scene.before(Camera.in(Illuminant.D50).balanced(0), 5).needles(TAN).card(18)),
                "a camera that leaves daylight yellow is no tinted card");
    }

    @Test
    void withoutACardItIsByEye() {
        Sample sample = new Album(folder).read(taken(daylight().needles(TAN)), Scene.INSIDE, List.of());
        assertEquals(Sample.Against.NOTHING, sample.against());
        assertEquals(List.of(NO_CARD), Album.kinds(sample));
        assertTrue(sample.leftOver().isEmpty());
    }

    @Test
    void aWhiteCardBeyondTheCamera() {
        Scene scene = Scene.before(Camera.in(Illuminant.D65).exposed(1.3), 5).needles(Spectrum.of("7b4f2c")).card(90);
        assertEquals(List.of(CARD_CLIPPED), Album.kinds(new Album(folder).read(
                taken(scene), Scene.INSIDE, List.of(Patch.grey(Scene.within(Scene.CARD), 90)))));
    }

    @Test
    void needlesBeyondTheCamera() {
        assertEquals(List.of(NEEDLES_CLIPPED),
                grey(Scene.before(Camera.in(Illuminant.D65).exposed(1.6), 5).needles(PALE).card(18)));
    }

    /** A few specks of gloss are what the outer tenths are left out for. */
    @Test
    void specksOfGlossAreNotNeedlesBeyondTheCamera() {
        assertEquals(List.of(), grey(daylight().needles(Scene.NEEDLES, TAN, 0.8).card(18)));
    }

    @Test
    void aBrownSheetIsNoGreyCard() {
        Spectrum sheet = Spectrum.of("7b4f2c").deeper(0.8);
        assertEquals(List.of(CARD_TINTED), grey(daylight().needles(TAN).card(Scene.CARD, sheet)));
    }

    @Test
    void lightThatFallsOffBetweenTwoCards() {
        Scene uneven = daylight().light(0.5, -0.5);
        List<Patch> cards = List.of(
                Patch.grey(Scene.within(Scene.CARD), 18), Patch.grey(Scene.within(OTHER_CARD), 18));
        assertTrue(kinds(two(uneven), Scene.INSIDE, cards).contains(UNEVEN_LIGHT));
        assertEquals(List.of(), kinds(two(daylight()), Scene.INSIDE, cards), "two cards in one light");
    }

    @Test
    void lightThatFallsOffAcrossOneCard() {
        Area wide = new Area(50, 30, 46, 36);
        Scene uneven = daylight().light(1.2, 0).needles(Spectrum.of("7b4f2c")).card(wide, Spectrum.grey(18));
        assertEquals(List.of(UNEVEN_LIGHT),
                kinds(taken(uneven), Scene.INSIDE, List.of(Patch.grey(Scene.within(wide), 18))));
    }

    /** A third of the light more at one edge than at the other is little across a card, and much where the needles lie. */
    @Test
    void lightThatWillBeAnotherWhereTheNeedlesLie() {
        assertEquals(List.of(UNEVEN_LIGHT), grey(daylight().light(0.4, 0).needles(TAN).card(18)));
        assertEquals(List.of(), grey(daylight().light(0.1, 0.05).needles(TAN).card(18)));
    }

    @Test
    void anAreaOfAFewPixels() {
        byte[] picture = taken(daylight().needles(TAN).card(18));
        List<Patch> card = List.of(Patch.grey(Scene.within(Scene.CARD), 18));
        Album album = new Album(folder);
        assertEquals(List.of(AREA_SMALL), Album.kinds(album.read(picture, new Area(20, 40, 1, 1), card)));
        assertEquals(List.of(AREA_SMALL), Album.kinds(
                album.read(picture, Scene.INSIDE, List.of(Patch.grey(new Area(70, 45, 0.6, 0.6), 18)))));
    }

    /** At the outermost edge and over the whole picture there is something to read all the same. */
    @Test
    void areasAtTheEdgesAreRead() {
        byte[] picture = taken(daylight().needles(TAN).card(18));
        List<Patch> card = List.of(Patch.grey(Scene.within(Scene.CARD), 18));
        Album album = new Album(folder);
        assertTrue(Album.kinds(album.read(picture, new Area(99.99, 99.99, 0.01, 0.01), card)).contains(AREA_SMALL));
        assertTrue(album.read(picture, new Area(0, 0, 100, 100), card).pixels() > 0.75 * Scene.WIDTH * Scene.HEIGHT);
    }

    @Test
    void aSmallPictureStoredWithLoss() {
        Canvas small = new Scene(320, 240, Camera.in(Illuminant.D65), 5).needles(TAN).card(18).taken();
        Album album = new Album(folder);
        assertTrue(Album.kinds(album.againstGrey(Exposure.of(small).quality(0.6).jpeg())).contains(PICTURE_SMALL));
        assertFalse(Album.kinds(album.againstGrey(Exposure.of(small).png())).contains(PICTURE_SMALL), "no loss");
    }

    @Test
    void aChartLaidUpsideDown() {
        byte[] picture = taken(daylight().needles(TAN).chart(Album.CHART, Spectrum.chart()));
        List<Area> places = Scene.patches(Album.CHART, 24);
        List<Patch> turned = IntStream.range(0, 24).mapToObj(i -> new Patch(
                Scene.within(places.get(i)), Spectrum.chart().get(23 - i).lab())).toList();
        assertTrue(kinds(picture, Scene.INSIDE, turned).contains(CHART_MISFIT));
        assertEquals(List.of(), Album.kinds(new Album(folder).againstChart(picture)));
    }

    @Test
    void everyCautionIsASentenceWithoutItsStop() {
        Sample sample = new Album(folder).read(taken(daylight().needles(TAN)), Scene.INSIDE, List.of());
        for (Caution caution : sample.cautions()) {
            assertTrue(Character.isLetterOrDigit(caution.words().charAt(0)), caution.words());
            assertFalse(caution.words().endsWith("."), caution.words());
        }
    }

    /** Of one colour throughout there is no unlevelness; of two in bands there is, whatever the card. */
    @Test
    void unlevelnessIsSmallWhereTheNeedlesAreAlike() {
        Sample even = new Album(folder).againstGrey(taken(daylight().needles(TAN).card(18)));
        Sample uneven = new Album(folder).againstGrey(taken(
                daylight().needles(TAN).needles(new Area(5, 10, 20, 80), Spectrum.of("7b4f2c"), 0.25).card(18)));
        assertTrue(even.unlevelness() < 2, () -> "even " + even.unlevelness());
        assertTrue(uneven.unlevelness() > 2 * even.unlevelness() + 3, () -> "uneven " + uneven.unlevelness());
        assertTrue(even.pixels() > 0.75 * 0.3 * 0.6 * Scene.WIDTH * Scene.HEIGHT && even.pixels() < 0.85 * 0.3 * 0.6 * Scene.WIDTH * Scene.HEIGHT,
                () -> "a tenth is left out at both ends: " + even.pixels());
    }

    /** By a card the figure is less sure than by a chart, and by eye the least. */
    @Test
    void surenessFollowsWhatItWasReadAgainst() {
        Album album = new Album(folder);
        byte[] chart = taken(daylight().needles(TAN).chart(Album.CHART, Spectrum.chart()));
        Sample byChart = album.againstChart(chart);
        Sample byCard = album.againstGrey(taken(daylight().needles(TAN).card(18)));
        assertEquals(4, byChart.uncertainty());
        assertEquals(6, byCard.uncertainty());
        assertTrue(album.read(chart, Scene.INSIDE, List.of()).uncertainty() > 6);
    }

    /** The light is divided by the card's known reflectance: a card of another grey gives the same colour. */
    @Test
    void theGreyOfTheCardDoesNotMatter() {
        Lab by18 = new Album(folder).againstGrey(taken(daylight().needles(TAN).card(18))).lab();
        Lab by36 = new Album(folder).read(taken(daylight().needles(TAN).card(36)), Scene.INSIDE,
                List.of(Patch.grey(Scene.within(Scene.CARD), 36))).lab();
        assertEquals(by18.lightness(), by36.lightness(), 0.5);
        assertEquals(by18.a(), by36.a(), 0.5);
        assertEquals(by18.b(), by36.b(), 0.5);
    }

    private static byte[] two(Scene scene) {
        return taken(scene.needles(TAN).card(18).card(OTHER_CARD, Spectrum.grey(18)));
    }

    private List<Caution.Kind> grey(Scene scene) {
        return Album.kinds(new Album(folder).againstGrey(taken(scene)));
    }

    private List<Caution.Kind> kinds(byte[] picture, Area needles, List<Patch> card) {
        return Album.kinds(new Album(folder).read(picture, needles, card));
    }

    private static byte[] taken(Scene scene) {
        return Exposure.of(scene.taken()).jpeg();
    }
}
