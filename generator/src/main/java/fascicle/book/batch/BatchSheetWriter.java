package fascicle.book.batch;

import fascicle.book.figures.Figures;
import fascicle.book.words.Words;
import fascicle.workings.PartFigures;
import fascicle.workings.Scaled;
import fascicle.workings.SoakFigures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Writes the sheet of a batch. */
final class BatchSheetWriter {

    private final Scaled scaled;
    private final int pots;
    private final PartWords parts;
    private final Words words;
    private final Figures figures;

    BatchSheetWriter(Scaled scaled, PartWords parts, Words words) {
        this.scaled = scaled;
        this.pots = scaled.pots().orElse(1);
        this.parts = parts;
        this.words = words;
        this.figures = new Figures(words);
    }

    BatchSheet sheet() {
        StepNames names = StepNames.of(scaled, words);
        List<BatchSheet.Bath> baths = new ArrayList<>();
        scaled.presoak().ifPresent(soak -> baths.add(soak(words.say("step.presoak"), soak)));
        soaks(baths, names.before(), scaled.before());
        baths.add(new BatchSheet.Bath(Optional.empty(), dyebath()));
        soaks(baths, names.after(), scaled.after());
        if (!scaled.finish().isEmpty()) {
            baths.add(new BatchSheet.Bath(Optional.of(words.say("step.finish")),
                    scaled.finish().stream().map(part -> part(part, 1)).toList()));
        }
        return new BatchSheet(List.copyOf(baths));
    }

    private List<BatchSheet.Row> dyebath() {
        List<BatchSheet.Row> rows = new ArrayList<>();
        rows.add(liquid("fact.water", scaled.waterMl(), scaled.about(), pots));
        rows.add(row(BatchSheet.Kind.SUM, "batch.liquor", scaled.liquorMl(), "ml", scaled.about(), pots));
        if (scaled.reused()) {
            rows.add(liquid("batch.standing", scaled.standingMl().value(), scaled.standingMl().about(), pots));
        }
        scaled.parts().forEach(part -> rows.add(part(part, pots)));
        scaled.extract().ifPresent(plant -> {
            rows.add(row(BatchSheet.Kind.POURED, "batch.extract-plant", plant.plantGrams(), "g", plant.about(), pots));
            rows.add(liquid("batch.extract-water", plant.waterMl(), plant.about(), pots));
        });
        return List.copyOf(rows);
    }

    private void soaks(List<BatchSheet.Bath> baths, List<String> names, List<SoakFigures> soaks) {
        for (int i = 0; i < soaks.size(); i++) {
            baths.add(soak(names.get(i), soaks.get(i)));
        }
    }

    private BatchSheet.Bath soak(String name, SoakFigures soak) {
        return new BatchSheet.Bath(Optional.of(name), Stream.concat(
                Stream.of(liquid("fact.water", soak.waterMl(), soak.about(), 1)),
                soak.with().stream().map(part -> part(part, 1))).toList());
    }

    private BatchSheet.Row liquid(String key, OptionalDouble ml, boolean about, int shares) {
        return row(BatchSheet.Kind.POURED, key, ml, "ml", about, shares);
    }

    private BatchSheet.Row row(BatchSheet.Kind kind, String key, OptionalDouble size, String unit, boolean about,
            int shares) {
        return new BatchSheet.Row(kind, Optional.empty(), words.say(key),
                figures.amount(size, unit, about).stream().toList(),
                size.stream().mapToObj(whole -> figures.amount(whole / shares, unit, about)).toList(),
                Optional.empty());
    }

    private BatchSheet.Row part(PartFigures part, int shares) {
        return new BatchSheet.Row(BatchSheet.Kind.POURED, Optional.of(part.part()),
                Additions.named(part.called(), part.part(), words), parts.ways(part),
                parts.ways(part.sharedBy(shares)), part.asWritten());
    }
}
