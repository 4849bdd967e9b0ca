package fascicle.book.caution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.book.words.Words;
import fascicle.notebook.Vessel;
import fascicle.notebook.label.HazardStatement;
import fascicle.workings.care.ClassRules;
import fascicle.workings.care.Duty;
import fascicle.workings.care.DyeRoom;
import fascicle.workings.care.Hazard;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Cautions are plain sentences, and the last of them defers. */
class CautionWordsTest {

    private static final Words WORDS = Words.shipped();
    private static final String DEFERS =
            "The label on the pack, local rules and licensed practice come before anything written here.";

    private static List<String> say(Hazard... hazards) {
        return CautionWords.of(List.of(hazards), WORDS);
    }

    @ParameterizedTest
    @EnumSource(Hazard.Kind.class)
    void everyHazardHasItsSentenceAndTheLastOneDefers(Hazard.Kind kind) {
        List<String> said = say(new Hazard.Usual(kind, List.of("Brick", "Plum")));
        assertEquals(2, said.size());
        assertTrue(said.get(0).endsWith(" Here: Brick; Plum."), said.get(0));
        assertEquals(DEFERS, said.get(1));
        assertFalse(say(new Hazard.Usual(kind, List.of())).get(0).contains("Here"));
    }

    /** What is said of every bath, or with another caution, needs no words of its own at the head of a page. */
    @ParameterizedTest
    @EnumSource(Hazard.Kind.class)
    void aPageThatHasACautionSaysSoAtItsHead(Hazard.Kind kind) {
        String heed = Heed.of(List.of(new Hazard.Usual(kind, List.of("Brick"))), WORDS).orElseThrow();
        assertTrue(heed.equals("Caution") || heed.startsWith("Caution: ") && WORDS.keys().contains("heed." + key(kind)), heed);
        assertEquals(Optional.empty(), Heed.of(List.of(), WORDS));
    }

    @Test
    void theHeadOfAPageNamesTheGravestFour() {
        assertEquals("Caution: hot liquor, “danger” on a pack, powder, acid", Heed.of(List.of(
                new Hazard.Usual(Hazard.Kind.HOT, List.of()), new Hazard.Usual(Hazard.Kind.HOT_POT, List.of()),
                new Hazard.OnThePack("Brick", Optional.of("danger"), List.of()),
                new Hazard.OnThePack("Plum", Optional.of("danger"), List.of()),
                new Hazard.OnThePack("Ochre", Optional.of("warning"), List.of()),
                new Hazard.Usual(Hazard.Kind.POWDER, List.of("Brick")), new Hazard.Usual(Hazard.Kind.ACID, List.of("Vinegar")),
                new Hazard.Usual(Hazard.Kind.IRON, List.of("Iron water"))), WORDS).orElseThrow());
    }

    @Test
    void noSentenceIsKeptThatNoHazardSays() {
        Set<String> left = new TreeSet<>(WORDS.keys().stream().filter(key -> key.startsWith("caution.")).toList());
        Stream.of(Hazard.Kind.values()).forEach(kind -> left.remove("caution." + key(kind)));
        left.removeIf(key -> key.matches("caution\\.(defer|here|between|on-the-pack|statement|statement-as-written|own|pot|"
                + "pot-sour|pot-alkaline|pot-iron|pot-copper|pot-aluminium|pot-plastic|pot-glass)"));
        assertEquals(Set.of(), left);
    }

    @Test
    void aPackSpeaksInTheSystemsWordsAndAnUnknownCodeAsItStands() {
        assertEquals("Brick, on the pack: Danger. Causes serious eye damage (H318). H999, as on the pack.",
                say(new Hazard.OnThePack("Brick", Optional.of("danger"),
                        List.of(HazardStatement.read("H318"), HazardStatement.read("H999")))).get(0));
        assertEquals("Brick, on the pack: Warning.",
                say(new Hazard.OnThePack("Brick", Optional.of("warning"), List.of())).get(0));
    }

