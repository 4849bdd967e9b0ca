package fascicle.notebook.read;

import fascicle.measure.Dimension;
import fascicle.notebook.Edition;
import fascicle.notebook.Entry;
import fascicle.notebook.Fastness;
import fascicle.notebook.Kept;
import fascicle.notebook.Note;
import fascicle.notebook.Noted;
import fascicle.notebook.Outcome;
import fascicle.notebook.Reading;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads an entry, once what it leaves out has been filled in. */
final class EntryReader {

    private EntryReader() {}

    /**
     * Reads an entry.
     *
     * @param fields its keys, filled in
     * @param day its dye day, as its folder says
     * @param name its file's or pot's name
     * @param notes its part of the body
     * @return the entry; what could not be read is left out, with a finding
     */
    static Entry entry(Fields fields, LocalDate day, String name, List<Note> notes) {
        checkDate(fields, day);
        fields.node("name");
        Entry entry = new Entry(day + "-" + name, day, name, fields.place(), fields.text("title"), fields.text("tag"),
                share(fields), fields.text("method"), RecipeReader.needles(fields), RecipeReader.recipe(fields),
                ColourReader.readings(fields, "colour"), ColourReader.glass(fields),
                ColourReader.single(fields, "target"), outcome(fields), fastness(fields), ColourReader.window(fields),
                kept(fields), notes);
        fields.done();
        return entry;
    }

    /** Reads how far a file is shared. */
    static Edition share(Fields fields) {
        return fields.word("share", Edition.class).map(Noted::value).orElse(Edition.STUDIO);
    }

    private static void checkDate(Fields fields, LocalDate day) {
        fields.read("date", Scalar.DATE).filter(date -> !date.value().equals(day)).ifPresent(date ->
                fields.findings().error(date.place(), "“date” is " + date.written() + ", but the folder says " + day
                        + "; leave the date out, or move the file to the folder of its day"));
    }

    private static Optional<Outcome> outcome(Fields fields) {
        return fields.map("outcome").map(map -> {
            Outcome outcome = new Outcome(map.word("verdict", Outcome.Verdict.class),
                    map.read("evenness", Scalar.whole(1, 5)), map.word("feel", Outcome.Feel.class),
                    map.list("faults", Scalar.word(Outcome.Fault.class)));
            map.done();
            return outcome;
        });
    }

    private static Optional<Fastness> fastness(Fields fields) {
        return fields.map("fastness").map(map -> {
            Fastness fastness = new Fastness(rub(map, "rub-dry"), rub(map, "rub-wet"));
            map.done();
            return fastness;
        });
    }

    private static Optional<Fastness.Rub> rub(Fields fields, String key) {
        return fields.isMap(key) ? fields.map(key).flatMap(cloth -> cloth(key, cloth))
                : fields.read(key, Scalar.GRADE).map(Fastness.Rub.Graded::new);
    }

    private static Optional<Fastness.Rub> cloth(String key, Fields cloth) {
        Optional<Reading> before = ColourReader.single(cloth, "before");
        Optional<Reading> after = ColourReader.single(cloth, "after");
        if (!cloth.has("before") || !cloth.has("after")) {
            cloth.findings().error(cloth.place(), "“" + key + "” needs the cloth before and after; write a grade, as "
                    + "in “" + key + ": 4-5”, or {before: {lab: …}, after: {lab: …}}");
        }
        cloth.done();
        return before.flatMap(white -> after.map(rubbed -> new Fastness.Rub.Cloth(white, rubbed)));
    }

    private static Optional<Kept> kept(Fields fields) {
        Scalar<fascicle.measure.Quantity> mass = Scalar.quantity(Dimension.MASS);
        return fields.map("kept").map(map -> {
            List<Kept.Use> used = new ArrayList<>();
            for (Fields use : map.maps("used")) {
                used.add(new Kept.Use(use.read("weight", mass), use.text("in")));
                use.done();
            }
            Kept kept = new Kept(map.read("weight", mass), map.word("how", Kept.How.class),
                    map.read("since", Scalar.DATE), List.copyOf(used));
            map.done();
            return kept;
        });
    }
}
