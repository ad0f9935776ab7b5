package throwline.cli;

import java.io.IOException;

/** Standard output does not take the answer, as when it goes into a file on a full disk. */
final class UnwrittenAnswer extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** With what the system said. */
    UnwrittenAnswer(IOException cause) {
        super(cause.getMessage(), cause);
    }
}
