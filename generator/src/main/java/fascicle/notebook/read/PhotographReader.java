package fascicle.notebook.read;

import fascicle.colour.Lab;
import fascicle.notebook.Noted;
import fascicle.notebook.Reading;
import fascicle.photo.Area;
import fascicle.photo.Patch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads what an entry says of a photograph: its file, where the needles lie, what of known colour lies beside them. */
final class PhotographReader {

    /** The grey card of photographers, in per cent of reflectance. */
    private static final double GREY_CARD = 18;

    private static final Scalar<Double> REFLECTANCE = (text, kitchen) -> {
        double percent = Scalar.number(0, 100).read(
                text.endsWith("%") ? text.substring(0, text.length() - 1).strip() : text, kitchen);
        if (percent < 1) {
            throw new Unreadable("“" + text + "” is too dark for a card; its reflectance is in per cent, so that a "
                    + "grey card of photographers is 18");
        }
        return percent;
    };

    private PhotographReader() {}

    /** Reads a photograph. */
    static Optional<Reading.Photograph> photograph(Fields map) {
        if (map.has("photo") && !map.isMap("photo")) {
            map.node("photo").ifPresent(node -> map.findings().error(node.place(), "“photo” has " + node.described()
                    + "; write photo: {file: brick.jpg}, with needles: […] and card: {…} to read its colour"));
            return Optional.empty();
        }
        return map.map("photo").flatMap(photo -> {
            Optional<Noted<String>> file = photo.text("file");
            Optional<Reading.Card> card = card(photo);
            // A card that is there and cannot be read is no reading without a card.
            Optional<Area> needles = area(photo, "needles").filter(unused -> card.isPresent() || !photo.has("card"));
            if (!photo.has("file")) {
                photo.findings().error(photo.place(), "“photo” does not name its picture; add “file: brick.jpg”");
            } else if (photo.has("card") && !photo.has("needles")) {
                photo.findings().warning(photo.place(), "“photo” says where the card lies and not where the needles "
                        + "do, so its picture is shown and no colour is read off it; add “needles: [12, 20, 30, 25]”: "
                        + "left edge, upper edge, width and height in per cent");
            }
            photo.done();
            return file.map(found -> new Reading.Photograph(found, needles, card, Optional.empty()));
        });
    }

    /** One patch, a list of patches, or a chart with its table. */
    private static Optional<Reading.Card> card(Fields photo) {
        if (photo.isListOfTexts("card")) {
            photo.node("card").ifPresent(node -> photo.findings().error(node.place(), "“card” has only numbers; write "
                    + "card: {at: [77.5, 75, 10, 13], grey: 18}"));
            return Optional.empty();
        }
        List<Fields> maps = photo.maps("card");
        if (maps.size() == 1 && maps.get(0).has("file")) {
            return chart(maps.get(0));
        }
        List<Patch> patches = new ArrayList<>();
        for (Fields map : maps) {
            patch(map).ifPresent(patches::add);
            map.done();
        }
        return patches.isEmpty() ? Optional.empty() : Optional.of(new Reading.Card.Patches(List.copyOf(patches)));
    }

    private static Optional<Reading.Card> chart(Fields map) {
        Optional<Area> at = wantedArea(map);
        Optional<Noted<Integer>> columns = map.read("columns", Scalar.whole(1, 100));
        Optional<Noted<String>> file = map.text("file");
        if (!map.has("columns")) {
            map.findings().error(map.place(), "the chart does not say how many patches stand in a row; add "
                    + "“columns: 6”");
        }
        map.done();
        return at.flatMap(area -> columns.flatMap(count -> file.map(table ->
                new Reading.Card.Chart(area, count.value(), table))));
    }

    private static Optional<Patch> patch(Fields map) {
        Optional<Area> at = wantedArea(map);
        Optional<Noted<Double>> grey = map.read("grey", REFLECTANCE);
        Optional<Lab> lab = ColourReader.lab(map);
        if (grey.isPresent() && lab.isPresent()) {
            map.findings().error(map.place(), "a patch has its colour twice, as “grey” and as “lab”; keep one of the "
                    + "two");
        }
        return at.map(area -> lab.map(known -> new Patch(area, known)).orElseGet(() ->
                Patch.grey(area, grey.map(Noted::value).orElse(GREY_CARD))));
    }

    private static Optional<Area> wantedArea(Fields map) {
        if (!map.has("at")) {
            map.findings().error(map.place(), "“card” does not say where it lies; add “at: [70, 10, 12, 12]”: left "
                    + "edge, upper edge, width and height in per cent");
        }
        return area(map, "at");
    }

    private static Optional<Area> area(Fields map, String key) {
        return map.node(key).flatMap(node -> ColourReader.numbers(map, key, node, 4, 0, 100)).flatMap(at -> {
            try {
                return Optional.of(new Area(at.get(0), at.get(1), at.get(2), at.get(3)));
            } catch (IllegalArgumentException outside) {
                map.findings().error(map.placeOf(key), "“" + key + "” does not lie in the picture; expected are left "
                        + "edge, upper edge, width and height in per cent, all within 100 (not the right and lower "
                        + "edge)");
                return Optional.empty();
            }
        });
    }
}
