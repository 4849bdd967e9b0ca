package fascicle.notebook.read;

import fascicle.bath.Basis;
import fascicle.measure.Dimension;
import fascicle.measure.Quantity;
import fascicle.notebook.Bath;
import fascicle.notebook.HeatStep;
import fascicle.notebook.Needles;
import fascicle.notebook.Noted;
import fascicle.notebook.Part;
import fascicle.notebook.Place;
import fascicle.notebook.Recipe;
import fascicle.notebook.Span;
import fascicle.notebook.Water;
import fascicle.notebook.text.Node;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads what is done to the needles: the keys that entries and methods share. */
final class RecipeReader {

    private static final Scalar<Quantity> VOLUME = Scalar.quantity(Dimension.VOLUME);

    private RecipeReader() {}

    /** Reads a recipe's steps. */
    static Recipe recipe(Fields fields) {
        Optional<Fields> bath = fields.map("bath");
        return new Recipe(presoak(fields), treatments(fields, "before"), bath.map(RecipeReader::bath)
                .orElse(Bath.UNSAID), heat(fields), fields.read("cool", Scalar.SPAN), treatments(fields, "after"),
                fields.read("dry", Scalar.SPAN), fields.word("rinse", Recipe.Rinse.class), parts(fields, "finish"));
    }

    /** Reads what a recipe says of its needles. */
    static Needles needles(Fields fields) {
        return fields.map("needles").map(map -> {
            oneOf(map, "lot", "from");
            oneOf(map, "weight", "bundles");
            Needles needles = new Needles(map.text("lot"), map.text("from"),
                    map.read("weight", Scalar.quantity(Dimension.MASS)), map.read("bundles", Scalar.number(0, 100_000)),
                    map.word("sheaths", Needles.Sheaths.class), map.word("weighed", Needles.Weighed.class));
            map.done();
            return needles;
        }).orElse(Needles.UNSAID);
    }

    private static Optional<Recipe.Presoak> presoak(Fields fields) {
        return fields.map("presoak").map(map -> {
            Recipe.Presoak presoak = new Recipe.Presoak(map.read("water", VOLUME), parts(map, "with"),
                    map.read("for", Scalar.SPAN), fields.originOf("presoak"));
            map.done();
            return presoak;
        });
    }

    private static List<Recipe.Treatment> treatments(Fields fields, String key) {
        List<Recipe.Treatment> treatments = new ArrayList<>();
        for (Fields map : fields.maps(key)) {
            treatments.add(new Recipe.Treatment(map.word("as", Recipe.Purpose.class), map.read("water", VOLUME),
                    parts(map, "with"), heat(map), fields.originOf(key)));
            map.done();
        }
        return List.copyOf(treatments);
    }

    private static Bath bath(Fields map) {
        Bath bath = new Bath(map.text("vessel"), water(map), map.word("from", Bath.Source.class), parts(map, "dye"),
                parts(map, "assistants"), extract(map), map.text("reuses"), map.read("left", Scalar.PERCENT), ph(map));
        map.done();
        return bath;
    }

    private static Optional<Noted<Water>> water(Fields map) {
        oneOf(map, "water", "ratio", "depth");
        Optional<Noted<Water>> poured = map.read("water", VOLUME).map(noted -> noted.map(Water.Poured::new));
        Optional<Noted<Water>> ratio = map.read("ratio", Scalar.RATIO).map(noted -> noted.map(Water.ByRatio::new));
        Optional<Noted<Water>> depth = map.read("depth", Scalar.quantity(Dimension.LENGTH))
                .map(noted -> noted.map(Water.ByDepth::new));
        return poured.or(() -> ratio).or(() -> depth);
    }

    /** Says so where a map gives more than one of keys that are one choice. */
    private static void oneOf(Fields map, String... choice) {
        String first = null;
        for (String key : choice) {
            if (!map.has(key)) {
                continue;
            }
            if (first != null) {
                map.findings().error(map.placeOf(key), "“" + first + "” and “" + key + "” are one choice, and both "
                        + "stand here; keep one of the two");
            } else {
                first = key;
            }
        }
    }

    private static Optional<Bath.Extract> extract(Fields map) {
        return map.map("extract").map(extract -> {
            Bath.Extract read = new Bath.Extract(extract.read("of", Scalar.quantity(Dimension.MASS)),
                    extract.text("state"), extract.read("water", VOLUME), heat(extract));
            extract.done();
            return read;
        });
    }

    private static Optional<Bath.Ph> ph(Fields map) {
        Scalar<Double> scale = Scalar.number(0, 14);
        if (map.node("ph").filter(Node.Mapping.class::isInstance).isEmpty()) {
            return map.read("ph", scale).map(reads -> new Bath.Ph(reads, Optional.empty()));
        }
        return map.map("ph").flatMap(ph -> {
            Optional<Noted<Double>> reads = ph.read("reads", scale);
            Optional<Noted<Bath.PhTool>> with = ph.word("with", Bath.PhTool.class);
            ph.done();
            return reads.map(found -> new Bath.Ph(found, with));
        });
    }

    /** Reads a list of heating steps. */
    static List<HeatStep> heat(Fields fields) {
        List<HeatStep> steps = new ArrayList<>();
        Scalar<Quantity> temperature = Scalar.quantity(Dimension.TEMPERATURE);
        for (Fields map : fields.maps("heat")) {
            steps.add(new HeatStep(map.read("to", Scalar.HEAT_TO), map.read("from", temperature),
                    map.read("over", Scalar.SPAN), map.read("hold", Scalar.SPAN),
                    map.word("on", HeatStep.Source.class)));
            map.done();
        }
        return List.copyOf(steps);
    }

    /** Reads a list of things and how much of each. */
    static List<Part> parts(Fields fields, String key) {
        List<Part> parts = new ArrayList<>();
        for (Fields map : fields.maps(key)) {
            Optional<Noted<String>> is = map.text("is");
            Part part = new Part(is.orElseGet(() -> nameless(map.place())), map.read("amount", Scalar.AMOUNT),
                    map.word("by", Basis.class), at(map));
            if (is.isEmpty() && !map.has("is")) {
                map.findings().error(map.place(), "a part of “" + key + "” does not say what it is; begin it with "
                        + "“is:” and the name of a file in dyes/");
            }
            map.done();
            parts.add(part);
        }
        return List.copyOf(parts);
    }

    private static Optional<Noted<Span>> at(Fields map) {
        return map.read("at", Scalar.SPAN);
    }

    private static Noted<String> nameless(Place place) {
        return new Noted<>("", "", place, fascicle.notebook.Origin.OWN);
    }
}
