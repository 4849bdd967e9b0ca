package fascicle.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A valid notebook (form 1) of any size, grown from a seed: the same number of entries and the same seed give the same
 * bytes on any machine, in any locale.
 *
 * <p>Its entries lie on days spread over twelve years (more where there are more days than that), one to six on a day,
 * about 30 lines of front matter and 1.9 KB of body each. One file in twelve holds two to four pots. There are 40
 * needle lots over seven conditions, 60 dyes and assistants, 12 methods and seven vessels; a third of the files is
 * shared. There are no photographs: their cost is decoding, and is another measurement.
 *
 * <p>To write one: {@code java -cp site-tests/target/site-tests-0.1.0.jar fascicle.bench.SeededNotebook DIR ENTRIES SEED}.
 */
public final class SeededNotebook {

    private static final LocalDate START = LocalDate.of(2012, 3, 1);
    private static final long TWELVE_YEARS = 4383;

    private final Path dir;
    private final Chance chance;
    private final Vocabulary vocabulary = new Vocabulary();
    private final List<String> addresses = new ArrayList<>();
    private String spareEntry = "";
    private int written;

    private SeededNotebook(Path dir, long seed) {
        this.dir = dir;
        this.chance = new Chance(seed);
    }

    /**
     * Writes a notebook.
     *
     * @param dir     the folder to write; it may exist, but must be empty
     * @param entries how many entries (pots), from 0
     * @param seed    which notebook of that size
     * @throws IllegalArgumentException if entries is negative or the folder holds something
     */
    public static void write(Path dir, int entries, long seed) throws IOException {
        if (entries < 0) {
            throw new IllegalArgumentException("entries must not be negative: " + entries);
        }
        Files.createDirectories(dir);
        try (Stream<Path> content = Files.list(dir)) {
            if (content.findAny().isPresent()) {
                throw new IllegalArgumentException("the folder is not empty: " + dir);
            }
        }
        new SeededNotebook(dir, seed).write(entries);
    }

    private void write(int entries) throws IOException {
        List<Integer> days = new ArrayList<>();
        for (int left = entries; left > 0; left -= days.get(days.size() - 1)) {
            days.add(Math.min(left, chance.between(1, 6)));
        }
        long span = Math.max(TWELVE_YEARS, days.size());
        List<Lot> lots = Lot.lots(chance, START, span);
        shelves(entries, lots);
        for (int i = 0; i < days.size(); i++) {
            LocalDate day = START.plusDays(i * span / days.size());
            dyeDay(day, days.get(i), lots.stream().filter(lot -> lot.gathered().isBefore(day)).toList());
        }
    }

    private void shelves(int entries, List<Lot> lots) throws IOException {
        put("notebook.yaml", """
                form: 1
                title: A notebook grown from a seed
                maker: Larchwater workshop
                language: en
                kitchen: metric
                balance: 0.1 g
                water: {alkalinity: 90 mg/L, ph: 7.4}
                height: 640 m
                currency: EUR
                damp-keeps: 3 days
                """);
        put("vessels.yaml", Vessels.FILE);
        for (Lot lot : lots) {
            put("needles/" + lot.id() + ".md", lot.file(chance, vocabulary, entries));
        }
        String boughtOn = START.minusDays(30).toString();
        for (Supply supply : Supply.ALL) {
            put("dyes/" + supply.id() + ".md", supply.file(chance, vocabulary, 2 + entries / 4, boughtOn));
        }
        for (Method method : Method.ALL) {
            put("methods/" + method.id() + ".md", method.file(chance, vocabulary));
        }
    }

    private void dyeDay(LocalDate day, int pots, List<Lot> lots) throws IOException {
        String spareBefore = spareEntry;
        for (int done = 0; done < pots; ) {
            int together = pots - done > 1 && chance.oneIn(12) ? Math.min(pots - done, chance.between(2, 4)) : 1;
            List<Recipe> recipes = new ArrayList<>();
            String fileName = "";
            for (int pot = 1; pot <= together; pot++) {
                Supply dye = chance.pick(Supply.ofKind("dye"));
                String name = dye.id() + "-" + (done + pot);
                Recipe recipe = Recipe.draw(chance, vocabulary, day, name, dye, lots, ++written, spareBefore);
                if (!recipe.takes().isEmpty()) {
                    spareBefore = "";
                    spareEntry = "";
                }
                if (recipe.spare()) {
                    spareEntry = day + "-" + name;
                }
                recipes.add(recipe);
                fileName = together == 1 ? name : "row-of-" + together + "-from-" + (done + 1);
            }
            done += together;
            put("days/" + day + "/" + fileName + ".md", together == 1 ? onePot(recipes.get(0)) : severalPots(recipes));
            addresses.add("../" + day + "/" + fileName + ".md");
        }
    }

    private String onePot(Recipe recipe) {
        List<String> lines = new ArrayList<>(recipe.own());
        lines.addAll(2, recipe.common());
        return MarkdownFile.of(lines, Notes.draw(chance, vocabulary, 2, addresses));
    }

    /** The pots of one file share what the first has in common with others. */
    private String severalPots(List<Recipe> recipes) {
        List<String> lines = new ArrayList<>(recipes.get(0).common());
        lines.add("pots:");
        StringBuilder body = new StringBuilder(vocabulary.paragraph(chance)).append("\n\n");
        for (Recipe recipe : recipes) {
            lines.add("  - name: " + recipe.name());
            recipe.own().forEach(line -> lines.add("    " + line));
            body.append("## ").append(recipe.name()).append("\n\n").append(Notes.draw(chance, vocabulary, 3, addresses));
        }
        return MarkdownFile.of(lines, body.toString());
    }

    private void put(String address, String text) throws IOException {
        Path file = dir.resolve(address);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    /** Writes the notebook that the three arguments name: a folder, the number of entries, the seed. */
    public static void main(String[] args) throws IOException {
        if (args.length != 3) {
            System.err.println("usage: SeededNotebook DIR ENTRIES SEED");
            System.exit(2);
        }
        write(Path.of(args[0]), Integer.parseInt(args[1]), Long.parseLong(args[2]));
    }
}
