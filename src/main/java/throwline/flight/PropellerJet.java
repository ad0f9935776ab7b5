package throwline.flight;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import throwline.flight.TailWake.TailAir;
import throwline.liftingline.BlownCurve;
import throwline.liftingline.Inflow;
import throwline.liftingline.SpanGrid;
import throwline.model.Model;
import throwline.model.Propeller;
import throwline.numerics.Interpolation;
import throwline.power.FiniteJet;
import throwline.power.OperatingPoint;
import throwline.power.PropellerForces;
import throwline.power.Slipstream;
import throwline.section.SectionCurve;

/**
 * The jet of the propeller over wing, body and tail at one airspeed: what it does to the air of each strip, to the lift that
 * a strip makes of it, and to the drag of what stands in it (methods manual 20.10 and 20.11). A jet follows the thrust axis
 * as the sum of the flight's air and what the propeller adds along its axis.
 */
final class PropellerJet {

    /** Strength of the jet's images round which a section begins to hold its most lift past the stall (methods manual 20.10). */
    private static final double HOLDS = 0.3;

    private static final double HOLDS_WITHIN = 0.1;

    /** Share of the jet's added pressure that reaches the tail (PRACTICE: 0.4 to 0.9, methods manual 20.11). */
    private static final double AT_TAIL = 0.6;

    /** The jet's effect fades from one to this many of its radii off its axis. */
    private static final double FADED = 1.5;

    /** Share of the swirl that the strips meet: a wing takes part of it out again (PRACTICE). */
    private static final double SWIRL = 0.5;

    private final Model model;
    private final Propeller propeller;
    private final Throttle throttle;
    private final OperatingPoint point;
    private final Slipstream stream;
    private final double speed;
    private final double pressure;
    private final double faster;
    private final double[] cover;
    private final double[] share;
    private final double held;
    private final double wingCover;
    private final double toTail;

    /**
     * @param airframe the model, which has a propeller
     * @param throttle its drive
     * @param speed airspeed, m/s, positive
     */
    PropellerJet(Airframe airframe, Throttle throttle, double speed) {
        model = airframe.model();
        propeller = model.propeller().orElseThrow();
        this.throttle = throttle;
        this.speed = speed;
        double density = airframe.air().density();
        pressure = airframe.air().dynamicPressure(speed);
        point = throttle.drive().at(speed, throttle.setting(), density);
        stream = Slipstream.of(point, propeller.diameter() / 2, density);
        double toWing = model.body().nose() + model.wing().chordAt(0) / 4;
        toTail = model.body().nose() + model.tail().arm() + model.tail().chord() / 4;
        faster = stream.speedAt(toWing) / speed - 1;
        double strength = Math.max(0, FiniteJet.strength(1 + faster));
        held = Interpolation.clamp((strength - HOLDS + HOLDS_WITHIN) / (2 * HOLDS_WITHIN), 0, 1);
        SpanGrid grid = airframe.strips().grid();
        cover = covered(grid, toWing);
        share = new double[cover.length];
        double inside = 0;
        for (int i = 0; i < cover.length; i++) {
            double lift = FiniteJet.lift(strength, stream.radiusAt(toWing) / grid.chord(i));
            share[i] = 1 - cover[i] * (1 - Math.min(1, lift));
            inside += cover[i] * grid.chord(i) * grid.width(i);
        }
        wingCover = inside / grid.area();
    }

    /** Share of each strip's width inside the jet and outside the body. */
    private double[] covered(SpanGrid grid, double toWing) {
        double radius = stream.radiusAt(toWing);
        double axis = propeller.height() + toWing * Math.tan(propeller.downThrust());
        double inner = model.body().width() / 2;
        double[] covered = new double[grid.size()];
        for (int i = grid.size() / 2; i < grid.size(); i++) {
            double above = model.wing().height()
                    + grid.control(i) * Math.tan(model.wing().dihedral())
                    - axis;
            double outer = Math.sqrt(Math.max(0, radius * radius - above * above));
            double both = Math.min(outer, grid.edge(i + 1)) - Math.max(inner, grid.edge(i));
            covered[i] = Math.max(0, both) / grid.width(i);
            covered[grid.mirror(i)] = covered[i];
        }
        return covered;
    }

    /** Airspeed, m/s. */
    double speed() {
        return speed;
    }

    /** State of the drive. */
    OperatingPoint point() {
        return point;
    }

    /** The jet itself. */
    Slipstream stream() {
        return stream;
    }

    /** The sections of the wing in this jet. Mirrored strips that were alike stay so. */
    List<SectionCurve> blown(List<SectionCurve> free) {
        int n = free.size();
        SectionCurve[] blown = new SectionCurve[n];
        for (int i = 0; i < n; i++) {
            int twin = n - 1 - i;
            boolean alike = twin < i && free.get(twin).equals(free.get(i));
            blown[i] = cover[i] == 0
                    ? free.get(i)
                    : alike ? blown[twin] : new BlownCurve(free.get(i), share[i], cover[i] * held);
        }
        return new ArrayList<>(Arrays.asList(blown));
    }

