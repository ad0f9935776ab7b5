package throwline.sizing;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import throwline.flight.Airframe;
import throwline.flight.Flight;
import throwline.flight.PoweredFlight;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.power.Drive;

/** Set-ups with the flaps down, or the ailerons where there are none, flown with the motor running. */
final class PoweredCandidates {

    private static final int ANGLES = 6;

    private final Airframe airframe;
    private final Pack pack;
    private final SurfaceGroups groups;
    private final String name;
    private final boolean flaps;
    private final double most;

    /**
     * @param airframe the model, which has a motor
     * @param pack with this battery
     * @param groups what may be moved
     * @param name of the set-ups
     */
    PoweredCandidates(Airframe airframe, Pack pack, SurfaceGroups groups, String name) {
        this.airframe = airframe;
        this.pack = pack;
        this.groups = groups;
        this.name = name;
        flaps = groups.flapTravel().high() > 0;
        most = flaps ? groups.flapTravel().high() : groups.aileronReserve().high();
    }

    /** Angle that a search goes to, rad; zero where nothing goes down. */
    double most() {
        return most;
    }

    /** What stops it there. */
    Limit end() {
        return flaps ? Limit.FLAPS_DOWN : most > 0 ? Limit.ROLL_RESERVE_DOWN : Limit.NO_FLAPS;
    }

    /** Angles to look at first, rising from zero, rad. */
    List<Double> angles() {
        return most > 0
                ? IntStream.range(0, ANGLES)
                        .mapToObj(i -> most * i / (ANGLES - 1))
                        .toList()
                : List.of(0.0);
    }

    /** The set-up with that much flap. */
    SetUp setUp(double angle) {
        return groups.setUp(name, flaps ? angle : 0, flaps ? 0 : angle);
    }

    /** It, ready to fly with the motor running; empty where its stall is not found. */
    Optional<Ready> ready(SetUp setUp) {
        Flight flight = new Flight(airframe, setUp);
        Drive drive = airframe.drive(pack).orElseThrow().drive();
        return flight.stall(pack).map(stall -> {
            PoweredFlight powered = new PoweredFlight(airframe, setUp, pack, drive, stall);
            OptionalDouble up = powered.pullsUp(0)
                    ? flight.noseDownSpeed(pack, stall).map(powered::straightUp).orElse(OptionalDouble.empty())
                    : OptionalDouble.empty();
            return new Ready(powered, up);
        });
    }

    /**
     * A set-up whose stall is known.
     *
     * @param powered with the motor running
     * @param straightUp speed straight up at full throttle, m/s; empty where it does not pull its weight
     */
    record Ready(PoweredFlight powered, OptionalDouble straightUp) {}

    /** Index of the least of these values. */
    static int least(double[] values) {
        return IntStream.range(0, values.length)
                .reduce((a, b) -> values[b] < values[a] ? b : a)
                .orElse(0);
    }

    /** Index of the first of these values that is no more than one wanted; empty where there is none. */
    static Optional<Integer> first(double[] values, double wanted) {
        int k = (int) Arrays.stream(values).takeWhile(v -> !(v <= wanted)).count();
        return k < values.length ? Optional.of(k) : Optional.empty();
    }
}
