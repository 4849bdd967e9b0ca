package fascicle.cli;

import fascicle.book.lookup.Trait;
import fascicle.colour.ColourNames;
import fascicle.notebook.Conditions;
import fascicle.notebook.Dye;
import fascicle.notebook.Ids;
import fascicle.notebook.Method;
import fascicle.notebook.NeedleLot;
import fascicle.notebook.Notebook;
import fascicle.notebook.Outcome;
import fascicle.notebook.read.Suggestion;
import fascicle.workings.Group;
import fascicle.workings.Workings;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** What a call may name of a notebook, used by an entry or not. */
final class KnownChoices {

    private final Workings workings;

    KnownChoices(Workings workings) {
        this.workings = workings;
    }

    /** The id that was meant, spelt as the notebook spells it; a wrong call where there is none. */
    String id(Trait trait, String written) {
        if (trait == Trait.YEAR) {
            return year(written);
        }
        List<String> known = ids(trait);
        return known.stream().filter(id -> Ids.same(id, written)).findFirst().orElseThrow(() ->
                new WrongCall("There is no " + called(trait) + " “" + written + "”"
                        + Suggestion.of(written, known).map(near -> "; did you mean “" + near + "”?")
                                .orElse(trait == Trait.VERDICT || trait == Trait.CONDITION || trait == Trait.FAMILY
                                        ? "; there are " + String.join(", ", known) + "." : ".")));
    }

    private static String year(String written) {
        if (!written.matches("[0-9]{4}")) {
            throw new WrongCall("“" + written + "” is no year; write it with four digits, such as 2026.");
        }
        return written;
    }

    private List<String> ids(Trait trait) {
        Notebook notebook = workings.notebook();
        return switch (trait) {
            case CONDITION -> Stream.concat(
                            workings.groups(Group.Kind.CONDITION).stream().map(Group::id),
                            Conditions.of(notebook.cover()).all().stream().map(Conditions.Condition::id))
                    .distinct().toList();
            case VERDICT -> Stream.of(Outcome.Verdict.values()).map(Outcome.Verdict::word).toList();
            case YEAR -> workings.groups(Group.Kind.YEAR).stream().map(Group::id).toList();
            case FAMILY -> ColourNames.families().stream()
                    .map(family -> family.toLowerCase(Locale.ROOT).replace(' ', '-')).toList();
            case LOT -> notebook.lots().stream().map(NeedleLot::id).toList();
            case DYE -> notebook.dyes().stream().map(Dye::id).toList();
            case METHOD -> notebook.methods().stream().map(Method::id).toList();
        };
    }

    private static String called(Trait trait) {
        return switch (trait) {
            case LOT -> "needle lot";
            case DYE -> "dye or assistant";
            case FAMILY -> "colour family";
            default -> trait.word();
        };
    }
}
