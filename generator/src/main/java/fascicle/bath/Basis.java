package fascicle.bath;

/** What a bare amount follows when a batch grows or shrinks. */
public enum Basis {
    /** The weight of the dry needles: {@code q·m₁/m₀}. */
    NEEDLES,
    /** The liquor: {@code q·V₁/V₀}. */
    BATH,
    /** Neither: the amount stays. */
    BATCH
}
