package fascicle.workings.chain;

import fascicle.notebook.Dye;
import fascicle.notebook.Ids;
import fascicle.notebook.Notebook;
import fascicle.workings.BathFigures;
import fascicle.workings.EntryWorking;
import fascicle.workings.PartFigures;
import fascicle.workings.Workings;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The baths of a notebook that served more than one batch. */
public final class Chains {

    private final Succession succession;
    private final Map<String, Dye> dyes;
    private final List<Chain> all;
    private final Map<String, Chain> byEntry = new HashMap<>();

    private Chains(Workings workings) {
        succession = Succession.of(workings);
        dyes = Notebook.byId(workings.notebook().shelf().dyes(), Dye::id);
        all = workings.entries().stream().filter(entry -> succession.before(entry).isEmpty())
                .map(succession::served).filter(served -> served.size() > 1).map(this::chain).toList();
        all.forEach(chain -> chain.batches().forEach(batch -> byEntry.put(batch.entry().id(), chain)));
    }

    /**
     * Looks through a notebook.
     *
     * @param workings an edition's figures
     * @return its chains
     */
    public static Chains of(Workings workings) {
        return new Chains(workings);
    }

    /**
     * All chains.
     *
     * @return in the order of their first entries
     */
    public List<Chain> all() {
        return all;
    }

    /**
     * The chain that an entry belongs to.
     *
     * @param entry any entry
     * @return nothing where its bath served it alone
     */
    public Optional<Chain> chain(EntryWorking entry) {
        return Optional.ofNullable(byEntry.get(entry.id()));
    }

    private Chain chain(List<EntryWorking> served) {
        EntryWorking last = served.get(served.size() - 1);
        return new Chain(served.stream().map(one -> new Chain.Batch(one, left(one, served))).toList(),
                new Bath(succession.path(last), Optional.empty(), last.bath(), last.needles().dryGrams())
                        .standing(InThePot.measured(last).value()));
    }

    /**
     * What stood in an entry's pot from the bath before.
     *
     * @param entry any entry
     * @return nothing for a fresh bath
     */
    public Optional<Standing> standing(EntryWorking entry) {
        if (succession.isOfUnknownBath(entry)) {
            return Optional.of(new Standing(OptionalDouble.empty(), List.of(), List.of(),
                    Optional.of(new Standing.Why(Standing.Kind.EARLIER_MISSING, entry.id()))));
        }
        return succession.before(entry).map(before -> {
            InThePot left = InThePot.of(before);
            OptionalDouble stood = InThePot.measured(before).times(left.taken(entry.bath())).value();
            return new Bath(succession.path(before), Optional.of(entry), entry.bath(), entry.needles().dryGrams())
                    .standing(stood);
        });
    }

    /** What an entry left of each dye; as the next in the chain judges, where there is one. */
    private List<Chain.Left> left(EntryWorking entry, List<EntryWorking> served) {
        Optional<EntryWorking> next = served.stream()
                .filter(one -> succession.before(one).filter(entry::equals).isPresent()).findFirst();
        Contents left = held(succession.path(entry)).dye().times(Pot.share(entry, next));
        return left.things().values().stream()
                .map(thing -> new Chain.Left(thing.is(), thing.called(), thing.grams())).toList();
    }

    /** What the last bath of a path held when everything had gone in. */
    private Pot held(List<EntryWorking> path) {
        Pot pot = added(path.get(0));
        for (int place = 1; place < path.size(); place++) {
            EntryWorking entry = path.get(place);
            EntryWorking before = path.get(place - 1);
            pot = pot.after(before, Pot.share(before, Optional.of(entry)), entry.bath()).plus(added(entry));
        }
        return pot;
    }

    private Pot added(EntryWorking entry) {
        Pot added = new Pot(Contents.of(entry.bath().dye()),
                Contents.of(Contents.staying(entry.bath().assistants(), dyes)));
        return succession.isOfUnknownBath(entry)
                ? new Pot(added.dye().times(Estimate.UNKNOWN), added.salts().times(Estimate.UNKNOWN)) : added;
    }

