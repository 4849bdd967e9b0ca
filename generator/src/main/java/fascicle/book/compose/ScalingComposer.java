package fascicle.book.compose;

import fascicle.book.figures.Figures;
import fascicle.book.page.Scaling;
import fascicle.book.words.Words;
import fascicle.notebook.Noted;
import fascicle.workings.PartFigures;
import fascicle.workings.Scaled;
import fascicle.workings.SoakFigures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;

/** A recipe worked out for the weights of needles that the maker names, or for three usual ones. */
final class ScalingComposer {

    private static final List<Double> USUAL_GRAMS = List.of(25.0, 50.0, 100.0);

    private final Materials materials;
    private final Words words;
    private final Figures figures;

    ScalingComposer(Materials materials) {
        this.materials = materials;
        this.words = materials.words();
        this.figures = materials.figures();
    }

    /** The table for an entry or a method; nothing where it cannot be scaled. */
    Optional<Scaling> of(String id) {
        List<Double> named = materials.workings().notebook().cover().weights().stream()
                .map(Noted::value).map(weight -> weight.value()).toList();
        List<Scaled> columns = (named.isEmpty() ? USUAL_GRAMS : named).stream()
                .flatMap(grams -> materials.workings().scale(id, grams).stream()).toList();
        if (columns.isEmpty()) {
            return Optional.empty();
        }
        List<Scaling.Row> rows = new ArrayList<>();
        amounts(rows, words.say("fact.water"), columns, Scaled::waterMl);
        amounts(rows, words.say("fact.liquor"), columns, Scaled::liquorMl);
        parts(rows, Optional.empty(), columns, Scaled::parts);
        soak(rows, words.say("step.presoak"), columns, scaled -> scaled.presoak());
        for (int i = 0; i < columns.get(0).before().size(); i++) {
            int place = i;
            soak(rows, title(columns.get(0).before().get(i)), columns, scaled -> Optional.of(scaled.before().get(place)));
        }
        for (int i = 0; i < columns.get(0).after().size(); i++) {
            int place = i;
            soak(rows, title(columns.get(0).after().get(i)), columns, scaled -> Optional.of(scaled.after().get(place)));
        }
        parts(rows, Optional.of(words.say("step.finish")), columns, Scaled::finish);
        boolean empty = rows.stream().allMatch(row -> row.cells().stream().allMatch(List::isEmpty));
        return empty ? Optional.empty() : Optional.of(new Scaling(
                columns.stream().map(scaled -> figures.amount(scaled.needlesGrams(), "g", false)).toList(), rows));
    }

    private String title(SoakFigures soak) {
        return soak.as().filter(as -> words.keys().contains("purpose." + as)).map(as -> words.say("purpose." + as))
                .orElseGet(() -> words.say("step.treatment"));
    }

    private void soak(List<Scaling.Row> rows, String step, List<Scaled> columns,
            Function<Scaled, Optional<SoakFigures>> soak) {
        if (soak.apply(columns.get(0)).isPresent()) {
            List<Scaling.Row> known = new ArrayList<>();
            amounts(known, within(words.say("fact.water"), Optional.of(step)), columns,
                    scaled -> soak.apply(scaled).map(SoakFigures::waterMl).orElse(OptionalDouble.empty()));
            parts(known, Optional.of(step), columns,
                    scaled -> soak.apply(scaled).map(SoakFigures::with).orElse(List.of()));
            known.removeIf(row -> row.cells().stream().allMatch(List::isEmpty));
            rows.addAll(known);
        }
    }

    private void amounts(List<Scaling.Row> rows, String thing, List<Scaled> columns,
            Function<Scaled, OptionalDouble> millilitres) {
        rows.add(new Scaling.Row(thing, columns.stream()
                .map(scaled -> figures.amount(millilitres.apply(scaled), "ml", false).stream().toList()).toList()));
    }

    private void parts(List<Scaling.Row> rows, Optional<String> step, List<Scaled> columns,
            Function<Scaled, List<PartFigures>> parts) {
        List<PartFigures> first = parts.apply(columns.get(0));
        for (int i = 0; i < first.size(); i++) {
            int place = i;
            rows.add(new Scaling.Row(within(first.get(i).called(), step),
                    columns.stream().map(scaled -> cell(parts.apply(scaled).get(place))).toList()));
        }
    }

    private String within(String thing, Optional<String> step) {
        return step.map(name -> words.say("scaling.in", thing, name)).orElse(thing);
    }

    private List<String> cell(PartFigures part) {
        return Stream.of(figures.amount(part.grams(), "g", part.amountAbout() || part.spooned()),
                figures.amount(part.ml(), "ml", part.amountAbout())).flatMap(Optional::stream).toList();
    }
}
