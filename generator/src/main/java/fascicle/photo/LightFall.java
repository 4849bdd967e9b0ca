package fascicle.photo;

import fascicle.colour.Xyz;
import java.util.List;
import java.util.Optional;

/** Compares the light that falls on several places of known reflectance. */
final class LightFall {

    /** From here on a card's reading says too little about the needles beside it; common practice, no source. */
    private static final double TOO_MUCH = 0.10;

    private LightFall() {}

    /** What to heed about light that falls off across a card or between cards. */
    static Optional<String> of(List<Known> cards, Profile profile) {
        double across = cards.stream()
                .mapToDouble(card -> fall(card.quarters().stream().mapToDouble(q -> luminance(q, profile)).toArray()))
                .max().orElse(0);
        double between = fall(cards.stream()
                .mapToDouble(card -> luminance(card.light(), profile) / Xyz.of(card.lab()).y())
                .toArray());
        if (StrictMath.max(across, between) <= TOO_MUCH) {
            return Optional.empty();
        }
        return Optional.of(between >= across
                ? "the light differs by " + percent(between) + " % between the cards: photograph where it falls "
                        + "evenly, with the cards close to the needles"
                : "the light falls off by " + percent(across) + " % across the card: photograph where it falls evenly, "
                        + "without shade or glare on the card");
    }

    /** How much darker the darkest place is than the brightest, as a share of the brightest. */
    private static double fall(double[] places) {
        double most = 0;
        double least = Double.MAX_VALUE;
        for (double place : places) {
            most = StrictMath.max(most, place);
            least = StrictMath.min(least, place);
        }
        return most > 0 ? 1 - least / most : 0;
    }

    private static double luminance(Light light, Profile profile) {
        return profile.toXyz().times(light.red(), light.green(), light.blue())[1];
    }

    private static long percent(double share) {
        return StrictMath.round(100 * share);
    }
}
