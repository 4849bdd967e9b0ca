package fascicle.photo;

/**
 * What to heed about a colour that was read off a photograph.
 *
 * @param kind what is the matter, by which a program tells cautions apart
 * @param words what was found and what to do, a sentence without its full stop
 */
public record Caution(Kind kind, String words) {

    /** What may be the matter. */
    public enum Kind {
        /** There is no card: the reading is by eye. */
        NO_CARD,
        /** The card is so bright or so dark that its light is cut off. */
        CARD_CLIPPED,
        /** The needles are so bright or so dark that their light is cut off. */
        NEEDLES_CLIPPED,
        /** The card is tinted beyond what a grey card can be. */
        CARD_TINTED,
        /** Light falls off between cards or across one. */
        UNEVEN_LIGHT,
        /** The needles' area is so uneven that it hardly holds needles alone. */
        NEEDLES_MIXED,
        /** An area has too few pixels. */
        AREA_SMALL,
        /** The picture was made small and stored with loss. */
        PICTURE_SMALL,
        /** The patches of the chart do not fit their known colours. */
        CHART_MISFIT,
        /** The picture's colour profile cannot be read; its colours were taken as sRGB. */
        PROFILE_UNREADABLE;

        /** Whether a reading with this caution may lie farther from the truth than one of its kind usually does. */
        boolean isGrave() {
            return switch (this) {
                case CARD_CLIPPED, NEEDLES_CLIPPED, CARD_TINTED, UNEVEN_LIGHT, CHART_MISFIT, NEEDLES_MIXED -> true;
                case NO_CARD, AREA_SMALL, PICTURE_SMALL, PROFILE_UNREADABLE -> false;
            };
        }
    }
}
