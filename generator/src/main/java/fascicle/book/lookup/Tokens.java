package fascicle.book.lookup;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The words that names and titles are put together from, each written once: the commonest first, then in order. */
final class Tokens {

    /** What stands between the words of a name. */
    static final String OF_NAMES = "-";

    /** What stands between the words of a title. */
    static final String OF_TITLES = " ";

    private final List<String> tokens;
    private final Map<String, Integer> places = new HashMap<>();

    Tokens(List<String> names, List<String> titles) {
        Map<String, Long> counts = Stream.concat(split(names, OF_NAMES), split(titles, OF_TITLES))
                .collect(Collectors.groupingBy(token -> token, Collectors.counting()));
        tokens = counts.keySet().stream().sorted(Comparator.comparing((String token) -> -counts.getOrDefault(token, 0L))
                .thenComparing(Comparator.naturalOrder())).toList();
        tokens.forEach(token -> places.put(token, places.size()));
    }

    /** All of them, a line each. */
    String list() {
        return String.join("\n", tokens);
    }

    /** Texts as lines of places. */
    String lines(List<String> texts, String between) {
        return texts.stream().map(text -> text.isEmpty() ? "" : split(List.of(text), between)
                .map(token -> Packing.place(places.getOrDefault(token, 0))).collect(Collectors.joining()))
                .collect(Collectors.joining("\n"));
    }

    private static Stream<String> split(List<String> texts, String between) {
        return texts.stream().filter(text -> !text.isEmpty())
                .flatMap(text -> Stream.of(text.replace('\n', ' ').split(between, -1)));
    }
}
