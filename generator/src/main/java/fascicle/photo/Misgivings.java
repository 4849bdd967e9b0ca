package fascicle.photo;

import fascicle.colour.Xyz;
import fascicle.photo.Caution.Kind;
import fascicle.photo.Sample.Against;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What to heed about a colour read off a photograph, in words, the gravest first. */
final class Misgivings {

    /** Fewer pixels than these, and a few of them decide the colour; common practice, no source. */
    private static final int FEWEST_OF_NEEDLES = 1000;
    private static final int FEWEST_OF_CARD = 400;

    /** Pictures with loss below this size have mostly been made small by a messenger; common practice, no source. */
    private static final long SMALL_PICTURE = 300_000;

    /** From here on the patches' colours or places are in doubt; a chart of 24 under any light leaves less. */
    private static final double MISFIT = 3;

    /** A fall of light inside a patch that no light makes, and the lightness below which grain may make it. */
    private static final double EDGE = 0.25;
    private static final double DARK = 30;

    /** Needles of one bath are more alike than this; common practice, no source. */
    private static final double MIXED = 8;

    private final List<Caution> cautions = new ArrayList<>();

    private Misgivings() {}

    static List<Caution> about(Negative negative, Region at, Light needles, double unlevelness, List<Known> patches,
            Correction correction) {
        Misgivings misgivings = new Misgivings();
        if (correction.against() == Against.NOTHING) {
            misgivings.add(Kind.NO_CARD, "there is no card in the picture, so the colour is a judgement by eye: "
                    + "photograph the needles beside a grey card");
        }
        misgivings.clipped(patches, needles);
        if (correction.against() == Against.GREY_CARD && patches.stream().noneMatch(Known::grey)) {
            misgivings.add(Kind.CHART_MISFIT, "none of the patches is grey, and there are fewer than six: mark a grey "
                    + "card, or the whole chart");
        } else if (correction.against() == Against.GREY_CARD) {
            misgivings.cards(patches.stream().filter(Known::grey).toList(), at, negative.profile());
        }
        correction.leftOver().ifPresent(misgivings::leftOver);
        if (correction.against() == Against.CHART) {
            misgivings.edges(patches, negative.profile());
        }
        misgivings.mixed(unlevelness);
        misgivings.small(patches, needles);
        misgivings.picture(negative);
        return List.copyOf(misgivings.cautions);
    }

    private void clipped(List<Known> patches, Light needles) {
        double bright = patches.stream().mapToDouble(patch -> patch.light().tooBright()).max().orElse(0);
        double dark = patches.stream().mapToDouble(patch -> patch.light().tooDark()).max().orElse(0);
        if (patches.stream().anyMatch(patch -> patch.light().clipped())) {
            add(Kind.CARD_CLIPPED, cutOff("the card", bright, dark));
        }
        if (needles.clipped()) {
            add(Kind.NEEDLES_CLIPPED, cutOff("the needles", needles.tooBright(), needles.tooDark()));
        }
    }

    private static String cutOff(String what, double bright, double dark) {
        return bright >= dark
                ? percent(bright) + " % of " + what + " is so bright that its light is cut off: photograph again with "
                        + "less exposure, or out of the glare"
                : percent(dark) + " % of " + what + " is so dark, or so strong in colour, that its light is cut off: "
                        + "photograph again in more light";
    }

    private void cards(List<Known> cards, Region needles, Profile profile) {
        cards.stream()
                .flatMap(card -> CardTint.of(reading(card.light(), profile)).stream())
                .findFirst()
                .ifPresent(tint -> add(Kind.CARD_TINTED, "the card looks " + tint + ": the light is far from daylight, "
                        + "or the marked area is no grey card; photograph a grey card in daylight, or mark it where it "
                        + "lies in the picture as it stands upright"));
        LightFall.of(cards, needles, profile).ifPresent(words -> add(Kind.UNEVEN_LIGHT, words));
    }

    private void leftOver(double difference) {
        if (difference > MISFIT) {
            add(Kind.CHART_MISFIT, "the patches of the chart lie " + String.format(Locale.ROOT, "%.1f", difference)
                    + " from their known colours on average: see that each patch is marked where it lies and has its "
                    + "own colour, and that light falls evenly");
        }
    }

    /** A chart marked beside where it lies has the edges of its patches inside the areas that are read. */
    private void edges(List<Known> patches, Profile profile) {
        long torn = patches.stream().filter(patch -> patch.lab().lightness() > DARK
                && LightFall.across(patch.quarters(), profile) > EDGE).count();
        if (torn >= 2 && cautions.stream().noneMatch(caution -> caution.kind() == Kind.CHART_MISFIT)) {
            add(Kind.CHART_MISFIT, torn + " patches of the chart have an edge in them: see that its area runs from the "
                    + "outer edge of the first patches to that of the last, without the frame");
        }
    }

    private void mixed(double unlevelness) {
        if (unlevelness > MIXED) {
            add(Kind.NEEDLES_MIXED, "the needles' area is very uneven: see that it lies on the needles alone; its last "
                    + "two figures are width and height, not the right and lower edge");
        }
    }

    private void small(List<Known> patches, Light needles) {
        int card = patches.stream().mapToInt(patch -> patch.light().pixels()).min().orElse(FEWEST_OF_CARD);
        if (needles.pixels() < FEWEST_OF_NEEDLES) {
            add(Kind.AREA_SMALL, "the needles' area has only " + pixels(needles.pixels()) + " of the "
                    + FEWEST_OF_NEEDLES + " that a colour needs: mark more of the needles, or photograph nearer");
        } else if (card < FEWEST_OF_CARD) {
            add(Kind.AREA_SMALL, "the card's area has only " + pixels(card) + " of the " + FEWEST_OF_CARD
                    + " that it needs: mark more of the card, or photograph nearer");
        }
    }

    private void picture(Negative negative) {
        if (!negative.profile().understood()) {
            add(Kind.PROFILE_UNREADABLE, "the picture's colour profile cannot be read, so its colours were taken as "
                    + "sRGB: export the picture in sRGB, or use it as the camera saved it");
        }
        if (negative.kind() == FileKind.JPEG && (negative.pixels() < SMALL_PICTURE || negative.coarse())) {
            add(Kind.PICTURE_SMALL, (negative.coarse()
                    ? "the picture was stored with so much loss that colours suffer"
                    : "the picture is only " + negative.uprightWidth() + " by " + negative.uprightHeight()
                            + " pixels and was stored with loss")
                    + ", as when it was sent by a messenger: use it as the camera saved it");
        }
    }

    private static Xyz reading(Light light, Profile profile) {
        return Xyz.of(profile.toXyz().times(light.red(), light.green(), light.blue()));
    }

    private static String pixels(int count) {
        return count == 1 ? "1 pixel" : count + " pixels";
    }

    private static long percent(double share) {
        return StrictMath.max(1, StrictMath.round(100 * share));
    }

    private void add(Kind kind, String words) {
        cautions.add(new Caution(kind, words));
    }
}
