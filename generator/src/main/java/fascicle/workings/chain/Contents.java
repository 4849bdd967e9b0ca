package fascicle.workings.chain;

import fascicle.bath.Magnitude;
import fascicle.notebook.Ids;
import fascicle.workings.PartFigures;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How much of each thing is in a bath.
 *
 * @param things by the key of their id, in the order they went in
 */
record Contents(Map<String, Thing> things) {

    /** Household spooning wanders by a fifth: {@code common practice, no source}. */
    private static final double SPOONING = 0.2;

    static final Contents NOTHING = new Contents(Map.of());

    /**
     * A thing in a bath.
     *
     * @param is its id
     * @param called its title
     * @param grams of it, g
     * @param ml of it as sold, mL
     */
    record Thing(String is, String called, Estimate grams, Estimate ml) {

        private static Thing of(PartFigures part) {
            Estimate grams = part.spooned() && !part.gramsAbout()
                    ? Estimate.measured(part.grams()).within(SPOONING) : estimate(part.mass());
            return new Thing(part.is(), part.called(), grams,
                    part.spooned() ? Estimate.UNKNOWN : estimate(part.volumeAsSold(Magnitude.UNKNOWN)));
        }

        /** Of what was written as rough nobody knows how far it is off. */
        private static Estimate estimate(Magnitude amount) {
            return amount.about() ? Estimate.judged(amount.orThrow()) : Estimate.measured(amount.value());
        }

        private Thing plus(Thing other) {
            return new Thing(is, called, grams.plus(other.grams), ml.plus(other.ml));
        }
    }

    /** What was put into a bath. */
    static Contents of(List<PartFigures> parts) {
        Contents contents = NOTHING;
        for (PartFigures part : parts) {
            contents = contents.plus(new Contents(Map.of(Ids.key(part.is()), Thing.of(part))));
        }
        return contents;
    }

    Contents plus(Contents other) {
        Map<String, Thing> sum = new LinkedHashMap<>(things);
        other.things.forEach((key, thing) -> sum.merge(key, thing, Thing::plus));
        return new Contents(sum);
    }

    /** A share of each thing. */
    Contents times(Estimate share) {
        Map<String, Thing> part = new LinkedHashMap<>();
        things.forEach((key, thing) -> part.put(key,
                new Thing(thing.is(), thing.called(), thing.grams().times(share), thing.ml().times(share))));
        return new Contents(part);
    }
}
