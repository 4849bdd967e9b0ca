package fascicle.workings.care;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.notebook.Dye;
import fascicle.notebook.label.HazardStatement;
import fascicle.workings.care.ClassRules.Reason;
import fascicle.workings.care.Duty.Task;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a class may have, and what its teacher does. */
class ClassRulesTest {

    @TempDir
    private Path folder;

    private ClassRules rules(String recipe, boolean minors) {
        return ClassRules.of(DyeRoom.in(folder).uses(recipe), minors);
    }

    /** Where everything that should be is made into a solution. */
    private List<Duty> duties(String recipe, boolean minors) {
        return Duty.of(DyeRoom.in(folder).uses(recipe), minors, thing -> true, thing -> false);
    }

    private static String mordantOf(String thing) {
        return "before: [{as: mordant, water: 1 L, with: [{is: " + thing + ", amount: 4 g}]}]";
    }

    @ParameterizedTest
    @CsvSource({"potassium-dichromate, CHROME, CHROME", "blue-stone, COPPER, COPPER",
            "old-jar, UNKNOWN_METAL, UNKNOWN_METAL", "rusty-jar,, METAL_AND_MINORS",
            "stannous-chloride,, METAL_AND_MINORS", "alum,,", "unmarked-alum,,", "copper-sulphate, COPPER, COPPER",
            "mistyped, UNKNOWN_THING, UNKNOWN_THING"})
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

    @ParameterizedTest
    @CsvSource({"sandarac,, UNKNOWN_KIND", "copper-sulphate, COPPER, COPPER",
            "mistyped, UNKNOWN_THING, UNKNOWN_THING", "bare-dye,, NO_LABEL_AND_MINORS", "walnut-stain,,",
            "bare-vinegar,,", "bare-roots,,", "fibre-red, LABEL, LABEL"})
    void anAssistantIsForAClassOnlyWhereItIsKnownWhatItIs(String thing, Reason grown, Reason minors) {
        String recipe = "after: [{water: 1 L, with: [{is: " + thing + ", amount: 1 g}]}]";
        assertEquals(Stream.ofNullable(grown).toList(), rules(recipe, false).refusals().stream()
                .map(ClassRules.Refusal::reason).toList());
        assertEquals(Stream.ofNullable(minors).toList(), rules(recipe, true).refusals().stream()
                .map(ClassRules.Refusal::reason).limit(1).toList());
    }

    @Test
    void aThingWithoutAFileIsForNoClass() {
        Uses uses = DyeRoom.in(folder).usesWithout("salt", "bath: {water: 1 L, assistants: [{is: salt, amount: 1 g}]}");
        assertEquals(List.of(new ClassRules.Refusal(Optional.of("salt"), Reason.UNKNOWN_THING, List.of())),
                ClassRules.of(uses, false).refusals());
        assertEquals(List.of(Reason.UNKNOWN_THING), rules(mordantOf("mistyped"), true).refusals().stream()
                .map(ClassRules.Refusal::reason).toList());
    }

    @Test
    void aThingOfNoSaidFormComesToAClassAsASolution() {
        Uses uses = DyeRoom.in(folder).uses("bath: {water: 1 L, dye: [{is: bare-dye, amount: 1 g}], "
                + "assistants: [{is: bare-acid, amount: 1 mL}, {is: bare-salt, amount: 1 g}]}");
        assertEquals(List.of("bare-dye"), ClassRules.asSolutions(uses, false).stream().map(Dye::id).toList());
    }

    @ParameterizedTest
    @CsvSource({"H35O, UNREAD_LABEL", "H3500, UNREAD_LABEL", "carcinogen, UNREAD_LABEL", "H350 May cause cancer, LABEL",
            "H302 and H350, UNREAD_LABEL", "P280 H350, UNREAD_LABEL",
            "H319,", "P280,", "EUH208,"})
    void aCodeThatNobodyCanReadMayBeOneForNoClass(String says, Reason refused) {
        Uses uses = DyeRoom.in(folder).with("dyes/odd.md", "---\nkind: dye\nform: liquid\nlabel: {says: [\"" + says
                + "\"]}\n---\n").uses("bath: {water: 1 L, dye: [{is: odd, amount: 1 mL}]}");
        assertEquals(Stream.ofNullable(refused).toList(), ClassRules.of(uses, false).refusals().stream()
                .map(ClassRules.Refusal::reason).toList());
        assertEquals(refused == null, ClassRules.of(uses, true).allows());
    }

    @Test
    void aCopperPotIsNeverForAClass() {
        assertEquals(List.of(Reason.COPPER_POT), rules("bath: {vessel: old-kettle, water: 1 L}", false).refusals()
                .stream().map(ClassRules.Refusal::reason).toList());
        assertTrue(rules("bath: {vessel: iron-pan, water: 1 L}", true).allows());
    }

    @ParameterizedTest
    @CsvSource({"bin, '[{to: 88 °C}]', PLASTIC_POT", "bin, '[]',", "bin, '[{hold: 8 h, on: sun}]',", "jar, '[{to: 88 °C}]',"})
    void noClassStandsAroundAPlasticPotOnAStove(String vessel, String heat, Reason reason) {
        for (boolean minors : List.of(false, true)) {
            assertEquals(Optional.ofNullable(reason).stream().toList(),
                    rules("bath: {vessel: " + vessel + ", water: 1 L}\nheat: " + heat, minors).refusals().stream()
                            .map(ClassRules.Refusal::reason).toList());
        }
    }

