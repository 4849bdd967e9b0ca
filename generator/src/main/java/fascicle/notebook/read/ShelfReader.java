package fascicle.notebook.read;

import fascicle.bath.Basin;
import fascicle.measure.Dimension;
import fascicle.measure.Quantity;
import fascicle.notebook.Dye;
import fascicle.notebook.Method;
import fascicle.notebook.NeedleLot;
import fascicle.notebook.Note;
import fascicle.notebook.Noted;
import fascicle.notebook.Vessel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads what entries refer to: needle lots, dyes, vessels, methods. */
final class ShelfReader {

    private static final Scalar<Quantity> MASS = Scalar.quantity(Dimension.MASS);
    private static final Scalar<Quantity> LENGTH = Scalar.quantity(Dimension.LENGTH);
    private static final double MOST = 1_000_000;
    private static final double LARGEST_VESSEL = 300;

    private ShelfReader() {}

    private enum Shape { ROUND, OVAL, RECTANGULAR }

    static NeedleLot lot(Fields fields, String id, List<Note> notes) {
        NeedleLot lot = new NeedleLot(id, fields.place(), fields.text("title"), EntryReader.share(fields),
                fields.text("species"), fields.text("condition"), fields.read("gathered", Scalar.DATE),
                fields.read("length", LENGTH), fields.read("weight", MASS), bundle(fields),
                ColourReader.readings(fields, "colour"), ColourReader.readings(fields, "blank"), notes);
        fields.done();
        return lot;
    }

    private static Optional<NeedleLot.Bundle> bundle(Fields fields) {
        return fields.map("bundle").flatMap(map -> {
            Optional<Noted<Quantity>> weight = map.read("weight", MASS);
            Optional<Noted<Double>> counted = map.read("counted", Scalar.number(0.01, MOST));
            if (!map.has("weight") || !map.has("counted")) {
                map.findings().error(map.place(), "“bundle” needs both a weight and how many were counted, as in "
                        + "{weight: 150 g, counted: 10}");
            }
            map.done();
            return weight.flatMap(grams -> counted.map(count -> new NeedleLot.Bundle(grams, count)));
        });
    }

    static Dye dye(Fields fields, String id, List<Note> notes) {
        Dye dye = new Dye(id, fields.place(), fields.text("title"), EntryReader.share(fields),
                fields.word("kind", Dye.Kind.class), fields.word("type", Dye.Type.class),
                fields.word("form", Dye.Form.class), fields.read("acidity", Scalar.PERCENT),
                fields.word("acid", Dye.Acid.class), fields.word("metal", Dye.Metal.class), levelTeaspoon(fields),
                fields.read("density", Scalar.DENSITY), pack(fields), bought(fields), LabelReader.label(fields),
                fields.list("cautions", Scalar.TEXT), notes);
        fields.done();
        return dye;
    }

    private static Optional<Dye.LevelTeaspoon> levelTeaspoon(Fields fields) {
        return fields.map("level-tsp").flatMap(map -> {
            Optional<Noted<Quantity>> weight = map.read("weight", Scalar.some(MASS, "is no weight of a teaspoon; weigh "
                    + "ten level ones and write a tenth of it, such as 3.1 g"));
            Optional<Noted<Double>> weighed = map.read("weighed", Scalar.number(1, MOST));
            if (!map.has("weight")) {
                map.findings().error(map.place(), "“level-tsp” lacks the weight of a level teaspoon; add "
                        + "“weight: 3.1 g”");
            }
            map.done();
            return weight.map(grams -> new Dye.LevelTeaspoon(grams, weighed));
        });
    }

    private static Optional<Dye.Pack> pack(Fields fields) {
        return fields.map("pack").map(map -> {
            Dye.Pack pack = new Dye.Pack(holds(map), map.read("price", Scalar.number(0, MOST)));
            map.done();
            return pack;
        });
    }

    private static Optional<Noted<Quantity>> holds(Fields map) {
        return map.read("holds", Scalar.some((text, kitchen) -> {
            try {
                return MASS.read(text, kitchen);
            } catch (Unreadable noMass) {
                try {
                    return Scalar.quantity(Dimension.VOLUME).read(text, kitchen);
                } catch (Unreadable noVolume) {
                    throw noMass;
                }
            }
        }, "is an empty pack; write what a full one holds, such as 50 g or 250 mL"));
    }

    private static List<Dye.Purchase> bought(Fields fields) {
        List<Dye.Purchase> bought = new ArrayList<>();
        for (Fields map : fields.maps("bought")) {
            bought.add(new Dye.Purchase(map.read("on", Scalar.DATE), map.read("packs", Scalar.number(0, MOST))));
            map.done();
        }
        return List.copyOf(bought);
    }

    static Vessel vessel(Fields fields, String id) {
        Vessel vessel = new Vessel(id, fields.place(), fields.text("title"), basin(fields),
                measure(fields, "height"), fields.word("made-of", Vessel.Material.class),
                fields.read("lid", Scalar.TRUTH));
        fields.done();
        return vessel;
    }

    private static Optional<Basin> basin(Fields fields) {
        Optional<Shape> shape = fields.word("shape", Shape.class).map(Noted::value);
        Optional<Double> diameter = centimetres(fields, "diameter");
        Optional<Double> length = centimetres(fields, "length");
        Optional<Double> width = centimetres(fields, "width");
        return shape.flatMap(found -> switch (found) {
            case ROUND -> diameter.map(Basin.Round::new);
            case OVAL -> length.flatMap(l -> width.map(w -> new Basin.Oval(l, w)));
            case RECTANGULAR -> length.flatMap(l -> width.map(w -> new Basin.Rectangular(l, w)));
        });
    }

    private static Optional<Double> centimetres(Fields fields, String key) {
        return measure(fields, key).map(noted -> noted.value().value());
    }

    /** An inside measure of a vessel; of one that no workroom has, its maker hears where it stands. */
    private static Optional<Noted<Quantity>> measure(Fields fields, String key) {
        Optional<Noted<Quantity>> measure = fields.read(key, Scalar.some(LENGTH, "cannot be: a vessel measures more "
                + "than 0 cm; measure its inside, or leave “" + key + "” out"));
        measure.filter(noted -> noted.value().value() > LARGEST_VESSEL).ifPresent(noted -> fields.findings()
                .warning(noted.place(), "“" + key + ": " + noted.written() + "” is more than 3 m, longer than any pot "
                        + "or bin; check the figure and its unit"));
        return measure;
    }

    static Method method(Fields fields, String id, List<Note> notes) {
        Method method = new Method(id, fields.place(), fields.text("title"), EntryReader.share(fields),
                fields.text("method"), fields.read("for", MASS), fields.word("skill", Method.Skill.class),
                RecipeReader.needles(fields), RecipeReader.recipe(fields), ColourReader.single(fields, "target"),
                notes);
        fields.done();
        return method;
    }
}
