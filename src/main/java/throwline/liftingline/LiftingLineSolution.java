package throwline.liftingline;

/**
 * The circulation that satisfies one problem, with all that follows from it strip by strip.
 */
public final class LiftingLineSolution {

    private final SpanGrid grid;
    private final LiftingLineProblem problem;
    private final SolverStatus status;
    private final boolean alike;
    private final double[] circulation;
    private final double[] sectionAngle;
    private final double[] wakeAngle;
    private final double[] speed;

    LiftingLineSolution(
            SpanGrid grid,
            LiftingLineProblem problem,
            SolverStatus status,
            boolean alike,
            double[] circulation,
            double[] sectionAngle,
            double[] wakeAngle,
            double[] speed) {
        this.grid = grid;
        this.problem = problem;
        this.status = status;
        this.alike = alike;
        this.circulation = circulation;
        this.sectionAngle = sectionAngle;
        this.wakeAngle = wakeAngle;
        this.speed = speed;
    }

    /** The strips. */
    public SpanGrid grid() {
        return grid;
    }

    /** Problem that was solved. */
    public LiftingLineProblem problem() {
        return problem;
    }

    /** How the solve ended. */
    public SolverStatus status() {
        return status;
    }

    /** True where it was solved as one half and its mirror image. */
    boolean isAlike() {
        return alike;
    }

    /** Circulation over reference speed, m. */
    public double circulation(int strip) {
        return circulation[strip];
    }

    /** Angle of attack at which the strip's section curve is read, rad. */
    public double sectionAngle(int strip) {
        return sectionAngle[strip];
    }

    /** Angle by which the trailing vortices turn the local air down, rad. */
    public double wakeAngle(int strip) {
        return wakeAngle[strip];
    }

    /** Local air speed over reference speed. */
    public double speed(int strip) {
        return speed[strip];
    }

    /** Lift coefficient of the strip on its local speed, from the circulation. */
    public double lift(int strip) {
        return 2 * circulation[strip] / (grid.chord(strip) * speed[strip]);
    }

    /** Angle left before the strip's section stalls, rad; negative past the stall. */
    public double margin(int strip) {
        return problem.curves().get(strip).stallAngle() - sectionAngle[strip];
    }

    double[] circulations() {
        return circulation;
    }
}
