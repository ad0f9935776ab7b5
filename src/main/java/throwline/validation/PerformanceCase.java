package throwline.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.apache.commons.math3.analysis.solvers.BisectionSolver;
import throwline.air.Air;
import throwline.flight.SteadyDescent;
import throwline.flight.TakeOff;
import throwline.flight.TakeOffRun;

/**
 * Full-size performance with power against printed numbers: the balance of a climb, the sum of a ground run and the way over
 * an obstacle, each with what the source gives; every row is an aircraft and a quantity. Drag is a parabola, power times
 * efficiency stays.
 */
final class PerformanceCase implements CaseKind {

    private static final int PASSES = 20;

    /** Speeds at which the best climb is looked for, m/s. */
    private static final double SLOWEST = 15;

    private static final double FASTEST = 150;
    private static final double STEP = 0.05;
    private static final double TOLERANCE = 1e-4;

    @Override
    public CaseResult run(CaseFile file) throws UnreadableCase {
        List<Check> checks = new ArrayList<>();
        for (CaseRow row : file.rows()) {
            checks.add(Check.of(row, read(row)));
        }
        return CaseResult.of(file, checks, List.of());
    }

    private static double read(CaseRow row) throws UnreadableCase {
        return switch (row.text("quantity")) {
            case "best climb" -> Polar.of(row).bestClimb();
            case "climb" -> Polar.of(row).climb(row.number("speed [m/s]"));
            case "fastest level flight" -> Polar.of(row).fastest();
            case "ground run" -> groundRun(row, row.number("friction", 0));
            case "ground run, more friction over less" ->
                groundRun(row, row.number("more friction")) / groundRun(row, row.number("friction"));
            case "way over an obstacle" -> overObstacle(row);
            default -> throw row.wrong("quantity", "case.quantity");
        };
    }

    /** With the mass of one kilogram a force is a gain of speed; the wing carries a share of the weight at lift-off. */
    private static double groundRun(CaseRow row, double friction) throws UnreadableCase {
        double speed = row.number("lift-off [m/s]");
        double[] pull = {row.number("gain at rest [m/s2]"), row.number("gain at lift-off [m/s2]")};
        double[] lift = {0, row.number("carried at lift-off [N/kg]", 0)};
        return new TakeOffRun(1, friction, new double[] {0, speed}, pull, lift)
                .fly(speed, 0, 0)
                .run();
    }

    private static double overObstacle(CaseRow row) throws UnreadableCase {
        double climb = Math.asin(row.number("climb [m/s]") / row.number("speed [m/s]"));
        return new TakeOff(TakeOff.Outcome.FLIES, row.number("lift-off [m/s]"), row.number("run [m]"), 0, 0, climb)
                .distance(row.number("obstacle [m]"));
    }

    /**
     * An aircraft with a parabola of drag.
     *
     * @param least drag coefficient without lift
     * @param bySquare drag coefficient over lift coefficient squared
     * @param power at the propeller, W
     */
    private record Polar(SteadyDescent balance, double least, double bySquare, double power) {

        static Polar of(CaseRow row) throws UnreadableCase {
            double area = row.number("area [m2]");
            double span = row.number("span [m]");
            return new Polar(
                    new SteadyDescent(row.number("weight [N]"), Air.SEA_DENSITY, area),
                    row.number("drag without lift"),
                    area / (Math.PI * span * span * row.number("span efficiency")),
                    row.number("power [W]") * row.number("propeller efficiency"));
        }

        /** Height gained a second at a speed: the balance of a descent, pull counted against drag. */
        double climb(double speed) {
            double weight = balance.resultantFor(speed);
            double pull = power / (speed * balance.weight()) * weight;
            double path = 0;
            for (int k = 0; k < PASSES; k++) {
                double lift = weight * Math.cos(path);
                path = -SteadyDescent.angle(lift, least + bySquare * lift * lift - pull);
            }
            return speed * Math.sin(path);
        }

        double bestClimb() {
            return DoubleStream.iterate(SLOWEST, speed -> speed < FASTEST, speed -> speed + STEP)
                    .map(this::climb)
                    .max()
                    .orElseThrow();
        }

        double fastest() {
            double best = DoubleStream.iterate(SLOWEST, speed -> speed < FASTEST, speed -> speed + STEP)
                    .filter(speed -> climb(speed) > 0)
                    .max()
                    .orElse(Double.NaN);
            return new BisectionSolver(TOLERANCE).solve(100, this::climb, best, best + 2 * STEP);
        }
    }
}
