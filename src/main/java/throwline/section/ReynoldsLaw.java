package throwline.section;

import java.util.stream.DoubleStream;
import throwline.numerics.Interpolation;

/**
 * Change of a curve with Reynolds number where it was not measured. Fitted to the measured sets between 60 000 and 500
 * 000 (computed; the same figures for every airfoil of a kind, none for one airfoil; methods manual 3.6).
 *
 * @param maxLiftPerLog maximum lift per ln of Reynolds number
 * @param dragExponent drag goes as Reynolds number to minus this, up to 500 000
 * @param zeroLiftPerLog zero-lift angle per ln of Reynolds number below 200 000, rad, negative for camber
 */
record ReynoldsLaw(double maxLiftPerLog, double dragExponent, double zeroLiftPerLog) {

    /** Beyond this Reynolds number drag falls more slowly. */
    private static final double TURBULENT = 500_000;

    /** Exponent above it: between laminar 0.5 and turbulent 0.2 (from memory). */
    private static final double TURBULENT_EXPONENT = 0.25;

    /** Above this Reynolds number the zero-lift angle stays. */
    private static final double ZERO_LIFT_STEADY = 200_000;

    /** The law for airfoils of this thickness and camber. */
    static ReynoldsLaw of(Airfoil airfoil) {
        double thick = Interpolation.clamp((airfoil.thickness() - 0.10) / 0.04, 0, 1);
        double exponent = 0.35 + 3 * (airfoil.thickness() - 0.095) + 5 * airfoil.camber();
        return new ReynoldsLaw(
                0.04 + 0.05 * thick,
                Interpolation.clamp(exponent, 0.33, 0.65),
                -Math.toRadians(0.36) * 100 * airfoil.camber());
    }

    /** Reynolds numbers at which the law bends. */
    static DoubleStream bends() {
        return DoubleStream.of(ZERO_LIFT_STEADY, TURBULENT);
    }

    /** Rise of maximum lift from one Reynolds number to another. */
    double maxLiftRise(double from, double to) {
        return maxLiftPerLog * Math.log(to / from);
    }

    /** Change of the natural logarithm of drag. */
    double logDragRise(double from, double to) {
        double below = Math.log(Math.min(to, TURBULENT) / Math.min(from, TURBULENT));
        double above = Math.log(Math.max(to, TURBULENT) / Math.max(from, TURBULENT));
        return -dragExponent * below - TURBULENT_EXPONENT * above;
    }

    /** Change of the zero-lift angle, rad. */
    double zeroLiftShift(double from, double to) {
        return zeroLiftPerLog * Math.log(Math.min(to, ZERO_LIFT_STEADY) / Math.min(from, ZERO_LIFT_STEADY));
    }
}
