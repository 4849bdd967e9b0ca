package fascicle.workings.acidity;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A bath's acidity as estimated.
 *
 * <p>It does not say whether it rests on a rough amount, since it is no surer where it does not: how strong an acid is,
 * what the water answers it with and what else is in the bath make every estimate rough. So it is told as “about”, to a
 * tenth, and data call it an estimate; half as much acid again moves it by 0.1 to 0.3 where acid outweighs the water's
 * alkalinity.
 *
 * @param cold pH before heating
 * @param heated pH once heating has driven off carbon dioxide
 * @param why what keeps it from being known; nothing where it is known
 */
public record AcidityFigures(OptionalDouble cold, OptionalDouble heated, Optional<Why> why) {

    /**
     * What keeps an acidity from being known.
     *
     * @param kind what it is
     * @param thing the id of the part that is in the way; nothing where it is none
     * @param called that part's title
     */
    public record Why(Kind kind, Optional<String> thing, Optional<String> called) {

        static Why of(Kind kind) {
            return new Why(kind, Optional.empty(), Optional.empty());
        }

        /**
         * The reason as data tells it.
         *
         * @return its word, and after a colon the id of the part it is about
         */
        public String word() {
            return kind.word() + thing.map(id -> ": " + id).orElse("");
        }
    }

    /** Reasons not to estimate. */
    public enum Kind {
        /** An alkali is in the bath. */
        ALKALI,
        /** A mordant's salt is in the bath. */
        MORDANT,
        /** An extract of a plant, or a plant itself, is in the bath. */
        PLANT,
        /** The amount of an acid is unknown. */
        ACID_AMOUNT,
        /** The strength of an acid is unknown. */
        ACID_STRENGTH,
        /** Nobody knows which acid an acid is. */
        ACID_KIND,
        /** Nobody knows what an assistant is for. */
        KIND,
        /** The liquor is unknown. */
        LIQUOR,
        /** The water's alkalinity is unknown. */
        WATER,
        /** The water is a well's, of which the notebook says nothing. */
        WELL,
        /** The entry whose bath it was is not there. */
        EARLIER_MISSING,
        /** A reused bath in a recipe that is scaled, or in a method. */
        REUSED,
        /** What the needles before carried out is unknown. */
        EARLIER_NEEDLES;

        /**
         * The reason in one word.
         *
         * @return lower case, with hyphens
         */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    static AcidityFigures unknown(Why why) {
        return new AcidityFigures(OptionalDouble.empty(), OptionalDouble.empty(), Optional.of(why));
    }
}
