package throwline.liftingline;

import throwline.section.SectionCurve;

/**
 * Forces on the strips of a solution over dynamic pressure, m^2: lift across and drag along the undisturbed air. The
 * lift is that of the sections' real, falling curves read at the solved angles, the fall spread over one degree past the
 * stall angle; below the stall that is the circulation's lift.
 *
 * <p>The drag of a strip is its section's drag and its lift tilted back by the wake's downwash and, in a roll, forward or
 * back by the strip's own sinking or rising; without that tilt the yawing moment due to roll has the wrong sign (WING-CASES
 * A6).
 */
public final class StripForces {

    private static final double FALL_SPREAD = Math.toRadians(1);

    private final SpanGrid grid;
    private final double[] lift;
    private final double[] profileDrag;
    private final double[] wakeDrag;
    private final double[] rollTilt;
    private final double[] moment;

    private StripForces(int n, SpanGrid grid) {
        this.grid = grid;
        lift = new double[n];
        profileDrag = new double[n];
        wakeDrag = new double[n];
        rollTilt = new double[n];
        moment = new double[n];
    }

    /** The forces of a solution. */
    public static StripForces of(LiftingLineSolution solution) {
        SpanGrid grid = solution.grid();
        StripForces forces = new StripForces(grid.size(), grid);
        double roll = solution.problem().motion().roll();
        double rise = Math.cos(grid.planform().dihedral());
        for (int i = 0; i < grid.size(); i++) {
            SectionCurve curve = solution.problem().curves().get(i);
            double angle = solution.sectionAngle(i);
            double speed = solution.speed(i);
            double area = speed * speed * grid.chord(i) * grid.width(i);
            double narrowing = Math.pow(Math.cos(grid.sweep(i)), 2);
            double lift = solution.lift(i) + narrowing * fall(curve, angle);
            forces.lift[i] = area * lift * rise;
            forces.profileDrag[i] = area * curve.drag(angle);
            forces.wakeDrag[i] = area * lift * solution.wakeAngle(i);
            forces.rollTilt[i] = -area * lift * roll * grid.control(i) / speed;
            forces.moment[i] = area * grid.chord(i) * curve.moment(angle);
        }
        return forces;
    }

    /** How much less than the hull the section carries, faded in over one degree past either stall; not positive above. */
    private static double fall(SectionCurve curve, double angle) {
        double past = Math.max(angle - curve.stallAngle(), curve.negativeStallAngle() - angle);
        if (past <= 0) {
            return 0;
        }
        return Math.min(1, past / FALL_SPREAD) * (curve.lift(angle) - curve.risingLift(angle));
    }

    /** Lift of a strip over dynamic pressure, m^2, up positive. */
    public double lift(int strip) {
        return lift[strip];
    }

    /** Drag of a strip over dynamic pressure, m^2. */
    public double drag(int strip) {
        return profileDrag[strip] + wakeDrag[strip] + rollTilt[strip];
    }

    /** Section drag of a strip over dynamic pressure, m^2. */
    public double profileDrag(int strip) {
        return profileDrag[strip];
    }

    /** Drag of a strip over dynamic pressure by its lift being tilted by the wake, m^2. */
    public double inducedDrag(int strip) {
        return wakeDrag[strip];
    }

    /** Moment of a strip about its quarter chord over dynamic pressure, m^3, nose up positive. */
    public double moment(int strip) {
        return moment[strip];
    }

    /** Lift over dynamic pressure and area. */
    public double liftCoefficient() {
        return sum(lift) / grid.area();
    }

    /** Drag of the lift tilted by the wake, over dynamic pressure and area. */
    public double inducedDragCoefficient() {
        return sum(wakeDrag) / grid.area();
    }

    /** Drag of the sections over dynamic pressure and area. */
    public double profileDragCoefficient() {
        return sum(profileDrag) / grid.area();
    }

    /** All drag over dynamic pressure and area. */
    public double dragCoefficient() {
        return (sum(profileDrag) + sum(wakeDrag) + sum(rollTilt)) / grid.area();
    }

    /** Rolling moment over dynamic pressure, area and span, right wing down positive. */
    public double rollingCoefficient() {
        double sum = 0;
        for (int i = 0; i < lift.length; i++) {
            sum -= lift[i] * grid.control(i);
        }
        return sum / (grid.area() * grid.span());
    }

    /** Yawing moment over dynamic pressure, area and span, nose right positive. */
    public double yawingCoefficient() {
        double sum = 0;
        for (int i = 0; i < lift.length; i++) {
            sum += drag(i) * grid.control(i);
        }
        return sum / (grid.area() * grid.span());
    }

    /**
     * Pitching moment over dynamic pressure, area and mean chord, nose up positive, small angles, about a point on the
     * plane of the wing.
     *
     * @param behind the point's distance behind the quarter chord at the middle, m
     */
    public double pitchingCoefficient(double behind) {
        double sum = 0;
        for (int i = 0; i < lift.length; i++) {
            sum += moment[i] - lift[i] * (grid.quarterChord(i) - behind);
        }
        return sum / (grid.area() * grid.meanChord());
    }

    private static double sum(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }
}
