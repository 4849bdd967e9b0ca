package fascicle.bath;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import org.junit.jupiter.api.Test;

/** A bare amount grows by q·m₁/m₀, q·V₁/V₀, or not at all. */
class DoseTest {

    private static final Batch WRITTEN = new Batch(Magnitude.of(50), Magnitude.of(3000));
    private static final Batch OTHER = new Batch(Magnitude.of(100), Magnitude.of(4500));
    private static final Dose BARE = new Dose(Basis.BATCH, Magnitude.of(12), Magnitude.of(6), true);

    @Test
    void byNeedlesItGrowsWithTheirWeight() {
        Dose dose = BARE.following(Basis.NEEDLES, WRITTEN);
        assertEquals(24, dose.gramsIn(OTHER).orThrow(), 1e-12);
        assertEquals(12, dose.millilitresIn(OTHER).orThrow(), 1e-12);
    }

    @Test
    void byBathItGrowsWithTheLiquor() {
        assertEquals(18, BARE.following(Basis.BATH, WRITTEN).gramsIn(OTHER).orThrow(), 1e-12);
    }

    @Test
    void byBatchItStays() {
        assertEquals(12, BARE.following(Basis.BATCH, WRITTEN).gramsIn(OTHER).orThrow());
    }

    @Test
    void whatFollowsTheNeedlesAlreadyGoesOnDoingSo() {
        Dose owf = new Dose(Basis.NEEDLES, Magnitude.of(0.02), Magnitude.UNKNOWN, false);
        assertSame(owf, owf.following(Basis.BATH, WRITTEN));
        assertEquals(2, owf.gramsIn(OTHER).orThrow());
    }

    @Test
    void fromABathOfUnknownSizeNothingIsKnown() {
        Dose dose = BARE.following(Basis.BATH, new Batch(Magnitude.of(50), Magnitude.UNKNOWN));
        assertEquals(Magnitude.UNKNOWN, dose.gramsIn(OTHER));
    }
}
