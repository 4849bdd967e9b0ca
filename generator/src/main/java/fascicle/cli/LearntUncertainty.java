package fascicle.cli;

import fascicle.book.figures.Figures;
import fascicle.colour.ColourDifference;
import fascicle.photo.Caution;
import fascicle.photo.Sample;
import fascicle.photo.Uncertainty;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What things of known colour teach of a maker's photographs. */
final class LearntUncertainty {

    /** Beyond this a mistake is likelier than so bad a phone ({@code common practice, no source}). */
    private static final double TOO_FAR = 12;

    private final List<Double> differences = new ArrayList<>();
    private final List<String> lines = new ArrayList<>();
    private final Set<String> cautions = new LinkedHashSet<>();
    private final Set<Path> photographs = new HashSet<>();
    private long worst;

    /** Adds a thing as it was read. */
    void add(KnownThings.Thing thing, Sample sample) {
        if (sample.against() == Sample.Against.NOTHING) {
            throw new WrongCall("Things of known colour are read against a card, as the needles are; add --card "
                    + "x,y,w,h.");
        }
        double difference = ColourDifference.ciede2000(thing.known(), sample.lab());
        if (differences.stream().noneMatch(before -> before >= difference)) {
            worst = thing.row();
        }
        differences.add(difference);
        photographs.add(thing.photo());
        lines.add("row " + thing.row() + ", " + thing.photo().getFileName() + ": known "
                + thing.known().toRgb().hex() + ", read "
                + sample.lab().toRgb().hex() + ", ΔE00 " + Figures.fixed(difference, 1));
        sample.cautions().stream().map(Caution::words).forEach(cautions::add);
    }

    /** CIEDE2000 of each thing, in order. */
    List<Double> differences() {
        return List.copyOf(differences);
    }

    /** How far such photographs lie from the truth, rounded up to a tenth, so that page and notebook say the same. */
    double uncertainty() {
        return new BigDecimal(Uncertainty.of(differences)).setScale(1, RoundingMode.CEILING).doubleValue();
    }

    /** What to heed, each once. */
    List<String> cautions() {
        List<String> all = new ArrayList<>(cautions);
        if (differences.size() < Uncertainty.ENOUGH) {
            all.add("this rests on " + differences.size() + (differences.size() == 1 ? " thing" : " things")
                    + "; photograph " + Uncertainty.ENOUGH + " or more, as different as your needles are");
        }
        if (photographs.size() == 1) {
            all.add("all lie in one photograph; take three or more, on different days, and name them all in the table");
        }
        if (uncertainty() > TOO_FAR) {
            all.add("these lie so far off that an area or a known colour is likely mistaken; look first at row "
                    + worst);
        }
        return List.copyOf(all);
    }

    /** The same, told to a person. */
    List<String> inWords() {
        List<String> told = new ArrayList<>(lines);
        told.add("Photographs taken like these lie within ΔE00 " + uncertainty() + " of the truth, nineteen times of "
                + "twenty: an estimate.");
        if (uncertainty() <= TOO_FAR && differences.size() >= Uncertainty.ENOUGH) {
            told.add("Write it into notebook.yaml: photo-uncertainty: " + uncertainty());
        }
        cautions().forEach(words -> told.add("Heed: " + words + "."));
        return List.copyOf(told);
    }
}
