package throwline.liftingline;

import java.util.Arrays;
import java.util.Optional;
import throwline.section.SectionCurve;

/**
 * Solves lifting-line problems on one surface: Newton steps on the circulation, each halved until the largest residual
 * in section lift falls. Started from a given solution, else from the linear one. The package's notes say why there is
 * one answer and why this finds it.
 *
 * <p>Holds its workspace: one thread at a time.
 */
public final class LiftingLineSolver {

    private static final int MOST_HALVINGS = 40;
    private static final int MOST_GROUND_PASSES = 40;

    private final SpanGrid grid;
    private final InfluenceMatrix influence;
    private final SolverSettings settings;
    private final GroundImage image;
    private final Workspace half;
    private final Workspace whole;

    /**
     * A solver for one surface.
     *
     * @param influence its influence matrix
     * @param settings how exactly to solve
     */
    public LiftingLineSolver(InfluenceMatrix influence, SolverSettings settings) {
        this.influence = influence;
        this.settings = settings;
        grid = influence.grid();
        image = new GroundImage(grid, influence.ground());
        half = new Workspace(influence.symmetric(), grid.size() / 2, grid.size() / 2);
        whole = new Workspace(influence.full(), grid.size(), 0);
    }

    /** The strips. */
    public SpanGrid grid() {
        return grid;
    }

    /**
     * Solves one problem.
     *
     * @param problem the problem
     * @param start a solution on the same grid to start from; empty to start from the linear solution
     * @return the solution; its status says whether it converged
     */
    public LiftingLineSolution solve(LiftingLineProblem problem, Optional<LiftingLineSolution> start) {
        return solveFrom(problem, start.map(LiftingLineSolution::circulations).orElse(null));
    }

    /** As {@link #solve}, from any circulation over speed, one a strip; null for the linear solution. */
    LiftingLineSolution solveFrom(LiftingLineProblem problem, double @org.jspecify.annotations.Nullable [] start) {
        int n = grid.size();
        if (problem.curves().size() != n) {
            throw new IllegalArgumentException(problem.curves().size() + " curves for " + n + " strips");
        }
        Workspace w = problem.isSymmetric() && (start == null || isSymmetric(start)) ? half : whole;
        w.take(problem);
        if (start == null) {
            w.startLinear();
        } else {
            System.arraycopy(start, w.offset, w.g, 0, w.m);
        }
        SolverStatus status = w.iterate();
        double[] circulation = w.expanded();
        if (image.acts()) {
            for (int pass = 0; pass < MOST_GROUND_PASSES && status.converged(); pass++) {
                double[] before = circulation;
                w.takeImage(before);
                status = w.iterate();
                circulation = w.expanded();
                if (largestChange(before, circulation) < settings.tolerance()) {
                    break;
                }
            }
        }
        return w.solution(problem, status, circulation);
    }

    private static boolean isSymmetric(double[] g) {
        for (int i = 0; i < g.length / 2; i++) {
            if (g[i] != g[g.length - 1 - i]) {
                return false;
            }
        }
        return true;
    }

    private double largestChange(double[] before, double[] after) {
        double largest = 0;
        for (int i = 0; i < before.length; i++) {
            largest = Math.max(largest, Math.abs(after[i] - before[i]) * 2 / grid.chord(i));
        }
        return largest;
    }

    /** Arrays for one size of system: the right half, or the whole span. */
    private final class Workspace {
        private final double[] matrix;
        private final int m;
        private final int offset;
        private final double[] jacobian;
        private final double[] g;
        private final double[] trial;
        private final double[] step;
        private final double[] geometric;
        private final double[] extra;
        private final double[] speed;
        private final double[] angle;
        private final double[] residual;
        private final double[] cosSweep;
        private final SectionCurve[] curves;
        private double incidence;
        private double cosDihedral = 1;
        private int worst;

        Workspace(double[] matrix, int m, int offset) {
            this.matrix = matrix;
            this.m = m;
            this.offset = offset;
            jacobian = new double[m * m];
            g = new double[m];
            trial = new double[m];
            step = new double[m];
            geometric = new double[m];
            extra = new double[m];
            speed = new double[m];
            angle = new double[m];
            residual = new double[m];
            cosSweep = new double[m];
            curves = new SectionCurve[m];
            for (int i = 0; i < m; i++) {
                cosSweep[i] = Math.cos(grid.sweep(offset + i));
            }
        }

        void take(LiftingLineProblem problem) {
            Motion motion = problem.motion();
            double dihedral = grid.planform().dihedral();
            cosDihedral = Math.cos(dihedral);
            incidence = problem.incidence();
            for (int i = 0; i < m; i++) {
                int s = offset + i;
                double y = grid.control(s);
                curves[i] = problem.curves().get(s);
                speed[i] = problem.inflow().speed(s) - motion.yaw() * y;
                geometric[i] = grid.twist(s);
                extra[i] = motion.roll() * y
                        + motion.pitch() * grid.quarterChord(s)
                        + motion.sideslip() * Math.sin(dihedral) * Math.signum(y)
                        - problem.inflow().downwash(s) * problem.inflow().speed(s);
            }
        }

