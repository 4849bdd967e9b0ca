package fascicle.notebook.read;

import fascicle.colour.Lab;
import fascicle.colour.table.ReadingTable;
import fascicle.colour.table.UnreadableTable;
import fascicle.notebook.Cover;
import fascicle.notebook.Entry;
import fascicle.notebook.Fastness;
import fascicle.notebook.Finding;
import fascicle.notebook.Findings;
import fascicle.notebook.Glass;
import fascicle.notebook.NeedleLot;
import fascicle.notebook.Noted;
import fascicle.notebook.Reading;
import fascicle.notebook.WindowReading;
import fascicle.photo.Area;
import fascicle.photo.Caution;
import fascicle.photo.Darkroom;
import fascicle.photo.Patch;
import fascicle.photo.Picture;
import fascicle.photo.Sample;
import fascicle.photo.UnreadablePhotograph;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Opens the files that readings name, tables of meters and photographs, and puts what they hold in their place. Safe
 * for use from several threads.
 */
final class ReadingFiles {

    private final FilesBeside files;
    private final Darkroom darkroom;
    private final Optional<Double> photoUncertainty;
    private final NotebookReader.Progress progress;
    private final AtomicInteger named = new AtomicInteger();
    private final AtomicInteger looked = new AtomicInteger();

    /**
     * Files of a notebook.
     *
     * @param root the notebook's folder
     * @param darkroom what reads photographs
     * @param cover what the notebook says of its photographs
     * @param progress is told how many photographs have been looked at
     */
    ReadingFiles(Path root, Darkroom darkroom, Cover cover, NotebookReader.Progress progress) {
        this.files = new FilesBeside(root);
        this.darkroom = darkroom;
        this.photoUncertainty = cover.photoUncertainty().map(Noted::value);
        this.progress = progress;
    }

    /**
     * A thing with what its files hold.
     *
     * @param thing an entry or a lot
     * @param findings what is wrong with its files
     */
    record Opened<T>(T thing, List<Finding> findings) {}

    /** The files that were there, as paths from the notebook's folder. */
    Set<String> found() {
        return files.found();
    }

    /** Takes note of the photographs that are to be looked at, before the first of them is. */
    void expect(List<Reading> readings) {
        readings.stream().filter(reading -> reading.colour() instanceof Reading.Photograph)
                .forEach(reading -> named.incrementAndGet());
    }

    /** Opens the files of an entry. */
    Opened<Entry> of(Entry entry) {
        Findings findings = new Findings();
        Entry opened = entry.withReadings(all(entry.colour(), findings),
                entry.glass().map(glass -> new Glass(one(glass.plain(), findings), one(glass.before(), findings),
                        one(glass.after(), findings), glass.diluted(), glass.left())),
                one(entry.target(), findings),
                entry.fastness().map(fastness -> new Fastness(rub(fastness.rubDry(), findings),
                        rub(fastness.rubWet(), findings))),
                entry.window().stream().map(window -> new WindowReading(window.after(),
                        opened(window.reading(), findings), window.wool())).toList());
        return new Opened<>(opened, findings.sorted());
    }

    /** Opens the files of a lot. */
    Opened<NeedleLot> of(NeedleLot lot) {
        expect(lot.readings());
        Findings findings = new Findings();
        NeedleLot opened = lot.withReadings(all(lot.colour(), findings), all(lot.blank(), findings));
        return new Opened<>(opened, findings.sorted());
    }

    private List<Reading> all(List<Reading> readings, Findings findings) {
        return readings.stream().map(reading -> opened(reading, findings)).toList();
    }

    private Optional<Reading> one(Optional<Reading> reading, Findings findings) {
        return reading.map(found -> opened(found, findings));
    }

    private Optional<Fastness.Rub> rub(Optional<Fastness.Rub> rub, Findings findings) {
        return rub.map(found -> found instanceof Fastness.Rub.Cloth cloth
                ? new Fastness.Rub.Cloth(opened(cloth.before(), findings), opened(cloth.after(), findings)) : found);
    }

