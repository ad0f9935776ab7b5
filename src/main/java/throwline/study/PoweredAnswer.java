package throwline.study;

import static throwline.study.FlightQuantity.CLIMB_ANGLE;
import static throwline.study.FlightQuantity.CLIMB_RATE;
import static throwline.study.FlightQuantity.CLIMB_SPEED;
import static throwline.study.FlightQuantity.CRUISE_CURRENT;
import static throwline.study.FlightQuantity.CRUISE_ELEVATOR;
import static throwline.study.FlightQuantity.CRUISE_SPEED;
import static throwline.study.FlightQuantity.CRUISE_TIME;
import static throwline.study.FlightQuantity.GO_AROUND;
import static throwline.study.FlightQuantity.GO_AROUND_LOSS;
import static throwline.study.FlightQuantity.LEVEL_THROTTLE;
import static throwline.study.FlightQuantity.SLOWEST_FULL_THROTTLE;
import static throwline.study.FlightQuantity.SLOWEST_HALF_THROTTLE;
import static throwline.study.FlightQuantity.TAKE_OFF_DISTANCE;
import static throwline.study.FlightQuantity.TAKE_OFF_RUN;
import static throwline.study.FlightQuantity.THROTTLE_TRIM;
import static throwline.study.FlightQuantity.TOP_SPEED;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import throwline.flight.Attitude;
import throwline.flight.Descent;
import throwline.flight.Flight;
import throwline.flight.GoAround;
import throwline.flight.GroundHeights;
import throwline.flight.PoweredFlight;
import throwline.flight.PoweredPoint;
import throwline.flight.PoweredStall;
import throwline.flight.Stall;
import throwline.flight.TakeOff;
import throwline.model.Battery;
import throwline.model.Motor;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.power.FittedDrive;
import throwline.words.Message;

/** Numbers of one set-up with the motor running, with their bands and notes. */
final class PoweredAnswer {

    /** What power takes off the stall speed is known to this factor either way (methods manual 20.12). */
    private static final double LEAST_REDUCTION = 0.6;

    private static final double MOST_REDUCTION = 2;

    private static final Headline NOT_FOUND = new Headline.Unknown("why.not-found");
    private static final Headline NO_LEVEL = new Headline.Unknown("why.no-level");

    private final SetUp setUp;
    private final Bands bands;
    private final GroundHeights ladder;

    PoweredAnswer(SetUp setUp, Bands bands, GroundHeights ladder) {
        this.setUp = setUp;
        this.bands = bands;
        this.ladder = ladder;
    }

    /** The numbers; each says why where there is none. */
    Map<FlightQuantity, Headline> numbers(Flight flight, Pack pack, Stall stall, Descent approach) {
        Optional<FittedDrive> drive = flight.airframe().drive(pack);
        Map<FlightQuantity, Headline> numbers = new EnumMap<>(FlightQuantity.class);
        Headline none = drive.isEmpty() ? new Headline.Unknown("why.no-motor") : NOT_FOUND;
        for (FlightQuantity quantity : FlightQuantity.values()) {
            if (quantity.part() == FlightQuantity.Part.POWER) {
                numbers.put(quantity, none);
            }
        }
        drive.ifPresent(fitted -> {
            PoweredFlight powered = new PoweredFlight(flight.airframe(), setUp, pack, fitted.drive(), stall);
            ClimbBands climb = new ClimbBands(bands, fitted, pack);
            climbing(numbers, powered, climb);
            double cruise = flight.airframe().model().motor().map(Motor::cruise).orElse(Motor.USUAL_CRUISE);
            level(numbers, powered, pack, cruise, climb);
            slowest(numbers, powered, stall);
            approach.steady().ifPresent(attitude -> goingAround(numbers, powered, attitude, climb));
        });
        return numbers;
    }

    private void climbing(Map<FlightQuantity, Headline> numbers, PoweredFlight powered, ClimbBands climb) {
        powered.bestClimb(1).ifPresent(best -> {
            numbers.put(CLIMB_RATE, climb.rate(best));
            numbers.put(CLIMB_ANGLE, climb.angle(best));
            numbers.put(CLIMB_SPEED, climb.speed(best.speed()));
        });
        TakeOff takeOff = powered.takeOff(ladder);
        Optional<Headline.Unknown> why = whyNot(takeOff);
        if (why.isPresent()) {
            numbers.put(TAKE_OFF_RUN, why.get());
            numbers.put(TAKE_OFF_DISTANCE, why.get());
            return;
        }
        numbers.put(TAKE_OFF_RUN, positive(bands.around("takeOffRun", takeOff.run())));
        if (Double.isFinite(takeOff.distance())) {
            numbers.put(TAKE_OFF_DISTANCE, positive(bands.around("takeOffRun", takeOff.distance())));
        }
    }

