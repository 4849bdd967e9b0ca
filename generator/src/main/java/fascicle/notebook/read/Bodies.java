package fascicle.notebook.read;

import fascicle.notebook.Edition;
import fascicle.notebook.Findings;
import fascicle.notebook.Ids;
import fascicle.notebook.Note;
import fascicle.notebook.Place;
import fascicle.notebook.text.FrontMatter;
import fascicle.notebook.text.Headings;
import fascicle.notebook.text.Marker;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Divides a body between the day and its pots, and checks the markers that close sections. */
final class Bodies {

    private final FrontMatter front;
    private final Headings headings;

    private Bodies(FrontMatter front, Headings headings) {
        this.front = front;
        this.headings = headings;
    }

    /** The whole body as one note. */
    static List<Note> whole(FrontMatter front, Edition share) {
        return front.body().isBlank() ? List.of()
                : List.of(new Note(front.body(), new Place(front.file(), front.bodyLine(), 1), share));
    }

    /** A body with several pots. */
    static Bodies of(FrontMatter front) {
        return new Bodies(front, Headings.of(front.body()));
    }

    /**
     * The sections under headings that are a pot's name or title.
     *
     * @param names the pot's name and title
     * @param share how far the pot is shared
     */
    List<Note> ofPot(Set<String> names, Edition share) {
        return sections(names).stream().map(head ->
                note(head.to(), headings.endOf(head), share.morePrivate(closedTo(head)))).toList();
    }

    /**
     * What belongs to no pot.
     *
     * @param names the names and titles of all pots
     * @param share how far the file is shared
     */
    List<Note> ofDay(Set<String> names, Edition share) {
        Set<Integer> taken = new TreeSet<>();
        for (Headings.Head head : sections(names)) {
            for (int line = head.from(); line < headings.endOf(head); line++) {
                taken.add(line);
            }
        }
        List<String> lines = new ArrayList<>();
        for (int line = 0; line < headings.lines().size(); line++) {
            if (!taken.contains(line)) {
                lines.add(headings.lines().get(line));
            }
        }
        String text = String.join("\n", lines) + "\n";
        return text.isBlank() ? List.of()
                : List.of(new Note(text, new Place(front.file(), front.bodyLine(), 1), share));
    }

    private List<Headings.Head> sections(Set<String> names) {
        Set<String> keys = names.stream().map(Ids::key).collect(Collectors.toSet());
        return headings.all().stream().filter(head -> keys.contains(Ids.key(Marker.without(head.text())))).toList();
    }

    /** The most private edition that a heading or one above it closes its section to. */
    private Edition closedTo(Headings.Head head) {
        return headings.all().stream()
                .filter(above -> above.from() <= head.from() && head.from() < headings.endOf(above))
                .flatMap(above -> Marker.of(above.text()).stream())
                .min(Comparator.naturalOrder()).orElse(Edition.OPEN);
    }

    private Note note(int from, int to, Edition share) {
        return new Note(String.join("\n", headings.lines().subList(from, to)) + "\n",
                new Place(front.file(), front.bodyLine() + from, 1), share);
    }

    /** Says so where a marker that closes a section is misspelt or stands where it closes nothing. */
    static void checkMarkers(FrontMatter front, Findings findings) {
        if (!Marker.isThinkableIn(front.body())) {
            return;
        }
        Headings headings = Headings.of(front.body());
        for (Headings.Head head : headings.all()) {
            if (Marker.of(head.text()).isEmpty() && Marker.isMissedIn(head.text())) {
                findings.error(new Place(front.file(), front.bodyLine() + head.from(), 1), "the heading “"
                        + head.text() + "” nearly closes its section, and does not; end it in “(studio only)” or "
                        + "“(students only)”, or word it otherwise");
            }
        }
        for (int line = 0; line < headings.lines().size(); line++) {
            if (headings.at(line).isEmpty() && Marker.isMisplacedIn(headings.lines().get(line))) {
                findings.error(new Place(front.file(), front.bodyLine() + line, 1), "this line ends like a heading "
                        + "that closes its section, but it is no heading of its own, so it closes nothing; write it "
                        + "as “## … (studio only)” at the left margin, or word it otherwise");
            }
        }
    }
}
