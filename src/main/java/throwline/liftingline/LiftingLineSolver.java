package throwline.liftingline;

import java.util.Optional;

/**
 * Solves lifting-line problems on one surface: Newton steps on the circulation, and sweeps strip by strip where those do
 * not help. Started from a given solution, else from the linear one. The package's notes say why there is one answer and
 * why this finds it.
 *
 * <p>Holds its workspace: one thread at a time. Open, so that what is asked of it can be noted.
 */
public class LiftingLineSolver {

    private final SpanGrid grid;
    private final InfluenceMatrix influence;
    private final SolverSettings settings;
    private final NewtonIteration half;
    private Optional<NewtonIteration> whole = Optional.empty();
    private Optional<LiftingLineSolution> last = Optional.empty();
    private Optional<NewtonIteration> lastUsed = Optional.empty();

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
        half = new NewtonIteration(new StripEquations(influence, true));
    }

    /** The strips. */
    public final SpanGrid grid() {
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
        boolean goesOn = start.isPresent() && last.isPresent() && start.get() == last.get();
        if (!goesOn) {
            lastUsed = Optional.empty();
        }
        return solveFrom(problem, start.map(LiftingLineSolution::circulations));
    }

    /** As {@link #solve}, from any circulation over speed, one a strip. */
    LiftingLineSolution solveFrom(LiftingLineProblem problem, Optional<double[]> start) {
        if (problem.curves().size() != grid.size()) {
            throw new IllegalArgumentException(problem.curves().size() + " curves for " + grid.size() + " strips");
        }
        boolean alike = problem.isSymmetric() && (start.isEmpty() || isSymmetric(start.get()));
        NewtonIteration iteration = alike ? half : whole();
        // Factors are kept along a chain of solutions only: what is solved never depends on what was asked before it.
        if (lastUsed.isEmpty() || lastUsed.get() != iteration) {
            iteration.forget();
        }
        iteration.equations().take(problem);
        if (start.isPresent()) {
            iteration.start(start.get());
        } else {
            iteration.startLinear();
        }
        SolverStatus status = iteration.run(settings);
        LiftingLineSolution solution = solution(problem, iteration, status);
        last = Optional.of(solution);
        lastUsed = Optional.of(iteration);
        return solution;
    }

    /** The workspace for both sides different, made when it is first needed. */
    private NewtonIteration whole() {
        NewtonIteration made = whole.orElseGet(() -> new NewtonIteration(new StripEquations(influence, false)));
        whole = Optional.of(made);
        return made;
    }

    private static boolean isSymmetric(double[] g) {
        for (int i = 0; i < g.length / 2; i++) {
            if (g[i] != g[g.length - 1 - i]) {
                return false;
            }
        }
        return true;
    }

    private LiftingLineSolution solution(LiftingLineProblem problem, NewtonIteration iteration, SolverStatus status) {
        StripEquations equations = iteration.equations();
        int n = grid.size();
        double[] circulation = new double[n];
        double[] angles = new double[n];
        double[] speeds = new double[n];
        for (int i = 0; i < equations.size(); i++) {
            int strip = equations.offset() + i;
            int twin = equations.offset() > 0 ? grid.mirror(strip) : strip;
            circulation[strip] = iteration.circulation(i);
            angles[strip] = equations.angle(i);
            speeds[strip] = equations.speed(i);
            circulation[twin] = circulation[strip];
            angles[twin] = angles[strip];
            speeds[twin] = speeds[strip];
        }
        double[] wake = influence.wakeAngles(circulation);
        for (int i = equations.offset(); i < n; i++) {
            wake[i] /= speeds[i];
            if (equations.offset() > 0) {
                wake[grid.mirror(i)] = wake[i];
            }
        }
        return new LiftingLineSolution(
                grid, problem, status, equations.offset() > 0, circulation, angles, wake, speeds);
    }
}
