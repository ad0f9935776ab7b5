package throwline.flight;

import java.util.Arrays;
import java.util.Optional;
import throwline.air.Gravity;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.numerics.Interpolation;
import throwline.power.Drive;

/**
 * Loops of a model in a set-up at full throttle (methods manual 12.4). One thread at a time; no answer depends on what was
 * asked before.
 */
public final class PoweredLoops {

    /** Airspeeds at which the forces of a loop are worked out, over that of its entry. */
    private static final double[] SPEEDS = {0.15, 0.3, 0.5, 0.75, 1, 1.5};

    private final Airframe airframe;
    private final SetUp setUp;
    private final Pack pack;
    private final double[] speeds;
    private final Throttle full;
    private final Trimmer open;
    private final Stall stall;
    private final Unknowns unknowns;

    /**
     * Errors of a loop's forces.
     *
     * @param thrust share of the pull
     * @param drag share of the drag
     */
    public record Unknowns(double thrust, double drag) {}

    /**
     * @param airframe the model
     * @param setUp where its surfaces stand
     * @param pack with this battery
     * @param drive its drive
     * @param stall its stall with the throttle closed
     * @param unknowns what is not known
     */
    public PoweredLoops(Airframe airframe, SetUp setUp, Pack pack, Drive drive, Stall stall, Unknowns unknowns) {
        this(airframe, setUp, pack, drive, stall, unknowns, SPEEDS);
    }

    PoweredLoops(
            Airframe airframe, SetUp setUp, Pack pack, Drive drive, Stall stall, Unknowns unknowns, double... speeds) {
        this.speeds = speeds.clone();
        this.airframe = airframe;
        this.setUp = setUp;
        this.pack = pack;
        this.stall = stall;
        this.unknowns = unknowns;
        full = new Throttle(drive, 1);
        open = shut().with(full);
    }

    /**
     * The loop with a stick at full; empty where the pull or the forces on the way were not found.
     *
     * @param stick the stick
     * @param straight flight at the entry for which the elevator is trimmed
     */
    public Optional<PoweredLoop> at(Stick.Pull stick, Attitude straight) {
        PullFlight pulls = new PullFlight(airframe, setUp, open, Optional.of(full), pack, straight);
        return pulls.tightest(PullUpSearch.Path.LOOP, stick).flatMap(reached -> around(pulls.pulled(stick), reached));
    }

    /** Straight flight at full throttle; where there is none, for it climbs too steeply, with the throttle closed. */
    public Optional<Attitude> straight(double speed) {
        return new DescentSolver(open.fresh(), pack, stall.attitude())
                .at(speed)
                .steady()
                .or(() -> new DescentSolver(shut(), pack, stall.attitude())
                        .at(speed)
                        .steady());
    }

    private Trimmer shut() {
        return new Trimmer(airframe, Deflections.of(airframe.model().wing(), setUp));
    }

    private Optional<PoweredLoop> around(Trimmer trimmer, PullUpSearch.Reached reached) {
        PullUp pull = reached.pull();
        SteadyDescent balance = airframe.balance(pack);
        double pitch = Gravity.STANDARD * (pull.load() - 1) / (pull.speed() * pull.speed());
        int n = speeds.length;
        double[] squares = new double[n];
        double[] across = new double[n];
        double[] against = new double[n];
        double[] unknown = new double[n];
        // From the fastest on, each starts from the one before: the slower, the more the jet counts.
        for (int i = n - 1; i >= 0; i--) {
            double speed = speeds[i] * pull.speed();
            Attitude there = trimmer.at(pack, speed, reached.alpha(), pitch);
            if (!there.converged()) {
                return Optional.empty();
            }
            double weight = balance.resultantFor(speed);
            PropellerJet jet = trimmer.jet(speed).orElseThrow();
            double own = jet.ownDrag(reached.alpha()) / airframe.model().wing().area();
            squares[i] = speed * speed;
            across[i] = there.lift() / weight;
            against[i] = there.drag() / weight;
            unknown[i] = Math.hypot(unknowns.thrust * own, unknowns.drag * (there.drag() - own)) / weight;
        }
        return Optional.of(new PoweredLoop(
                pull,
                LoopPath.fly(new Known(squares, across, against), pull.speed()),
                LoopPath.fly(new Known(squares, across, shifted(against, unknown, 1)), pull.speed()),
                LoopPath.fly(new Known(squares, across, shifted(against, unknown, -1)), pull.speed())));
    }

    private static double[] shifted(double[] values, double[] by, int sign) {
        double[] shifted = Arrays.copyOf(values, values.length);
        for (int i = 0; i < shifted.length; i++) {
            shifted[i] += sign * by[i];
        }
        return shifted;
    }

    /** Forces known at some speeds, straight between them in the square of the speed, and held beyond. */
    private static final class Known implements LoopForces {
        private final double[] squares;
        private final double[] across;
        private final double[] against;

        Known(double[] squares, double[] across, double[] against) {
            this.squares = squares;
            this.across = across;
            this.against = against;
        }

        @Override
        public double across(double speed) {
            return Interpolation.at(squares, across, speed * speed);
        }

        @Override
        public double against(double speed) {
            return Interpolation.at(squares, against, speed * speed);
        }
    }
}
