package fascicle.workings.plan;

import fascicle.notebook.Dye;
import fascicle.notebook.Ids;
import fascicle.workings.PartFigures;
import fascicle.workings.Scaled;
import fascicle.workings.SoakFigures;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What becomes, bath by bath, of what nobody in a class should handle dry.
 *
 * @param made the solutions that the teacher makes ahead
 * @param stillDry what no solution can be made of
 */
record Solutions(List<Solution> made, List<StillDry> stillDry) {

    /** For the maker alone, who handles her own powders. */
    static final Solutions NONE = new Solutions(List.of(), List.of());

    /** The solutions for a batch; what needles are finished with is no bath and stays as it is. */
    static Solutions of(Scaled whole, List<Dye> things) {
        Maker maker = new Maker(things);
        Stream.of(whole.presoak().stream(), whole.before().stream(), whole.after().stream())
                .flatMap(soaks -> soaks).forEach(maker::soak);
        maker.bath(whole.parts(), whole.liquorMl());
        whole.finish().stream().filter(maker::isHeldBack)
                .forEach(part -> maker.dry.add(new StillDry(part, StillDry.Why.FINISH)));
        return new Solutions(List.copyOf(maker.made), List.copyOf(maker.dry));
    }

    private static final class Maker {

        private final Set<String> heldBack;
        private final List<Solution> made = new ArrayList<>();
        private final List<StillDry> dry = new ArrayList<>();

        Maker(List<Dye> things) {
            heldBack = things.stream().map(Dye::id).map(Ids::key).collect(Collectors.toSet());
        }

        void soak(SoakFigures soak) {
            bath(soak.with(), soak.liquorMl());
        }

        void bath(List<PartFigures> parts, OptionalDouble liquor) {
            for (PartFigures part : parts.stream().filter(this::isHeldBack).toList()) {
                part.grams().ifPresentOrElse(grams -> made.add(Solution.of(part, grams, liquor)),
                        () -> dry.add(new StillDry(part, StillDry.Why.UNWEIGHED)));
            }
        }

        /** What is poured, by its form or as it was measured, is not dry, nor is what the recipe takes from a stock. */
        private boolean isHeldBack(PartFigures part) {
            return heldBack.contains(Ids.key(part.is())) && part.dissolves() && part.grams().orElse(1) > 0;
        }
    }
}
