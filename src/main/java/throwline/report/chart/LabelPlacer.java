package throwline.report.chart;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/**
 * Finder of free places for labels beside points of a drawing: tries places around each point, nearer ones first, and takes
 * the one that covers least of what is drawn already. Places are points of the drawing, y downwards.
 */
final class LabelPlacer {

    /** Distances of a label from its point, points. */
    private static final double[] DISTANCES = {9, 16, 26, 38, 52, 68, 86};

    private static final int DIRECTIONS = 16;
    /** Costs in points of distance: covering a label, crossing the way to one, leaving the page, covering a bit of a curve. */
    private static final double LABEL_COVERED = 40_000;

    private static final double WAY_CROSSED = 5_000;

    private static final double OUTSIDE = 100_000;
    private static final double CURVE_COVERED = 12;
    private static final double CLEARANCE = 3;
    /** Points between two probes of a curve. */
    private static final double PROBE = 6;

    private final Rectangle2D page;
    private final List<Rectangle2D> taken = new ArrayList<>();
    private final List<Line2D> leaders = new ArrayList<>();
    private final List<Point2D> inked = new ArrayList<>();

    /** A placer that keeps labels inside this page. */
    LabelPlacer(Rectangle2D page) {
        this.page = page;
    }

    /** A straight piece of a curve that labels should not cover. */
    void inked(double x0, double y0, double x1, double y1) {
        int steps = 1 + (int) (Math.hypot(x1 - x0, y1 - y0) / PROBE);
        for (int k = 0; k < steps; k++) {
            inked.add(new Point2D.Double(x0 + (x1 - x0) * k / steps, y0 + (y1 - y0) * k / steps));
        }
    }

    /** A place that labels must not cover. */
    void taken(Rectangle2D place) {
        taken.add(place);
    }

    /**
     * The place of a label, which is taken from now on.
     *
     * @param x of the point that the label is for
     * @param y of that point
     * @param width of the label
     * @param height of the label
     */
    Rectangle2D place(double x, double y, double width, double height) {
        Rectangle2D best = new Rectangle2D.Double(x, y, width, height);
        double lowest = Double.POSITIVE_INFINITY;
        for (double distance : DISTANCES) {
            for (int i = 0; i < DIRECTIONS; i++) {
                double angle = 2 * Math.PI * i / DIRECTIONS;
                Rectangle2D candidate = beside(x, y, width, height, distance, angle);
                // A label to the right of its point reads best, one to the left worst.
                double cost = distance + 4 * (1 - Math.cos(angle)) + covered(candidate) + crossed(x, y, candidate);
                if (cost < lowest) {
                    lowest = cost;
                    best = candidate;
                }
            }
        }
        taken.add(best);
        leaders.add(leader(x, y, best));
        return best;
    }

    /** The straight way from a point to the nearest place of a label. */
    static Line2D leader(double x, double y, Rectangle2D label) {
        double nearX = Math.max(label.getMinX() - CLEARANCE, Math.min(x, label.getMaxX() + CLEARANCE));
        double nearY = Math.max(label.getMinY(), Math.min(y, label.getMaxY()));
        return new Line2D.Double(x, y, nearX, nearY);
    }

    /** What it costs that the way to a label crosses others, or that the label lies on another's way. */
    private double crossed(double x, double y, Rectangle2D candidate) {
        Line2D way = leader(x, y, candidate);
        double cost = 0;
        for (Rectangle2D other : taken) {
            cost += way.intersects(other) ? WAY_CROSSED : 0;
        }
        for (Line2D other : leaders) {
            cost += other.intersects(candidate) || other.intersectsLine(way) ? WAY_CROSSED : 0;
        }
        return cost;
    }

    private static Rectangle2D beside(double x, double y, double width, double height, double distance, double angle) {
        double across = Math.cos(angle);
        double up = Math.sin(angle);
        double middleX = x + across * (distance + width / 2);
        double middleY = y - up * (distance + height / 2);
        return new Rectangle2D.Double(middleX - width / 2, middleY - height / 2, width, height);
    }

    private double covered(Rectangle2D candidate) {
        double cost = page.contains(candidate) ? 0 : OUTSIDE;
        Rectangle2D wide = new Rectangle2D.Double(
                candidate.getX() - CLEARANCE,
                candidate.getY() - CLEARANCE / 2,
                candidate.getWidth() + 2 * CLEARANCE,
                candidate.getHeight() + CLEARANCE);
        for (Rectangle2D other : taken) {
            if (other.intersects(wide)) {
                cost += LABEL_COVERED;
            }
        }
        for (Point2D point : inked) {
            if (wide.contains(point)) {
                cost += CURVE_COVERED;
            }
        }
        return cost;
    }
}
