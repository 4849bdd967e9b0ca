package fascicle.cli;

import fascicle.book.data.Answers;
import fascicle.book.figures.Figures;
import fascicle.book.words.Words;
import fascicle.colour.Lab;
import fascicle.colour.table.ReadingTable;
import fascicle.colour.table.UnreadableTable;
import fascicle.photo.Area;
import fascicle.photo.Darkroom;
import fascicle.photo.Patch;
import fascicle.photo.Sample;
import fascicle.photo.UnreadablePhotograph;
import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Reads a colour off a photograph, or learns from things of known colour how sure such readings are. */
@Command(name = "sample", mixinStandardHelpOptions = true,
        description = {"Reads the colour of needles off a photograph, against a grey card or a chart in it.",
            "Areas are left edge, upper edge, width and height in per cent of the picture as it stands upright."})
final class SampleCommand implements Callable<Integer> {

    private final Terminal terminal;
    private final Darkroom darkroom = Darkroom.withoutCache();

    @Parameters(index = "0", arity = "0..1", paramLabel = "PHOTO", description = "A JPEG or PNG picture.")
    private @Nullable Path photo;

    @Option(names = "--needles", paramLabel = "x,y,w,h", description = "Where the needles lie, such as 12,20,30,25.")
    private @Nullable String needles;

    @Option(names = "--card", paramLabel = "x,y,w,h",
            description = "Where the grey card lies; may stand several times. With --chart: where the chart lies.")
    private List<String> cards = List.of();

    @Option(names = "--grey", paramLabel = "PERCENT", defaultValue = "18",
            description = "The card's reflectance in per cent. Default: ${DEFAULT-VALUE}.")
    private String grey = "18";

    @Option(names = "--chart", paramLabel = "TABLE",
            description = "The colours of a chart's patches, row by row, as CSV or CGATS text.")
    private @Nullable Path chart;

    @Option(names = "--columns", paramLabel = "N", description = "How many patches stand in a row of the chart.")
    private int columns;

    @Option(names = "--known", paramLabel = "TABLE", description = {
        "Things of known colour that were photographed, as CSV: photo,x,y,width,height,L,a,b.",
        "Learns from them how far your photographs lie from the truth."})
    private @Nullable Path known;

    @Option(names = "--json", description = "Print the answer as data.")
    private boolean json;

    SampleCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        try {
            List<Patch> card = card();
            Optional<Path> named = Optional.ofNullable(photo);
            if (known != null) {
                return learn(KnownThings.read(known, named), card);
            }
            Path picture = named.orElseThrow(() -> new WrongCall("The call names no photograph; write it as: fascicle "
                    + "sample PHOTO --needles x,y,w,h --card x,y,w,h"));
            if (needles == null) {
                throw new WrongCall("The call does not say where the needles lie; add --needles x,y,w,h, in per cent "
                        + "of the picture's width and height.");
            }
            return tell(sample(picture, Areas.of("--needles", needles), card));
        } catch (UnreadablePhotograph unreadable) {
            terminal.say(unreadable.words());
            return Status.ERRORS;
        }
    }

    private Sample sample(Path picture, Area area, List<Patch> card) throws IOException, UnreadablePhotograph {
        if (!Files.isRegularFile(picture)) {
            throw new WrongCall("There is no picture “" + picture + "”; name a JPEG or PNG file.");
        }
        try {
            return darkroom.sample(picture, area, card);
        } catch (UnreadablePhotograph unreadable) {
            throw new UnreadablePhotograph("The picture “" + picture + "” " + unreadable.words() + ".");
        }
    }

    private int tell(Sample sample) {
        if (json) {
            terminal.print(Answers.sampled(sample));
        } else {
            SampledWords.of(sample, new Figures(Words.shipped())).forEach(terminal::print);
        }
        return Status.DONE;
    }

    private int learn(List<KnownThings.Thing> things, List<Patch> card) throws IOException, UnreadablePhotograph {
        LearntUncertainty learnt = new LearntUncertainty();
        for (KnownThings.Thing thing : things) {
            if (card.stream().anyMatch(patch -> thing.overlaps(patch.at()))) {
                throw new WrongCall("Row " + thing.row() + " of the table lies on the card itself, which cannot test "
                        + "the card; name things beside it.");
            }
            learnt.add(thing, sample(thing.photo(), thing.at(), card));
        }
        if (json) {
            terminal.print(Answers.learnt(learnt.differences(), learnt.uncertainty(), learnt.cautions()));
        } else {
            learnt.inWords().forEach(terminal::print);
        }
        return Status.DONE;
    }

    private List<Patch> card() throws IOException {
        List<Area> areas = cards.stream().map(card -> Areas.of("--card", card)).toList();
        if (chart == null) {
            return areas.stream().map(at -> Patch.grey(at, reflectance())).toList();
        }
        if (areas.size() != 1 || columns < 1) {
            throw new WrongCall("A chart is named by its table and its place; write --chart TABLE --card x,y,w,h "
                    + "--columns 6.");
        }
        List<Lab> patches = table(chart).readings().stream().map(ReadingTable.Read::lab).toList();
        if (patches.size() > Patch.MOST) {
            throw new WrongCall("The table “" + chart + "” has " + patches.size() + " colours, more than the "
                    + Patch.MOST + " patches that a chart may have; name the chart's own.");
        }
        if (patches.size() % columns != 0) {
            throw new WrongCall("The table “" + chart + "” has " + patches.size() + " colours, which do not fill rows "
                    + "of " + columns + "; mend --columns, or the table.");
        }
        return Patch.inRows(areas.get(0), columns, patches);
    }

    private double reflectance() {
        String number = grey.strip().replaceFirst("\\s*%$", "");
        if (!number.matches("[0-9]{1,3}(\\.[0-9]{1,9})?") || Double.parseDouble(number) < 1
                || Double.parseDouble(number) > 100) {
            throw new WrongCall("“" + grey + "” after --grey is no card's reflectance; it is from 1 to 100 per cent, "
                    + "and 18 for the grey card of photographers.");
        }
        return Double.parseDouble(number);
    }

    private static ReadingTable table(Path file) throws IOException {
        if (!Files.isRegularFile(file)) {
            throw new WrongCall("There is no table “" + file + "”; name the chart's colours as CSV or CGATS text.");
        }
        try {
            return ReadingTable.read(Files.readString(file));
        } catch (UnreadableTable unreadable) {
            throw new WrongCall("The table “" + file + "” cannot be read: " + unreadable.words() + ".");
        } catch (MalformedInputException notText) {
            throw new WrongCall("The table “" + file + "” is not UTF-8 text; save it with the encoding UTF-8.");
        }
    }
}
