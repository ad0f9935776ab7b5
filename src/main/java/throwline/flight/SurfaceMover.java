package throwline.flight;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import throwline.flight.PitchFlight.Pilot;
import throwline.flight.PitchFlight.Schedule;
import throwline.flight.PitchFlight.Steady;
import throwline.flight.SurfaceMove.Moment;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;

/** Movement of the surfaces in flight from a reference set-up to another and back. */
public final class SurfaceMover {

    /** Radius of gyration in pitch over the body's length, middle of 0.17 to 0.19 (MEMORY, aeroplanes of one engine). */
    private static final double GYRATION = 0.18;

    /** The model is watched for so long after the surfaces have stopped, s. */
    private static final double AFTER = 3;

    /** Seconds until a pilot sees what happens and the hand moves (PRACTICE). */
    public static final double REACTION = 1;

    /** Seconds in which the hand brings the elevator to where it belongs (PRACTICE). */
    public static final double HAND = 0.5;

    /** Shortest and longest time of the surfaces that is tried, s (PRACTICE: slow servos take one to two; methods manual 17.1). */
    public static final double QUICKEST = 0.5;

    public static final double SLOWEST = 4;

    private static final double TENTHS = 10;

    /** Angles of attack that the table covers beyond those of both set-ups, rad. */
    private static final double BELOW = Math.toRadians(7);

    private static final double ABOVE = Math.toRadians(9);

    private final PitchFlight flight;
    private final double lowest;
    private final double highest;

    /**
     * Solves what it needs.
     *
     * @param airframe the model
     * @param from the reference set-up
     * @param to the other set-up
     * @param pack with this battery
     * @param reference steady descent in the reference set-up
     * @param other steady descent in the other set-up at the same speed, near those asked about
     */
    public SurfaceMover(Airframe airframe, SetUp from, SetUp to, Pack pack, Attitude reference, Attitude other) {
        Model model = airframe.model();
        lowest = Math.min(reference.alpha(), other.alpha()) - BELOW;
        highest = Math.max(reference.alpha(), other.alpha()) + ABOVE;
        PitchTable table = new PitchTable(
                share -> new Trimmer(airframe, Deflections.of(model.wing(), between(from, to, share))),
                pack,
                reference.speed(),
                (reference.elevator() + other.elevator()) / 2,
                lowest,
                highest);
        flight = new PitchFlight(
                table,
                airframe.balance(pack),
                model.wing().meanAerodynamicChord(),
                GYRATION * model.body().length());
    }

    private static SetUp between(SetUp from, SetUp to, double share) {
        Map<String, Double> deflections = new LinkedHashMap<>();
        for (Map<String, Double> side : List.of(from.deflections(), to.deflections())) {
            for (String name : side.keySet()) {
                double a = from.deflection(name);
                deflections.put(name, a + share * (to.deflection(name) - a));
            }
        }
        return new SetUp(to.name(), deflections, 0);
    }

    /** The elevator's whole change from the reference set-up to the other at a speed, rad; empty as in {@link #lower}. */
    public Optional<Double> wholeChange(double speed) {
        return between(0, speed).map(Ends::change);
    }

    /**
     * To the other set-up, nobody at the stick.
     *
     * @param speed airspeed at first, m/s
     * @param time that the surfaces take, s
     * @param elevator change of the elevator that goes with them, rad, trailing edge down positive
     * @return what happens; empty where one of both has no steady descent at the speed
     */
    public Optional<SurfaceMove> lower(double speed, double time, double elevator) {
        return between(0, speed).map(ends -> move(ends, time, elevator, Pilot.nobody()));
    }

    /**
     * Back to the reference set-up, the pilot answering: after {@link #REACTION} the elevator is brought within
     * {@link #HAND} to where the surfaces need it.
     *
     * @param speed airspeed at first, m/s
     * @param time that the surfaces take, s
     * @param elevator change of the elevator as in {@link #lower}: here it goes back
     * @return as in {@link #lower}
     */
    public Optional<SurfaceMove> raise(double speed, double time, double elevator) {
        return between(1, speed).map(ends -> move(ends, time, -elevator, new Pilot(ends.change(), REACTION, HAND)));
    }

    /**
     * The shortest time that keeps the load below a limit while the surfaces go to the other set-up, nobody at the stick.
     *
     * @param speed airspeed at first, m/s
     * @param elevator change of the elevator that goes with them, rad
     * @param load the limit, lift over weight
     * @return s, to 0.1 s, not below {@link #QUICKEST}; empty where {@link #SLOWEST} is too quick, or as in {@link #lower}
     */
    public Optional<Double> shortestTime(double speed, double elevator, double load) {
        Optional<Ends> found = between(0, speed);
        if (found.isEmpty() || !keeps(found.get(), SLOWEST, elevator, load)) {
            return Optional.empty();
        }
        if (keeps(found.get(), QUICKEST, elevator, load)) {
            return Optional.of(QUICKEST);
        }
        int tooQuick = (int) Math.round(QUICKEST * TENTHS);
        int slow = (int) Math.round(SLOWEST * TENTHS);
        while (slow - tooQuick > 1) {
            int middle = (tooQuick + slow) / 2;
            if (keeps(found.get(), middle / TENTHS, elevator, load)) {
                slow = middle;
            } else {
                tooQuick = middle;
            }
        }
        return Optional.of(slow / TENTHS);
    }

    private boolean keeps(Ends ends, double time, double elevator, double load) {
        SurfaceMove run = move(ends, time, elevator, Pilot.nobody());
        return run.followed() && run.mostLoad() <= load;
    }

    /** Both steady descents at one speed. */
    private record Ends(double share, Steady from, Steady to) {
        double change() {
            return to.elevator() - from.elevator();
        }
    }

    private Optional<Ends> between(double share, double speed) {
        Optional<Steady> from = flight.steady(share, speed, lowest, highest);
        Optional<Steady> to = flight.steady(1 - share, speed, lowest, highest);
        return from.flatMap(a -> to.map(b -> new Ends(share, a, b)));
    }

    private SurfaceMove move(Ends ends, double time, double elevator, Pilot pilot) {
        Schedule schedule = new Schedule(ends.share, 1 - ends.share, time, ends.from.elevator(), elevator, pilot);
        PitchFlight.State start = ends.from.state();
        double sink = start.speed() * Math.sin(start.angle());
        List<Moment> history = new ArrayList<>();
        boolean followed = true;
        for (PitchFlight.State state : flight.fly(schedule, start, time + AFTER)) {
            followed = lowest <= state.alpha() && state.alpha() <= highest;
            if (!followed) {
                break;
            }
            history.add(new Moment(
                    state.time(),
                    schedule.done(state.time()),
                    state.height(),
                    state.height() + sink * state.time(),
                    state.angle(),
                    state.alpha(),
                    state.speed(),
                    state.load()));
        }
        return new SurfaceMove(time, history, followed);
    }
}
