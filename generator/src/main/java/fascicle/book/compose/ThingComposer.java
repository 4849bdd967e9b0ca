package fascicle.book.compose;

import fascicle.book.address.Leaf;
import fascicle.book.address.Shelf;
import fascicle.book.figures.Figures;
import fascicle.book.page.Fact;
import fascicle.book.page.Link;
import fascicle.book.words.Words;
import fascicle.notebook.Day;
import fascicle.notebook.Dye;
import fascicle.notebook.Ids;
import fascicle.notebook.Method;
import fascicle.notebook.NeedleLot;
import fascicle.notebook.Note;
import fascicle.notebook.Notebook;
import fascicle.notebook.Noted;
import fascicle.workings.care.Care;
import fascicle.workings.care.Hazard;
import fascicle.workings.care.Hazards;
import java.time.LocalDate;
import fascicle.workings.stock.Stocktaking;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/** What is known of lots, dyes and methods themselves, and what was written of them and of days. */
final class ThingComposer {

    private final Materials materials;
    private final Ways ways;
    private final Words words;
    private final Notebook notebook;

    ThingComposer(Materials materials, Ways ways) {
        this.materials = materials;
        this.ways = ways;
        this.words = materials.words();
        this.notebook = materials.workings().notebook();
    }

    /** The facts of the thing behind a page; none for a family or year. */
    List<Fact> facts(Shelf shelf, String id) {
        return switch (shelf) {
            case METHODS -> notebook.method(id).map(this::method).orElse(List.of());
            case LOTS -> materials.index().lot(id).map(this::lot).orElse(List.of());
            case DYES -> materials.index().dye(id).map(this::dye).orElse(List.of());
            case DAYS -> day(LocalDate.parse(id));
            case CONDITIONS -> condition(id);
            case FAMILIES, YEARS -> List.of();
        };
    }

    /** What may hurt someone of the thing behind a page: of a method's recipe, or of a dye on the shelf. */
    List<Hazard> hazards(Shelf shelf, String id) {
        return switch (shelf) {
            case METHODS -> notebook.method(id).map(method -> materials.care().uses(method.recipe()))
                    .map(Hazards::of).orElse(List.of());
            case DYES -> materials.index().dye(id).map(dye -> Hazards.of(Care.uses(dye))).orElse(List.of());
            case DAYS, LOTS, CONDITIONS, FAMILIES, YEARS -> List.of();
        };
    }

    /** The maker's words about the thing behind a page. */
    List<Note> notes(Shelf shelf, String id) {
        return switch (shelf) {
            case METHODS -> notebook.method(id).map(Method::notes).orElse(List.of());
            case LOTS -> materials.index().lot(id).map(NeedleLot::notes).orElse(List.of());
            case DYES -> materials.index().dye(id).map(Dye::notes).orElse(List.of());
            case DAYS -> materials.index().day(LocalDate.parse(id)).map(Day::notes).orElse(List.of());
            case CONDITIONS, FAMILIES, YEARS -> List.of();
        };
    }

    private Facts facts() {
        return new Facts(materials, ways);
    }

    /** A day's year, and the days around it. */
    private List<Fact> day(LocalDate date) {
        List<Leaf> days = List.copyOf(materials.addresses().leaves(Shelf.DAYS));
        int place = IntStream.range(0, days.size()).filter(i -> days.get(i).id().equals(date.toString())).findFirst()
                .orElse(-1);
        return facts().link("fact.year", Optional.of(ways.to(Shelf.YEARS, String.valueOf(date.getYear()))))
                .link("fact.day-before", place > 0 ? Optional.of(ways.leaf(days.get(place - 1))) : Optional.empty())
                .link("fact.day-after", place >= 0 && place < days.size() - 1
                        ? Optional.of(ways.leaf(days.get(place + 1))) : Optional.empty())
                .facts();
    }

    private List<Fact> condition(String id) {
        return facts().links("fact.lots", notebook.lots().stream()
                .filter(lot -> lot.condition().filter(condition -> Ids.same(condition.value(), id)).isPresent())
                .map(lot -> ways.to(Shelf.LOTS, lot.id())).toList()).facts();
    }

