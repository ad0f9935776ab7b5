package throwline.report.chart;

import java.util.List;

/**
 * Lines above and below a picture.
 *
 * @param title the question that it answers; empty where the lines stand elsewhere
 * @param holdsFor what it holds for
 * @param proof what kind of numbers it shows
 */
record Caption(String title, List<String> holdsFor, String proof) {

    static final Caption NONE = new Caption("", List.of(), "");

    Caption {
        holdsFor = List.copyOf(holdsFor);
    }
}
