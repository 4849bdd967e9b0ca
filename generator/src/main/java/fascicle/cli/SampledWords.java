package fascicle.cli;

import fascicle.book.figures.Figures;
import fascicle.colour.ColourNames;
import fascicle.photo.Caution;
import fascicle.photo.Sample;
import java.util.ArrayList;
import java.util.List;

/** A colour that was read off a photograph, told to a person. */
final class SampledWords {

    private SampledWords() {}

    /** A few lines: the colour, how sure it is, how even, what to heed. */
    static List<String> of(Sample sample, Figures figures) {
        List<String> lines = new ArrayList<>();
        lines.add(ColourNames.nearest(sample.lab()).name() + ", " + sample.lab().toRgb().hex() + ", Lab (D50) "
                + figures.lab(sample.lab()) + (sample.lab().displayable() ? "" : " (stronger than a screen can show)"));
        lines.add(switch (sample.against()) {
            case NOTHING -> "By eye: there is no card to read it against, so it is compared with nothing.";
            case GREY_CARD, CHART -> "An estimate: within " + figures.difference(sample.uncertainty())
                    + " of the truth.";
        });
        sample.leftOver().ifPresent(left -> lines.add("The chart's own colours are met within "
                + figures.difference(left) + " on average."));
        lines.add("Unlevelness " + figures.difference(sample.unlevelness()) + ", over " + sample.pixels() + " pixels.");
        sample.cautions().stream().map(Caution::words).forEach(words -> lines.add("Heed: " + words + "."));
        return List.copyOf(lines);
    }
}
