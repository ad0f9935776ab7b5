package throwline.sizing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import throwline.flight.Airframe;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.sizing.CandidateEvaluator.Place;
import throwline.sizing.CandidateFlight.StallSpeeds;
import throwline.sizing.FoundSetUp.Moved;
import throwline.sizing.FoundSetUp.OneDegree;
import throwline.sizing.Lattice.Edge;
import throwline.sizing.SetUpWants.WantedDescent;

/**
 * Finds where flaps and ailerons must stand. A lattice over all that the surfaces can do shows on which edges a wanted
 * value is crossed; a bracketing solver finds the places; of these the best is taken:
 *
 * <ul>
 *   <li>for a descent the one with the lowest stall speed, so with the most speed in hand;
 *   <li>for a stall speed alone the one that moves least, flaps before ailerons;
 *   <li>for both the one on the curve of the wanted descent that has the wanted stall speed.
 * </ul>
 */
public final class SetUpSearch {

    private static final int FLAP_ANGLES = 6;
    /** Edges that are looked into: the most promising; more where two wants must meet somewhere between. */
    private static final int MOST_CANDIDATES = 2;

    private static final int MOST_WITH_TWO_WANTS = 4;
    private static final double DEGREE = Math.toRadians(1);

    /** An answer this near counts as met: far inside what is promised (1 per cent, 0.2 degrees). */
    private static final double STALL_TOLERANCE = 2e-3;

    private static final double ANGLE_TOLERANCE = Math.toRadians(0.05);

    /** A degree of aileron costs roll and loads the tips: it counts as ten degrees of flap. */
    private static final double AILERON_COST = 10;

    private final SurfaceGroups groups;
    private final SetUpWants wants;
    private final Function<SetUp, Optional<Double>> rollAtStops;
    private final CandidateEvaluator bench;
    private final Lattice lattice;
    private final Range ailerons;

    /**
     * @param airframe the model
     * @param pack with this battery
     * @param wants what is wanted
     * @param name of the set-up to be found
     */
    public SetUpSearch(Airframe airframe, Pack pack, SetUpWants wants, String name) {
        this(
                SurfaceGroups.of(airframe.model()),
                wants,
                new CandidateEvaluator(
                        airframe,
                        pack,
                        SurfaceGroups.of(airframe.model()),
                        name,
                        wants.descent().map(WantedDescent::speed)),
                setUp -> wants.roll()
                        .flatMap(
                                r -> new RollThrow(airframe, pack, SurfaceGroups.of(airframe.model()), setUp, r.speed())
                                        .atStops()));
    }

    /**
     * A search among candidates of any kind.
     *
     * @param groups what may be moved
     * @param wants what is wanted
     * @param bench flies candidates
     * @param rollAtStops roll rate with the ailerons at their stops, rad/s; empty where no roll is wanted or there is none
     */
    SetUpSearch(
            SurfaceGroups groups,
            SetUpWants wants,
            CandidateEvaluator bench,
            Function<SetUp, Optional<Double>> rollAtStops) {
        this.groups = groups;
        this.wants = wants;
        this.bench = bench;
        this.rollAtStops = rollAtStops;
        Range reserve = groups.aileronReserve();
        // Coming down asks for ailerons up; to droop them is of use only for a stall speed.
        ailerons = wants.stallSpeed().isPresent() ? reserve : new Range(reserve.low(), 0);
        lattice = new Lattice(bench, groups.flapTravel().spread(FLAP_ANGLES), ailerons.spread(2));
    }

