package fascicle.workings.clock;

import static fascicle.workings.clock.Kitchen.lines;
import static fascicle.workings.clock.Kitchen.said;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.LocalTime;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The order and hours of a dyer's work (common practice, no source), with times reckoned by hand. */
class ClockTest {

    private static final String BATH = "bath: {water: 3 L, dye: [{is: brick, amount: 1 g}]}";

    @TempDir
    private Path folder;

    private Kitchen kitchen;

    @BeforeEach
    void open() {
        kitchen = new Kitchen(folder);
    }

    @Test
    void aPotThatStandsOvernight() {
        kitchen.method("simmer", "presoak: {water: 3 L, for: 1 h}", BATH, "heat: [{to: 88 °C, over: 40 min, hold: 90 min}]",
                "cool: overnight", "rinse: before-drying", "dry: 2 days");
        assertEquals(lines("0 soak bin until 60", "60 make dyebath", "60 out bin", "60 on dyebath", "60 rise dyebath until 100",
                "100 hold dyebath until 190", "190 off dyebath", "190 cool dyebath until ~morning 1 + 0",
                "~morning 1 + 0 out dyebath", "~morning 1 + 0 rinse", "~morning 1 + 0 dry until ~morning 1 + 2880"),
                said(kitchen.clock("simmer")));
    }

    /** 3 L · 4.186 J/(mL·K) · 68 K at 1 kW is 14.2 min, and so 15; from 88 °C to just below a simmer five more. */
    @Test
    void nobodyIsSentToTheStoveBeforeThePotIsHot() {
        kitchen.method("quick", BATH, "heat: [{to: 88 °C, hold: 1 h}, {to: below-simmer, hold: 1 h}, {to: 70 °C, hold: 10 min}]",
                "cool: 2 h", "rinse: none");
        assertEquals(lines("0 make dyebath", "0 on dyebath", "0 rise dyebath until ~15", "~15 hold dyebath until ~75",
                "~75 rise dyebath until ~80", "~80 hold dyebath until ~140", "~140 rise dyebath until ~140",
                "~140 hold dyebath until ~150", "~150 off dyebath", "~150 cool dyebath until ~270", "~270 lift dyebath",
                "~270 dry until ?"), said(kitchen.clock("quick")));
    }

    @Test
    void aLookIsNeverHotterThanTheBoil() {
        assertEquals(95.4, HeatingUp.celsius(fascicle.notebook.HeatStep.Look.BOIL, 95.4));
        assertEquals(90, HeatingUp.celsius(fascicle.notebook.HeatStep.Look.BELOW_SIMMER, 95.4));
    }

    @Test
    void withoutItsWaterNobodyKnowsHowLongAPotTakes() {
        kitchen.method("dry", "bath: {dye: [{is: brick, amount: 1 g}]}", "heat: [{to: 88 °C, hold: 1 h}]", "cool: overnight");
        assertEquals(lines("0 make dyebath", "0 on dyebath", "0 rise dyebath until ?", "? hold dyebath until ?", "? off dyebath",
                "? cool dyebath until ~morning 1 + 0", "~morning 1 + 0 out dyebath", "~morning 1 + 0 dry until ?"),
                said(kitchen.clock("dry")), "but a night passes");
    }

    @Test
    void norTheSun() {
        kitchen.method("jar", BATH, "heat: [{to: 45 °C, over: 2 h, hold: 5 h, on: sun}]", "rinse: before-drying", "dry: 1 day");
        Clock clock = kitchen.clock("jar");
        assertEquals(lines("0 make dyebath", "0 in dyebath", "0 rise dyebath until 120", "120 hold dyebath until 420", "420 out dyebath",
                "420 rinse", "420 dry until 1860"), said(clock));
        assertEquals(0, clock.onStove().size());
        kitchen.method("jar", BATH, "heat: [{to: 45 °C, hold: 5 h, on: sun}]");
        assertEquals("0 rise dyebath until ?", said(kitchen.clock("jar").stages().get(2)));
    }

