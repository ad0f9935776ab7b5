package throwline.correction;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import throwline.logs.LogReduction;
import throwline.logs.LogWind;
import throwline.logs.Piece;
import throwline.logs.Piece.Kind;
import throwline.logs.ReducedLog;
import throwline.logs.StallSpread;
import throwline.notes.FlownDay;
import throwline.notes.LogSource;

/** Readings of the state from the log of a day. Methods manual 22.6. */
public final class LoggedReadings {

    /** All stalls of a set-up together, m/s (PRACTICE). */
    private static final double STALLS = 0.06;

    /** Stalls are not quite full, all of a log: a share (PRACTICE). */
    private static final double NOT_FULL = 0.01;

    /**
     * One pilot in five breaks off all stalls before the nose drops by itself, anywhere between the stall and 30 % above it
     * (PRACTICE): such a stall says that the true one is no faster, and hardly more.
     */
    private static final Factor.Habit BROKEN_OFF = new Factor.Habit(0.2, 0.15, 0.3 / Math.sqrt(12));

    /** Mean airspeed of a glide, m/s, by sensor or by ground speed (PRACTICE). */
    private static final double SPEED = 0.2;

    /** Speed that a glide or roll may have been flown at, as a logarithm: wide, as the log itself tells it. */
    private static final double ANY_SPEED = 0.3;

    /** Rate gyro, as a logarithm, and speed in a roll, m/s (PRACTICE). */
    private static final double GYRO = 0.03;

    private static final double ROLL_SPEED = 0.5;

    private static final double ROLL_SENSED = 0.25;

    /** Elevator channel over a glide, rad (PRACTICE). */
    private static final double CHANNEL = Math.toRadians(0.25);

    /**
     * Zero of the elevator channel, one a log, rad: whether trim lever and sub-trim are in the channel, and on which tooth the
     * horn sits, is rarely known, so nine of ten lie within 10 degrees (PRACTICE). Differences between set-ups do not have it.
     */
    private static final double ZERO = Math.toRadians(10) / RowBand.NINE_OF_TEN;

    private final Factors factors;
    private final NotedReadings.Fleet fleet;
    private final FlownDay day;
    private final DayFactors air;
    private final ReducedLog log;
    private final double windNow;

    /**
     * @param factors of the estimate; those of the log join them
     * @param fleet what is flown
     * @param day its notes
     * @param air factors of the day
     * @param log what was found
     */
    public LoggedReadings(Factors factors, NotedReadings.Fleet fleet, FlownDay day, DayFactors air, ReducedLog log) {
        this.factors = factors;
        this.fleet = fleet;
        this.day = day;
        this.air = air;
        this.log = log;
        windNow = log.wind().map(LogWind::speed).orElse(0.0);
    }

    /** Sources of a kind of a set-up. */
    public static String source(Kind kind, String setUp, FlownDay day) {
        String what =
                switch (kind) {
                    case GLIDE -> "glides ";
                    case STALL -> "stalls ";
                    case ROLL -> "rolls ";
                    case CIRCLE -> "circles ";
                };
        return what + setUp + ", log of " + day.name();
    }

    /** All readings. */
    public List<Reading> all() {
        List<Reading> all = new ArrayList<>();
        for (String setUp : log.flown()) {
            fleet.flying(day, setUp).ifPresent(flying -> {
                all.addAll(glides(setUp, flying));
                stalls(setUp, flying).ifPresent(all::add);
                all.addAll(rolls(setUp, flying));
            });
        }
        log.wind()
                .filter(wind -> wind.source() != LogWind.Source.OPPOSING)
                .ifPresent(wind -> all.add(
                        new Reading("wind, log of " + day.name(), wind.speed(), wind.sd(), x -> x[air.wind()])));
        return all;
    }

    /** What the log shows for an airspeed at a state: the sensor's scale, or the error of the wind along the heading. */
    private Expectation shown(Expectation airspeed, List<Piece> pieces) {
        if (log.bySensor()) {
            int scale = factors.place(new Factor("airspeed sensor, log of " + day.name(), 0, log.scaleSd(), true));
            return x -> airspeed.at(x) * Math.exp(x[scale]);
        }
        double east = pieces.stream().mapToDouble(Piece::east).average().orElse(0);
        double north = pieces.stream().mapToDouble(Piece::north).average().orElse(0);
        double sd = log.wind().map(LogWind::sd).orElse(1.0);
        int windEast = factors.place(new Factor("east wind, log of " + day.name(), 0, sd, true));
        int windNorth = factors.place(new Factor("north wind, log of " + day.name(), 0, sd, true));
        return x -> airspeed.at(x) + east * x[windEast] + north * x[windNorth];
    }

