package fascicle.workings.plan;

import fascicle.bath.Basis;
import fascicle.workings.PartFigures;
import fascicle.workings.Scaled;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * One of several pots of a batch: what is given for the whole batch, however large, is shared out too; where that is a
 * liquid, so much more water is poured.
 *
 * @param share of the batch's needles that are in the pot
 */
record Sharing(double share) implements Scaled.Pouring {

    @Override
    public OptionalDouble water(OptionalDouble millilitres, List<PartFigures> parts) {
        double less = IntStream.range(0, parts.size()).mapToDouble(i -> poured(parts.get(i))
                - poured(parts(parts).get(i))).sum();
        return millilitres.isPresent() ? OptionalDouble.of(millilitres.getAsDouble() + less) : millilitres;
    }

    @Override
    public List<PartFigures> parts(List<PartFigures> parts) {
        return parts.stream().map(part -> part.by() == Basis.BATCH
                ? part.amounting(times(part.grams()), times(part.ml())) : part).toList();
    }

    /** A powder may have a volume too, and adds none. */
    private static double poured(PartFigures part) {
        return part.pours() ? part.ml().orElse(0) : 0;
    }

    private OptionalDouble times(OptionalDouble size) {
        return size.isPresent() ? OptionalDouble.of(size.getAsDouble() * share) : size;
    }
}
