package throwline.correction;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import throwline.air.Air;
import throwline.model.Field;
import throwline.notes.FlownDay;
import throwline.notes.Noticed;
import throwline.notes.Noticed.FlownAt;
import throwline.notes.Noticed.Going;
import throwline.notes.Noticed.SpeedRead;
import throwline.notes.Noticed.Throttle;
import throwline.notes.ToldBy;

/** Notes of one day as readings of the state. Methods manual 21.3 and 21.4. */
public final class NotedReadings {

    /** Speed really flown around the one meant, as a logarithm: in a glide, and where it is watched less (PRACTICE). */
    private static final double GLIDE_SPEED = 0.10;

    private static final double OTHER_SPEED = 0.08;

    private static final double CRUISE = 2;
    private static final double SLOW = 1.1;

    /** Thrust line and slipstream (PRACTICE), rad. */
    private static final double MOTOR_ON = Math.toRadians(1);

    /** Time until a roll is steady, s (PRACTICE). */
    private static final double ROLL_START = 0.15;

    /** An airspeed sensor that was not checked (PRACTICE). */
    private static final double SENSOR_SCALE = 0.04;

    private final Factors factors;
    private final Fleet fleet;
    private final FlownDay day;
    private final DayFactors air;
    private final double wind;

    /** What is flown: set-ups as a day had them. */
    public interface Fleet {

        /** A set-up on a day; empty where nothing is predicted of it. */
        Optional<Flying> flying(FlownDay day, String setUp);

        /** The set-up that others are compared with, on a day. */
        Optional<Flying> reference(FlownDay day);

        /** Elevator that a set-up holds by itself, rad. */
        double elevator(FlownDay day, String setUp);

        /** Place of the logarithm of the weight of the day's pack over the weight told. */
        int weight(FlownDay day);

        /** Weight told of the day's pack, kg. */
        double mass(FlownDay day);

        /** Place of the error of the balance of the day's pack. */
        int balance(FlownDay day);

        /** Balance point told of the day's pack, m. */
        double balancePoint(FlownDay day);
    }

    /**
     * @param factors of the estimate; those of the day join them
     * @param fleet what is flown
     * @param day the notes
     * @param field where the predictions hold
     */
    public NotedReadings(Factors factors, Fleet fleet, FlownDay day, Field field) {
        this.factors = factors;
        this.fleet = fleet;
        this.day = day;
        ToldWind told = ToldWind.of(day, field.wind());
        wind = told.speed();
        air = DayFactors.of(factors, day.name(), told.speed(), told.sd(), density(day, field));
    }

    /** Logarithm of the density of a day over that of the predictions. */
    public static double density(FlownDay day, Field field) {
        Air there = Air.at(field.heightAboveSea(), field.temperature());
        FlownDay.AirOfDay told = day.air();
        OptionalDouble temperature = told.temperature().isPresent() ? told.temperature() : field.temperature();
        Air then = Air.at(told.heightAboveSea().orElse(field.heightAboveSea()), temperature);
        double pressure = told.pressure().orElse(then.pressure());
        return Math.log(new Air(pressure, then.temperature()).density() / there.density());
    }

    /** Factors of the day. */
    public DayFactors air() {
        return air;
    }

    /** All readings of the day that count and of which something is predicted. */
    public List<Reading> all() {
        List<Reading> all = new ArrayList<>();
        day.weight().ifPresent(mass -> all.add(weight("weight, " + day.name(), mass, 0.005)));
        day.balance().ifPresent(b -> all.add(balance("balance, " + day.name(), b, 0.0015)));
        for (Noticed noticed : day.noticed()) {
            if (noticed.told().counts()) {
                all.addAll(of(noticed));
            }
        }
        return all;
    }

    /** Readings of one note; none where nothing is predicted of it. */
    public List<Reading> of(Noticed noticed) {
        if (noticed instanceof Noticed.Weight w) {
            return List.of(weight(w.told().source(), w.mass(), MeasuringNoise.mass(w.told(), w.mass())));
        }
        if (noticed instanceof Noticed.Balance b) {
            return List.of(balance(b.told().source(), b.behind(), MeasuringNoise.balance(b.told())));
        }
        Optional<Flying> flying = fleet.flying(day, noticed.setUp());
        return flying.map(f -> flown(noticed, f)).orElse(List.of());
    }

    private List<Reading> flown(Noticed noticed, Flying flying) {
        Expected expected = new Expected(flying, air);
        if (noticed instanceof Noticed.Stall stall) {
            return stall(stall, expected);
        }
        if (noticed instanceof Noticed.Glide glide) {
            return glide(glide, flying, expected);
        }
        if (noticed instanceof Noticed.Trim trim) {
            return trim(trim, flying, expected);
        }
        if (noticed instanceof Noticed.Floated floated && flying.predicted().floats() > 0) {
            double sd = MeasuringNoise.floated(floated.told(), floated.distance());
            return List.of(new Reading(floated.told().source(), Math.log(floated.distance()), sd, expected.floated()));
        }
        if (noticed instanceof Noticed.Roll roll
                && !Double.isNaN(flying.predicted().rollPerSpeed(roll.stick()))) {
            int speed = speed(roll.told().source(), roll.speed(), flying, OTHER_SPEED);
            double sd = MeasuringNoise.time(roll.told().toldBy())
                    / Math.sqrt(roll.told().times());
            sd = roll.told().giveOrTake().isPresent()
                    ? roll.told().giveOrTake().getAsDouble() / RowBand.NINE_OF_TEN
                    : sd;
            return List.of(new Reading(
                    roll.told().source(),
                    roll.time(),
                    sd,
                    expected.rollTime(roll.stick(), roll.rolls(), speed, ROLL_START)));
        }
        return List.of();
    }

