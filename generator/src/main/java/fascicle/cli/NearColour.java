package fascicle.cli;

import fascicle.book.lookup.Lookup;
import fascicle.colour.Lab;
import fascicle.colour.Rgb;
import fascicle.notebook.read.Suggestion;
import fascicle.workings.EntryWorking;
import fascicle.workings.Workings;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The colour that a call asks to be near to. */
final class NearColour {

    private static final String NUMBER = "([-\u2212+]?[0-9]{1,3}(?:\\.[0-9]{1,9})?)";
    private static final Pattern LAB = Pattern.compile("\\s*" + NUMBER + "\\s*[,; ]\\s*" + NUMBER + "\\s*[,; ]\\s*"
            + NUMBER + "\\s*");

    private NearColour() {}

    /**
     * A colour as taken.
     *
     * @param colour under D50
     * @param remark what a person should hear of it
     */
    record Taken(Lab colour, Optional<String> remark) {}

    /** An entry by its tag or id, else a screen colour, else Lab; a wrong call where it is none of them. */
    static Taken of(String written, Workings workings) {
        Optional<EntryWorking> entry = workings.entries().stream().filter(working -> working.entry().tag()
                .filter(tag -> tag.value().equals(written)).isPresent()).findFirst().or(() -> workings.entry(written));
        Optional<Lab> screen = Rgb.read(written).map(Rgb::toLab);
        if (entry.isPresent()) {
            Lab colour = Lookup.colour(entry.get()).orElseThrow(() -> new WrongCall("“" + written + "” is "
                    + entry.get().id() + ", which has no colour in figures; name another."));
            return new Taken(colour, screen.map(unused -> "“" + written + "” is taken as the tag of "
                    + entry.get().id() + "; write #" + written + " for the screen colour."));
        }
        return screen.or(() -> lab(written)).map(colour -> new Taken(colour, Optional.empty()))
                .orElseThrow(() -> new WrongCall("“" + written + "” is no colour; " + Suggestion
                        .of(written, names(workings)).map(near -> "did you mean “" + near + "”?")
                        .orElse("write #7f4632, or Lab as 36.2,27.4,20.1, or an entry's tag or id.")));
    }

    private static Optional<Lab> lab(String written) {
        Matcher found = LAB.matcher(written);
        if (!found.matches()) {
            return Optional.empty();
        }
        Lab colour = new Lab(number(found.group(1)), number(found.group(2)), number(found.group(3)));
        if (colour.lightness() < 0 || colour.lightness() > 100) {
            throw new WrongCall("“" + written
                    + "” has a lightness outside 0 to 100; Lab is written as 36.2,27.4,20.1.");
        }
        return Optional.of(colour);
    }

    private static double number(String text) {
        return Double.parseDouble(text.replace('\u2212', '-'));
    }

    private static List<String> names(Workings workings) {
        return workings.entries().stream().flatMap(working -> Stream.concat(Stream.of(working.id()),
                working.entry().tag().map(tag -> tag.value()).stream())).toList();
    }
}
