package throwline.section;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import throwline.numerics.Interpolation;

/** The curves of an airfoil at one measured deflection over Reynolds number. Safe for several threads. */
final class CleanPolars {

    /**
     * A Reynolds number this near in ln to a measured one counts as measured: 5 % in speed (PRACTICE, methods manual
     * 3.5).
     */
    private static final double AT_STATION = 0.05;

    /**
     * A measured curve is moved by at most this factor of Reynolds number: the law was checked no further (book of cases,
     * each Reynolds number left out; PRACTICE).
     */
    private static final double FARTHEST = 2;

    /** Below this camber an airfoil is symmetric, as in {@link LiftStations}. */
    private static final double SYMMETRIC = 0.003;

    /** Most lift is scaled as if it were at least this, so that a lift near nothing is not blown up (PRACTICE). */
    private static final double LEAST_SCALED = 0.2;

    private final Airfoil airfoil;
    private final List<LiftStation> lifts;
    private final List<DragStation> drags;

    /** What was asked for last: a search for an elevator asks for one Reynolds number again and again. */
    private volatile Optional<Known> last = Optional.empty();

    private CleanPolars(Airfoil airfoil, List<LiftStation> lifts, List<DragStation> drags) {
        this.airfoil = airfoil;
        this.lifts = lifts;
        this.drags = drags;
    }

    /**
     * The curves from runs at one deflection.
     *
     * @param airfoil the airfoil
     * @param runs its runs at this deflection
     * @param deflectionLift what that deflection adds to maximum lift
     */
    static CleanPolars of(Airfoil airfoil, List<PolarRun> runs, double deflectionLift) {
        List<LiftStation> lifts = new LiftStations(airfoil, deflectionLift).make(runs);
        boolean symmetric = airfoil.camber() < SYMMETRIC && deflectionLift == 0;
        List<DragStation> drags = new DragStations(symmetric).make(runs, reynolds -> liftAt(airfoil, lifts, reynolds));
        return new CleanPolars(airfoil, lifts, drags);
    }

    /** True where both lift and drag were measured. */
    boolean usable() {
        return !lifts.isEmpty() && !drags.isEmpty();
    }

    /** Reynolds numbers at which curves bend: the measured ones, and the farthest that they are moved to. */
    DoubleStream bends() {
        double[] measured = DoubleStream.concat(
                        lifts.stream().mapToDouble(LiftStation::reynolds),
                        drags.stream().mapToDouble(DragStation::reynolds))
                .toArray();
        DoubleStream moved = DoubleStream.of(
                lifts.get(0).reynolds() / FARTHEST,
                drags.get(0).reynolds() / FARTHEST,
                lifts.get(lifts.size() - 1).reynolds() * FARTHEST,
                drags.get(drags.size() - 1).reynolds() * FARTHEST);
        return DoubleStream.concat(DoubleStream.of(measured), moved);
    }

    private record Known(double reynolds, CleanCurve curve) {}

    /** The curve at a Reynolds number. */
    CleanCurve at(double reynolds) {
        Optional<Known> known = last;
        if (known.isPresent() && known.get().reynolds == reynolds) {
            return known.get().curve;
        }
        CleanCurve curve = new CleanCurve(liftAt(airfoil, lifts, reynolds), dragAt(reynolds), basis(reynolds));
        last = Optional.of(new Known(reynolds, curve));
        return curve;
    }

    private static LiftStation liftAt(Airfoil airfoil, List<LiftStation> lifts, double reynolds) {
        LiftStation first = lifts.get(0);
        LiftStation last = lifts.get(lifts.size() - 1);
        if (reynolds <= first.reynolds()) {
            return moved(airfoil, first, reynolds);
        }
        if (reynolds >= last.reynolds()) {
            return moved(airfoil, last, reynolds);
        }
        int i = 1;
        while (lifts.get(i).reynolds() < reynolds) {
            i++;
        }
        LiftStation below = lifts.get(i - 1);
        LiftStation above = lifts.get(i);
        return below.blend(above, share(below.reynolds(), above.reynolds(), reynolds), reynolds);
    }

    private DragStation dragAt(double reynolds) {
        DragStation first = drags.get(0);
        DragStation last = drags.get(drags.size() - 1);
        if (reynolds <= first.reynolds()) {
            return moved(airfoil, first, reynolds);
        }
        if (reynolds >= last.reynolds()) {
            return moved(airfoil, last, reynolds);
        }
        int i = 1;
        while (drags.get(i).reynolds() < reynolds) {
            i++;
        }
        DragStation below = drags.get(i - 1);
        DragStation above = drags.get(i);
        return below.blend(above, share(below.reynolds(), above.reynolds(), reynolds), reynolds);
    }

    private static double share(double below, double above, double reynolds) {
        return Math.log(reynolds / below) / Math.log(above / below);
    }

    private static double reachable(double from, double to) {
        return Interpolation.clamp(to, from / FARTHEST, from * FARTHEST);
    }

    private static LiftStation moved(Airfoil airfoil, LiftStation station, double reynolds) {
        double target = reachable(station.reynolds(), reynolds);
        ReynoldsLaw law = ReynoldsLaw.of(airfoil);
        double rise = law.maxLiftRise(station.reynolds(), target);
        double shift = law.zeroLiftShift(station.reynolds(), target);
        double upper = 1 + rise / Math.max(LEAST_SCALED, station.maxLift());
        double lower = 1 + rise / Math.max(LEAST_SCALED, -station.minLift());
        double[] lift = station.lift().clone();
        for (int i = 0; i < lift.length; i++) {
            lift[i] *= i < NodeLayout.ZERO_LIFT ? lower : upper;
        }
        double zeroLift = station.zeroLiftAngle() + shift;
        double[] alpha = NodeLayout.angles(
                station.lowerStallAngle() + shift - rise / station.slope(),
                zeroLift,
                station.stallAngle() + shift + rise / station.slope());
        return new LiftStation(reynolds, alpha, lift, station.moment(), station.slope(), station.reach());
    }

    private static DragStation moved(Airfoil airfoil, DragStation station, double reynolds) {
        double target = reachable(station.reynolds(), reynolds);
        double rise = ReynoldsLaw.of(airfoil).logDragRise(station.reynolds(), target);
        return new DragStation(reynolds, raised(station.byLift(), rise), raised(station.byNode(), rise));
    }

    private static double[] raised(double[] values, double rise) {
        double[] raised = new double[values.length];
        for (int i = 0; i < raised.length; i++) {
            raised[i] = values[i] + rise;
        }
        return raised;
    }

    private Basis basis(double reynolds) {
        return airfoil.likeness().map(like -> like.basis(reynolds)).orElseGet(() -> basisOfOwn(reynolds));
    }

    private Basis basisOfOwn(double reynolds) {
        double low = lifts.get(0).reynolds();
        double high = lifts.get(lifts.size() - 1).reynolds();
        for (LiftStation station : lifts) {
            if (Math.abs(Math.log(station.reynolds() / reynolds)) < AT_STATION) {
                return Basis.MEASURED;
            }
        }
        if (reynolds > low && reynolds < high) {
            return Basis.BETWEEN;
        }
        return reynolds >= low / FARTHEST && reynolds <= high * FARTHEST ? Basis.MOVED : Basis.CLAMPED;
    }
}
