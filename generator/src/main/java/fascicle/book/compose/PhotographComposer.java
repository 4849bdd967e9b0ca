package fascicle.book.compose;

import fascicle.book.figures.Figures;
import fascicle.book.gallery.Shown;
import fascicle.book.page.Markup;
import fascicle.book.page.Photograph;
import fascicle.book.words.Words;
import fascicle.notebook.Entry;
import fascicle.notebook.NeedleLot;
import fascicle.notebook.Reading;
import fascicle.photo.Area;
import fascicle.photo.Caution;
import fascicle.photo.Patch;
import fascicle.photo.Sample;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jsoup.nodes.Entities;

/** Photographs as pages show them: a copy, the areas that were read drawn over it, and what to heed. */
final class PhotographComposer {

    private final Materials materials;
    private final Ways ways;
    private final Words words;

    PhotographComposer(Materials materials, Ways ways) {
        this.materials = materials;
        this.ways = ways;
        this.words = materials.words();
    }

    /**
     * A reading and what it is of.
     *
     * @param of in a few words; empty for the dyed needles themselves
     */
    private record Read(String of, Reading reading) {}

    /** The photographs of an entry, each once, however many colours were read off it. */
    List<Photograph> of(Entry entry) {
        List<Read> all = new ArrayList<>();
        entry.colour().forEach(reading -> all.add(new Read("", reading)));
        entry.target().ifPresent(target -> all.add(new Read(words.say("photograph.target"), target)));
        entry.window().forEach(window -> all.add(new Read(
                words.say("photograph.window", window.after().written()), window.reading())));
        entry.readings().stream().filter(reading -> all.stream().noneMatch(one -> one.reading().equals(reading)))
                .forEach(other -> all.add(new Read(words.say("photograph.other"), other)));
        return photographs(entry.called(), all);
    }

    /** The photographs of a lot. */
    List<Photograph> of(NeedleLot lot) {
        return photographs(lot.called(), lot.readings().stream().map(reading -> new Read("", reading)).toList());
    }

    private List<Photograph> photographs(String title, List<Read> readings) {
        Map<String, List<Read>> byPath = new LinkedHashMap<>();
        for (Read read : readings) {
            if (read.reading().colour() instanceof Reading.Photograph photograph) {
                photograph.taken().ifPresent(taken ->
                        byPath.computeIfAbsent(taken.path(), unused -> new ArrayList<>()).add(read));
            }
        }
        List<Photograph> photographs = new ArrayList<>();
        byPath.forEach((path, of) -> materials.gallery().find(path).map(shown -> photograph(title, shown, of))
                .ifPresent(photographs::add));
        return List.copyOf(photographs);
    }

    /** What stands before a caption: what the picture is of, and whether it may be compared. */
    private String beginning(List<Read> readings) {
        Stream<String> wet = readings.stream().anyMatch(read -> read.reading().wet())
                ? Stream.of(words.say("photograph.wet")) : Stream.empty();
        return Stream.concat(readings.stream().map(Read::of).filter(of -> !of.isEmpty()).distinct(), wet)
                .map(of -> of + " ").collect(Collectors.joining());
    }

    private Photograph photograph(String title, Shown shown, List<Read> of) {
        List<Reading.Photograph> readings = of.stream()
                .map(read -> (Reading.Photograph) read.reading().colour()).toList();
        String beginning = beginning(of);
        return new Photograph(shown.source(ways.root()), shown.sources(ways.root()), shown.picture().width(),
                shown.picture().height(), words.say("photograph.of", (title + ". " + beginning).strip()),
                outlines(readings), beginning + caption(readings),
                cautions(readings));
    }

    /** Each outline twice, dark under light, so that it is seen on whatever the picture shows. */
    private Markup outlines(List<Reading.Photograph> readings) {
        StringBuilder svg = new StringBuilder("<svg class=\"read-areas\" viewBox=\"0 0 100 100\" "
                + "preserveAspectRatio=\"none\" role=\"img\"><title>")
                .append(Entities.escape(words.say("photograph.areas"))).append("</title>");
        outline(svg, "read-needles", readings.stream().flatMap(reading -> reading.needles().stream()));
        outline(svg, "read-card", patches(readings).map(Patch::at));
        return new Markup(svg.append("</svg>").toString());
    }

    private static void outline(StringBuilder svg, String name, Stream<Area> areas) {
        String path = areas.map(area -> "M" + Figures.plain(area.x()) + " " + Figures.plain(area.y()) + "h"
                + Figures.plain(area.width()) + "v" + Figures.plain(area.height()) + "h"
                + Figures.plain(-area.width()) + "z").collect(Collectors.joining());
        for (String under : path.isEmpty() ? List.<String>of() : List.of(" under", "")) {
            svg.append("<path class=\"").append(name).append(under).append("\" d=\"").append(path)
                    .append("\" vector-effect=\"non-scaling-stroke\"/>");
        }
    }

    private static Stream<Patch> patches(List<Reading.Photograph> readings) {
        return readings.stream().flatMap(reading -> reading.taken().stream())
                .flatMap(taken -> taken.patches().stream()).distinct();
    }

    private String caption(List<Reading.Photograph> readings) {
        Optional<Sample> sample = readings.stream().flatMap(reading -> reading.sample().stream()).findFirst();
        List<Patch> patches = patches(readings).toList();
        return sample.map(read -> switch (read.against()) {
            case NOTHING -> words.say("photograph.by-eye");
            case GREY_CARD -> words.say("photograph.read", words.say("photograph.cards", patches.size(),
                    Figures.atMost(patches.get(0).known().reflectance() * 100, 1)));
            case CHART -> words.say("photograph.read", words.say("photograph.chart", patches.size()));
        }).orElseGet(() -> words.say("photograph.shown"));
    }

    private static List<String> cautions(List<Reading.Photograph> readings) {
        return readings.stream().flatMap(reading -> reading.sample().stream())
                .flatMap(sample -> sample.cautions().stream()).filter(caution -> caution.kind() != Caution.Kind.NO_CARD)
                .map(Caution::words).distinct().map(PhotographComposer::sentence).collect(Collectors.toList());
    }

    private static String sentence(String words) {
        return words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1) + ".";
    }
}
