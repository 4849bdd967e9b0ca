package fascicle.workings;

import fascicle.notebook.Dye;
import fascicle.notebook.Findings;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Whether things stand in one bath that undo each other. Of a plant nobody knows how sour it makes a bath. */
final class MixingChecks {

    private final Findings findings;

    MixingChecks(Findings findings) {
        this.findings = findings;
    }

    /** Checks each bath of a recipe by itself. */
    void check(WorkedRecipe recipe) {
        bath(recipe.bath().lines());
        Stream.of(recipe.presoak().stream(), recipe.before().stream(), recipe.after().stream()).flatMap(soaks -> soaks)
                .forEach(soak -> bath(soak.mixture().lines()));
    }

    private void bath(List<Line> lines) {
        Optional<Line> acid = first(lines, Dye.Kind.ACID);
        Optional<Line> alkali = first(lines, Dye.Kind.ALKALI);
        if (acid.isPresent() && alkali.isPresent()) {
            boolean acidFirst = lines.indexOf(acid.get()) < lines.indexOf(alkali.get());
            Line later = acidFirst ? alkali.get() : acid.get();
            String said = acidFirst
                    ? called(alkali.get()) + " is an alkali, and " + called(acid.get()) + ", an acid,"
                    : called(acid.get()) + " is an acid, and " + called(alkali.get()) + ", an alkali,";
            findings.warning(later.part().is().place(), said + " is in the same bath: they cancel each other out, and "
                    + "may foam up; leave one out, or give each a bath of its own");
        }
    }

    private static String called(Line line) {
        return "“" + line.thing().called() + "”";
    }

    private static Optional<Line> first(List<Line> lines, Dye.Kind kind) {
        return lines.stream().filter(line -> !line.thing().isPlant())
                .filter(line -> line.thing().kind().filter(kind::equals).isPresent()).findFirst();
    }
}
