package fascicle.workings.care;

import fascicle.notebook.Vessel;
import fascicle.notebook.label.HazardStatement;
import java.util.List;
import java.util.Optional;

/** Something in a recipe that can hurt someone, or a vessel that takes part or gives way. */
public sealed interface Hazard {

    /**
     * A hazard of the craft.
     *
     * @param kind what it is
     * @param things the titles of what brings it; none where the work itself does
     */
    record Usual(Kind kind, List<String> things) implements Hazard {}

    /**
     * What a pack warns of.
     *
     * @param thing the title of what is in it
     * @param signal {@code danger} or {@code warning}; nothing where the pack has no such word
     * @param says what it says
     */
    record OnThePack(String thing, Optional<String> signal, List<HazardStatement> says) implements Hazard {}

    /**
     * What the maker herself warns of.
     *
     * @param thing the title of the thing
     * @param cautions her words
     */
    record InTheMakersWords(String thing, List<String> cautions) implements Hazard {}

    /**
     * A vessel whose metal takes part in the bath.
     *
     * @param vessel its title
     * @param material what it is made of
     * @param sour whether an acid is in it
     * @param alkaline whether an alkali is in it, or may come into it, which aluminium does not bear
     */
    record ThePotTakesPart(String vessel, Vessel.Material material, boolean sour, boolean alkaline)
            implements Hazard {}

    /**
     * A vessel on a stove or in an oven, where it softens or cracks.
     *
     * @param vessel its title
     * @param material what it is made of
     */
    record ThePotGivesWay(String vessel, Vessel.Material material) implements Hazard {}

    /** The hazards of the craft, gravest first. */
    enum Kind {
        /** A thing whose file is missing, has errors or says nothing. */
        NOTHING_IS_KNOWN,
        /** Salts of chrome or copper. */
        CHROME_OR_COPPER,
        /** A mordant of a metal that nobody said. */
        UNKNOWN_METAL,
        /** An assistant of which nobody said what it is. */
        UNKNOWN_KIND,
        /** Hot liquor and steam. */
        HOT,
        /** A hot pot on its stove. */
        HOT_POT,
        /** A thing for which no label is noted, though its pack may bear one. */
        NO_LABEL,
        /** A label that warns of what is never for a class. */
        NEVER_FOR_A_CLASS,
        /** Powder that drifts. */
        POWDER,
        /** A dyebath that does not name its dye, so that nothing is known of that. */
        DYE_LEFT_OPEN,
        /** A bath that was used before, of which nothing is known. */
        UNKNOWN_BATH,
        /** A bath in glass or in the sun, which somebody may drink. */
        LIKE_A_DRINK,
        /** An acid. */
        ACID,
        /** An acid in what is heated. */
        SOUR_STEAM,
        /** Bleach, wherever there is an acid. */
        BLEACH,
        /** An alkali. */
        ALKALI,
        /** Tin salts, which are corrosive. */
        TIN,
        /** Iron salts and small children. */
        IRON,
        /** Alum, which is mild, where it is the only metal salt. */
        ALUM,
        /** Any other metal salt, or several. */
        METAL,
        /** A plant, which is not harmless for that. */
        PLANT,
        /** A finish that burns. */
        FLAMMABLE_FINISH,
        /** Rags with an oil that heats as it dries. */
        OILY_RAGS,
        /** Dry needles near the stove. */
        DRY_NEEDLES,
        /** Skin and breath. */
        GLOVES_AND_AIR,
        /** Food, and pots, spoons, baskets and damp bundles. */
        FOOD,
        /** A bath, when it is done with. */
        DRAIN,
        /** First help for a burn ({@code common practice, no source}). */
        BURN,
        /**
         * First help for a splashed eye and for what was swallowed, after the precautionary statements P305+P351+P338,
         * P301+P310 and P101 (UN GHS, Annex 3; Regulation (EC) No 1272/2008, Annex IV; from memory).
         */
        FIRST_HELP
    }
}
