package throwline.flight;

import java.util.Optional;
import org.apache.commons.math3.analysis.UnivariateFunction;
import throwline.air.Gravity;
import throwline.model.Pack;
import throwline.power.Drive;

/** Level flights at several speeds, each throttle looked for from those before. */
final class LevelSearch {

    /** Level flight is found to this path angle, rad. */
    private static final double LEVEL = 2e-4;

    private static final int MOST_PASSES = 12;
    private static final double LEAST_THROTTLE = 0.05;
    private static final double THROTTLE_TOLERANCE = 1e-5;

    /** Thrust that the drag of the parts in the jet takes again. */
    private static final double JET_DRAG = 0.15;

    private final Trimmer closed;
    private final Pack pack;
    private final Drive drive;
    private final Attitude atStall;
    private final double weight;
    private Optional<PoweredPoint> last = Optional.empty();
    private Optional<PoweredPoint> before = Optional.empty();

    /**
     * @param closed the model with its throttle closed
     * @param pack with this battery
     * @param drive its drive
     * @param atStall its stall with the throttle closed
     */
    LevelSearch(Trimmer closed, Pack pack, Drive drive, Attitude atStall) {
        this.closed = closed;
        this.pack = pack;
        this.drive = drive;
        this.atStall = atStall;
        weight = pack.mass() * Gravity.STANDARD;
    }

    /** Level flight at a speed, m/s; empty where full throttle does not hold it. */
    Optional<PoweredPoint> at(double speed) {
        Optional<Start> start = last.map(point -> new Start(closed, point.attitude(), expected(point, speed)))
                .or(() -> gliding(speed));
        Optional<PoweredPoint> found = start.flatMap(from -> at(speed, from));
        if (found.isPresent()) {
            before = last;
            last = found;
        }
        return found;
    }

    /** Where a search begins: what was solved last, and the thrust that is expected, N. */
    private record Start(Trimmer trimmer, Attitude attitude, double thrust) {}

    private Optional<Start> gliding(double speed) {
        return new DescentSolver(closed, pack, atStall)
                .at(speed)
                .steady()
                .map(glide -> new Start(closed, glide, weight * Math.sin(glide.descentAngle()) * (1 + JET_DRAG)));
    }

    /** Thrust expected on the line through the last two flights, N. */
    private double expected(PoweredPoint point, double speed) {
        double thrust = point.drive().thrust();
        return before.map(earlier -> thrust
                        + (thrust - earlier.drive().thrust())
                                * (speed - point.speed())
                                / (point.speed() - earlier.speed()))
                .orElse(thrust);
    }

    private Optional<PoweredPoint> at(double speed, Start start) {
        double wanted = start.thrust;
        Trimmer trimmer = start.trimmer;
        Attitude from = start.attitude;
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            double throttle = throttleFor(speed, wanted);
            trimmer = trimmer.with(new Throttle(drive, throttle));
            Optional<PoweredPoint> point =
                    new SteadyPower(trimmer, pack, atStall).from(from).at(speed);
            if (point.isEmpty()) {
                return Optional.empty();
            }
            double climb = point.get().climbAngle();
            if (Math.abs(climb) < LEVEL) {
                return point;
            }
            if (throttle >= 1 && climb < 0) {
                return Optional.empty();
            }
            from = point.get().attitude();
            wanted = point.get().drive().thrust() - weight * Math.sin(climb) * (1 + JET_DRAG);
        }
        return Optional.empty();
    }

    /** Throttle that gives a thrust at a speed, at most full. */
    private double throttleFor(double speed, double thrust) {
        UnivariateFunction missing =
                d -> drive.at(speed, d, closed.airframe().air().density()).thrust() - thrust;
        if (missing.value(1) <= 0) {
            return 1;
        }
        return new WarmStartSecant(THROTTLE_TOLERANCE, 0.6, weightOf(thrust))
                .solve(missing, LEAST_THROTTLE, 1)
                .orElse(1);
    }

    private static double weightOf(double thrust) {
        return Math.max(1, 3 * thrust);
    }
}
