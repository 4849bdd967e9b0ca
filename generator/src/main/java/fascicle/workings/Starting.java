package fascicle.workings;

import fascicle.colour.ColourDifference;
import fascicle.colour.Lab;
import fascicle.notebook.Entry;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Chooses the recipe to start from: the one that worked on most dye days, shown by the entry whose colour lies nearest
 * to the group's median; of equals the most even one, then the newest, then the first by id.
 */
final class Starting {

    private Starting() {}

    /** The recipe to start from among entries that worked; nothing where none did. */
    static Optional<Group.Start> from(List<Grouping.Member> worked, Optional<Lab> median) {
        Map<RecipeKey, Set<LocalDate>> days = new HashMap<>();
        worked.forEach(member -> days.computeIfAbsent(member.recipe(), unused -> new HashSet<>())
                .add(member.working().entry().date()));
        int most = days.values().stream().mapToInt(Set::size).max().orElse(0);
        return worked.stream().filter(member -> days.getOrDefault(member.recipe(), Set.of()).size() == most)
                .map(member -> new Candidate(member.working(), distance(member.working(), median)))
                .min(Candidate.BEST_FIRST)
                .map(best -> new Group.Start(best.working(), most));
    }

    private static double distance(EntryWorking working, Optional<Lab> median) {
        return median.isPresent() && working.colour().isPresent()
                ? ColourDifference.ciede2000(median.get(), working.colour().get().lab())
                : Double.POSITIVE_INFINITY;
    }

    private record Candidate(EntryWorking working, double distance) {

        static final Comparator<Candidate> BEST_FIRST = Comparator.comparingDouble(Candidate::distance)
                .thenComparing(Candidate::evenness, Comparator.reverseOrder())
                .thenComparing(candidate -> candidate.entry().date(), Comparator.reverseOrder())
                .thenComparing(candidate -> candidate.entry().id());

        Entry entry() {
            return working.entry();
        }

        int evenness() {
            return working.evenness();
        }
    }
}
