package fascicle.cli;

import fascicle.notebook.Needles;
import fascicle.workings.Workings;
import java.util.Optional;

/** What to say of a recipe whose own needles have no dry weight, so that hardly anything of it can be worked out. */
final class UnweighedRecipe {

    private UnweighedRecipe() {}

    /** A sentence that says what is missing; nothing where the weight is known. */
    static Optional<String> hint(Workings workings, String id) {
        return workings.entry(id).filter(entry -> entry.needles().dryGrams().isEmpty())
                .map(entry -> entry.needles().grams().isPresent()
                        && entry.entry().needles().state() != Needles.Weighed.DRY
                        ? "“" + id + "” was weighed " + entry.entry().needles().state().word() + ", so only amounts in "
                                + "% owf can be worked out; give it the dry weight, or a guess at it with "
                                + "“weighed: guessed”."
                        : unsaid(id))
                .or(() -> workings.method(id).filter(method -> method.grams().isEmpty()).map(method -> unsaid(id)));
    }

    private static String unsaid(String id) {
        return "“" + id + "” does not say what its own needles weighed, so only amounts in % owf can be worked out; "
                + "give it a weight (“weight:” in an entry, “for:” in a method).";
    }
}
