package fascicle.bench;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A needle lot of the seeded notebook.
 *
 * @param id        its file's name, for instance {@code scalded-2015-12}
 * @param condition one of the notebook's seven conditions
 * @param gathered  the day it was cut
 * @param colour    of the bare needles
 */
record Lot(String id, String condition, LocalDate gathered, Lab colour) {

    private static final int COUNT = 40;
    private static final List<String> CONDITIONS = List.of(
            "fresh-green", "shade-dried", "light-faded", "sun-bleached", "fallen", "scalded", "glycerined");
    private static final List<Lab> BARE = List.of(
            new Lab(420, -110, 240), new Lab(480, -40, 220), new Lab(600, 20, 230), new Lab(700, 10, 200),
            new Lab(450, 90, 230), new Lab(430, 125, 240), new Lab(380, 70, 190));
    private static final List<String> SPECIES = List.of("Pinus nigra", "Pinus sylvestris", "Pinus palustris",
            "Pinus strobus", "Pinus ponderosa", "Pinus radiata", "Pinus pinaster", "Pinus taeda");

    /** The lots of a notebook that begins on {@code start} and runs for {@code days}: 8 to begin with, 32 on the way. */
    static List<Lot> lots(Chance chance, LocalDate start, long days) {
        return IntStream.range(0, COUNT).mapToObj(i -> {
            LocalDate gathered = start.minusDays(chance.between(30, 60)).plusDays(Math.max(0, i - 7) * days / 33);
            int condition = i % CONDITIONS.size();
            String name = CONDITIONS.get(condition);
            return new Lot(name + "-" + gathered.getYear() + "-" + (i + 1), name, gathered, BARE.get(condition).near(chance, 25));
        }).toList();
    }

    /** Its file under {@code needles/}; the lot weighs enough for {@code entries} pots of the whole notebook. */
    String file(Chance chance, Vocabulary vocabulary, int entries) {
        List<String> lines = new ArrayList<>(List.of(
                "title: Needles " + condition.replace('-', ' ') + ", gathered " + gathered,
                "species: " + chance.pick(SPECIES),
                "condition: " + condition,
                "gathered: " + gathered,
                "length: " + chance.between(9, 24) + " cm",
                "weight: " + (2000 + 6 * entries) + " g",
                "bundle: {weight: " + chance.between(140, 160) + " g, counted: 10}",
                "colour:",
                "  - lab: " + colour.near(chance, 15),
                "  - lab: " + colour.near(chance, 15),
                "  - lab: " + colour.near(chance, 15)));
        if (chance.oneIn(2)) {
            lines.add("blank: [{lab: " + colour.near(chance, 20) + "}]");
        }
        if (chance.oneIn(3)) {
            lines.add("share: " + chance.oneOf("students", "open"));
        }
        return MarkdownFile.of(lines, vocabulary.paragraph(chance));
    }
}
