package fascicle.book;

import fascicle.bath.Amount;
import fascicle.colour.Grade;
import fascicle.colour.Lab;
import fascicle.colour.Rgb;
import fascicle.measure.Dimension;
import fascicle.measure.Kitchen;
import fascicle.measure.Quantity;
import fascicle.measure.UnreadableQuantity;
import fascicle.notebook.Bath;
import fascicle.notebook.Cover;
import fascicle.notebook.Day;
import fascicle.notebook.Dye;
import fascicle.notebook.Edition;
import fascicle.notebook.Entry;
import fascicle.notebook.Fastness;
import fascicle.notebook.HeatStep;
import fascicle.notebook.Kept;
import fascicle.notebook.Method;
import fascicle.notebook.Missing;
import fascicle.notebook.NeedleLot;
import fascicle.notebook.Needles;
import fascicle.notebook.Note;
import fascicle.notebook.Notebook;
import fascicle.notebook.Noted;
import fascicle.notebook.Origin;
import fascicle.notebook.Outcome;
import fascicle.notebook.Part;
import fascicle.notebook.Place;
import fascicle.notebook.Reading;
import fascicle.notebook.Recipe;
import fascicle.notebook.Span;
import fascicle.notebook.Water;
import fascicle.notebook.WindowReading;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A small invented notebook: two bricks and a gold, a method, two lots, three things for the bath. */
public final class SampleNotebook {

    private static final Recipe NOTHING_DONE = new Recipe(Optional.empty(), List.of(), Bath.UNSAID, List.of(),
            Optional.empty(), List.of(), Optional.empty(), Optional.empty(), List.of());

    private SampleNotebook() {}

    /** The notebook as it is. */
    public static Notebook notebook() {
        return with(entries());
    }

    /** The same notebook with other entries. */
    public static Notebook with(List<Entry> entries) {
        Cover cover = new Cover("The Larchwater dye notebook", Optional.of("Larchwater workshop"), "en", Kitchen.METRIC,
                false, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.of("EUR"),
                Optional.of(noted(quantity("3 days", Dimension.TIME), "3 days")), "longleaf", Map.of(),
                Optional.empty(), List.of(), Optional.empty());
        return new Notebook(cover, List.of(lot("faded-2024", "Faded black pine", "light-faded", List.of()),
                        lot("scalded-2025", "Scalded black pine, autumn 2025", "scalded",
                                List.of(metered(44.0, 12.1, 24.5), metered(41.8, 13.0, 23.9)))),
                List.of(dye("brick", "Brick", Dye.Kind.DYE, Dye.Form.POWDER, "A warm red."),
                        dye("salt", "Table salt", Dye.Kind.SALT, Dye.Form.CRYSTALS, ""),
                        dye("white-vinegar", "White vinegar", Dye.Kind.ACID, Dye.Form.LIQUID, "")),
                List.of(), List.of(method()),
                List.of(new Day(LocalDate.parse("2026-05-09"), List.of(note("Rain all day.", "days/2026-05-09/brick.md")))),
                entries, List.of(new Missing("2026-05-21-lost", Place.of("days/2026-05-21/lost.md"), Edition.OPEN, true,
                        List.of("\"45 gramz\" is no weight"))));
    }

