package throwline.report.chart;

import org.jfree.chart.ui.RectangleInsets;

/** Place for which a chart is drawn: how wide it is and how much of that goes to names. Points. */
enum Layout {
    /** A file of its own, looked at on a large screen or on paper. */
    WIDE(960, 168, 40, 2),
    /** The same for rows with long names. */
    BOOK(960, 300, 40, 2),
    /** A page that is also read on a telephone, where nothing may be scrolled sideways. */
    NARROW(440, 104, 14, 3);

    private final int width;
    private final int names;
    private final int right;
    private final int nameLines;

    Layout(int width, int names, int right, int nameLines) {
        this.width = width;
        this.names = names;
        this.right = right;
        this.nameLines = nameLines;
    }

    /** Width of a chart. */
    int width() {
        return width;
    }

    /** Room for the names of set-ups on the left. */
    int names() {
        return names;
    }

    /** Room for labels that reach out on the right. */
    int right() {
        return right;
    }

    /** Lines that the name of a set-up may take. */
    int nameLines() {
        return nameLines;
    }

    /** Room around rows. */
    RectangleInsets room() {
        return new RectangleInsets(4, names, 4, right);
    }
}
