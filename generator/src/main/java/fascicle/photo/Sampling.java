package fascicle.photo;

import fascicle.colour.Lab;
import fascicle.colour.Unlevelness;
import fascicle.photo.Sample.Against;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads the colour of an area of a picture against patches of known colour. */
final class Sampling {

    /** Parts along each side into which the needles' area is cut to see whether it is level. */
    private static final int PARTS = 6;

    /** Pixels of a part below which the grain of the picture would count as unlevelness. */
    private static final int FEWEST_OF_PART = 100;

    private final Negative negative;

    private Sampling(Negative picture) {
        negative = picture;
    }

    static Sample of(Negative negative, Area needles, List<Patch> card) throws UnreadablePhotograph {
        if (!negative.coloured()) {
            throw new UnreadablePhotograph(
                    "is in black and white, so there is no colour to read; use the one in colour");
        }
        return new Sampling(negative).sample(needles, card);
    }

    private Sample sample(Area needles, List<Patch> card) throws UnreadablePhotograph {
        Region region = stored(needles);
        Plot plot = new Plot(region, side(region, PARTS, FEWEST_OF_PART));
        List<Plot> cardPlots = card.stream().map(Patch::at).map(this::stored)
                .map(at -> new Plot(at, side(at, 2, 1))).toList();
        List<Plot> all = new ArrayList<>(cardPlots);
        all.add(plot);
        new Meter(negative).read(all);

        List<Known> patches = new ArrayList<>();
        for (int i = 0; i < card.size(); i++) {
            Plot at = cardPlots.get(i);
            patches.add(new Known(card.get(i).known(), at.region(), at.light(), at.parts()));
        }
        Light light = plot.light();
        Correction correction = correction(patches);
        List<Lab> parts = plot.parts().stream().map(correction::lab).toList();
        double unlevelness = Unlevelness.of(parts);
        List<Caution> cautions = Misgivings.about(negative, region, light, unlevelness, patches, correction);
        return new Sample(correction.lab(light), correction.against(), light.counted(), unlevelness,
                Certainty.of(Certainty.usual(correction.against()), correction.leftOver(), cautions),
                correction.leftOver(), cautions);
    }

    private Correction correction(List<Known> patches) throws UnreadablePhotograph {
        if (patches.isEmpty()) {
            return new Correction(Against.NOTHING, negative.profile().toXyz(), OptionalDouble.empty());
        }
        Optional<Correction> chart = Chart.correction(patches);
        if (chart.isPresent()) {
            return chart.get();
        }
        return GreyCard.correction(cards(patches), negative.profile()).map(correction -> correction.over(patches))
                .orElseThrow(() -> new UnreadablePhotograph(
                        "is black where the card should be; mark the card where it lies"));
    }

    /** Greys rather than colours, and those whose light is whole rather than those whose light is cut off. */
    private static List<Known> cards(List<Known> patches) {
        List<Known> grey = patches.stream().filter(Known::grey).toList();
        List<Known> cards = grey.isEmpty() ? patches : grey;
        List<Known> whole = cards.stream().filter(card -> !card.light().clipped()).toList();
        return whole.isEmpty() ? cards : whole;
    }

    private Region stored(Area area) {
        Region upright = Region.of(area, negative.uprightWidth(), negative.uprightHeight());
        return negative.orientation().stored(upright, negative.width(), negative.height());
    }

    /** As many parts along a side as are wanted, and fewer where they would be too small. */
    private static int side(Region region, int wanted, int fewest) {
        int bySize = (int) StrictMath.sqrt((double) region.pixels() / fewest);
        int byShape = StrictMath.min(region.width(), region.height());
        return StrictMath.max(1, StrictMath.min(wanted, StrictMath.min(bySize, byShape)));
    }
}