    /** The answer. */
    public FoundSetUp find() {
        List<CandidateFlight> good = candidates(lattice.crossings(this::miss), this::miss, this::cost);
        Optional<CandidateFlight> between = good.isEmpty() ? Optional.of(nearest()) : Optional.empty();
        if (good.isEmpty() && between.get().fault().isEmpty()) {
            between = between.map(this::betweenNodes);
            good = candidates(edgesFrom(between.get()), this::miss, this::cost);
        }
        if (wants.descent().isPresent() && wants.stallSpeed().isPresent() && !good.isEmpty()) {
            good = new ContourSearch(bench, groups).alongTo(good, this::miss, this::stallMiss);
        }
        Optional<CandidateFlight> best = good.stream()
                .filter(t -> Math.abs(stallMiss(t)) <= STALL_TOLERANCE)
                .filter(this::rolls)
                .findFirst();
        if (best.isPresent()) {
            return found(best.get(), true, List.of());
        }
        if (good.isEmpty()) {
            CandidateFlight nearest = between.orElseThrow();
            return found(nearest, false, reasons(nearest));
        }
        List<Limit> why = new ArrayList<>();
        CandidateFlight nearest = good.stream()
                .filter(this::rolls)
                .min(Comparator.comparingDouble(t -> Math.abs(stallMiss(t))))
                .orElse(good.get(0));
        if (Math.abs(stallMiss(nearest)) > STALL_TOLERANCE) {
            why.add(Limit.STALL_GOES_WITH_ANGLE);
        }
        if (!rolls(nearest)) {
            why.add(Limit.AILERON_TRAVEL);
        }
        return found(nearest, false, why);
    }

    /** The first wanted value's miss: rad of descent, else a share of the stall speed. */
    private double miss(CandidateFlight trial) {
        return wants.descent().map(d -> trial.angle() - d.angle()).orElseGet(() -> stallMiss(trial));
    }

    /** Share by which the stall speed is missed; zero where none is wanted. */
    private double stallMiss(CandidateFlight trial) {
        return wants.stallSpeed().map(v -> trial.stallSpeed() / v - 1).orElse(0.0);
    }

    private double cost(CandidateFlight trial) {
        if (wants.descent().isPresent()) {
            return wants.stallSpeed().isPresent() ? Math.abs(stallMiss(trial)) : trial.stallSpeed();
        }
        return Math.abs(trial.flap()) + AILERON_COST * Math.abs(trial.aileron());
    }

    /** Set-ups that fly and meet the first want, best first; from the most promising edges only. */
    private List<CandidateFlight> candidates(
            List<Edge> edges, ToDoubleFunction<CandidateFlight> zero, ToDoubleFunction<CandidateFlight> cost) {
        boolean angle = wants.descent().isPresent();
        List<CandidateFlight> roots = edges.stream()
                .sorted(Comparator.comparingDouble(e -> e.estimate(zero, cost)))
                .limit(angle && wants.stallSpeed().isPresent() ? MOST_WITH_TWO_WANTS : MOST_CANDIDATES)
                .toList()
                .parallelStream()
                .flatMap(e -> lattice.root(e, zero).stream())
                .filter(t -> Math.abs(zero.applyAsDouble(t)) < (angle ? ANGLE_TOLERANCE : STALL_TOLERANCE))
                .filter(t -> t.fault().isEmpty())
                .sorted(Comparator.comparingDouble(cost))
                .toList();
        boolean inside = angle && !roots.isEmpty() && wants.stallSpeed().isEmpty() && !isAtEnd(roots.get(0));
        return inside
                ? Stream.concat(new ContourSearch(bench, groups).lowest(roots, zero, cost).stream(), roots.stream())
                        .sorted(Comparator.comparingDouble(cost))
                        .toList()
                : roots;
    }

    private boolean isAtEnd(CandidateFlight trial) {
        Range flaps = groups.flapTravel();
        Range ailerons = groups.aileronReserve();
        return trial.aileron() == 0
                || flaps.isAtHigh(trial.flap())
                || flaps.isAtLow(trial.flap())
                || ailerons.isAtLow(trial.aileron());
    }

    private boolean rolls(CandidateFlight trial) {
        return wants.roll()
                .map(r -> rollAtStops
                        .apply(trial.setUp())
                        .map(rate -> rate >= r.rate())
                        .orElse(false))
                .orElse(true);
    }

