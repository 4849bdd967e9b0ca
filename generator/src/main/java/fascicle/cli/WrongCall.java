package fascicle.cli;

/** A call that cannot be carried out as it stands. Its message is a plain sentence that says what to do. */
final class WrongCall extends RuntimeException {

    private static final long serialVersionUID = 1L;

    WrongCall(String message) {
        super(message);
    }
}
