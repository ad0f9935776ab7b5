package throwline.sizing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;
import throwline.flight.Airframe;
import throwline.flight.Attitude;
import throwline.flight.Descent;
import throwline.flight.Flight;
import throwline.flight.Roll;
import throwline.flight.Stall;
import throwline.flight.StickStall;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.model.Surface;

/**
 * Roll rate over aileron throw in one set-up at one speed, and its inverse. Up and down throw keep the ratio of the
 * model's own roll stick until one side is at its stop; then the other goes on alone.
 */
public final class RollThrow {

    private static final double TOLERANCE = Math.toRadians(0.01);
    private static final double DEGREE = Math.toRadians(1);
    private static final int MOST_EVALUATIONS = 50;

    /** A rate this near counts as met. */
    private static final double RATE_TOLERANCE = 2e-3;

    private final Pack pack;
    private final SurfaceGroups groups;
    private final SetUp setUp;
    private final Flight flight;
    private final Optional<Stall> stall;
    private final Optional<Descent> descent;
    private final Stick.Throws ratio;

    /**
     * @param airframe the model
     * @param pack with this battery
     * @param groups its ailerons
     * @param setUp in which it rolls
     * @param speed at which it rolls, m/s
     */
    public RollThrow(Airframe airframe, Pack pack, SurfaceGroups groups, SetUp setUp, double speed) {
        this.pack = pack;
        this.groups = groups;
        this.setUp = setUp;
        flight = new Flight(airframe, setUp);
        stall = flight.stall(pack);
        descent = stall.map(s -> flight.descent(pack, s, speed));
        ratio = ratio(airframe, groups);
    }

    private static Stick.Throws ratio(Airframe airframe, SurfaceGroups groups) {
        return airframe.model().sticks().stream()
                .filter(Stick.Roll.class::isInstance)
                .flatMap(s -> groups.ailerons().stream()
                        .map(Surface::name)
                        .filter(((Stick.Roll) s).throwsBySurface()::containsKey)
                        .map(((Stick.Roll) s).throwsBySurface()::get))
                .filter(t -> t.up() > 0 || t.down() > 0)
                .findFirst()
                .map(t -> new Stick.Throws(t.up() / Math.max(t.up(), t.down()), t.down() / Math.max(t.up(), t.down())))
                .orElse(new Stick.Throws(1, 1));
    }

    /** The descent at the speed; empty where no stall was found. */
    public Optional<Descent> descent() {
        return descent;
    }

    /** Roll rate with the ailerons at their stops, rad/s; empty where there is none. */
    public Optional<Double> atStops() {
        return rate(largest()).map(Roll::rate);
    }

    /**
     * The throw for a rate.
     *
     * @param wanted rad/s, positive
     * @param name of the stick
     * @return the throw, or all that there is where the rate cannot be had; empty where the model does not roll at all
     */
    public Optional<FoundThrow> find(double wanted, String name) {
        double most = largest();
        Optional<Roll> atStops = rate(most);
        if (atStops.isEmpty()) {
            return Optional.empty();
        }
        double size = most;
        if (atStops.get().rate() > wanted) {
            size = new BracketingNthOrderBrentSolver(TOLERANCE, 5)
                    .solve(MOST_EVALUATIONS, t -> rate(t).map(Roll::rate).orElse(0.0) - wanted, 0, most);
        }
        double throwSize = size;
        return rate(size).map(roll -> {
            double step = throwSize + DEGREE <= most ? DEGREE : -DEGREE;
            double perDegree = rate(throwSize + step)
                    .map(r -> (r.rate() - roll.rate()) * Math.signum(step))
                    .orElse(0.0);
            boolean met = Math.abs(roll.rate() / wanted - 1) < RATE_TOLERANCE;
            Stick.Roll stick = stick(throwSize, name);
            return new FoundThrow(
                    stick,
                    roll.rate(),
                    met,
                    met ? List.of() : List.of(Limit.AILERON_TRAVEL),
                    atStops.get().rate(),
                    perDegree,
                    roll.yawing(),
                    stall.flatMap(s -> flight.lettingGo(stick, pack, s)).map(StickStall::speed));
        });
    }

    private Optional<Roll> rate(double size) {
        Optional<Attitude> attitude = descent.flatMap(Descent::steady);
        return size <= 0 ? Optional.empty() : attitude.flatMap(a -> flight.roll(stick(size, ""), pack, a));
    }

    /** The larger of both throws at which every aileron is at both stops, rad. */
    private double largest() {
        double most = 0;
        for (Surface surface : groups.ailerons()) {
            double up = ratio.up() > 0 ? free(surface, true) / ratio.up() : 0;
            double down = ratio.down() > 0 ? free(surface, false) / ratio.down() : 0;
            most = Math.max(most, Math.max(up, down));
        }
        return most;
    }

    private double free(Surface surface, boolean up) {
        double stands = surface.reached(setUp.deflection(surface.name()));
        return up ? surface.travelUp() + stands : surface.travelDown() - stands;
    }

    private Stick.Roll stick(double size, String name) {
        Map<String, Stick.Throws> throwsBySurface = new LinkedHashMap<>();
        for (Surface surface : groups.ailerons()) {
            throwsBySurface.put(
                    surface.name(),
                    new Stick.Throws(
                            Math.min(size * ratio.up(), free(surface, true)),
                            Math.min(size * ratio.down(), free(surface, false))));
        }
        return new Stick.Roll(name, throwsBySurface, List.of());
    }
}
