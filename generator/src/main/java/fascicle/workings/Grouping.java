package fascicle.workings;

import fascicle.colour.ColourNames;
import fascicle.colour.Lab;
import fascicle.notebook.Conditions;
import fascicle.notebook.Dye;
import fascicle.notebook.Ids;
import fascicle.notebook.Method;
import fascicle.notebook.NeedleLot;
import fascicle.notebook.Notebook;
import fascicle.notebook.Noted;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;

/** Puts entries together that have something in common. */
final class Grouping {

    private final Notebook notebook;
    private final Map<String, Member> members;
    private final Map<String, Method> methods;

    private Grouping(Notebook notebook, Map<String, Member> members, Map<String, Method> methods) {
        this.notebook = notebook;
        this.members = members;
        this.methods = methods;
    }

    /** All entries of a notebook. */
    static Grouping of(Notebook notebook, List<EntryWorking> entries) {
        return new Grouping(notebook, Notebook.byId(entries.parallelStream().map(Member::of).toList(),
                member -> member.working().id()), Notebook.byId(notebook.methods(), Method::id));
    }

    /** Some of these entries; what is known of them is not worked out again. */
    Grouping among(List<EntryWorking> some) {
        Map<String, Member> chosen = new LinkedHashMap<>();
        for (EntryWorking working : some) {
            String key = Ids.key(working.id());
            Member known = members.get(key);
            chosen.put(key, known == null ? Member.of(working) : known);
        }
        return new Grouping(notebook, chosen, methods);
    }

    /** An entry's recipe. */
    Optional<RecipeKey> recipe(EntryWorking working) {
        return Optional.ofNullable(members.get(Ids.key(working.id()))).map(Member::recipe);
    }

    /** All groups of a kind, in the kind's order. */
    List<Group> of(Group.Kind kind) {
        return switch (kind) {
            case FAMILY -> groups(kind, families(), false, entry ->
                    entry.colour().map(colour -> hyphened(colour.name().family())).stream().toList());
            case CONDITION -> groups(kind, conditions(), false, entry -> entry.needles().condition().stream().toList());
            case LOT -> groups(kind, titles(notebook.lots(), NeedleLot::id, NeedleLot::called), true,
                    entry -> entry.needles().lot().map(NeedleLot::id).stream().toList());
            case DYE -> groups(kind, titles(notebook.dyes(), Dye::id, Dye::called), true, Grouping::things);
            case METHOD -> groups(kind, titles(notebook.methods(), Method::id, Method::called), true, this::followed);
            case DAY -> groups(kind, dates(Grouping::day), false, entry -> List.of(day(entry)));
            case YEAR -> groups(kind, dates(Grouping::year), false, entry -> List.of(year(entry)));
        };
    }

    private List<Group> groups(Group.Kind kind, Map<String, String> titles, boolean evenEmpty,
            Function<EntryWorking, Collection<String>> idsOf) {
        Map<String, List<Member>> byId = new HashMap<>();
        for (Member member : members.values()) {
            Set<String> keys = new LinkedHashSet<>();
            idsOf.apply(member.working()).forEach(id -> keys.add(Ids.key(id)));
            keys.forEach(key -> byId.computeIfAbsent(key, unused -> new ArrayList<>()).add(member));
        }
        List<Group> groups = new ArrayList<>();
        titles.forEach((id, title) -> {
            List<Member> of = byId.getOrDefault(Ids.key(id), List.of());
            if (evenEmpty || !of.isEmpty()) {
                groups.add(group(kind, id, title, of));
            }
        });
        return List.copyOf(groups);
    }

    private static Group group(Group.Kind kind, String id, String title, List<Member> members) {
        List<EntryWorking> entries = members.stream().map(Member::working).toList();
        List<Member> worked = members.stream().filter(member -> member.working().worked()).toList();
        List<Lab> colours = worked.stream().flatMap(member -> member.working().colour().stream())
                .map(ColourFigures::lab).toList();
        Optional<Lab> median = colours.isEmpty() ? Optional.empty() : Optional.of(Lab.median(colours));
        return new Group(kind, id, title, entries, Group.VerdictDays.of(entries), median,
                Starting.from(worked, median));
    }

    private static Map<String, String> families() {
        Map<String, String> families = new LinkedHashMap<>();
        ColourNames.families().forEach(family -> families.put(hyphened(family), family));
        return families;
    }

    /** The conditions that the notebook knows, then any that only a lot names. */
    private Map<String, String> conditions() {
        Map<String, String> conditions = new LinkedHashMap<>();
        Conditions known = Conditions.of(notebook.cover());
        known.all().forEach(condition -> conditions.put(condition.id(), condition.title()));
        members.values().stream().flatMap(member -> member.working().needles().condition().stream()).sorted()
                .filter(id -> known.find(id).isEmpty()).forEach(id -> conditions.put(id, id));
        return conditions;
    }

    private static <T> Map<String, String> titles(List<T> things, Function<T, String> id, Function<T, String> title) {
        Map<String, String> titles = new LinkedHashMap<>();
        things.forEach(thing -> titles.put(id.apply(thing), title.apply(thing)));
        return titles;
    }

    private Map<String, String> dates(Function<EntryWorking, String> date) {
        Map<String, String> dates = new TreeMap<>();
        members.values().forEach(member -> dates.put(date.apply(member.working()), date.apply(member.working())));
        return dates;
    }

    private static List<String> things(EntryWorking entry) {
        return entry.parts().map(PartFigures::is).toList();
    }

    /** The method an entry follows, the one that follows, and so on. */
    Collection<String> followed(EntryWorking entry) {
        Set<String> chain = new LinkedHashSet<>();
        Optional<String> next = entry.entry().method().map(Noted::value);
        while (next.isPresent() && chain.add(Ids.key(next.get()))) {
            next = Optional.ofNullable(methods.get(Ids.key(next.get()))).flatMap(Method::follows).map(Noted::value);
        }
        return chain;
    }

    private static String day(EntryWorking entry) {
        return entry.entry().date().toString();
    }

    private static String year(EntryWorking entry) {
        return Integer.toString(entry.entry().date().getYear());
    }

    private static String hyphened(String family) {
        return family.toLowerCase(Locale.ROOT).replace(' ', '-');
    }

    /**
     * An entry that is looked at from several groups.
     *
     * @param working the entry
     * @param recipe its recipe
     */
    record Member(EntryWorking working, RecipeKey recipe) {

        static Member of(EntryWorking working) {
            return new Member(working, RecipeKey.of(working));
        }
    }
}
