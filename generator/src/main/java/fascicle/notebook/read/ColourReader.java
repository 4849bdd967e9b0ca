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
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads colours: readings of needles, the bath in a glass, the half left in the light. */
final class ColourReader {

    /** The keys that say a colour, each in its own way. */
    private static final List<String> WAYS = List.of("lab", "hex", "photo", "file", "like");

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
                    diluted(map),
                    map.read("left", Scalar.quantity(Dimension.VOLUME)));
            map.done();
            return glass;
        });
    }

    private static Glass.Diluted diluted(Fields glass) {
        Scalar<Double> times = Scalar.number(1, 100_000);
        if (!glass.isMap("diluted")) {
            Optional<Noted<Double>> both = glass.read("diluted", times);
            return new Glass.Diluted(both, both);
        }
        return glass.map("diluted").map(map -> {
            Glass.Diluted each = new Glass.Diluted(map.read("before", times), map.read("after", times));
            map.done();
            return each;
        }).orElse(Glass.Diluted.NOT);
    }

    /** Reads how a sample fades in the window. */
    static List<WindowReading> window(Fields fields) {
        List<WindowReading> window = new ArrayList<>();
        for (Fields map : fields.maps("window")) {
            var after = map.read("after", Scalar.quantity(Dimension.TIME));
            Optional<Reading> reading = reading(map);
            Optional<Noted<Integer>> wool = map.read("wool", Scalar.whole(1, 8));
            if (!map.has("after")) {
                map.findings().error(map.place(), "a reading of “window” does not say after how long; add "
                        + "“after: 6 weeks”");
            }
            map.done();
            if (after.isPresent() && reading.isPresent()) {
                window.add(new WindowReading(after.get(), reading.get(), wool));
            }
        }
        return List.copyOf(window);
    }

    private static Optional<Reading> reading(Fields map) {
        boolean wet = map.word("when", When.class).map(Noted::value).filter(When.WET::equals).isPresent();
        List<Optional<? extends Reading.How>> ways = List.of(metered(map),
                map.read("hex", Scalar.HEX).map(noted -> new Reading.Screen(noted.value())),
                PhotographReader.photograph(map),
                map.text("file").map(file -> new Reading.Table(file, Optional.empty())), byEye(map));
        List<String> given = WAYS.stream().filter(map::has).toList();
        if (given.size() != 1) {
            map.findings().error(map.place(), given.isEmpty()
                    ? "a reading says no colour; give it one of " + String.join(", ", WAYS) + " (a colour code stands "
                            + "in quotes, as in hex: \"#7f4632\", or YAML takes it for a comment)"
                    : "a reading says its colour in two ways (" + String.join(", ", given)
                            + "); make two readings of it");
            return Optional.empty();
        }
        return ways.stream().flatMap(Optional::stream).findFirst()
                .map(how -> new Reading(how, wet, map.place()));
    }

    private static Optional<Reading.Metered> metered(Fields map) {
        boolean d65 = map.word("white", White.class).map(Noted::value).filter(White.D65::equals).isPresent();
        return lab(map).map(lab -> new Reading.Metered(
                d65 ? Lab.ofD65(lab.lightness(), lab.a(), lab.b()) : lab,
                Stream.of(lab.lightness(), lab.a(), lab.b()).map(ColourReader::written)
                        .collect(Collectors.joining(", ")) + (d65 ? " (D65)" : "")));
    }

    /** The three figures of {@code lab:}, under whatever white. */
    static Optional<Lab> lab(Fields map) {
        return map.node("lab").flatMap(node -> numbers(map, "lab", node, 3, -200, 200)).flatMap(lab -> {
            if (lab.get(0) < 0 || lab.get(0) > 100) {
                map.findings().error(map.placeOf("lab"), "“lab” begins with the lightness " + written(lab.get(0))
                        + "; expected is one from 0 to 100, then a* and b*");
                return Optional.empty();
            }
            return Optional.of(new Lab(lab.get(0), lab.get(1), lab.get(2)));
        });
    }

    private static Optional<Reading.ByEye> byEye(Fields map) {
        Optional<String> but = map.text("but").map(Noted::value);
        return map.text("like").map(tag -> new Reading.ByEye(tag, but));
    }

    /** A list of so many numbers. */
    static Optional<List<Double>> numbers(Fields map, String key, Node node, int count, double least,
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
                + " numbers, as in " + (count == 3 ? "[36.2, 27.4, 20.1]" : "[12, 20, 30, 25]: left edge, upper edge, "
                + "width and height in per cent of the picture") + " (decimals take a point: 36.2)");
        return Optional.empty();
    }

    private static String written(double number) {
        return new java.math.BigDecimal(String.valueOf(number)).stripTrailingZeros().toPlainString();
    }
}
