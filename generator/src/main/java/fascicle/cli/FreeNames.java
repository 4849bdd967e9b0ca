package fascicle.cli;

import fascicle.notebook.Ids;
import fascicle.notebook.Notebook;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** Names that no file and no entry of a dye day has yet. */
final class FreeNames {

    private final String day;
    private final Path folder;
    private final Set<String> taken = new HashSet<>();

    /**
     * The free names of a day.
     *
     * @param notebook the notebook as read, whose faulty entries keep their names too
     * @param day the dye day
     * @param folder where its files lie
     */
    FreeNames(Notebook notebook, LocalDate day, Path folder) {
        this.day = day.toString();
        this.folder = folder;
        notebook.entries().forEach(entry -> taken.add(Ids.key(entry.id())));
        notebook.missing().forEach(missing -> taken.add(Ids.key(missing.what())));
    }

    /** The name itself, or with the first number from 2 on that is free. */
    String one(String name) {
        return isFree(name) ? name : IntStream.iterate(2, count -> count + 1).mapToObj(count -> name + "-" + count)
                .filter(this::isFree).findFirst().orElseThrow();
    }

    /** So many names with numbers from 1 on. */
    List<String> several(String name, int count) {
        return IntStream.iterate(1, number -> number + 1).mapToObj(number -> name + "-" + number)
                .filter(this::isFree).limit(count).toList();
    }

    private boolean isFree(String name) {
        return !taken.contains(Ids.key(day + "-" + name))
                && !Files.exists(folder.resolve(name + ".md"), LinkOption.NOFOLLOW_LINKS);
    }
}
