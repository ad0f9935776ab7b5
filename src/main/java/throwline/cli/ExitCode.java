package throwline.cli;

/** Exit codes of the process, for scripts. */
enum ExitCode {
    /** The answer stands on standard output. */
    DONE(0),
    /** A fault inside the program. */
    INTERNAL_FAULT(1),
    /** The command line or a file is wrong. */
    WRONG_INPUT(2),
    /** Done, but some answer could not be found; the output says which. */
    NOT_ALL_FOUND(3);

    private final int number;

    ExitCode(int number) {
        this.number = number;
    }

    /** Code of an answer of which everything could be found, or not. */
    static int of(boolean allFound) {
        return (allFound ? DONE : NOT_ALL_FOUND).number;
    }

    int number() {
        return number;
    }
}
