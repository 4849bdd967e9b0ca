package fascicle.workings.plan;

import fascicle.bath.Magnitude;
import fascicle.workings.ExtractFigures;
import fascicle.workings.PartFigures;
import fascicle.workings.Scaled;
import fascicle.workings.SoakFigures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.IntStream;

/** Adds up pots of one recipe: each pot is a batch of its own, and the whole is the sum of them. */
final class Totals {

    private final List<PotGroup> groups;

    private Totals(List<PotGroup> groups) {
        this.groups = groups;
    }

    /** All pots together, in the quantities of one. */
    static Scaled of(List<PotGroup> groups) {
        return new Totals(groups).whole();
    }

    private Scaled whole() {
        Scaled first = groups.get(0).scaled();
        double needles = groups.stream().mapToDouble(group -> group.pots() * group.scaled().needlesGrams()).sum();
        OptionalDouble liquor = sum(Scaled::liquorMl);
        OptionalInt pots = first.pots().isPresent() ? OptionalInt.of(groups.stream().mapToInt(PotGroup::pots).sum())
                : OptionalInt.empty();
        return new Scaled(first.of(), needles, liquor, sum(Scaled::waterMl),
                liquor.isPresent() ? OptionalDouble.of(liquor.getAsDouble() / needles) : first.ratio(), first.about(),
                first.vessel(), first.vesselId(), pots, first.filled(), first.reused(),
                new Magnitude(sum(scaled -> scaled.standingMl().value()), first.standingMl().about()),
                parts(Scaled::dye), parts(Scaled::assistants), extract(first),
                first.presoak().map(unused -> soak(scaled -> scaled.presoak().orElseThrow())), soaks(Scaled::before),
                soaks(Scaled::after), parts(Scaled::finish), first.remarks());
    }

    private Optional<ExtractFigures> extract(Scaled first) {
        return first.extract().map(plant -> new ExtractFigures(
                sum(scaled -> scaled.extract().orElseThrow().plantGrams()),
                sum(scaled -> scaled.extract().orElseThrow().waterMl()), plant.about()));
    }

    private OptionalDouble sum(Function<Scaled, OptionalDouble> size) {
        List<OptionalDouble> sizes = groups.stream().map(group -> size.apply(group.scaled())).toList();
        return sizes.stream().anyMatch(OptionalDouble::isEmpty) ? OptionalDouble.empty()
                : OptionalDouble.of(IntStream.range(0, sizes.size())
                        .mapToDouble(i -> groups.get(i).pots() * sizes.get(i).orElseThrow()).sum());
    }

    private List<PartFigures> parts(Function<Scaled, List<PartFigures>> parts) {
        List<PartFigures> whole = new ArrayList<>();
        List<PartFigures> first = parts.apply(groups.get(0).scaled());
        for (int i = 0; i < first.size(); i++) {
            int place = i;
            whole.add(first.get(i).amounting(sum(scaled -> parts.apply(scaled).get(place).grams()),
                    sum(scaled -> parts.apply(scaled).get(place).ml())));
        }
        return List.copyOf(whole);
    }

    private SoakFigures soak(Function<Scaled, SoakFigures> soak) {
        SoakFigures first = soak.apply(groups.get(0).scaled());
        return new SoakFigures(first.as(), sum(scaled -> soak.apply(scaled).waterMl()),
                sum(scaled -> soak.apply(scaled).liquorMl()), first.about(),
                parts(scaled -> soak.apply(scaled).with()), first.shared());
    }

    private List<SoakFigures> soaks(Function<Scaled, List<SoakFigures>> soaks) {
        return IntStream.range(0, soaks.apply(groups.get(0).scaled()).size())
                .mapToObj(place -> soak(scaled -> soaks.apply(scaled).get(place))).toList();
    }
}
