package fascicle.book.compose;

import fascicle.notebook.Dye;
import fascicle.notebook.Noted;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The usual caution where a recipe can hurt someone ({@code common practice, no source}). It never replaces the pack's
 * label, local rules or licensed practice, and says so.
 */
final class Cautions {

    private Cautions() {}

    /** The caution for a recipe, if it needs one. */
    static Optional<String> of(Worked worked, Materials materials) {
        List<Dye> things = worked.parts().stream().flatMap(part -> materials.index().dye(part.is()).stream()).toList();
        List<String> sayings = new ArrayList<>();
        add(sayings, worked.isHot(), materials.words().say("caution.hot"));
        add(sayings, any(things, Dye.Kind.ACID), materials.words().say("caution.acid"));
        add(sayings, any(things, Dye.Kind.ALKALI), materials.words().say("caution.alkali"));
        add(sayings, things.stream().anyMatch(Cautions::isDust), materials.words().say("caution.powder"));
        add(sayings, worked.hasMordantBath() || any(things, Dye.Kind.MORDANT), materials.words().say("caution.mordant"));
        if (sayings.isEmpty()) {
            return Optional.empty();
        }
        sayings.add(materials.words().say("caution.defer"));
        return Optional.of(String.join(" ", sayings));
    }

    private static void add(List<String> sayings, boolean holds, String saying) {
        if (holds) {
            sayings.add(saying);
        }
    }

    private static boolean any(List<Dye> things, Dye.Kind kind) {
        return things.stream().anyMatch(thing -> is(thing.kind(), kind));
    }

    private static boolean isDust(Dye thing) {
        return is(thing.form(), Dye.Form.POWDER) && !is(thing.kind(), Dye.Kind.SALT);
    }

    private static <W> boolean is(Optional<Noted<W>> noted, W word) {
        return noted.map(Noted::value).filter(word::equals).isPresent();
    }
}
