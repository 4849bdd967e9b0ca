package fascicle.notebook.edition;

import fascicle.notebook.Edition;
import fascicle.notebook.Note;
import fascicle.notebook.text.Headings;
import fascicle.notebook.text.Marker;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Takes closed sections out of the maker's words; who may read a section does not hear for whom it is closed. */
final class Sections {

    private Sections() {}

    /** What an edition may read of some notes; notes of which nothing is left are gone. */
    static List<Note> of(List<Note> notes, Edition edition) {
        return notes.stream().filter(note -> edition.shows(note.share())).map(note -> open(note, edition))
                .filter(note -> !note.isBlank()).toList();
    }

    private static Note open(Note note, Edition edition) {
        if (edition == Edition.STUDIO || !Marker.isThinkableIn(note.markdown())) {
            return note;
        }
        Headings headings = Headings.of(note.markdown());
        List<String> left = new ArrayList<>();
        int line = 0;
        while (line < headings.lines().size()) {
            Optional<Headings.Head> closed = headings.at(line).filter(head -> isClosed(head, edition));
            if (closed.isPresent()) {
                line = headings.endOf(closed.get());
            } else {
                String text = headings.lines().get(line);
                left.add(headings.at(line).flatMap(head -> Marker.of(head.text())).isPresent()
                        ? Marker.takenOutOf(text) : text);
                line++;
            }
        }
        return left.equals(headings.lines()) ? note
                : new Note(String.join("\n", left) + "\n", note.place(), note.share());
    }

    private static boolean isClosed(Headings.Head head, Edition edition) {
        return Marker.of(head.text()).filter(closedTo -> !edition.shows(closedTo)).isPresent();
    }
}
