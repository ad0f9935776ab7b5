package throwline.input;

/**
 * Line and column in a file.
 *
 * @param line counted from 1
 * @param column counted from 1, in characters
 */
record FilePlace(int line, int column) {

    /** The first character. */
    static final FilePlace START = new FilePlace(1, 1);
}
