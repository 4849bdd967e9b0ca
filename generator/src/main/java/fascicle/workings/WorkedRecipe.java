package fascicle.workings;

import fascicle.bath.Magnitude;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A recipe, worked out for one weight of needles, from which it can be worked out for another.
 *
 * @param bath the dyebath
 * @param presoak the bin before
 * @param before treatments before the bath
 * @param after treatments after it
 * @param finish what the needles are finished with, which has no bath of its own
 */
record WorkedRecipe(Mixture bath, Optional<Soak> presoak, List<Soak> before, List<Soak> after, List<Line> finish) {

    /** The same recipe for another weight of dry needles, in g. */
    WorkedRecipe scaledTo(Magnitude grams) {
        return scaledTo(grams, bath.cover());
    }

    /** The same recipe for another weight of dry needles, whose bath needs so much liquor, in mL, to cover them. */
    WorkedRecipe scaledTo(Magnitude grams, Magnitude covering) {
        return new WorkedRecipe(bath.scaledTo(grams, covering), presoak.map(soak -> soak.scaledTo(grams)),
                before.stream().map(soak -> soak.scaledTo(grams)).toList(),
                after.stream().map(soak -> soak.scaledTo(grams)).toList(),
                finish.stream().map(line -> line.growingFrom(bath.batch())).toList());
    }

    /** Everything the recipe names. */
    Stream<Line> lines() {
        Stream<Line> soaks = Stream.of(presoak.stream(), before.stream(), after.stream()).flatMap(Function.identity())
                .flatMap(soak -> soak.mixture().lines().stream());
        return Stream.of(bath.lines().stream(), soaks, finish.stream()).flatMap(Function.identity());
    }

    /** The figures of what the needles are finished with. */
    List<PartFigures> finishFigures() {
        return finish.stream().map(line -> line.beside(bath.batch())).toList();
    }

    /** The figures of the bin before. */
    Optional<SoakFigures> presoakFigures() {
        return presoak.map(Soak::figures);
    }

    /** The figures of treatments. */
    static List<SoakFigures> figures(List<Soak> soaks) {
        return soaks.stream().map(Soak::figures).toList();
    }
}
