package throwline.flight;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.analysis.UnivariateFunction;
import throwline.air.Gravity;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.numerics.ParabolaTop;
import throwline.power.Drive;

/**
 * Flight of a model in a set-up with its motor running. One thread at a time; no answer depends on what was asked before.
 */
public final class PoweredFlight {

    /** Speeds at which a climb is looked for, over the stall speed: not below 1.2 (methods manual 20.13). */
    private static final double[] CLIMBS = {1.2, 1.3, 1.45, 1.7, 2.0, 2.4};

    /** Speed over the stall speed that full throttle must hold for a fastest level flight to be looked for. */
    private static final double HELD = 1.25;

    /** Lift-off over the stall speed with the throttle closed (methods manual 20.14: 1.15 to 1.2). */
    private static final double LIFT_OFF = 1.15;

    /** Speeds on the run at which the forces are worked out, over that of lift-off. */
    private static final double[] ROLLING = {0.2, 0.5, 0.8, 1.02};

    /** How far the nose is brought up to see what load costs, rad. */
    private static final double PULLED = Math.toRadians(2);

    private static final double FASTEST = 6;
    private static final double STRAIGHT_UP = Math.PI / 2;

    private final Airframe airframe;
    private final Trimmer closed;
    private final Pack pack;
    private final Drive drive;
    private final Stall stall;

    /**
     * @param airframe the model
     * @param setUp where its surfaces stand
     * @param pack with this battery
     * @param drive its drive
     * @param stall its stall with the throttle closed
     */
    public PoweredFlight(Airframe airframe, SetUp setUp, Pack pack, Drive drive, Stall stall) {
        this.airframe = airframe;
        closed = new Trimmer(airframe, Deflections.of(airframe.model().wing(), setUp));
        this.pack = pack;
        this.drive = drive;
        this.stall = stall;
    }

    private Trimmer at(double throttle) {
        return closed.fresh().with(new Throttle(drive, throttle));
    }

    /** Steady straight flight at a throttle and a speed, m/s, climbing or not; empty where there is none. */
    public Optional<PoweredPoint> steady(double throttle, double speed) {
        return steady(throttle).at(speed);
    }

    private SteadyPower steady(double throttle) {
        return new SteadyPower(at(throttle), pack, stall.attitude());
    }

    /** Level flight at a speed, m/s; empty where full throttle does not hold it. */
    public Optional<PoweredPoint> level(double speed) {
        return levels().at(speed);
    }

    /** Level flight at several speeds, m/s, in order; those that full throttle does not hold are left out. */
    public List<PoweredPoint> levels(List<Double> speeds) {
        LevelSearch levels = levels();
        return speeds.stream().map(levels::at).flatMap(Optional::stream).toList();
    }

    private LevelSearch levels() {
        return new LevelSearch(closed.fresh(), pack, drive, stall.attitude());
    }

    /** The climb that gains height fastest at a throttle; empty where nothing was found. */
    public Optional<PoweredPoint> bestClimb(double throttle) {
        return best(throttle, PoweredPoint::climbRate);
    }

    /** The steepest climb at a throttle; empty where nothing was found. */
    public Optional<PoweredPoint> steepestClimb(double throttle) {
        return best(throttle, PoweredPoint::climbAngle);
    }

    private Optional<PoweredPoint> best(double throttle, ToDoubleFunction<PoweredPoint> climb) {
        List<PoweredPoint> points = new ArrayList<>();
        SteadyPower steady = steady(throttle);
        for (double over : CLIMBS) {
            steady.at(over * stall.speed()).ifPresent(points::add);
        }
        int best = -1;
        for (int i = 0; i < points.size(); i++) {
            if (best < 0 || climb.applyAsDouble(points.get(i)) > climb.applyAsDouble(points.get(best))) {
                best = i;
            }
        }
        if (best <= 0 || best == points.size() - 1) {
            return best < 0 ? Optional.empty() : Optional.of(points.get(best));
        }
        PoweredPoint middle = points.get(best);
        List<PoweredPoint> around = points.subList(best - 1, best + 2);
        double[] speeds = around.stream().mapToDouble(PoweredPoint::speed).toArray();
        double[] climbs = around.stream().mapToDouble(climb).toArray();
        return ParabolaTop.through(speeds, climbs)
                .flatMap(top -> steady.at(top.x()))
                .filter(there -> climb.applyAsDouble(there) > climb.applyAsDouble(middle))
                .or(() -> Optional.of(middle));
    }

    /** The fastest level flight at a throttle; empty where it does not hold its height even slowly. */
    public Optional<PoweredPoint> fastest(double throttle) {
        double low = HELD * stall.speed();
        double high = FASTEST * stall.speed();
        SteadyPower steady = steady(throttle);
        UnivariateFunction sinks = v -> -climb(steady, v);
        if (sinks.value(low) >= 0) {
            return Optional.empty();
        }
        double guess = Math.min(high, 2 * low);
        OptionalDouble found = new WarmStartSecant(1e-3, guess, 0.02).solve(sinks, low, high);
        return found.isPresent() ? steady.at(found.getAsDouble()) : Optional.empty();
    }

