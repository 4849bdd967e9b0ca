package fascicle.book.data;

import fascicle.book.ledger.Ledger;
import fascicle.bath.Magnitude;
import fascicle.bath.Uptake;
import fascicle.book.figures.Figures;
import fascicle.colour.Grade;
import fascicle.colour.Tone;
import fascicle.notebook.Bath;
import fascicle.notebook.Fastness;
import fascicle.notebook.Kept;
import fascicle.notebook.Noted;
import fascicle.notebook.Outcome;
import fascicle.notebook.Word;
import fascicle.workings.ColourFigures;
import fascicle.workings.Difference;
import fascicle.workings.EntryWorking;
import fascicle.workings.ExtractFigures;
import fascicle.workings.Fading;
import fascicle.workings.PartFigures;
import fascicle.workings.SoakFigures;
import fascicle.workings.acidity.Acidities;
import fascicle.workings.chain.Chains;
import fascicle.workings.chain.Standing;
import fascicle.workings.stock.Cost;
import fascicle.workings.stock.DyedBundle;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * {@code data/entries.csv}: one row for each entry, with the figures of {@code data/book.json} (RFC 4180). A cell of
 * what is not known is empty.
 *
 * <p>Text that a spreadsheet would run as a formula begins with an apostrophe.
 */
public final class EntriesCsv {

    private static final String LINE_END = "\r\n";

    /** The signs that begin a formula, and their full-width forms. */
    private static final String FORMULA_SIGNS = "=+-@\uff1d\uff0b\uff0d\uff20";

    private record Column(String name, Function<EntryWorking, String> cell) {}

    private final List<Column> columns = new ArrayList<>();

    private EntriesCsv(Ledger ledger) {
        entry();
        needles();
        bath(ledger.acidities(), ledger.chains());
        colour();
        glass();
        outcome();
        ledger.stock().ifPresent(stock -> {
            figure("kept_left_g", working -> figure(stock.bundle(working.id()),
                    bundle -> bundle.remainder().left()));
            word("kept_how", working -> working.entry().kept().flatMap(Kept::how));
            text("kept_use_by", working -> stock.bundle(working.id()).flatMap(DyedBundle::useBy)
                    .map(LocalDate::toString));
            figure("cost_total", working -> figure(stock.cost(working.id()), Cost::total));
            figure("cost_per_100g", working -> figure(stock.cost(working.id()), Cost::per100g));
        });
    }

    /**
     * Writes the table of a book.
     *
     * @param ledger what the book reckons with
     * @return the file in UTF-8
     */
    public static byte[] bytes(Ledger ledger) {
        List<Column> columns = new EntriesCsv(ledger).columns;
        StringBuilder table = new StringBuilder();
        table.append(columns.stream().map(Column::name).collect(Collectors.joining(",", "", LINE_END)));
        for (EntryWorking working : ledger.workings().entries()) {
            table.append(columns.stream().map(column -> column.cell().apply(working))
                    .collect(Collectors.joining(",", "", LINE_END)));
        }
        return table.toString().getBytes(StandardCharsets.UTF_8);
    }

    private void entry() {
        text("id", working -> Optional.of(working.id()));
        noted("tag", working -> working.entry().tag());
        text("title", working -> Optional.of(working.entry().called()));
        text("date", working -> Optional.of(working.entry().date().toString()));
        noted("method", working -> working.entry().method());
        text("share", working -> Optional.of(working.entry().share().word()));
    }

    private void needles() {
        text("lot", working -> working.needles().lot().map(lot -> lot.id()));
        noted("from", working -> working.entry().needles().from());
        text("condition", working -> working.needles().condition());
        text("species", working -> working.needles().species());
        figure("weight_g", working -> working.needles().grams());
        text("weighed", working -> Optional.of(working.entry().needles().state().word()));
    }

