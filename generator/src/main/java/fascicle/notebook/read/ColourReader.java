package fascicle.notebook.read;

import fascicle.colour.Lab;
import fascicle.measure.Dimension;
import fascicle.measure.Kitchen;
import fascicle.notebook.Glass;
import fascicle.notebook.Noted;
import fascicle.notebook.Reading;
import fascicle.notebook.WindowReading;
import fascicle.notebook.text.Node;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads colours: readings of needles, the bath in a glass, the half left in the light. */
final class ColourReader {

    private static final double GREY_CARD = 18;

    private ColourReader() {}

    private enum When { DRY, WET }

    private enum White { D50, D65 }

    /** Reads a list of readings. */
    static List<Reading> readings(Fields fields, String key) {
        List<Reading> readings = new ArrayList<>();
        for (Fields map : fields.maps(key)) {
            reading(map).ifPresent(readings::add);
            map.done();
        }
        return List.copyOf(readings);
    }

    /** Reads a single reading. */
    static Optional<Reading> single(Fields fields, String key) {
        return fields.map(key).flatMap(map -> {
            Optional<Reading> reading = reading(map);
            map.done();
            return reading;
        });
    }

    /** Reads the bath in a glass. */
    static Optional<Glass> glass(Fields fields) {
        return fields.map("glass").map(map -> {
            Glass glass = new Glass(single(map, "plain"), single(map, "before"), single(map, "after"),
                    map.read("diluted", Scalar.number(1, 100_000)),
                    map.read("left", Scalar.quantity(Dimension.VOLUME)));
            map.done();
            return glass;
        });
    }

    /** Reads how a sample fades in the window. */
    static List<WindowReading> window(Fields fields) {
        List<WindowReading> window = new ArrayList<>();
        for (Fields map : fields.maps("window")) {
            var after = map.read("after", Scalar.quantity(Dimension.TIME));
            Optional<Reading> reading = reading(map);
            if (!map.has("after")) {
                map.findings().error(map.place(), "a reading of “window” does not say after how long; add "
                        + "“after: 6 weeks”");
            }
            map.done();
            if (after.isPresent() && reading.isPresent()) {
                window.add(new WindowReading(after.get(), reading.get()));
            }
        }
        return List.copyOf(window);
    }

    private static Optional<Reading> reading(Fields map) {
        boolean wet = map.word("when", When.class).map(Noted::value).filter(When.WET::equals).isPresent();
        List<Optional<? extends Reading.How>> ways = List.of(metered(map),
                map.read("hex", Scalar.HEX).map(noted -> new Reading.Screen(noted.value())), photograph(map),
                byEye(map));
        List<String> given = List.of("lab", "hex", "photo", "like").stream().filter(map::has).toList();
        if (given.size() != 1) {
            map.findings().error(map.place(), given.isEmpty()
                    ? "a reading says no colour; give it one of lab, hex, photo or like (a colour code stands in "
                            + "quotes, as in hex: \"#7f4632\", or YAML takes it for a comment)"
                    : "a reading says its colour in two ways (" + String.join(", ", given)
                            + "); make two readings of it");
            return Optional.empty();
        }
        return ways.stream().flatMap(Optional::stream).findFirst()
                .map(how -> new Reading(how, wet, map.place()));
    }

    private static Optional<Reading.Metered> metered(Fields map) {
        boolean d65 = map.word("white", White.class).map(Noted::value).filter(White.D65::equals).isPresent();
        return map.node("lab").flatMap(node -> numbers(map, "lab", node, 3, -200, 200)).flatMap(lab -> {
            if (lab.get(0) < 0 || lab.get(0) > 100) {
                map.findings().error(map.placeOf("lab"), "“lab” begins with the lightness " + written(lab.get(0))
                        + "; expected is one from 0 to 100, then a* and b*");
                return Optional.empty();
            }
            Lab colour = d65 ? Lab.ofD65(lab.get(0), lab.get(1), lab.get(2))
                    : new Lab(lab.get(0), lab.get(1), lab.get(2));
            return Optional.of(new Reading.Metered(colour, String.join(", ", lab.stream().map(ColourReader::written)
                    .toList()) + (d65 ? " (D65)" : "")));
        });
    }

    private static Optional<Reading.Photograph> photograph(Fields map) {
        return map.map("photo").flatMap(photo -> {
            Optional<Noted<String>> file = photo.text("file");
            Optional<Reading.Area> needles = area(photo, "needles");
            Optional<Reading.Card> card = photo.map("card").flatMap(fields -> {
                Optional<Reading.Area> at = area(fields, "at");
                double grey = fields.read("grey", Scalar.PERCENT).map(Noted::value).orElse(GREY_CARD);
                fields.done();
                return at.map(found -> new Reading.Card(found, grey));
            });
            if (!photo.has("file")) {
                photo.findings().error(photo.place(), "“photo” does not name its picture; add “file: brick.jpg”");
            }
            photo.done();
            return file.map(found -> new Reading.Photograph(found.value(), needles, card));
        });
    }

    private static Optional<Reading.ByEye> byEye(Fields map) {
        Optional<String> but = map.text("but").map(Noted::value);
        return map.text("like").map(tag -> new Reading.ByEye(tag, but));
    }

    private static Optional<Reading.Area> area(Fields map, String key) {
        return map.node(key).flatMap(node -> numbers(map, key, node, 4, 0, 100)).flatMap(at -> {
            if (at.get(2) <= 0 || at.get(3) <= 0 || at.get(0) + at.get(2) > 100 || at.get(1) + at.get(3) > 100) {
                map.findings().error(map.placeOf(key), "“" + key + "” does not lie in the picture; expected are left "
                        + "edge, upper edge, width and height in per cent, all within 100");
                return Optional.empty();
            }
            return Optional.of(new Reading.Area(at.get(0), at.get(1), at.get(2), at.get(3)));
        });
    }

    private static Optional<List<Double>> numbers(Fields map, String key, Node node, int count, double least,
            double most) {
        List<Double> numbers = new ArrayList<>();
        if (node instanceof Node.Sequence list && list.items().size() == count) {
            for (Node item : list.items()) {
                if (!(item instanceof Node.Text text)) {
                    map.wrong(key, item, "a number");
                    return Optional.empty();
                }
                try {
                    numbers.add(Scalar.number(least, most).read(text.value().strip(), Kitchen.METRIC));
                } catch (Unreadable unreadable) {
                    map.findings().error(text.place(), "“" + key + "”: " + unreadable.inWords());
                    return Optional.empty();
                }
            }
            return Optional.of(List.copyOf(numbers));
        }
        String found = node instanceof Node.Sequence list ? "a list of " + list.items().size() : node.described();
        map.findings().error(node.place(), "“" + key + "” has " + found + "; expected is a list of " + count
                + " numbers, as in [" + "36.2, 27.4, 20.1, 18.0".substring(0, count == 3 ? 16 : 22) + "]");
        return Optional.empty();
    }

    private static String written(double number) {
        return new java.math.BigDecimal(String.valueOf(number)).stripTrailingZeros().toPlainString();
    }
}