    @Test
    void whatAPackKeepsFromMinorsIsRefusedThemAndTold() {
        Uses uses = DyeRoom.in(folder).with("dyes/sting.md", "---\nkind: dye\nform: powder\nlabel: {says: [H317]}\n---\n")
                .uses("bath: {water: 1 L, dye: [{is: sting, amount: 1 g}]}");
        assertTrue(ClassRules.of(uses, false).allows());
        ClassRules.Refusal refusal = ClassRules.of(uses, true).refusals().get(0);
        assertEquals(Reason.LABEL_AND_MINORS, refusal.reason());
        assertEquals(List.of("H317"), refusal.says().stream().map(says -> says.code()).toList());
        assertTrue(rules("bath: {water: 1 L, assistants: [{is: soda, amount: 1 g}]}", true).allows());
    }

    /** The classes that the directive lists, and no code of them forgotten. */
    @ParameterizedTest
    @CsvFileSource(resources = "not-for-minors.csv", delimiter = ';')
    void whatALawKeepsFromMinorsIsRefusedThem(String code, String what) {
        Uses uses = usesOf(code);
        boolean forNoClass = ClassRules.isForNoClass(HazardStatement.read(code));
        assertEquals(List.of(forNoClass ? Reason.LABEL : Reason.LABEL_AND_MINORS), ClassRules.of(uses, true).refusals()
                .stream().map(ClassRules.Refusal::reason).toList(), what);
        assertEquals(!forNoClass, ClassRules.of(uses, false).allows(), what);
    }

    /** The directive names neither what irritates nor what harms an eye, and of harm by mouth, skin or air the gravest. */
    @ParameterizedTest
    @ValueSource(strings = {"H302", "H312", "H315", "H318", "H319", "H332", "H335", "H226", "H361", "H412"})
    void whatNoLawKeepsFromMinorsIsNot(String code) {
        assertTrue(ClassRules.of(usesOf(code), true).allows());
    }

    private Uses usesOf(String code) {
        return DyeRoom.in(folder).with("dyes/labelled.md", "---\nkind: dye\nform: liquid\nlabel: {says: [" + code + "]}\n---\n")
                .uses("bath: {water: 1 L, dye: [{is: labelled, amount: 1 mL}]}");
    }

    @Test
    void theTeacherDoesMoreForMinors() {
        String recipe = "bath: {water: 1 L, dye: [{is: brick, amount: 1 g}], "
                + "assistants: [{is: sour-crystals, amount: 1 g}, {is: salt, amount: 1 g}]}\n"
                + "heat: [{to: 88 °C}]\n" + mordantOf("alum");
        assertEquals(List.of(new Duty(Task.MAKE_SOLUTIONS, List.of("Brick")), new Duty(Task.COLLECT_BATHS, List.of())),
                duties(recipe, false));
        assertEquals(List.of(new Duty(Task.MAKE_SOLUTIONS, List.of("Brick")),
                new Duty(Task.DISSOLVE, List.of("alum", "sour-crystals")), new Duty(Task.WORK_THE_STOVE, List.of()),
                new Duty(Task.COLLECT_BATHS, List.of())), duties(recipe, true));
    }

    @Test
    void whatIsNotDissolvedTheTeacherPutsIn() {
        Uses uses = DyeRoom.in(folder).uses("bath: {water: 1 L, dye: [{is: brick, amount: a pinch}, {is: smoke, amount: 1 g}]}");
        assertEquals(List.of(new Duty(Task.MAKE_SOLUTIONS, List.of("smoke")), new Duty(Task.ADD_DRY, List.of("Brick")),
                new Duty(Task.SHOW_LABELS, List.of("smoke"))),
                Duty.of(uses, false, thing -> thing.id().equals("smoke"), thing -> thing.id().equals("brick")));
    }

    /** H317 is kept from those under eighteen, H334 from every class. */
    @Test
    void whatHarmsUnseenIsForNoClass() {
        String recipe = "bath: {water: 1 L, dye: [{is: fibre-red, amount: 1 mL}]}";
        ClassRules.Refusal refusal = rules(recipe, false).refusals().get(0);
        assertEquals(List.of("H334"), refusal.says().stream().map(says -> says.code()).toList());
        assertEquals(List.of("H334", "H317"), rules(recipe, true).refusals().stream()
                .flatMap(refused -> refused.says().stream()).map(says -> says.code()).toList());
    }

    @ParameterizedTest
    @CsvSource({"H340, true", "H350, true", "H350i, true", "H360, true", "H360FD, true", "H360Df, true", "H334, true",
            "H341, false", "H351, false", "H361, false", "H335, false", "H317, false"})
    void whatMayDoLastingHarmIsForNoClassAndWhatIsSuspectedIsShown(String code, boolean refused) {
        assertEquals(refused, ClassRules.isForNoClass(HazardStatement.read(code)));
    }

    @Test
    void packsThatNobodyNotedAreReadFirst() {
        assertEquals(List.of(new Duty(Task.READ_PACKS, List.of("bare-wetting"))),
                duties("presoak: {water: 1 L, with: [{is: bare-wetting, amount: 1 mL}]}", false));
    }

    @Test
    void packsWithLabelsAreAtHand() {
        assertEquals(List.of(new Duty(Task.SHOW_LABELS, List.of("soda"))),
                duties("presoak: {water: 1 L, with: [{is: soda, amount: 1 g}]}", false));
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