    private List<Reading> glides(String setUp, Flying flying) {
        List<Piece> glides = log.used(Kind.GLIDE, setUp);
        if (glides.isEmpty()) {
            return List.of();
        }
        double seconds = glides.stream().mapToDouble(Piece::length).sum();
        double speed = mean(glides, true);
        double sink = mean(glides, false);
        double inverse = glides.stream()
                .mapToDouble(p -> Math.pow(log.dayFactor() * LogReduction.sinkSd(p.length()), -2))
                .sum();
        double sinkSd = Math.hypot(1 / Math.sqrt(inverse), log.heightScale() * sink);
        String source = source(Kind.GLIDE, setUp, day);
        int place = factors.place(new Factor("speed of " + source, Math.log(speed), ANY_SPEED, false));
        Expected expected = new Expected(flying, air);
        List<Reading> all = new ArrayList<>();
        double speedSd = SPEED / Math.sqrt(glides.size()) + SPEED / 4;
        all.add(new Reading(source, speed, speedSd, shown(x -> Math.exp(x[place]), glides)));
        all.add(new Reading(source, sink, sinkSd, expected.sink(place)));
        double elevator = glides.stream()
                .filter(p -> !Double.isNaN(p.elevator()))
                .mapToDouble(p -> p.elevator() * p.length() / seconds)
                .sum();
        if (glides.stream().noneMatch(p -> Double.isNaN(p.elevator()))) {
            int zero = factors.place(new Factor("elevator zero, log of " + day.name(), 0, ZERO, false));
            Expectation stands = expected.elevator(place);
            all.add(new Reading("elevator " + source, elevator, CHANNEL, x -> stands.at(x) + x[zero]));
        }
        return all;
    }

    private static double mean(List<Piece> glides, boolean speed) {
        double sum = 0;
        double weight = 0;
        for (Piece glide : glides) {
            sum += glide.length() * (speed ? glide.speed() : glide.value());
            weight += glide.length();
        }
        return sum / weight;
    }

    private Optional<Reading> stalls(String setUp, Flying flying) {
        List<Piece> stalls = log.used(Kind.STALL, setUp);
        if (stalls.isEmpty()) {
            return Optional.empty();
        }
        double speed = stalls.stream().mapToDouble(Piece::value).average().orElseThrow();
        double one = new StallSpread(log.bySensor(), windNow).sd(speed);
        double sd = Math.hypot(one / Math.sqrt(stalls.size()), STALLS);
        int full = factors.place(
                new Factor("stalls broken off, log of " + day.name(), 0, NOT_FULL, false, Optional.of(BROKEN_OFF)));
        Expectation stall = new Expected(flying, air).stall();
        return Optional.of(new Reading(
                source(Kind.STALL, setUp, day), speed, sd, shown(x -> stall.at(x) * Math.exp(x[full]), stalls)));
    }

    private List<Reading> rolls(String setUp, Flying flying) {
        List<Piece> rolls = log.used(Kind.ROLL, setUp);
        String stick = day.log()
                .map(LogSource::columns)
                .map(columns -> columns.get("roll stick"))
                .map(LogSource.Column::stick)
                .orElse("");
        if (rolls.isEmpty() || Double.isNaN(flying.predicted().rollPerSpeed(stick))) {
            return List.of();
        }
        double speed = rolls.stream().mapToDouble(Piece::speed).average().orElseThrow();
        double rate = rolls.stream().mapToDouble(Piece::value).average().orElseThrow();
        String source = source(Kind.ROLL, setUp, day);
        int place = factors.place(new Factor("speed of " + source, Math.log(speed), ANY_SPEED, false));
        Expected expected = new Expected(flying, air);
        return List.of(
                new Reading(
                        source,
                        speed,
                        (log.bySensor() ? ROLL_SENSED : ROLL_SPEED) / Math.sqrt(rolls.size()),
                        shown(x -> Math.exp(x[place]), rolls)),
                new Reading(source, Math.log(rate), GYRO, expected.rollRate(stick, place)));
    }
}
