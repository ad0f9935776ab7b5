package throwline.section.contour;

import java.util.List;
import throwline.section.AirfoilShape.Corner;

/**
 * Straight panels round a contour, from the trailing edge along the bottom to the nose and over the top. Upper and lower
 * nodes stand at the same distances from the nose: where they do not, thin trailing edges put the zero-lift angle wrong
 * by degrees. Immutable.
 */
public final class PanelNodes {

    /** Panels of the outline. */
    public static final int USUAL = 120;

    /** Share of nodes that crowd at both ends (PRACTICE). */
    private static final double CROWDED = 0.82;

    private final double[] x;
    private final double[] y;
    private final double[] length;
    private final double wakeX;
    private final double wakeY;

    private PanelNodes(double[] x, double[] y) {
        this.x = x;
        this.y = y;
        int n = x.length - 1;
        length = new double[n];
        for (int i = 0; i < n; i++) {
            length[i] = Math.hypot(x[i + 1] - x[i], y[i + 1] - y[i]);
        }
        double bx = (x[0] - x[1]) / length[0] + (x[n] - x[n - 1]) / length[n - 1];
        double by = (y[0] - y[1]) / length[0] + (y[n] - y[n - 1]) / length[n - 1];
        wakeX = bx / Math.hypot(bx, by);
        wakeY = by / Math.hypot(bx, by);
    }

    /** The usual panels. */
    public static PanelNodes of(Contour contour) {
        return of(contour, USUAL);
    }

    /**
     * Panels of a contour.
     *
     * @param contour the outline
     * @param panels how many, even
     */
    public static PanelNodes of(Contour contour, int panels) {
        int half = panels / 2;
        double[] x = new double[panels + 1];
        double[] y = new double[panels + 1];
        place(contour.lower(), x, y, half, -1);
        place(contour.upper(), x, y, half, 1);
        return new PanelNodes(x, y);
    }

    private static void place(List<Corner> side, double[] x, double[] y, int half, int way) {
        double[] away = new double[side.size()];
        for (int i = 1; i < away.length; i++) {
            Corner c = side.get(i);
            away[i] = Math.max(away[i - 1], Math.hypot(c.x(), c.y()));
        }
        double whole = away[away.length - 1];
        int at = 1;
        for (int k = 0; k <= half; k++) {
            double share = (double) k / half;
            double wanted = whole * (CROWDED * 0.5 * (1 - Math.cos(Math.PI * share)) + (1 - CROWDED) * share);
            while (at < away.length - 1 && away[at] < wanted) {
                at++;
            }
            Corner a = side.get(at - 1);
            Corner b = side.get(at);
            double step = away[at] - away[at - 1];
            double part = step > 0 ? Math.min(1, (wanted - away[at - 1]) / step) : 1;
            x[half + way * k] = a.x() + part * (b.x() - a.x());
            y[half + way * k] = a.y() + part * (b.y() - a.y());
        }
    }

    /** How many panels there are; nodes are one more. */
    public int panels() {
        return length.length;
    }

    /** Where a node is along the chord. */
    public double x(int node) {
        return x[node];
    }

    /** Height of a node. */
    public double y(int node) {
        return y[node];
    }

    /** Length of a panel. */
    public double length(int panel) {
        return length[panel];
    }

    double middleX(int panel) {
        return 0.5 * (x[panel] + x[panel + 1]);
    }

    double middleY(int panel) {
        return 0.5 * (y[panel] + y[panel + 1]);
    }

    /** Outward unit normal. */
    double normalX(int panel) {
        return -(y[panel + 1] - y[panel]) / length[panel];
    }

    double normalY(int panel) {
        return (x[panel + 1] - x[panel]) / length[panel];
    }

    /** What each panel's potential gives to the jump at the trailing edge, extrapolated along both surfaces. */
    double[] edgeJump() {
        int n = panels();
        double[] jump = new double[n];
        double top = length[n - 1] / (length[n - 1] + length[n - 2]);
        double bottom = length[0] / (length[0] + length[1]);
        jump[n - 1] = 1 + top;
        jump[n - 2] = -top;
        jump[0] = -(1 + bottom);
        jump[1] = bottom;
        return jump;
    }

    /** Potential at a point of a panel of unit doublets along its normal. */
    double doublet(int j, double px, double py) {
        double tx = (x[j + 1] - x[j]) / length[j];
        double ty = (y[j + 1] - y[j]) / length[j];
        double from = (x[j] - px) * tx + (y[j] - py) * ty;
        double height = -(x[j] - px) * ty + (y[j] - py) * tx;
        return angle(from, from + length[j], height);
    }

    private static double angle(double from, double to, double height) {
        return Math.atan2((to - from) * height, height * height + from * to) / (2 * Math.PI);
    }

    /** Potential at a point of a panel of unit sources. */
    double source(int j, double px, double py) {
        double tx = (x[j + 1] - x[j]) / length[j];
        double ty = (y[j + 1] - y[j]) / length[j];
        double from = (x[j] - px) * tx + (y[j] - py) * ty;
        double to = from + length[j];
        double height = -(x[j] - px) * ty + (y[j] - py) * tx;
        double spread = Math.atan2((to - from) * height, height * height + from * to) * height;
        return (logPart(to, height) - logPart(from, height) - length[j] + spread) / (2 * Math.PI);
    }

    private static double logPart(double at, double height) {
        double square = at * at + height * height;
        return square > 0 ? 0.5 * at * Math.log(square) : 0;
    }

    /** Potential at a point of the wake with a unit jump from below to above. */
    double wakeDoublet(double px, double py) {
        int n = panels();
        double from = (x[n] - px) * wakeX + (y[n] - py) * wakeY;
        double height = -(x[n] - px) * wakeY + (y[n] - py) * wakeX;
        return Math.atan2(height, from) / (2 * Math.PI);
    }
}
