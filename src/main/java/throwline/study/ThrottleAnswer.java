package throwline.study;

import java.util.Optional;
import throwline.flight.Attitude;
import throwline.flight.Flight;
import throwline.flight.PoweredFlight;
import throwline.flight.Stall;
import throwline.model.Battery;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.power.FittedDrive;

/**
 * Steady flight of one set-up at one throttle, at its approach speed (methods manual 20).
 *
 * @param throttle duty of the controller, 0 to 1
 * @param speed m/s
 * @param climbRate m/s, negative where it sinks
 * @param elevatorChange elevator in trim against that with the throttle closed, rad, trailing edge down positive
 * @param current of the battery, A
 * @param time that a battery lasts with a fifth kept back, s
 */
public record ThrottleAnswer(
        double throttle,
        double speed,
        Headline.Known climbRate,
        Headline.Known elevatorChange,
        Headline.Known current,
        Headline.Known time) {

    /** The answer; empty where the model has no motor or no such flight is found. */
    static Optional<ThrottleAnswer> of(Flight flight, SetUp setUp, Pack pack, Bands bands, double throttle) {
        Optional<FittedDrive> drive = flight.airframe().drive(pack);
        Optional<Stall> stall = flight.stall(pack);
        if (drive.isEmpty() || stall.isEmpty()) {
            return Optional.empty();
        }
        double speed = stall.get().approachSpeed();
        PoweredFlight powered =
                new PoweredFlight(flight.airframe(), setUp, pack, drive.get().drive(), stall.get());
        Optional<Attitude> closed = flight.descent(pack, stall.get(), speed).steady();
        ClimbBands likely = new ClimbBands(bands, drive.get(), pack);
        double charge = pack.battery().orElseThrow().capacity();
        return closed.flatMap(before -> powered.steady(throttle, speed)
                .map(point -> new ThrottleAnswer(
                        throttle,
                        point.speed(),
                        likely.rate(point),
                        bands.around("throttleTrim", point.attitude().elevator() - before.elevator()),
                        likely.current(point.drive().current()),
                        likely.current(Battery.USABLE * charge / point.drive().current()))));
    }
}
