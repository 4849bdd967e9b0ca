package fascicle.workings.care;

import fascicle.notebook.Dye;
import fascicle.notebook.Noted;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Which metal a thing brings. */
final class Metals {

    /** Words that leave no doubt, whole: copperas is an iron salt, and a tin of alum would be doubtful. */
    private static final Map<Dye.Metal, Set<String>> NAMES = Map.of(
            Dye.Metal.ALUMINIUM, Set.of("alum", "aluminium", "aluminum"),
            Dye.Metal.IRON, Set.of("iron", "ferrous", "ferric", "copperas"),
            Dye.Metal.COPPER, Set.of("copper", "cupric", "bluestone", "verdigris"),
            Dye.Metal.CHROME, Set.of("chrome", "chromium", "chromic", "dichromate", "bichromate"),
            Dye.Metal.TIN, Set.of("tin", "stannous", "stannic"));

    private Metals() {}

    /** The metal that a thing's file says, or that its name tells; nothing where its name tells none or two. */
    static Optional<Dye.Metal> of(Dye thing) {
        return thing.metal().map(Noted::value).or(() -> {
            Set<Dye.Metal> named = named(thing);
            return named.size() == 1 ? Optional.of(named.iterator().next()) : Optional.empty();
        });
    }

    /** Whether a thing is a mordant, or brings a metal all the same. */
    static boolean bringsMetal(Dye thing) {
        return thing.metal().isPresent() || thing.is(Dye.Kind.MORDANT) || !named(thing).isEmpty();
    }

    /** The metals that a name tells: not a dye's, where they are colours. */
    private static Set<Dye.Metal> named(Dye thing) {
        if (thing.is(Dye.Kind.DYE)) {
            return Set.of();
        }
        List<String> words = Arrays.asList((thing.id() + " " + thing.called()).toLowerCase(Locale.ROOT)
                .split("[^a-z]+"));
        Set<Dye.Metal> found = EnumSet.noneOf(Dye.Metal.class);
        NAMES.forEach((metal, names) -> {
            if (words.stream().anyMatch(names::contains)) {
                found.add(metal);
            }
        });
        return found;
    }
}