    private Reading opened(Reading reading, Findings findings) {
        Reading.How how = reading.colour();
        if (how instanceof Reading.Table table) {
            return new Reading(new Reading.Table(table.file(),
                    table(table.file(), findings).map(ReadingFiles::measured)),
                    reading.wet(), reading.place());
        }
        if (how instanceof Reading.Photograph photograph) {
            Optional<Reading.Taken> taken = taken(photograph, findings);
            progress.looked(looked.incrementAndGet(), named.get());
            return new Reading(new Reading.Photograph(photograph.file(), photograph.needles(), photograph.card(),
                    taken),
                    reading.wet(), reading.place());
        }
        return reading;
    }

    private Optional<ReadingTable> table(Noted<String> file, Findings findings) {
        return files.text(file, findings).flatMap(text -> {
            try {
                return Optional.of(ReadingTable.read(text));
            } catch (UnreadableTable unreadable) {
                findings.error(file.place(), "the table “" + file.value() + "” cannot be read: " + unreadable.words());
                return Optional.empty();
            }
        });
    }

    /** Colours that were made for a screen are no surer in a table. */
    private static Reading.Measurement measured(ReadingTable table) {
        List<Lab> colours = table.readings().stream().map(ReadingTable.Read::lab).toList();
        return table.readings().stream().anyMatch(read -> read.kind() == ReadingTable.Kind.SCREEN)
                ? new Reading.Measurement(Reading.Kind.SCREEN, colours, Reading.Measurement.OF_A_SCREEN)
                : new Reading.Measurement(Reading.Kind.METER, colours, Reading.Measurement.OF_A_METER);
    }

    private Optional<Reading.Taken> taken(Reading.Photograph photograph, Findings findings) {
        Noted<String> file = photograph.file();
        Optional<Path> path = files.picture(file, findings);
        Optional<List<Patch>> patches = photograph.card().map(card -> patches(card, findings))
                .orElse(Optional.of(List.of()));
        if (path.isEmpty() || patches.isEmpty()) {
            return Optional.empty();
        }
        try {
            Picture picture = darkroom.picture(path.get());
            Optional<Sample> sample = photograph.needles().isEmpty() ? Optional.empty()
                    : Optional.of(sample(path.get(), photograph.needles().get(), patches.get()));
            // For the colour only a part was decoded. The copies need the whole picture, and are kept for the book.
            darkroom.prints(path.get(), picture.printWidths());
            sample.ifPresent(read -> read.cautions().forEach(caution -> warn(file, caution, findings)));
            return Optional.of(new Reading.Taken(files.path(file), picture, patches.get(), sample));
        } catch (UnreadablePhotograph unreadable) {
            findings.error(file.place(), "the picture “" + file.value() + "” " + unreadable.words());
        } catch (IOException failed) {
            findings.error(file.place(), "the picture “" + file.value() + "” could not be read ("
                    + failed.getMessage() + "); put it here anew");
        }
        return Optional.empty();
    }

    private Sample sample(Path path, Area needles, List<Patch> patches) throws UnreadablePhotograph, IOException {
        Sample sample = darkroom.sample(path, needles, patches);
        return photoUncertainty.filter(unused -> sample.against() != Sample.Against.NOTHING)
                .map(sample::withUncertainty).orElse(sample);
    }

    private static void warn(Noted<String> file, Caution caution, Findings findings) {
        findings.warning(file.place(), "the picture “" + file.value() + "”: " + caution.words());
    }

    private Optional<List<Patch>> patches(Reading.Card card, Findings findings) {
        if (card instanceof Reading.Card.Patches given) {
            return Optional.of(given.patches());
        }
        Reading.Card.Chart chart = (Reading.Card.Chart) card;
        return table(chart.file(), findings).flatMap(table -> {
            int count = table.readings().size();
            if (count > Patch.MOST) {
                findings.error(chart.file().place(), "the table “" + chart.file().value() + "” has " + count
                        + " colours, more than the " + Patch.MOST
                        + " patches that a chart may have; name the chart's own");
                return Optional.empty();
            }
            if (count % chart.columns() != 0) {
                findings.error(chart.file().place(), "the table “" + chart.file().value() + "” has " + count
                        + " colours, which do not fill rows of " + chart.columns() + "; mend “columns”, or the table");
                return Optional.empty();
            }
            return Optional.of(Patch.inRows(chart.at(), chart.columns(), table.readings().stream()
                    .map(ReadingTable.Read::lab).toList()));
        });
    }
}
