package throwline.flight;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.model.Stick;

/** One model in one set-up: the questions that a study asks. One thread at a time. */
public final class Flight {

    private final Airframe airframe;
    private final SetUp setUp;
    private final Trimmer trimmer;
    private final StallFinder stalls;
    private final Roller roller;
    private final Map<Pack, Glider> gliders = new HashMap<>();

    /**
     * @param airframe the model
     * @param setUp where its surfaces stand
     */
    public Flight(Airframe airframe, SetUp setUp) {
        this.airframe = airframe;
        this.setUp = setUp;
        trimmer = new Trimmer(airframe, Deflections.of(airframe.model().wing(), setUp));
        stalls = new StallFinder(trimmer, ailerons(airframe.model()));
        roller = new Roller(airframe);
    }

    /** Names of the outermost surfaces that any roll stick moves: what a modeller calls ailerons. */
    private static Set<String> ailerons(Model model) {
        Set<String> rolling = model.sticks().stream()
                .filter(Stick.Roll.class::isInstance)
                .flatMap(s -> ((Stick.Roll) s).throwsBySurface().keySet().stream())
                .collect(Collectors.toSet());
        double outermost = model.wing().surfaces().stream()
                .filter(s -> rolling.contains(s.name()))
                .mapToDouble(s -> s.to())
                .max()
                .orElse(Double.POSITIVE_INFINITY);
        return model.wing().surfaces().stream()
                .filter(s -> rolling.contains(s.name()) && s.to() >= outermost)
                .map(s -> s.name())
                .collect(Collectors.toSet());
    }

    /** The model. */
    public Airframe airframe() {
        return airframe;
    }

    /** The slowest steady flight; empty where it was not found. */
    public Optional<Stall> stall(Pack pack) {
        return stalls.find(pack);
    }

    /** The steady descent at a speed, m/s. */
    public Descent descent(Pack pack, Stall stall, double speed) {
        return glider(pack, stall).at(speed);
    }

    /** Steady speed straight down, m/s; empty where it was not found. */
    public Optional<Double> noseDownSpeed(Pack pack, Stall stall) {
        return glider(pack, stall).noseDownSpeed(4 * stall.speed());
    }

    /** The same glider while the stall stays the same, so that each descent starts from those before. */
    private Glider glider(Pack pack, Stall stall) {
        double alpha = stall.attitude().alpha();
        Glider glider = gliders.computeIfAbsent(pack, wanted -> new Glider(trimmer, wanted, alpha));
        if (!glider.serves(alpha)) {
            glider = new Glider(trimmer, pack, alpha);
            gliders.put(pack, glider);
        }
        return glider;
    }

    /** Where the surfaces stand with a roll stick at full. */
    public Deflections rolling(Stick.Roll stick) {
        return Deflections.of(airframe.model().wing(), setUp, stick, 1);
    }

    /** Steady roll to the right at full stick; empty where there is none. */
    public Optional<Roll> roll(Stick.Roll stick, Pack pack, Attitude attitude) {
        return roller.steady(rolling(stick), attitude.speed(), attitude.alpha(), pack.mass());
    }

    /** Static stability at an attitude, elevator held; empty where it was not found. */
    public Optional<Stability> stability(Pack pack, Attitude attitude) {
        return Stability.of(trimmer, pack, attitude);
    }

    /** Why the elevator stands elsewhere in another set-up at the same speed; this flight is the reference. */
    public ElevatorShares sharesTo(Attitude other, Attitude own, Pack pack) {
        return ElevatorShares.between(trimmer, own, other, pack);
    }

    /** Where the wing first lets go with a roll stick at full; empty where it does not within the angles searched. */
    public Optional<LettingGo> lettingGo(Stick.Roll stick, Pack pack, Stall stall) {
        return new StickStall(trimmer, rolling(stick), stall.speed()).find(pack);
    }
}
