package throwline.flight;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;
import throwline.flight.BlowBackSolver.Lines;
import throwline.flight.BlowBackSolver.Told;
import throwline.liftingline.HingeMoments;
import throwline.liftingline.LiftingLineSolution;
import throwline.liftingline.LiftingLineSolver;
import throwline.liftingline.StripForces;
import throwline.linkage.ControlRun;
import throwline.linkage.ServoBlowBack;
import throwline.linkage.ServoBlowBack.Rest;
import throwline.model.Elevator;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.Servo;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.model.Surface;
import throwline.numerics.Interpolation;

/**
 * Survey of where the surfaces of a set-up really stand at a speed. The set-up alone is taken at the lift that it
 * carries in its steady descent; a roll stick at the angle of attack of that, before the model answers; a pull at the
 * wing's stall, to which it leads; the elevator, from neutral, in the air of the steady descent. Surfaces without a
 * known torque stay where they are told to be. How the moments run on the way from neutral is looked at once for a pack
 * and a stick, a little below the stall, and guides the search at every speed.
 */
final class BlowBackSurvey {

    /** How far from the angle of attack of the descent it is looked for with the surfaces pushed back, rad. */
    private static final double BELOW = Math.toRadians(15);

    private static final double ABOVE = Math.toRadians(12);

    /** Where the way of surfaces from neutral is looked at: speed, m/s, and angle below the stall, rad. */
    private static final double TYPICAL_SPEED = 15;

    private static final double BELOW_STALL = Math.toRadians(4);

    private final Trimmer trimmer;
    private final Airframe airframe;
    private final Model model;
    private final SetUp setUp;
    private final ServoLoads loads;
    private final LiftingLineSolver solver;
    private final Map<String, ControlRun> runs;
    private final IdentityHashMap<Pack, Map<String, Optional<Lines>>> linesOf = new IdentityHashMap<>();

    BlowBackSurvey(Trimmer trimmer, SetUp setUp, ServoLoads loads) {
        this.trimmer = trimmer;
        this.setUp = setUp;
        this.loads = loads;
        airframe = trimmer.airframe();
        model = airframe.model();
        solver = airframe.wingSolver();
        runs = ControlRun.of(model);
    }

    /**
     * Every surface that the set-up or a stick moves from neutral.
     *
     * @param pack the pack
     * @param stall the stall of this set-up with it
     * @param speed m/s
     * @param descent the steady descent at that speed, where there is one
     * @param share how hard the air pushes against what is worked out: 1, or more for a band
     * @param sticks with which sticks at full; the set-up alone is always worked out
     */
    List<Standing> at(
            Pack pack, Stall stall, double speed, Optional<Attitude> descent, double share, Predicate<String> sticks) {
        double pressure = share * airframe.air().dynamicPressure(speed);
        List<Standing> all = new ArrayList<>();
        Optional<LiftingLineSolution> level = descent.map(Attitude::wing).or(() -> loads.level(pack, stall, speed));
        Deflections told = Deflections.of(model.wing(), setUp);
        Pose alone = new Pose("", told, told);
        Optional<LiftingLineSolution> settled = level;
        if (level.isPresent()) {
            Air air = new Air(alone, speed, pressure, level.get(), true);
            alone.settle(air, pack, stall);
            settled = air.last;
        }
        alone.addTo(all);
        double atStall = stall.attitude().alpha() + model.wing().incidence();
        for (Stick stick : model.sticks()) {
            if (stick.worksIn(setUp) && sticks.test(stick.name())) {
                Pose pose = new Pose(stick.name(), Deflections.of(model.wing(), setUp, stick, 1), told);
                settled.map(s -> new Air(pose, speed, pressure, s, false))
                        .ifPresent(
                                air -> pose.settle(stick instanceof Stick.Roll ? air : air.at(atStall), pack, stall));
                pose.addTo(all);
            }
        }
        elevator(all, pack, descent, pressure, sticks);
        return all;
    }

    private ControlRun run(String surface) {
        return Objects.requireNonNull(runs.get(surface));
    }

    private Optional<ServoBlowBack> held(String surface, double chord) {
        return ServoBlowBack.of(run(surface), model.servo(surface), chord);
    }

    /** Surface on one side. */
    private static final class SpanPlace {
        private final Surface surface;
        private final int side;
        private final double told;
        private final double bench;
        private final boolean shown;
        private final Optional<ServoBlowBack> held;
        private Optional<Rest> rest = Optional.empty();

        SpanPlace(Surface surface, int side, double told, double bench, boolean shown, Optional<ServoBlowBack> held) {
            this.surface = surface;
            this.side = side;
            this.told = told;
            this.bench = bench;
            this.shown = shown;
            this.held = held;
        }
    }

    /** All surfaces of the wing, told where to stand. */
    private final class Pose {
        private final String stick;
        private final List<SpanPlace> places = new ArrayList<>();
        private final List<SpanPlace> yielding;

        Pose(String stick, Deflections told, Deflections alone) {
            this.stick = stick;
            for (Surface surface : model.wing().surfaces()) {
                double chord = model.wing().throwChord(surface);
                for (int side : new int[] {-1, 1}) {
                    double angle = told.on(surface, side);
                    boolean moved = stick.isEmpty() ? angle != 0 : angle != alone.on(surface, side);
                    places.add(new SpanPlace(
                            surface,
                            side,
                            angle,
                            run(surface.name()).benchAngle(angle),
                            moved,
                            angle == 0 && !moved ? Optional.empty() : held(surface.name(), chord)));
                }
            }
            yielding = places.stream().filter(place -> place.held.isPresent()).toList();
        }

