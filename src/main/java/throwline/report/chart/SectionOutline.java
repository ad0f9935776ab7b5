package throwline.report.chart;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;

/**
 * Outline for an airfoil of which thickness and camber are known, not the coordinates: thickness form and camber line of
 * the four-digit family with the top of the camber at 40 % of the chord (NACA TR 460). On a chord of 1, nose at the origin,
 * y down the page.
 *
 * @param thickness largest thickness over chord
 * @param camber largest camber over chord
 * @param hinge place of the hinge over chord
 */
record SectionOutline(double thickness, double camber, double hinge) {

    private static final int POINTS = 40;
    private static final double TOP = 0.4;

    /** What stays where it is. */
    List<Place> front() {
        return between(0, hinge, 0);
    }

    /** The hinged surface, turned about a hinge in the middle of the section; rad, trailing edge down positive. */
    List<Place> surface(double deflection) {
        return between(hinge, 1, deflection);
    }

    private List<Place> between(double from, double to, double deflection) {
        AffineTransform turn = AffineTransform.getRotateInstance(deflection, hinge, -camberLine(hinge));
        List<Place> places = new ArrayList<>();
        for (int i = 0; i <= 2 * POINTS + 1; i++) {
            // Along the upper side to the end and back along the lower one, close together at the nose.
            boolean upper = i <= POINTS;
            double share = (upper ? i : 2.0 * POINTS + 1 - i) / POINTS;
            double x = from + (to - from) * share * share;
            double y = -camberLine(x) + (upper ? -half(x) : half(x));
            Point2D turned = turn.transform(new Point2D.Double(x, y), new Point2D.Double());
            places.add(Place.of(turned.getX(), turned.getY()));
        }
        return places;
    }

    private double half(double x) {
        return 5
                * thickness
                * (0.2969 * Math.sqrt(x) - 0.1260 * x - 0.3516 * x * x + 0.2843 * x * x * x - 0.1015 * x * x * x * x);
    }

    /** Height of the camber line over the chord line. */
    double camberLine(double x) {
        double ahead = camber / (TOP * TOP) * (2 * TOP * x - x * x);
        double behind = camber / ((1 - TOP) * (1 - TOP)) * (1 - 2 * TOP + 2 * TOP * x - x * x);
        return x < TOP ? ahead : behind;
    }
}
