package throwline.report;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import throwline.flight.PathPoint;
import throwline.model.SetUp;
import throwline.study.FlightQuantity;
import throwline.study.FlyResult.LevelPoint;
import throwline.study.Headline;
import throwline.study.Headline.Basis;
import throwline.study.OneSided;
import throwline.study.OneSided.Stays;
import throwline.study.UnderPower;

/** Fixed numbers with the motor running. Every one is invented. */
final class PowerFixture {

    private static final double DEG = Math.PI / 180;

    private PowerFixture() {}

    /**
     * The numbers of a set-up.
     *
     * @param stall speed, m/s
     * @param flap degrees down
     */
    static Map<FlightQuantity, Headline> numbers(double stall, double flap) {
        Map<FlightQuantity, Headline> numbers = new EnumMap<>(FlightQuantity.class);
        numbers.put(FlightQuantity.TAKE_OFF_RUN, banded(12 - flap / 12, 0.3));
        numbers.put(FlightQuantity.TAKE_OFF_DISTANCE, banded(38 + flap / 4, 0.3));
        numbers.put(FlightQuantity.CLIMB_RATE, banded(4.2 - flap / 25, 0.25));
        numbers.put(FlightQuantity.CLIMB_ANGLE, banded((20 - flap / 6) * DEG, 0.25));
        numbers.put(FlightQuantity.CLIMB_SPEED, banded(1.3 * stall, 0.12));
        numbers.put(FlightQuantity.CLIMB_HEIGHT, banded(40 - flap / 3, 0.3));
        numbers.put(FlightQuantity.GO_AROUND, banded((16 - flap / 5) * DEG, 0.3));
        numbers.put(FlightQuantity.GO_AROUND_LOSS, banded(0.9 + flap / 30, 0.4));
        numbers.put(FlightQuantity.THROTTLE_TRIM, banded(2 * DEG, 0.6));
        numbers.put(FlightQuantity.THROTTLE_AILERON, banded((2 + flap / 40) * DEG, 0.4));
        numbers.put(FlightQuantity.THROTTLE_RUDDER, banded((3 + flap / 40) * DEG, 0.4));
        numbers.put(FlightQuantity.LEVEL_THROTTLE, banded(0.5 + flap / 200, 0.12));
        numbers.put(FlightQuantity.TOP_SPEED, banded(21 - flap / 8, 0.08));
        double top = 9 - flap / 5;
        numbers.put(
                FlightQuantity.LOOP_TOP_SPEED,
                top < 0
                        ? new Headline.Unknown("why.not-over")
                        : new Headline.Known(top, flap > 20 ? 0 : top / 2, 1.3 * top, Basis.ASSUMED));
        numbers.put(FlightQuantity.CRUISE_SPEED, banded(15 - flap / 15, 0.08));
        numbers.put(FlightQuantity.CRUISE_CURRENT, banded(7 + flap / 20, 0.25));
        numbers.put(FlightQuantity.CRUISE_TIME, banded(1500 - 10 * flap, 0.25));
        numbers.put(FlightQuantity.CRUISE_ELEVATOR, banded(1.5 * DEG, 0.4));
        numbers.put(FlightQuantity.SLOWEST_HALF_THROTTLE, banded(0.96 * stall, 0.03));
        numbers.put(FlightQuantity.SLOWEST_FULL_THROTTLE, banded(0.88 * stall, 0.05));
        return numbers;
    }

    /** What charts show of a set-up: the further its flaps, the less it climbs and the slower it is. */
    static UnderPower seen(double stall, double flap) {
        double slope = Math.tan((16 - flap / 5) * DEG);
        List<PathPoint> away = List.of(
                new PathPoint(0, 0), new PathPoint(12, 0), new PathPoint(20, 1), new PathPoint(20 + 7 / slope, 8));
        List<PathPoint> again = IntStream.range(0, 20)
                .mapToObj(k -> new PathPoint(
                        4 * k,
                        -(0.9 + flap / 30) * Math.sin(Math.min(k / 3.0, Math.PI)) + slope * 4 * Math.max(0, k - 9)))
                .toList();
        List<LevelPoint> level = IntStream.range(0, 6)
                .mapToObj(k -> {
                    double speed = 1.1 * stall + k * (10 - flap / 10) / 5;
                    return new LevelPoint(speed, 0.5, 3 + flap / 15 + 0.02 * speed * speed, 18 - 0.5 * speed, 9, 1200);
                })
                .toList();
        return new UnderPower(away, again, level);
    }

    /** What the roll stick does against one flap that stays: more of it, the further they are down. */
    static List<OneSided> oneSided(SetUp setUp) {
        double flap = setUp.deflection("flaps") / DEG;
        if (flap == 0) {
            return List.of();
        }
        Optional<Double> slowest = flap > 50 ? Optional.empty() : Optional.of(9 + flap / 20);
        return List.of(
                new OneSided("flaps", Stays.BACK, "low rates", banded(flap / 40, 0.3), slowest),
                new OneSided("flaps", Stays.OUT, "low rates", banded(flap / 44, 0.3), slowest));
    }

    private static Headline.Known banded(double value, double share) {
        return new Headline.Known(value, (1 - share) * value, (1 + share) * value, Basis.ASSUMED);
    }
}
