package fascicle.photo;

import fascicle.colour.Xyz;
import java.util.List;
import java.util.Optional;

/**
 * Compares the light that falls on several places of known reflectance, and asks of a card's quarters what the light
 * will be where the needles lie.
 */
final class LightFall {

    /** From here on a card's reading says too little about the needles beside it; common practice, no source. */
    private static final double TOO_MUCH = 0.10;

    /** A smaller fall across a card may come from the card itself; common practice, no source. */
    private static final double SEEN = 0.02;

    /** Reflectance below which glare in the lens makes a card look lighter than its light. */
    private static final double DARK = 0.09;

    private final Region needles;
    private final Profile profile;

    private LightFall(Region needles, Profile profile) {
        this.needles = needles;
        this.profile = profile;
    }

    /** What to heed about light that falls off across a card or between cards. */
    static Optional<String> of(List<Known> cards, Region needles, Profile profile) {
        LightFall fall = new LightFall(needles, profile);
        return fall.between(cards).or(() -> cards.stream().flatMap(card -> fall.across(card).stream()).findFirst());
    }

    private Optional<String> between(List<Known> cards) {
        double[] lights = cards.stream().filter(card -> Xyz.of(card.lab()).y() > DARK && !card.light().clipped())
                .mapToDouble(card -> luminance(card.light()) / Xyz.of(card.lab()).y()).toArray();
        double fall = lights.length < 2 ? 0 : fall(lights);
        return fall <= TOO_MUCH ? Optional.empty() : Optional.of("the light differs by " + percent(fall)
                + " % between the cards: photograph where it falls evenly, with the cards close to the needles");
    }

    /** How much darker the darkest part of an area is than the brightest, as a share of the brightest. */
    static double across(List<Light> parts, Profile profile) {
        LightFall fall = new LightFall(new Region(0, 0, 1, 1), profile);
        return fall(parts.stream().mapToDouble(fall::luminance).toArray());
    }

    private Optional<String> across(Known card) {
        double[] quarters = card.quarters().stream().mapToDouble(this::luminance).toArray();
        double fall = fall(quarters);
        double beside = beside(card.at(), quarters);
        if (fall > TOO_MUCH) {
            return Optional.of("the light falls off by " + percent(fall) + " % across the card's area: see that "
                    + "the area lies on the card alone, or photograph where light falls evenly, without shade or "
                    + "glare");
        }
        return fall < SEEN || StrictMath.abs(beside) <= TOO_MUCH ? Optional.empty()
                : Optional.of("the light changes across the card, and by that slope the needles have "
                        + percent(StrictMath.abs(beside)) + " % " + (beside > 0 ? "more" : "less") + " of it: lay the "
                        + "card close to the needles, and photograph where the light falls evenly");
    }

    /** How much more light than the card the needles have, as a share, if it goes on as it does across the card. */
    private double beside(Region card, double[] quarters) {
        if (quarters.length != 4) {
            return 0;
        }
        double mean = (quarters[0] + quarters[1] + quarters[2] + quarters[3]) / 4;
        double right = (quarters[1] + quarters[3] - quarters[0] - quarters[2]) / 2 / (card.width() / 2.0);
        double down = (quarters[2] + quarters[3] - quarters[0] - quarters[1]) / 2 / (card.height() / 2.0);
        double change = right * (needles.middleX() - card.middleX()) + down * (needles.middleY() - card.middleY());
        return mean > 0 ? change / mean : 0;
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

    private double luminance(Light light) {
        return profile.toXyz().times(light.red(), light.green(), light.blue())[1];
    }

    private static long percent(double share) {
        return StrictMath.round(100 * share);
    }
}
