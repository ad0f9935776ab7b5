package throwline.liftingline;

/**
 * Way in which a solve ended.
 *
 * @param converged true where the residual is within the tolerance
 * @param residual largest residual in section lift coefficient
 * @param iterations steps taken, a block of sweeps counting as one
 * @param strip strip with the largest residual
 */
public record SolverStatus(boolean converged, double residual, int iterations, int strip) {}
