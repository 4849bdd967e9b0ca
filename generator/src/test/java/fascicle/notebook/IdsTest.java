package fascicle.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Ids that a maker would take for the same are the same, in every language the machine may speak. */
class IdsTest {

    @Test
    void caseIsOfNoMatter() {
        assertTrue(Ids.same("2026-05-09-BRICK-Half", "2026-05-09-brick-half"));
        assertTrue(Ids.same("GRÜN", "grün"));
        assertEquals("iris", Ids.key("IRIS"), "a Turkish machine has another small I");
    }

    @Test
    void anAccentIsOneHoweverItIsTyped() {
        assertTrue(Ids.same("caf\u00e9", "cafe\u0301"));
        assertTrue(Ids.same("CAFE\u0301", "caf\u00e9"));
    }

    @Test
    void otherwiseTheyDiffer() {
        assertFalse(Ids.same("brick", "brick-half"));
        assertFalse(Ids.same("cafe", "caf\u00e9"));
        assertFalse(Ids.same("brick_half", "brick-half"));
    }
}
