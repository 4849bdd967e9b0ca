package fascicle.notebook.text;

import fascicle.notebook.Findings;
import fascicle.notebook.Origin;
import fascicle.notebook.Place;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.dataformat.yaml.YAMLFactory;
import tools.jackson.dataformat.yaml.YAMLParser;

/**
 * Reads YAML into {@link Node}s.
 *
 * <p>The tokens are taken one by one, because a tree made by the library keeps the last of two equal keys, turns an
 * alias into text, and forgets where things stood. The form knows no anchors, aliases or tags: each is an error.
 */
public final class NodeReader {

    private static final YAMLFactory YAML = YAMLFactory.builder().build();

    private static final Pattern UNQUOTED_COLOUR = Pattern.compile("[:,\\[]\\s+(#[0-9A-Fa-f]{3,6})\\b");

    private final String file;
    private final int linesAbove;
    private final Findings findings;
    private final YAMLParser parser;

    private NodeReader(String file, int firstLine, Findings findings, YAMLParser parser) {
        this.file = file;
        this.linesAbove = firstLine - 1;
        this.findings = findings;
        this.parser = parser;
    }

    /**
     * Reads a map of keys.
     *
     * @param file path relative to the notebook
     * @param yaml the text
     * @param firstLine the file's line at which the text begins
     * @param findings where to say what is wrong
     * @return the map, empty where the text holds nothing; nothing where it cannot be read
     */
    public static Optional<Node.Mapping> read(String file, String yaml, int firstLine, Findings findings) {
        try (YAMLParser parser = (YAMLParser) YAML.createParser(ObjectReadContext.empty(), yaml)) {
            return new NodeReader(file, firstLine, findings, parser).document();
        } catch (JacksonException broken) {
            if (!sayUnquotedColour(file, yaml, firstLine, findings)) {
                explain(broken, file, firstLine, findings);
            }
            return Optional.empty();
        }
    }

    private Optional<Node.Mapping> document() {
        JsonToken token = parser.nextToken();
        if (token == null || token == JsonToken.VALUE_NULL) {
            return Optional.of(new Node.Mapping(List.of(), new Place(file, linesAbove + 1, 1)));
        }
        Node node = node(token);
        if (parser.nextToken() != null) {
            findings.error(place(), "a second YAML document begins here; a file has one: take out the line “---”");
            return Optional.empty();
        }
        if (node instanceof Node.Mapping mapping) {
            return Optional.of(mapping);
        }
        findings.error(node.place(), "found " + node.described() + " where keys were expected; write lines such as "
                + "“title: Brick”");
        return Optional.empty();
    }

    private Node node(JsonToken token) {
        Place place = place();
        refuseReferences(place);
        return switch (token) {
            case START_OBJECT -> mapping(place);
            case START_ARRAY -> sequence(place);
            case VALUE_NULL -> new Node.Nothing(place);
            default -> scalar(place);
        };
    }

    private Node scalar(Place place) {
        String text = parser.getString();
        return text.equals("~") || text.isEmpty() && parser.currentTokenLocation().getCharOffset()
                == parser.currentLocation().getCharOffset() ? new Node.Nothing(place) : new Node.Text(text, place);
    }

    private Node.Mapping mapping(Place place) {
        List<Node.Pair> pairs = new ArrayList<>();
        Map<String, Place> seen = new HashMap<>();
        while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
            String key = parser.getString();
            Place keyPlace = place();
            refuseReferences(keyPlace);
            Node value = node(parser.nextToken());
            Place first = seen.putIfAbsent(key, keyPlace);
            if (first == null) {
                pairs.add(new Node.Pair(key, keyPlace, value, Origin.OWN));
            } else {
                findings.error(keyPlace, "the key “" + key + "” stands twice, first in line " + first.line()
                        + "; keep one of the two");
            }
        }
        return new Node.Mapping(List.copyOf(pairs), place);
    }

    private Node.Sequence sequence(Place place) {
        List<Node> items = new ArrayList<>();
        for (JsonToken token = parser.nextToken(); token != JsonToken.END_ARRAY; token = parser.nextToken()) {
            items.add(node(token));
        }
        return new Node.Sequence(List.copyOf(items), place);
    }

    private void refuseReferences(Place place) {
        if (parser.isCurrentAlias()) {
            findings.error(place, "“*" + parser.getString() + "” points to a value elsewhere, which this form does "
                    + "not know; write the value out, or put it in quotes if it is a text");
        } else if (parser.getObjectId() != null) {
            findings.error(place, "“&" + parser.getObjectId() + "” names a value, which this form does not know; "
                    + "take it out, or put it in quotes if it is a text");
        } else if (parser.getTypeId() != null) {
            findings.error(place, "a YAML tag (“!…”) stands here, which this form does not know; take it out, or put "
                    + "the value in quotes if it is a text");
        }
    }

    private Place place() {
        TokenStreamLocation location = parser.currentTokenLocation();
        return new Place(file, location.getLineNr() + linesAbove, Math.max(1, location.getColumnNr()));
    }

    /** A colour code without quotes is a comment to YAML, and swallows the bracket behind it. */
    private static boolean sayUnquotedColour(String file, String yaml, int firstLine, Findings findings) {
        List<String> lines = yaml.lines().toList();
        for (int line = 0; line < lines.size(); line++) {
            Matcher colour = UNQUOTED_COLOUR.matcher(lines.get(line));
            if (colour.find()) {
                int column = lines.get(line).codePointCount(0, colour.start(1)) + 1;
                findings.error(new Place(file, firstLine + line, column), "“" + colour.group(1) + "” begins a comment "
                        + "in YAML, and what follows is lost; put it in quotes: \"" + colour.group(1) + "\"");
                return true;
            }
        }
        return false;
    }

    private static void explain(JacksonException broken, String file, int firstLine, Findings findings) {
        if (broken.getCause() instanceof MarkedYamlEngineException marked) {
            Optional<Mark> mark = marked.getContextMark().or(marked::getProblemMark);
            if (marked.getContext() == null || !marked.getContext().contains("quoted")) {
                mark = marked.getProblemMark().or(marked::getContextMark);
            }
            Place place = mark.map(found -> new Place(file, found.getLine() + firstLine, found.getColumn() + 1))
                    .orElse(new Place(file, firstLine, 1));
            findings.error(place, YamlTrouble.inWords(String.valueOf(marked.getProblem()),
                    String.valueOf(marked.getContext())));
            return;
        }
        TokenStreamLocation location = broken.getLocation();
        Place place = location == null || location.getLineNr() < 1 ? new Place(file, firstLine, 1)
                : new Place(file, location.getLineNr() + firstLine - 1, Math.max(1, location.getColumnNr()));
        findings.error(place, YamlTrouble.inWords(String.valueOf(broken.getOriginalMessage()), ""));
    }
}
