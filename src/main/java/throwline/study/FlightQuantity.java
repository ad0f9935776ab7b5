package throwline.study;

import static throwline.study.FlightQuantity.Part.AIR;
import static throwline.study.FlightQuantity.Part.GROUND;
import static throwline.study.FlightQuantity.Part.POWER;
import static throwline.study.FlightQuantity.Part.SERVOS;
import static throwline.study.FlightQuantity.Presence.ALWAYS;
import static throwline.study.FlightQuantity.Presence.WHERE_IT_APPLIES;
import static throwline.study.FlightQuantity.Screen.CLOSE_CALLS;
import static throwline.study.FlightQuantity.Screen.DATA;
import static throwline.study.FlightQuantity.Screen.DETAIL;
import static throwline.study.FlightQuantity.Screen.GLANCE;
import static throwline.units.Dimension.ANGLE;
import static throwline.units.Dimension.ANGULAR_RATE;
import static throwline.units.Dimension.CURRENT;
import static throwline.units.Dimension.FRACTION;
import static throwline.units.Dimension.LENGTH;
import static throwline.units.Dimension.NUMBER;
import static throwline.units.Dimension.SPEED;
import static throwline.units.Dimension.TIME;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import throwline.units.Dimension;

/**
 * The registry of headline numbers, in the order of the data files: every list of them, on a screen or in a file, is read
 * from here. Words: {@code row.STEM} names its row, {@code page.how.STEM} and {@code page.source.STEM} say how it is worked
 * out and after whom.
 */
