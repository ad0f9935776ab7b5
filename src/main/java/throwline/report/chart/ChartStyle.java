package throwline.report.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Paint;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.ui.RectangleInsets;

/**
 * Look of every chart: one place for colours, lines, marks, letters and grounds.
 *
 * <p>The eight colours are those that Masataka Okabe and Kei Ito published for readers of any colour vision ("Color
 * Universal Design", University of Tokyo and Jikei Medical School, 2008), black first, yellow last because it is weak
 * on white. A set-up keeps its colour, line and mark in every chart; line and mark tell it apart in grey print.
 */
final class ChartStyle {

    /** Room around curves that are named at their ends, points. */
    static final RectangleInsets ENDS = new RectangleInsets(4, 4, 4, 130);

    static final Color INK = new Color(0x222222);
    static final Color QUIET_INK = new Color(0x5A5A5A);
    static final Color GRID = new Color(0xE2E2E2);
    static final Color GROUND = Color.WHITE;
    static final Color HALO = new Color(255, 255, 255, 225);

    static final Font TITLE = new Font(Font.SANS_SERIF, Font.BOLD, 18);
    static final Font TEXT = new Font(Font.SANS_SERIF, Font.PLAIN, 13);
    static final Font STRONG = new Font(Font.SANS_SERIF, Font.BOLD, 13);
    static final Font SMALL = new Font(Font.SANS_SERIF, Font.PLAIN, 11);

    static final Stroke THIN = new BasicStroke(1f);
    static final Stroke THICK = new BasicStroke(2f);

    private static final float LINE = 2f;
    private static final int BAND_OPACITY = 38;
    private static final double MARK = 4.5;

    private static final List<Color> OKABE_ITO = List.of(
            new Color(0x000000),
            new Color(0x0072B2),
            new Color(0xD55E00),
            new Color(0x009E73),
            new Color(0xCC79A7),
            new Color(0xE69F00),
            new Color(0x56B4E9),
            new Color(0xF0E442));

    /** Dash patterns in points; the first is a full line. */
    private static final List<float[]> DASHES = List.of(
            new float[] {},
            new float[] {9, 4},
            new float[] {12, 3, 2, 3},
            new float[] {3, 3},
            new float[] {16, 4},
            new float[] {9, 3, 2, 3, 2, 3},
            new float[] {5, 2},
            new float[] {2, 4});

    private ChartStyle() {}

    /**
     * The look of one set-up.
     *
     * @param color of line and mark
     * @param line of curves
     * @param mark around the origin
     */
    record Look(Color color, Stroke line, Shape mark) {
        /** The colour of a band. */
        Paint band() {
            return new Color(color.getRed(), color.getGreen(), color.getBlue(), BAND_OPACITY);
        }

        /** A full line, for whiskers. */
        Stroke whisker() {
            return stroke(LINE);
        }
    }

    /**
     * The look of the set-up at this place in the model's order. From the ninth on colours come again with other lines
     * and marks.
     */
    static Look look(int index) {
        int round = index / OKABE_ITO.size();
        float[] dash = DASHES.get((index + 3 * round) % DASHES.size());
        Stroke line = dash.length == 0 ? stroke(LINE) : stroke(LINE, dash);
        return new Look(OKABE_ITO.get(index % OKABE_ITO.size()), line, mark((index + round) % 8));
    }

    /** A line of this width, with dashes and gaps where there are any; points. */
    static Stroke stroke(float width, float... dashes) {
        return dashes.length == 0
                ? new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND)
                : new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, dashes, 0);
    }

    private static Shape mark(int index) {
        double r = MARK;
        return switch (index) {
            case 0 -> new Ellipse2D.Double(-r, -r, 2 * r, 2 * r);
            case 1 -> new Rectangle2D.Double(-r, -r, 2 * r, 2 * r);
            case 2 -> polygon(0, -1.2 * r, 1.2 * r, r, -1.2 * r, r);
            case 3 -> polygon(0, -1.4 * r, 1.4 * r, 0, 0, 1.4 * r, -1.4 * r, 0);
            case 4 -> polygon(0, 1.2 * r, 1.2 * r, -r, -1.2 * r, -r);
            case 5 -> star(r, 0.45 * r, 0);
            case 6 -> star(1.3 * r, 0.45 * r, Math.PI / 4);
            default -> new Rectangle2D.Double(-0.5 * r, -1.4 * r, r, 2.8 * r);
        };
    }

    private static Shape polygon(double... xy) {
        Path2D path = new Path2D.Double();
        path.moveTo(xy[0], xy[1]);
        for (int i = 2; i < xy.length; i += 2) {
            path.lineTo(xy[i], xy[i + 1]);
        }
        path.closePath();
        return path;
    }

    /** A star of four points. */
    private static Shape star(double outer, double inner, double turn) {
        double[] xy = new double[16];
        for (int i = 0; i < 8; i++) {
            double radius = 1.3 * (i % 2 == 0 ? outer : inner);
            xy[2 * i] = radius * Math.sin(turn + i * Math.PI / 4);
            xy[2 * i + 1] = -radius * Math.cos(turn + i * Math.PI / 4);
        }
        return polygon(xy);
    }
}
