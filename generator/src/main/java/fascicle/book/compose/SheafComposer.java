package fascicle.book.compose;

import fascicle.book.address.Shelf;
import fascicle.book.page.GroupPage;
import fascicle.book.words.Words;
import fascicle.notebook.Noted;
import fascicle.workings.EntryWorking;
import fascicle.workings.Group;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.ArrayList;
import java.util.Optional;

/** A group's entries under headings, newest day first: by year; those of a year by day, those of a day by method. */
final class SheafComposer {

    private final Ways ways;
    private final Words words;
    private final EntryComposer entries;
    private final Materials materials;

    SheafComposer(Materials materials, Ways ways) {
        this.materials = materials;
        this.ways = ways;
        this.words = materials.words();
        this.entries = new EntryComposer(materials, ways);
    }

    /** The entries of a group's page. */
    List<GroupPage.Sheaf> of(Shelf shelf, Group group) {
        Map<String, List<EntryWorking>> sheaves = new LinkedHashMap<>();
        group.entries().stream()
                .sorted(Comparator.comparing((EntryWorking working) -> working.entry().date()).reversed())
                .forEach(working -> sheaves.computeIfAbsent(title(shelf, working), unused -> new ArrayList<>())
                        .add(working));
        List<GroupPage.Sheaf> made = new ArrayList<>();
        sheaves.forEach((title, of) -> made.add(new GroupPage.Sheaf("sheaf-" + (made.size() + 1),
                sheaves.size() == 1 && shelf == Shelf.DAYS ? Optional.empty() : Optional.of(title),
                share(shelf, of), of.stream().map(entries::row).toList())));
        return List.copyOf(made);
    }

    /** Of a single day no share is told. */
    private Optional<String> share(Shelf shelf, List<EntryWorking> of) {
        return shelf == Shelf.DAYS || shelf == Shelf.YEARS ? Optional.empty()
                : new Shares(words).sentence(Group.VerdictDays.of(of));
    }

    private String title(Shelf shelf, EntryWorking working) {
        return switch (shelf) {
            case DAYS -> working.entry().method().map(Noted::value)
                    .map(method -> ways.to(Shelf.METHODS, method).text()).orElseGet(() -> words.say("sheaf.no-method"));
            case YEARS -> materials.figures().date(working.entry().date());
            default -> String.valueOf(working.entry().date().getYear());
        };
    }
}
