package throwline.input;

/**
 * A point of an airfoil's outline as written.
 *
 * @param x backwards
 * @param y upwards
 * @param line of the file
 */
record OutlinePoint(double x, double y, int line) {

    double distance(OutlinePoint other) {
        return Math.hypot(x - other.x, y - other.y);
    }

    /** Twice the area of the triangle of three points; positive where the way to the third turns left. */
    static double turn(OutlinePoint a, OutlinePoint b, OutlinePoint c) {
        return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
    }
}
