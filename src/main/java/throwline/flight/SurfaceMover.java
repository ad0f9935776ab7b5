package throwline.flight;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import throwline.flight.PitchFlight.Steady;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;

/** Moves the surfaces of the model in flight from a reference set-up to another and back. */
public final class SurfaceMover {

    /** Radius of gyration in pitch over the body's length, middle of 0.17 to 0.19 (MEMORY, aeroplanes of one engine). */
    private static final double GYRATION = 0.18;

    /** The model is watched for so long after the surfaces have stopped, s. */
    private static final double AFTER = 3;

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
        Map<String, Double> deflections = new HashMap<>();
        for (Map<String, Double> side : List.of(from.deflections(), to.deflections())) {
            for (String name : side.keySet()) {
                double a = from.deflection(name);
                deflections.put(name, a + share * (to.deflection(name) - a));
            }
        }
        return new SetUp(to.name(), deflections, 0);
    }

    /**
     * To the other set-up.
     *
     * @param speed airspeed at first, m/s
     * @param time that the surfaces take, s
     * @param mix share of the elevator's whole change that goes with them
     * @return what happens; empty where one of both has no steady descent at the speed
     */
    public Optional<SurfaceMove> lower(double speed, double time, double mix) {
        return move(0, speed, time, mix);
    }

    /** Back to the reference set-up; parameters as in {@link #lower}. */
    public Optional<SurfaceMove> raise(double speed, double time, double mix) {
        return move(1, speed, time, mix);
    }

    private Optional<SurfaceMove> move(double share, double speed, double time, double mix) {
        Optional<Steady> from = flight.steady(share, speed, lowest, highest);
        Optional<Steady> to = flight.steady(1 - share, speed, lowest, highest);
        return from.flatMap(a -> to.map(b -> {
            double elevatorTo = a.elevator() + mix * (b.elevator() - a.elevator());
            return watched(new PitchFlight.Schedule(share, 1 - share, time, a.elevator(), elevatorTo), a.state(), mix);
        }));
    }

    private SurfaceMove watched(PitchFlight.Schedule schedule, PitchFlight.State start, double mix) {
        double sink = start.speed() * Math.sin(start.angle());
        double above = 0;
        double below = 0;
        double most = start.load();
        double least = start.load();
        double slowest = start.speed();
        double fastest = start.speed();
        for (PitchFlight.State state : flight.fly(schedule, start, schedule.time() + AFTER)) {
            double offPath = state.height() + sink * state.time();
            above = Math.max(above, offPath);
            below = Math.max(below, -offPath);
            most = Math.max(most, state.load());
            least = Math.min(least, state.load());
            slowest = Math.min(slowest, state.speed());
            fastest = Math.max(fastest, state.speed());
        }
        return new SurfaceMove(schedule.time(), mix, above, below, most, least, slowest, fastest);
    }
}