    /** Where the wanted value cannot be had: the flown set-up nearest to it, moved on to where flying ends. */
    private CandidateFlight nearest() {
        List<CandidateFlight> flying = new ArrayList<>(
                lattice.trials().stream().filter(t -> t.fault().isEmpty()).toList());
        lattice.edges().stream()
                .filter(e -> e.from().fault().isEmpty() != e.to().fault().isEmpty())
                .filter(e -> !(Math.min(Math.abs(miss(e.from())), Math.abs(miss(e.to())))
                        > flying.stream()
                                .mapToDouble(t -> Math.abs(miss(t)))
                                .min()
                                .orElse(0)))
                .forEach(e -> flying.add(lattice.lastGood(e)));
        return flying.stream()
                .filter(t -> !Double.isNaN(miss(t)))
                .min(Comparator.comparingDouble(t -> Math.abs(miss(t))))
                .orElseGet(this::slowest);
    }

    /** What the nodes miss: further on from the nearest of them, up to what lies beyond the wanted value. */
    private CandidateFlight betweenNodes(CandidateFlight nearest) {
        double side = Math.signum(miss(nearest));
        return lowest(nearest, t -> side * miss(t));
    }

    /** The lowest value round a node; the steps begin with half a cell of the lattice. */
    private CandidateFlight lowest(CandidateFlight node, ToDoubleFunction<CandidateFlight> value) {
        return new CompassSearch(bench, groups.flapTravel(), ailerons)
                .lowest(node, value, groups.flapTravel().width() / (2 * (FLAP_ANGLES - 1)), ailerons.width() / 2);
    }

    /** From a set-up to all nodes on the other side of the wanted value. */
    private List<Edge> edgesFrom(CandidateFlight trial) {
        return lattice.trials().stream()
                .filter(node -> miss(node) * miss(trial) <= 0)
                .map(node -> new Edge(trial, node))
                .toList();
    }

    /** Where nothing flies at the wanted speed: what comes nearest to flying. */
    private CandidateFlight slowest() {
        return lattice.trials().stream()
                .filter(t -> !Double.isNaN(t.stallSpeed()))
                .min(Comparator.comparingDouble(CandidateFlight::stallSpeed))
                .orElse(lattice.trials().get(0));
    }

    /** Why the nearest is not nearer. */
    private List<Limit> reasons(CandidateFlight nearest) {
        return nearest.fault().map(List::of).orElseGet(() -> stops(nearest, t -> -Math.abs(miss(t))));
    }

    /** What a set-up stands at, and what keeps its neighbours that would be better from flying. */
    private List<Limit> stops(CandidateFlight trial, ToDoubleFunction<CandidateFlight> better) {
        List<Limit> stops = new ArrayList<>();
        Range flaps = groups.flapTravel();
        Range ailerons = groups.aileronReserve();
        if (flaps.isAtHigh(trial.flap())) {
            stops.add(Limit.FLAPS_DOWN);
        }
        if (flaps.isAtLow(trial.flap())) {
            stops.add(Limit.FLAPS_UP);
        }
        if (ailerons.isAtLow(trial.aileron())) {
            stops.add(Limit.ROLL_RESERVE_UP);
        }
        if (ailerons.isAtHigh(trial.aileron())) {
            stops.add(Limit.ROLL_RESERVE_DOWN);
        }
        if (wants.descent().isEmpty()
                && trial.stall().filter(StallSpeeds::elevatorLimited).isPresent()) {
            stops.add(Limit.ELEVATOR_TRAVEL);
        }
        lattice.edges().stream()
                .filter(e -> touches(e, trial))
                .flatMap(e -> Stream.of(e.from(), e.to()))
                .filter(t -> !(better.applyAsDouble(t) <= better.applyAsDouble(trial)))
                .flatMap(t -> t.fault().stream())
                .distinct()
                .forEach(stops::add);
        return stops.isEmpty() ? List.of(Limit.BEST_REACHED) : stops;
    }

