package throwline.flight;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import throwline.flight.Attitude.ElevatorLimit;
import throwline.flight.ElevatorSearch.Held;
import throwline.flight.TailSurface.TailForces;
import throwline.flight.TailWake.TailAir;
import throwline.liftingline.InfluenceMatrix;
import throwline.liftingline.LiftingLineProblem;
import throwline.liftingline.LiftingLineSolution;
import throwline.liftingline.LiftingLineSolver;
import throwline.liftingline.Motion;
import throwline.liftingline.SpanGrid;
import throwline.liftingline.StripForces;
import throwline.liftingline.WingCurves;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.section.SectionCurve;

/**
 * Balances the whole model at a speed and an angle of attack: forces of the wing strip by strip at their own places,
 * tail in the wing's wake, body and drag items, moments about the balance point; the elevator is what makes them vanish.
 * No angle is taken as small except a strip's own downwash angle.
 *
 * <p>Holds the last solution as a start for the next, within one question: one thread at a time.
 */
final class Trimmer {

    private final Airframe airframe;
    private final Deflections deflections;
    private final Model model;
    private final InfluenceMatrix influence;
    private final LiftingLineSolver solver;
    private final TailSurface tail;
    private final TailWake wake;
    private final double[] trailingEdgeDrop;
    private final double areaTimesChord;
    private final WingCurves wingCurves;
    private final RecentCurves curvesBySpeed;
    private final ElevatorSearch elevators;
    private final Optional<Throttle> throttle;
    private Optional<PropellerJet> lastJet = Optional.empty();
    private final RecentCurves blownBySpeed = new RecentCurves();
    private Optional<LiftingLineSolution> last = Optional.empty();

    /**
     * The model in free air, throttle closed.
     *
     * @param airframe the model
     * @param deflections where its surfaces stand
     */
    Trimmer(Airframe airframe, Deflections deflections) {
        this(
                airframe,
                deflections,
                airframe.influence(),
                airframe.strips().curves(deflections::on),
                new RecentCurves());
    }

    /** The same model with the same surfaces and the motor running; it shares its workspace and starts from what this solved last. */
    Trimmer with(Throttle open) {
        return new Trimmer(this, open);
    }

    private Trimmer(Trimmer closed, Throttle open) {
        airframe = closed.airframe;
        deflections = closed.deflections;
        model = closed.model;
        influence = closed.influence;
        solver = closed.solver;
        tail = closed.tail;
        wake = closed.wake;
        trailingEdgeDrop = closed.trailingEdgeDrop;
        areaTimesChord = closed.areaTimesChord;
        wingCurves = closed.wingCurves;
        curvesBySpeed = closed.curvesBySpeed;
        elevators = new ElevatorSearch(model.tail().elevator());
        throttle = Optional.of(open);
        last = closed.last;
    }

    private Trimmer(
            Airframe airframe,
            Deflections deflections,
            InfluenceMatrix influence,
            WingCurves wingCurves,
            RecentCurves curvesBySpeed) {
        this.influence = influence;
        throttle = Optional.empty();
        this.airframe = airframe;
        this.deflections = deflections;
        this.wingCurves = wingCurves;
        this.curvesBySpeed = curvesBySpeed;
        model = airframe.model();
        areaTimesChord = model.wing().area() * model.wing().meanAerodynamicChord();
        solver = airframe.solver(influence);
        tail = airframe.tailSurface(GroundStance.belowTail(model, influence.ground()));
        elevators = new ElevatorSearch(model.tail().elevator());
        SpanGrid grid = airframe.strips().grid();
        wake = new TailWake(model, grid, tail.grid(), influence.ground());
        trailingEdgeDrop = new double[grid.size()];
        for (int i = 0; i < grid.size(); i++) {
            int side = grid.control(i) < 0 ? -1 : 1;
            trailingEdgeDrop[i] = airframe.strips()
                    .surface(i)
                    .map(s -> s.chordFraction() * Math.sin(deflections.on(s, side)))
                    .orElse(0.0);
        }
    }

    /** The same model with the same surfaces near the ground, throttle closed. */
    Trimmer near(InfluenceMatrix influence) {
        return new Trimmer(airframe, deflections, influence, wingCurves, curvesBySpeed);
    }

    Airframe airframe() {
        return airframe;
    }

