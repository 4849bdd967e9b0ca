package fascicle.book.data;

import fascicle.book.batch.Additions;
import fascicle.book.batch.OddWords;
import fascicle.book.batch.StepNames;
import fascicle.book.figures.Figures;
import fascicle.book.words.Words;
import fascicle.measure.Quantity;
import fascicle.workings.Doses;
import fascicle.workings.care.Strain;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** The doses of a recipe as JSON that stands in an attribute, read by {@code scripts/batch.js}. */
public final class DosesJson {

    private final Json json = new Json();
    private final Words words;

    private DosesJson(Words words) {
        this.words = words;
    }

    /**
     * Writes doses. Sizes stand to their last digit, so that the page's figures are the command's.
     *
     * @param doses of a recipe
     * @param strain what its dyebath does to whatever vessel it stands in
     * @param words the book's words, for the names of treatments
     * @return JSON as the text of an attribute between single quotation marks
     */
    public static String of(Doses doses, Strain strain, Words words) {
        return new DosesJson(words).text(doses, strain).replace("&", "&amp;").replace("<", "&lt;")
                .replace("'", "&#39;");
    }

    private String text(Doses doses, Strain strain) {
        json.object(() -> {
            json.exact("ratio", doses.ratio());
            json.exact("standing", doses.standing());
            json.mark("reused", doses.reused());
            json.mark("waterUnsaid", doses.waterUnsaid());
            if (doses.left().known()) {
                json.exact("left", doses.left());
            }
            doses.dyedBefore().ifPresent(called -> json.text("over", words.say("batch.over-dye", called)));
            json.texts("odd", doses.odd().stream().map(new OddWords(words)::said).toList());
            json.items("extract", doses.extract().stream().toList(), plant -> {
                json.exact("g", plant.plant());
                json.exact("ml", plant.water());
                json.exact("needles", plant.needles());
            });
            json.number("strain", strain.place());
            length("depth", doses.depth());
            json.mark("depthAbout", doses.depthAbout());
            json.text("vessel", doses.vesselId());
            length("length", doses.needleLength());
            portions("bath", doses.bath(), doses.ratio().known());
            json.items("presoak", doses.presoak().stream().toList(), soak -> soak(words.say("step.presoak"), soak));
            StepNames names = StepNames.of(purposes(doses.before()), purposes(doses.after()), words);
            treatments("before", names.before(), doses.before());
            treatments("after", names.after(), doses.after());
            portions("finish", doses.finish(), doses.ratio().known());
        });
        return json.finished().strip();
    }

    /** A length in cm, and as it is told. */
    private void length(String name, Optional<Quantity> length) {
        length.ifPresent(known -> {
            json.exact(name, OptionalDouble.of(known.value()));
            json.text(name + "Said", new Figures(words).measured(known));
        });
    }

    private static List<Optional<String>> purposes(List<Doses.SoakDoses> soaks) {
        return soaks.stream().map(Doses.SoakDoses::as).toList();
    }

    private void treatments(String name, List<String> titles, List<Doses.SoakDoses> soaks) {
        Iterator<String> title = titles.iterator();
        json.items(name, soaks, soak -> soak(title.next(), soak));
    }

    private void soak(String title, Doses.SoakDoses soak) {
        json.text("title", title);
        json.mark("shared", soak.shared());
        json.exact("ratio", soak.ratio());
        portions("with", soak.with(), soak.ratio().known() && !soak.shared());
    }

    /** Portions; what was written stands beside those of which there may be nothing else to tell. */
    private void portions(String name, List<Doses.Portion> portions, boolean bathKnown) {
        json.items(name, portions, portion -> {
            json.text("called", portion.called());
            if (portion.part().at().isPresent()) {
                json.text("row", Additions.named(portion.called(), portion.part(), words));
            }
            json.text("by", portion.dose().follows().name().toLowerCase(Locale.ROOT));
            json.exact("g", portion.dose().grams());
            json.exact("ml", portion.dose().millilitres());
            if (!bathKnown || !portion.dose().grams().known() && !portion.dose().millilitres().known()) {
                json.text("written", portion.written());
            }
            json.mark("liquid", portion.dose().liquid());
            json.mark("spooned", portion.spooned());
            json.exact("stock", portion.stockPercent());
            json.mark("bySpoon", portion.bySpoon());
            json.mark("dissolves", portion.dissolves());
        });
    }
}
