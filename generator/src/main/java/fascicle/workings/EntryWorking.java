package fascicle.workings;

import fascicle.bath.Uptake;
import fascicle.notebook.Entry;
import fascicle.notebook.Noted;
import fascicle.notebook.Outcome;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The figures of one entry.
 *
 * @param entry the entry
 * @param needles its bundle
 * @param bath its dyebath
 * @param pot the bath in its vessel
 * @param presoak the bin before
 * @param before treatments before the bath
 * @param after treatments after the bath
 * @param finish what it was finished with
 * @param heat its heating
 * @param colour its colour, where a dry reading has figures
 * @param uptake how much of its dye the bath gave up, where it was looked at in a glass
 * @param fading what the light has done to it, in the order of the readings
 */
public record EntryWorking(Entry entry, NeedleFigures needles, BathFigures bath, PotFigures pot,
        Optional<SoakFigures> presoak, List<SoakFigures> before, List<SoakFigures> after, List<PartFigures> finish,
        HeatFigures heat, Optional<ColourFigures> colour, Optional<Uptake> uptake, List<Fading> fading) {

    /**
     * The entry's id.
     *
     * @return its day and its name
     */
    public String id() {
        return entry.id();
    }

    /**
     * Whether the maker's verdict is that it worked.
     *
     * @return false without a verdict
     */
    public boolean worked() {
        return entry.verdict().filter(Outcome.Verdict.WORKED::equals).isPresent();
    }

    /** How even it came out, 1 to 5; 0 where nobody graded it. */
    int evenness() {
        return entry.outcome().flatMap(Outcome::evenness).map(Noted::value).orElse(0);
    }

    /**
     * Everything the recipe names, in all its baths and at the end.
     *
     * @return the presoak's parts, then the others
     */
    public Stream<PartFigures> parts() {
        return Stream.concat(presoak.stream().flatMap(bin -> bin.with().stream()), partsBesidePresoak());
    }

    /**
     * The same without the presoak, which may be a bin that several pots share.
     *
     * @return the parts of treatments, then those of the bath and the finish
     */
    public Stream<PartFigures> partsBesidePresoak() {
        Stream<PartFigures> treatments = Stream.concat(before.stream(), after.stream())
                .flatMap(treatment -> treatment.with().stream());
        return Stream.of(treatments, bath.parts().stream(), finish.stream()).flatMap(Function.identity());
    }
}