    private void bath(Acidities acidities, Chains chains) {
        figure("water_ml", working -> working.bath().waterMl());
        figure("liquor_ml", working -> working.bath().liquorMl());
        figure("ratio", working -> working.bath().ratio());
        noted("vessel", working -> said(working).vessel());
        figure("depth_cm", working -> working.pot().depthCm());
        figure("filled_percent", working -> working.pot().filledPercent());
        figure("ph_measured", working -> said(working).ph().map(ph -> OptionalDouble.of(ph.reads().value()))
                .orElse(OptionalDouble.empty()));
        figure("ph_estimate", working -> acidities.bath(working).cold());
        figure("ph_after_heating", working -> acidities.bath(working).heated());
        parts("dye", working -> working.bath().dye());
        parts("assistants", working -> working.bath().assistants());
        figure("extract_of_g", working -> extract(working, ExtractFigures::plantGrams));
        figure("extract_water_ml", working -> extract(working, ExtractFigures::waterMl));
        noted("reuses", working -> said(working).reuses());
        figure("standing_ml", working -> figure(chains.standing(working), Standing::liquorMl));
        figure("presoak_water_ml", working -> working.presoak().map(SoakFigures::waterMl)
                .orElse(OptionalDouble.empty()));
        figure("presoak_liquor_ml", working -> working.presoak().map(SoakFigures::liquorMl)
                .orElse(OptionalDouble.empty()));
        figure("presoak_ph_estimate", working -> working.presoak().map(soak -> acidities.presoak(soak).cold())
                .orElse(OptionalDouble.empty()));
        figure("minutes_above_80c", working -> working.heat().minutesAbove80());
        figure("minutes_total", working -> working.heat().minutesTotal());
        figure("peak_c", working -> working.heat().peak());
    }

    private static OptionalDouble extract(EntryWorking working, Function<ExtractFigures, OptionalDouble> figure) {
        return working.bath().extract().map(figure).orElse(OptionalDouble.empty());
    }

    private static Bath said(EntryWorking working) {
        return working.entry().recipe().bath();
    }

    private void colour() {
        colour("lab_l", colour -> OptionalDouble.of(colour.lab().lightness()));
        colour("lab_a", colour -> OptionalDouble.of(colour.lab().a()));
        colour("lab_b", colour -> OptionalDouble.of(colour.lab().b()));
        text("hex", working -> working.colour().map(colour -> colour.lab().toRgb().hex()));
        colour("readings", colour -> OptionalDouble.of(colour.readings().size()));
        text("by", working -> working.colour().map(ColourFigures::by));
        colour("uncertainty_de00", colour -> OptionalDouble.of(colour.uncertainty()));
        colour("unlevelness_de00", ColourFigures::unlevelness);
        text("name", working -> working.colour().map(colour -> colour.name().name()));
        text("family", working -> working.colour().map(colour -> colour.name().family()));
        colour("chroma", colour -> OptionalDouble.of(colour.lab().chroma()));
        colour("hue_deg", colour -> OptionalDouble.of(colour.lab().hueDegrees()));
        colour("shift_de00", colour -> Difference.figure(colour.shift()));
        text("shift_tone", working -> working.colour().flatMap(ColourFigures::tone).map(Tone::word));
        colour("target_de00", colour -> Difference.figure(colour.target()));
    }

    private void glass() {
        figure("taken_up_percent", working -> working.uptake().map(Uptake::percent).orElse(OptionalDouble.empty()));
        figure("taken_up_low", working -> working.uptake().map(Uptake::low).orElse(OptionalDouble.empty()));
        figure("taken_up_high", working -> working.uptake().map(Uptake::high).orElse(OptionalDouble.empty()));
    }

