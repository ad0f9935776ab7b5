package throwline.cli;

import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;

/**
 * The sentence for the end of the memory, with some memory to say it: made beforehand, because nothing can be made then.
 * Said once, whatever thread comes first.
 */
final class MemoryEnd {

    /** Room that is set free for what still has to be cleaned up and said, bytes. */
    private static final int RESERVE = 1 << 18;

    /** A chain of causes may run in a circle. */
    private static final int MOST_CAUSES = 20;

    private static final String NAME = OutOfMemoryError.class.getName();

    private final Terminal terminal;
    private final byte[] sentence;
    private final int code = ExitCode.WRONG_INPUT.number();
    private final AtomicReference<byte[]> reserve = new AtomicReference<>(new byte[RESERVE]);
    private final AtomicBoolean said = new AtomicBoolean();

    /**
     * @param terminal where it is said
     * @param sentence what is to be done
     */
    MemoryEnd(Terminal terminal, String sentence) {
        this.terminal = terminal;
        this.sentence = terminal.encoded(sentence + System.lineSeparator());
    }

    /** True where something failed because memory ended, also where a class could not be loaded for that. */
    static boolean isCauseOf(Throwable fault) {
        Throwable cause = fault;
        for (int k = 0; k < MOST_CAUSES && cause != null; k++) {
            String message = cause.getMessage();
            if (cause instanceof OutOfMemoryError || (message != null && message.contains(NAME))) {
                return true;
            }
            cause = cause.getCause();
        }
        return false;
    }

    /** Says it, and gives the exit code. */
    int say() {
        if (said.compareAndSet(false, true)) {
            // The sentence is there; anything new might fail.
            reserve.set(sentence);
            terminal.say(sentence);
        }
        return code;
    }

    /** True where it was said: what fails from then on fails for that. */
    boolean isSaid() {
        return said.get();
    }
}