    /** This, ready for another question: what was solved before must not show in the last digits of the next answer. */
    Trimmer fresh() {
        last = Optional.empty();
        elevators.forget();
        return this;
    }

    /** The wing's section curves. */
    WingCurves wingCurves() {
        return wingCurves;
    }

    /** The wing's section curves at a speed. */
    List<SectionCurve> curves(double speed) {
        return curvesBySpeed.at(speed, v -> wingCurves.at(airframe.reynoldsPerMetre(v)));
    }

    /** The wing alone. */
    LiftingLineSolution wing(double speed, double alpha) {
        return wing(speed, alpha, Motion.straight());
    }

    private LiftingLineSolution wing(double speed, double alpha, Motion motion) {
        double incidence = alpha + model.wing().incidence();
        Optional<PropellerJet> jet = jet(speed);
        LiftingLineProblem problem = jet.isEmpty()
                ? LiftingLineProblem.of(curves(speed), incidence, motion)
                : new LiftingLineProblem(
                        blown(jet.get(), speed),
                        incidence,
                        motion,
                        jet.get().onWing(airframe.strips().grid(), alpha, false));
        LiftingLineSolution solution = solver.solve(problem, last);
        last = Optional.of(solution);
        return solution;
    }

    /** The jet of the propeller at a speed; empty with the throttle closed. */
    Optional<PropellerJet> jet(double speed) {
        if (throttle.isPresent() && lastJet.filter(jet -> jet.speed() == speed).isEmpty()) {
            lastJet = Optional.of(new PropellerJet(airframe, throttle.get(), speed));
        }
        return lastJet;
    }

    private List<SectionCurve> blown(PropellerJet jet, double speed) {
        return blownBySpeed.at(speed, v -> jet.blown(curves(v)));
    }

    private TailAir tailAir(StripForces forces, double speed, double alpha) {
        TailAir free = wake.at(forces, alpha, trailingEdgeDrop);
        return jet(speed)
                .map(jet -> jet.onTail(free, tail.grid(), alpha, meanDownwash(free)))
                .orElse(free);
    }

    /** The balanced model. */
    Attitude at(Pack pack, double speed, double alpha) {
        return at(pack, speed, alpha, 0);
    }

    /** The balanced model while it pitches; the rate is over the speed, rad/m, nose up positive. */
    Attitude at(Pack pack, double speed, double alpha, double pitch) {
        BalancedMoment at = new BalancedMoment(pack, speed, alpha, pitch);
        return at.with(elevators.hold(at.tailplane, at.parts.moment()));
    }

    /** The model at an angle of attack with the elevator held: not balanced. */
    Attitude heldAt(Pack pack, double speed, double alpha, double elevator) {
        return heldAt(pack, speed, alpha, elevator, 0);
    }

    /** The same while it pitches; the rate is over the speed, rad/m, nose up positive. */
    Attitude heldAt(Pack pack, double speed, double alpha, double elevator, double pitch) {
        BalancedMoment at = new BalancedMoment(pack, speed, alpha, pitch);
        return at.with(new Held(elevator, ElevatorLimit.NONE, at.tailplane.forces(elevator)));
    }

    /** State at an angle of attack and a speed, before the elevator is known. */
    private final class BalancedMoment {
        private final double speed;
        private final double alpha;
        private final LiftingLineSolution solution;
        private final TailAir tailAir;
        private final FixedParts parts;
        private final Tailplane tailplane;

        BalancedMoment(Pack pack, double speed, double alpha, double pitch) {
            this.speed = speed;
            this.alpha = alpha;
            // The lifting line turns about its own middle; the model turns about its balance point.
            double fromBalance = pitch * (model.wing().chordAt(0) / 4 - pack.balance());
            solution = wing(speed, alpha + fromBalance, new Motion(0, pitch, 0, 0));
            StripForces forces = StripForces.of(solution);
            tailAir = tailAir(forces, speed, alpha);
            parts = new FixedParts(airframe, pack, alpha, forces, jet(speed));
            Tailplane straight = new Tailplane(pack, speed, alpha, tailAir);
            tailplane = pitch == 0
                    ? straight
                    : straight.turned(pitch * (straight.back + model.tail().chord() / 2));
        }

