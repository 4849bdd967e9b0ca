package fascicle.workings.stock;

import fascicle.notebook.Place;
import java.util.Locale;

/**
 * A line of the notebook that would make an unknown figure known.
 *
 * @param kind what is to be written there
 * @param place where
 * @param what the thing it is about, or what stands there now
 */
public record Gap(Kind kind, Place place, String what) {

    /** What is to be written. */
    public enum Kind {
        /** The weight of a lot. */
        LOT_WEIGHT,
        /** What bundles of a lot weigh. */
        LOT_BUNDLE,
        /** The dry weight of an entry's needles. */
        NEEDLES,
        /** The dry weight of needles that were weighed damp or fresh. */
        NEEDLES_DRY,
        /** What a pack holds. */
        PACK,
        /** What a pack of a liquid holds. */
        PACK_LIQUID,
        /** What a pack costs. */
        PRICE,
        /** When and how many packs were bought. */
        BOUGHT,
        /** How many packs a purchase was. */
        PACKS,
        /** How much of a part was used. */
        AMOUNT,
        /** What an amount without a size comes to. */
        SIZE,
        /** The liquor that an amount by the litre follows. */
        LIQUOR,
        /** What a volume of a thing weighs. */
        DENSITY,
        /** What was done at all. */
        RECIPE,
        /** The weight of what was kept. */
        KEPT_WEIGHT,
        /** The weight of what a basket took. */
        USED_WEIGHT,
        /** What is left of needles that were weighed damp here, and dry where they were dyed again. */
        OVERDYED_DAMP,
        /** Since when damp needles are kept. */
        SINCE,
        /** How long damp needles keep. */
        DAMP_KEEPS;

        /**
         * The kind as a word.
         *
         * @return lower case, hyphens between words
         */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }
}
