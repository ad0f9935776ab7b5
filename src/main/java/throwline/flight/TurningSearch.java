package throwline.flight;

import throwline.model.Model;
import throwline.power.BladeElements;
import throwline.power.Drive;
import throwline.power.OperatingPoint;
import throwline.power.Slipstream;

/**
 * Torque, swirl at the fin and blades that meet the air at an angle, as moments about a model (methods manual 20.16). The
 * model file knows no fin: a usual one is half as large as the tail.
 */
final class TurningSearch {

    /** Share of the torque, and of the swirl at the fin, that is left: wing and body take the rest out (PRACTICE). */
    private static final double LEFT = 0.5;

    /** Area of a fin over that of the tail (PRACTICE). */
    private static final double FIN_AREA = 0.5;

    /** Height over mean chord of a fin, and its lift slope, 1/rad (Helmbold's law with an image at the tail, PRACTICE). */
    private static final double FIN_ASPECT = 1.5;

    private static final double FIN_SLOPE = 2.6;

    /** Lift of a rudder over that of the whole fin at the same angle, and of the jet's added pressure at the tail (PRACTICE). */
    private static final double RUDDER = 0.6;

    private static final double AT_TAIL = 0.6;

    private final Airframe airframe;
    private final Drive drive;

    TurningSearch(Airframe airframe, Drive drive) {
        this.airframe = airframe;
        this.drive = drive;
    }

    /**
     * The moments of steady flight.
     *
     * @param point with the motor running
     */
    Turning at(PoweredPoint point) {
        Model model = airframe.model();
        OperatingPoint state = point.drive();
        double density = airframe.air().density();
        Slipstream jet = Slipstream.of(state, drive.blades().diameter() / 2, density);
        double arm =
                model.tail().arm() + model.tail().chord() / 4 - model.wing().chordAt(0) / 4;
        double behind = model.body().nose() + model.tail().arm() + model.tail().chord() / 4;
        double fin = FIN_AREA * model.tail().area();
        double inside = Math.min(1, jet.radiusAt(behind) / Math.sqrt(FIN_ASPECT * fin));
        double faster = Math.pow(jet.speedAt(behind) / point.speed(), 2) - 1;
        double pressure = airframe.air().dynamicPressure(point.speed()) * (1 + inside * AT_TAIL * faster);
        double slope = FIN_SLOPE * pressure * fin * arm;
        double angle =
                point.attitude().alpha() - model.propeller().orElseThrow().downThrust();
        BladeElements.Oblique blades = drive.blades().oblique(point.speed(), state.turns(), density);
        double yawing = blades.yawing() * angle + LEFT * inside * jet.swirlAt(behind) * slope;
        return new Turning(LEFT * state.torque(), yawing / (RUDDER * slope));
    }
}
