package throwline.flight;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import throwline.air.Gravity;
import throwline.liftingline.HingeMoments;
import throwline.liftingline.LiftingLineProblem;
import throwline.liftingline.LiftingLineSolution;
import throwline.liftingline.LiftingLineSolver;
import throwline.liftingline.Motion;
import throwline.linkage.ControlRun;
import throwline.model.Elevator;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.Servo;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.model.Surface;
import throwline.numerics.Interpolation;
import throwline.section.SectionCurve;

/**
 * Torque that each servo of a model has to hold in one set-up: hinge moments from the lifting line at set-up plus stick,
 * through the linkage (methods manual 14.1). Roll sticks are taken at the angle of attack of level flight, before the model
 * answers; pulls at the wing's stall, to which they lead.
 */
final class ServoLoads {

    /** A servo is to be twice as strong as the torque that it has to hold (PRACTICE, methods manual 14.1). */
    static final double RESERVE = 2;

    /** Speed whose Reynolds number the sections are taken at, m/s: hinge moments hardly depend on it. */
    private static final double TYPICAL_SPEED = 15;

    private static final double WIDEST = Math.toRadians(40);

    private final Trimmer trimmer;
    private final Airframe airframe;
    private final Model model;
    private final SetUp setUp;
    private final Map<String, ControlRun> runs;
    private final Deflections alone;
    private final LiftingLineSolver solver;
    private final Map<String, List<SectionCurve>> curvesByStick = new HashMap<>();

    ServoLoads(Trimmer trimmer, SetUp setUp) {
        this.trimmer = trimmer;
        this.setUp = setUp;
        airframe = trimmer.airframe();
        model = airframe.model();
        runs = ControlRun.of(model);
        alone = Deflections.of(model.wing(), setUp);
        solver = airframe.wingSolver();
    }

    /**
     * The loads at a speed, one entry a surface; a surface whose load was not found is left out, and so is an elevator where
     * there is no steady descent.
     *
     * @param pack the pack
     * @param stall the stall of this set-up with it
     * @param speed m/s
     * @param descent the steady descent at that speed, where there is one
     */
    List<ServoLoad> at(Pack pack, Stall stall, double speed, Optional<Attitude> descent) {
        List<ServoLoad> all = new ArrayList<>(wing(pack, stall, speed, descent));
        descent.ifPresent(attitude -> all.addAll(elevator(pack, attitude)));
        Map<String, ServoLoad> worst = new LinkedHashMap<>();
        all.forEach(load -> worst.merge(load.surface(), load, (a, b) -> b.size() > a.size() ? b : a));
        return List.copyOf(worst.values());
    }

    /**
     * The highest speed at which every servo of a wing surface that the set-up moves has its reserve.
     *
     * @param pack the pack
     * @param stall the stall of this set-up with it
     * @param near a speed near by, m/s
     * @return empty where no such surface has a rating, or none was found
     */
    Optional<ServoLimit> limit(Pack pack, Stall stall, double near) {
        Optional<ServoLimit> first = limitFrom(pack, stall, near);
        return first.flatMap(limit -> limitFrom(pack, stall, limit.speed()));
    }

    private Optional<ServoLimit> limitFrom(Pack pack, Stall stall, double speed) {
        return wing(pack, stall, speed, Optional.empty()).stream()
                .filter(load -> setUp.deflection(load.surface()) != 0)
                .flatMap(load -> limit(load, speed).stream())
                .min(Comparator.comparingDouble(ServoLimit::speed));
    }

    /** Loads grow nearly with the square of the speed. */
    private Optional<ServoLimit> limit(ServoLoad load, double speed) {
        OptionalDouble rating = run(load.surface()).rating();
        if (rating.isEmpty() || load.servo().isEmpty() || load.servo().getAsDouble() == 0) {
            return Optional.empty();
        }
        double share = rating.getAsDouble() / (RESERVE * load.servo().getAsDouble());
        return Optional.of(new ServoLimit(speed * Math.sqrt(share), load.surface()));
    }

