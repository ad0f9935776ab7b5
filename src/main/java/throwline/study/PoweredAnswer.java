package throwline.study;

import static throwline.study.FlightQuantity.CLIMB_ANGLE;
import static throwline.study.FlightQuantity.CLIMB_HEIGHT;
import static throwline.study.FlightQuantity.CLIMB_RATE;
import static throwline.study.FlightQuantity.CLIMB_SPEED;
import static throwline.study.FlightQuantity.CRUISE_CURRENT;
import static throwline.study.FlightQuantity.CRUISE_ELEVATOR;
import static throwline.study.FlightQuantity.CRUISE_SPEED;
import static throwline.study.FlightQuantity.CRUISE_TIME;
import static throwline.study.FlightQuantity.GO_AROUND;
import static throwline.study.FlightQuantity.GO_AROUND_LOSS;
import static throwline.study.FlightQuantity.LEVEL_THROTTLE;
import static throwline.study.FlightQuantity.LOOP_TOP_SPEED;
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
import java.util.OptionalDouble;
import throwline.air.Gravity;
import throwline.flight.Attitude;
import throwline.flight.Descent;
import throwline.flight.Flight;
import throwline.flight.GoAround;
import throwline.flight.GroundHeights;
import throwline.flight.PathPoint;
import throwline.flight.PoweredFlight;
import throwline.flight.PoweredPoint;
import throwline.flight.PoweredStall;
import throwline.flight.Stall;
import throwline.flight.TakeOff;
import throwline.model.Battery;
import throwline.model.Model;
import throwline.model.Motor;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.power.FittedDrive;
import throwline.study.FlyResult.LevelPoint;
import throwline.units.Dimension;
import throwline.units.Quantity;
import throwline.words.Message;

/** Numbers of one set-up with the motor running, with their bands and notes. */
final class PoweredAnswer {

    /** What power takes off the stall speed is known to this factor either way (methods manual 20.12). */
    private static final double LEAST_REDUCTION = 0.6;

    private static final double MOST_REDUCTION = 2;

    private static final double TEN_SECONDS = 10;

    /** A take-off is shown to so far over the obstacle, and to this height, m, at least. */
    private static final double ABOVE = 1.3;

    private static final double LEAST_VIEW = 5;

    /** Pulls are told to a tenth of a kilogram. */
    private static final double TENTH = 10;

    private static final Headline NOT_FOUND = new Headline.Unknown("why.not-found");
    private static final Headline NO_LEVEL = new Headline.Unknown("why.no-level");

