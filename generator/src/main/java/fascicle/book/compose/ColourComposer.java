package fascicle.book.compose;

import fascicle.book.figures.Figures;
import fascicle.book.page.Fact;
import fascicle.book.page.Link;
import fascicle.book.page.Markup;
import fascicle.book.page.Specimen;
import fascicle.book.swatch.Swatch;
import fascicle.book.words.Words;
import fascicle.colour.ColourNames;
import fascicle.colour.Lab;
import fascicle.colour.Tone;
import fascicle.notebook.Reading;
import fascicle.workings.ColourFigures;
import fascicle.workings.Difference;
import fascicle.workings.EntryWorking;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Colours as pages show them: swatches, and facts in words and figures. */
final class ColourComposer {

    private final Materials materials;
    private final Ways ways;
    private final Words words;
    private final Figures figures;

    ColourComposer(Materials materials, Ways ways) {
        this.materials = materials;
        this.ways = ways;
        this.words = materials.words();
        this.figures = materials.figures();
    }

    /** An entry's swatch: its readings, its bare lot's colour and its target. */
    Swatch swatch(EntryWorking working) {
        return new Swatch(working.colour().map(ColourFigures::readings).orElse(List.of()),
                bare(working).map(ColourFigures::lab),
                working.entry().target().flatMap(target -> target.colour().lab()),
                working.colour().map(this::title).orElseGet(() -> words.say("swatch.unknown")));
    }

    /** What a swatch shows: the colour's name, and where a screen cannot show it as strong as it is. */
    private String title(ColourFigures colour) {
        return colour.readings().stream().allMatch(Lab::displayable) ? colour.name().name()
                : words.say("swatch.clipped", colour.name().name());
    }

    /** The bare colour of an entry's lot. */
    Optional<ColourFigures> bare(EntryWorking working) {
        return working.needles().lot().flatMap(lot -> materials.index().bareColour(lot.id()));
    }

    /** A swatch of bare needles. */
    Markup bareSwatch(ColourFigures bare) {
        return bareNeedles(bare).large();
    }

    /** The swatch of a lot's bare needles; dashed where their colour is not known. */
    Swatch bare(String lot) {
        return materials.index().bareColour(lot).map(this::bareNeedles).orElseGet(() -> single(Optional.empty()));
    }

    private Swatch bareNeedles(ColourFigures bare) {
        return new Swatch(bare.readings(), Optional.of(bare.lab()), Optional.empty(),
                words.say("swatch.bare", bare.name().name()));
    }

    /** What an entry was, what it became and what it was to become, side by side. */
    List<Specimen> specimens(EntryWorking working) {
        List<Specimen> specimens = new ArrayList<>();
        bare(working).ifPresent(bare -> specimens.add(
                new Specimen("bare", words.say("heading.bare"), bareSwatch(bare), lines(bare.lab()))));
        List<String> lines = new ArrayList<>(working.colour().map(colour -> lines(colour.lab())).orElse(List.of()));
        working.colour().ifPresent(colour -> {
            colour.shift().ifPresent(shift -> lines.add(apart(shift, "specimen.shift", "specimen.shift-same")));
            colour.target().ifPresent(off -> lines.add(apart(off, "specimen.target", "specimen.target-same")));
        });
        if (working.colour().isEmpty()) {
            lines.add(words.say("specimen.none"));
        }
        specimens.add(new Specimen("dyed", words.say("heading.dyed"), swatch(working).large(), List.copyOf(lines)));
        working.entry().target().flatMap(target -> target.colour().lab()).ifPresent(target -> specimens.add(
                new Specimen("target", words.say("fact.target"), single(Optional.of(target)).large(), lines(target))));
        return List.copyOf(specimens);
    }

    private String apart(Difference difference, String differs, String same) {
        return words.say(difference.tells() ? differs : same, figures.difference(difference));
    }