    private List<ServoLoad> wing(Pack pack, Stall stall, double speed, Optional<Attitude> descent) {
        Optional<LiftingLineSolution> level = descent.map(Attitude::wing).or(() -> level(pack, stall, speed));
        if (level.isEmpty()) {
            return List.of();
        }
        double incidence = level.get().problem().incidence();
        double atStall = stall.attitude().alpha() + model.wing().incidence();
        List<ServoLoad> loads = new ArrayList<>();
        add(loads, "", alone, speed, level.get());
        for (Stick stick : model.sticks()) {
            Deflections with = Deflections.of(model.wing(), setUp, stick, 1);
            if (stick.worksIn(setUp) && !with.equals(alone)) {
                double at = stick instanceof Stick.Roll ? incidence : atStall;
                add(loads, stick.name(), with, speed, solve(stick.name(), with, at, level));
            }
        }
        return loads;
    }

    private LiftingLineSolution solve(
            String stick, Deflections deflections, double incidence, Optional<LiftingLineSolution> start) {
        return solver.solve(LiftingLineProblem.of(curves(stick, deflections), incidence, Motion.straight()), start);
    }

    private List<SectionCurve> curves(String stick, Deflections deflections) {
        return curvesByStick.computeIfAbsent(
                stick, s -> airframe.strips().curves(deflections::on, airframe.reynoldsPerMetre(TYPICAL_SPEED)));
    }

    /** Loads of the surfaces that the stick moves, of all without one. */
    private void add(
            List<ServoLoad> loads, String stick, Deflections deflections, double speed, LiftingLineSolution solution) {
        if (!solution.status().converged()) {
            return;
        }
        HingeMoments moments = HingeMoments.of(solution, airframe.strips());
        for (Surface surface : model.wing().surfaces()) {
            for (int side : new int[] {-1, 1}) {
                double deflection = deflections.on(surface, side);
                boolean moved = stick.isEmpty() || deflection != alone.on(surface, side);
                if (!moved) {
                    continue;
                }
                double hinge = airframe.air().dynamicPressure(speed) * moments.of(surface.name(), side);
                loads.add(load(surface.name(), stick, side, deflection, hinge));
            }
        }
    }

    private ControlRun run(String surface) {
        return Objects.requireNonNull(runs.get(surface));
    }

    private ServoLoad load(String surface, String stick, int side, double deflection, double hinge) {
        OptionalDouble servo = run(surface).servoTorque(deflection, hinge);
        return new ServoLoad(surface, stick, side, deflection, hinge, servo);
    }

    private List<ServoLoad> elevator(Pack pack, Attitude attitude) {
        Elevator elevator = model.tail().elevator();
        return Stream.concat(
                        Stream.of(new Stick.Pull("", Map.of(), 0, List.of())),
                        model.sticks().stream()
                                .filter(s -> s.worksIn(setUp))
                                .flatMap(s -> s instanceof Stick.Pull p ? Stream.of(p) : Stream.empty())
                                .filter(p -> p.elevator() != 0))
                .flatMap(pull -> {
                    double wanted = attitude.elevator() + pull.elevator();
                    double there = Interpolation.clamp(wanted, -elevator.travelUp(), elevator.travelDown());
                    double pressure = airframe.air().dynamicPressure(attitude.speed());
                    return trimmer.elevatorHinge(pack, attitude, there).stream()
                            .mapToObj(hinge -> load(Servo.ELEVATOR, pull.name(), 0, there, pressure * hinge));
                })
                .filter(load -> load.hinge() != 0)
                .toList();
    }

    /** The wing where it alone carries the weight; at its stall where it is too slow for that. */
    Optional<LiftingLineSolution> level(Pack pack, Stall stall, double speed) {
        double wanted = pack.mass()
                * Gravity.STANDARD
                / (airframe.air().dynamicPressure(speed) * model.wing().area());
        double most = stall.attitude().alpha() + model.wing().incidence();
        Optional<LiftingLineSolution> level = new FixedSurfaceWing(
                        solver, curves("", alone), stall.attitude().wing())
                .carrying(wanted, most - WIDEST / 4, most - WIDEST, most);
        if (level.isPresent()) {
            return level;
        }
        return speed <= stall.speed() ? Optional.of(stall.attitude().wing()) : Optional.empty();
    }
}
