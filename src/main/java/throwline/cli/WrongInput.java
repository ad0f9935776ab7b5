package throwline.cli;

/** Input that cannot be worked with; ends the command with exit code 2 and a message for the person who gave it. */
final class WrongInput extends RuntimeException {

    private static final long serialVersionUID = 1;

    /**
     * @param message one sentence a line: what is wrong, what is allowed, an example
     */
    WrongInput(String message) {
        super(message);
    }
}
