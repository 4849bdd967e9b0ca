package fascicle.notebook;

import fascicle.colour.Grade;
import java.util.List;
import java.util.Optional;

/**
 * How the colour rubs off on a white cloth.
 *
 * @param rubDry with a dry cloth
 * @param rubWet with a wet cloth
 */
public record Fastness(Optional<Rub> rubDry, Optional<Rub> rubWet) {

    /** One rub test. */
    public sealed interface Rub {

        /**
         * The readings of the cloth.
         *
         * @return before and after; none of a grade
         */
        default List<Reading> readings() {
            return List.of();
        }

        /**
         * As the maker graded it by the grey scale for staining.
         *
         * @param grade the grade
         */
        record Graded(Noted<Grade> grade) implements Rub {}

        /**
         * As the cloth was read.
         *
         * @param before the white cloth
         * @param after the same, rubbed
         */
        record Cloth(Reading before, Reading after) implements Rub {
            @Override
            public List<Reading> readings() {
                return List.of(before, after);
            }
        }
    }
}
