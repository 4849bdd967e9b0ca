package fascicle.notebook.edition;

import fascicle.notebook.Cover;
import fascicle.notebook.Day;
import fascicle.notebook.Dye;
import fascicle.notebook.Edition;
import fascicle.notebook.Entry;
import fascicle.notebook.Ids;
import fascicle.notebook.Method;
import fascicle.notebook.Missing;
import fascicle.notebook.NeedleLot;
import fascicle.notebook.Notebook;
import fascicle.notebook.Noted;
import fascicle.notebook.Part;
import fascicle.notebook.Recipe;
import fascicle.notebook.Vessel;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Takes out of a notebook what is more private than an edition. A lot, dye, vessel or method that something shown uses
 * stays with its plain facts, unless it is shared itself; a reference to an entry that is gone goes with it.
 */
public final class EditionCut {

    private final Notebook notebook;
    private final Edition edition;

    private EditionCut(Notebook notebook, Edition edition) {
        this.notebook = notebook;
        this.edition = edition;
    }

    /**
     * Cuts an edition.
     *
     * @param notebook the whole notebook
     * @param edition whom the book is for
     * @return what that edition holds; of the studio's, everything
     */
    public static Notebook of(Notebook notebook, Edition edition) {
        return new EditionCut(notebook, edition).cut();
    }

    private Notebook cut() {
        List<Entry> entries = PresentReferences.only(notebook.entries().stream()
                .filter(entry -> edition.shows(entry.share())).map(this::open).toList(), missing());
        List<Method> methods = methods(entries);
        List<Recipe> recipes = java.util.stream.Stream.concat(entries.stream().map(Entry::recipe),
                methods.stream().map(Method::recipe)).toList();
        List<NeedleLot> lots = lots(entries);
        return new Notebook(cover(lots), lots, dyes(recipes), vessels(recipes), methods, days(), entries, missing(),
                notebook.shelf());
    }

    private Entry open(Entry entry) {
        Entry open = entry.withNotes(Sections.of(entry.notes(), edition));
        return edition == Edition.STUDIO ? open : open.withoutKept();
    }

    private List<Method> methods(List<Entry> entries) {
        Map<String, Method> byId = Notebook.byId(notebook.methods(), Method::id);
        Deque<String> toFollow = new ArrayDeque<>();
        entries.forEach(entry -> entry.method().map(Noted::value).ifPresent(toFollow::add));
        notebook.methods().stream().filter(method -> edition.shows(method.share()))
                .forEach(method -> toFollow.add(method.id()));
        Set<String> used = new HashSet<>();
        while (!toFollow.isEmpty()) {
            String key = Ids.key(toFollow.remove());
            if (used.add(key)) {
                Optional.ofNullable(byId.get(key)).flatMap(Method::follows).map(Noted::value)
                        .ifPresent(toFollow::add);
            }
        }
        return notebook.methods().stream().filter(method -> used.contains(Ids.key(method.id())))
                .map(method -> edition.shows(method.share())
                        ? method.withNotes(Sections.of(method.notes(), edition)) : method.plainFacts())
                .toList();
    }

    private List<NeedleLot> lots(List<Entry> entries) {
        Set<String> used = new HashSet<>();
        entries.forEach(entry -> entry.needles().lot().ifPresent(lot -> used.add(Ids.key(lot.value()))));
        return notebook.lots().stream()
                .filter(lot -> edition.shows(lot.share()) || used.contains(Ids.key(lot.id())))
                .map(lot -> edition.shows(lot.share()) ? lot.withNotes(Sections.of(lot.notes(), edition))
                        : lot.plainFacts())
                .toList();
    }

    private List<Dye> dyes(List<Recipe> recipes) {
        Set<String> used = new HashSet<>();
        recipes.stream().flatMap(recipe -> recipe.parts().stream()).map(Part::is)
                .forEach(is -> used.add(Ids.key(is.value())));
        return notebook.dyes().stream()
                .filter(dye -> edition.shows(dye.share()) || used.contains(Ids.key(dye.id())))
                .map(this::open).toList();
    }

    private Dye open(Dye dye) {
        if (!edition.shows(dye.share())) {
            return dye.plainFacts();
        }
        Dye open = dye.withNotes(Sections.of(dye.notes(), edition));
        return edition == Edition.STUDIO ? open : open.withoutPurchases();
    }

    private List<Vessel> vessels(List<Recipe> recipes) {
        Set<String> used = new HashSet<>();
        recipes.forEach(recipe -> recipe.bath().vessel().ifPresent(vessel -> used.add(Ids.key(vessel.value()))));
        return notebook.vessels().stream()
                .filter(vessel -> edition == Edition.STUDIO || used.contains(Ids.key(vessel.id()))).toList();
    }

    private List<Day> days() {
        return notebook.days().stream().map(day -> new Day(day.date(), Sections.of(day.notes(), edition)))
                .filter(day -> !day.notes().isEmpty()).toList();
    }

    private List<Missing> missing() {
        return edition == Edition.STUDIO ? notebook.missing() : notebook.missing().stream()
                .filter(missing -> missing.entry() && edition.shows(missing.share()))
                .map(missing -> new Missing(missing.what(), missing.place(), missing.share(), true, List.of()))
                .toList();
    }

    private Cover cover(List<NeedleLot> lots) {
        if (edition == Edition.STUDIO) {
            return notebook.cover();
        }
        Set<String> used = new HashSet<>();
        lots.forEach(lot -> lot.condition().ifPresent(condition -> used.add(Ids.key(condition.value()))));
        Map<String, String> own = new LinkedHashMap<>();
        notebook.cover().conditions().forEach((id, words) -> {
            if (used.contains(Ids.key(id))) {
                own.put(id, words);
            }
        });
        return notebook.cover().withConditions(java.util.Collections.unmodifiableMap(own));
    }
}
