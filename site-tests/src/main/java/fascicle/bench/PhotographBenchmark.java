package fascicle.bench;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Stream;
import javax.imageio.ImageIO;

/**
 * Measures what a notebook with photographs costs to publish, read for the first time and read before, beside what the
 * JDK alone takes to decode the same photographs and to make three smaller copies of each ({@link PicturesAlone}).
 *
 * <p>Run it with {@code site-tests/bench-photographs [COUNT] [ROUNDS]}: 24 photographs of 12 megapixels and 5 rounds,
 * unless told otherwise. Whole processes are timed in turn, a first round is thrown away; compare ratios, not seconds.
 */
public final class PhotographBenchmark {

    private static final int WIDTH = 4000;
    private static final int HEIGHT = 3000;

    private final Path scratch;
    private int folders;

    private PhotographBenchmark(Path scratch) {
        this.scratch = scratch;
    }

    /** Measures, and prints a table. */
    public static void main(String[] args) throws IOException, InterruptedException, Run.Failed {
        int count = args.length > 0 ? Integer.parseInt(args[0]) : 24;
        int rounds = args.length > 1 ? Integer.parseInt(args[1]) : 5;
        System.setProperty("java.awt.headless", "true");
        Path scratch = Files.createTempDirectory("fascicle-bench");
        try {
            new PhotographBenchmark(scratch).measure(count, rounds);
        } finally {
            try (Stream<Path> files = Files.walk(scratch)) {
                for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(file);
                }
            }
        }
    }

    private void measure(int count, int rounds) throws IOException, InterruptedException, Run.Failed {
        Path notebook = written(count);
        Path sample = fresh();
        SeededNotebook.write(sample, 20, 1);
        Programs programs = new Programs(scratch, sample);
        Path kept = fresh();
        List<Run> alone = new ArrayList<>();
        List<Run> first = new ArrayList<>();
        List<Run> again = new ArrayList<>();
        for (int round = 0; round <= rounds; round++) {
            Run floor = Run.of(programs.pictures(notebook, fresh()), scratch);
            Run unread = Run.of(cached(fresh(), programs.publish(notebook, fresh())), scratch);
            Run before = Run.of(cached(kept, programs.publish(notebook, fresh())), scratch);
            // The first round warms up, and fills what the third program finds kept.
            if (round > 0) {
                alone.add(floor);
                first.add(unread);
                again.add(before);
            }
        }
        Timing floor = new Timing("the JDK alone: decode, three copies", alone);
        System.out.println(count + " photographs of 12 megapixels; seconds: least, median, most; most memory in MB");
        for (Timing timing : List.of(floor, new Timing("publish, no photograph read before", first),
                new Timing("publish, every photograph read before", again))) {
            System.out.println(timing.line() + String.format(Locale.ROOT, "  ratio %.2f", Timing.median(
                    timing.ratios(floor).stream().mapToDouble(ratio -> ratio).toArray())));
        }
    }

    private static List<String> cached(Path cache, List<String> command) {
        List<String> all = new ArrayList<>(List.of("/usr/bin/env", "XDG_CACHE_HOME=" + cache));
        all.addAll(command);
        return all;
    }

    private Path written(int count) throws IOException {
        Path notebook = fresh();
        Path day = Files.createDirectories(notebook.resolve("days/2026-05-09"));
        Files.writeString(notebook.resolve("notebook.yaml"), "form: 1\ntitle: Photographs\nkitchen: metric\n");
        for (int number = 0; number < count; number++) {
            ImageIO.write(picture(number), "jpeg", day.resolve("bundle-" + number + ".jpg").toFile());
            Files.writeString(day.resolve("bundle-" + number + ".md"), "---\ncolour: [{photo: {file: bundle-" + number
                    + ".jpg, needles: [10, 20, 40, 50], card: {at: [70, 20, 15, 20]}}}]\n---\n");
        }
        return notebook;
    }

    /** Needles on a table beside a card, with grain, and each picture another. */
    private static BufferedImage picture(int number) {
        Random random = new Random(number);
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D brush = image.createGraphics();
        brush.setColor(new Color(0xb9a98c));
        brush.fillRect(0, 0, WIDTH, HEIGHT);
        for (int needle = 0; needle < 400; needle++) {
            brush.setColor(new Color(110 + random.nextInt(40), 60 + random.nextInt(20), 40 + random.nextInt(20)));
            brush.fillRect(200, 400 + needle * 5, 2100, 5);
        }
        brush.setColor(new Color(0x767676));
        brush.fillRect(2700, 500, 800, 800);
        brush.dispose();
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                int grain = random.nextInt(9) - 4;
                int pixel = image.getRGB(x, y);
                image.setRGB(x, y, held((pixel >> 16 & 255) + grain) << 16 | held((pixel >> 8 & 255) + grain) << 8
                        | held((pixel & 255) + grain));
            }
        }
        return image;
    }

    private static int held(int channel) {
        return Math.max(0, Math.min(255, channel));
    }

    private Path fresh() {
        return scratch.resolve("folder-" + ++folders);
    }
}
