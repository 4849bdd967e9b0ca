package fascicle.site;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One page of every kind that a book has, found by looking at its folder, so that a new kind of page is taken in by
 * itself: each page at the top is a kind, and each folder holds pages of one kind.
 */
final class Kinds {

    private Kinds() {}

    /** Every page at the top, the longest page of every folder, and the entry that says least. */
    static List<String> of(PublishedBook book) {
        List<String> pages = book.pages();
        Comparator<String> byLength = Comparator.comparingInt(address -> book.text(address).length());
        Stream<String> top = pages.stream().filter(address -> !address.contains("/"));
        Stream<String> longest = pages.stream()
                .filter(address -> address.contains("/"))
                .collect(Collectors.groupingBy(address -> address.substring(0, address.lastIndexOf('/'))))
                .values().stream()
                .map(folder -> folder.stream().max(byLength).orElseThrow());
        Stream<String> least = pages.stream().filter(address -> address.startsWith("entries/")).min(byLength).stream();
        return Stream.of(top, longest, least).flatMap(kinds -> kinds).distinct().sorted().toList();
    }
}
