package throwline.cli;

import throwline.report.Page;
import throwline.units.Display;
import throwline.words.Words;

/**
 * What every command works with.
 *
 * @param terminal the streams of the process
 * @param words every sentence that a person reads
 */
record Context(Terminal terminal, Words words) {

    /** Columns of a table in a file. */
    private static final int FILE_WIDTH = 100;

    /** The terminal as a page, in these units. */
    Page page(Display display) {
        return Page.of(terminal.width(), terminal.unicode(), terminal.styled(), display);
    }

    /** A file as a page, in these units. */
    static Page filePage(Display display) {
        return Page.of(FILE_WIDTH, true, false, display);
    }
}
