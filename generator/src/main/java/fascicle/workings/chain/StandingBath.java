package fascicle.workings.chain;

import fascicle.bath.Magnitude;
import fascicle.notebook.Ids;
import fascicle.workings.BathFigures;
import fascicle.workings.EntryWorking;
import fascicle.workings.PartFigures;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A bath that stands, measured against the first bath of its chain. */
final class StandingBath {

    private final List<EntryWorking> path;
    private final Optional<EntryWorking> next;
    private final BathFigures bath;
    private final OptionalDouble needles;
    private final boolean dark;
    private final Pot came;

    /**
     * A bath after all that it has served.
     *
     * @param pots what was in them
     * @param path the entries it has served
     * @param next the one that takes it, if there is one yet
     * @param bath how large it is to be
     * @param needles what is to be dyed in it, g
     */
    StandingBath(Pots pots, List<EntryWorking> path, Optional<EntryWorking> next, BathFigures bath,
            OptionalDouble needles) {
        this.path = path;
        this.next = next;
        this.bath = bath;
        this.needles = needles;
        dark = pots.beginInTheDark(path);
        EntryWorking last = path.get(path.size() - 1);
        came = pots.held(path).after(last, Pot.share(last, next), bath);
    }

    /** Its figures, of so much liquor that stood in it. */
    Standing figures(Magnitude liquor) {
        return new Standing(liquor, came.dye().things().values().stream().map(this::dye).toList(),
                came.salts().things().values().stream().map(this::assistant).toList(), why());
    }

    /** As much to a gram of needles as in the first bath. */
    private Standing.Dye dye(Contents.Thing dye) {
        OptionalDouble grams = first(BathFigures::dye, dye, PartFigures::grams);
        OptionalDouble millilitres = first(BathFigures::dye, dye, PartFigures::ml);
        return new Standing.Dye(dye.is(), dye.called(), dye.grams(), dye.ml(), dye.grams().upTo(forTheseNeedles(grams)),
                dye.ml().upTo(forTheseNeedles(millilitres)));
    }

    private OptionalDouble forTheseNeedles(OptionalDouble inTheFirst) {
        return scaled(inTheFirst, needles, path.get(0).needles().dryGrams());
    }

    /** As much in every litre as in the first bath. */
    private Standing.Assistant assistant(Contents.Thing salt) {
        OptionalDouble grams = first(BathFigures::assistants, salt, PartFigures::grams);
        OptionalDouble millilitres = first(BathFigures::assistants, salt, PartFigures::ml);
        return new Standing.Assistant(salt.is(), salt.called(), salt.grams().value(), salt.ml().value(),
                salt.grams().upTo(inThisLiquor(grams)).value(), salt.ml().upTo(inThisLiquor(millilitres)).value());
    }

    private OptionalDouble inThisLiquor(OptionalDouble inTheFirst) {
        return scaled(inTheFirst, bath.liquorMl(), path.get(0).bath().liquorMl());
    }

    /** How much of a thing the first bath was given; none where it was not among its parts. */
    private OptionalDouble first(Function<BathFigures, List<PartFigures>> parts, Contents.Thing thing,
            Function<PartFigures, OptionalDouble> figure) {
        List<OptionalDouble> given = parts.apply(path.get(0).bath()).stream()
                .filter(part -> Ids.same(part.is(), thing.is())).map(figure).toList();
        return dark || given.stream().anyMatch(OptionalDouble::isEmpty) ? OptionalDouble.empty()
                : OptionalDouble.of(given.stream().mapToDouble(OptionalDouble::getAsDouble).sum());
    }

    /** The first thing that is missing to know its dye. */
    private Optional<Standing.Why> why() {
        Stream<EntryWorking> dark = this.dark ? Stream.of(path.get(0)) : Stream.empty();
        Stream<EntryWorking> unweighed = path.stream()
                .filter(entry -> entry.bath().dye().stream()
                        .anyMatch(dye -> dye.grams().isEmpty() && dye.ml().isEmpty()));
        return Stream.of(whys(Standing.Kind.EARLIER_MISSING, dark), whys(Standing.Kind.DYE_AMOUNT, unweighed),
                whys(Standing.Kind.SHARE, leaving(share -> !share.known())),
                whys(Standing.Kind.RANGE, leaving(share -> share.known() && share.value().isEmpty())))
                .flatMap(Function.identity()).findFirst();
    }

    private static Stream<Standing.Why> whys(Standing.Kind kind, Stream<EntryWorking> entries) {
        return entries.map(entry -> new Standing.Why(kind, entry.id()));
    }

    /** The entries of which the share they left is of some kind. */
    private Stream<EntryWorking> leaving(Predicate<Estimate> kind) {
        return IntStream.range(0, path.size()).filter(place -> kind.test(Pot.share(path.get(place),
                place + 1 < path.size() ? Optional.of(path.get(place + 1)) : next))).mapToObj(path::get);
    }

    /** An amount that went with so much of something, for another amount of that. */
    private static OptionalDouble scaled(OptionalDouble amount, OptionalDouble to, OptionalDouble from) {
        return amount.isPresent() && to.isPresent() && from.isPresent() && from.getAsDouble() > 0
                ? OptionalDouble.of(amount.getAsDouble() * to.getAsDouble() / from.getAsDouble())
                : OptionalDouble.empty();
    }
}
