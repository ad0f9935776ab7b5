package throwline.liftingline;

/**
 * Accuracy and length of a solve.
 *
 * @param tolerance largest residual in section lift coefficient that counts as solved
 * @param mostIterations steps permitted, a block of sweeps counting as one; converging on the last counts as converged
 */
public record SolverSettings(double tolerance, int mostIterations) {

    /** Residual 1e-10 within 60 steps. */
    public static SolverSettings standard() {
        return new SolverSettings(1e-10, 60);
    }
}
