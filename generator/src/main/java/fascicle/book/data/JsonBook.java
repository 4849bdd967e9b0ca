package fascicle.book.data;

import fascicle.book.Program;
import fascicle.book.ledger.Ledger;
import fascicle.colour.ColourNames;
import fascicle.colour.Lab;
import fascicle.measure.Dimension;
import fascicle.notebook.Dye;
import fascicle.notebook.Method;
import fascicle.notebook.Missing;
import fascicle.notebook.NeedleLot;
import fascicle.notebook.Noted;
import fascicle.workings.EntryWorking;
import fascicle.workings.Group;
import fascicle.workings.LotWorking;
import fascicle.workings.MethodWorking;
import fascicle.workings.Workings;
import fascicle.workings.stock.Supply;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * {@code data/book.json}: every computed figure of the book, form 1. An unknown is null; what an edition does not show
 * is absent.
 */
public final class JsonBook {

    private final Workings workings;
    private final Json json = new Json();
    private final JsonEntry entries;
    private final Ledger ledger;

    private JsonBook(Ledger ledger) {
        this.ledger = ledger;
        this.workings = ledger.workings();
        this.entries = new JsonEntry(json, ledger);
    }

    /**
     * Writes the data of a book.
     *
     * @param ledger what the book reckons with
     * @return the file in UTF-8
     */
    public static byte[] bytes(Ledger ledger) {
        return new JsonBook(ledger).text().getBytes(StandardCharsets.UTF_8);
    }

    private String text() {
        json.object(() -> {
            json.number("form", 1);
            json.text("generated_by", Program.name());
            json.text("edition", ledger.edition().word());
            json.text("title", workings.notebook().cover().title());
            json.texts("missing", workings.notebook().missing().stream().map(Missing::what).toList());
            json.items("entries", workings.entries(), entries::write);
            json.items("lots", workings.lots(), this::lot);
            json.items("dyes", workings.notebook().dyes(), this::dye);
            groups("families", Group.Kind.FAMILY);
            groups("conditions", Group.Kind.CONDITION);
            json.items("methods", workings.methods(), this::method);
            groups("days", Group.Kind.DAY);
            groups("years", Group.Kind.YEAR);
            new JsonBaths(json, ledger.chains()).chains();
        });
        return json.finished();
    }

    private void groups(String name, Group.Kind kind) {
        json.items(name, workings.groups(kind), group -> {
            json.text("id", group.id());
            json.text("title", group.title());
            figures(Optional.of(group));
        });
    }

    private void lot(LotWorking working) {
        NeedleLot lot = working.lot();
        json.text("id", lot.id());
        json.text("title", lot.called());
        json.text("species", lot.species().map(Noted::value));
        json.text("condition", lot.condition().map(Noted::value));
        json.object("colour", working.colour(), known -> {
            json.lab("lab", Optional.of(known.lab()));
            json.text("hex", known.lab().toRgb().hex());
            json.number("readings", known.readings().size());
            json.text("by", known.by());
            json.figure("uncertainty_de00", OptionalDouble.of(known.uncertainty()));
            json.figure("unlevelness_de00", known.unlevelness());
            json.text("name", known.name().name());
            json.text("family", known.name().family());
        });
        ledger.stock().ifPresent(stock -> json.figure("left_g", left(stock.lot(lot.id()))));
        figures(workings.group(Group.Kind.LOT, lot.id()));
    }

    private void dye(Dye dye) {
        json.text("id", dye.id());
        json.text("title", dye.called());
        json.word("kind", dye.kind());
        json.word("type", dye.type());
        json.word("form", dye.form());
        ledger.stock().ifPresent(stock -> {
            Optional<Supply> supply = stock.dye(dye.id());
            OptionalDouble left = left(supply);
            json.figure("left", left);
            json.text("left_unit", supply.filter(known -> left.isPresent())
                    .map(known -> known.measured() == Dimension.MASS ? "g" : "ml"));
        });
        figures(workings.group(Group.Kind.DYE, dye.id()));
    }

    private static OptionalDouble left(Optional<Supply> supply) {
        return supply.map(known -> known.remainder().left().value()).orElse(OptionalDouble.empty());
    }

    private void method(MethodWorking working) {
        Method method = working.method();
        json.text("id", method.id());
        json.text("title", method.called());
        json.figure("for_g", working.grams());
        json.word("skill", method.skill());
        json.text("follows", method.follows().map(Noted::value));
        entries.bath(working);
        entries.soak("presoak", working.presoak());
        entries.heat(working.heat());
        figures(workings.group(Group.Kind.METHOD, method.id()));
    }

    /** What entries of a group come to; counts of a thing that no entry uses are 0, since that much is known. */
    private void figures(Optional<Group> group) {
        Group.VerdictDays days = group.map(Group::days).orElse(Group.VerdictDays.NONE);
        json.object("days", () -> {
            json.number("worked", days.worked());
            json.number("partly", days.partly());
            json.number("failed", days.failed());
            json.number("all", days.all());
        });
        json.texts("entries", group.stream().flatMap(found -> found.entries().stream()).map(EntryWorking::id).toList());
        Optional<Lab> median = group.flatMap(Group::median);
        json.lab("median_lab", median);
        json.text("median_hex", median.map(lab -> lab.toRgb().hex()));
        json.text("median_name", median.map(lab -> ColourNames.nearest(lab).name()));
        json.object("start", group.flatMap(Group::start), start -> {
            json.text("entry", start.entry().id());
            json.number("days", start.days());
        });
    }
}
