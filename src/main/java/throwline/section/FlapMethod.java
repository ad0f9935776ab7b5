package throwline.section;

import java.util.stream.DoubleStream;
import throwline.model.Hinge;
import throwline.numerics.Interpolation;

/**
 * Effect of a plain hinged surface at model Reynolds numbers where none was measured: thin-airfoil effectiveness times
 * handbook and measured reductions. Deflection in radians, trailing edge down positive, both signs; chord fraction 0.08
 * to 0.5. Immutable.
 *
 * <p>Accuracy: maximum lift within 20 %, drag of large deflections within 30 % (no section with a plain flap beyond 6
 * degrees was measured below a Reynolds number of a million).
 */
final class FlapMethod {

    private static final double DEGREE = Math.toRadians(1);

    private final FlapTables tables;

    FlapMethod(FlapTables tables) {
        this.tables = tables;
    }

    /**
     * The effect of a deflection.
     *
     * @param deflection rad
     * @param chordFraction chord behind the hinge over the chord
     * @param airfoil the section; its thickness and camber count
     * @param reynolds Reynolds number
     * @param hinge how the hinge line is closed
     */
    FlapEffect effect(double deflection, double chordFraction, Airfoil airfoil, double reynolds, Hinge hinge) {
        if (deflection == 0) {
            return FlapEffect.NONE;
        }
        double effective = tables.effectiveDeflection(deflection, chordFraction)
                * FlapEfficiency.of(airfoil.thickness(), airfoil.camber(), reynolds)
                * HingeGap.share(hinge);
        return new FlapEffect(
                ThinAirfoil.effectiveness(chordFraction) * effective,
                tables.maxLiftRise(deflection, chordFraction, airfoil.thickness()) * maxLiftByReynolds(reynolds),
                separatedDrag(deflection, chordFraction) + hingeLineDrag(deflection),
                ThinAirfoil.momentSlope(chordFraction) * effective * momentShare(deflection));
    }

    /** Reynolds numbers at which one of the laws below bends. */
    static DoubleStream bends() {
        return DoubleStream.concat(FlapEfficiency.bends(), DoubleStream.of(100_000, 150_000, 1_000_000, 1_500_000));
    }

    /**
     * Share of the handbook's maximum lift: 0.70 up to 100 000, 0.85 from 150 000 to a million (E214C and a Clark Y wing
     * with flap), 1 from 1.5 million on (practice).
     */
    static double maxLiftByReynolds(double reynolds) {
        if (reynolds >= 1_000_000) {
            return between(reynolds, 1_000_000, 0.85, 1_500_000, 1);
        }
        return between(reynolds, 100_000, 0.70, 150_000, 0.85);
    }

    private static double between(double reynolds, double low, double atLow, double high, double atHigh) {
        double share = Math.log(reynolds / low) / Math.log(high / low);
        return Interpolation.between(atLow, atHigh, Interpolation.clamp(share, 0, 1));
    }

    /**
     * Drag of separated flow on the surface, 1.7 E^1.38 sin^2 d (performance textbooks, from memory), raised between 10
     * and 45 degrees because it lies 1.1 to 2 times below the increments of NACA TN 2080 there (read), nothing below 6
     * degrees: measured on one airfoil alone (E214C polars), so the band of drag by the method is 30 % (methods manual 4.6).
     * Beyond 60 degrees it goes straight up by a fifth at a right angle, so that a quarter of the chord square to the flow has
     * a drag of 1.2 on its own area, as hinged plates on a wing (SAE 710387, computed from read) and a plate on a wall have.
     */
    static double separatedDrag(double deflection, double chordFraction) {
        double size = Math.abs(deflection);
        double sine = Math.sin(size);
        double raised = 1 + Math.max(0, (45 * DEGREE - size) / (35 * DEGREE));
        double begun = Ramp.smooth((size - 6 * DEGREE) / (4 * DEGREE));
        double steep = 1 + 0.2 * Math.max(0, (size - 60 * DEGREE) / (30 * DEGREE));
        return 1.7 * Math.pow(chordFraction, 1.38) * sine * sine * raised * begun * steep;
    }

    /** A bent contour costs 0.001 from about 3 degrees on (E214C polars alone, computed; methods manual 4.6). */
    private static double hingeLineDrag(double deflection) {
        return 0.001 * Ramp.smooth(Math.abs(deflection) / (3 * DEGREE));
    }

    /** Moment per lift falls by a quarter from 20 to 60 degrees (NACA TN 2080, computed from read data). */
    private static double momentShare(double deflection) {
        double left = (60 * DEGREE - Math.abs(deflection)) / (40 * DEGREE);
        return 0.75 + 0.25 * Interpolation.clamp(left, 0, 1);
    }
}
