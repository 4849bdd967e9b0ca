package fascicle.book.data;

import fascicle.book.ledger.Ledger;
import fascicle.colour.Grade;
import fascicle.colour.Tone;
import fascicle.notebook.Bath;
import fascicle.notebook.Entry;
import fascicle.notebook.Fastness;
import fascicle.notebook.Noted;
import fascicle.notebook.Outcome;
import fascicle.workings.BathFigures;
import fascicle.workings.ColourFigures;
import fascicle.workings.Difference;
import fascicle.workings.EntryWorking;
import fascicle.workings.HeatFigures;
import fascicle.workings.MethodWorking;
import fascicle.workings.NeedleFigures;
import fascicle.workings.PartFigures;
import fascicle.workings.PotFigures;
import fascicle.workings.RubFigures;
import fascicle.workings.SoakFigures;
import fascicle.workings.acidity.Acidities;
import fascicle.workings.acidity.AcidityFigures;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/** One entry in {@code data/book.json}, all keys present in one order. */
final class JsonEntry {

    private static final Pattern PLAIN_NUMBER = Pattern.compile("0|[1-9][0-9]{0,8}");

    private final Json json;
    private final Ledger ledger;
    private final Acidities acidities;
    private final JsonBaths baths;

    JsonEntry(Json json, Ledger ledger) {
        this.json = json;
        this.ledger = ledger;
        this.acidities = ledger.acidities();
        this.baths = new JsonBaths(json, ledger.chains());
    }

    void write(EntryWorking working) {
        Entry entry = working.entry();
        json.text("id", entry.id());
        tag(entry.tag().map(Noted::value));
        json.text("title", entry.called());
        json.text("date", entry.date().toString());
        json.text("method", entry.method().map(Noted::value));
        json.text("share", entry.share().word());
        needles(entry, working.needles());
        bath(entry.recipe().bath(), working.bath(), working.pot(), acidities.bath(working),
                () -> baths.standing(working));
        soak("presoak", working.presoak());
        heat(working.heat());
        json.object("colour", working.colour(), this::colour);
        json.object("glass", working.uptake(), uptake -> {
            json.figure("taken_up_percent", uptake.percent());
            json.figure("low", uptake.low());
            json.figure("high", uptake.high());
            json.text("why", uptake.why().map(JsonBaths::word));
        });
        json.object("outcome", entry.outcome(), this::outcome);
        json.object("fastness", entry.fastness(), this::fastness);
        json.items("window", working.fading(), fading -> {
            json.figure("after_days", OptionalDouble.of(fading.days()));
            json.figure("de00", Difference.figure(fading.faded()));
            json.text("grade", fading.grade().map(Grade::toString));
            json.figure("wool", fading.window().wool().stream().mapToDouble(Noted::value).findFirst());
        });
        ledger.stock().ifPresent(stock -> {
            json.object("kept", stock.bundle(entry.id()), bundle -> {
                json.figure("left_g", bundle.remainder().left().value());
                json.word("how", bundle.kept().how());
                json.text("use_by", bundle.useBy().map(LocalDate::toString));
            });
            json.object("cost", stock.cost(entry.id()), cost -> {
                json.figure("total", cost.total().value());
                json.figure("per_100g", cost.per100g().value());
            });
        });
    }

    private void tag(Optional<String> tag) {
        if (tag.filter(text -> PLAIN_NUMBER.matcher(text).matches()).isPresent()) {
            json.number("tag", Integer.parseInt(tag.get()));
        } else {
            json.text("tag", tag);
        }
    }

    private void needles(Entry entry, NeedleFigures needles) {
        json.object("needles", () -> {
            json.text("lot", needles.lot().map(lot -> lot.id()));
            json.text("from", entry.needles().from().map(Noted::value));
            json.text("condition", needles.condition());
            json.text("species", needles.species());
            json.figure("weight_g", needles.grams());
            json.text("weighed", entry.needles().state().word());
        });
    }