    @Test
    void additionsGoInWhenTheirTimeComes() {
        kitchen.method("late", "bath: {water: 3 L, dye: [{is: brick, amount: 1 g}], assistants: [{is: salt, amount: 40 g, at: 20 min}, "
                + "{is: white-vinegar, amount: 60 mL, at: 1 h}]}", "presoak: {for: 10 min}",
                "heat: [{to: 88 °C, over: 30 min, hold: 1 h}]", "cool: 1 h");
        assertEquals(lines("0 soak bin until 10", "10 make dyebath", "10 out bin", "10 on dyebath", "10 rise dyebath until 40",
                "30 add dyebath salt", "40 hold dyebath until 100", "70 add dyebath white-vinegar", "100 off dyebath",
                "100 cool dyebath until 160", "160 lift dyebath", "160 dry until ?"), said(kitchen.clock("late")));
    }

    @Test
    void mordantBeforeAndIronAfter() {
        kitchen.method("plant", "before: [{as: mordant, water: 2 L, heat: [{to: 80 °C, over: 30 min, hold: 1 h}]}]",
                "bath: {water: 2 L, dye: [{is: brick, amount: 1 g}], extract: {water: 2 L, heat: [{to: simmer, over: 30 min, hold: 2 h}]}}",
                "heat: [{to: 85 °C, over: 20 min, hold: 40 min}]", "cool: 1 h",
                "after: [{as: iron, water: 2 L, heat: [{to: 50 °C, over: 10 min, hold: 10 min}]}]", "rinse: before-drying");
        Clock clock = kitchen.clock("plant");
        assertEquals(lines("0 make before", "0 on before", "0 rise before until 30", "0 on extract", "0 rise extract until 30",
                "30 hold before until 90", "30 hold extract until 150", "90 off before", "90 lift before",
                "150 off extract", "150 lift extract", "150 make dyebath", "150 on dyebath", "150 rise dyebath until 170", "170 hold dyebath until 210", "210 off dyebath", "210 cool dyebath until 270", "270 lift dyebath",
                "270 make after", "270 on after", "270 rise after until 280", "280 hold after until 290", "290 off after", "290 lift after",
                "290 rinse", "290 dry until ?"), said(clock));
        assertEquals(4, clock.onStove().size());
    }

    @Test
    void needlesRinsedAfterDrying() {
        kitchen.method("little", BATH, "heat: [{to: 88 °C, over: 30 min, hold: 1 h}]", "cool: 1 h", "rinse: after-drying",
                "dry: 3 h");
        assertEquals(lines("150 half_dry until 330", "330 rinse", "330 dry until ?"), last("little", 3));
        kitchen.method("long", BATH, "heat: [{to: 88 °C, over: 30 min, hold: 1 h}]", "cool: 1 h", "rinse: after-drying",
                "dry: 1 day");
        assertEquals(lines("150 dry until ~1590", "~1590 rinse", "~1590 dry until ?"), last("long", 3));
        kitchen.method("unsaid", BATH, "heat: [{to: 88 °C, over: 30 min, hold: 1 h}]", "cool: 1 h", "rinse: after-drying");
        assertEquals(lines("150 half_dry until ?", "? rinse", "? dry until ?"), last("unsaid", 3));
    }

    @Test
    void aBathThatCooledForLessThanThreeHoursMayBeHotStill() {
        assertEquals("110 lift dyebath", cooled("20 min"));
        assertEquals("269 lift dyebath", cooled("179 min"));
        assertEquals("270 out dyebath", cooled("3 h"));
        assertEquals("~morning 1 + 0 out dyebath", cooled("overnight"));
        kitchen.method("warm", BATH, "heat: [{to: 45 °C, over: 30 min, hold: 1 h}]", "cool: 20 min", "dry: 1 day");
        assertEquals("110 out dyebath", last("warm", 2).lines().findFirst().orElseThrow(), "never hot to the hand");
    }

    private String cooled(String time) {
        kitchen.method("cooled", BATH, "heat: [{to: 88 °C, over: 30 min, hold: 1 h}]", "cool: " + time, "dry: 1 day");
        return last("cooled", 2).lines().findFirst().orElseThrow();
    }

    @Test
    void whatCoolsInItsOwnTimeIsOutWhenItIsCool() {
        kitchen.method("simmer", BATH, "heat: [{to: 88 °C, over: 30 min, hold: 1 h}]", "dry: 1 day");
        assertEquals(lines("90 cool dyebath until ?", "? out dyebath", "? dry until ?"), last("simmer", 3));
    }

