package throwline.study;

import java.util.List;
import java.util.Optional;
import throwline.flight.FlareElevator;
import throwline.flight.GustMargin;
import throwline.flight.LandingSimulator;
import throwline.flight.PathPoint;
import throwline.units.Dimension;
import throwline.units.Key;
import throwline.units.Measure;

/**
 * Behaviour of one set-up close to the ground and in bumps, throttle shut. Heights are those of the wheels, or of the
 * belly; distances run over the ground from the obstacle, or, without one, from where the round-out begins.
 *
 * @param stillAir the landing in still air, leg by leg; empty where there is none
 * @param inWind the same against the field's wind; empty without wind, and where the wind is faster than the model
 * @param elevator what the elevator has to do near the ground; empty where there is no landing
 * @param margins what is left before the stall at approach speed; empty where it was not found
 */
public record FieldAnswer(
        Optional<Legs> stillAir,
        Optional<Legs> inWind,
        Optional<FlareElevator.Demand> elevator,
        @Key(Key.NONE) Optional<Margins> margins) {

    /** The low glide is told from here to there, m. */
    public static final double GLIDE_FROM = LandingSimulator.GLIDE_FROM;

    public static final double GLIDE_TO = LandingSimulator.GLIDE_TO;

    /** No answer to any of it. */
    public static FieldAnswer none() {
        return new FieldAnswer(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    /**
     * Landing, leg by leg.
     *
     * @param wind headwind at 10 m, m/s
     * @param approach from the obstacle to the round-out, m; negative where the round-out begins before the obstacle
     * @param clearsObstacle false where the round-out has to begin above the obstacle
     * @param roundOutHeight height at which it begins, m
     * @param roundOut distance of the round-out, m
     * @param levelSpeed airspeed at its end, m/s
     * @param sink height still lost per second at its end, m/s; zero where the path became level
     * @param floated distance from there to touch-down, m
     * @param floatedWithoutGround the same if the ground had no effect on the air, still air, m
     * @param touchdownSpeed airspeed at touch-down, m/s
     * @param roll distance to a stop, m
     * @param windLost headwind lost between the obstacle and the ground, m/s
     * @param glideLow distance that a glide at approach speed goes from 1.5 m to 0.1 m in still air, m
     * @param glideWithoutGround the same if the ground had no effect on the air, m
     * @param takesAllLift true where the round-out somewhere takes all the lift that wing and elevator give
     * @param stalled true where the round-out ends slower than the stall near the ground
     * @param way places to touch-down
     */
    public record Legs(
            double wind,
            double approach,
            boolean clearsObstacle,
            double roundOutHeight,
            double roundOut,
            double levelSpeed,
            double sink,
            @Key("float") double floated,
            @Key("floatWithoutGround") double floatedWithoutGround,
            double touchdownSpeed,
            double roll,
            double windLost,
            double glideLow,
            @Key("glideLowWithoutGround") double glideWithoutGround,
            @Key(Key.NONE) boolean takesAllLift,
            @Key(Key.NONE) boolean stalled,
            @Key(Key.NONE) List<PathPoint> way) {

        public Legs {
            way = List.copyOf(way);
        }

        /** Place of the touch-down, m. */
        public double touchdown() {
            return approach + roundOut + floated;
        }

        /** All of it, from the obstacle to the stop, m. */
        @Key(value = "total", after = "way")
        public double total() {
            return touchdown() + roll;
        }
    }

    /** Gust from below, m/s, that {@link Margins#usualLoad} is given for. */
    public static final double USUAL_GUST = GustMargin.USUAL;

    /**
     * Margins before the stall at approach speed.
     *
     * @param speed m/s that may be lost
     * @param angle angle of attack left, rad
     * @param gust strongest gust from below that the wing takes, m/s
     * @param firstGust gust from below, m/s, at which a part of the wing first lets go
     * @param usualLoad load over weight that a gust of 2 m/s from below adds
     * @param headwindLimit headwind that takes six tenths of the approach speed, m/s
     * @param fitFor what air that is good for
     */
    public record Margins(
            @Key("speedLeft") double speed,
            @Key("angleLeft") @Measure(Dimension.ANGLE) double angle,
            @Key(Key.NONE) double gust,
            double firstGust,
            @Key("loadOfTwoMetres") double usualLoad,
            double headwindLimit,
            @Key("goodFor") FitFor fitFor) {}

    /** Kinds of air that a gust limit is good for (common practice, no source). */
    public enum FitFor {
        /** Below 2 m/s. */
        CALM,
        /** From 2 m/s. */
        LIGHT_WIND,
        /** From 3 m/s. */
        MODERATE_WIND,
        /** From 4.5 m/s. */
        FRESH_WIND
    }
}
