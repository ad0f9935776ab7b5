package throwline.liftingline;

import throwline.numerics.Interpolation;
import throwline.section.SectionCurve;

/**
 * Equations of the strips for the circulation: circulation over speed {@code g} of a strip equals half of local speed, chord
 * and its section's lift on the hull curve at the angle that twist, motion, other surfaces and the wake leave. For the
 * whole span, or for its right half where both sides are alike.
 */
final class StripEquations {

    /** Least local speed over reference speed that is still taken as moving forward. */
    private static final double SLOWEST = 1e-3;

    /** Halvings of a bracket that leave fourteen figures. */
    private static final int MOST_TRIES = 50;

    private final SpanGrid grid;
    private final double[][] matrix;
    private final Columns induction;
    private final Columns imageUpwash;
    private final Columns imageLoss;
    private final GroundImage image;
    private final int size;
    private final int offset;
    private final double[] halfChord;
    private final double[] cosSweep;
    private final double cosDihedral;
    private final double[] upflow;
    private final double[] clearSpeed;
    private final double[] speed;
    private final double[] flow;
    private final double[] induced;
    private final double[] upwash;
    private final double[] loss;
    private final double[] angle;
    private final double[] lift;
    private final double[] residual;
    private final SectionCurve[] curves;
    private double incidence;
    private int worst;

    /**
     * @param influence the matrix
     * @param symmetric true for the right half, with the left as its mirror image
     */
    StripEquations(InfluenceMatrix influence, boolean symmetric) {
        grid = influence.grid();
        matrix = symmetric ? influence.symmetric() : influence.full();
        image = symmetric ? influence.image().folded() : influence.image();
        induction = symmetric ? influence.symmetricColumns() : influence.fullColumns();
        imageUpwash = new Columns(image.upwash());
        imageLoss = new Columns(image.loss());
        size = matrix.length;
        offset = grid.size() - size;
        halfChord = new double[size];
        cosSweep = new double[size];
        cosDihedral = Math.cos(grid.planform().dihedral());
        upflow = new double[size];
        clearSpeed = new double[size];
        speed = new double[size];
        flow = new double[size];
        induced = new double[size];
        upwash = new double[size];
        loss = new double[size];
        angle = new double[size];
        lift = new double[size];
        residual = new double[size];
        curves = new SectionCurve[size];
        for (int i = 0; i < size; i++) {
            halfChord[i] = grid.chord(offset + i) / 2;
            cosSweep[i] = Math.cos(grid.sweep(offset + i));
        }
    }

    /** Number of unknowns. */
    int size() {
        return size;
    }

    /** Strip of the first unknown. */
    int offset() {
        return offset;
    }

    /** Local air speed over reference speed of an unknown. */
    double speed(int i) {
        return speed[i];
    }

    /** Angle at which the section of an unknown was last read, rad. */
    double angle(int i) {
        return angle[i];
    }

    /** Strip with the largest residual of the last reading. */
    int worstStrip() {
        return offset + worst;
    }

    /** Takes a problem. */
    void take(LiftingLineProblem problem) {
        Motion motion = problem.motion();
        Inflow inflow = problem.inflow();
        incidence = problem.incidence();
        for (int i = 0; i < size; i++) {
            int s = offset + i;
            curves[i] = problem.curves().get(s);
            clearSpeed[i] = inflow.speed(s) - motion.yaw() * grid.control(s);
            upflow[i] = motion.upflow(grid, s) - inflow.downwash(s) * inflow.speed(s);
        }
    }

    /**
     * Reads all sections.
     *
     * @param g circulation over speed, one an unknown, m
     * @return the largest residual in section lift coefficient; infinite where a strip does not move forward
     */
    double evaluate(double[] g) {
        double largest = 0;
        int still = -1;
        worst = 0;
        induction.times(g, induced);
        if (image.acts()) {
            imageUpwash.times(g, upwash);
            imageLoss.times(g, loss);
        }
        for (int i = 0; i < size; i++) {
            double up = upflow[i] - induced[i] + upwash[i];
            speed[i] = clearSpeed[i] - loss[i];
            if (!(speed[i] >= SLOWEST)) {
                speed[i] = SLOWEST;
                still = i;
            }
            flow[i] = up / speed[i];
            angle[i] = (grid.twist(offset + i) + incidence + flow[i]) * cosDihedral / cosSweep[i];
            lift[i] = cosSweep[i] * cosSweep[i] * curves[i].risingLift(angle[i]);
            residual[i] = g[i] / (halfChord[i] * speed[i]) - lift[i];
            if (Math.abs(residual[i]) > largest) {
                worst = i;
            }
            largest = Math.max(largest, Math.abs(residual[i]));
        }
        if (still >= 0) {
            worst = still;
            return Double.POSITIVE_INFINITY;
        }
        return largest;
    }

