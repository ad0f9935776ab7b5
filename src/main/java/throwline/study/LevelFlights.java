package throwline.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import throwline.flight.Flight;
import throwline.flight.PoweredFlight;
import throwline.flight.PoweredPoint;
import throwline.flight.Stall;
import throwline.model.Battery;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.power.Drive;
import throwline.power.FittedDrive;
import throwline.study.FlyResult.LevelPoint;

/** Level flights of a set-up with the motor running, from just above the stall to the fastest. */
final class LevelFlights {

    /** The slowest of them over the stall speed: no slower climb is looked for either (methods manual 20.13). */
    private static final double SLOWEST = 1.1;

    private static final int SPEEDS = 9;

    private final Flight flight;
    private final SetUp setUp;
    private final Pack pack;

    LevelFlights(Flight flight, SetUp setUp, Pack pack) {
        this.flight = flight;
        this.setUp = setUp;
        this.pack = pack;
    }

    /** They, slowest first; none where there is no motor or full throttle holds nothing level. */
    List<LevelPoint> all(Stall stall) {
        Optional<FittedDrive> drive = flight.airframe().drive(pack);
        return drive.map(fitted -> all(stall, fitted.drive())).orElse(List.of());
    }

    private List<LevelPoint> all(Stall stall, Drive drive) {
        PoweredFlight powered = new PoweredFlight(flight.airframe(), setUp, pack, drive, stall);
        double from = SLOWEST * stall.speed();
        Optional<PoweredPoint> fastest = powered.fastest(1).filter(point -> point.speed() > from);
        List<LevelPoint> points = new ArrayList<>();
        fastest.ifPresent(top -> {
            IntStream.range(0, SPEEDS - 1)
                    .mapToDouble(k -> from + k * (top.speed() - from) / (SPEEDS - 1))
                    .forEach(speed -> powered.level(speed).ifPresent(point -> points.add(point(point, drive))));
            points.add(point(top, drive));
        });
        return points;
    }

    private LevelPoint point(PoweredPoint level, Drive drive) {
        double full =
                drive.at(level.speed(), 1, flight.airframe().air().density()).thrust();
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
