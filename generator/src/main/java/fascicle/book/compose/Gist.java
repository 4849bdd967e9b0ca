package fascicle.book.compose;

import fascicle.book.figures.Figures;
import fascicle.book.words.Words;
import fascicle.notebook.Dye;
import fascicle.notebook.Needles;
import fascicle.notebook.Noted;
import fascicle.workings.EntryWorking;
import fascicle.workings.NeedleFigures;
import fascicle.workings.PartFigures;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What was done, in one line: needles, dyes, acid, liquor ratio, and how the needles were held hot. */
final class Gist {

    private final Materials materials;
    private final Words words;
    private final Figures figures;
    private final Heating heating;

    Gist(Materials materials) {
        this.materials = materials;
        this.words = materials.words();
        this.figures = materials.figures();
        this.heating = new Heating(materials);
    }

    /** The line; empty where nothing of it is known. */
    String of(EntryWorking working) {
        return Stream.of(needles(working), dyes(working), acid(working),
                        figures.amount(working.bath().ratio(), "ratio", working.bath().about()),
                        heating.held(working.entry().recipe().heat()))
                .flatMap(Optional::stream).collect(Collectors.joining(words.say("gist.between")));
    }

    private Optional<String> needles(EntryWorking working) {
        NeedleFigures needles = working.needles();
        Needles.Weighed state = working.entry().needles().state();
        Optional<String> weight = figures.amount(needles.grams(), "g", needles.about());
        Optional<String> weighed = weight.isEmpty() || state == Needles.Weighed.DRY ? Optional.empty()
                : Optional.of(words.name("weighed", state));
        return joined(Stream.of(needles.condition().map(materials.index()::condition), weight, weighed));
    }

    private Optional<String> dyes(EntryWorking working) {
        return parts(working.bath().dye().stream());
    }

    private Optional<String> acid(EntryWorking working) {
        return parts(working.bath().assistants().stream().filter(this::isAcid));
    }

    private boolean isAcid(PartFigures part) {
        return materials.index().dye(part.is()).flatMap(Dye::kind).map(Noted::value)
                .filter(Dye.Kind.ACID::equals).isPresent();
    }

    private Optional<String> parts(Stream<PartFigures> parts) {
        List<String> said = parts.map(this::part).toList();
        return said.isEmpty() ? Optional.empty() : Optional.of(String.join(words.say("gist.and"), said));
    }

    private String part(PartFigures part) {
        return new Amounts(materials).inBrief(part).map(amount -> words.say("gist.part", part.called(), amount))
                .orElse(part.called());
    }

    private Optional<String> joined(Stream<Optional<String>> pieces) {
        String text = pieces.flatMap(Optional::stream).collect(Collectors.joining(words.say("pieces")));
        return text.isEmpty() ? Optional.empty() : Optional.of(text);
    }
}
