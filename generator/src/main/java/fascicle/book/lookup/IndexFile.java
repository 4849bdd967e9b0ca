package fascicle.book.lookup;

import fascicle.book.address.Addresses;
import fascicle.book.address.Leaf;
import fascicle.book.figures.Figures;
import fascicle.book.gist.Gist;
import fascicle.book.words.Words;
import fascicle.colour.Lab;
import fascicle.colour.Rgb;
import fascicle.notebook.Ids;
import fascicle.notebook.Notebook;
import fascicle.notebook.Noted;
import fascicle.workings.EntryWorking;
import fascicle.workings.LotWorking;
import fascicle.workings.Workings;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * {@code data/look-up.js}: the index for the book's own script, form 1, one global. {@code engine.js} reads it.
 *
 * <p>Entries stand newest first. What is told of each is a column: digits of a fixed width (see {@link Packing}), or
 * lines. Words are front-coded: a capital for the letters shared with the word before (A for none, at most Z), then the
 * rest. Titles and names are lines of words of one list, the commonest first, each by its place (see {@link Tokens}).
 */
public final class IndexFile {

    /** Where the book keeps it. */
    public static final String ADDRESS = "data/look-up.js";

    /** As many readings as a swatch has needles at most. */
    private static final int MOST_READINGS = 24;

    private static final int MOST_SHARED = 25;
    private static final String UNKNOWN = Packing.alphabet().substring(Packing.DIGITS - 1);
    private static final int LAB_DIGITS = 4;
    private static final int RGB_DIGITS = 4;
    private static final int TEXT_DIGITS = 3;
    private static final int METHOD_DIGITS = 2;
    private static final int OWF_DIGITS = 3;
    private static final int MOST_CHANGE = 45;

    private final Gathered gathered;
    private final Workings workings;
    private final Addresses addresses;
    private final Words words;
    private final Gist gist;
    private final Script script = new Script();
    private final Map<String, Integer> texts = new LinkedHashMap<>();

    private IndexFile(Lookup lookup, Workings workings, Addresses addresses, Words words) {
        this.gathered = lookup.gathered();
        this.workings = workings;
        this.addresses = addresses;
        this.words = words;
        this.gist = new Gist(workings, words);
    }

    /**
     * Writes the file.
     *
     * @param lookup the index
     * @param workings what it was made of
     * @param addresses where the book's pages are
     * @param words the book's words
     * @return a classic script in UTF-8
     */
    public static byte[] bytes(Lookup lookup, Workings workings, Addresses addresses, Words words) {
        return new IndexFile(lookup, workings, addresses, words).text().getBytes(StandardCharsets.UTF_8);
    }

    private String text() {
        script.begin().member("form").number(1);
        script.member("size").number(gathered.entries.size());
        choices();
        vocabulary();
        names();
        figures();
        recipes();
        script.member("texts").strings(texts.keySet());
        return "self.fascicleIndex=" + script.end() + ";\n";
    }

    private void choices() {
        script.member("choices").begin();
        for (Trait trait : Trait.values()) {
            script.member(trait.word()).list(gathered.choices.getOrDefault(trait, List.of()),
                    choice -> script.strings(List.of(choice.id(), choice.title())));
        }
        script.end().member("colours").strings(gathered.colourNames);
        script.member("faults").number(gathered.faults);
        sets("sets", Packing.sets(gathered.sets.stream().map(set -> set.stream().toArray()).toList(),
                gathered.entries.size()));
    }

    private void sets(String name, Packing.Sets packed) {
        script.member(name).strings(List.of(packed.text(), packed.blocks()));
    }

    private void vocabulary() {
        StringBuilder front = new StringBuilder();
        String before = "";
        for (String word : gathered.vocabulary.words()) {
            int shared = shared(before, word);
            front.append((char) ('A' + shared)).append(word, shared, word.length());
            before = word;
        }
        script.member("words").string(front.toString());
        sets("postings", Packing.sets(gathered.leads.stream().map(Postings::numbers).toList(),
                gathered.entries.size() + gathered.sets.size()));
    }

    private static int shared(String one, String other) {
        int most = Math.min(MOST_SHARED, Math.min(one.length(), other.length()));
        int shared = 0;
        while (shared < most && one.charAt(shared) == other.charAt(shared)) {
            shared++;
        }
        // Half a letter is no letter.
        return shared > 0 && Character.isHighSurrogate(other.charAt(shared - 1)) ? shared - 1 : shared;
    }

    private void names() {
        List<EntryWorking> entries = gathered.entries;
        long newest = entries.isEmpty() ? 0 : entries.get(0).entry().date().toEpochDay();
        script.member("newest").number(newest);
        StringBuilder gaps = new StringBuilder();
        long day = newest;
        for (EntryWorking working : entries) {
            gaps.append(Packing.small((int) (day - working.entry().date().toEpochDay())));
            day = working.entry().date().toEpochDay();
        }
        script.member("gaps").string(gaps.toString());
        script.member("date").strings(dateWords());
        List<String> names = entries.stream().map(IndexFile::nameOf).toList();
        List<String> titles = entries.stream().map(working -> working.entry().called().equals(nameOf(working))
                ? "" : working.entry().called()).toList();
        Tokens tokens = new Tokens(names, titles);
        script.member("tokens").string(tokens.list());
        script.member("names").string(tokens.lines(names, Tokens.OF_NAMES));
        script.member("titles").string(tokens.lines(titles, Tokens.OF_TITLES));
        lines("tags", working -> working.entry().tag().map(Noted::value).orElse(""));
        sparse("links", working -> addresses.entry(working.id()).map(Leaf::link)
                .filter(link -> !link.equals("entries/" + working.id() + ".html")));
    }

