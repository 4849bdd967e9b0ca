package fascicle.workings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import fascicle.notebook.Dye;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/** When two entries are the same recipe. */
class RecipeKeyTest {

    @Test
    void theSameSharesOnOtherNeedlesInAnotherPot() {
        assertSame(draft -> draft.weighing("45 g").in("pan").water("3 L").dye("brick", "1.5 % owf").with("salt", "36 g"),
                draft -> draft.weighing("90 g").in("pot").water("6 L").with("salt", "72 g").dye("BRICK", "1.35 g"));
    }

    @Test
    void twoFiguresAreEnough() {
        assertSame(draft -> draft.weighing("45 g").dye("brick", "1.5 % owf"),
                draft -> draft.weighing("45 g").dye("brick", "1.54 % owf"));
        assertDiffer(draft -> draft.weighing("45 g").dye("brick", "1.5 % owf"),
                draft -> draft.weighing("45 g").dye("brick", "1.6 % owf"));
    }

    @Test
    void assistantsAreComparedInTheLiquor() {
        assertDiffer(draft -> draft.weighing("45 g").water("3 L").with("salt", "36 g"),
                draft -> draft.weighing("45 g").water("6 L").with("salt", "36 g"));
        assertSame(draft -> draft.weighing("45 g").water("2940 mL").with("white-vinegar", "60 mL"),
                draft -> draft.weighing("45 g").water("980 mL").with("white-vinegar", "20 mL"));
    }

    @Test
    void unknownSharesAreTheSameWhereTheyAreWrittenAlike() {
        assertSame(draft -> draft.dye("brick", "a Pinch"), draft -> draft.dye("brick", "a pinch "));
        assertDiffer(draft -> draft.dye("brick", "a pinch"), draft -> draft.dye("brick", "a handful"));
    }

    @Test
    void anotherDyeAnotherMethodAnotherMordant() {
        assertDiffer(draft -> draft.dye("brick", "1 % owf"), draft -> draft.dye("moss", "1 % owf"));
        assertDiffer(draft -> draft.follows("simmer"), draft -> draft.follows("sun-jar"));
        assertSame(draft -> draft.follows("simmer"), draft -> draft.follows("Simmer"));
        assertDiffer(draft -> draft.mordant("1 L", "alum", "5 % owf"), draft -> draft.mordant("1 L", "alum", "10 % owf"));
    }

    @Test
    void theSameHeat() {
        assertSame(draft -> draft.heat("88 °C", "30 min", "2 h"), draft -> draft.heat("88 °C", "45 min", "120 min"));
        assertDiffer(draft -> draft.heat("88 °C", "", "2 h"), draft -> draft.heat("88 °C", "", "1 h"));
        assertDiffer(draft -> draft.heat("88 °C", "", "2 h"), draft -> draft.heat("simmer", "", "2 h"));
        assertDiffer(draft -> draft.heat("88 °C", "", "overnight"), draft -> draft.heat("88 °C", "", ""));
    }

    private static void assertSame(Consumer<Draft> one, Consumer<Draft> other) {
        assertEquals(key(one), key(other));
    }

    private static void assertDiffer(Consumer<Draft> one, Consumer<Draft> other) {
        assertNotEquals(key(one), key(other));
    }

    private static RecipeKey key(Consumer<Draft> recipe) {
        Workroom room = Workroom.usual().thing("alum", Dye.Kind.MORDANT, Dye.Form.CRYSTALS);
        recipe.accept(room.entry("2026-05-09-pot"));
        return RecipeKey.of(room.worked("2026-05-09-pot"));
    }
}
