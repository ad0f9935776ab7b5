package throwline.flight;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;

/** Moves the surfaces of the model in flight from a reference set-up to another and back, at one speed. */
public final class SurfaceMover {

    /** Radius of gyration in pitch over the body's length, middle of 0.17 to 0.19 (MEMORY, aeroplanes of one engine). */
    private static final double GYRATION = 0.18;

    /** The model is watched for so long after the surfaces have stopped, s. */
    private static final double AFTER = 3;

    /** Angles of attack that the table covers beyond those of both set-ups, rad. */
    private static final double BELOW = Math.toRadians(7);

    private static final double ABOVE = Math.toRadians(9);

    private final PitchFlight flight;
    private final Attitude reference;
    private final Attitude other;

    /**
     * Solves what it needs.
     *
     * @param airframe the model
     * @param from the reference set-up
     * @param to the other set-up
     * @param pack with this battery
     * @param reference steady descent in the reference set-up
     * @param other steady descent in the other set-up at the same speed
     */
    public SurfaceMover(Airframe airframe, SetUp from, SetUp to, Pack pack, Attitude reference, Attitude other) {
        this.reference = reference;
        this.other = other;
        Model model = airframe.model();
        double lowest = Math.min(reference.alpha(), other.alpha()) - BELOW;
        double highest = Math.max(reference.alpha(), other.alpha()) + ABOVE;
        double elevator = (reference.elevator() + other.elevator()) / 2;
        PitchTable table = new PitchTable(
                share -> new Trimmer(airframe, Deflections.of(model.wing(), between(from, to, share))),
                pack,
                reference.speed(),
                elevator,
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

    /** To the other set-up: the surfaces take {@code time} seconds, {@code mix} of the elevator's change goes with them. */
    public SurfaceMove lower(double time, double mix) {
        return move(0, reference, other, time, mix);
    }

    /** Back to the reference set-up. */
    public SurfaceMove raise(double time, double mix) {
        return move(1, other, reference, time, mix);
    }

    private SurfaceMove move(double share, Attitude from, Attitude to, double time, double mix) {
        double elevatorTo = from.elevator() + mix * (to.elevator() - from.elevator());
        PitchFlight.Schedule schedule = new PitchFlight.Schedule(share, 1 - share, time, from.elevator(), elevatorTo);
        double sink = from.speed() * Math.sin(from.descentAngle());
        PitchFlight.State start = new PitchFlight.State(0, from.speed(), from.descentAngle(), from.alpha(), 0, 1);
        double above = 0;
        double below = 0;
        double most = 1;
        double least = 1;
        double slowest = from.speed();
        double fastest = from.speed();
        for (PitchFlight.State state : flight.fly(schedule, start, time + AFTER)) {
            double offPath = state.height() + sink * state.time();
            above = Math.max(above, offPath);
            below = Math.max(below, -offPath);
            most = Math.max(most, state.load());
            least = Math.min(least, state.load());
            slowest = Math.min(slowest, state.speed());
            fastest = Math.max(fastest, state.speed());
        }
        return new SurfaceMove(time, mix, above, below, most, least, slowest, fastest);
    }
}
