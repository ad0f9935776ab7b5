package throwline.sizing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.AllowedSolution;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;
import throwline.flight.Airframe;
import throwline.flight.Flight;
import throwline.flight.PullStallSpeed;
import throwline.flight.PullUp;
import throwline.flight.Stall;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.model.Surface;
import throwline.sizing.LoopHelp.AtSpeed;
import throwline.sizing.LoopHelp.Pull;

/**
 * Search for how far flaps should go down with full up elevator for the tightest pull. For each flap throw the elevator's
 * throw is the largest, up to its travel, with which the stick at full still leaves a margin before wing and tail stall;
 * of these pulls the one with the highest load is taken.
 */
public final class LoopSearch {

    /** Angle of attack that full stick must leave before the wing stalls, rad (PRACTICE). */
    public static final double MARGIN = Math.toRadians(2);

    private static final int FLAP_STEPS = 4;

    /** The elevator's throw is found to this, rad. */
    private static final double THROW_TOLERANCE = Math.toRadians(0.05);

    private static final int MOST_EVALUATIONS = 60;

    private final Airframe airframe;
    private final Pack pack;
    private final SurfaceGroups groups;
    private final SetUp setUp;
    private final double lift;
    private final double travel;

    /**
     * @param airframe the model
     * @param pack with this battery
     * @param groups its flaps
     * @param setUp in which it loops
     * @param lift most lift of its wing over what is expected, as flights have it; above 1 it is taken as 1
     */
    public LoopSearch(Airframe airframe, Pack pack, SurfaceGroups groups, SetUp setUp, double lift) {
        this.airframe = airframe;
        this.pack = pack;
        this.groups = groups;
        this.setUp = setUp;
        this.lift = lift;
        travel = airframe.model().tail().elevator().travelUp();
    }

    /**
     * The search.
     *
     * @param ownElevator throw of the model's own pull stick, rad, up positive
     * @param speed at the entry, m/s
     * @param otherSpeeds at which the answer is shown too, m/s
     * @return empty where the model does not fly or pull at that speed
     */
    public Optional<LoopHelp> at(double ownElevator, double speed, List<Double> otherSpeeds) {
        Puller puller = new Puller();
        Optional<Pull> own = puller.pull(0, ownElevator, speed);
        Optional<Pull> alone = widest(puller, 0, speed);
        if (own.isEmpty() || alone.isEmpty()) {
            return Optional.empty();
        }
        double most = Math.min(free(), alone.get().elevator());
        List<Pull> points = new ArrayList<>(List.of(alone.get()));
        points.addAll(IntStream.rangeClosed(1, most > 0 ? FLAP_STEPS : 0)
                .parallel()
                .mapToObj(i -> widest(new Puller(), most * i / FLAP_STEPS, speed))
                .flatMap(Optional::stream)
                .toList());
        Pull best = points.stream().max(Comparator.comparingDouble(Pull::load)).orElseThrow();
        List<AtSpeed> others = new ArrayList<>();
        for (double other : otherSpeeds) {
            Optional<Pull> without = puller.pull(0, best.elevator(), other);
            Optional<Pull> with = puller.pull(best.flap(), best.elevator(), other);
            if (without.isPresent() && with.isPresent()) {
                others.add(new AtSpeed(other, without.get(), with.get()));
            }
        }
        return Optional.of(new LoopHelp(
                speed,
                own.get(),
                best,
                points,
                stops(puller, best, most, speed),
                puller.stallsBelow(best, speed),
                others));
    }

    /** The stick of a pull. */
    public Stick.Pull stick(Pull pull, String name) {
        return stick(pull.flap(), pull.elevator(), name);
    }

    private Stick.Pull stick(double flap, double elevator, String name) {
        Map<String, Double> moved = new LinkedHashMap<>();
        if (flap > 0) {
            groups.flaps().forEach(s -> moved.put(s.name(), Math.min(flap, free(s))));
        }
        return new Stick.Pull(name, moved, -elevator, List.of());
    }

    private double free() {
        return groups.flaps().stream().mapToDouble(this::free).max().orElse(0);
    }

    private double free(Surface surface) {
        return surface.travelDown() - surface.reached(setUp.deflection(surface.name()));
    }

    /** The pull with the largest elevator throw that keeps the margins. */
    private Optional<Pull> widest(Puller puller, double flap, double speed) {
        Optional<Pull> whole = puller.pull(flap, travel, speed);
        if (whole.isEmpty() || spare(whole) >= 0) {
            return whole;
        }
        UnivariateFunction spare = elevator -> spare(puller.pull(flap, elevator, speed));
        return spare.value(0) <= 0
                ? Optional.empty()
                : puller.pull(
                        flap,
                        new BracketingNthOrderBrentSolver(THROW_TOLERANCE, 5)
                                .solve(MOST_EVALUATIONS, spare, 0, travel, AllowedSolution.LEFT_SIDE),
                        speed);
    }

    /** Angle of attack that a pull leaves beyond the margin, rad; negative where it does not end at the elevator. */
    private static double spare(Optional<Pull> pull) {
        return pull.filter(p -> p.setBy() == PullUp.Limit.ELEVATOR)
                        .map(Pull::angleLeft)
                        .orElse(0.0)
                - MARGIN;
    }

    private List<Limit> stops(Puller puller, Pull best, double mostFlap, double speed) {
        List<Limit> stops = new ArrayList<>();
        if (best.elevator() >= travel) {
            stops.add(Limit.ELEVATOR_TRAVEL_USED);
        } else {
            boolean tail = puller.pull(best.flap(), Math.min(travel, best.elevator() + Math.toRadians(1)), speed)
                    .filter(p -> p.setBy() == PullUp.Limit.TAIL)
                    .isPresent();
            stops.add(tail ? Limit.TAIL_MARGIN : Limit.WING_MARGIN);
        }
        if (mostFlap <= 0) {
            stops.add(Limit.FLAPS_DOWN);
        } else if (best.flap() >= mostFlap) {
            stops.add(mostFlap < free() ? Limit.ELEVATOR_THROW : Limit.FLAPS_DOWN);
        } else {
            stops.add(Limit.BEST_REACHED);
        }
        return stops;
    }

    /** Flight of one thread in the set-up. */
    private final class Puller {
        private final Flight flight = new Flight(airframe, setUp);
        private final Optional<Stall> stall = flight.stall(pack);

        Optional<Pull> pull(double flap, double elevator, double speed) {
            return stall.flatMap(s -> flight.pull(stick(flap, elevator, ""), pack, s, speed))
                    .map(p -> p.withLift(lift))
                    .map(p -> new Pull(
                            flap,
                            elevator,
                            p.load(),
                            p.radius(),
                            p.limit(),
                            p.limit() == PullUp.Limit.WING ? 0 : p.angleLeft()));
        }

        Optional<Double> stallsBelow(Pull best, double speed) {
            return stall.flatMap(s -> new PullStallSpeed(flight, pack, s)
                    .of(stick(best.flap(), best.elevator(), ""), speed).stream()
                            .boxed()
                            .findFirst());
        }
    }
}