    /**
     * Newton's system at the last reading.
     *
     * @param system gets the derivative of the equations
     * @param side gets what the step must take away
     */
    void linearise(DominantSystem system, double[] side) {
        for (int i = 0; i < size; i++) {
            double slope = curves[i].risingLiftSlope(angle[i]) * cosSweep[i] * cosDihedral;
            double[] row = system.row(i);
            fill(row, i, halfChord[i] * slope);
            if (image.acts()) {
                addImage(row, i, slope);
            }
        }
        side(side);
    }

    /** The image's upwash raises the lift; its loss of speed takes lift away and makes upward flow steeper. */
    private void addImage(double[] row, int i, double slope) {
        double[] upwash = image.upwash(i);
        double[] loss = image.loss(i);
        double slowed = halfChord[i] * (lift[i] - slope * flow[i]);
        for (int j = 0; j < size; j++) {
            row[j] += slowed * loss[j] - halfChord[i] * slope * upwash[j];
        }
    }

    /** What a step with an earlier system must take away at the last reading. */
    void side(double[] side) {
        for (int i = 0; i < size; i++) {
            side[i] = -residual[i] * halfChord[i] * speed[i];
        }
    }

    /** The system with every section on its attached slope; its solution is the circulation of linear theory. */
    void linear(DominantSystem system, double[] side) {
        for (int i = 0; i < size; i++) {
            double slope = curves[i].attachedSlope() * cosSweep[i];
            double free = (grid.twist(offset + i) + incidence) * clearSpeed[i] + upflow[i];
            double zero = curves[i].zeroLiftAngle() * cosSweep[i] * clearSpeed[i];
            side[i] = halfChord[i] * slope * (free * cosDihedral - zero);
            fill(system.row(i), i, halfChord[i] * slope * cosDihedral);
        }
    }

    /**
     * One after the other, gives every strip the circulation that satisfies it with the others held.
     *
     * @param g circulation over speed, one an unknown, m; replaced
     * @param rightwards in the order of the strips, else against it
     * @param tolerance largest residual in section lift left on a strip at its turn
     */
    void sweep(double[] g, boolean rightwards, double tolerance) {
        for (int k = 0; k < size; k++) {
            int i = rightwards ? k : size - 1 - k;
            double up = upflow[i] - DominantSystem.dot(matrix[i], g, 0, size) + matrix[i][i] * g[i];
            double s = clearSpeed[i];
            if (image.acts()) {
                up += DominantSystem.dot(image.upwash(i), g, 0, size);
                s -= DominantSystem.dot(image.loss(i), g, 0, size);
            }
            g[i] = satisfy(i, up, Math.max(SLOWEST, s), g[i], tolerance);
        }
    }

    /** The circulation of one strip: Newton's steps in a bracket that closes from both sides. */
    private double satisfy(int i, double up, double s, double from, double tolerance) {
        double scale = halfChord[i] * s * cosSweep[i] * cosSweep[i];
        double low = scale * curves[i].minLift();
        double high = scale * curves[i].maxLift();
        double x = Interpolation.clamp(from, low, high);
        for (int k = 0; k < MOST_TRIES; k++) {
            double own = (up - matrix[i][i] * x) / s;
            double at = (grid.twist(offset + i) + incidence + own) * cosDihedral / cosSweep[i];
            double over = x - scale * curves[i].risingLift(at);
            if (!(Math.abs(over) > tolerance * halfChord[i] * s)) {
                break;
            }
            if (over > 0) {
                high = x;
            } else {
                low = x;
            }
            double slope = curves[i].risingLiftSlope(at) * cosSweep[i] * cosDihedral;
            double next = x - over / (1 + halfChord[i] * slope * matrix[i][i]);
            x = next > low && next < high ? next : (low + high) / 2;
        }
        return x;
    }

    private void fill(double[] row, int i, double d) {
        double[] wake = matrix[i];
        for (int j = 0; j < size; j++) {
            row[j] = d * wake[j];
        }
        row[i] += 1;
    }
}
