package fascicle.book.data;

import fascicle.bath.Stock;
import fascicle.bath.StockToMake;
import fascicle.book.batch.Additions;
import fascicle.measure.Scoops;
import fascicle.notebook.Noted;
import fascicle.notebook.Part;
import fascicle.workings.Measuring;
import fascicle.workings.PartFigures;
import fascicle.workings.Scaled;
import fascicle.workings.SoakFigures;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** A batch in data: totals, how many pots it takes, and how each part is measured out. */
final class BatchJson {

    private final Json json;
    private final Measuring measuring;
    private final Function<Part, OptionalDouble> solutions;

    BatchJson(Json json, Measuring measuring) {
        this(json, measuring, part -> OptionalDouble.empty());
    }

    /** Data of batches of which some lines come as solutions of a strength, g in 100 mL, that were made ahead. */
    BatchJson(Json json, Measuring measuring, Function<Part, OptionalDouble> solutions) {
        this.json = json;
        this.measuring = measuring;
        this.solutions = solutions;
    }

    /** The members of an object. */
    void write(Scaled scaled) {
        json.text("of", scaled.of());
        json.figure("needles_g", OptionalDouble.of(scaled.needlesGrams()));
        json.figure("liquor_ml", scaled.liquorMl());
        json.figure("water_ml", scaled.waterMl());
        json.figure("standing_ml", scaled.reused() ? scaled.standingMl().value() : OptionalDouble.empty());
        json.figure("ratio", scaled.ratio());
        json.yes("about", scaled.about());
        json.text("vessel", scaled.vesselId());
        json.count("pots", scaled.pots());
        json.figure("filled_percent", scaled.filled().isPresent()
                ? OptionalDouble.of(scaled.filled().getAsDouble() * 100) : OptionalDouble.empty());
        json.figure("depth_cm", scaled.depthCm());
        json.items("parts", scaled.parts(), this::part);
        json.object("extract", scaled.extract(), plant -> {
            json.figure("of_g", plant.plantGrams());
            json.figure("water_ml", plant.waterMl());
        });
        json.object("presoak", scaled.presoak(), this::soak);
        treatments("before", scaled.before());
        treatments("after", scaled.after());
        json.items("finish", scaled.finish(), this::part);
    }

    private void treatments(String name, List<SoakFigures> soaks) {
        json.items(name, soaks, soak -> {
            json.text("as", soak.as());
            soak(soak);
        });
    }

    private void soak(SoakFigures soak) {
        json.figure("water_ml", soak.waterMl());
        json.figure("liquor_ml", soak.liquorMl());
        json.items("with", soak.with(), this::part);
    }

    private void part(PartFigures part) {
        Optional<Scoops> scoops = measuring.scoops(part);
        Optional<StockToMake> toMake = measuring.stock(part);
        json.text("is", part.is());
        json.figure("g", part.grams());
        json.figure("ml", part.ml());
        json.text("by", part.by().name().toLowerCase(Locale.ROOT));
        when(json, part.part());
        json.yes("about", part.isRough());
        json.text("spoons", scoops.map(Scoops::text));
        json.figure("spoons_error_percent", scoops.stream().mapToDouble(Scoops::errorPercent).findFirst());
        OptionalDouble made = solutions.apply(part.part());
        if (made.isPresent() && part.grams().isPresent()) {
            stock(made, OptionalDouble.of(new Stock(made.getAsDouble()).millilitres(part.grams().getAsDouble())),
                    false);
        } else if (part.stockPercent().isPresent()) {
            stock(part.stockPercent(), part.ml(), false);
        } else if (toMake.isPresent()) {
            stock(OptionalDouble.of(toMake.get().percent()), OptionalDouble.of(toMake.get().millilitres()), true);
        } else {
            json.unknown("stock");
        }
    }

    /** When a part is added: as written, and in minutes where it has such; neither where it is in from the start. */
    static void when(Json json, Part part) {
        json.text("at", part.at().map(Noted::written));
        json.figure("at_minutes", Additions.minutes(part));
    }

    private void stock(OptionalDouble percent, OptionalDouble millilitres, boolean toMake) {
        json.object("stock", () -> {
            json.figure("percent", percent);
            json.figure("ml", millilitres);
            json.yes("to_make", toMake);
        });
    }
}
