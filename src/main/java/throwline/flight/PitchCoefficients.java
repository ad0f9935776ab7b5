package throwline.flight;

/**
 * Coefficients of the whole model in pitch while its surfaces move from one set-up to another, on area and mean chord.
 * Angles in rad; {@code share} is how far the surfaces are, 0 to 1; {@code pitch} is the pitch rate over the speed, rad/m;
 * {@code turning} the change of the angle of attack over time over the speed, rad/m.
 */
interface PitchCoefficients {

    double lift(double share, double alpha, double elevator, double pitch);

    double drag(double share, double alpha);

    /** About the balance point, nose up positive. */
    double moment(double share, double alpha, double elevator, double pitch, double turning);
}