    private Reading weight(String source, double mass, double sd) {
        int place = fleet.weight(day);
        double told = fleet.mass(day);
        return new Reading(source, Math.log(mass / told), sd / told, x -> x[place]);
    }

    private Reading balance(String source, double behind, double sd) {
        int place = fleet.balance(day);
        return new Reading(source, behind - fleet.balancePoint(day), sd, x -> x[place]);
    }

    private List<Reading> stall(Noticed.Stall stall, Expected expected) {
        SpeedRead read = stall.speed();
        String source = stall.told().source();
        if (read.airspeed().isPresent()) {
            double v = read.airspeed().getAsDouble();
            int scale = factors.place(new Factor("airspeed sensor, " + day.name(), 0, SENSOR_SCALE, true));
            Expectation stalls = expected.stall();
            return List.of(new Reading(
                    source, v, MeasuringNoise.speed(stall.told(), v), x -> stalls.at(x) * Math.exp(x[scale])));
        }
        double v = read.ground().orElseThrow();
        double sd = over(MeasuringNoise.speed(stall.told(), v), read.going());
        return List.of(new Reading(source, v, sd, expected.stallOverGround(ahead(read.going()))));
    }

    /** Both ways leave little of the wind; a way that is not remembered leaves all of it. */
    private double over(double sd, Going going) {
        return switch (going) {
            case BOTH_WAYS -> Math.hypot(sd / Math.sqrt(2), MeasuringNoise.BOTH_WAYS);
            case UNKNOWN -> Math.hypot(sd, Math.max(1, wind));
            case INTO_THE_WIND, WITH_THE_WIND, ACROSS -> sd;
        };
    }

    private static double ahead(Going going) {
        return switch (going) {
            case INTO_THE_WIND -> 1;
            case WITH_THE_WIND -> -1;
            case ACROSS, BOTH_WAYS, UNKNOWN -> 0;
        };
    }

    private List<Reading> glide(Noticed.Glide glide, Flying flying, Expected expected) {
        String source = glide.told().source();
        int speed = speed(source, glide.speed(), flying, GLIDE_SPEED);
        double ahead = ahead(glide.going());
        ToldBy by = glide.told().toldBy();
        if (glide.time().isEmpty()) {
            double distance = glide.distance().orElseThrow();
            double sd = MeasuringNoise.path(glide.told(), glide.height(), distance);
            double shareOfWind = over(0, glide.going()) / Math.exp(factors.means()[speed]);
            return List.of(new Reading(
                    source,
                    Math.log(glide.height() / distance),
                    Math.hypot(sd, shareOfWind),
                    expected.path(speed, ahead)));
        }
        double t = glide.time().getAsDouble();
        double clock = MeasuringNoise.time(by) / t;
        double sink = glide.height() / t;
        double n = Math.sqrt(glide.told().times());
        double sinkSd = Math.hypot(
                Math.hypot(MeasuringNoise.height(glide.told(), glide.height()) / t, sink * clock / n),
                MeasuringNoise.air(t) / n);
        List<Reading> both = new ArrayList<>();
        both.add(new Reading(source, sink, sinkSd, expected.sink(speed)));
        glide.distance().ifPresent(d -> {
            double ground = d / t;
            double sd = Math.hypot(MeasuringNoise.distance(by, d) / t, ground * clock) / n;
            both.add(new Reading(source, ground, over(sd, glide.going()), expected.overGround(speed, ahead)));
        });
        return both;
    }

    private List<Reading> trim(Noticed.Trim trim, Flying flying, Expected expected) {
        int speed = speed(trim.told().source(), trim.speed(), flying, OTHER_SPEED);
        double stands = trim.elevator() + (trim.fromSetUp() ? fleet.elevator(day, trim.setUp()) : 0);
        double sd = MeasuringNoise.elevator(trim.told());
        double motor = trim.throttle() == Throttle.SHUT ? 0 : MOTOR_ON;
        return List.of(new Reading(trim.told().source(), stands, Math.hypot(sd, motor), expected.elevator(speed)));
    }

    /** Place of the logarithm of the speed that something was really flown at. */
    private int speed(String source, Noticed.Speed flown, Flying flying, double sd) {
        double meant =
                switch (flown.at()) {
                    case COMING_IN -> flying.predicted().approachSpeed();
                    case SLOW -> SLOW * flying.predicted().stallSpeed();
                    case CRUISE ->
                        CRUISE * fleet.reference(day).orElse(flying).predicted().stallSpeed();
                    case TOLD -> flown.speed().orElseThrow();
                };
        double known = flown.at() == FlownAt.TOLD ? sd / 2 : sd;
        return factors.place(new Factor("speed of " + source, Math.log(meant), known, false));
    }
}
