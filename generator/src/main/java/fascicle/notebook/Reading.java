package fascicle.notebook;

import fascicle.colour.Lab;
import fascicle.colour.Rgb;
import fascicle.photo.Area;
import fascicle.photo.Patch;
import fascicle.photo.Picture;
import fascicle.photo.Sample;
import java.util.List;
import java.util.Optional;

/**
 * One measured or judged colour, or a table of them.
 *
 * @param colour how it was read
 * @param wet whether the needles were wet; such a reading is kept and never compared
 * @param place where it stands
 */
public record Reading(How colour, boolean wet, Place place) {

    /** What a colour was measured with. */
    public enum Kind { METER, SCREEN, PHOTOGRAPH }

    /**
     * Colours that may be compared with others.
     *
     * @param kind what they were measured with
     * @param colours under D50, in order; at least one
     * @param uncertainty how far from the truth each may lie, as CIEDE2000
     */
    public record Measurement(Kind kind, List<Lab> colours, double uncertainty) {

        /** How far a colour meter's reading may lie from the truth ({@code common practice, no source}). */
        public static final double OF_A_METER = 1;

        /** The same of a screen colour: nobody knows how it was taken, so it is as sure as a photograph at best. */
        public static final double OF_A_SCREEN = 6;
    }

    /** How a colour was read. */
    public sealed interface How {

        /**
         * The colour as figures, where there are any; of a table their mean.
         *
         * @return the colour under D50, that of a picture without a card included; nothing for a judgement against
         *     another sample, and for a picture without an area of needles
         */
        default Optional<Lab> lab() {
            return measured().map(measurement -> Lab.mean(measurement.colours()));
        }

        /**
         * What may be compared.
         *
         * @return the colours and how sure they are; nothing for a judgement by eye
         */
        default Optional<Measurement> measured() {
            return Optional.empty();
        }
    }

    /**
     * With a meter.
     *
     * @param colour the colour under D50
     * @param written the figures as written
     */
    public record Metered(Lab colour, String written) implements How {
        @Override
        public Optional<Measurement> measured() {
            return Optional.of(new Measurement(Kind.METER, List.of(colour), Measurement.OF_A_METER));
        }
    }

    /**
     * As a screen colour.
     *
     * @param rgb the sRGB value
     */
    public record Screen(Rgb rgb) implements How {
        @Override
        public Optional<Measurement> measured() {
            return Optional.of(new Measurement(Kind.SCREEN, List.of(rgb.toLab()), Measurement.OF_A_SCREEN));
        }
    }

    /**
     * From a table that lies beside the file, as meters write them.
     *
     * @param file the table, as seen from the file that names it
     * @param read what it holds, once it has been read
     */
    public record Table(Noted<String> file, Optional<Measurement> read) implements How {
        @Override
        public Optional<Measurement> measured() {
            return read;
        }
    }

    /**
     * From a photograph.
     *
     * @param file the picture, as seen from the file that names it
     * @param needles where the needles lie in it; without it the picture is only shown
     * @param card what of known colour lies beside them
     * @param taken what was found in the picture, once it has been looked at
     */
    public record Photograph(Noted<String> file, Optional<Area> needles, Optional<Card> card, Optional<Taken> taken)
            implements How {

        @Override
        public Optional<Lab> lab() {
            return sample().map(Sample::lab);
        }

        @Override
        public Optional<Measurement> measured() {
            return sample().filter(sample -> sample.against() != Sample.Against.NOTHING).map(sample ->
                    new Measurement(Kind.PHOTOGRAPH, List.of(sample.lab()), sample.uncertainty()));
        }

        /**
         * The colour that was read.
         *
         * @return nothing where the picture is only shown
         */
        public Optional<Sample> sample() {
            return taken.flatMap(Taken::sample);
        }
    }

    /**
     * What was found in a picture.
     *
     * @param path the picture's file, relative to the notebook
     * @param picture its content and size
     * @param patches what of known colour lies in it
     * @param sample the colour of the needles
     */
    public record Taken(String path, Picture picture, List<Patch> patches, Optional<Sample> sample) {}

    /** What of known colour lies in a picture. */
    public sealed interface Card {

        /**
         * Patches, each with its place: one grey card, or several, or those of a small chart.
         *
         * @param patches in the order written
         */
        record Patches(List<Patch> patches) implements Card {}

        /**
         * A chart of equal patches in rows, whose colours stand in a table from the upper left, row by row.
         *
         * @param at where the chart lies
         * @param columns patches in a row
         * @param file the table, as seen from the file that names it
         */
        record Chart(Area at, int columns, Noted<String> file) implements Card {}
    }

    /**
     * By eye against the sample of another tag.
     *
     * @param tag that sample's tag
     * @param but how it differs, in the maker's words
     */
    public record ByEye(Noted<String> tag, Optional<String> but) implements How {}

    /**
     * What of this reading may be compared: of dry needles, and measured.
     *
     * @return the colours and how sure they are
     */
    public Optional<Measurement> measured() {
        return wet ? Optional.empty() : colour.measured();
    }

    /**
     * The measured colours of dry needles among readings.
     *
     * @param readings any readings
     * @return those that may be compared, in order
     */
    public static List<Lab> comparable(List<Reading> readings) {
        return measured(readings).stream().flatMap(measurement -> measurement.colours().stream()).toList();
    }

    /**
     * What was measured of dry needles among readings.
     *
     * @param readings any readings
     * @return what may be compared, in order
     */
    public static List<Measurement> measured(List<Reading> readings) {
        return readings.stream().flatMap(reading -> reading.measured().stream()).toList();
    }
}
