package fascicle.photo;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A folder of pictures that a test takes and has read. */
record Album(Path folder) {

    /** Where a chart is laid; it leaves the left half to the needles. */
    static final Area CHART = new Area(52, 15, 44, 60);

    Path keep(String name, byte[] content) {
        try {
            return Files.write(folder.resolve(name), content);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Reads the needles' area against the card of {@link Scene}, said to be of 18 per cent. */
    Sample againstGrey(byte[] picture) {
        return read(picture, Scene.INSIDE, List.of(Patch.grey(Scene.within(Scene.CARD), 18)));
    }

    /** Reads the needles' area against a chart that lies at {@link #CHART}. */
    Sample againstChart(byte[] picture) {
        List<Spectrum> known = Spectrum.chart();
        List<Area> places = Scene.patches(CHART, known.size());
        return read(picture, Scene.INSIDE, java.util.stream.IntStream.range(0, known.size())
                .mapToObj(i -> new Patch(Scene.within(places.get(i)), known.get(i).lab())).toList());
    }

    Sample read(byte[] picture, Area needles, List<Patch> card) {
        try {
            Path file = keep("picture" + (picture[0] == (byte) 0x89 ? ".png" : ".jpg"), picture);
            return Darkroom.withoutCache().sample(file, needles, card);
        } catch (IOException | UnreadablePhotograph e) {
            throw new AssertionError(e);
        }
    }

    static List<Caution.Kind> kinds(Sample sample) {
        return sample.cautions().stream().map(Caution::kind).toList();
    }
}
