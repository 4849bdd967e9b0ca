package fascicle.notebook;

import fascicle.bath.Basin;
import fascicle.bath.Pot;
import fascicle.measure.Quantity;
import java.util.Optional;

/**
 * A pot, pan or bin.
 *
 * @param id its key in {@code vessels.yaml}
 * @param place where it stands
 * @param title its title; nothing where the id must do
 * @param basin its inside measures; nothing where they are not all known
 * @param height its inside height
 * @param madeOf what it is made of
 * @param lid whether it has a lid
 */
public record Vessel(String id, Place place, Optional<Noted<String>> title, Optional<Basin> basin,
        Optional<Noted<Quantity>> height, Optional<Noted<Material>> madeOf, Optional<Noted<Boolean>> lid) {

    /**
     * What it is called.
     *
     * @return its title, or its id where it has none
     */
    public String called() {
        return title.map(Noted::value).orElse(id);
    }

    /**
     * What is known of its inside.
     *
     * @return the pot; nothing where its measures are not all known
     */
    public Optional<Pot> pot() {
        return basin.filter(inside -> inside.area() > 0)
                .flatMap(inside -> height.map(noted -> noted.value().value()).filter(high -> high > 0)
                        .map(high -> new Pot(inside, high)));
    }

    /** What a vessel is made of. */
    public enum Material implements Word {
        /** Enamelled steel. */
        ENAMEL,
        /** Stainless steel. */
        STAINLESS,
        /** Aluminium. */
        ALUMINIUM,
        /** Iron. */
        IRON,
        /** Copper. */
        COPPER,
        /** Glass. */
        GLASS,
        /** Plastic. */
        PLASTIC;

        /**
         * Whether it may stand on a stove or in an oven ({@code common practice, no source}).
         *
         * @return false for plastic, which softens, and for glass, which cracks unless it was made for that
         */
        public boolean bearsHeat() {
            return this != PLASTIC && this != GLASS;
        }
    }
}