    private final SetUp setUp;
    private final Bands bands;
    private final GroundHeights ladder;
    private final List<Message> said = new ArrayList<>();
    private List<PathPoint> away = List.of();
    private List<PathPoint> again = List.of();
    private List<LevelPoint> level = List.of();

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
            Optional<PoweredPoint> fastest = powered.fastest(1);
            level = new LevelFlights(powered, pack, fitted.drive()).all(stall, fastest);
            climbing(numbers, powered, climb);
            if (powered.pullsUp(0)) {
                straightUp(numbers, flight, pack, stall, powered, climb);
            }
            double cruise = flight.airframe().model().motor().map(Motor::cruise).orElse(Motor.USUAL_CRUISE);
            level(numbers, fastest, powered.fastest(cruise), pack, climb);
            looping(
                    numbers,
                    LoopAnswer.sticks(flight.airframe().model(), setUp).get(0),
                    new LoopAnswer(flight.airframe(), setUp, pack, fitted, stall, bands));
            slowest(numbers, powered, stall);
            approach.steady().ifPresent(attitude -> {
                goingAround(numbers, powered, attitude, climb);
                powered.steady(1, attitude.speed())
                        .ifPresent(point ->
                                numbers.putAll(new TurningAnswer(setUp, bands).numbers(flight, powered, point)));
            });
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
        Model model = powered.airframe().model();
        double obstacle = model.field().obstacle();
        if (takeOff.climb() > 0) {
            double height = takeOff.heightAfter(TEN_SECONDS);
            double pull = powered.pull(takeOff.liftOff()) * TEN_SECONDS * takeOff.liftOff();
            numbers.put(CLIMB_HEIGHT, positive(climb.pulled(height, pull)));
        } else {
            numbers.put(CLIMB_HEIGHT, NO_LEVEL);
        }
        Optional<Headline.Unknown> why =
                model.wheels().isEmpty() ? Optional.of(new Headline.Unknown("why.hand-launch")) : whyNot(takeOff);
        if (why.isPresent()) {
            numbers.put(TAKE_OFF_RUN, why.get());
            numbers.put(TAKE_OFF_DISTANCE, why.get());
            return;
        }
        away = takeOff.way(Math.max(LEAST_VIEW, ABOVE * obstacle));
        numbers.put(TAKE_OFF_RUN, positive(bands.around("takeOffRun", takeOff.run())));
        double distance = takeOff.distance(obstacle);
        if (Double.isFinite(distance)) {
            numbers.put(TAKE_OFF_DISTANCE, positive(bands.around("takeOffRun", distance)));
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

    /** What changes where it pulls more than its weight standing still. */
    private void straightUp(
            Map<FlightQuantity, Headline> numbers,
            Flight flight,
            Pack pack,
            Stall stall,
            PoweredFlight powered,
            ClimbBands climb) {
        OptionalDouble found =
                flight.noseDownSpeed(pack, stall).map(powered::straightUp).orElse(OptionalDouble.empty());
        boolean better = numbers.get(CLIMB_RATE) instanceof Headline.Known known && known.value() > found.orElse(0);
        if (found.isPresent() && !better) {
            double speed = found.getAsDouble();
            numbers.put(CLIMB_RATE, climb.rate(speed, Math.PI / 2, pack.mass() * Gravity.STANDARD));
            numbers.put(CLIMB_ANGLE, climb.angle(Math.PI / 2, pack.mass() * Gravity.STANDARD));
            numbers.put(CLIMB_SPEED, climb.speed(speed));
        }
        said.add(Message.of(
                "note.pulls-its-weight",
                new Quantity(Math.rint(TENTH * pack.mass() * powered.pull(0)) / TENTH, Dimension.MASS),
                new Quantity(pack.mass(), Dimension.MASS)));
    }

    private void level(
            Map<FlightQuantity, Headline> numbers,
            Optional<PoweredPoint> fastest,
            Optional<PoweredPoint> cruise,
            Pack pack,
            ClimbBands likely) {
        numbers.put(
                TOP_SPEED,
                fastest.<Headline>map(point -> bands.around("topSpeed", point.speed()))
                        .orElse(NO_LEVEL));
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

    /** Out of the fastest level flight, with the first of the pull sticks. */
    private static void looping(Map<FlightQuantity, Headline> numbers, Stick.Pull stick, LoopAnswer loops) {
        Headline top = numbers.get(TOP_SPEED);
        numbers.put(
                LOOP_TOP_SPEED,
                top instanceof Headline.Known fastest
                        ? loops.at(stick, fastest.value())
                                .map(Handling.LoopAtFull::topSpeed)
                                .orElse(NOT_FOUND)
                        : top);
    }

    private void slowest(Map<FlightQuantity, Headline> numbers, PoweredFlight powered, Stall stall) {
        numbers.put(SLOWEST_HALF_THROTTLE, slowest(powered.slowest(0.5), stall, false));
        numbers.put(SLOWEST_FULL_THROTTLE, slowest(powered.slowest(1), stall, powered.pullsUp(0)));
    }

    private Headline slowest(Optional<PoweredStall> found, Stall stall, boolean hangs) {
        if (hangs) {
            return new Headline.Unknown("why.hangs");
        }
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
            again = around.way();
            double pull = around.climbAngle() + approach.descentAngle();
            numbers.put(GO_AROUND, ClimbBands.angle(climb.pulled(around.climbAngle(), pull)));
            around.elevatorChange()
                    .ifPresent(change -> numbers.put(THROTTLE_TRIM, bands.around("throttleTrim", change)));
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

    /** What charts show of it, once the numbers are there. */
    UnderPower seen() {
        return new UnderPower(away, again, level);
    }

    /** What a flyer should know about it. */
    List<Message> notes(Map<FlightQuantity, Headline> numbers) {
        List<Message> notes = new ArrayList<>(said);
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