    /** Climb angle, rad; where no path is steady it goes straight up, or down more steeply than it can be held. */
    private double climb(SteadyPower steady, double speed) {
        return steady.at(speed).map(PoweredPoint::climbAngle).orElseGet(() -> pullsUp(speed) ? 1.0 : -1.0);
    }

    /**
     * Going around from a steady approach.
     *
     * @param approach with the throttle closed
     */
    public Optional<GoAround> goAround(Attitude approach) {
        double speed = approach.speed();
        Optional<PoweredPoint> open = steady(1, speed);
        boolean up = open.isEmpty() && pullsUp(speed);
        if (open.isEmpty() && !up) {
            return Optional.empty();
        }
        double resultant = airframe.balance(pack).resultantFor(speed);
        double shut = approach.drag() / resultant;
        double pulled = open.map(point -> point.attitude().drag() / resultant).orElseGet(() -> shut - pull(speed));
        Attitude raised = closed.fresh().at(pack, speed, approach.alpha() + PULLED);
        double perLoad = (raised.drag() - approach.drag()) / (raised.lift() - approach.lift());
        GoAroundFlight flown = new GoAroundFlight(speed, approach.descentAngle(), shut, pulled, Math.max(0, perLoad));
        return Optional.of(new GoAround(
                open.map(PoweredPoint::climbAngle).orElse(STRAIGHT_UP),
                flown.heightLost(),
                flown.way(),
                open.map(point -> point.attitude().elevator() - approach.elevator())));
    }

    /** True where full throttle pulls more than the weight at a speed, m/s. */
    public boolean pullsUp(double speed) {
        return pull(speed) > 1;
    }

    /** Pull at full throttle over the weight, at a speed, m/s. */
    public double pull(double speed) {
        return thrust(speed) / (pack.mass() * Gravity.STANDARD);
    }

    /** How it rolls and turns a model in steady flight with the motor running. */
    public Turning turning(PoweredPoint point) {
        return new TurningSearch(airframe, drive).at(point);
    }

    /** The model. */
    public Airframe airframe() {
        return airframe;
    }

    /** Pull at full throttle at a speed, m/s, in N. */
    public double thrust(double speed) {
        return drive.at(speed, 1, airframe.air().density()).thrust();
    }

    /**
     * Speed straight up at full throttle, where the pull holds weight and drag: the latter goes with the square of the speed
     * and is the weight at the speed of a dive straight down.
     *
     * @param dive speed straight down, m/s
     * @return m/s; empty where the pull does not hold the weight, and where that is no faster than climbs are looked for
     */
    public OptionalDouble straightUp(double dive) {
        UnivariateFunction missing = v -> pack.mass() * Gravity.STANDARD * (1 + v * v / (dive * dive)) - thrust(v);
        return missing.value(CLIMBS[0] * stall.speed()) >= 0
                ? OptionalDouble.empty()
                : new WarmStartSecant(1e-3, 0.3 * dive, pack.mass() * Gravity.STANDARD / dive).solve(missing, 0, dive);
    }

    /**
     * The take-off at full throttle from the field of the file, and on at the approach speed.
     *
     * @param ladder heights at which the model is solved above the ground
     */
    public TakeOff takeOff(GroundHeights ladder) {
        double speed = stall.approachSpeed();
        double climb = steady(1, speed).map(PoweredPoint::climbAngle).orElseGet(() -> pullsUp(speed) ? STRAIGHT_UP : 0);
        Trimmer rolling = closed.near(ladder.matrix(0)).with(new Throttle(drive, 1));
        double liftOff = LIFT_OFF * stall.speed();
        int n = ROLLING.length + 1;
        double[] speeds = new double[n];
        double[] pull = new double[n];
        double[] lift = new double[n];
        double area = airframe.model().wing().area();
        for (int i = 1; i < n; i++) {
            speeds[i] = ROLLING[i - 1] * liftOff;
            Attitude level = rolling.fresh().heldAt(pack, speeds[i], 0, 0);
            double pressureArea = airframe.air().dynamicPressure(speeds[i]) * area;
            pull[i] = -level.drag() * pressureArea;
            lift[i] = level.lift() * pressureArea;
        }
        double density = airframe.air().density();
        pull[0] = pull[1]
                + drive.at(0, 1, density).thrust()
                - drive.at(speeds[1], 1, density).thrust();
        lift[0] = lift[1];
        double friction = GroundRoll.friction(airframe.model());
        return new TakeOffRun(pack.mass(), friction, speeds, pull, lift)
                .fly(liftOff, airframe.model().field().wind(), climb);
    }

    /** The slowest flight at a throttle; empty where it was not found. */
    public Optional<PoweredStall> slowest(double throttle) {
        return new PoweredStallSearch(at(throttle), pack, stall).find(throttle);
    }
}