    /** Angle of the thrust axis to the flight path, rad. */
    double axisAngle(double alpha) {
        return alpha - propeller.downThrust();
    }

    /**
     * The air at the wing's strips.
     *
     * @param alpha angle of attack of the body's axis, rad
     * @param swirls true with the swirl of a propeller that turns to the right seen from behind: up on the left, down on
     *     the right
     */
    Inflow onWing(SpanGrid grid, double alpha, boolean swirls) {
        double angle = axisAngle(alpha);
        double swirl = swirls
                ? SWIRL * stream.swirlAt(model.body().nose() + model.wing().chordAt(0) / 4)
                : 0;
        double[] downwash = new double[cover.length];
        double[] speeds = new double[cover.length];
        for (int i = 0; i < cover.length; i++) {
            double added = cover[i] * faster;
            double along = 1 + added * Math.cos(angle);
            double down = added * Math.sin(angle);
            downwash[i] = Math.atan2(down, along) + cover[i] * swirl * Math.signum(grid.control(i));
            speeds[i] = Math.hypot(along, down);
        }
        return Inflow.of(downwash, speeds);
    }

    /**
     * The air at the tail.
     *
     * @param free what wing and body leave there
     * @param grid strips of the tail
     * @param alpha angle of attack of the body's axis, rad
     * @param downwash mean downwash of the wing there, rad
     */
    TailAir onTail(TailAir free, SpanGrid grid, double alpha, double downwash) {
        double there = stream.speedAt(toTail) / speed;
        double radius = stream.radiusAt(toTail);
        double fades = fading(offAxisAtTail(alpha, downwash, there), radius);
        double angle = axisAngle(alpha);
        double[] turned = new double[grid.size()];
        double[] speeds = new double[grid.size()];
        for (int i = 0; i < grid.size(); i++) {
            double y = Math.abs(grid.control(i));
            double half = grid.width(i) / 2;
            double inside = fades * Interpolation.clamp((radius - y + half) / (2 * half), 0, 1);
            double before = free.inflow().speed(i);
            double square = before * before + inside * AT_TAIL * (there * there - 1);
            speeds[i] = Math.sqrt(Math.max(0.25 * before * before, square));
            double added = speeds[i] - before;
            turned[i] = Math.atan2(
                    before * Math.sin(free.inflow().downwash(i)) + added * Math.sin(angle),
                    before * Math.cos(free.inflow().downwash(i)) + added * Math.cos(angle));
        }
        return new TailAir(Inflow.of(turned, speeds), free.inWake());
    }

    /** Distance of the tail from the jet's axis, m: the jet leaves along the thrust axis and is turned as the air is. */
    private double offAxisAtTail(double alpha, double downwash, double there) {
        double rise = axisAngle(alpha) / there - downwash + propeller.downThrust();
        double axis = propeller.height() + toTail * rise;
        return Math.abs(model.wing().height() + model.tail().height() - axis);
    }

    private static double fading(double off, double radius) {
        return Interpolation.clamp((FADED - off / radius) / (FADED - 1), 0, 1);
    }

    /** Drag of a part in this jet over that in even air. */
    double onPart(DragItem item) {
        double square = Math.pow(1 + faster, 2) - 1;
        return switch (item.part()) {
            case BODY -> 1 + square;
            case WHEELS -> 1 + square * fading(Math.abs(item.height() - propeller.height()), propeller.diameter() / 2);
            case WING -> 1 + square * wingCover;
            case FIN -> 1 + AT_TAIL * (Math.pow(stream.speedAt(toTail) / speed, 2) - 1);
            case PROPELLER -> 0;
            case ELSEWHERE -> 1;
        };
    }

    /** Adds the propeller's own force: its pull along its axis, and that of its blades across it. */
    void addTo(ForceSum forces, double alpha, double balance) {
        double angle = axisAngle(alpha);
        double across = PropellerForces.normalPerRadian(throttle.drive().blades(), stream) * Math.sin(angle);
        double pull = point.thrust();
        forces.add(
                (pull * Math.sin(angle) + across * Math.cos(angle)) / pressure,
                (across * Math.sin(angle) - pull * Math.cos(angle)) / pressure,
                0,
                -(model.body().nose() + balance),
                propeller.height());
    }

    /** Lift of the propeller's own force over dynamic pressure, m^2. */
    double ownLift(double alpha) {
        ForceSum own = new ForceSum(alpha);
        addTo(own, alpha, 0);
        return own.lift();
    }

    /** The same of its drag, m^2: negative where it pulls. */
    double ownDrag(double alpha) {
        ForceSum own = new ForceSum(alpha);
        addTo(own, alpha, 0);
        return own.drag();
    }
}
