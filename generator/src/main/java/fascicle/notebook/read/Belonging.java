package fascicle.notebook.read;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Where keys stand that makers tend to write one map too far out, such as {@code reuses}, which stands under
 * {@code bath}.
 */
final class Belonging {

    private record Under(String map, List<String> keys) {}

    /** Without keys that stand in many maps, such as {@code from}. */
    private static final List<Under> MAPS = List.of(
            new Under("bath", List.of("vessel", "water", "ratio", "depth", "dye", "assistants", "extract", "reuses",
                    "left", "ph")),
            new Under("needles", List.of("lot", "weight", "bundles", "sheaths", "weighed")),
            new Under("outcome", List.of("verdict", "evenness", "feel", "faults")),
            new Under("fastness", List.of("rub-dry", "rub-wet")),
            new Under("pack", List.of("holds", "price")),
            new Under("glass", List.of("plain", "diluted", "left")),
            new Under("kept", List.of("weight", "used", "since", "how")));

    private Belonging() {}

    /**
     * The maps that a key stands under.
     *
     * @param key a key as written
     * @param known the keys that are known at its place
     * @return in words, such as {@code “bath:”}; nothing where no map that is known there has such a key
     */
    static Optional<String> of(String key, Collection<String> known) {
        String maps = MAPS.stream().filter(under -> known.contains(under.map()) && under.keys().contains(key))
                .map(under -> "“" + under.map() + ":”").collect(Collectors.joining(" or "));
        return maps.isEmpty() ? Optional.empty() : Optional.of(maps);
    }
}
