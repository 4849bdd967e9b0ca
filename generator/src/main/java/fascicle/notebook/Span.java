package fascicle.notebook;

import fascicle.measure.Quantity;

/** How long something takes: a measured time, or overnight, which has no length of its own. */
public sealed interface Span {

    /**
     * A time with a length.
     *
     * @param time a quantity of time
     */
    record Timed(Quantity time) implements Span {}

    /** Until the next morning. */
    record Overnight() implements Span {}
}
