package throwline.validation;

import java.util.List;

/**
 * Measured points and what was predicted, for a picture.
 *
 * @param name what is shown
 * @param across what the first of each pair of numbers is, with its unit
 * @param up what the second is
 * @param lines one a run
 */
public record CaseTrace(String name, String across, String up, List<Line> lines) {

    public CaseTrace {
        lines = List.copyOf(lines);
    }

    /**
     * One run.
     *
     * @param name what tells it from the others
     * @param measured points, two numbers each
     * @param predicted likewise, in order along the line
     */
    public record Line(String name, List<double[]> measured, List<double[]> predicted) {
        public Line {
            measured = List.copyOf(measured);
            predicted = List.copyOf(predicted);
        }
    }
}
