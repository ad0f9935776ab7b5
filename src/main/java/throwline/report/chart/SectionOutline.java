package throwline.report.chart;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;

/**
 * An outline for an airfoil of which thickness and camber are known, not the coordinates: thickness form and camber line of
 * the four-digit family with the top of the camber at 40 % of the chord (NACA TR 460). On a chord of 1, nose at the origin,
 * y down the page.
 */
final class SectionOutline {

    private static final int POINTS = 40;
    private static final double TOP = 0.4;

    private final double thickness;
    private final double camber;
    private final double hinge;

    /**
     * An outline.
     *
     * @param thickness largest thickness over chord
     * @param camber largest camber over chord
     * @param hinge place of the hinge over chord
     */
    SectionOutline(double thickness, double camber, double hinge) {
        this.thickness = thickness;
        this.camber = camber;
        this.hinge = hinge;
    }

    /** What stays where it is. */
    Shape front() {
        return between(0, hinge);
    }

    /** The hinged surface, turned about a hinge in the middle of the section; rad, trailing edge down positive. */
    Shape surface(double deflection) {
        AffineTransform turn = AffineTransform.getRotateInstance(deflection, hinge, -camberLine(hinge));
        return turn.createTransformedShape(between(hinge, 1));
    }

    private Path2D between(double from, double to) {
        Path2D path = new Path2D.Double();
        for (int i = 0; i <= POINTS; i++) {
            double x = station(from, to, i);
            double y = -camberLine(x) - half(x);
            if (i == 0) {
                path.moveTo(x, y);
            } else {
                path.lineTo(x, y);
            }
        }
        for (int i = POINTS; i >= 0; i--) {
            double x = station(from, to, i);
            path.lineTo(x, -camberLine(x) + half(x));
        }
        path.closePath();
        return path;
    }

    /** Close together at the nose. */
    private static double station(double from, double to, int i) {
        double share = (double) i / POINTS;
        return from + (to - from) * share * share;
    }

    private double half(double x) {
        return 5
                * thickness
                * (0.2969 * Math.sqrt(x) - 0.1260 * x - 0.3516 * x * x + 0.2843 * x * x * x - 0.1015 * x * x * x * x);
    }

    private double camberLine(double x) {
        double ahead = camber / (TOP * TOP) * (2 * TOP * x - x * x);
        double behind = camber / ((1 - TOP) * (1 - TOP)) * (1 - 2 * TOP + 2 * TOP * x - x * x);
        return x < TOP ? ahead : behind;
    }
}
