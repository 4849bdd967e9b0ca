package fascicle.cli;

/** A notebook that cannot be worked with as it stands. Its message is a plain sentence that says what to mend. */
final class WrongNotebook extends RuntimeException {

    private static final long serialVersionUID = 1L;

    WrongNotebook(String message) {
        super(message);
    }
}