    @Test
    void dampNeedlesKeepAFewDays() {
        kitchen.cover("damp-keeps: 3 days").method("damp", BATH, "heat: [{to: 88 °C, over: 30 min, hold: 1 h}]", "cool: 1 h",
                "rinse: before-drying");
        assertEquals("150 keep until 4470", last("damp", 1));
    }

    @Test
    void whatKeepsForARoughTimeIsToBeUsedAtARoughTime() {
        kitchen.cover("damp-keeps: about 3 days").method("damp", BATH, "heat: [{to: 88 °C, over: 30 min, hold: 1 h}]",
                "cool: 1 h", "rinse: before-drying");
        assertEquals("150 keep until ~4470", last("damp", 1));
    }

    /** 1 L from 20 to 90 °C at 1 kW is 4.9 min, and so 5; 2.4 L on 120 g of needles are 11.7 min, and so 15. */
    @Test
    void moreNeedlesNeedMoreOfThePlantAndMoreTimeToDrawItOut() {
        kitchen.method("plant", "bath: {water: 1 L, extract: {of: 50 g, water: 1 L, heat: [{to: 90 °C, hold: 1 h}]}}", "cool: 1 h");
        assertEquals("0 rise extract until ~5", said(kitchen.clock("plant").stages().get(1)));
        assertEquals("0 rise extract until ~15", said(kitchen.clock("plant", 120).stages().get(1)));
        kitchen.entry("pot", "method: plant", "needles: {weight: 120 g}");
        assertEquals("0 rise extract until ~15", said(kitchen.entryClock("2026-05-09-pot").stages().get(1)));
    }

    @Test
    void needlesWaitInThePresoakUntilTheirBathIsMade() {
        kitchen.method("mordant", "presoak: {for: 1 h}", "before: [{as: mordant, water: 2 L}]", BATH);
        assertEquals(lines("0 soak bin until 60", "60 make before", "60 out bin", "60 in before", "60 stand before until ?",
                "? out before", "? make dyebath", "? in dyebath"), first("mordant", 8));
    }

    @Test
    void anOldBathIsToppedUp() {
        kitchen.entry("first", "needles: {weight: 50 g}", BATH)
                .entry("second", "needles: {weight: 50 g}", "bath: {water: 3 L, reuses: 2026-05-09-first, dye: [{is: brick, amount: 1 g}]}");
        assertEquals("0 make dyebath", said(kitchen.entryClock("2026-05-09-first").stages().get(0)));
        assertEquals("0 top_up dyebath", said(kitchen.entryClock("2026-05-09-second").stages().get(0)));
    }

    @Test
    void nightsEndAtEightAndAreNightsOfTheSameDyeDay() {
        kitchen.method("night", "presoak: {for: overnight}", BATH, "heat: [{to: 88 °C, over: 30 min, hold: 16 h}]",
                "cool: overnight");
        Clock evening = kitchen.clock("night", "20:00");
        assertEquals("0 soak bin until ~morning 1 + 0", said(evening.stages().get(0)));
        assertEquals((24 + 8) * 60, evening.sinceMidnight(evening.stages().get(0).until()).orElseThrow());
        // On at 8:00 and off at 0:30 on the third day: the same dye day, so the night ends that morning.
        assertEquals("~morning 1 + 990 cool dyebath until ~morning 2 + 0",
                said(evening.stages().stream().filter(stage -> stage.kind() == Stage.Kind.COOL).findFirst().orElseThrow()));
    }

    @Test
    void workBegunAtAnotherHourIsTheSameWork() {
        kitchen.method("simmer", BATH, "heat: [{to: 88 °C, over: 30 min, hold: 1 h}]", "cool: 3 h", "dry: 1 day");
        assertEquals(said(kitchen.clock("simmer")), said(Clock.of(kitchen.work("simmer"), LocalTime.of(14, 30))));
    }

    private String first(String method, int count) {
        return kitchen.clock(method).stages().subList(0, count).stream().map(Kitchen::said)
                .reduce((one, other) -> one + "\n" + other).orElseThrow();
    }

    private String last(String method, int count) {
        var stages = kitchen.clock(method).stages();
        return stages.subList(stages.size() - count, stages.size()).stream().map(Kitchen::said)
                .reduce((one, other) -> one + "\n" + other).orElseThrow();
    }
}
