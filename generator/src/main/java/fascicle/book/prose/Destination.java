package fascicle.book.prose;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Where a link in the maker's words leads. */
sealed interface Destination {

    /** The schemes that lead out of a book. */
    Set<String> SCHEMES = Set.of("http", "https", "mailto");

    /** What browsers drop before they look for a scheme. */
    Pattern DROPPED = Pattern.compile("[\\p{Cc}\\p{Cf}\\s]");

    /** How an address with a scheme begins (RFC 3986). */
    Pattern SCHEME = Pattern.compile("^([A-Za-z][A-Za-z0-9+.-]*):");

    /** Another place, as written. */
    record Outside(String address) implements Destination {}

    /** A file of the notebook, by its path in the notebook. */
    record NotebookFile(String path) implements Destination {}

    /** Nowhere a page can lead: a place on the page itself, or no address. */
    record Nowhere() implements Destination {}

    /** Somewhere a page must not lead. */
    record Refused() implements Destination {}

    /**
     * Reads a link's address.
     *
     * @param address as written
     * @param from the notebook file that holds the link
     * @return where it leads
     */
    static Destination of(String address, String from) {
        String plain = DROPPED.matcher(address).replaceAll("");
        Matcher scheme = SCHEME.matcher(plain);
        if (scheme.find()) {
            return SCHEMES.contains(scheme.group(1).toLowerCase(Locale.ROOT)) ? new Outside(plain) : new Refused();
        }
        if (plain.startsWith("//") || plain.contains("\\") || plain.contains(":")) {
            return new Refused();
        }
        return resolved(address.strip().split("[#?]", 2)[0], from);
    }

    private static Destination resolved(String path, String from) {
        if (path.isEmpty() || path.startsWith("/")) {
            return new Nowhere();
        }
        Deque<String> names = new ArrayDeque<>(List.of(from.split("/")));
        names.removeLast();
        for (String name : decoded(path).orElse("..").split("/")) {
            if (name.equals("..")) {
                if (names.pollLast() == null) {
                    return new Nowhere();
                }
            } else if (!name.isEmpty() && !name.equals(".")) {
                names.addLast(name);
            }
        }
        return new NotebookFile(String.join("/", names));
    }

    private static Optional<String> decoded(String path) {
        try {
            return Optional.of(URLDecoder.decode(path.replace("+", "%2B"), StandardCharsets.UTF_8));
        } catch (IllegalArgumentException broken) {
            return Optional.empty();
        }
    }
}