        Attitude with(Held held) {
            TailForces f = held.forces();
            double area = model.wing().area();
            return new Attitude(
                    speed,
                    alpha,
                    (parts.lift() + f.lift()) / area,
                    (parts.drag() + f.drag()) / area,
                    held.elevator(),
                    held.limit(),
                    f.stallMargin(),
                    tailAir.inWake(),
                    meanDownwash(tailAir),
                    meanPressure(tailAir),
                    parts.moments(tailplane.moment(f)),
                    solution,
                    solution.status().converged() && f.converged());
        }
    }

    /**
     * How the tail's moment answers at an attitude, by central differences of half a degree.
     *
     * @return change of moment coefficient per rad of elevator and per rad of angle at the tail
     */
    TailPower tailPower(Pack pack, Attitude attitude) {
        TailAir air = tailAir(StripForces.of(attitude.wing()), attitude.speed(), attitude.alpha());
        double step = Math.toRadians(0.5);
        Tailplane here = new Tailplane(pack, attitude.speed(), attitude.alpha(), air);
        double byElevator = slope(here, attitude.elevator() + step, here, attitude.elevator() - step, step);
        double byAngle = slope(here.turned(step), attitude.elevator(), here.turned(-step), attitude.elevator(), step);
        return new TailPower(byElevator, byAngle);
    }

    /**
     * Hinge moment of the elevator at an attitude, over dynamic pressure, m^3, positive where the air drives it down; empty
     * where the tail was not solved.
     *
     * @param elevator where it stands, rad
     */
    OptionalDouble elevatorHinge(Pack pack, Attitude attitude, double elevator) {
        TailAir air = tailAir(StripForces.of(attitude.wing()), attitude.speed(), attitude.alpha());
        TailForces forces = new Tailplane(pack, attitude.speed(), attitude.alpha(), air).forces(elevator);
        return forces.converged() ? OptionalDouble.of(forces.hinge()) : OptionalDouble.empty();
    }

    private static double slope(Tailplane more, double moreElevator, Tailplane less, double lessElevator, double step) {
        double above = more.moment(more.forces(moreElevator));
        double below = less.moment(less.forces(lessElevator));
        return (above - below) / (2 * step);
    }

    /** Change of the tail's moment coefficient per rad of elevator, and per rad of the air's angle at the tail. */
    record TailPower(double byElevator, double byAngle) {}

    private double meanDownwash(TailAir air) {
        SpanGrid grid = tail.grid();
        double sum = 0;
        for (int i = 0; i < grid.size(); i++) {
            sum += air.inflow().downwash(i) * grid.width(i);
        }
        return sum / grid.span();
    }

    private double meanPressure(TailAir air) {
        SpanGrid grid = tail.grid();
        double sum = 0;
        for (int i = 0; i < grid.size(); i++) {
            sum += air.inflow().speed(i) * air.inflow().speed(i) * grid.width(i);
        }
        return sum / grid.span();
    }

    private double perChord(double moment) {
        return moment / areaTimesChord;
    }

    /** The tail at one attitude, for any elevator. */
    private final class Tailplane implements ElevatorSearch.Tail {
        private final double alpha;
        private final double angle;
        private final double reynolds;
        private final TailAir air;
        private final double back;
        private final double up;

        Tailplane(Pack pack, double speed, double alpha, TailAir air) {
            this(
                    alpha,
                    alpha + model.tail().incidence(),
                    airframe.reynoldsPerMetre(speed),
                    air,
                    model.tail().arm() + model.tail().chord() / 4 - pack.balance(),
                    model.wing().height() + model.tail().height());
        }

        private Tailplane(double alpha, double angle, double reynolds, TailAir air, double back, double up) {
            this.alpha = alpha;
            this.angle = angle;
            this.reynolds = reynolds;
            this.air = air;
            this.back = back;
            this.up = up;
        }

        Tailplane turned(double more) {
            return new Tailplane(alpha, angle + more, reynolds, air, back, up);
        }

        @Override
        public double angle() {
            return angle - meanDownwash(air);
        }

        @Override
        public TailForces forces(double elevator) {
            return tail.at(angle, elevator, air.inflow(), reynolds);
        }

        @Override
        public double moment(TailForces f) {
            ForceSum sum = new ForceSum(alpha);
            sum.add(f.lift(), f.drag(), f.moment(), back, up);
            return perChord(sum.moment());
        }
    }
}
