package throwline.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import throwline.flight.ElevatorBreakdown;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.Propeller;
import throwline.units.Dimension;
import throwline.units.Key;
import throwline.units.Measure;
import throwline.units.Quantity;
import throwline.words.Message;

/**
 * Set-up with one pack in depth, throttle shut.
 *
 * @param model what was asked about
 * @param pack with this battery
 * @param glance the numbers that a comparison shows
 * @param balance how it stands about its balance point
 * @param turns slowest flight in turns, by bank
 * @param rolls full stick to the right, one entry a roll stick that works here
 * @param descents what the air's path becomes over the ground, and the steepest
 * @param rollSweep roll rate of the first such stick over speed
 * @param level level flights with the motor running, slowest first; none where the file says too little of the motor
 * @param handling landings of all set-ups, tight pulls, surfaces on the move
 * @param standing where the surfaces really stand
 * @param matters what to measure or tell to make the bands narrower, at most three, the most telling first
 * @param notes what holds for this set-up
 */
public record FlyResult(
        Model model,
        Pack pack,
        SetUpResult glance,
        Optional<Balance> balance,
        List<Turn> turns,
        List<RollDetail> rolls,
        Optional<Descents> descents,
        List<RollPoint> rollSweep,
        List<LevelPoint> level,
        Handling handling,
        BlowBackResult standing,
        List<Sensitivity> matters,
        List<Message> notes) {

    public FlyResult {
        turns = List.copyOf(turns);
        rolls = List.copyOf(rolls);
        rollSweep = List.copyOf(rollSweep);
        level = List.copyOf(level);
        matters = List.copyOf(matters);
        notes = List.copyOf(notes);
    }

    /** The result of a set-up of which no stall was found, with more notes than its numbers have. */
    static FlyResult withoutStall(Model model, Pack pack, SetUpResult glance, List<Message> more) {
        List<Message> notes = new ArrayList<>(glance.notes());
        notes.addAll(more);
        return new FlyResult(
                model,
                pack,
                glance,
                Optional.empty(),
                List.of(),
                List.of(),
                Optional.empty(),
                List.of(),
                List.of(),
                Handling.none(),
                BlowBackResult.none(),
                List.of(),
                notes);
    }

    /**
     * Pitch balance of the model about its balance point.
     *
     * @param stabilityMargin distance of the balance point ahead of the neutral point over the mean chord, at approach;
     *     empty where it was not found
     * @param neutralPoint behind the wing's leading edge at the middle, m; empty where it was not found
     * @param tailMargin angle left before the tail stalls, at approach, rad
     * @param cruiseSpeed twice the clean stall speed, m/s
     * @param elevatorAtCruise where the elevator stands at that speed, rad
     * @param why the elevator's change against the reference at equal speed, by cause; empty for the reference itself
     */
    public record Balance(
            Optional<Double> stabilityMargin,
            Optional<Double> neutralPoint,

            @Key("tailStallMargin") @Measure(Dimension.ANGLE)
            double tailMargin,

            double cruiseSpeed,
            @Measure(Dimension.ANGLE) Headline elevatorAtCruise,
            @Key("elevatorChangeWhy") Optional<ElevatorBreakdown> why) {}

    /**
     * Level flight with the motor running.
     *
     * @param speed airspeed, m/s
     * @param throttle 0 to 1
     * @param thrust of the propeller, N
     * @param fullThrust that full throttle gives at this speed, N
     * @param current out of the battery, A
     * @param time that a battery lasts with a fifth kept back, s
     */
    public record LevelPoint(
            double speed, double throttle, double thrust, double fullThrust, double current, double time) {}

    /**
     * Slowest flight in a turn without losing speed in it.
     *
     * @param bank rad
     * @param stallSpeed m/s
     * @param heldByElevator true where the elevator's travel ends before the wing lets go
     */
    public record Turn(@Measure(Dimension.ANGLE) double bank, Headline stallSpeed, boolean heldByElevator) {}

    /**
     * Full stick to the right at approach speed.
     *
     * @param stick its name
     * @param rate rad/s
     * @param timeToNinety s; empty where there is no rate
     * @param yawing yawing moment coefficient while rolling, nose right positive; empty where there is no rate
     * @param atItsStop true where a surface was cut at its travel
     * @param letsGoAt speed at which a part of the wing lets go with this stick at full, m/s
     * @param letsGoWhere distance from the middle over half the span, right positive
     * @param withOneSide rate to the slower side while one half of its outermost surface stays where the set-up has it, rad/s;
     *     empty where there is none
     */
    public record RollDetail(
            String stick,
            @Measure(Dimension.ANGULAR_RATE) Headline rate,
            Optional<Double> timeToNinety,
            Optional<Double> yawing,
            boolean atItsStop,
            Optional<Double> letsGoAt,
            Optional<Double> letsGoWhere,
            @Measure(Dimension.ANGULAR_RATE) Optional<Double> withOneSide) {}

    /**
     * Paths.
     *
     * @param wind headwind, m/s
     * @param overGround angle of the path over the ground at approach speed in that wind, rad; empty where the wind is
     *     faster than the model goes forward
     * @param limitSpeed speed limit for the steepest descent, m/s
     * @param steepest steepest steady descent up to that speed, rad; empty where there is none
     * @param steepestSpeed its speed, m/s; empty where there is none
     * @param propellers the way down at approach speed if the propeller did something else with the throttle shut; empty
     *     for a model without one
     */
    public record Descents(
            double wind,
            @Measure(Dimension.ANGLE) Optional<Double> overGround,
            double limitSpeed,
            @Measure(Dimension.ANGLE) Optional<Double> steepest,
            Optional<Double> steepestSpeed,
            @Key("otherPropellers") List<OtherPropeller> propellers) {
        public Descents {
            propellers = List.copyOf(propellers);
        }
    }

    /**
     * Descent if the propeller did something else with the throttle shut.
     *
     * @param shut what it does
     * @param descentAngle at approach speed, rad
     */
    public record OtherPropeller(
            @Key("throttleShut") Propeller.Shut shut,
            @Measure(Dimension.ANGLE) Headline descentAngle) {}

    /**
     * Roll rate at a speed.
     *
     * @param speed m/s
     * @param rate rad/s
     */
    public record RollPoint(
            double speed, @Measure(Dimension.ANGULAR_RATE) double rate) {}

    /**
     * Something that the owner does not know exactly, and the number that it moves most in terms of that number's band.
     *
     * @param what weight, balance, throw or airfoil
     * @param name of the surface or airfoil; empty for the others
     * @param number stall, descent, elevator or roll
     * @param effect how far it may move that number, nine times out of ten
     */
    public record Sensitivity(String what, String name, String number, Quantity effect) {

        /** How exactly a balance point is known, m (PRACTICE). */
        public static final double BALANCE = 0.002;

        /** How exactly a throw is known at the trailing edge, m (PRACTICE). */
        public static final double EDGE = 0.001;
    }
}