    private static String nameOf(EntryWorking working) {
        return working.id().substring(working.entry().date().toString().length() + 1);
    }

    /** The pattern of a date and the months. */
    private List<String> dateWords() {
        List<String> said = new ArrayList<>();
        said.add(words.say("figure.date"));
        for (int month = 1; month <= 12; month++) {
            said.add(words.say("month." + month));
        }
        return said;
    }

    private void figures() {
        digits("lab", 3 * LAB_DIGITS, working -> working.colour().map(colour ->
                Packing.digits(Lookup.steps(colour.lab().lightness()), LAB_DIGITS)
                        + Packing.digits(Lookup.steps(colour.lab().a()), LAB_DIGITS)
                        + Packing.digits(Lookup.steps(colour.lab().b()), LAB_DIGITS)));
        digits("sure", TEXT_DIGITS, working -> Optional.of(known(working.colour().map(colour ->
                Figures.atMost(colour.uncertainty(), 1)))));
        lines("readings", working -> working.colour().map(colour -> colours(colour.readings())).orElse(""));
        sparse("targets", working -> working.entry().target().flatMap(target -> target.colour().lab())
                .map(target -> colours(List.of(target))));
        Map<String, LotWorking> lots = Notebook.byId(workings.lots(), lot -> lot.lot().id());
        script.member("sheaths").list(gathered.choices.getOrDefault(Trait.LOT, List.of()), choice ->
                script.string(colours(Optional.ofNullable(lots.get(Ids.key(choice.id()))).flatMap(LotWorking::colour)
                        .map(bare -> bare.lab()).stream().toList())));
        digits("evenness", 1, working -> Optional.of(Packing.digits(Lookup.evenness(working), 1)));
        script.member("even").string(words.say("evenness"));
        digits("owf", OWF_DIGITS, working -> Optional.of(Packing.digits(Lookup.owfSteps(working), OWF_DIGITS)));
    }

    /** The first colour in four digits; the next as its channels' changes in three, or after the last digit in four. */
    private static String colours(List<Lab> colours) {
        StringBuilder all = new StringBuilder();
        Optional<Rgb> before = Optional.empty();
        for (Lab lab : colours.subList(0, Math.min(MOST_READINGS, colours.size()))) {
            Rgb rgb = lab.toRgb();
            Optional<String> change = before.flatMap(last -> change(last, rgb));
            all.append(before.isPresent() && change.isEmpty() ? UNKNOWN : "").append(change.orElseGet(() ->
                    Packing.digits(rgb.red() << 16 | rgb.green() << 8 | rgb.blue(), RGB_DIGITS)));
            before = Optional.of(rgb);
        }
        return all.toString();
    }

    private static Optional<String> change(Rgb from, Rgb to) {
        StringBuilder digits = new StringBuilder();
        for (int change : new int[] {to.red() - from.red(), to.green() - from.green(), to.blue() - from.blue()}) {
            if (Math.abs(change) > MOST_CHANGE) {
                return Optional.empty();
            }
            digits.append(Packing.digits(change + MOST_CHANGE, 1));
        }
        return Optional.of(digits.toString());
    }

    private void recipes() {
        Map<String, Integer> methods = new LinkedHashMap<>();
        for (Choice method : gathered.choices.getOrDefault(Trait.METHOD, List.of())) {
            methods.put(Ids.key(method.id()), methods.size() + 1);
        }
        digits("method", METHOD_DIGITS, working -> Optional.of(Packing.digits(working.entry().method()
                .map(id -> methods.getOrDefault(Ids.key(id.value()), 0)).orElse(0), METHOD_DIGITS)));
        lines("dyes", working -> parts(gist.dyes(working)));
        lines("acids", working -> parts(gist.acids(working)));
        digits("hold", TEXT_DIGITS, working -> Optional.of(known(gist.held(working))));
    }

    /** Each part's title and amount. */
    private String parts(List<Gist.Part> parts) {
        StringBuilder all = new StringBuilder();
        parts.forEach(part -> all.append(known(Optional.of(part.title()))).append(known(part.amount())));
        return all.toString();
    }

    /** A text's number from 1, 0 for none. */
    private String known(Optional<String> text) {
        return Packing.digits(text.map(found -> texts.computeIfAbsent(found, unused -> texts.size() + 1)).orElse(0),
                TEXT_DIGITS);
    }

    /** A column of a line for each entry. */
    private void lines(String name, Function<EntryWorking, String> line) {
        script.member(name).string(String.join("\n", gathered.entries.stream()
                .map(working -> line.apply(working).replace('\n', ' ')).toList()));
    }

    /** A column that few entries have something in: texts by the entries' numbers. */
    private void sparse(String name, Function<EntryWorking, Optional<String>> text) {
        script.member(name).begin();
        for (int number = 0; number < gathered.entries.size(); number++) {
            String member = String.valueOf(number);
            text.apply(gathered.entries.get(number)).ifPresent(known -> script.member(member).string(known));
        }
        script.end();
    }

    /** A column of digits for each entry; the last digit for what is not known. */
    private void digits(String name, int width, Function<EntryWorking, Optional<String>> digits) {
        StringBuilder column = new StringBuilder();
        gathered.entries.forEach(working -> column.append(digits.apply(working).orElse(UNKNOWN.repeat(width))));
        script.member(name).string(column.toString());
    }
}
