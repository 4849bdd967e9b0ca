package fascicle.workings;

import fascicle.notebook.Bath;
import fascicle.notebook.Ids;
import fascicle.notebook.Noted;
import fascicle.notebook.Origin;
import fascicle.notebook.Recipe;
import fascicle.notebook.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiPredicate;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Finds where an entry went another way than its method, in the order of the work.
 *
 * <p>Only what was written for the entry or its day can depart: what came from the method is the method's. What a
 * method leaves open is no departure when a pot fills it in: a method that names no dye leaves the dye to the day.
 * Parts are the same where {@link AmountKey} says so; heating where each step reaches and holds the same.
 */
final class Departures {

    private final EntryWorking entry;
    private final Recipe here;
    private final Recipe there;
    private final WorkedRecipe method;
    private final List<Departure> found = new ArrayList<>();

    private Departures(EntryWorking entry, Recipe there, WorkedRecipe method) {
        this.entry = entry;
        this.here = entry.entry().recipe();
        this.there = there;
        this.method = method;
    }

    /**
     * An entry's departures.
     *
     * @param entry the entry
     * @param there what its method says
     * @param method the same worked out for the entry's needles
     */
    static List<Departure> of(EntryWorking entry, Recipe there, WorkedRecipe method) {
        return new Departures(entry, there, method).all();
    }

    private List<Departure> all() {
        presoak();
        treatments(Departure.Step.BEFORE, here.before(), entry.before(), there.before(), method.before());
        bath(here.bath(), there.bath());
        if (!there.heat().isEmpty() && !RecipeKey.heat(here.heat()).equals(RecipeKey.heat(there.heat()))) {
            found.add(new Departure.InHeat(here.heat(), there.heat()));
        }
        time(Departure.Step.COOL, here.cool(), there.cool());
        treatments(Departure.Step.AFTER, here.after(), entry.after(), there.after(), method.after());
        time(Departure.Step.DRY, here.dry(), there.dry());
        if (departs(here.rinse(), there.rinse())) {
            found.add(new Departure.InRinse(here.rinse().orElseThrow().value(), there.rinse().orElseThrow().value()));
        }
        parts(Departure.Step.FINISH, entry.finish(), entry.bath().liquorMl(), method.finishFigures(),
                method.bath().figures().liquorMl());
        return List.copyOf(found);
    }

    private void presoak() {
        if (here.presoak().isEmpty()) {
            return;
        }
        Recipe.Presoak bin = here.presoak().get();
        if (there.presoak().isEmpty()) {
            found.add(new Departure.Presoaked(bin));
            return;
        }
        Optional<SoakFigures> usual = method.presoakFigures();
        parts(Departure.Step.PRESOAK, entry.presoak().map(SoakFigures::with).orElse(List.of()),
                entry.presoak().map(SoakFigures::liquorMl).orElse(OptionalDouble.empty()),
                usual.map(SoakFigures::with).orElse(List.of()),
                usual.map(SoakFigures::liquorMl).orElse(OptionalDouble.empty()));
        time(Departure.Step.PRESOAK, bin.time(), there.presoak().get().time());
    }

    private void bath(Bath bath, Bath usual) {
        if (bath.vessel().isPresent() && usual.vessel().isPresent() && isOwn(bath.vessel().get().origin())
                && !Ids.same(bath.vessel().get().value(), usual.vessel().get().value())) {
            found.add(new Departure.InVessel(bath.vessel().get().value(), usual.vessel().get().value()));
        }
        BathFigures figures = method.bath().figures();
        if (bath.water().isPresent() && usual.water().isPresent() && isOwn(bath.water().get().origin())) {
            Optional<String> ratio = AmountKey.figures(entry.bath().ratio(), "");
            Optional<String> usualRatio = AmountKey.figures(figures.ratio(), "");
            boolean same = ratio.isPresent() && usualRatio.isPresent() ? ratio.equals(usualRatio)
                    : bath.water().get().value().equals(usual.water().get().value());
            if (!same) {
                found.add(new Departure.InLiquor(bath.water().get(), entry.bath().ratio(), usual.water().get(),
                        figures.ratio()));
            }
        }
        if (!figures.dye().isEmpty()) {
            parts(Departure.Step.DYE, entry.bath().dye(), entry.bath().liquorMl(), figures.dye(), figures.liquorMl());
        }
        parts(Departure.Step.ASSISTANTS, entry.bath().assistants(), entry.bath().liquorMl(), figures.assistants(),
                figures.liquorMl());
    }

