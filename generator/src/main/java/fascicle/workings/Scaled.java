package fascicle.workings;

import fascicle.bath.Magnitude;
import fascicle.notebook.Vessel;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A recipe worked out for another weight of needles; parts are totals of the batch.
 *
 * @param of the id of the entry or method
 * @param needlesGrams the new weight of dry needles, g
 * @param liquorMl the new liquor of all pots together, mL
 * @param waterMl the water to pour, mL
 * @param ratio mL of liquor to g of dry needles
 * @param about whether the liquor rests on a rough figure
 * @param vessel the vessel, where there is such a one
 * @param vesselId the id of the vessel, as it was named
 * @param pots how many vessels like that, each with an equal share; unknown where the vessel's measures are
 * @param filled how much of a vessel's height is filled once the needles are in, as a share
 * @param reused whether it stands in what an earlier bath left
 * @param standingMl how much of that bath it takes, mL; 0 for a fresh bath
 * @param dye what colours
 * @param assistants what helps
 * @param extract the plant that is drawn out
 * @param presoak the bin before, which keeps its ratio to the needles
 * @param before treatments before the bath
 * @param after treatments after it
 * @param finish what the needles are finished with
 * @param remarks what to know beside the quantities
 */
public record Scaled(String of, double needlesGrams, OptionalDouble liquorMl, OptionalDouble waterMl,
        OptionalDouble ratio, boolean about, Optional<Vessel> vessel, Optional<String> vesselId, OptionalInt pots,
        OptionalDouble filled, boolean reused, Magnitude standingMl, List<PartFigures> dye,
        List<PartFigures> assistants, Optional<ExtractFigures> extract, Optional<SoakFigures> presoak,
        List<SoakFigures> before, List<SoakFigures> after, List<PartFigures> finish, List<BatchRemark> remarks) {

    /**
     * The same batch with other water and other parts in each of its baths.
     *
     * @param change makes of a bath's water, in mL, and its parts what is poured and added instead
     * @return a copy
     */
    public Scaled pouring(Pouring change) {
        return new Scaled(of, needlesGrams, liquorMl, change.water(waterMl, parts()), ratio, about, vessel, vesselId,
                pots, filled, reused, standingMl, change.parts(dye), change.parts(assistants), extract,
                presoak.map(soak -> poured(soak, change)), before.stream().map(soak -> poured(soak, change)).toList(),
                after.stream().map(soak -> poured(soak, change)).toList(), change.parts(finish), remarks);
    }

    private static SoakFigures poured(SoakFigures soak, Pouring change) {
        return soak.pouring(change.water(soak.waterMl(), soak.with()), change.parts(soak.with()));
    }

    /** Another way to make the same baths. */
    public interface Pouring {

        /**
         * The water to pour.
         *
         * @param millilitres poured before the change
         * @param parts what is in the bath before it
         * @return in mL
         */
        OptionalDouble water(OptionalDouble millilitres, List<PartFigures> parts);

        /**
         * What is added.
         *
         * @param parts before the change, in their order
         * @return as many, in the same order
         */
        default List<PartFigures> parts(List<PartFigures> parts) {
            return parts;
        }
    }

    /**
     * The same batch with other remarks.
     *
     * @param known what to know beside its quantities
     * @return a copy
     */
    public Scaled remarked(List<BatchRemark> known) {
        return new Scaled(of, needlesGrams, liquorMl, waterMl, ratio, about, vessel, vesselId, pots, filled,
                reused, standingMl, dye, assistants, extract, presoak, before, after, finish, known);
    }

    /**
     * How deep it stands in a vessel once the needles are in.
     *
     * @return in cm; nothing where {@link #filled} is not known
     */
    public OptionalDouble depthCm() {
        return filled.isEmpty() ? filled : OptionalDouble.of(filled.getAsDouble()
                * vessel.flatMap(Vessel::pot).orElseThrow().height());
    }

    /**
     * The dyebath of one pot, where the batch is shared out to several. What needles are soaked, treated and finished
     * with is one for all pots, and is not told of a single one.
     *
     * @return an equal share of the needles, the liquor and what goes into it, without other baths; the same dyebath
     *     where there is one pot, or nobody knows how many
     */
    public Scaled ofOnePot() {
        int shares = pots.orElse(1);
        return new Scaled(of, needlesGrams / shares, share(liquorMl, shares), share(waterMl, shares), ratio, about,
                vessel, vesselId, pots.isPresent() ? OptionalInt.of(1) : pots, filled, reused,
                standingMl.over(Magnitude.of(shares)), shares(dye, shares), shares(assistants, shares),
                extract.map(plant -> new ExtractFigures(share(plant.plantGrams(), shares),
                        share(plant.waterMl(), shares), plant.about())),
                Optional.empty(), List.of(), List.of(), List.of(), List.of());
    }

    private static List<PartFigures> shares(List<PartFigures> parts, int shares) {
        return parts.stream().map(part -> part.sharedBy(shares)).toList();
    }

    private static OptionalDouble share(OptionalDouble whole, int shares) {
        return whole.isPresent() ? OptionalDouble.of(whole.getAsDouble() / shares) : whole;
    }

    /**
     * Everything in the bath but water.
     *
     * @return dyes, then assistants
     */
    public List<PartFigures> parts() {
        return Stream.concat(dye.stream(), assistants.stream()).toList();
    }

    /**
     * Everything that is measured out, for whatever bath.
     *
     * @return the parts of the presoak, of treatments, of the bath, of treatments after it, and of the finish
     */
    public List<PartFigures> everything() {
        Stream<PartFigures> early = Stream.concat(presoak.stream(), before.stream())
                .flatMap(soak -> soak.with().stream());
        Stream<PartFigures> late = after.stream().flatMap(soak -> soak.with().stream());
        return Stream.of(early, parts().stream(), late, finish.stream()).flatMap(Function.identity()).toList();
    }
}
