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

/** Makes solutions, bath by bath, of what nobody in a class should handle dry. */
final class Solutions {

    private final Set<String> dissolved;
    private final List<Solution> made = new ArrayList<>();

    private Solutions(List<Dye> things) {
        dissolved = things.stream().map(Dye::id).map(Ids::key).collect(Collectors.toSet());
    }

    /** The solutions for a batch; what needles are finished with is no bath and stays as it is. */
    static List<Solution> of(Scaled whole, List<Dye> things) {
        Solutions solutions = new Solutions(things);
        Stream.of(whole.presoak().stream(), whole.before().stream(), whole.after().stream())
                .flatMap(soaks -> soaks).forEach(solutions::soak);
        solutions.bath(whole.parts(), whole.liquorMl());
        return List.copyOf(solutions.made);
    }

    private void soak(SoakFigures soak) {
        bath(soak.with(), soak.liquorMl());
    }

    private void bath(List<PartFigures> parts, OptionalDouble liquor) {
        parts.stream().filter(part -> part.dissolves() && dissolved.contains(Ids.key(part.is())))
                .filter(part -> part.grams().orElse(0) > 0)
                .map(part -> Solution.of(part, part.grams().orElseThrow(), liquor)).forEach(made::add);
    }
}