    private void parts(Departure.Step step, List<PartFigures> used, OptionalDouble liquor, List<PartFigures> usual,
            OptionalDouble usualLiquor) {
        // A list is written whole or taken over whole; one that is empty here and not there was emptied here.
        if (used.stream().anyMatch(part -> !isOwn(part.part().is().origin()))) {
            return;
        }
        for (Pair<Departure.Used> pair : Pair.all(in(liquor, used), in(usualLiquor, usual),
                one -> Ids.key(one.part().is()))) {
            if (!pair.isSame(Departures::isSameAmount)) {
                found.add(new Departure.InPart(step, pair.here, pair.method));
            }
        }
    }

    private static List<Departure.Used> in(OptionalDouble liquor, List<PartFigures> parts) {
        return parts.stream().map(part -> new Departure.Used(part, liquor)).toList();
    }

    private static boolean isSameAmount(Departure.Used used, Departure.Used usual) {
        String key = AmountKey.of(used.part(), used.liquorMl());
        String usualKey = AmountKey.of(usual.part(), usual.liquorMl());
        String written = AmountKey.asWritten(used.part());
        String usualWritten = AmountKey.asWritten(usual.part());
        boolean figured = !key.equals(written) && !usualKey.equals(usualWritten);
        return key.equals(usualKey) || !figured && written.equals(usualWritten);
    }

    private void treatments(Departure.Step step, List<Recipe.Treatment> used, List<SoakFigures> figures,
            List<Recipe.Treatment> usual, List<Soak> usualSoaks) {
        if (used.stream().anyMatch(treatment -> !isOwn(treatment.origin()))) {
            return;
        }
        List<Treated> ours = Treated.all(used, figures);
        List<Treated> theirs = Treated.all(usual, WorkedRecipe.figures(usualSoaks));
        for (Pair<Treated> pair : Pair.all(ours, theirs, Treated::purpose)) {
            if (!pair.isSame((one, other) -> one.key().equals(other.key()))) {
                found.add(new Departure.InTreatment(step, pair.here.map(Treated::treatment),
                        pair.method.map(Treated::treatment)));
            }
        }
    }

    private void time(Departure.Step step, Optional<Noted<Span>> used, Optional<Noted<Span>> usual) {
        if (used.isPresent() && usual.isPresent() && isOwn(used.get().origin())
                && !RecipeKey.length(used.get().value()).equals(RecipeKey.length(usual.get().value()))) {
            found.add(new Departure.InTime(step, used.get(), usual.get()));
        }
    }

    private static boolean departs(Optional<? extends Noted<?>> used, Optional<? extends Noted<?>> usual) {
        return used.isPresent() && usual.isPresent() && isOwn(used.get().origin())
                && !used.get().value().equals(usual.get().value());
    }

    private static boolean isOwn(Origin origin) {
        return !(origin instanceof Origin.Method);
    }

    /** A treatment with its figures. */
    private record Treated(Recipe.Treatment treatment, SoakFigures figures) {

        static List<Treated> all(List<Recipe.Treatment> treatments, List<SoakFigures> figures) {
            return IntStream.range(0, treatments.size())
                    .mapToObj(place -> new Treated(treatments.get(place), figures.get(place))).toList();
        }

        String purpose() {
            return treatment.as().map(as -> as.value().word()).orElse("");
        }

        String key() {
            return figures.with().stream()
                    .map(part -> Ids.key(part.is()) + " " + AmountKey.of(part, figures.liquorMl())).sorted()
                    .collect(Collectors.joining("; ")) + " " + RecipeKey.heat(treatment.heat());
        }
    }

    /** Two things of one name, or one that has no fellow. */
    private record Pair<T>(Optional<T> here, Optional<T> method) {

        /** Things by name, those that are here first; of one name in order. */
        static <T> List<Pair<T>> all(List<T> here, List<T> method, Function<T, String> name) {
            List<T> left = new ArrayList<>(method);
            List<Pair<T>> pairs = new ArrayList<>();
            for (T one : here) {
                Optional<T> fellow = left.stream().filter(other -> name.apply(other).equals(name.apply(one)))
                        .findFirst();
                fellow.ifPresent(left::remove);
                pairs.add(new Pair<>(Optional.of(one), fellow));
            }
            left.forEach(other -> pairs.add(new Pair<>(Optional.empty(), Optional.of(other))));
            return pairs;
        }

        boolean isSame(BiPredicate<T, T> alike) {
            return here.isPresent() && method.isPresent() && alike.test(here.get(), method.get());
        }
    }
}
