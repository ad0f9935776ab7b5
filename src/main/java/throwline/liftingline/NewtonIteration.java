package throwline.liftingline;

/**
 * Solves the strip equations: whole Newton steps as long as they lower the largest residual in section lift below the
 * least one seen so far; where one does not, the circulation stays and a block of sweeps draws it nearer to the answer,
 * whatever the curves look like (the package's notes say why each sweep does). Halving Newton's step instead came to
 * rest for dozens of steps where strips change sides between attached and stalled.
 *
 * <p>The factors of a step are kept and tried first on the next one, and on the next problem: as long as they lower the
 * residual well, nothing is taken apart again. A kept step is never needed for the answer.
 *
 * <p>Holds its workspace: one thread at a time.
 */
final class NewtonIteration {

    /** A step must lower the least residual by this share at least (the usual value of line searches; from memory). */
    private static final double SUFFICIENT = 1e-4;

    /** A kept step that leaves less than this of the residual is taken; a new one costs six to ten times as much. */
    private static final double WORTH_TAKING = 0.2;

    /** A step that leaves less than this lets its factors be kept once more. */
    private static final double WORTH_KEEPING = 0.05;

    /**
     * Sweeps in the first block of a solve, which is often enough. With 4 a step of one degree took eleven steps on the worst
     * of a thousand wings.
     */
    private static final int FIRST_SWEEPS = 8;

    /** Sweeps in a later block: as much work as one to two whole steps. With 4 the worst wing took three times the steps. */
    private static final int MOST_SWEEPS = 16;

    /**
     * Share of the least residual that the first block leaves on a strip at its turn, which saves some 30 % of its time. Later
     * blocks leave nothing: only then does every sweep draw nearer.
     */
    private static final double LEFT_AT_FIRST = 0.03;

    private final StripEquations equations;
    private final DominantSystem system;
    private final double[] g;
    private final double[] trial;
    private final double[] step;
    private double reached;
    private boolean kept;
    private int sweeps;

    NewtonIteration(StripEquations equations) {
        this.equations = equations;
        int n = equations.size();
        system = new DominantSystem(n);
        g = new double[n];
        trial = new double[n];
        step = new double[n];
    }

    /** The equations. */
    StripEquations equations() {
        return equations;
    }

    /** Circulation over speed of an unknown, m. */
    double circulation(int i) {
        return g[i];
    }

    /** Drops the factors kept from earlier problems. */
    void forget() {
        kept = false;
        equations.forget();
    }

    /** Starts from a circulation over speed of all strips. */
    void start(double[] circulation) {
        System.arraycopy(circulation, equations.offset(), g, 0, g.length);
    }

    /** Starts from the linear solution of the problem taken. */
    void startLinear() {
        equations.linear(system, g);
        system.factor();
        system.solve(g);
        kept = true;
    }

    /**
     * Solves the problem taken.
     *
     * @param settings how exactly and how long; a block of sweeps counts as one step
     * @return how it ended
     */
    SolverStatus run(SolverSettings settings) {
        double here = equations.evaluate(g);
        double least = here;
        int steps = 0;
        sweeps = FIRST_SWEEPS;
        while (here > settings.tolerance() && steps < settings.mostIterations()) {
            steps++;
            boolean taken = (kept && keptStep(least)) || wholeStep(least);
            if (!taken && steps < settings.mostIterations()) {
                steps++;
                sweep(sweeps == FIRST_SWEEPS ? LEFT_AT_FIRST * least : settings.tolerance() / 10);
            }
            here = taken ? reached : equations.evaluate(g);
            least = Math.min(least, here);
        }
        return new SolverStatus(here <= settings.tolerance(), here, steps, equations.worstStrip());
    }

    /** A step with kept factors, taken where it helps much; else the readings stand where they stood. */
    private boolean keptStep(double least) {
        equations.side(step);
        system.solve(step);
        attempt();
        kept = reached < WORTH_KEEPING * least;
        if (reached < WORTH_TAKING * least) {
            take();
            return true;
        }
        equations.evaluate(g);
        return false;
    }

    /** Newton's step, taken where it lowers the residual below the least so far. */
    private boolean wholeStep(double least) {
        equations.linearise(system, step);
        system.factor();
        system.solve(step);
        attempt();
        kept = reached < WORTH_KEEPING * least;
        if (reached < (1 - SUFFICIENT) * least) {
            take();
            return true;
        }
        return false;
    }

    /** Forwards and backwards by turns, each strip to this residual at its turn. */
    private void sweep(double tolerance) {
        for (int k = 0; k < sweeps; k++) {
            equations.sweep(g, k % 2 == 0, tolerance);
        }
        sweeps = Math.min(2 * sweeps, MOST_SWEEPS);
    }

    private void attempt() {
        for (int i = 0; i < g.length; i++) {
            trial[i] = g[i] + step[i];
        }
        reached = equations.evaluate(trial);
    }

    private void take() {
        System.arraycopy(trial, 0, g, 0, g.length);
    }
}
