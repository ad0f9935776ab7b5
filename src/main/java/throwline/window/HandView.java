package throwline.window;

import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import throwline.model.SetUp;
import throwline.report.document.Comparison;
import throwline.study.SetUpResult;

/**
 * An answer made ready to be shown: letters and pictures only, so that showing it takes no time.
 *
 * @param number of the question
 * @param setUp what it is about
 * @param finished true where nothing is being worked out any more
 * @param inShort what to take away, dangers first
 * @param lines of the table
 * @param against name of the set-up in the last column; empty for none
 * @param pictures in order
 * @param rows what the lines were made from
 * @param result what the rows were made from
 * @param powered what it does at the throttle; empty while that is closed
 */
record HandView(
        long number,
        SetUp setUp,
        boolean finished,
        List<Said> inShort,
        List<Line> lines,
        String against,
        List<Shot> pictures,
        Comparison rows,
        SetUpResult result,
        Optional<Said> powered) {

    HandView {
        inShort = List.copyOf(inShort);
        lines = List.copyOf(lines);
        pictures = List.copyOf(pictures);
    }

    /**
     * A sentence.
     *
     * @param danger true for what may hurt
     * @param lead its beginning, which stands out; may be empty
     * @param text what follows
     */
    record Said(boolean danger, String lead, String text) {}

    /**
     * A line of the table.
     *
     * @param row index of the row it belongs to
     * @param main true for the first line of a row
     * @param label what it shows
     * @param now of the set-up at hand
     * @param likely its band
     * @param against of the other set-up
     * @param working true while it is being worked out
     * @param close true where the two cannot be told apart
     * @param deep true for what only those read who ask for all
     */
    record Line(
            int row,
            boolean main,
            String label,
            String now,
            String likely,
            String against,
            boolean working,
            boolean close,
            boolean deep) {}

    /**
     * A picture.
     *
     * @param title the question that it answers
     * @param caption what it holds for
     * @param image painted for the screen
     * @param scale of the image: its pixels for one of the window
     */
    record Shot(String title, List<String> caption, BufferedImage image, double scale) {
        Shot {
            caption = List.copyOf(caption);
        }
    }
}
