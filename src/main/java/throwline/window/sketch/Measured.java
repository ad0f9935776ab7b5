package throwline.window.sketch;

import java.awt.geom.Point2D;

/** Dimension that a value of the model file measures, in a drawing: metres and rad, y down the page. */
public sealed interface Measured permits Measured.Length, Measured.Angle {

    /** True where the value is known; without it the drawing shows where it is measured, not how much. */
    boolean known();

    /** The length, m, or the angle, rad, as it is drawn; not negative. */
    double size();

    /**
     * A length.
     *
     * @param from one end
     * @param to the other end
     * @param aside how far beside it the dimension line stands, points of the screen, to the right of the way from one end to the other
     *     positive
     * @param whole what the value is a share of, m; 0 for a plain length
     * @param known true where the value is known
     */
    record Length(Point2D from, Point2D to, double aside, double whole, boolean known) implements Measured {
        @Override
        public double size() {
            return from.distance(to);
        }
    }

    /**
     * An angle.
     *
     * @param centre where its sides meet
     * @param from first side, rad from the right, clockwise on the page
     * @param to second side
     * @param radius length of its sides, m
     * @param known true where the value is known
     */
    record Angle(Point2D centre, double from, double to, double radius, boolean known) implements Measured {
        @Override
        public double size() {
            return Math.abs(to - from);
        }

        /** End of a side. */
        public Point2D end(double side) {
            return new Point2D.Double(centre.getX() + radius * Math.cos(side), centre.getY() + radius * Math.sin(side));
        }
    }
}
