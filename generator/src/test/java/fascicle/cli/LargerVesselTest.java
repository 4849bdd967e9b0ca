package fascicle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A batch that takes several pots is told of a vessel that would hold all of it. Worked by hand throughout. */
class LargerVesselTest {

    @TempDir
    private Path folder;

    private DyeSchool school;

    @BeforeEach
    void write() {
        school = DyeSchool.withAClass(folder);
    }

    @Test
    void anotherVesselThatHoldsAllIsNamed() {
        school.with("vessels.yaml", "wide-pan: {shape: oval, length: 42 cm, width: 28 cm, height: "
                + "12 cm}\ntub: {title: Big tub, shape: round, diameter: 40 cm, height: 40 cm, made-of: enamel}\n");
        assertTrue(school.plan("class-brick", "--each", "30 g", "--people", "8").out()
                .contains("All of A would go into one vessel: Big tub (--vessel tub)"));
    }

    /** 120 g in 7.2 L want two small pots of 2.7 L or more, or one of the others, 8.8 L and up. */
    private void threeMethodsAndTwoKettles() {
        school.with("vessels.yaml", """
                small: {title: Small pot, shape: round, diameter: 18 cm, height: 14 cm, made-of: enamel}
                kettle: {title: Kettle, shape: round, diameter: 28 cm, height: 20 cm, made-of: stainless}
                tub: {title: Big tub, shape: round, diameter: 40 cm, height: 40 cm, made-of: enamel}
                wide-pan: {made-of: enamel}
                """);
        String bath = "\nbath: {vessel: %s, ratio: 60, dye: [{is: brick, amount: 1 %% owf}]}\n---\n";
        school.with("methods/first.md", "---\ntitle: First" + bath.formatted("small"))
                .with("methods/second.md", "---\ntitle: Second" + bath.formatted("kettle"))
                .with("methods/third.md", "---\ntitle: Third" + bath.formatted("small"));
    }

    private List<String> hints(String... methods) {
        return school.plan(Stream.concat(Stream.of(methods), Stream.of("--each", "120g")).toArray(String[]::new)).ends(0).out()
                .lines().map(String::strip).filter(line -> line.contains("would go into one vessel")).toList();
    }

    @Test
    void noTwoBatchesAreSentIntoOneVessel() {
        threeMethodsAndTwoKettles();
        assertEquals(List.of("All of A would go into one vessel: Kettle (--vessel kettle)"), hints("first"));
        assertEquals(List.of("All of A would go into one vessel, which nothing else of this day stands in: Big tub"),
                hints("first", "second"), "the kettle is taken, and one --vessel would hold for both");
        assertEquals(List.of("All of A would go into one vessel, which nothing else of this day stands in: Kettle",
                "All of B would go into one vessel, which nothing else of this day stands in: Big tub"),
                hints("first", "third"));
        assertEquals(List.of("All of A would go into one vessel, which nothing else of this day stands in: Big tub"),
                hints("first", "third", "second"), "for the third none is left");
    }

    /** 60 g in 1.2 L, 1.32 L with the needles, want two beakers of 0.8 L and stand 1 cm deep on the tray's 1320 cm². */
    @Test
    void noBatchIsSentIntoAPuddle() {
        school.with("vessels.yaml", """
                beaker: {shape: round, diameter: 10 cm, height: 13 cm, made-of: enamel}
                tray: {title: Tray, shape: rectangular, length: 44 cm, width: 30 cm, height: 5 cm, made-of: enamel}
                wide-pan: {made-of: enamel}
                """).with("methods/low.md", "---\nbath: {vessel: beaker, ratio: 20, dye: [{is: brick, amount: 1 % owf}]}\n---\n");
        String plan = school.plan("low", "--each", "60g").ends(0).out();
        assertTrue(plan.contains("2 vessels like beaker"), plan);
        assertFalse(plan.contains("would go into one vessel"), plan);
    }
}
