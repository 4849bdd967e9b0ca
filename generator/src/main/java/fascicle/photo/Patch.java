package fascicle.photo;

import fascicle.colour.Lab;

/**
 * A patch of known colour in a picture: a grey card, or one of the patches of a chart.
 *
 * @param at where it lies
 * @param known its colour under D50
 */
public record Patch(Area at, Lab known) {

    /**
     * A grey card.
     *
     * @param at where it lies
     * @param percent its reflectance, above 0 and at most 100
     * @return a patch without chroma
     * @throws IllegalArgumentException if the reflectance is out of range
     */
    public static Patch grey(Area at, double percent) {
        if (!(percent > 0 && percent <= 100)) {
            throw new IllegalArgumentException("not the reflectance of a card: " + percent + " %");
        }
        return new Patch(at, Lab.ofReflectance(percent / 100));
    }
}
