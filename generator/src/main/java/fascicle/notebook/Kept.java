package fascicle.notebook;

import fascicle.measure.Quantity;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What was kept of the dyed needles.
 *
 * @param weight how much
 * @param how damp or dry
 * @param since from which day
 * @param used what was taken of it since
 */
public record Kept(Optional<Noted<Quantity>> weight, Optional<Noted<How>> how, Optional<Noted<LocalDate>> since,
        List<Use> used) {

    /** How needles are kept. */
    public enum How implements Word {
        /** Damp and cold. */
        DAMP,
        /** Dry. */
        DRY
    }

    /**
     * Needles taken for a basket.
     *
     * @param weight how much
     * @param in which basket
     */
    public record Use(Optional<Noted<Quantity>> weight, Optional<Noted<String>> in) {}
}
