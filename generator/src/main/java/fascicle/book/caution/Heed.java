package fascicle.book.caution;

import fascicle.book.words.Words;
import fascicle.workings.care.Hazard;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The gravest cautions in a few words: a line at the head of a page that leads to the cautions themselves. */
public final class Heed {

    /** More than this is no line that anyone reads while a pot boils. */
    private static final int MOST = 4;

    private Heed() {}

    /**
     * The gravest in a line.
     *
     * @param hazards the hazards, gravest first
     * @param words the book's words
     * @return such as {@code Caution: hot liquor, powder, acid}; nothing where there is no hazard
     */
    public static Optional<String> of(List<Hazard> hazards, Words words) {
        if (hazards.isEmpty()) {
            return Optional.empty();
        }
        List<String> gravest = hazards.stream().flatMap(hazard -> brief(hazard).stream()).distinct().limit(MOST)
                .map(words::say).toList();
        return Optional.of(gravest.isEmpty() ? words.say("heading.caution")
                : words.say("heed.line", gravest.stream().collect(Collectors.joining(words.say("pieces")))));
    }

    /** The key of its few words. */
    private static Optional<String> brief(Hazard hazard) {
        if (hazard instanceof Hazard.Usual usual) {
            return switch (usual.kind()) {
                // Said with the one before, or true of every bath.
                case HOT_POT, SOUR_STEAM, BLEACH, DRY_NEEDLES, GLOVES_AND_AIR, FOOD, DRAIN, BURN,
                        FIRST_HELP -> Optional.empty();
                default -> Optional.of("heed." + CautionWords.key(usual.kind()));
            };
        }
        if (hazard instanceof Hazard.ThePotGivesWay) {
            return Optional.of("heed.the-pot-gives-way");
        }
        return hazard instanceof Hazard.OnThePack pack && pack.signal().filter("danger"::equals).isPresent()
                ? Optional.of("heed.danger") : Optional.empty();
    }
}
