package throwline.liftingline;

import throwline.numerics.Interpolation;
import throwline.section.HullPiece;
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
    private final double[] slope;
    private final double[] slowed;
    private final SectionCurve[] curves;
    private final HullPiece[] pieces;
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
        slope = new double[size];
        slowed = new double[size];
        curves = new SectionCurve[size];
        pieces = new HullPiece[size];
        for (int i = 0; i < size; i++) {
            halfChord[i] = grid.chord(offset + i) / 2;
            cosSweep[i] = Math.cos(grid.sweep(offset + i));
            pieces[i] = new HullPiece();
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

    /** Drops the stretches of curves kept from earlier problems. */
    void forget() {
        for (HullPiece piece : pieces) {
            piece.clear();
        }
    }

    /** Takes a problem. */
    void take(LiftingLineProblem problem) {
        Motion motion = problem.motion();
        Inflow inflow = problem.inflow();
        incidence = problem.incidence();
        for (int i = 0; i < size; i++) {
            int s = offset + i;
            SectionCurve curve = problem.curves().get(s);
            if (curve != curves[i]) {
                curves[i] = curve;
                pieces[i].clear();
            }
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
            lift[i] = cosSweep[i] * cosSweep[i] * piece(i, angle[i]).value(angle[i]);
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
            double perRadian = piece(i, angle[i]).slope(angle[i]) * cosSweep[i] * cosDihedral;
            slope[i] = halfChord[i] * perRadian;
            slowed[i] = halfChord[i] * lift[i] - slope[i] * flow[i];
        }
        for (int j = 0; j < size; j++) {
            double[] column = system.column(j);
            fill(column, j);
            if (image.acts()) {
                addImage(column, j);
            }
        }
        side(side);
    }

    /** The image's upwash raises the lift; its loss of speed takes lift away and makes upward flow steeper. */
    private void addImage(double[] column, int j) {
        double[] upwash = imageUpwash.column(j);
        double[] loss = imageLoss.column(j);
        for (int i = 0; i < size; i++) {
            column[i] += slowed[i] * loss[i] - slope[i] * upwash[i];
        }
    }

    /** Piece of a strip's curve that holds an angle. */
    private HullPiece piece(int i, double at) {
        HullPiece piece = pieces[i];
        if (!piece.holds(at)) {
            curves[i].risingPiece(at, piece);
        }
        return piece;
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
            double perRadian = curves[i].attachedSlope() * cosSweep[i];
            double free = (grid.twist(offset + i) + incidence) * clearSpeed[i] + upflow[i];
            double zero = curves[i].zeroLiftAngle() * cosSweep[i] * clearSpeed[i];
            side[i] = halfChord[i] * perRadian * (free * cosDihedral - zero);
            slope[i] = halfChord[i] * perRadian * cosDihedral;
        }
        for (int j = 0; j < size; j++) {
            fill(system.column(j), j);
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
            HullPiece piece = piece(i, at);
            double over = x - scale * piece.value(at);
            if (!(Math.abs(over) > tolerance * halfChord[i] * s)) {
                break;
            }
            if (over > 0) {
                high = x;
            } else {
                low = x;
            }
            double perRadian = piece.slope(at) * cosSweep[i] * cosDihedral;
            double next = x - over / (1 + halfChord[i] * perRadian * matrix[i][i]);
            x = next > low && next < high ? next : (low + high) / 2;
        }
        return x;
    }

    /** A column of the derivative but for the image, from the slopes of the strips. */
    private void fill(double[] column, int j) {
        double[] wake = induction.column(j);
        for (int i = 0; i < size; i++) {
            column[i] = slope[i] * wake[i];
        }
        column[j] += 1;
    }
}