    /** The methods of which something holds. */
    private List<Link> methods(Predicate<Method> chosen) {
        return notebook.methods().stream().filter(chosen).map(method -> ways.to(Shelf.METHODS, method.id())).toList();
    }

    private static boolean names(Optional<Noted<String>> reference, String id) {
        return reference.filter(noted -> Ids.same(noted.value(), id)).isPresent();
    }

    private List<Fact> method(Method method) {
        Facts facts = facts()
                .written("fact.for-weight", method.forWeight())
                .word("fact.skill", "skill", method.skill())
                .link("fact.follows", method.follows().map(follows -> ways.to(Shelf.METHODS, follows.value())))
                .links("fact.followed-by", methods(other -> names(other.follows(), method.id())))
                .link("fact.lot", method.needles().lot().map(lot -> ways.to(Shelf.LOTS, lot.value())))
                .word("fact.sheaths", "sheaths", method.needles().sheaths());
        method.target().ifPresent(target ->
                facts.fact(new ColourComposer(materials, ways).reading(words.say("fact.target"), target)));
        return facts.facts();
    }

    private List<Fact> lot(NeedleLot lot) {
        ColourComposer colours = new ColourComposer(materials, ways);
        Facts facts = facts()
                .written("fact.species", lot.species())
                .link("fact.condition", lot.condition().map(id -> ways.condition(id.value())))
                .noted("fact.gathered", lot.gathered(), gathered -> materials.figures().date(gathered.value()))
                .noted("fact.length", lot.length(), length -> materials.figures().measured(length.value()));
        materials.stock().ifPresent(stock -> {
            facts.written("fact.lot-weight", lot.weight());
            stock.lot(lot.id()).ifPresent(supply ->
                    new StockWords(materials, stock).supply(facts, "fact.needles-left", supply));
        });
        lot.bundle().ifPresent(bundle -> facts.known("fact.bundle",
                Optional.of(materials.figures().amount(bundle.grams(), "g", bundle.weight().value().about()))));
        materials.index().bareColour(lot.id()).ifPresent(colour -> colours.facts(facts, colour));
        lot.blank().forEach(reading -> facts.fact(colours.reading(words.say("fact.blank"), reading)));
        facts.links("fact.methods", methods(method -> names(method.needles().lot(), lot.id())));
        return facts.facts();
    }

    private List<Fact> dye(Dye dye) {
        Facts facts = facts()
                .word("fact.kind", "dye-kind", dye.kind())
                .word("fact.type", "dye-type", dye.type())
                .word("fact.form", "dye-form", dye.form())
                .noted("fact.acidity", dye.acidity(), acidity -> materials.figures()
                        .amount(acidity.value(), "percent", false))
                .word("fact.acid", "acid", dye.acid())
                .word("fact.metal", "metal", dye.metal())
                .noted("fact.density", dye.density(), density -> materials.figures()
                        .amount(density.value(), "g-per-ml", false));
        dye.levelTeaspoon().ifPresent(spoon -> facts.written("fact.level-teaspoon", Optional.of(spoon.weight())));
        facts.links("fact.methods", methods(method -> method.recipe().parts().stream()
                .anyMatch(part -> Ids.same(part.is().value(), dye.id()))));
        materials.stock().ifPresent(stock -> stock(facts, dye, stock));
        return facts.facts();
    }

    private void stock(Facts facts, Dye dye, Stocktaking stock) {
        dye.pack().ifPresent(pack -> facts.written("fact.pack", pack.holds()).noted("fact.price", pack.price(),
                price -> materials.figures().money(price.value(), notebook.cover().currency(), false)));
        dye.bought().forEach(purchase -> facts.noted("fact.bought", purchase.on(), on -> words.say("bought",
                materials.figures().date(on.value()),
                purchase.packs().map(packs -> Figures.atMost(packs.value(), 2))
                        .orElseGet(() -> words.say("shelf.unknown")))));
        stock.dye(dye.id()).ifPresent(supply ->
                new StockWords(materials, stock).supply(facts, "fact.stock-left", supply));
    }
}
