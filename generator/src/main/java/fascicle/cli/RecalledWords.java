package fascicle.cli;

import fascicle.book.figures.Figures;
import fascicle.book.lookup.Answer;
import fascicle.book.gist.Gist;
import fascicle.book.words.Words;
import fascicle.colour.Rgb;
import fascicle.workings.Difference;
import fascicle.workings.EntryWorking;
import fascicle.workings.Workings;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Entries that were looked up, in words for a person; a book's words where it has them. */
final class RecalledWords {

    private static final String BETWEEN = " · ";
    private static final int BLOCKS = 3;
    private static final int MOST_TAKEN = 12;

    private final Words words;
    private final Figures figures;
    private final Gist gist;
    private final boolean coloured;

    RecalledWords(Workings workings, Words words, boolean coloured) {
        this.words = words;
        this.figures = new Figures(words);
        this.gist = new Gist(workings, words);
        this.coloured = coloured;
    }

    /** The lines of an entry: what it is, then what was done and what came out. */
    List<String> of(Answer.Found found) {
        EntryWorking working = found.entry();
        List<String> first = new ArrayList<>();
        first.add(working.entry().called());
        first.add(figures.date(working.entry().date()));
        working.entry().tag().ifPresent(tag -> first.add(words.say("entry.tag", tag.value())));
        first.add(working.entry().verdict().map(verdict -> words.name("verdict", verdict))
                .orElseGet(() -> words.say("verdict.none")));
        working.colour().ifPresent(colour -> found.de00().ifPresent(de00 ->
                first.add(figures.difference(new Difference(de00, colour.uncertainty())))));
        List<String> second = new ArrayList<>();
        second.add(working.id());
        gist.dyes(working).forEach(dye -> second.add(gist.said(dye)));
        gist.acids(working).forEach(acid -> second.add(gist.said(acid)));
        gist.held(working).ifPresent(second::add);
        gist.evenness(working).ifPresent(even -> second.add(words.say("fact.evenness") + " " + even));
        return List.of(swatch(working) + seen(first), (coloured ? " ".repeat(BLOCKS + 1) : "  ") + seen(second));
    }

    /** Blocks in the colours of the first, a middle and the last reading. */
    private String swatch(EntryWorking working) {
        if (!coloured) {
            return "";
        }
        List<Rgb> readings = working.colour().stream().flatMap(colour -> colour.readings().stream())
                .map(reading -> reading.toRgb()).toList();
        if (readings.isEmpty()) {
            return " ".repeat(BLOCKS + 1);
        }
        return Stream.of(0, readings.size() / 2, readings.size() - 1).map(readings::get)
                .map(rgb -> "\u001B[48;2;" + rgb.red() + ";" + rgb.green() + ";" + rgb.blue() + "m ")
                .collect(Collectors.joining("", "", "\u001B[0m "));
    }

    /** The maker's words hold no orders to a terminal. */
    private static String seen(List<String> pieces) {
        return String.join(BETWEEN, pieces).codePoints().map(point -> Character.isISOControl(point) ? '\ufffd' : point)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append).toString();
    }

    /** How many there are, what was taken for what was typed, and what to leave out where nothing was found. */
    static List<String> remarks(Answer answer, Words words) {
        List<String> remarks = new ArrayList<>();
        for (Answer.Instead instead : answer.instead()) {
            List<String> taken = instead.taken();
            String more = taken.size() > MOST_TAKEN ? " and " + (taken.size() - MOST_TAKEN) + " more" : "";
            remarks.add("No word begins with “" + instead.typed() + "”" + (taken.isEmpty() ? "." : "; taken instead: "
                    + taken.stream().limit(MOST_TAKEN).collect(Collectors.joining(", ")) + more + "."));
        }
        if (!answer.found().isEmpty()) {
            remarks.add(words.say("count.entries", answer.found().size()) + ".");
        } else {
            remarks.add("Nothing matches." + answer.loosen().stream().map(part -> " Without "
                    + (part.part().equals("words") ? "the words" : "--" + part.part()) + ": "
                    + words.say("count.entries", part.found()) + ".").collect(Collectors.joining()));
        }
        return remarks;
    }
}
