package fascicle.book.compose;

import fascicle.book.batch.BatchSheet;
import fascicle.book.batch.BatchWords;
import fascicle.book.data.DosesJson;
import fascicle.book.figures.Figures;
import fascicle.book.page.Markup;
import fascicle.book.page.Scaling;
import fascicle.book.words.Words;
import fascicle.notebook.Noted;
import fascicle.notebook.Recipe;
import fascicle.workings.Measuring;
import fascicle.workings.Scaled;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A recipe worked out for the weights of needles that the maker names, or for three usual ones. */
final class ScalingComposer {

    private static final List<Double> USUAL_GRAMS = List.of(25.0, 50.0, 100.0);

    private final Materials materials;
    private final Words words;
    private final Figures figures;
    private final Measuring measuring;

    ScalingComposer(Materials materials) {
        this.materials = materials;
        this.words = materials.words();
        this.figures = materials.figures();
        this.measuring = materials.workings().measuring();
    }

    /** The table for an entry or a method; nothing where it cannot be scaled. */
    Optional<Scaling> of(String id, Recipe recipe) {
        List<Double> named = materials.workings().notebook().cover().weights().stream()
                .map(Noted::value).map(weight -> weight.value()).toList();
        List<Scaled> columns = (named.isEmpty() ? USUAL_GRAMS : named).stream()
                .flatMap(grams -> materials.workings().scale(id, grams).stream()).toList();
        if (columns.isEmpty()) {
            return Optional.empty();
        }
        List<List<BatchSheet.Line>> sheets = columns.stream()
                .map(scaled -> BatchSheet.of(scaled, measuring, words).lines()).toList();
        if (sheets.stream().flatMap(List::stream).allMatch(line -> line.row().whole().isEmpty())) {
            return Optional.empty();
        }
        BatchWords said = new BatchWords(measuring, words);
        return Optional.of(new Scaling(columns.stream().map(Scaled::needlesGrams)
                .map(grams -> figures.amount(grams, "g", false)).toList(),
                Stream.concat(pots(columns, said), rows(sheets)).toList(), remarks(columns, said),
                new Markup(materials.workings().doses(id)
                        .map(doses -> DosesJson.of(doses, materials.care().strain(recipe), words)).orElseThrow())));
    }

    /** Remarks on all columns, and those on some with the weights they are for. */
    private List<String> remarks(List<Scaled> columns, BatchWords said) {
        Map<String, List<String>> weights = new LinkedHashMap<>();
        columns.forEach(column -> said.remarks(column).forEach(remark -> weights
                .computeIfAbsent(remark, unused -> new ArrayList<>())
                .add(figures.amount(column.needlesGrams(), "g", false))));
        return weights.entrySet().stream().map(remark -> remark.getValue().size() == columns.size() ? remark.getKey()
                : words.say("batch.remark-for", String.join(words.say("pieces"), remark.getValue()), remark.getKey()))
                .toList();
    }

    /** The row of vessels; none where no vessel is named. */
    private Stream<Scaling.Row> pots(List<Scaled> columns, BatchWords said) {
        List<List<String>> cells = columns.stream().map(column -> said.pots(column).stream().toList()).toList();
        return cells.stream().allMatch(List::isEmpty) ? Stream.empty()
                : Stream.of(new Scaling.Row(words.say(columns.stream().anyMatch(column -> column.pots().orElse(1) > 1)
                        ? "batch.pots-row-together" : "batch.pots-row"), cells));
    }

    /** Every line, known or not: what is missing here is missing by the stove. */
    private Stream<Scaling.Row> rows(List<List<BatchSheet.Line>> sheets) {
        return IntStream.range(0, sheets.get(0).size())
                .mapToObj(line -> new Scaling.Row(sheets.get(0).get(line).thing(words),
                        sheets.stream().map(sheet -> told(sheet.get(line).row())).toList()));
    }

    /** The whole, and where that is shared out, what each pot gets of it: nobody divides by the stove. */
    private List<String> told(BatchSheet.Row row) {
        return row.isShared() ? Stream.concat(row.whole().stream(), Stream.of(words.say("batch.each-pot",
                String.join(words.say("pieces"), row.each())))).toList() : row.told(words);
    }
}
