package fascicle.book.compose;

import fascicle.book.figures.Figures;
import fascicle.book.gallery.Shown;
import fascicle.book.page.Markup;
import fascicle.book.page.Photograph;
import fascicle.book.words.Words;
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

    /** The photographs among readings, each once, however many colours were read off it. */
    List<Photograph> of(String title, List<Reading> readings) {
        Map<String, List<Reading.Photograph>> byPath = new LinkedHashMap<>();
        for (Reading reading : readings) {
            if (reading.colour() instanceof Reading.Photograph photograph) {
                photograph.taken().ifPresent(taken ->
                        byPath.computeIfAbsent(taken.path(), unused -> new ArrayList<>()).add(photograph));
            }
        }
        List<Photograph> photographs = new ArrayList<>();
        byPath.forEach((path, of) -> materials.gallery().find(path).map(shown -> photograph(title, shown, of))
                .ifPresent(photographs::add));
        return List.copyOf(photographs);
    }

    private Photograph photograph(String title, Shown shown, List<Reading.Photograph> readings) {
        return new Photograph(shown.source(ways.root()), shown.sources(ways.root()), shown.picture().width(),
                shown.picture().height(), words.say("photograph.of", title), outlines(readings), caption(readings),
                cautions(readings));
    }

    private Markup outlines(List<Reading.Photograph> readings) {
        StringBuilder svg = new StringBuilder("<svg class=\"read-areas\" viewBox=\"0 0 100 100\" "
                + "preserveAspectRatio=\"none\" aria-hidden=\"true\" focusable=\"false\">");
        readings.forEach(reading -> reading.needles().ifPresent(area -> outline(svg, "read-needles", area)));
        patches(readings).map(Patch::at).forEach(area -> outline(svg, "read-card", area));
        return new Markup(svg.append("</svg>").toString());
    }

    /** Twice, dark under light, so that the line is seen on whatever the picture shows. */
    private static void outline(StringBuilder svg, String name, Area area) {
        for (String under : List.of(" under", "")) {
            svg.append("<rect class=\"").append(name).append(under).append("\" x=\"").append(Figures.plain(area.x()))
                    .append("\" y=\"").append(Figures.plain(area.y())).append("\" width=\"")
                    .append(Figures.plain(area.width())).append("\" height=\"").append(Figures.plain(area.height()))
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
