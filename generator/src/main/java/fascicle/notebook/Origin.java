package fascicle.notebook;

/** Where a value of an entry comes from: its own pot, the keys its day's file shares, or a method it follows. */
public sealed interface Origin {

    /** Written for this very thing. */
    Origin OWN = new Own();

    /** Written beside {@code pots:} and shared by all pots of the file. */
    Origin SHARED = new Shared();

    /** Written for this very thing. */
    record Own() implements Origin {}

    /** Written once for all pots of a file. */
    record Shared() implements Origin {}

    /**
     * Taken from a method.
     *
     * @param method the method's id
     */
    record Method(String method) implements Origin {}
}