    /**
     * A bath that stands, to be used again.
     *
     * @param path the entries it has served
     * @param next the one that takes it, if there is one yet
     * @param bath how large it is to be
     * @param needles what is to be dyed in it, g
     */
    private final class Bath {

        private final List<EntryWorking> path;
        private final Optional<EntryWorking> next;
        private final BathFigures bath;
        private final OptionalDouble needles;
        private final EntryWorking first;
        private final Pot came;

        Bath(List<EntryWorking> path, Optional<EntryWorking> next, BathFigures bath, OptionalDouble needles) {
            this.path = path;
            this.next = next;
            this.bath = bath;
            this.needles = needles;
            first = path.get(0);
            EntryWorking last = path.get(path.size() - 1);
            came = held(path).after(last, Pot.share(last, next), bath);
        }

        Standing standing(OptionalDouble liquor) {
            return new Standing(liquor, came.dye().things().values().stream().map(this::dye).toList(),
                    came.salts().things().values().stream().map(this::assistant).toList(), why());
        }

        private Standing.Dye dye(Contents.Thing dye) {
            OptionalDouble wanted = times(sum(first.bath().dye(), dye, PartFigures::owfPercent), needles, 0.01);
            return new Standing.Dye(dye.is(), dye.called(), dye.grams(), dye.grams().upTo(wanted));
        }

        private Standing.Assistant assistant(Contents.Thing salt) {
            List<PartFigures> parts = first.bath().assistants();
            OptionalDouble perMl = over(first.bath().liquorMl());
            OptionalDouble grams = times(times(sum(parts, salt, PartFigures::grams), perMl, 1), bath.liquorMl(), 1);
            OptionalDouble ml = times(times(sum(parts, salt, PartFigures::ml), perMl, 1), bath.liquorMl(), 1);
            return new Standing.Assistant(salt.is(), salt.called(), salt.grams().value(), salt.ml().value(),
                    salt.grams().upTo(grams).value(), salt.ml().upTo(ml).value());
        }

        /** What was put into the first bath of a thing; none where it was not among its parts. */
        private OptionalDouble sum(List<PartFigures> parts, Contents.Thing thing,
                java.util.function.Function<PartFigures, OptionalDouble> figure) {
            double sum = 0;
            for (PartFigures part : parts) {
                if (Ids.same(part.is(), thing.is())) {
                    OptionalDouble known = figure.apply(part);
                    if (known.isEmpty()) {
                        return known;
                    }
                    sum += known.getAsDouble();
                }
            }
            return succession.isOfUnknownBath(first) ? OptionalDouble.empty() : OptionalDouble.of(sum);
        }

        private Optional<Standing.Why> why() {
            List<Standing.Why> whys = new ArrayList<>();
            if (succession.isOfUnknownBath(first)) {
                whys.add(new Standing.Why(Standing.Kind.EARLIER_MISSING, first.id()));
            }
            path.stream().filter(entry -> entry.bath().dye().stream().anyMatch(dye -> dye.grams().isEmpty()))
                    .forEach(entry -> whys.add(new Standing.Why(Standing.Kind.DYE_AMOUNT, entry.id())));
            lacking(Standing.Kind.SHARE, whys);
            lacking(Standing.Kind.RANGE, whys);
            return whys.stream().findFirst();
        }

        private void lacking(Standing.Kind kind, List<Standing.Why> whys) {
            for (int place = 0; place < path.size(); place++) {
                Estimate share = Pot.share(path.get(place), place + 1 < path.size()
                        ? Optional.of(path.get(place + 1)) : next);
                if (share.value().isEmpty() && share.known() == (kind == Standing.Kind.RANGE)) {
                    whys.add(new Standing.Why(kind, path.get(place).id()));
                }
            }
        }
    }

    private static OptionalDouble over(OptionalDouble millilitres) {
        return millilitres.isPresent() && millilitres.getAsDouble() > 0
                ? OptionalDouble.of(1 / millilitres.getAsDouble()) : OptionalDouble.empty();
    }

    private static OptionalDouble times(OptionalDouble one, OptionalDouble other, double factor) {
        return one.isPresent() && other.isPresent()
                ? OptionalDouble.of(one.getAsDouble() * other.getAsDouble() * factor) : OptionalDouble.empty();
    }
}
