package throwline.cli;

import java.util.List;
import throwline.report.Page;
import throwline.report.ReportFile;
import throwline.report.document.Document;
import throwline.report.html.PageView;
import throwline.report.terminal.TerminalRenderer;
import throwline.units.Display;
import throwline.words.Words;

/**
 * Means that every command works with.
 *
 * @param terminal the streams of the process
 * @param words every sentence that a person reads
 */
record Context(Terminal terminal, Words words) {

    /** Columns of a table in a file. */
    private static final int FILE_WIDTH = 100;

    /** A document as text, to its full depth. */
    String shown(Document document, Page page) {
        return shown(document, page, true);
    }

    /** A document as text, folded or to its full depth. */
    String shown(Document document, Page page, boolean all) {
        return new TerminalRenderer(page, words, all).write(document);
    }

    /** A document as a text file and as a page for a browser, under these names. */
    List<ReportFile> files(Document document, Display display, String text, String html) {
        Page page = filePage(display);
        return List.of(
                ReportFile.of(text, shown(document, page)), ReportFile.of(html, PageView.html(document, page, words)));
    }

    /** The terminal as a page, in these units. */
    Page page(Display display) {
        return Page.of(terminal.width(), terminal.unicode(), terminal.styled(), display);
    }

    /** A file as a page, in these units. */
    static Page filePage(Display display) {
        return Page.of(FILE_WIDTH, true, false, display);
    }
}