    private List<String> lines(Lab colour) {
        Stream<String> known = Stream.of(ColourNames.nearest(colour).name(), colour.toRgb().hex(),
                words.say("specimen.lab", figures.lab(colour)));
        return Stream.concat(known, clipped(colour).stream()).toList();
    }

    /** What is to be said of a colour that no screen shows as it is. */
    private Optional<String> clipped(Lab colour) {
        return colour.displayable() ? Optional.empty() : Optional.of(words.say("colour.clipped"));
    }

    /** A swatch of one colour, as of a median; dashed where it is not known. */
    Swatch single(Optional<Lab> colour) {
        return new Swatch(colour.stream().toList(), Optional.empty(), Optional.empty(),
                colour.map(known -> words.say("swatch.median", ColourNames.nearest(known).name()))
                        .orElseGet(() -> words.say("swatch.unknown")));
    }

    /** A colour in hex and Lab. */
    String figures(Lab colour) {
        return words.say("colour.figures", colour.toRgb().hex(), figures.lab(colour));
    }

    /** What is known of a mean colour. */
    void facts(Facts facts, ColourFigures colour) {
        facts.known("fact.colour-name", Optional.of(colour.name().name()))
                .known("fact.hex", Optional.of(colour.lab().toRgb().hex()))
                .known("fact.lab", Optional.of(figures.lab(colour.lab())))
                .known("fact.readings", Optional.of(words.say("colour.readings", colour.readings().size(),
                        words.say("colour.by-" + colour.by()))))
                .known("fact.uncertainty", Optional.of(words.say("colour.uncertainty", figures.difference(colour
                        .uncertainty()))))
                .known("fact.unlevelness", colour.unlevelness().stream().mapToObj(off -> words.say("colour.unlevelness",
                        figures.difference(off), words.say("count.readings", colour.readings().size()))).findFirst())
                .known("fact.shift", colour.shift().map(figures::told))
                .known("fact.tone", colour.tone().map(this::tone))
                .known("fact.to-target", colour.target().map(figures::told));
    }

    private String tone(Tone tone) {
        return words.say("tone." + tone.word().replace(' ', '-'));
    }

    /** Every reading that was kept, compared or not. */
    List<Fact> readings(List<Reading> readings) {
        return readings.stream().map(reading -> reading(words.say("reading"), reading)).toList();
    }

    /** One reading under a label. */
    Fact reading(String label, Reading reading) {
        List<Link> values = new ArrayList<>();
        Reading.How how = reading.colour();
        if (how instanceof Reading.ByEye byEye) {
            values.add(materials.ties().tagged(byEye.tag().value()).map(ways::entry)
                    .map(link -> new Link(words.say("reading.by-eye", byEye.tag().value()), link.href()))
                    .orElseGet(() -> Link.plain(words.say("reading.by-eye", byEye.tag().value()))));
            byEye.but().ifPresent(but -> values.add(Link.plain(words.say("reading.but", but))));
        } else if (how instanceof Reading.Photograph photograph) {
            values.add(Link.plain(words.say(photograph.sample().isEmpty() ? "reading.picture"
                    : how.measured().isEmpty() ? "reading.photograph-by-eye" : "reading.photograph")));
        } else if (how instanceof Reading.Table) {
            values.add(Link.plain(words.say("reading.table", how.measured().map(table -> table.colours().size())
                    .orElse(0))));
        }
        how.lab().ifPresent(lab -> {
            values.add(Link.plain(figures(lab)));
            clipped(lab).map(Link::plain).ifPresent(values::add);
        });
        if (how instanceof Reading.Photograph photograph) {
            photograph.sample().ifPresent(sample -> values.add(Link.plain(words.say("reading.unlevelness",
                    figures.difference(sample.unlevelness())))));
        }
        if (reading.wet()) {
            values.add(Link.plain(words.say("reading.wet")));
        }
        return new Fact(label, values, Optional.empty());
    }
}
