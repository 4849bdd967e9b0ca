package fascicle.cli;

/** Exit statuses. */
final class Status {

    /** Done. */
    static final int DONE = 0;
    /** The notebook or its theme has errors, or nothing was found. */
    static final int ERRORS = 1;
    /** The call is wrong. */
    static final int WRONG_CALL = 2;
    /** The disk, port or file failed. */
    static final int FAILED = 3;

    private Status() {}
}