        /** Adds what the bound image of a circulation does: a loss of speed and an upwash. */
        void takeImage(double[] circulation) {
            for (int i = 0; i < m; i++) {
                int s = offset + i;
                double before = image.lastLoss(s);
                double beforeUp = image.lastUpwash(s);
                image.update(s, circulation);
                speed[i] += before - image.lastLoss(s);
                extra[i] += image.lastUpwash(s) - beforeUp;
            }
        }

        void startLinear() {
            for (int i = 0; i < m; i++) {
                double chord = grid.chord(offset + i);
                double slope = curves[i].attachedSlope() * cosSweep[i] * cosDihedral;
                double flow = geometric[i] + (incidence * speed[i] + extra[i]) / speed[i];
                step[i] = chord * speed[i] / 2 * (slope * flow - slope * curves[i].zeroLiftAngle() * cosSweep[i]);
                fillRow(i, chord / 2 * slope);
            }
            DominantSystem.solve(jacobian, step, m);
            System.arraycopy(step, 0, g, 0, m);
        }

        private void fillRow(int i, double d) {
            int row = i * m;
            for (int j = 0; j < m; j++) {
                jacobian[row + j] = d * matrix[row + j];
            }
            jacobian[row + i] += 1;
        }

        SolverStatus iterate() {
            double largest = evaluate(g);
            int iterations = 0;
            while (largest > settings.tolerance() && iterations < settings.mostIterations()) {
                iterations++;
                for (int i = 0; i < m; i++) {
                    double chord = grid.chord(offset + i);
                    double slope = curves[i].risingLiftSlope(angle[i]) * cosSweep[i] * cosDihedral;
                    fillRow(i, chord / 2 * slope);
                    step[i] = -residual[i] * chord * speed[i] / 2;
                }
                DominantSystem.solve(jacobian, step, m);
                double reached = shorten(largest);
                if (!(reached < largest)) {
                    evaluate(g);
                    break;
                }
                largest = reached;
            }
            return new SolverStatus(largest <= settings.tolerance(), largest, iterations, offset + worst);
        }

        /** Takes as much of the step as lowers the largest residual; gives that residual. */
        private double shorten(double largest) {
            double share = 1;
            for (int k = 0; k < MOST_HALVINGS; k++) {
                for (int i = 0; i < m; i++) {
                    trial[i] = g[i] + share * step[i];
                }
                double reached = evaluate(trial);
                if (reached < largest) {
                    System.arraycopy(trial, 0, g, 0, m);
                    return reached;
                }
                share /= 2;
            }
            return Double.POSITIVE_INFINITY;
        }

        private double evaluate(double[] at) {
            double largest = -1;
            for (int i = 0; i < m; i++) {
                int row = i * m;
                double downwash = 0;
                for (int j = 0; j < m; j++) {
                    downwash += matrix[row + j] * at[j];
                }
                double flow = geometric[i] + incidence + (extra[i] - downwash) / speed[i];
                angle[i] = flow * cosDihedral / cosSweep[i];
                double lift = cosSweep[i] * cosSweep[i] * curves[i].risingLift(angle[i]);
                residual[i] = 2 * at[i] / (grid.chord(offset + i) * speed[i]) - lift;
                if (Math.abs(residual[i]) > largest) {
                    largest = Math.abs(residual[i]);
                    worst = i;
                }
            }
            return largest;
        }

        double[] expanded() {
            double[] all = new double[grid.size()];
            for (int i = 0; i < m; i++) {
                all[offset + i] = g[i];
                if (offset > 0) {
                    all[grid.mirror(offset + i)] = g[i];
                }
            }
            return all;
        }

        LiftingLineSolution solution(LiftingLineProblem problem, SolverStatus status, double[] circulation) {
            int n = grid.size();
            double[] angles = new double[n];
            double[] wake = new double[n];
            double[] speeds = new double[n];
            for (int i = 0; i < m; i++) {
                int s = offset + i;
                angles[s] = angle[i];
                speeds[s] = speed[i];
                wake[s] = influence.wakeAngle(s, circulation) / speed[i];
                if (offset > 0) {
                    int other = grid.mirror(s);
                    angles[other] = angle[i];
                    speeds[other] = speed[i];
                    wake[other] = wake[s];
                }
            }
            image.reset();
            Arrays.fill(extra, 0);
            return new LiftingLineSolution(grid, problem, status, circulation, angles, wake, speeds);
        }
    }
}
