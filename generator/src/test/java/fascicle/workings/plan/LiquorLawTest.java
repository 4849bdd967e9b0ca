package fascicle.workings.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.notebook.Notebook;
import fascicle.notebook.Vessel;
import fascicle.notebook.WrittenNotebook;
import fascicle.notebook.read.NotebookReader;
import fascicle.workings.BathFigures;
import fascicle.workings.EntryWorking;
import fascicle.workings.MethodWorking;
import fascicle.workings.PartFigures;
import fascicle.workings.Scaled;
import fascicle.workings.SoakFigures;
import fascicle.workings.Workings;
import fascicle.workings.proof.Proofreading;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * In every bath the water, what pours and what stood in it are its liquor: as written, for other needles, in each of
 * several pots and in all of them.
 */
class LiquorLawTest {

    /** To so many parts of itself a sum of doubles holds. */
    private static final double ROUNDING = 1e-9;

    private static final List<Double> WEIGHTS = List.of(0.7, 15.0, 45.0, 120.0, 2500.0);

    private final List<String> broken = new ArrayList<>();
    private int asked;

    @TempDir
    private Path folder;

    @Test
    void inTheDemonstration() throws IOException {
        NotebookReader.Result read = NotebookReader.read(Path.of("../content"));
        check(Workings.of(Proofreading.of(read.notebook(), read.findings()).notebook()));
    }

    @Test
    void whereEverythingIsMeasuredDifferently() {
        Notebook notebook = WrittenNotebook.small(folder)
                .with("vessels.yaml", """
                        wide-pan: {shape: oval, length: 42 cm, width: 28 cm, height: 12 cm}
                        tub: {shape: rectangular, length: 30 cm, width: 17 cm, height: 6 cm}
                        odd: {shape: round, height: 20 cm}
                        """)
                .with("dyes/earth.md", "---\nkind: dye\nform: powder\npack: {holds: 500 mL}\n---\n")
                .with("dyes/ink.md", "---\nkind: dye\nform: liquid\ndensity: 1.2 g/mL\npack: {holds: 60 g}\n---\n")
                .with("methods/deep.md", """
                        ---
                        for: 30 g
                        presoak: {water: 2 L, with: [{is: white-vinegar, amount: 60 mL}, {is: white-vinegar, amount: 200 mL, by: batch}]}
                        before: [{as: mordant, water: 900 mL, with: [{is: salt, amount: 3 tsp}, {is: ink, amount: 20 g}]}]
                        bath:
                          vessel: wide-pan
                          depth: 4 cm
                          dye: [{is: brick, amount: 1 1/2 tsp}, {is: earth, amount: 1 packet, by: batch}, {is: ink, amount: 30 % owf}]
                          assistants: [{is: salt, amount: 1/4 cup}, {is: white-vinegar, amount: 25 g/L}, {is: white-vinegar, amount: a splash}]
                        ---
                        """)
                .with("days/2026-03-01/pots.md", """
                        ---
                        presoak: {water: 5 L, with: [{is: white-vinegar, amount: 1 cup}]}
                        pots:
                          - name: first
                            needles: {lot: scalded-2025, weight: about 25 g}
                            bath:
                              vessel: tub
                              water: 1.5 L
                              dye: [{is: brick, amount: 40 mL of 0.5 % stock}, {is: earth, amount: 1/2 packet, by: batch}, {is: ink, amount: 1 packet}]
                              assistants: [{is: salt, amount: 12 g/L}, {is: white-vinegar, amount: 30 mL, by: needles}, {is: white-vinegar, amount: 90 mL, by: batch}]
                            glass: {left: about 1.1 L}
                          - name: second
                            needles: {lot: scalded-2025, weight: 21 g}
                            bath: {reuses: 2026-03-01-first, ratio: 61.7, vessel: tub, dye: [{is: earth, amount: 1 packet}, {is: ink, amount: 40 mL, by: batch}]}
                            glass: {left: 0 L}
                          - name: third
                            needles: {lot: scalded-2025, weight: 20 g}
                            bath: {reuses: 2026-03-01-first, water: 300 mL, vessel: tub, assistants: [{is: white-vinegar, amount: 60 g}]}
                            glass: {left: 1 L}
                          - name: fourth
                            needles: {lot: scalded-2025, weight: 40 g}
                            bath: {reuses: 2026-03-01-third, ratio: 10}
                          - name: fifth
                            needles: {lot: scalded-2025, weight: 40 g}
                            bath: {reuses: 2026-03-01-second, water: 1 L}
                          - name: weak
                            needles: {lot: scalded-2025, weight: 20 g}
                            bath: {vessel: tub, ratio: 30, dye: [{is: brick, amount: 500 mL of 1 % stock, by: batch}]}
                          - name: unweighed
                            needles: {lot: scalded-2025}
                            bath: {vessel: odd, ratio: 40, dye: [{is: ink, amount: 2 % owf}], assistants: [{is: salt, amount: a handful}]}
                        ---
                        """)
                .read().notebook();
        assertEquals(7, notebook.entries().size(), "none of them is refused");
        check(Workings.of(notebook));
    }