    /** Why it does not leave the ground; empty where it does. */
    static Optional<Headline.Unknown> whyNot(TakeOff takeOff) {
        return switch (takeOff.outcome()) {
            case FLIES -> Optional.empty();
            case WILL_NOT_ROLL -> Optional.of(new Headline.Unknown("why.no-roll-out"));
            case TOO_LITTLE_THRUST -> Optional.of(new Headline.Unknown("why.no-take-off"));
        };
    }

    /** A length, which does not reach below zero. */
    static Headline.Known positive(Headline.Known known) {
        return new Headline.Known(known.value(), Math.max(0, known.low()), known.high(), known.basis(), known.shared());
    }

    private void level(
            Map<FlightQuantity, Headline> numbers, PoweredFlight powered, Pack pack, double share, ClimbBands likely) {
        numbers.put(
                TOP_SPEED,
                powered.fastest(1)
                        .<Headline>map(point -> bands.around("topSpeed", point.speed()))
                        .orElse(NO_LEVEL));
        Optional<PoweredPoint> cruise = powered.fastest(share);
        for (FlightQuantity quantity : List.of(CRUISE_SPEED, CRUISE_CURRENT, CRUISE_TIME, CRUISE_ELEVATOR)) {
            numbers.put(quantity, NO_LEVEL);
        }
        cruise.ifPresent(point -> {
            double amps = point.drive().current();
            numbers.put(CRUISE_SPEED, bands.around("topSpeed", point.speed()));
            numbers.put(CRUISE_CURRENT, likely.current(amps));
            numbers.put(
                    CRUISE_TIME,
                    likely.current(Battery.USABLE * pack.battery().orElseThrow().capacity() / amps));
            numbers.put(
                    CRUISE_ELEVATOR, bands.around("elevator", point.attitude().elevator()));
        });
    }

    private void slowest(Map<FlightQuantity, Headline> numbers, PoweredFlight powered, Stall stall) {
        numbers.put(SLOWEST_HALF_THROTTLE, slowest(powered.slowest(0.5), stall));
        numbers.put(SLOWEST_FULL_THROTTLE, slowest(powered.slowest(1), stall));
    }

    private Headline slowest(Optional<PoweredStall> found, Stall stall) {
        return found.<Headline>map(open -> {
                    double taken = Math.max(0, stall.speed() - open.speed());
                    double value = stall.speed() - taken;
                    Headline.Known plain = bands.around("powerStall", value);
                    return new Headline.Known(
                            value,
                            Math.max(0, stall.speed() - MOST_REDUCTION * taken),
                            stall.speed() - LEAST_REDUCTION * taken,
                            plain.basis(),
                            plain.shared());
                })
                .orElse(NOT_FOUND);
    }

    private void goingAround(
            Map<FlightQuantity, Headline> numbers, PoweredFlight powered, Attitude approach, ClimbBands climb) {
        Optional<GoAround> found = powered.goAround(approach);
        found.ifPresent(around -> {
            double pull = around.climbAngle() + approach.descentAngle();
            numbers.put(GO_AROUND, climb.pulled(around.climbAngle(), pull));
            numbers.put(THROTTLE_TRIM, bands.around("throttleTrim", around.elevatorChange()));
            numbers.put(
                    GO_AROUND_LOSS,
                    Double.isFinite(around.heightLost())
                            ? positive(bands.around("goAroundLoss", around.heightLost()))
                            : NO_LEVEL);
        });
        numbers.put(
                LEVEL_THROTTLE,
                powered.level(approach.speed())
                        .<Headline>map(point ->
                                bands.around("levelThrottle", point.drive().throttle()))
                        .orElse(NO_LEVEL));
    }

    /** What a flyer should know about it. */
    List<Message> notes(Map<FlightQuantity, Headline> numbers) {
        List<Message> notes = new ArrayList<>();
        if (numbers.get(GO_AROUND) instanceof Headline.Known around) {
            if (around.value() <= 0) {
                notes.add(Message.of("note.go-around.sinks"));
            } else if (around.low() <= 0) {
                notes.add(Message.of("note.go-around.may-sink"));
            }
        }
        if (numbers.get(TAKE_OFF_RUN) instanceof Headline.Unknown why) {
            if (why.why().equals("why.no-take-off")) {
                notes.add(Message.of("note.take-off.little"));
            } else if (why.why().equals("why.no-roll-out")) {
                notes.add(Message.of("note.take-off.no-roll"));
            }
        }
        return notes;
    }
}
