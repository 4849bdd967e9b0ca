package fascicle.notebook;

import fascicle.measure.Quantity;
import java.util.List;
import java.util.Optional;

/**
 * The dyebath of a recipe.
 *
 * @param vessel the id of the vessel
 * @param water what fixes the water
 * @param from where the water came from
 * @param dye what colours
 * @param assistants what helps
 * @param extract how a plant dye was drawn out
 * @param reuses the id of the entry whose bath this is
 * @param left the share of that bath's dye that was left, in percent, as the maker judges
 * @param ph the acidity that was read
 */
public record Bath(Optional<Noted<String>> vessel, Optional<Noted<Water>> water, Optional<Noted<Source>> from,
        List<Part> dye, List<Part> assistants, Optional<Extract> extract, Optional<Noted<String>> reuses,
        Optional<Noted<Double>> left, Optional<Ph> ph) {

    /** A bath of which nothing was said. */
    public static final Bath UNSAID = new Bath(Optional.empty(), Optional.empty(), Optional.empty(), List.of(),
            List.of(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    /**
     * The same bath, of which it is not said whose it was before.
     *
     * @return a copy
     */
    public Bath withoutSource() {
        return new Bath(vessel, water, from, dye, assistants, extract, Optional.empty(), Optional.empty(), ph);
    }

    /** Where water comes from. */
    public enum Source implements Word {
        /** The mains. */
        TAP,
        /** A rain butt. */
        RAIN,
        /** A well. */
        WELL,
        /** Softened mains water. */
        SOFTENED
    }

    /**
     * How a plant dye was drawn out.
     *
     * @param of how much of the plant
     * @param state how it was: dried, fresh
     * @param water the water it was drawn out in
     * @param heat how it was heated
     */
    public record Extract(Optional<Noted<Quantity>> of, Optional<Noted<String>> state, Optional<Noted<Quantity>> water,
            List<HeatStep> heat) {}

    /**
     * A pH that was read.
     *
     * @param reads the pH
     * @param with what it was read with; nothing where unsaid
     */
    public record Ph(Noted<Double> reads, Optional<Noted<PhTool>> with) {}

    /** What a pH is read with. */
    public enum PhTool implements Word {
        /** Indicator paper. */
        STRIP,
        /** A meter. */
        METER
    }
}