    /** A method's dyebath. */
    void bath(MethodWorking method) {
        bath(method.method().recipe().bath(), method.bath(), method.pot(), acidities.bath(method), () -> { });
    }

    private void bath(Bath bath, BathFigures figures, PotFigures pot, AcidityFigures acidity, Runnable more) {
        json.object("bath", () -> {
            json.figure("water_ml", figures.waterMl());
            json.figure("liquor_ml", figures.liquorMl());
            json.figure("ratio", figures.ratio());
            json.text("vessel", bath.vessel().map(Noted::value));
            json.figure("depth_cm", pot.depthCm());
            json.figure("filled_percent", pot.filledPercent());
            json.figure("ph_measured", bath.ph().stream().mapToDouble(ph -> ph.reads().value()).findFirst());
            json.figure("ph_estimate", acidity.cold());
            json.figure("ph_after_heating", acidity.heated());
            json.text("ph_estimate_why", acidity.why().map(AcidityFigures.Why::word));
            parts("dye", figures.dye());
            parts("assistants", figures.assistants());
            json.object("extract", figures.extract(), plant -> {
                json.figure("of_g", plant.plantGrams());
                json.figure("water_ml", plant.waterMl());
            });
            more.run();
        });
    }

    void soak(String name, Optional<SoakFigures> soak) {
        json.object(name, soak, known -> {
            json.figure("water_ml", known.waterMl());
            json.figure("liquor_ml", known.liquorMl());
            AcidityFigures acidity = acidities.presoak(known);
            json.figure("ph_estimate", acidity.cold());
            json.text("ph_estimate_why", acidity.why().map(AcidityFigures.Why::word));
            parts("with", known.with());
        });
    }

    private void parts(String name, List<PartFigures> parts) {
        json.items(name, parts, part -> {
            json.text("is", part.is());
            json.text("as_written", part.asWritten());
            json.figure("g", part.grams());
            json.figure("ml", part.ml());
            json.figure("owf_percent", part.owfPercent());
            json.figure("g_per_l", part.gramsPerLitre());
            json.text("by", part.by().name().toLowerCase(Locale.ROOT));
            BatchJson.when(json, part.part());
            json.yes("about", part.isRough());
        });
    }

    void heat(HeatFigures heat) {
        json.object("heat", () -> {
            json.figure("minutes_above_80c", heat.minutesAbove80());
            json.figure("minutes_total", heat.minutesTotal());
            json.figure("peak_c", heat.peak());
        });
    }

    private void colour(ColourFigures colour) {
        json.lab("lab", Optional.of(colour.lab()));
        json.text("hex", colour.lab().toRgb().hex());
        json.number("readings", colour.readings().size());
        json.text("by", colour.by());
        json.figure("uncertainty_de00", OptionalDouble.of(colour.uncertainty()));
        json.figure("unlevelness_de00", colour.unlevelness());
        json.text("name", colour.name().name());
        json.text("family", colour.name().family());
        json.figure("chroma", OptionalDouble.of(colour.lab().chroma()));
        json.figure("hue_deg", OptionalDouble.of(colour.lab().hueDegrees()));
        json.figure("shift_de00", Difference.figure(colour.shift()));
        json.text("shift_tone", colour.tone().map(Tone::word));
        json.figure("target_de00", Difference.figure(colour.target()));
    }

    private void outcome(Outcome outcome) {
        json.word("verdict", outcome.verdict());
        json.figure("evenness", outcome.evenness().stream().mapToDouble(noted -> noted.value()).findFirst());
        json.word("feel", outcome.feel());
        json.texts("faults", outcome.faults().stream().map(fault -> fault.value().word()).toList());
    }

    private void fastness(Fastness fastness) {
        json.text("rub_dry", grade(fastness.rubDry()));
        json.text("rub_wet", grade(fastness.rubWet()));
    }

    /** The grade of a rub test, if it is known. */
    static Optional<String> grade(Optional<Fastness.Rub> rub) {
        return rub.flatMap(found -> RubFigures.of(found).grade()).map(Grade::toString);
    }
}
