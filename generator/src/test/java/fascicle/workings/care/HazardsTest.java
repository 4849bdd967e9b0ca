package fascicle.workings.care;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.notebook.Edition;
import fascicle.notebook.Vessel;
import fascicle.workings.care.Hazard.Kind;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Each hazard stands where its cause does, and nowhere else. */
class HazardsTest {

    private static final String PLAIN = "bath: {vessel: wide-pan, water: 2 L, dye: [{is: rain-blue, amount: 10 mL}]}";
    private static final String SOUR = PLAIN.replace("]}", "], assistants: [{is: white-vinegar, amount: 60 mL}]}");
    private static final Set<Kind> OF_ANY_DYE = Set.of(Kind.GLOVES_AND_AIR, Kind.FOOD, Kind.DRAIN,
            Kind.FIRST_HELP);

    @TempDir
    private Path folder;
    private DyeRoom room;

    @BeforeEach
    void aDyeRoom() {
        room = DyeRoom.in(folder);
    }

    private static Set<Kind> kinds(Uses uses) {
        return usual(uses).stream().map(Hazard.Usual::kind).collect(Collectors.toCollection(() ->
                EnumSet.noneOf(Kind.class)));
    }

    private static List<Hazard.Usual> usual(Uses uses) {
        return Hazards.of(uses).stream().flatMap(hazard -> hazard instanceof Hazard.Usual usual
                ? Stream.of(usual) : Stream.empty()).toList();
    }

    private static List<String> things(Uses uses, Kind kind) {
        return usual(uses).stream().filter(hazard -> hazard.kind() == kind).flatMap(hazard -> hazard.things().stream())
                .toList();
    }

