package throwline.report;

import throwline.model.Elevator;
import throwline.model.Model;
import throwline.model.Surface;
import throwline.study.EdgeThrow;
import throwline.units.Dimension;
import throwline.units.Key;
import throwline.units.Measure;

/**
 * A deflection as it is set on the bench and in the transmitter.
 *
 * @param surface its name
 * @param angle rad, trailing edge down positive
 * @param distance straight distance at the trailing edge, at the surface's root end, m, with the sign of the angle
 * @param share of the travel that way, not negative
 */
public record BenchThrow(
        @Key("name") String surface,
        @Measure(Dimension.ANGLE) double angle,
        double distance,
        @Key("travelShare") double share) {

    /** Of a surface of the wing. */
    public static BenchThrow of(Model model, Surface surface, double angle) {
        double chord = model.wing().throwChord(surface);
        return of(surface.name(), angle, chord, surface.travelUp(), surface.travelDown());
    }

    /** Of the elevator, under the name given. */
    public static BenchThrow ofElevator(Model model, String name, double angle) {
        Elevator elevator = model.tail().elevator();
        double chord = model.tail().throwChord();
        return of(name, angle, chord, elevator.travelUp(), elevator.travelDown());
    }

    private static BenchThrow of(String name, double angle, double chord, double up, double down) {
        double travel = angle < 0 ? up : down;
        double share = angle == 0 ? 0 : travel > 0 ? Math.abs(angle) / travel : Double.POSITIVE_INFINITY;
        return new BenchThrow(name, angle, new EdgeThrow(chord).distance(angle), share);
    }
}