public enum FlightQuantity {
    /** Lowest steady speed. */
    STALL_SPEED("stallSpeed", SPEED, "stalls", AIR, "stallSpeed", ALWAYS, CLOSE_CALLS),
    /** Speed to come in at. */
    APPROACH_SPEED("approachSpeed", SPEED, "comein", AIR, "approachSpeed", ALWAYS, CLOSE_CALLS),
    /** Path below the horizon at the approach speed, positive down. */
    DESCENT_ANGLE("descentAngle", ANGLE, "descent", AIR, "descentAngle.*", ALWAYS, CLOSE_CALLS),
    /** Height lost per second at the approach speed, positive down. */
    SINK_RATE("sinkRate", SPEED, "sink", AIR, "descentAngle.*", ALWAYS, CLOSE_CALLS),
    /** Metres forward for each metre of height at the approach speed. */
    APPROACH_GLIDE_RATIO("approachGlideRatio", NUMBER, "glide-in", AIR, "descentAngle.*", ALWAYS, DATA),
    /** Best ratio of distance to height at any speed. */
    BEST_GLIDE_RATIO("bestGlideRatio", NUMBER, "glide", AIR, "bestGlideRatio.*", ALWAYS, DATA),
    /** Steady speed pointing straight down. */
    NOSE_DOWN_SPEED("noseDownSpeed", SPEED, "nosedown", AIR, "noseDownSpeed", ALWAYS, DATA),
    /** Place of the elevator at the approach speed, trailing edge down positive. */
    ELEVATOR("elevator", ANGLE, "elevator", AIR, "elevator", ALWAYS, DETAIL),
    /** The same against the reference set-up at the same speed. */
    ELEVATOR_CHANGE("elevatorChange", ANGLE, "mix", AIR, "elevatorChange", ALWAYS, GLANCE),
    /** Steady rate at full stick at the approach speed: one number a roll stick that works in the set-up. */
    ROLL_RATE("rollRate", ANGULAR_RATE, "roll", AIR, "rollRate", ALWAYS, CLOSE_CALLS),
    /** Height of the wheels at which the round-out begins in still air. */
    FLARE_HEIGHT("flareHeight", LENGTH, "roundout", GROUND, "flareHeight.*", ALWAYS, CLOSE_CALLS),
    /** Distance floated from level to touch-down in still air. */
    FLOAT("float", LENGTH, "floats", GROUND, "float.*", ALWAYS, CLOSE_CALLS),
    /** Highest speed at which the servos have twice the torque that they need. */
    FLAP_SPEED_LIMIT("flapSpeedLimit", SPEED, "flap-limit", SERVOS, "servoTorque", WHERE_IT_APPLIES, CLOSE_CALLS),
    /** Strongest gust from below at the approach speed before the wing stalls. */
    GUST_LIMIT("gustLimit", SPEED, "bumps", GROUND, "gustLimit", ALWAYS, CLOSE_CALLS),
    /** Distance from the obstacle to a stop in still air. */
    LANDING_DISTANCE("landingDistance", LENGTH, "stops", GROUND, "landing", ALWAYS, CLOSE_CALLS),
    /** The same against the field's wind. */
    LANDING_DISTANCE_IN_WIND("landingDistanceInWind", LENGTH, "stops", GROUND, "landing", WHERE_IT_APPLIES, DATA),
    /** Distance rolled to lift-off at full throttle, against the field's wind. */
    TAKE_OFF_RUN("takeOffRun", LENGTH, "takeoff", POWER, "takeOffRun", WHERE_IT_APPLIES, CLOSE_CALLS),
    /** Distance from standing still to over the obstacle. */
    TAKE_OFF_DISTANCE("takeOffDistance", LENGTH, "takeoff", POWER, "takeOffRun", WHERE_IT_APPLIES, DATA),
    /** Height gained a second in the best climb at full throttle. */
    CLIMB_RATE("climbRate", SPEED, "climb", POWER, "climb", WHERE_IT_APPLIES, CLOSE_CALLS),
    /** Path above the horizon in that climb. */
    CLIMB_ANGLE("climbAngle", ANGLE, "climb", POWER, "climb", WHERE_IT_APPLIES, DATA),
    /** Airspeed of that climb. */
    CLIMB_SPEED("climbSpeed", SPEED, "climb", POWER, "climb", WHERE_IT_APPLIES, DATA),
    /** Height ten seconds after lift-off at full throttle. */
    CLIMB_HEIGHT("heightAfterTenSeconds", LENGTH, "climb", POWER, "climb", WHERE_IT_APPLIES, DATA),
    /** Path above the horizon at full throttle at the approach speed. */
    GO_AROUND("goAround", ANGLE, "goaround", POWER, "climb", WHERE_IT_APPLIES, CLOSE_CALLS),
    /** Height lost between the decision to go around and the lowest point. */
    GO_AROUND_LOSS("goAroundHeightLost", LENGTH, "goaround", POWER, "goAroundLoss", WHERE_IT_APPLIES, DATA),
    /** Elevator at full throttle at the approach speed against that with the throttle closed. */
    THROTTLE_TRIM("elevatorChangeWithThrottle", ANGLE, "goaround", POWER, "throttleTrim", WHERE_IT_APPLIES, DATA),
    /** Aileron that holds the wings level then against the propeller's torque, each half, to one side. */
    THROTTLE_AILERON("aileronWithThrottle", ANGLE, "goaround", POWER, "turning", WHERE_IT_APPLIES, DATA),
    /** Rudder of a usual fin that holds the nose then, to the same side. */
    THROTTLE_RUDDER("rudderWithThrottle", ANGLE, "goaround", POWER, "turning", WHERE_IT_APPLIES, DATA),
    /** Throttle of level flight at the approach speed. */
    LEVEL_THROTTLE("levelThrottle", FRACTION, "climb", POWER, "levelThrottle", WHERE_IT_APPLIES, DATA),
    /** Fastest level flight. */
    TOP_SPEED("topSpeed", SPEED, "climb", POWER, "topSpeed", WHERE_IT_APPLIES, DATA),
    /** Airspeed at the top of a loop entered from there, at full throttle with full elevator. */
    LOOP_TOP_SPEED("loopTopSpeed", SPEED, "climb", POWER, "climb", WHERE_IT_APPLIES, DATA),
    /** Level flight at the throttle of a cruise. */
    CRUISE_SPEED("cruiseSpeed", SPEED, "climb", POWER, "topSpeed", WHERE_IT_APPLIES, DATA),
    /** Current out of the battery then. */
    CRUISE_CURRENT("cruiseCurrent", CURRENT, "climb", POWER, "current", WHERE_IT_APPLIES, DATA),
    /** Time that the battery lasts then. */
    CRUISE_TIME("cruiseTime", TIME, "climb", POWER, "current", WHERE_IT_APPLIES, DATA),
    /** Place of the elevator then, trailing edge down positive. */
    CRUISE_ELEVATOR("cruiseElevator", ANGLE, "climb", POWER, "elevator", WHERE_IT_APPLIES, DATA),
    /** Slowest flight with half throttle. */
    SLOWEST_HALF_THROTTLE("slowestHalfThrottle", SPEED, "climb", POWER, "powerStall", WHERE_IT_APPLIES, DATA),
    /** Slowest flight with full throttle. */
    SLOWEST_FULL_THROTTLE("slowestFullThrottle", SPEED, "climb", POWER, "powerStall", WHERE_IT_APPLIES, DATA);

