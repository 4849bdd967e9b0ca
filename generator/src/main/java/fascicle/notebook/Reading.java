package fascicle.notebook;

import fascicle.colour.Lab;
import fascicle.colour.Rgb;
import java.util.List;
import java.util.Optional;

/**
 * One measured or judged colour.
 *
 * @param colour how it was read
 * @param wet whether the needles were wet; such a reading is kept and never compared
 * @param place where it stands
 */
public record Reading(How colour, boolean wet, Place place) {

    /** How a colour was read. */
    public sealed interface How {

        /**
         * The colour as figures, where there are any.
         *
         * @return the colour under D50; nothing for a photograph not yet read or a judgement by eye
         */
        default Optional<Lab> lab() {
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
        public Optional<Lab> lab() {
            return Optional.of(colour);
        }
    }

    /**
     * As a screen colour.
     *
     * @param rgb the sRGB value
     */
    public record Screen(Rgb rgb) implements How {
        @Override
        public Optional<Lab> lab() {
            return Optional.of(rgb.toLab());
        }
    }

    /**
     * From a photograph.
     *
     * @param file path of the picture, relative to the notebook
     * @param needles where the needles lie in it
     * @param card the grey card, if there is one
     */
    public record Photograph(String file, Optional<Area> needles, Optional<Card> card) implements How {}

    /**
     * By eye against the sample of another tag.
     *
     * @param tag that sample's tag
     * @param but how it differs, in the maker's words
     */
    public record ByEye(Noted<String> tag, Optional<String> but) implements How {}

    /**
     * A part of a picture.
     *
     * @param x left edge, per cent of the width
     * @param y upper edge, per cent of the height
     * @param width per cent of the width
     * @param height per cent of the height
     */
    public record Area(double x, double y, double width, double height) {}

    /**
     * A card of known reflectance in a picture.
     *
     * @param at where it lies
     * @param grey its reflectance in percent; 18 where unsaid
     */
    public record Card(Area at, double grey) {}

    /**
     * The measured colours of dry needles among readings.
     *
     * @param readings any readings
     * @return those that may be compared, in order
     */
    public static List<Lab> comparable(List<Reading> readings) {
        return readings.stream().filter(reading -> !reading.wet()).flatMap(reading -> reading.colour().lab().stream()).toList();
    }
}
