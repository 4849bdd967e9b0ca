package fascicle.book.compose;

import fascicle.notebook.Bath;
import fascicle.notebook.Ids;
import fascicle.notebook.Noted;
import fascicle.notebook.Reading;
import fascicle.workings.EntryWorking;
import fascicle.workings.Workings;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** How entries lead to later ones: needles dyed again, baths used again, samples compared with. */
final class Ties {

    private final Map<String, List<EntryWorking>> dyedAgain = new HashMap<>();
    private final Map<String, List<EntryWorking>> usedAgain = new HashMap<>();
    private final Map<String, List<EntryWorking>> comparedWith = new HashMap<>();
    private final Map<String, EntryWorking> byTag = new HashMap<>();

    Ties(Workings workings) {
        for (EntryWorking working : workings.entries()) {
            Bath bath = working.entry().recipe().bath();
            add(dyedAgain, working.entry().needles().from(), working);
            add(usedAgain, bath.reuses(), working);
            working.entry().tag().ifPresent(tag -> byTag.putIfAbsent(tag.value(), working));
            tags(working).forEach(tag -> comparedWith.computeIfAbsent(tag, unused -> new ArrayList<>()).add(working));
        }
    }

    /** The tags of the samples that an entry's colours were judged against. */
    private static Stream<String> tags(EntryWorking working) {
        return working.entry().readings().stream().map(Reading::colour).filter(Reading.ByEye.class::isInstance)
                .map(Reading.ByEye.class::cast).map(byEye -> byEye.tag().value()).distinct();
    }

    /** The entries whose colours were judged against an entry's sample. */
    List<EntryWorking> comparedWith(EntryWorking sample) {
        return sample.entry().tag().map(Noted::value)
                .filter(tag -> tagged(tag).filter(found -> found.id().equals(sample.id())).isPresent())
                .map(tag -> comparedWith.getOrDefault(tag, List.of())).orElse(List.of());
    }

    private static void add(Map<String, List<EntryWorking>> ties, Optional<Noted<String>> to, EntryWorking from) {
        to.ifPresent(id -> ties.computeIfAbsent(Ids.key(id.value()), unused -> new ArrayList<>()).add(from));
    }

    /** The entries that dyed this entry's needles again. */
    List<EntryWorking> dyedAgain(String id) {
        return dyedAgain.getOrDefault(Ids.key(id), List.of());
    }

    /** The entries that used this entry's bath again. */
    List<EntryWorking> usedAgain(String id) {
        return usedAgain.getOrDefault(Ids.key(id), List.of());
    }

    /** The entry whose sample has a tag. */
    Optional<EntryWorking> tagged(String tag) {
        return Optional.ofNullable(byTag.get(tag));
    }
}
