package throwline.study;

import throwline.air.Gravity;
import throwline.flight.PoweredPoint;
import throwline.model.Pack;
import throwline.power.DriveBasis;
import throwline.power.FittedDrive;

/** Bands of climbs: a share of pull over weight, which is what is known of a drive (methods manual 20.13). */
final class ClimbBands {

    private final Bands bands;
    private final boolean bench;
    private final double weight;

    ClimbBands(Bands bands, FittedDrive drive, Pack pack) {
        this.bands = bands;
        bench = drive.basis() == DriveBasis.BENCH || drive.basis() == DriveBasis.THRUST;
        weight = pack.mass() * Gravity.STANDARD;
    }

    /** Height gained a second, m/s. */
    Headline.Known rate(PoweredPoint point) {
        return rate(point.speed(), point.climbAngle(), point.drive().thrust());
    }

    /** Path above the horizon, rad. */
    Headline.Known angle(PoweredPoint point) {
        return angle(point.climbAngle(), point.drive().thrust());
    }

    /** Height gained a second, m/s, at a speed, m/s, on a path, rad, with a pull, N. */
    Headline.Known rate(double speed, double angle, double thrust) {
        return pulled(speed * Math.sin(angle), speed * thrust / weight);
    }

    /** Path above the horizon, rad, with a pull, N. */
    Headline.Known angle(double angle, double thrust) {
        return angle(pulled(angle, thrust / weight));
    }

    /** An angle that nothing is steeper than. */
    static Headline.Known angle(Headline.Known known) {
        double most = Math.PI / 2;
        return new Headline.Known(
                Math.min(most, known.value()),
                Math.min(most, known.low()),
                Math.min(most, known.high()),
                known.basis(),
                known.shared());
    }

    /** Share of the pull that is not known. */
    double shareOfPull() {
        return bands.around(bench ? "climb.bench" : "climb", 1).high() - 1;
    }

    /** A number that goes with pull over weight. */
    Headline.Known pulled(double value, double pull) {
        double half = shareOfPull() * Math.abs(pull);
        Headline.Known plain = bands.around("climb.bench", value);
        return new Headline.Known(value, value - half, value + half, plain.basis(), plain.shared());
    }

    /** Current and all that follows from it. */
    Headline.Known current(double value) {
        return bands.around(bench ? "current.bench" : "current", value);
    }

    /** Airspeed of a climb, m/s. */
    Headline.Known speed(double value) {
        return bands.around("climb.bench", value);
    }
}
