package throwline.liftingline;

import throwline.section.SectionCurve;

/**
 * Forces on the strips of a solution over dynamic pressure, m^2: lift across and drag along the air that meets the
 * surface, that is the undisturbed air turned by what other surfaces do to it at the strip. The lift is that of the
 * sections' real, falling curves read at the solved angles, the fall spread over one degree past the stall angle; below
 * the stall that is the circulation's lift.
 *
 * <p>The drag of a strip is its section's drag and its lift tilted back by the wake's downwash and forward by the upflow
 * of its own motion; without the tilt by roll the yawing moment due to roll has the wrong sign (methods manual 6.4). A strip
 * of a raised half pulls inwards as well. Sweep narrows lift and moment by the square of its cosine (simple sweep theory);
 * section drag is left as it is.
 */
public final class StripForces {

    /** Nose-down moment of a section over its chord times pitch rate over speed (thin airfoil theory). */
    private static final double TURNING_MOMENT = Math.PI / 8;

    private final LiftingLineSolution solution;
    private final SpanGrid grid;
    private final PastStall pastStall;
    private final double[] lift;
    private final double[] side;
    private final double[] sectionDrag;
    private final double[] profileDrag;
    private final double[] wakeDrag;
    private final double[] motionTilt;
    private final double[] moment;

    private StripForces(LiftingLineSolution solution) {
        this.solution = solution;
        grid = solution.grid();
        pastStall = new PastStall(solution);
        int n = grid.size();
        lift = new double[n];
        side = new double[n];
        sectionDrag = new double[n];
        profileDrag = new double[n];
        wakeDrag = new double[n];
        motionTilt = new double[n];
        moment = new double[n];
    }

    /** The forces of a solution. */
    public static StripForces of(LiftingLineSolution solution) {
        StripForces forces = new StripForces(solution);
        double dihedral = forces.grid.planform().dihedral();
        double rise = Math.cos(dihedral);
        double inwards = Math.sin(dihedral);
        int n = forces.lift.length;
        for (int i = solution.isAlike() ? n / 2 : 0; i < n; i++) {
            forces.takeLift(i, rise, inwards);
            forces.takeDragAndMoment(i);
        }
        if (solution.isAlike()) {
            forces.mirror();
        }
        return forces;
    }

    /** The rolling moment coefficient of a solution alone, for which drag need not be read. */
    public static double rollingCoefficient(LiftingLineSolution solution) {
        StripForces forces = new StripForces(solution);
        double dihedral = forces.grid.planform().dihedral();
        double rise = Math.cos(dihedral);
        double inwards = Math.sin(dihedral);
        for (int i = 0; i < forces.lift.length; i++) {
            forces.takeLift(i, rise, inwards);
        }
        return forces.rollingCoefficient();
    }

    private void takeLift(int i, double rise, double inwards) {
        double speed = solution.speed(i);
        double area = speed * speed * grid.chord(i) * grid.width(i);
        double across = area * (solution.lift(i) + grid.narrowing(i) * pastStall.fall(i));
        lift[i] = across * rise;
        side[i] = -across * inwards * Math.signum(grid.control(i));
    }

    private void takeDragAndMoment(int i) {
        SectionCurve curve = solution.problem().curves().get(i);
        double angle = solution.sectionAngle(i);
        double speed = solution.speed(i);
        double area = speed * speed * grid.chord(i) * grid.width(i);
        double narrowing = grid.narrowing(i);
        sectionDrag[i] = curve.drag(angle);
        profileDrag[i] = area * sectionDrag[i];
        wakeDrag[i] = lift[i] * solution.wakeAngle(i);
        motionTilt[i] = -lift[i] * solution.problem().motion().upflow(grid, i) / speed;
        double turning = -TURNING_MOMENT * solution.problem().motion().pitch() * grid.chord(i) / speed;
        moment[i] = area * grid.chord(i) * narrowing * (curve.moment(angle) + turning);
    }

    /** The left half is the mirror image of the right one. */
    private void mirror() {
        for (int i = grid.size() / 2; i < grid.size(); i++) {
            int twin = grid.mirror(i);
            lift[twin] = lift[i];
            side[twin] = -side[i];
            sectionDrag[twin] = sectionDrag[i];
            profileDrag[twin] = profileDrag[i];
            wakeDrag[twin] = wakeDrag[i];
            motionTilt[twin] = motionTilt[i];
            moment[twin] = moment[i];
        }
    }

    /** Lift of a strip over dynamic pressure, m^2, up positive. */
    public double lift(int strip) {
        return lift[strip];
    }

    /** Force of a strip to the right over dynamic pressure, m^2: what dihedral makes of its lift. */
    public double side(int strip) {
        return side[strip];
    }

    /** Drag of a strip over dynamic pressure, m^2. */
    public double drag(int strip) {
        return profileDrag[strip] + wakeDrag[strip] + motionTilt[strip];
    }

    /** The solution that they are the forces of. */
    public LiftingLineSolution solution() {
        return solution;
    }

    /** Drag coefficient of a strip's section. */
    public double sectionDrag(int strip) {
        return sectionDrag[strip];
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

    /** Lift over dynamic pressure and area if no section lost lift past its stall. */
    public double hullLiftCoefficient() {
        double rise = Math.cos(grid.planform().dihedral());
        double sum = 0;
        for (int i = 0; i < lift.length; i++) {
            sum += 2 * solution.circulation(i) * solution.speed(i) * grid.width(i) * rise;
        }
        return sum / grid.area();
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
        return about(0, 0, 0).drag() / grid.area();
    }

    /** Rolling moment about the quarter chord in the middle over dynamic pressure, area and span, right wing down positive. */
    public double rollingCoefficient() {
        return about(0, 0, 0).rolling() / (grid.area() * grid.span());
    }

    /** Yawing moment about the quarter chord in the middle over dynamic pressure, area and span, nose right positive. */
    public double yawingCoefficient() {
        return about(0, 0, 0).yawing() / (grid.area() * grid.span());
    }

    /**
     * Pitching moment over dynamic pressure, area and mean chord, nose up positive, about a point on the chord at the
     * middle.
     *
     * @param behind the point's distance behind the quarter chord at the middle, m
     */
    public double pitchingCoefficient(double behind) {
        return about(behind, 0, 0).pitching() / (grid.area() * grid.meanChord());
    }

    /**
     * All forces and their moments about a point. The point is given from the quarter chord at the middle along the chord
     * there, which stands at the problem's incidence to the air; no angle is taken as small.
     *
     * @param behind m
     * @param right m
     * @param above m
     * @return the sum over the strips
     */
    public Loads about(double behind, double right, double above) {
        double cos = Math.cos(solution.problem().incidence());
        double sin = Math.sin(solution.problem().incidence());
        double rise = Math.tan(grid.planform().dihedral());
        double rolling = 0;
        double pitching = 0;
        double yawing = 0;
        for (int i = 0; i < lift.length; i++) {
            double back = grid.quarterChord(i) - behind;
            double up = Math.abs(grid.control(i)) * rise - above;
            double x = back * cos + up * sin;
            double y = grid.control(i) - right;
            double z = up * cos - back * sin;
            double drag = drag(i);
            rolling += side[i] * z - lift[i] * y;
            pitching += moment[i] - lift[i] * x + drag * z;
            yawing += drag * y - side[i] * x;
        }
        double drag = sum(profileDrag) + sum(wakeDrag) + sum(motionTilt);
        return new Loads(sum(lift), drag, sum(side), rolling, pitching, yawing);
    }

    private static double sum(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }
}
