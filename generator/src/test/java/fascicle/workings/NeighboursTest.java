package fascicle.workings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fascicle.colour.ColourDifference;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What stands next to an entry, and which entries a maker looks at first. */
class NeighboursTest {

    private final Workroom room = Workroom.usual();

    @Test
    void theEntryBeforeAndTheEntryAfter() {
        room.entry("2026-05-09-a");
        room.entry("2026-05-09-b");
        room.entry("2026-05-16-c");
        Neighbours neighbours = room.workings().neighbours();
        assertEquals(Optional.of("2026-05-09-a"), neighbours.previous(room.worked("2026-05-09-b")).map(EntryWorking::id));
        assertEquals(Optional.of("2026-05-16-c"), neighbours.next(room.worked("2026-05-09-b")).map(EntryWorking::id));
        assertEquals(Optional.empty(), neighbours.previous(room.worked("2026-05-09-a")));
        assertEquals(Optional.empty(), neighbours.next(room.worked("2026-05-16-c")));
        assertEquals(List.of("2026-05-09-a", "2026-05-09-b"), ids(neighbours.day(room.worked("2026-05-09-b"))));
    }

    @Test
    void theSameRecipeWhateverCameOfIt() {
        room.entry("2026-05-09-a").weighing("45 g").dye("brick", "1 % owf").worked();
        room.entry("2026-05-16-b").weighing("90 g").dye("brick", "0.9 g");
        room.entry("2026-05-23-c").weighing("45 g").dye("brick", "2 % owf");
        room.entry("2026-05-30-d");
        room.entry("2026-05-30-e");
        Neighbours neighbours = room.workings().neighbours();
        Neighbours.Repeats repeats = neighbours.repeats(room.worked("2026-05-16-b")).orElseThrow();
        assertEquals(List.of("2026-05-09-a", "2026-05-16-b"), ids(repeats.entries()));
        assertEquals(new Group.VerdictDays(1, 0, 0, 1, 2), repeats.days());
        assertEquals(List.of("2026-05-23-c"),
                ids(neighbours.repeats(room.worked("2026-05-23-c")).orElseThrow().entries()));
        assertEquals(Optional.empty(), neighbours.repeats(room.worked("2026-05-30-d")),
                "nothing written repeats nothing");
    }

    /** The quick search against looking at every pair. */
    @Test
    void theNearestColoursAreThoseThatLookingAtEveryPairFinds() {
        Random chance = new Random(20260509);
        for (int number = 100; number < 400; number++) {
            room.entry("2026-05-09-" + number).lab(chance.nextDouble(5, 96), chance.nextDouble(-40, 60),
                    chance.nextDouble(-60, 70));
        }
        room.entry("2026-05-09-colourless");
        Workings workings = room.workings();
        for (EntryWorking entry : workings.entries()) {
            List<Alike> expected = entry.colour().map(colour -> workings.entries().stream()
                    .filter(other -> other != entry && other.colour().isPresent())
                    .map(other -> new Alike(other, ColourDifference.ciede2000(colour.lab(),
                            other.colour().orElseThrow().lab())))
                    .sorted(Comparator.comparingDouble(Alike::difference)).limit(5).toList()).orElse(List.of());
            List<Alike> found = workings.neighbours().alike(entry, 5);
            assertEquals(expected.stream().map(alike -> alike.entry().id()).toList(),
                    found.stream().map(alike -> alike.entry().id()).toList(), entry.id());
            for (int i = 0; i < found.size(); i++) {
                assertEquals(expected.get(i).difference(), found.get(i).difference(), 1e-9);
            }
        }
    }

    @Test
    void ofManyEqualColoursAnyWillDoButNeverItself() {
        for (String name : List.of("d", "b", "a", "c")) {
            room.entry("2026-05-09-" + name).lab(50, 10, 10);
        }
        List<String> alike = room.workings().neighbours().alike(room.worked("2026-05-09-c"), 2).stream()
                .map(found -> found.entry().id()).toList();
        assertEquals(2, alike.size());
        assertEquals(List.of(), alike.stream().filter("2026-05-09-c"::equals).toList());
    }

    @Test
    void theBestAreTheMostEvenThenTheNearestToTheirTargetThenTheNewest() {
        room.entry("2026-05-02-even").worked().evenness(5);
        room.entry("2026-05-03-failed").evenness(5);
        room.entry("2026-05-04-near").worked().evenness(4).lab(50, 10, 10).target(51, 10, 10);
        room.entry("2026-05-05-far").worked().evenness(4).lab(50, 10, 10).target(60, 10, 10);
        room.entry("2026-05-06-old").worked().evenness(4).lab(50, 10, 10);
        room.entry("2026-05-07-new").worked().evenness(4).lab(50, 10, 10);
        room.entry("2026-05-08-ungraded").worked();
        Group year = room.workings().group(Group.Kind.YEAR, "2026").orElseThrow();
        assertEquals(List.of("2026-05-02-even", "2026-05-04-near", "2026-05-05-far", "2026-05-07-new",
                "2026-05-06-old", "2026-05-08-ungraded"), ids(year.best(9)));
        assertEquals(List.of("2026-05-02-even", "2026-05-04-near", "2026-05-05-far"), ids(year.best(3)));
    }

    private static List<String> ids(List<EntryWorking> entries) {
        return entries.stream().map(EntryWorking::id).toList();
    }
}
