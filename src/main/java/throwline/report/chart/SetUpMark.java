package throwline.report.chart;

import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.PathIterator;
import java.util.Locale;

/**
 * The mark that a set-up has in every chart, for use outside of charts.
 *
 * @param path outline around the origin as SVG path data, points
 * @param color as {@code #rrggbb}
 */
public record SetUpMark(String path, String color) {

    /** Curves are given as straight pieces that lie this close to them, points. */
    private static final double FLATNESS = 0.1;

    /** The mark of the set-up at this place in the model's order. */
    public static SetUpMark of(int index) {
        ChartStyle.Look look = ChartStyle.look(index);
        Color color = look.color();
        return new SetUpMark(
                path(look.mark()),
                String.format(Locale.ROOT, "#%02x%02x%02x", color.getRed(), color.getGreen(), color.getBlue()));
    }

    private static String path(Shape shape) {
        StringBuilder path = new StringBuilder();
        double[] at = new double[6];
        for (PathIterator i = shape.getPathIterator(null, FLATNESS); !i.isDone(); i.next()) {
            int kind = i.currentSegment(at);
            if (kind == PathIterator.SEG_CLOSE) {
                path.append('Z');
            } else {
                String letter = kind == PathIterator.SEG_MOVETO ? "M" : "L";
                path.append(letter).append(String.format(Locale.ROOT, "%.2f %.2f", at[0], at[1]));
            }
        }
        return path.toString();
    }
}