    /** Places that show numbers; what one shows stands in all before it. */
    public enum Screen {
        /** Data files. */
        DATA,
        /** All rows of a table. */
        DETAIL,
        /** The rows that a flyer reads first. */
        GLANCE,
        /** Rows in which set-ups are told apart, or not. */
        CLOSE_CALLS
    }

    /** Parts of a screen, in their order. */
    public enum Part {
        /** In steady flight. */
        AIR,
        /** Near the ground and in bumps. */
        GROUND,
        /** Limits that the servos set. */
        SERVOS,
        /** With the motor running. */
        POWER
    }

    /** Models that have a number. */
    enum Presence {
        ALWAYS,
        WHERE_IT_APPLIES
    }

    private final String key;
    private final Dimension dimension;
    private final String stem;
    private final Part part;
    private final String band;
    private final Presence presence;
    private final Screen last;

    FlightQuantity(
            String key, Dimension dimension, String stem, Part part, String band, Presence presence, Screen last) {
        this.key = key;
        this.dimension = dimension;
        this.stem = stem;
        this.part = part;
        this.band = band;
        this.presence = presence;
        this.last = last;
    }

    /** Quantities of a screen in the order in which it shows them. */
    public static List<FlightQuantity> on(Screen screen) {
        return Stream.of(values())
                .filter(quantity -> quantity.isOn(screen))
                .sorted(Comparator.comparing(FlightQuantity::part))
                .toList();
    }

    /** The quantity that a row with this key shows first; empty where it shows none. */
    public static Optional<FlightQuantity> ofRow(String row) {
        return on(Screen.DETAIL).stream()
                .filter(quantity -> quantity.row().equals(row))
                .findFirst();
    }

    /** True where that screen shows it. */
    public boolean isOn(Screen screen) {
        return screen.compareTo(last) <= 0;
    }

    /** Name in data files. */
    public String key() {
        return key;
    }

    /** Kind of quantity. */
    public Dimension dimension() {
        return dimension;
    }

    /** Key of the words that name its row. */
    public String row() {
        return "row." + stem;
    }

    /** Key of the sentence that says how it is worked out. */
    public String how() {
        return "page.how." + stem;
    }

    /** Key of the sentence that names the sources. */
    public String source() {
        return "page.source." + stem;
    }

    /** Part of a screen that it belongs to. */
    public Part part() {
        return part;
    }

    /** Row of the file of bands, for a set-up that moves nothing or one that does. */
    public String band(boolean clean) {
        return band.replace("*", clean ? "clean" : "moved");
    }

    /** True where an answer without it lacks something; others do not apply to every model. */
    public boolean isExpected() {
        return presence == Presence.ALWAYS;
    }
}