    private static <H extends Hazard> List<H> all(Class<H> kind, Uses uses) {
        return Hazards.of(uses).stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    @Test
    void waterAloneHurtsNobody() {
        assertEquals(List.of(), Hazards.of(room.uses("presoak: {water: 3 L, for: 1 h}")));
    }

    @Test
    void vinegarInColdWaterIsAnAcidAndNothingMore() {
        assertEquals(Set.of(Kind.ACID, Kind.BLEACH, Kind.GLOVES_AND_AIR, Kind.FIRST_HELP),
                kinds(room.uses("presoak: {water: 3 L, with: [{is: white-vinegar, amount: 60 mL}]}")));
    }

    @Test
    void aColdLiquidDyeHasWhatEveryDyeHas() {
        assertEquals(OF_ANY_DYE, kinds(room.uses(PLAIN)));
    }

    /** Beside a cold liquid dye, what one more line of the recipe brings. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "heat: [{to: 88 °C, hold: 1 h}]|HOT HOT_POT DRY_NEEDLES BURN",
            "heat: [{to: simmer, on: oven}]|HOT HOT_POT DRY_NEEDLES BURN",
            "heat: [{to: 40 °C, hold: 5 h, on: sun}]|LIKE_A_DRINK",
            "heat: [{to: 55 °C, hold: 5 h, on: sun}]|HOT HOT_POT DRY_NEEDLES BURN LIKE_A_DRINK",
            "presoak: {water: 1 L, with: [{is: sour-crystals, amount: 2 g}]}|ACID BLEACH",
            "presoak: {water: 1 L, with: [{is: soda, amount: 2 g}]}|ALKALI",
            "presoak: {water: 1 L, with: [{is: salt, amount: 2 g}]}|",
            "presoak: {water: 1 L, with: [{is: brick, amount: 2 g}]}|POWDER",
            "after: [{water: 1 L, with: [{is: white-vinegar, amount: 2 mL}], heat: [{to: 60 °C}]}]|"
                    + "HOT HOT_POT DRY_NEEDLES BURN ACID BLEACH SOUR_STEAM",
            "before: [{as: mordant, water: 1 L, with: [{is: alum, amount: 4 g}]}]|ALUM",
            "before: [{as: tannin, water: 1 L}]|",
            "before: [{as: iron, water: 1 L}]|IRON METAL",
            "before: [{as: iron, water: 1 L, with: [{is: old-jar, amount: 4 g}]}]|IRON METAL",
            "before: [{as: mordant, water: 1 L}]|UNKNOWN_METAL METAL",
            "before: [{as: mordant, water: 1 L, with: [{is: old-jar, amount: 4 g}]}]|UNKNOWN_METAL METAL",
            "after: [{water: 1 L, with: [{is: blue-stone, amount: 1 g}]}]|CHROME_OR_COPPER METAL",
            "after: [{water: 1 L, with: [{is: potassium-dichromate, amount: 1 g}]}]|CHROME_OR_COPPER METAL",
            "after: [{water: 1 L, with: [{is: stannous-chloride, amount: 1 g}]}]|TIN METAL",
            "after: [{water: 1 L, with: [{is: copperas, amount: 1 g}]}]|IRON METAL",
            "after: [{water: 1 L, with: [{is: copper-red, amount: 1 mL}]}]|",
            "before: [{as: mordant, water: 1 L, with: [{is: alum, amount: 4 g}, {is: copperas, amount: 1 g}]}]|"
                    + "IRON METAL",
            "after: [{water: 1 L, with: [{is: copper-sulphate, amount: 1 g}]}]|CHROME_OR_COPPER METAL",
            "before: [{as: mordant, water: 1 L, with: [{is: unmarked-alum, amount: 1 g}]}]|ALUM",
            "presoak: {water: 1 L, with: [{is: bare-dye, amount: 2 g}]}|POWDER NO_LABEL",
            "presoak: {water: 1 L, with: [{is: bare-acid, amount: 2 mL}]}|ACID BLEACH NO_LABEL",
            "presoak: {water: 1 L, with: [{is: bare-wetting, amount: 2 mL}]}|NO_LABEL",
            "presoak: {water: 1 L, with: [{is: bare-vinegar, amount: 2 mL}]}|ACID BLEACH",
            "presoak: {water: 1 L, with: [{is: bare-strong-vinegar, amount: 2 mL}]}|ACID BLEACH NO_LABEL",
            "presoak: {water: 1 L, with: [{is: bare-roots, amount: 2 g}]}|PLANT",
            "presoak: {water: 1 L, with: [{is: bare-tin-salt, amount: 2 g}]}|TIN METAL NO_LABEL",
            "presoak: {water: 1 L, with: [{is: fibre-red, amount: 2 mL}]}|NEVER_FOR_A_CLASS",
            "presoak: {water: 1 L, with: [{is: bare-salt, amount: 2 g}]}|",
            "presoak: {water: 1 L, with: [{is: sandarac, amount: 2 g}]}|UNKNOWN_KIND",
            "presoak: {water: 1 L, with: [{is: mistyped, amount: 2 g}]}|NOTHING_IS_KNOWN POWDER",
            "finish: [{is: linseed-oil, amount: 5 mL}]|OILY_RAGS",
            "finish: [{is: sealer, amount: 5 mL}]|OILY_RAGS",
            "finish: [{is: walnut-stain, amount: 5 mL}]|",
            "presoak: {water: 1 L, with: [{is: linseed-oil, amount: 5 mL}]}|",
            "finish: [{is: shellac-flakes, amount: 5 g}]|FLAMMABLE_FINISH",
            "finish: [{is: thinner, amount: 5 mL}]|FLAMMABLE_FINISH",
            "finish: [{is: glycerin, amount: 5 mL}]|"})
    void aHazardStandsWhereItsCauseDoes(String line, String more) {
        Set<Kind> expected = EnumSet.copyOf(OF_ANY_DYE);
        Stream.of(Optional.ofNullable(more).orElse("").split(" ")).filter(word -> !word.isEmpty())
                .map(Kind::valueOf).forEach(expected::add);
        assertEquals(expected, kinds(room.uses(PLAIN + "\n" + line)));
    }

    @Test
    void anAcidInTheHeatedBathGivesOffSharpSteamAndOneInAColdSoakDoesNot() {
        String heated = "\nheat: [{to: 88 °C, hold: 1 h}]";
        String presoak = "\npresoak: {water: 1 L, with: [{is: white-vinegar, amount: 60 mL}]}";
        assertTrue(kinds(room.uses(SOUR + heated)).contains(Kind.SOUR_STEAM));
        assertFalse(kinds(room.uses(PLAIN + heated + presoak)).contains(Kind.SOUR_STEAM));
    }

    @Test
    void aDyebathThatDoesNotNameItsDyeSaysSo() {
        assertTrue(kinds(room.uses("bath: {vessel: wide-pan, water: 2 L}")).contains(Kind.DYE_LEFT_OPEN));
        assertTrue(kinds(room.uses("bath: {vessel: wide-pan, water: 2 L}")).containsAll(OF_ANY_DYE));
        assertFalse(kinds(room.uses("bath: {extract: {of: 200 g, water: 2 L}}")).contains(Kind.DYE_LEFT_OPEN));
    }

    @Test
    void aBathUsedAgainStillHoldsWhatWasPutIntoItBefore() {
        room.entry("first", "bath: {water: 2 L, dye: [{is: smoke, amount: 1 g}, {is: blue-stone, amount: 1 g}]}")
                .entry("second", "bath: {reuses: 2026-05-09-first, assistants: [{is: soda, amount: 1 g}]}");
        Uses third = room.uses("bath: {reuses: 2026-05-09-second}");
        assertTrue(kinds(third).containsAll(Set.of(Kind.CHROME_OR_COPPER, Kind.ALKALI)));
        assertEquals(List.of("smoke", "soda"), all(Hazard.OnThePack.class, third).stream().map(Hazard.OnThePack::thing)
                .toList());
        assertFalse(kinds(third).contains(Kind.DYE_LEFT_OPEN));
    }

    @Test
    void onlyAPowderThatIsPutInNowDrifts() {
        room.entry("first", "bath: {water: 2 L, dye: [{is: smoke, amount: 1 g}]}");
        Uses again = room.uses("bath: {reuses: 2026-05-09-first}");
        assertFalse(kinds(again).contains(Kind.POWDER));
        Uses deepened = room.uses("bath: {reuses: 2026-05-09-first, dye: [{is: smoke, amount: 1 g}]}");
        assertEquals(List.of("smoke"), things(deepened, Kind.POWDER));
        assertEquals(List.of("smoke"), things(again.plus(deepened), Kind.POWDER));
    }

    @Test
    void aBathInGlassLooksLikeADrink() {
        assertTrue(kinds(room.uses(PLAIN.replace("wide-pan", "jar"))).contains(Kind.LIKE_A_DRINK));
        assertFalse(kinds(room.uses("bath: {vessel: wide-pan, water: 2 L}")).contains(Kind.LIKE_A_DRINK));
    }

    /** What nobody said counts for the worse; that a pack has no warning can be said. */
    @Test
    void aPackThatWarnsOfNothingWasLookedAt() {
        assertTrue(kinds(Care.uses(room.thing("bare-dye"))).contains(Kind.NO_LABEL));
        assertFalse(kinds(Care.uses(room.thing("rain-blue"))).contains(Kind.NO_LABEL));
        assertEquals(List.of(), all(Hazard.OnThePack.class, Care.uses(room.thing("rain-blue"))));
        assertFalse(kinds(Care.uses(room.thing("mistyped"))).contains(Kind.NO_LABEL), "said already, and worse");
    }

    @Test
    void whatBringsAHazardIsNamed() {
        Uses uses = room.uses("bath: {water: 2 L, dye: [{is: brick, amount: 1 g}, {is: smoke, amount: 1 g}]}");
        assertEquals(List.of("Brick", "smoke"), things(uses, Kind.POWDER));
    }

    @Test
    void aPackSaysWhatStandsOnItTheGravestFirst() {
        Uses uses = room.uses("bath: {water: 2 L, dye: [{is: smoke, amount: 1 g}]}\n"
                + "before: [{as: scour, water: 1 L, with: [{is: soda, amount: 1 g}]}]");
        List<Hazard.OnThePack> packs = all(Hazard.OnThePack.class, uses);
        assertEquals(List.of("smoke", "soda"), packs.stream().map(Hazard.OnThePack::thing).toList());
        assertEquals(Optional.of("danger"), packs.get(0).signal());
        assertEquals(List.of("H317", "H999"), packs.get(0).says().stream().map(says -> says.written()).toList());
        assertEquals(List.of(new Hazard.InTheMakersWords("smoke", List.of("dust", "stains"))),
                all(Hazard.InTheMakersWords.class, uses));
    }

    @ParameterizedTest
    @CsvSource({"iron-pan, IRON", "old-kettle, COPPER", "light-pot, ALUMINIUM"})
    void aMetalPotTakesPart(String vessel, Vessel.Material material) {
        Uses uses = room.uses(PLAIN.replace("wide-pan", vessel));
        assertEquals(List.of(material), all(Hazard.ThePotTakesPart.class, uses).stream()
                .map(Hazard.ThePotTakesPart::material).toList());
        assertFalse(all(Hazard.ThePotTakesPart.class, uses).get(0).sour());
        assertTrue(all(Hazard.ThePotTakesPart.class, room.uses(SOUR.replace("wide-pan", vessel))).get(0).sour());
        assertEquals(List.of(), all(Hazard.ThePotTakesPart.class, room.uses(PLAIN)));
    }

    @ParameterizedTest
    @CsvSource({"bin, [{to: 88 °C}], PLASTIC", "jar, [{to: 88 °C}], GLASS", "bin, '[{to: 40 °C, on: stove}]', PLASTIC",
            "bin, '[{to: simmer, on: oven}]', PLASTIC", "jar, [{hold: 1 h}], GLASS",
            "bin, '[{to: 30 °C, on: sun}, {to: 60 °C}]', PLASTIC", "bin, [],", "jar, [],", "bin, '[{to: 60 °C, on: sun}]',",
            "jar, '[{hold: 8 h, on: sun}]',", "wide-pan, [{to: 88 °C}],", "iron-pan, [{to: 88 °C}],",
            "crock, [{to: 88 °C}],"})
    void plasticAndGlassGiveWayOnTheStoveAndNotInTheSun(String vessel, String heat, Vessel.Material material) {
        Uses uses = room.uses(SOUR.replace("wide-pan", vessel) + "\nheat: " + heat);
        assertEquals(Optional.ofNullable(material).stream().toList(), all(Hazard.ThePotGivesWay.class, uses).stream()
                .map(Hazard.ThePotGivesWay::material).toList());
        assertEquals(material != null, Hazards.of(uses).get(0) instanceof Hazard.ThePotGivesWay, "gravest first");
    }

    /** Neither names a vessel, and neither need be done in that of the dyebath. */
    @ParameterizedTest
    @ValueSource(strings = {"before: [{as: scour, water: 1 L, heat: [{to: 88 °C}]}]",
            "after: [{as: iron, water: 1 L, heat: [{to: 60 °C}]}]"})
    void aTreatmentOrAnExtractIsHeatedInAPotOfItsOwn(String treatment) {
        assertEquals(List.of(), all(Hazard.ThePotGivesWay.class, room.uses(PLAIN.replace("wide-pan", "jar") + "\n" + treatment)));
        assertEquals(List.of(), all(Hazard.ThePotGivesWay.class, room.uses("bath: {vessel: jar, water: 2 L, "
                + "dye: [{is: bare-roots, amount: 45 g}], extract: {of: 45 g, water: 1 L, heat: [{to: simmer, hold: 1 h}]}}")));
    }

    @Test
    void aThingWhoseFileIsMissingIsNoHarmlessOne() {
        String recipe = PLAIN + "\nbefore: [{as: mordant, water: 1 L, with: [{is: rusty-jar, amount: 4 mL}]}]";
        assertEquals(Set.of(), kinds(room.usesWithout("smoke", "presoak: {water: 1 L}")));
        Uses uses = room.usesWithout("rusty-jar", recipe);
        assertEquals(List.of("rusty-jar"), things(uses, Kind.NOTHING_IS_KNOWN));
        assertEquals(List.of("rusty-jar"), things(uses, Kind.UNKNOWN_METAL));
    }

    @Test
    void aBareDyeInADyebathIsADye() {
        String bare = "bath: {water: 2 L, dye: [{is: sandarac, amount: 1 g}]}";
        assertEquals(OF_ANY_DYE, kinds(room.uses(bare)));
        assertEquals(List.of("Sandarac"), things(room.uses(bare.replace("dye:", "assistants:")), Kind.UNKNOWN_KIND));
        room.entry("first", bare);
        assertFalse(kinds(room.uses("bath: {reuses: 2026-05-09-first}")).contains(Kind.UNKNOWN_KIND));
    }

    @ParameterizedTest
    @CsvSource({"'assistants: [{is: soda, amount: 1 g}]}', true", "'assistants: [{is: salt, amount: 1 g}]}', false",
            "'water: 1 L}\nbefore: [{as: scour, water: 1 L, with: [{is: soda, amount: 1 g}]}]', true",
            "'water: 1 L}\npresoak: {water: 1 L, with: [{is: soda, amount: 1 g}]}', false"})
    void anAlkaliEatsAnAluminiumPot(String rest, boolean alkaline) {
        assertEquals(List.of(alkaline), all(Hazard.ThePotTakesPart.class, room.uses("bath: {vessel: light-pot, " + rest))
                .stream().map(Hazard.ThePotTakesPart::alkaline).toList());
    }

    @Test
    void severalRecipesHaveTheHazardsOfEachAndEachOnce() {
        Uses one = room.uses(PLAIN + "\nheat: [{to: 88 °C}]");
        Uses other = room.uses("presoak: {water: 3 L, with: [{is: white-vinegar, amount: 60 mL}]}");
        Set<Kind> both = EnumSet.copyOf(kinds(one));
        both.addAll(kinds(other));
        assertEquals(both, kinds(one.plus(other)));
        assertEquals(Hazards.of(one), Hazards.of(one.plus(one)));
        assertEquals(Hazards.of(one), Hazards.of(Uses.NOTHING.plus(one)));
    }

    @Test
    void theGravestStandsFirst() {
        List<Kind> found = usual(room.uses(PLAIN + "\nheat: [{to: 88 °C}]\n"
                + "before: [{as: mordant, water: 1 L, with: [{is: blue-stone, amount: 1 g}, {is: alum, amount: 1 g}]}]"
                + "\npresoak: {water: 1 L, with: [{is: white-vinegar, amount: 60 mL}, {is: brick, amount: 1 g}]}"))
                .stream().map(Hazard.Usual::kind).toList();
        assertEquals(found.stream().sorted().toList(), found);
        assertEquals(Kind.CHROME_OR_COPPER, found.get(0));
    }

    @Test
    void everyEditionIsWarnedAlike() {
        String recipe = "bath: {vessel: iron-pan, water: 2 L, dye: [{is: smoke, amount: 1 g}]}\nheat: [{to: 88 °C}]\n"
                + "before: [{as: mordant, water: 1 L, "
                + "with: [{is: blue-stone, amount: 1 g}, {is: rusty-jar, amount: 1 mL}]}]\n"
                + "presoak: {water: 1 L, with: [{is: mistyped, amount: 1 g}, {is: sandarac, amount: 1 g}]}";
        List<Hazard> studio = Hazards.of(room.uses(recipe));
        assertEquals(studio, Hazards.of(room.uses(recipe, Edition.STUDENTS)));
        assertEquals(studio, Hazards.of(room.uses(recipe, Edition.OPEN)));
    }

    @Test
    void aThingOnTheShelfHasItsOwnHazardsAndNoStove() {
        assertEquals(Set.of(Kind.POWDER, Kind.GLOVES_AND_AIR, Kind.FOOD, Kind.DRAIN, Kind.FIRST_HELP),
                kinds(Care.uses(room.thing("smoke"))));
        assertTrue(kinds(Care.uses(room.thing("sandarac"))).contains(Kind.UNKNOWN_KIND));
        assertTrue(kinds(Care.uses(room.thing("mistyped"))).contains(Kind.NOTHING_IS_KNOWN));
        assertEquals(Set.of(), kinds(Care.uses(room.thing("salt"))));
    }
}
