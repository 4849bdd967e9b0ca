package fascicle.notebook;

import fascicle.measure.Kitchen;
import fascicle.measure.Quantity;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What {@code notebook.yaml} says of the notebook as a whole.
 *
 * @param title the notebook's title
 * @param maker who keeps it
 * @param language the language it is written in, as a BCP 47 tag
 * @param kitchen what cups and spoons hold
 * @param kitchenSaid whether the maker chose the kitchen
 * @param balance the smallest step of the maker's scale
 * @param alkalinity of the water, mg/L as CaCO₃
 * @param ph of the water
 * @param height of the workshop above the sea, in metres; below zero where it lies lower
 * @param currency of the prices, as an ISO 4217 code
 * @param dampKeeps how long damp dyed needles keep cold
 * @param theme the name of a shipped theme
 * @param conditions the maker's own conditions, id to words
 * @param address where the open edition will be served
 * @param weights the weights of needles that recipes are worked out for
 * @param photoUncertainty how far from the truth the maker's photographs read, as CIEDE2000, as she found it by things
 *     of known colour
 */
public record Cover(String title, Optional<String> maker, String language, Kitchen kitchen, boolean kitchenSaid,
        Optional<Noted<Quantity>> balance, Optional<Noted<Double>> alkalinity, Optional<Noted<Double>> ph,
        Optional<Noted<Double>> height, Optional<String> currency, Optional<Noted<Quantity>> dampKeeps,
        String theme, Map<String, String> conditions, Optional<String> address, List<Noted<Quantity>> weights,
        Optional<Noted<Double>> photoUncertainty) {

    /** The cover of a notebook that says nothing. */
    public static final Cover UNSAID = new Cover("A dye notebook", Optional.empty(), "en", Kitchen.METRIC, false,
            Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
            "longleaf", Map.of(), Optional.empty(), List.of(), Optional.empty());

    /**
     * The same cover with other conditions of the maker's own.
     *
     * @param own the conditions, id to words
     * @return a copy
     */
    public Cover withConditions(Map<String, String> own) {
        return new Cover(title, maker, language, kitchen, kitchenSaid, balance, alkalinity, ph, height, currency,
                dampKeeps, theme, own, address, weights, photoUncertainty);
    }
}
