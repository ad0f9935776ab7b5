package throwline.flight;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.model.Surface;

/**
 * Flight of a model in a set-up: the questions that a study asks. No answer depends on what was asked before, to the last digit.
 * One thread at a time.
 */
public final class Flight {

    private final Airframe airframe;
    private final SetUp setUp;
    private final Trimmer trimmer;
    private final StallFinder stalls;
    private final RollSolver roller;
    private final ServoLoads servos;
    private final BlowBackSurvey standing;

    /**
     * @param airframe the model
     * @param setUp where its surfaces stand
     */
    public Flight(Airframe airframe, SetUp setUp) {
        this.airframe = airframe;
        this.setUp = setUp;
        trimmer = new Trimmer(airframe, Deflections.of(airframe.model().wing(), setUp));
        stalls = new StallFinder(trimmer, ailerons(airframe.model()));
        roller = new RollSolver(airframe, trimmer.wingCurves());
        servos = new ServoLoads(trimmer, setUp);
        standing = new BlowBackSurvey(trimmer, setUp, servos);
    }

    /**
     * Names of the surfaces that roll the model: the outermost ones that any roll stick moves; where no stick rolls, the
     * outermost of several. Empty where a single surface may be anything, and where there is none.
     */
    public static Set<String> ailerons(Model model) {
        Set<String> rolling = model.sticks().stream()
                .filter(Stick.Roll.class::isInstance)
                .flatMap(s -> ((Stick.Roll) s).throwsBySurface().keySet().stream())
                .collect(Collectors.toSet());
        List<Surface> all = model.wing().surfaces();
        List<Surface> candidates = !rolling.isEmpty()
                ? all.stream().filter(s -> rolling.contains(s.name())).toList()
                : all.size() > 1 ? all : List.of();
        double outermost = candidates.stream().mapToDouble(Surface::to).max().orElse(0);
        return candidates.stream()
                .filter(s -> s.to() >= outermost)
                .map(Surface::name)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** The model. */
    public Airframe airframe() {
        return airframe;
    }

    /**
     * The slowest steady flight; empty where it was not found, and where the elevator ends so early that the lift left would
     * carry the model only faster than it falls.
     */
    public Optional<Stall> stall(Pack pack) {
        trimmer.fresh();
        return stalls.find(pack).filter(stall -> !stall.elevatorLimited() || isFlown(pack, stall));
    }

    private boolean isFlown(Pack pack, Stall stall) {
        return noseDownSpeed(pack, stall).map(fall -> stall.speed() < fall).orElse(true);
    }

    /** The steady descent at a speed, m/s. */
    public Descent descent(Pack pack, Stall stall, double speed) {
        return glider(pack, stall).at(speed);
    }

    /** The steady descents at speeds in rising or falling order, m/s: one question, answered faster than each alone. */
    public List<Descent> descents(Pack pack, Stall stall, List<Double> speeds) {
        return glider(pack, stall).at(speeds);
    }

    /** Steady speed straight down, m/s; empty where it was not found. */
    public Optional<Double> noseDownSpeed(Pack pack, Stall stall) {
        return glider(pack, stall).noseDownSpeed(4 * stall.speed());
    }

    /**
     * The fastest and so the steepest descent that the elevator holds; empty where its travel ends none between the stall and
     * the dive.
     */
    public Optional<Attitude> elevatorEnd(Pack pack, Stall stall) {
        return glider(pack, stall).elevatorEnd(stall.speed());
    }

    private DescentSolver glider(Pack pack, Stall stall) {
        return new DescentSolver(trimmer.fresh(), pack, stall.attitude());
    }

    /** Landings from a steady approach. */
    public LandingSimulator lander(GroundHeights ladder, Pack pack, Stall stall, Attitude approach) {
        return new LandingSimulator(trimmer.fresh(), ladder, pack, stall, approach);
    }

    /** Margin before the stall when a gust from below comes; empty where it was not found. */
    public Optional<GustMargin> gustMargin(Pack pack, Attitude attitude) {
        return GustMargin.of(trimmer.fresh(), pack, attitude);
    }

    /**
     * The tightest pull at a speed with a stick at full, trimmed for straight flight there; empty where it was not found.
     *
     * @param stick the stick
     * @param pack with this battery
     * @param stall the stall in straight flight
     * @param speed m/s
     */
    public Optional<PullUp> pull(Stick.Pull stick, Pack pack, Stall stall, double speed) {
        Optional<Attitude> straight = descent(pack, stall, speed).steady();
        if (straight.isEmpty()) {
            return Optional.empty();
        }
        PullFlight pulls = new PullFlight(airframe, setUp, trimmer, Optional.empty(), pack, straight.get());
        Optional<PullUp> loop = pulls.tightest(PullUpSearch.Path.LOOP, stick).map(PullUpSearch.Reached::pull);
        // The wing's most lift hardly depends on how fast the model pitches.
        return loop.flatMap(pull -> pull.limit() == PullUp.Limit.WING
                ? loop
                : pulls.tightest(PullUpSearch.Path.LEVEL_TURN, stick)
                        .map(turn -> pull.turning(turn.pull().load())));
    }

    /** The slowest level turn at a bank, rad; empty where it was not found. */
    public Optional<TurnStall> turn(Pack pack, Stall stall, double bank) {
        return TurnStall.at(trimmer.fresh(), pack, stall, bank);
    }

    /** A whole loop at a pull's limit. */
    public LoopPath loop(Pack pack, PullUp pull) {
        return LoopPath.fly(LoopForces.of(airframe.balance(pack), pull.lift(), pull.drag()), pull.speed());
    }

    /**
     * The model held at an angle of attack, as on a balance in a tunnel: not trimmed.
     *
     * @param pack moments are about the balance point with this battery
     * @param speed airspeed, m/s
     * @param alpha angle of attack of the body's axis, rad
     * @param elevator rad, trailing edge down positive
     */
    public Attitude held(Pack pack, double speed, double alpha, double elevator) {
        return trimmer.fresh().heldAt(pack, speed, alpha, elevator);
    }

    /**
     * Rolling moment coefficient with a roll stick at full while the model does not roll, right wing down positive.
     *
     * @param stick the stick
     * @param speed airspeed, m/s
     * @param alpha angle of attack of the body's axis, rad
     */
    public double rollingMoment(Stick.Roll stick, double speed, double alpha) {
        return roller.atRest(rolling(stick), speed, alpha);
    }

    /** Where the surfaces stand with a roll stick at full. */
    public Deflections rolling(Stick.Roll stick) {
        return Deflections.of(airframe.model().wing(), setUp, stick, 1);
    }

    /** Steady roll to the right at full stick; empty where there is none. */
    public Optional<Roll> roll(Stick.Roll stick, Pack pack, Attitude attitude) {
        return roller.steady(rolling(stick), attitude.speed(), attitude.alpha(), pack.mass());
    }

    /**
     * Steady roll to the right at full stick while one side of a surface, -1 left and 1 right, stays where the set-up has it;
     * empty where there is none.
     */
    public Optional<Roll> rollWithout(Stick.Roll stick, Surface surface, int side, Pack pack, Attitude attitude) {
        Deflections rolling = rolling(stick).with(surface, side, setUp.deflection(surface.name()));
        return roller.steady(rolling, attitude.speed(), attitude.alpha(), pack.mass());
    }

    /**
     * What a roll stick does while one side of a wing surface stays behind, all else on its way from one set-up to another.
     *
     * @param from where the one side stays
     * @param to where all else stands
     * @param surface of the wing
     * @param stick works in the latter
     * @param attitude steady flight at the speed asked about
     */
    public OneSide oneSideStays(SetUp from, SetUp to, Surface surface, Stick.Roll stick, Attitude attitude) {
        double stays = surface.reached(from.deflection(surface.name()));
        return new OneSideSearch(airframe, attitude).against(to, surface, stays, stick);
    }

    /**
     * The same with that stick of several, one at least, that rolls most against it.
     *
     * @param sticks work in the latter set-up
     */
    public OneSide oneSideStays(SetUp from, SetUp to, Surface surface, List<Stick.Roll> sticks, Attitude attitude) {
        double stays = surface.reached(from.deflection(surface.name()));
        OneSideSearch search = new OneSideSearch(airframe, attitude);
        return search.against(to, surface, stays, search.strongest(to, surface, stays, sticks));
    }

    /** Static stability at an attitude, elevator held; empty where it was not found. */
    public Optional<Stability> stability(Pack pack, Attitude attitude) {
        return Stability.of(trimmer.fresh(), pack, attitude);
    }

    /** Why the elevator stands elsewhere in another set-up at the same speed; this flight is the reference. */
    public ElevatorBreakdown sharesTo(Attitude other, Attitude own, Pack pack) {
        return ElevatorBreakdown.between(trimmer.fresh(), own, other, pack);
    }

    /** Where the wing first lets go with a roll stick at full; empty where it does not within the angles searched. */
    public Optional<StickStall> lettingGo(Stick.Roll stick, Pack pack, Stall stall) {
        return new StickStallSearch(trimmer.fresh(), rolling(stick), stall.speed()).find(pack);
    }

    /**
     * What each servo has to hold at a speed, worst over the sticks; surfaces whose load was not found are left out.
     *
     * @param descent the steady descent at that speed, where there is one; without it nothing is known of the elevator
     */
    public List<ServoLoad> servoLoads(Pack pack, Stall stall, double speed, Optional<Attitude> descent) {
        return servos.at(pack, stall, speed, descent);
    }

    /** The highest speed at which the servos of the wing surfaces that are moved have twice the torque that they need. */
    public Optional<ServoLimit> servoLimit(Pack pack, Stall stall) {
        return servos.limit(pack, stall, 2 * stall.speed());
    }

    /**
     * Where every surface that the set-up or a stick moves from neutral really stands at a speed.
     *
     * @param descent the steady descent at that speed, where there is one; without it nothing is known of the elevator
     * @param share how hard the air pushes against what is worked out: 1, or more for a band
     */
    public List<Standing> standing(Pack pack, Stall stall, double speed, Optional<Attitude> descent, double share) {
        return standing.at(pack, stall, speed, descent, share, stick -> true);
    }

    /**
     * The same for the set-up alone and some of the sticks.
     *
     * @param descent the steady descent at that speed, where there is one
     * @param share how hard the air pushes against what is worked out
     * @param sticks their names
     */
    public List<Standing> standing(
            Pack pack, Stall stall, double speed, Optional<Attitude> descent, double share, Set<String> sticks) {
        return standing.at(pack, stall, speed, descent, share, sticks::contains);
    }
}
