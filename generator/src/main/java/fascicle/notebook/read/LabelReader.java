package fascicle.notebook.read;

import fascicle.notebook.Dye;
import fascicle.notebook.Noted;
import fascicle.notebook.label.HazardStatement;
import fascicle.notebook.label.HazardStatements;
import fascicle.notebook.text.EditDistance;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;

/** Reads what a pack warns of. */
final class LabelReader {

    private enum Signal { DANGER, WARNING }

    private LabelReader() {}

    /** The label; it may be empty, where the maker looked and the pack has none, but has to say so. */
    static Optional<Dye.Label> label(Fields fields) {
        return fields.map("label").flatMap(map -> {
            boolean said = map.has("signal") || map.has("says");
            Dye.Label label = new Dye.Label(map.word("signal", Signal.class).map(noted -> noted.map(Fields::spelled)),
                    map.list("says", Scalar.TEXT));
            label.says().forEach(says -> check(map, says));
            map.done();
            if (!said) {
                map.findings().warning(fields.placeOf("label"), "“label” says nothing and counts as left out; copy the "
                        + "pack’s codes under “says”, or write “label: {says: []}” where you looked and the pack has "
                        + "none");
            }
            return said ? Optional.of(label) : Optional.empty();
        });
    }

    /** A pack may bear a newer code than the program knows, so an unknown one is a warning and is shown as written. */
    private static void check(Fields map, Noted<String> says) {
        HazardStatement statement = HazardStatement.read(says.value());
        if (statement.wording().isPresent()) {
            return;
        }
        String found = "“says”: “" + says.written() + "” ";
        if (statement.isPrecaution()) {
            map.findings().warning(says.place(), found + "tells how to take care and not what the hazard is; under "
                    + "“says” stand codes such as H318, and under “cautions” what to take care of, in words");
        } else {
            map.findings().warning(says.place(), found + "is no hazard statement known here and is shown as it stands; "
                    + meant(statement.code()).map(code -> "did you mean “" + code + "”? Otherwise compare")
                            .orElse("compare") + " it with the pack, where codes read H318, H360FD or H301+H311");
        }
    }

    /** The one code a slip of the pen away, or the one with two figures swapped; with several, better none than any. */
    private static Optional<String> meant(String written) {
        String lower = written.toLowerCase(Locale.ROOT);
        return only(code -> sorted(code).equals(sorted(lower))).or(() -> only(code ->
                EditDistance.between(code.toLowerCase(Locale.ROOT), lower) <= 1));
    }

    private static Optional<String> only(Predicate<String> fits) {
        List<String> codes = HazardStatements.codes().stream().filter(fits).toList();
        return codes.size() == 1 ? Optional.of(codes.get(0)) : Optional.empty();
    }

    private static String sorted(String code) {
        char[] signs = code.toLowerCase(Locale.ROOT).toCharArray();
        Arrays.sort(signs);
        return new String(signs);
    }
}