    @Test
    void theMakersOwnWordsAreHers() {
        assertEquals("Brick, in the maker’s words: dust, stains.",
                say(new Hazard.InTheMakersWords("Brick", List.of("dust", "stains"))).get(0));
    }

    @Test
    void aPotIsRemarkedOn() {
        assertEquals("Iron pan: the iron takes part in the bath and saddens colours.",
                say(new Hazard.ThePotTakesPart("Iron pan", Vessel.Material.IRON, false, true)).get(0));
        assertTrue(say(new Hazard.ThePotTakesPart("Kettle", Vessel.Material.COPPER, true, false)).get(0)
                .endsWith("never for a class. Acid draws out more of the metal."));
        assertEquals("Light pot: the aluminium takes part in the bath and shifts colours. Soda and other alkalis eat "
                + "aluminium and give off hydrogen, which burns: use another pot.",
                say(new Hazard.ThePotTakesPart("Light pot", Vessel.Material.ALUMINIUM, false, true)).get(0));
    }

    @Test
    void aPotThatGivesWayIsWarnedOf() {
        assertEquals("Presoak bin: plastic softens on a stove or in an oven and drops its hot liquor. Never heat this bath "
                + "in it; take an enamel or stainless pot.",
                say(new Hazard.ThePotGivesWay("Presoak bin", Vessel.Material.PLASTIC)).get(0));
        assertEquals("Jar: glass cracks on a stove or in an oven and spills its hot liquor, a jar soonest. Heat this bath in "
                + "it only where its maker says that it may stand there.",
                say(new Hazard.ThePotGivesWay("Jar", Vessel.Material.GLASS)).get(0));
    }

    @Test
    void whereNothingHurtsNothingIsSaid() {
        assertEquals(List.of(), say());
    }

    @Test
    void vinegarInWaterIsNotToldOfChrome(@TempDir Path folder) {
        List<String> said = CautionWords.of(DyeRoom.in(folder)
                .uses("presoak: {water: 3 L, with: [{is: white-vinegar, amount: 60 mL}]}"), WORDS);
        assertEquals(5, said.size());
        assertFalse(String.join(" ", said).toLowerCase(Locale.ROOT).matches(".*(chrome|copper|iron|metal|powder).*"));
        assertEquals(DEFERS, said.get(4));
    }

    @ParameterizedTest
    @EnumSource(ClassRules.Reason.class)
    void everyRefusalNamesItsThing(ClassRules.Reason reason) {
        assertTrue(ClassWords.refusal(new ClassRules.Refusal(Optional.of("Blue stone"), reason, List.of()), WORDS)
                .startsWith("Blue stone: "));
    }

    @Test
    void aRefusalSaysWhyAndHowToMendIt() {
        assertEquals("The mordant bath: the notebook does not say which metal it brings, and an unknown one is never "
                + "for a class; say “metal:” in the file of the mordant.",
                ClassWords.refusal(new ClassRules.Refusal(Optional.empty(), ClassRules.Reason.UNKNOWN_METAL, List.of()),
                        WORDS));
        assertEquals("Brick: no label is noted for it, and what a pack may warn of is not for those under eighteen; copy "
                + "its codes under “label:” in its file, or “says: []” there where the pack has none.",
                ClassWords.refusal(new ClassRules.Refusal(Optional.of("Brick"),
                        ClassRules.Reason.NO_LABEL_AND_MINORS, List.of()), WORDS));
        assertEquals("Slate: its pack warns of what is kept from those under eighteen: May cause an allergic skin "
                + "reaction (H317).", ClassWords.refusal(new ClassRules.Refusal(Optional.of("Slate"),
                        ClassRules.Reason.LABEL_AND_MINORS, List.of(HazardStatement.read("H317"))), WORDS));
    }

    @ParameterizedTest
    @EnumSource(Duty.Task.class)
    void everyDutyHasItsSentence(Duty.Task task) {
        assertTrue(ClassWords.duty(new Duty(task, List.of("Brick")), WORDS).startsWith("The teacher "));
    }

    private static String key(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
