package throwline.section;

/**
 * A stretch of the hull of a lift curve, one cubic, kept so that angles on it are read again without a search. Holds what
 * was read last: one thread at a time.
 */
public final class HullPiece {

    private double from = Double.POSITIVE_INFINITY;
    private double to = Double.NEGATIVE_INFINITY;
    private double origin;
    private double level;
    private double first;
    private double second;
    private double third;

    /** Drops what was kept. */
    public void clear() {
        from = Double.POSITIVE_INFINITY;
    }

    /** True where the stretch holds an angle, rad. */
    public boolean holds(double angle) {
        return from <= angle && angle < to;
    }

    /** Lift coefficient at an angle on the stretch. */
    public double value(double angle) {
        double s = angle - origin;
        return level + s * (first + s * (second + s * third));
    }

    /** Slope there, per rad, never negative. */
    public double slope(double angle) {
        double s = angle - origin;
        return Math.max(0, first + s * (2 * second + 3 * s * third));
    }

    /** Keeps one angle alone: what a curve without stretches gives. */
    void point(double angle, double value, double slope) {
        from = angle;
        to = Math.nextUp(angle);
        origin = angle;
        level = value;
        first = slope;
        second = 0;
        third = 0;
    }

    /** Keeps a cubic between two angles, from the values and slopes at its ends. */
    void between(double left, double width, double below, double above, double slopeBelow, double slopeAbove) {
        double chord = (above - below) / width;
        from = left;
        to = left + width;
        origin = left;
        level = below;
        first = slopeBelow;
        second = (3 * chord - 2 * slopeBelow - slopeAbove) / width;
        third = (slopeBelow + slopeAbove - 2 * chord) / (width * width);
    }

    /** Moves the stretch to higher angles, rad, and higher lift. */
    public void move(double turn, double rise) {
        from += turn;
        to += turn;
        origin += turn;
        level += rise;
    }

    /** Takes a share of the lift. */
    public void scale(double share) {
        level *= share;
        first *= share;
        second *= share;
        third *= share;
    }
}
