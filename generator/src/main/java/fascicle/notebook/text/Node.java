package fascicle.notebook.text;

import fascicle.notebook.Origin;
import fascicle.notebook.Place;
import java.util.List;
import java.util.Optional;

/** A piece of YAML that knows where it stands. */
public sealed interface Node {

    /**
     * Where it begins.
     *
     * @return its first character
     */
    Place place();

    /**
     * What it is, in words for a finding.
     *
     * @return such as {@code a list}
     */
    String described();

    /**
     * A scalar, whatever it means.
     *
     * @param value its text, unquoted
     * @param place where it stands
     */
    record Text(String value, Place place) implements Node {
        @Override
        public String described() {
            return "“" + shortened(value) + "”";
        }

        private static String shortened(String value) {
            String line = value.strip().replaceAll("\\s+", " ");
            return line.codePointCount(0, line.length()) <= 60 ? line
                    : line.substring(0, line.offsetByCodePoints(0, 57)) + "…";
        }
    }

    /**
     * The value of a key that has none.
     *
     * @param place where it would stand
     */
    record Nothing(Place place) implements Node {
        @Override
        public String described() {
            return "nothing";
        }
    }

    /**
     * A list.
     *
     * @param items its items
     * @param place where it begins
     */
    record Sequence(List<Node> items, Place place) implements Node {
        @Override
        public String described() {
            return "a list";
        }
    }

    /**
     * A map of keys; no key stands twice.
     *
     * @param pairs in the order written
     * @param place where it begins
     */
    record Mapping(List<Pair> pairs, Place place) implements Node {
        @Override
        public String described() {
            return "other keys in it";
        }

        /**
         * Finds a key.
         *
         * @param key its name
         * @return its pair
         */
        public Optional<Pair> find(String key) {
            for (Pair pair : pairs) {
                if (pair.key().equals(key)) {
                    return Optional.of(pair);
                }
            }
            return Optional.empty();
        }
    }

    /**
     * A key and its value.
     *
     * @param key the key's name
     * @param place where the key stands
     * @param value its value
     * @param origin whose it is, once what was left out is filled in
     */
    record Pair(String key, Place place, Node value, Origin origin) {}
}