    private static boolean touches(Edge edge, CandidateFlight trial) {
        CandidateFlight a = edge.from();
        CandidateFlight b = edge.to();
        return between(a.flap(), trial.flap(), b.flap()) && between(a.aileron(), trial.aileron(), b.aileron());
    }

    private static boolean between(double a, double x, double b) {
        return Math.min(a, b) <= x && x <= Math.max(a, b);
    }

    private FoundSetUp found(CandidateFlight trial, boolean met, List<Limit> why) {
        ToDoubleFunction<CandidateFlight> reach =
                wants.descent().isPresent() ? CandidateFlight::angle : t -> -t.stallSpeed();
        List<CandidateFlight> flying = Stream.concat(lattice.trials().stream(), Stream.of(trial))
                .filter(t -> t.fault().isEmpty() && !Double.isNaN(reach.applyAsDouble(t)))
                .sorted(Comparator.comparingDouble(reach))
                .toList();
        CandidateFlight least = flying.isEmpty() ? trial : lowest(flying.get(0), reach);
        CandidateFlight most = flying.isEmpty() ? trial : flying.get(flying.size() - 1);
        List<OneDegree> oneDegree = Stream.of(Moved.values())
                .flatMap(moved -> oneDegree(trial, moved).stream())
                .toList();
        boolean flaps = !groups.flapTravel().isNothing()
                && (groups.aileronTravel().isNothing() || trial.aileron() == 0 || !isFlapAtEnd(trial));
        return new FoundSetUp(
                trial,
                met,
                why,
                least,
                most,
                stops(most, reach),
                oneDegree,
                line(trial, flaps),
                flaps ? Moved.FLAPS : Moved.AILERONS,
                rollAtStops.apply(trial.setUp()),
                bench.flights());
    }

    private boolean isFlapAtEnd(CandidateFlight trial) {
        return groups.flapTravel().isAtHigh(trial.flap()) || groups.flapTravel().isAtLow(trial.flap());
    }

    private Optional<OneDegree> oneDegree(CandidateFlight trial, Moved moved) {
        boolean flaps = moved == Moved.FLAPS;
        Range range = flaps ? groups.flapTravel() : groups.aileronReserve();
        if (range.isNothing()) {
            return Optional.empty();
        }
        double now = flaps ? trial.flap() : trial.aileron();
        double wanted = flaps ? DEGREE : -DEGREE;
        double step = range.clamp(now + wanted) == now + wanted ? wanted : -wanted;
        CandidateFlight other =
                bench.at(new Place(trial.flap() + (flaps ? step : 0), trial.aileron() + (flaps ? 0 : step)));
        Optional<Double> angle = wants.descent().map(d -> other.angle() - trial.angle());
        return Double.isNaN(other.stallSpeed() - trial.stallSpeed())
                        || angle.filter(a -> a.isNaN()).isPresent()
                ? Optional.empty()
                : Optional.of(new OneDegree(moved, step, other.stallSpeed() - trial.stallSpeed(), angle));
    }

    /** Set-ups with one surface moved over all that it can do, the answer among them. */
    private List<CandidateFlight> line(CandidateFlight trial, boolean flaps) {
        double[] angles = flaps
                ? groups.flapTravel().spread(FLAP_ANGLES)
                : groups.aileronReserve().spread(FLAP_ANGLES / 2);
        List<Place> places = new ArrayList<>();
        for (double angle : angles) {
            places.add(flaps ? new Place(angle, trial.aileron()) : new Place(trial.flap(), angle));
        }
        return Stream.concat(bench.at(places).stream(), Stream.of(trial))
                .filter(t -> !Double.isNaN(t.stallSpeed()))
                .sorted(Comparator.comparingDouble(t -> flaps ? t.flap() : t.aileron()))
                .toList();
    }
}