        /** Lets the surfaces come to rest where any is shown that does not stay where it is told to be. */
        void settle(Air air, Pack pack, Stall stall) {
            if (yielding.stream().noneMatch(place -> place.shown)) {
                return;
            }
            BlowBackSolver surfaces = new BlowBackSolver(yielding.stream()
                    .map(place -> new Told(place.held.orElseThrow(), place.bench))
                    .toList());
            linesOf.computeIfAbsent(pack, wanted -> new HashMap<>())
                    .computeIfAbsent(stick, wanted -> surfaces.lines(typical(stall)::at))
                    .flatMap(lines -> surfaces.rest(lines.times(air.pressure), air::at))
                    .ifPresent(rests -> {
                        for (int i = 0; i < rests.size(); i++) {
                            yielding.get(i).rest = Optional.of(rests.get(i));
                        }
                    });
        }

        /** Air of dynamic pressure 1 in which to look at the way from neutral. */
        private Air typical(Stall stall) {
            LiftingLineSolution wing = stall.attitude().wing();
            return new Air(this, TYPICAL_SPEED, 1, wing, false)
                    .at(wing.problem().incidence() - BELOW_STALL);
        }

        void addTo(List<Standing> all) {
            places.stream()
                    .filter(place -> place.shown)
                    .map(place ->
                            new Standing(place.surface.name(), stick, place.side, place.told, place.bench, place.rest))
                    .forEach(all::add);
        }

        /** The yielding surfaces at these angles, the others where they are told to be. */
        Deflections with(double[] angles) {
            Map<String, Double> left = new LinkedHashMap<>();
            Map<String, Double> right = new LinkedHashMap<>();
            for (SpanPlace place : places) {
                int k = yielding.indexOf(place);
                (place.side < 0 ? left : right).put(place.surface.name(), k < 0 ? place.bench : angles[k]);
            }
            return new Deflections(left, right, false);
        }
    }

    /** The air that a pose meets. */
    private final class Air {
        private final Pose pose;
        private final double speed;
        private final double pressure;
        private final LiftingLineSolution start;
        private final boolean sameLift;
        private double incidence;
        private Optional<LiftingLineSolution> last;

        Air(Pose pose, double speed, double pressure, LiftingLineSolution start, boolean sameLift) {
            this.pose = pose;
            this.speed = speed;
            this.pressure = pressure;
            this.start = start;
            this.sameLift = sameLift;
            incidence = start.problem().incidence();
            last = Optional.of(start);
        }

        Air at(double wanted) {
            incidence = wanted;
            return this;
        }

        /** At the lift that is carried, or at one incidence. */
        Optional<double[]> at(double[] angles) {
            FixedSurfaceWing wing = wing(angles);
            if (!sameLift) {
                return hinges(Optional.of(wing.at(incidence)));
            }
            double lift = StripForces.of(start).liftCoefficient();
            double near = last.map(l -> l.problem().incidence()).orElse(incidence);
            return hinges(wing.carrying(lift, near, incidence - BELOW, incidence + ABOVE));
        }

        private FixedSurfaceWing wing(double[] angles) {
            Deflections deflections = pose.with(angles);
            return new FixedSurfaceWing(
                    solver,
                    airframe.strips().curves(deflections::on, airframe.reynoldsPerMetre(speed)),
                    last.orElse(start));
        }

        private Optional<double[]> hinges(Optional<LiftingLineSolution> found) {
            last = found.filter(solution -> solution.status().converged());
            return last.map(solution -> {
                HingeMoments moments = HingeMoments.of(solution, airframe.strips());
                return pose.yielding.stream()
                        .mapToDouble(place -> pressure * moments.of(place.surface.name(), place.side))
                        .toArray();
            });
        }
    }

    private void elevator(
            List<Standing> all, Pack pack, Optional<Attitude> descent, double pressure, Predicate<String> sticks) {
        Elevator elevator = model.tail().elevator();
        if (setUp.elevator() != 0) {
            all.add(elevator("", setUp.elevator(), pack, descent, pressure));
        }
        for (Stick stick : model.sticks()) {
            if (stick instanceof Stick.Pull pull
                    && sticks.test(stick.name())
                    && stick.worksIn(setUp)
                    && pull.elevator() != 0) {
                double wanted = setUp.elevator() + pull.elevator();
                double told = Interpolation.clamp(wanted, -elevator.travelUp(), elevator.travelDown());
                all.add(elevator(stick.name(), told, pack, descent, pressure));
            }
        }
    }

    private Standing elevator(String stick, double told, Pack pack, Optional<Attitude> descent, double pressure) {
        double bench = run(Servo.ELEVATOR).benchAngle(told);
        Optional<Rest> rest = held(Servo.ELEVATOR, model.tail().throwChord())
                .flatMap(held -> descent.flatMap(attitude -> {
                    BlowBackSolver.Moments air = angles -> trimmer.elevatorHinge(pack, attitude, angles[0]).stream()
                            .mapToObj(hinge -> new double[] {pressure * hinge})
                            .findFirst();
                    BlowBackSolver one = new BlowBackSolver(List.of(new Told(held, bench)));
                    return one.lines(air).flatMap(lines -> one.rest(lines, air));
                }))
                .map(rests -> rests.get(0));
        return new Standing(Servo.ELEVATOR, stick, 0, told, bench, rest);
    }
}
