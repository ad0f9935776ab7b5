package throwline.input;

/**
 * Line and column in a file.
 *
 * @param line counted from 1
 * @param column counted from 1, in characters
 */
record Place(int line, int column) {

    /** The first character. */
    static final Place START = new Place(1, 1);
}