    private void check(Workings workings) {
        workings.entries().forEach(entry -> {
            written(entry.id(), entry.bath());
            Stream.of(entry.presoak().stream(), entry.before().stream(), entry.after().stream()).flatMap(soaks -> soaks)
                    .forEach(soak -> soak(entry.id(), soak));
        });
        workings.methods().forEach(method -> written(method.method().id(), method.bath()));
        List<String> recipes = Stream.concat(workings.entries().stream().map(EntryWorking::id),
                workings.methods().stream().map(MethodWorking::method).map(method -> method.id())).toList();
        List<Optional<Vessel>> vessels = Stream.concat(Stream.of(Optional.<Vessel>empty()),
                workings.notebook().vessels().stream().map(Optional::of)).toList();
        for (String recipe : recipes) {
            for (Optional<Vessel> vessel : vessels) {
                for (double grams : WEIGHTS) {
                    workings.scale(recipe, grams, vessel).ifPresent(scaled -> {
                        scaled(recipe + " for " + grams + " g", scaled);
                        planned(workings, recipe, grams, vessel);
                    });
                }
            }
        }
        assertEquals(List.of(), broken);
        assertTrue(asked > 500, "baths of which all is known: " + asked);
    }

    /** Each pot and the whole of a plan for one person, and for three. */
    private void planned(Workings workings, String recipe, double grams, Optional<Vessel> vessel) {
        for (int people : List.of(1, 3)) {
            List<PotGroup> groups = Potting.of(people, grams,
                    weight -> workings.scale(recipe, weight, vessel).orElseThrow());
            String what = recipe + " for " + people + " × " + grams + " g";
            groups.forEach(group -> scaled("a pot of " + what, group.scaled()));
            scaled("all pots of " + what, Totals.of(groups));
        }
    }

    private void written(String what, BathFigures bath) {
        law(what, bath.waterMl(), bath.standingMl().value(), bath.parts(), bath.liquorMl());
        if (bath.liquorMl().isPresent() && bath.waterMl().isPresent()
                && !near(bath.liquidPartsMl().orElseThrow(), pours(bath.parts()))) {
            broken.add(what + ": liquid parts " + bath.liquidPartsMl());
        }
    }

    private void scaled(String what, Scaled scaled) {
        law(what, scaled.waterMl(), scaled.standingMl().value(), scaled.parts(), scaled.liquorMl());
        Stream.of(scaled.presoak().stream(), scaled.before().stream(), scaled.after().stream()).flatMap(soaks -> soaks)
                .forEach(soak -> soak(what, soak));
    }

    private void soak(String what, SoakFigures soak) {
        law("a soak of " + what, soak.waterMl(), OptionalDouble.of(0), soak.with(), soak.liquorMl());
    }

    private void law(String what, OptionalDouble water, OptionalDouble standing, List<PartFigures> parts,
            OptionalDouble liquor) {
        if (water.isEmpty() || standing.isEmpty() || liquor.isEmpty()) {
            return;
        }
        asked++;
        double sum = water.getAsDouble() + standing.getAsDouble() + pours(parts);
        if (!near(sum, liquor.getAsDouble()) && broken.size() < 10) {
            broken.add(what + ": " + water + " + " + standing + " + " + pours(parts) + " is not " + liquor);
        }
    }

    /** Splashes that nobody measured are not counted. */
    private static double pours(List<PartFigures> parts) {
        return parts.stream().filter(PartFigures::pours).mapToDouble(part -> part.ml().orElse(0)).sum();
    }

    private static boolean near(double one, double other) {
        return StrictMath.abs(one - other) <= ROUNDING * StrictMath.max(1, StrictMath.abs(other));
    }
}
