package fascicle.workings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.colour.Lab;
import fascicle.notebook.Dye;
import fascicle.notebook.Outcome;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class GroupingTest {

    private final Workroom room = Workroom.usual();

    @Test
    void daysAreCountedAndNotPots() {
        room.entry("2026-05-09-a").worked();
        room.entry("2026-05-09-b").worked();
        room.entry("2026-05-09-c").verdict(Outcome.Verdict.FAILED);
        room.entry("2026-05-16-d").verdict(Outcome.Verdict.PARTLY);
        room.entry("2026-05-23-e");
        assertEquals(new Group.VerdictDays(1, 1, 1, 2, 3), group(Group.Kind.YEAR, "2026").days());
        assertEquals(new Group.VerdictDays(1, 0, 1, 1, 1), group(Group.Kind.DAY, "2026-05-09").days());
    }

    @Test
    void daysAndYearsComeOldestFirst() {
        room.entry("2026-05-09-a");
        room.entry("2025-05-09-b");
        room.entry("2025-04-01-c");
        assertEquals(List.of("2025-04-01", "2025-05-09", "2026-05-09"), ids(Group.Kind.DAY));
        assertEquals(List.of("2025", "2026"), ids(Group.Kind.YEAR));
    }

    @Test
    void conditionsRunFromGreenToGlycerinedAndThenTheMakersOwn() {
        room.conditions(Map.of("smoked", "Smoked over a wood fire", "boiled", "Boiled in ash"));
        for (String condition : List.of("smoked", "glycerined", "fresh-green", "boiled", "scalded")) {
            room.lot("lot-" + condition, condition).entry("2026-05-09-on-" + condition).lot("lot-" + condition);
        }
        room.lot("unused", "fallen");
        assertEquals(List.of("fresh-green", "scalded", "glycerined", "boiled", "smoked"), ids(Group.Kind.CONDITION));
        assertEquals("Fresh green", group(Group.Kind.CONDITION, "fresh-green").title());
        assertEquals("Smoked over a wood fire", group(Group.Kind.CONDITION, "SMOKED").title());
    }

    /** Centroids of NBS Special Publication 440: vivid red 11, vivid orange 48, black 267. */
    @Test
    void familiesComeInTheStandardsOrder() {
        room.entry("2026-05-09-black").hex("#222222");
        room.entry("2026-05-09-orange").hex("#f38400");
        room.entry("2026-05-09-red").hex("#be0032");
        room.entry("2026-05-09-uncoloured");
        assertEquals(List.of("red", "orange", "black"), ids(Group.Kind.FAMILY));
        assertEquals("Red", group(Group.Kind.FAMILY, "red").title());
    }

    @Test
    void lotsDyesAndMethodsHaveAGroupEvenUnused() {
        room.lot("scalded-2025", "scalded").method("simmer");
        assertEquals(List.of("scalded-2025"), ids(Group.Kind.LOT));
        assertEquals(List.of("brick", "salt", "white-vinegar"), ids(Group.Kind.DYE));
        assertEquals(List.of("simmer"), ids(Group.Kind.METHOD));
        assertTrue(group(Group.Kind.DYE, "brick").entries().isEmpty());
        assertEquals(Group.VerdictDays.NONE, group(Group.Kind.DYE, "brick").days());
        assertTrue(group(Group.Kind.DYE, "brick").start().isEmpty());
        assertTrue(ids(Group.Kind.CONDITION).isEmpty(), "of the other kinds only what was used");
    }

    @Test
    void aDyeIsFoundWhereverARecipeNamesIt() {
        room.thing("alum", Dye.Kind.MORDANT, Dye.Form.CRYSTALS).thing("glycerin", Dye.Kind.OTHER, Dye.Form.LIQUID);
        room.entry("2026-05-09-pot").dye("BRICK", "1 g").dye("brick", "2 g").presoak("1 L", "white-vinegar", "10 mL")
                .mordant("1 L", "alum", "1 g").finish("glycerin", "10 mL");
        for (String id : List.of("brick", "white-vinegar", "alum", "glycerin")) {
            assertEquals(1, group(Group.Kind.DYE, id).entries().size(), id);
        }
        assertTrue(group(Group.Kind.DYE, "salt").entries().isEmpty());
    }

    @Test
    void anEntryBelongsToItsMethodAndToThoseThatOneFollows() {
        room.method("base");
        room.method("upper").follows("base");
        room.entry("2026-05-09-direct").follows("base");
        room.entry("2026-05-09-through").follows("Upper");
        assertEquals(2, group(Group.Kind.METHOD, "base").entries().size());
        assertEquals(1, group(Group.Kind.METHOD, "upper").entries().size());
    }

    @Test
    void theMedianIsOfWhatWorked() {
        room.entry("2026-05-09-a").worked().lab(40, 10, 20);
        room.entry("2026-05-09-b").worked().lab(50, 30, 10);
        room.entry("2026-05-09-c").worked().lab(45, 20, 60);
        room.entry("2026-05-09-d").worked();
        room.entry("2026-05-09-e").verdict(Outcome.Verdict.FAILED).lab(0, 0, 0);
        assertEquals(new Lab(45, 20, 20), group(Group.Kind.YEAR, "2026").median().orElseThrow());
        room.entry("2025-05-09-failed").verdict(Outcome.Verdict.FAILED).lab(0, 0, 0);
        assertTrue(group(Group.Kind.YEAR, "2025").median().isEmpty());
    }

    @Test
    void nobodyIsInAGroupThatIsNotThere() {
        assertFalse(room.workings().group(Group.Kind.YEAR, "1926").isPresent());
    }

    private Group group(Group.Kind kind, String id) {
        return room.workings().group(kind, id).orElseThrow();
    }

    private List<String> ids(Group.Kind kind) {
        return room.workings().groups(kind).stream().map(Group::id).toList();
    }
}