    /** A brick with everything, a brick of the same recipe, a gold of which little is known. */
    public static List<Entry> entries() {
        Entry brick = brick("2026-05-09", "brick", "Brick on scalded black pine", "# Watch it\n\nSee [the dye]"
                + "(../../dyes/brick.md#weights) and [the other](../2026-05-20/brick-again.md), not [this](../x.md).");
        Entry again = brick("2026-05-20", "brick-again", "Brick once more", "");
        Entry gold = new Entry("2026-05-20-gold", LocalDate.parse("2026-05-20"), "gold",
                Place.of("days/2026-05-20/gold.md"), Optional.empty(), Optional.of(own("18a")), Edition.STUDIO,
                Optional.empty(), Needles.UNSAID, NOTHING_DONE, List.of(), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), List.of(), Optional.empty(), List.of());
        return List.of(brick, again, gold);
    }

    /** The gold entry under another title and with other words. */
    public static Entry titled(String title, String markdown) {
        return new Entry("2026-06-01-odd", LocalDate.parse("2026-06-01"), "odd", Place.of("days/2026-06-01/odd.md"),
                Optional.of(own(title)), Optional.of(own("=1+1")), Edition.STUDIO, Optional.empty(), Needles.UNSAID,
                NOTHING_DONE, List.of(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
                List.of(), Optional.empty(), List.of(note(markdown, "days/2026-06-01/odd.md")));
    }

    /** The sample's entries and one more. */
    public static Notebook withOneMore(Entry entry) {
        List<Entry> all = new ArrayList<>(entries());
        all.add(entry);
        return with(all);
    }

    /** A note that begins at line 10. */
    public static Note note(String markdown, String file) {
        return new Note(markdown, new Place(file, 10, 1), Edition.OPEN);
    }

    private static Entry brick(String date, String name, String title, String words) {
        boolean first = name.equals("brick");
        Needles needles = new Needles(Optional.of(own("scalded-2025")), Optional.empty(),
                Optional.of(noted(quantity("45 g", Dimension.MASS), "45 g")), Optional.empty(), Optional.empty(),
                Optional.empty());
        return new Entry(date + "-" + name, LocalDate.parse(date), name, Place.of("days/" + date + "/" + name + ".md"),
                Optional.of(own(title)), first ? Optional.of(own("41")) : Optional.empty(), Edition.OPEN,
                Optional.of(own("low-water-simmer")), needles, recipe(new Origin.Method("low-water-simmer")),
                List.of(metered(36.2, 27.4, 20.1), metered(35.1, 26.0, 19.7),
                        new Reading(new Reading.Screen(new Rgb(127, 70, 50)), false, Place.of("x")),
                        new Reading(new Reading.Screen(new Rgb(10, 20, 30)), true, Place.of("x")),
                        new Reading(new Reading.ByEye(own("18a"), Optional.of("redder")), false, Place.of("x"))),
                Optional.empty(), first ? Optional.of(new Reading(new Reading.Screen(new Rgb(138, 59, 42)), false,
                        Place.of("x"))) : Optional.empty(),
                Optional.of(new Outcome(Optional.of(noted(Outcome.Verdict.WORKED, "worked")),
                        Optional.of(noted(4, "4")), Optional.of(noted(Outcome.Feel.SUPPLE, "supple")),
                        List.of(noted(Outcome.Fault.PALE, "pale")))),
                Optional.of(new Fastness(Optional.of(graded("4-5")), Optional.of(graded("3")))),
                first ? List.of(new WindowReading(noted(quantity("6 weeks", Dimension.TIME), "6 weeks"),
                        metered(40.1, 22.0, 18.2), Optional.empty())) : List.of(),
                first ? Optional.of(new Kept(Optional.of(noted(quantity("41 g", Dimension.MASS), "41 g")),
                        Optional.of(noted(Kept.How.DAMP, "damp")),
                        Optional.of(noted(LocalDate.parse("2026-05-11"), "2026-05-11")),
                        List.of(new Kept.Use(Optional.of(noted(quantity("10 g", Dimension.MASS), "10 g")),
                                Optional.of(own("lake-basket")))))) : Optional.empty(),
                words.isEmpty() ? List.of() : List.of(note(words, "days/" + date + "/" + name + ".md")));
    }

    private static Recipe recipe(Origin origin) {
        Noted<Water> water = new Noted<>(new Water.Poured(quantity("3.2 L", Dimension.VOLUME)), "3.2 L", Place.of("x"), origin);
        Bath bath = new Bath(Optional.empty(), Optional.of(water), Optional.of(noted(Bath.Source.TAP, "tap")),
                List.of(part("brick", "1.5 % owf")), List.of(part("salt", "about 40 g"), part("white-vinegar", "60 mL")),
                Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.of(new Bath.Ph(noted(4.1, "4.1"), Optional.of(noted(Bath.PhTool.METER, "meter")))));
        HeatStep rise = new HeatStep(Optional.of(noted(new HeatStep.Degrees(quantity("88 °C", Dimension.TEMPERATURE)), "88 °C")),
                Optional.empty(), Optional.of(span("30 min")), Optional.of(span("2 h")), Optional.empty());
        return new Recipe(Optional.of(new Recipe.Presoak(Optional.of(noted(quantity("6 L", Dimension.VOLUME), "6 L")),
                        List.of(part("white-vinegar", "250 mL")), Optional.of(span("1 h")), Origin.SHARED)),
                List.of(), bath, List.of(rise), Optional.of(noted(new Span.Overnight(), "overnight")), List.of(),
                Optional.of(span("1 day")), Optional.of(noted(Recipe.Rinse.AFTER_DRYING, "after-drying")), List.of());
    }

    private static Method method() {
        return new Method("low-water-simmer", Place.of("methods/low-water-simmer.md"),
                Optional.of(own("Simmering in little water")), Edition.OPEN, Optional.empty(),
                Optional.of(noted(quantity("50 g", Dimension.MASS), "50 g")),
                Optional.of(noted(Method.Skill.FIRST, "first")), Needles.UNSAID, recipe(Origin.OWN), Optional.empty(),
                List.of(note("1. Soak.\n2. Simmer.", "methods/low-water-simmer.md")));
    }

    private static NeedleLot lot(String id, String title, String condition, List<Reading> colour) {
        return new NeedleLot(id, Place.of("needles/" + id + ".md"), Optional.of(own(title)), Edition.OPEN,
                Optional.of(own("Pinus nigra")), Optional.of(own(condition)),
                Optional.of(noted(LocalDate.parse("2025-10-04"), "2025-10-04")), Optional.empty(),
                Optional.of(noted(quantity("900 g", Dimension.MASS), "900 g")), Optional.empty(), colour, List.of(),
                List.of());
    }

    private static Dye dye(String id, String title, Dye.Kind kind, Dye.Form form, String words) {
        return new Dye(id, Place.of("dyes/" + id + ".md"), Optional.of(own(title)), Edition.OPEN,
                Optional.of(noted(kind, kind.word())), Optional.empty(), Optional.of(noted(form, form.word())),
                kind == Dye.Kind.ACID ? Optional.of(noted(5.0, "5 %")) : Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(new Dye.Pack(Optional.of(own50g()),
                        Optional.of(noted(4.2, "4.20")))), List.of(), Optional.empty(), List.of(),
                words.isEmpty() ? List.of() : List.of(note(words, "dyes/" + id + ".md")));
    }

    private static Noted<Quantity> own50g() {
        return noted(quantity("50 g", Dimension.MASS), "50 g");
    }

    private static Part part(String is, String amount) {
        try {
            return new Part(own(is), Optional.of(noted(Amount.read(amount, Kitchen.METRIC), amount)), Optional.empty(),
                    Optional.empty());
        } catch (UnreadableQuantity unreadable) {
            throw new IllegalArgumentException(amount, unreadable);
        }
    }

    private static Reading metered(double lightness, double a, double b) {
        return new Reading(new Reading.Metered(new Lab(lightness, a, b), lightness + ", " + a + ", " + b), false,
                Place.of("x"));
    }

    private static Fastness.Rub graded(String grade) {
        return new Fastness.Rub.Graded(noted(Grade.read(grade).orElseThrow(), grade));
    }

    private static Noted<Span> span(String text) {
        return noted(new Span.Timed(quantity(text, Dimension.TIME)), text);
    }

    private static Quantity quantity(String text, Dimension wanted) {
        try {
            return Quantity.read(text, wanted, Kitchen.METRIC);
        } catch (UnreadableQuantity unreadable) {
            throw new IllegalArgumentException(text, unreadable);
        }
    }

    private static Noted<String> own(String text) {
        return noted(text, text);
    }

    private static <T> Noted<T> noted(T value, String written) {
        return new Noted<>(value, written, Place.of("x"), Origin.OWN);
    }
}
