package fascicle.workings.care;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.workings.care.ClassRules.Duty;
import fascicle.workings.care.ClassRules.Reason;
import fascicle.workings.care.ClassRules.Task;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a class may have, and what its teacher does. */
class ClassRulesTest {

    @TempDir
    private Path folder;

    private ClassRules rules(String recipe, boolean minors) {
        return ClassRules.of(DyeRoom.in(folder).uses(recipe), minors);
    }

    private static String mordantOf(String thing) {
        return "before: [{as: mordant, water: 1 L, with: [{is: " + thing + ", amount: 4 g}]}]";
    }

    @ParameterizedTest
    @CsvSource({"potassium-dichromate, CHROME, CHROME", "blue-stone, COPPER, COPPER",
            "old-jar, UNKNOWN_METAL, UNKNOWN_METAL", "rusty-jar,, METAL_AND_MINORS",
            "stannous-chloride,, METAL_AND_MINORS", "alum,,"})
    void aMordantIsForAClassOnlyWhereItsMetalIs(String thing, Reason grown, Reason minors) {
        assertEquals(Optional.ofNullable(grown), rules(mordantOf(thing), false).refusals().stream()
                .map(ClassRules.Refusal::reason).findFirst());
        assertEquals(Optional.ofNullable(minors), rules(mordantOf(thing), true).refusals().stream()
                .map(ClassRules.Refusal::reason).findFirst());
        assertEquals(grown == null, rules(mordantOf(thing), false).allows());
    }

    @Test
    void aMordantBathThatNamesNothingIsOfAnUnknownMetal() {
        assertEquals(List.of(new ClassRules.Refusal(Optional.empty(), Reason.UNKNOWN_METAL, List.of())),
                rules("before: [{as: mordant, water: 1 L}]", false).refusals());
    }

    @Test
    void aCopperPotIsNeverForAClass() {
        assertEquals(List.of(Reason.COPPER_POT), rules("bath: {vessel: old-kettle, water: 1 L}", false).refusals()
                .stream().map(ClassRules.Refusal::reason).toList());
        assertTrue(rules("bath: {vessel: iron-pan, water: 1 L}", true).allows());
    }

    @Test
    void whatAPackKeepsFromMinorsIsRefusedThemAndTold() {
        String recipe = "bath: {water: 1 L, dye: [{is: smoke, amount: 1 g}]}";
        assertTrue(rules(recipe, false).allows());
        ClassRules.Refusal refusal = rules(recipe, true).refusals().get(0);
        assertEquals(Reason.LABEL_AND_MINORS, refusal.reason());
        assertEquals(List.of("H317"), refusal.says().stream().map(says -> says.code()).toList());
        assertTrue(rules("bath: {water: 1 L, assistants: [{is: soda, amount: 1 g}]}", true).allows());
    }

    @Test
    void theTeacherDoesMoreForMinors() {
        String recipe = "bath: {water: 1 L, dye: [{is: brick, amount: 1 g}], "
                + "assistants: [{is: sour-crystals, amount: 1 g}, {is: salt, amount: 1 g}]}\n"
                + "heat: [{to: 88 °C}]\n" + mordantOf("alum");
        assertEquals(List.of(new Duty(Task.MAKE_SOLUTIONS, List.of("Brick")), new Duty(Task.COLLECT_BATHS, List.of())),
                rules(recipe, false).duties());
        assertEquals(List.of(new Duty(Task.MAKE_SOLUTIONS, List.of("Brick")),
                new Duty(Task.DISSOLVE, List.of("alum", "sour-crystals")), new Duty(Task.WORK_THE_STOVE, List.of()),
                new Duty(Task.COLLECT_BATHS, List.of())), rules(recipe, true).duties());
    }

    @Test
    void packsWithLabelsAreAtHand() {
        assertEquals(List.of(new Duty(Task.SHOW_LABELS, List.of("soda"))),
                rules("presoak: {water: 1 L, with: [{is: soda, amount: 1 g}]}", false).duties());
    }

    @Test
    void aClassOfSeveralRecipesIsRefusedWhatAnyOfThemIs() {
        DyeRoom room = DyeRoom.in(folder);
        Uses both = room.uses("bath: {water: 1 L, dye: [{is: rain-blue, amount: 1 mL}]}")
                .plus(room.uses(mordantOf("blue-stone")));
        assertEquals(List.of(Reason.COPPER), ClassRules.of(both, false).refusals().stream()
                .map(ClassRules.Refusal::reason).toList());
    }
}
