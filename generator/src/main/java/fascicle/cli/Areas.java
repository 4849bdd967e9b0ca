package fascicle.cli;

import fascicle.photo.Area;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Areas of a picture as a call names them. */
final class Areas {

    private static final Pattern NUMBER = Pattern.compile("[0-9]{1,3}(\\.[0-9]{1,9})?");

    private Areas() {}

    /** Reads {@code 12,20,30,25}: left edge, upper edge, width, height, in per cent. */
    static Area of(String option, String written) {
        String[] parts = written.strip().split("\\s*[,;]\\s*|\\s+", -1);
        if (parts.length != 4 || !Stream.of(parts).allMatch(part -> NUMBER.matcher(part).matches())) {
            throw new WrongCall("“" + written + "” after " + option + " is no area of a picture; write left edge, "
                    + "upper edge, width and height in per cent, as in 12,20,30,25.");
        }
        try {
            return new Area(Double.parseDouble(parts[0]), Double.parseDouble(parts[1]), Double.parseDouble(parts[2]),
                    Double.parseDouble(parts[3]));
        } catch (IllegalArgumentException outside) {
            throw new WrongCall("“" + written + "” after " + option + " does not lie in the picture; left edge and "
                    + "width together are at most 100, upper edge and height too, and neither width nor height is 0.");
        }
    }
}
