package throwline.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import throwline.flight.PoweredFlight;
import throwline.flight.PoweredPoint;
import throwline.flight.Stall;
import throwline.model.Battery;
import throwline.model.Pack;
import throwline.power.Drive;
import throwline.study.FlyResult.LevelPoint;

/** Level flights of a set-up with the motor running, from just above the stall to the fastest. */
final class LevelFlights {

    /** The slowest of them over the stall speed. */
    private static final double SLOWEST = 1.2;

    private static final int SPEEDS = 9;

    private final PoweredFlight powered;
    private final Pack pack;
    private final Drive drive;

    /**
     * @param powered the model with its motor running
     * @param pack with this battery
     * @param drive its drive
     */
    LevelFlights(PoweredFlight powered, Pack pack, Drive drive) {
        this.powered = powered;
        this.pack = pack;
        this.drive = drive;
    }

    /** They, slowest first; none where full throttle holds nothing level. */
    List<LevelPoint> all(Stall stall, Optional<PoweredPoint> fastest) {
        double from = SLOWEST * stall.speed();
        List<LevelPoint> points = new ArrayList<>();
        fastest.filter(point -> point.speed() > from).ifPresent(top -> {
            List<Double> speeds = IntStream.range(0, SPEEDS - 1)
                    .mapToObj(k -> from + k * (top.speed() - from) / (SPEEDS - 1))
                    .toList();
            powered.levels(speeds).forEach(point -> points.add(point(point)));
            points.add(point(top));
        });
        return points;
    }

    private LevelPoint point(PoweredPoint level) {
        double full =
                drive.at(level.speed(), 1, powered.airframe().air().density()).thrust();
        double current = level.drive().current();
        double charge = pack.battery().orElseThrow().capacity();
        return new LevelPoint(
                level.speed(),
                level.drive().throttle(),
                level.drive().thrust(),
                full,
                current,
                Battery.USABLE * charge / current);
    }
}
