package fascicle.workings.clock;

import fascicle.notebook.HeatStep;
import fascicle.notebook.Part;
import fascicle.notebook.Recipe;
import java.util.Optional;

/**
 * One stage of the work: a moment when hands are needed, or something that goes on.
 *
 * @param kind what is done, or goes on
 * @param vat in what
 * @param purpose what a treatment's bath is for, where that is said
 * @param from when it begins
 * @param until when it is over; the same time for a moment
 * @param step the step of heating it belongs to
 * @param part what is added
 * @param estimated whether its length is estimated from the liquor
 */
public record Stage(Kind kind, Vat vat, Optional<Recipe.Purpose> purpose, Time from, Time until,
        Optional<HeatStep> step, Optional<Part> part, boolean estimated) {

    /** What is done, or goes on. */
    public enum Kind {
        /** Needles go into the presoak, and lie there. */
        SOAK(true),
        /** A bath is made up: its pot is filled, and what stands in it put in. */
        MAKE(true),
        /** The bath of an earlier pot is topped up. */
        TOP_UP(true),
        /** Needles go into a bath that no stove heats. */
        IN(true),
        /** A bath goes on the stove. */
        ON(true),
        /** It heats up, or is turned down. */
        RISE(false),
        /** It is held. */
        HOLD(false),
        /** Something is added. */
        ADD(true),
        /** The heat goes off. */
        OFF(true),
        /** Needles cool in the bath. */
        COOL(false),
        /** Needles stand in a bath that was not heated. */
        STAND(false),
        /** Needles are taken out, or an extract is strained. */
        OUT(true),
        /** Needles are taken out of a bath, or a plant is strained from one, that is hot still or may be. */
        LIFT(true),
        /** They dry a little before they are rinsed. */
        HALF_DRY(false),
        /** They are rinsed. */
        RINSE(true),
        /** They dry. */
        DRY(false),
        /** They are finished. */
        FINISH(true),
        /** They keep while damp and cold; when it is over, they should have been used. */
        KEEP(false);

        private final boolean byHand;

        Kind(boolean byHand) {
            this.byHand = byHand;
        }

        /**
         * Whether it needs a hand when it begins.
         *
         * @return false for what goes on by itself
         */
        public boolean byHand() {
            return byHand;
        }
    }

    /** In what something is done. */
    public enum Vat {
        /** The bin of the presoak. */
        BIN,
        /** The pot in which a plant is drawn out. */
        EXTRACT,
        /** A treatment's bath before the dyebath. */
        BEFORE,
        /** The dyebath. */
        DYEBATH,
        /** A treatment's bath after it. */
        AFTER,
        /** Nothing any more. */
        NONE
    }

    /**
     * Whether it is a moment.
     *
     * @return true for what takes no time to speak of
     */
    public boolean isMoment() {
        return kind.byHand() && kind != Kind.SOAK;
    }

    /**
     * Whether somebody stands at the stove, or at a bath that is hot, to do it or to watch it.
     *
     * @return false for what heats in the sun, and for what cools, soaks and dries
     */
    public boolean isAtTheStove() {
        return switch (kind) {
            case ON, OFF, LIFT -> true;
            case ADD -> vat != Vat.BIN;
            case RISE, HOLD -> step.filter(HeatStep::isInTheSun).isEmpty();
            default -> false;
        };
    }

    /**
     * Whether needles come out of a bath.
     *
     * @return false for a plant that is strained off
     */
    public boolean endsBath() {
        return (kind == Kind.OUT || kind == Kind.LIFT) && vat != Vat.EXTRACT;
    }
}