    private void outcome() {
        word("verdict", working -> working.entry().outcome().flatMap(Outcome::verdict));
        figure("evenness", working -> working.entry().outcome().flatMap(Outcome::evenness)
                .map(evenness -> OptionalDouble.of(evenness.value())).orElse(OptionalDouble.empty()));
        word("feel", working -> working.entry().outcome().flatMap(Outcome::feel));
        text("faults", working -> working.entry().outcome().map(Outcome::faults).filter(faults -> !faults.isEmpty())
                .map(faults -> faults.stream().map(fault -> fault.value().word()).collect(Collectors.joining("; "))));
        text("rub_dry", working -> JsonEntry.grade(working.entry().fastness().flatMap(Fastness::rubDry)));
        text("rub_wet", working -> JsonEntry.grade(working.entry().fastness().flatMap(Fastness::rubWet)));
        text("window_after_days", working -> window(working, fading -> plain(OptionalDouble.of(fading.days()))));
        text("window_de00", working -> window(working, fading -> plain(Difference.figure(fading.faded()))));
        text("window_grade", working -> window(working, fading -> fading.grade().map(Grade::toString).orElse("")));
    }

    /** Columns that hold a figure of each part, in the order of the recipe, parted by semicolons. */
    private void parts(String name, Function<EntryWorking, List<PartFigures>> parts) {
        text(name, working -> joined(parts.apply(working), PartFigures::is));
        text(name + "_as_written", working -> joined(parts.apply(working), part -> part.asWritten().orElse("")));
        text(name + "_g", working -> joined(parts.apply(working), part -> plain(part.grams())));
        text(name + "_ml", working -> joined(parts.apply(working), part -> plain(part.ml())));
        text(name + "_owf_percent", working -> joined(parts.apply(working), part -> plain(part.owfPercent())));
        text(name + "_g_per_l", working -> joined(parts.apply(working), part -> plain(part.gramsPerLitre())));
    }

    private static Optional<String> window(EntryWorking working, Function<Fading, String> figure) {
        return working.fading().isEmpty() ? Optional.empty()
                : Optional.of(working.fading().stream().map(figure).collect(Collectors.joining("; ")));
    }

    private static Optional<String> joined(List<PartFigures> parts, Function<PartFigures, String> figure) {
        return parts.isEmpty() ? Optional.empty()
                : Optional.of(parts.stream().map(figure).collect(Collectors.joining("; ")));
    }

    private void text(String name, Function<EntryWorking, Optional<String>> text) {
        columns.add(new Column(name, working -> text.apply(working).map(EntriesCsv::cell).orElse("")));
    }

    private void noted(String name, Function<EntryWorking, Optional<Noted<String>>> noted) {
        text(name, working -> noted.apply(working).map(Noted::value));
    }

    private <W extends Word> void word(String name, Function<EntryWorking, Optional<Noted<W>>> noted) {
        text(name, working -> noted.apply(working).map(word -> word.value().word()));
    }

    private void figure(String name, Function<EntryWorking, OptionalDouble> figure) {
        columns.add(new Column(name, working -> plain(figure.apply(working))));
    }

    private void colour(String name, Function<ColourFigures, OptionalDouble> figure) {
        figure(name, working -> working.colour().map(figure).orElse(OptionalDouble.empty()));
    }

    private static <T> OptionalDouble figure(Optional<T> of, Function<T, Magnitude> figure) {
        return of.map(known -> figure.apply(known).value()).orElse(OptionalDouble.empty());
    }

    private static String plain(OptionalDouble figure) {
        return figure.isEmpty() ? "" : Figures.datum(figure.getAsDouble()).toPlainString();
    }

    /** A cell of text: never a formula (the first sign after blanks decides), and quoted where it must be. */
    static String cell(String text) {
        String safe = isFormula(text) ? "'" + text : text;
        boolean plain = safe.chars().noneMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n')
                && safe.equals(safe.strip());
        return plain ? safe : '"' + safe.replace("\"", "\"\"") + '"';
    }

    private static boolean isFormula(String text) {
        int first = 0;
        while (first < text.length() && isBlank(text.charAt(first))) {
            if (text.charAt(first) == '\t' || text.charAt(first) == '\r') {
                return true;
            }
            first++;
        }
        return first < text.length() && FORMULA_SIGNS.indexOf(text.charAt(first)) >= 0;
    }

    private static boolean isBlank(char letter) {
        return Character.isWhitespace(letter) || Character.isSpaceChar(letter) || Character.isISOControl(letter);
    }
}
