package throwline.sizing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import throwline.flight.Airframe;
import throwline.flight.Attitude;
import throwline.flight.Flight;
import throwline.flight.Roll;
import throwline.flight.Stall;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.model.Surface;

/** Help that flap moved with the ailerons gives a roll stick: the rate over the flaps' throw. */
public final class RollHelpSearch {

    private static final int STEPS = 8;

    private final Airframe airframe;
    private final Pack pack;
    private final SurfaceGroups groups;
    private final SetUp setUp;
    private final Stick.Roll stick;
    private final double travel;

    /**
     * @param airframe the model
     * @param pack with this battery
     * @param groups its flaps
     * @param setUp in which it rolls
     * @param stick the stick that is to be helped; flaps that it moves already are left out
     */
    public RollHelpSearch(Airframe airframe, Pack pack, SurfaceGroups groups, SetUp setUp, Stick.Roll stick) {
        this.airframe = airframe;
        this.pack = pack;
        this.groups = groups;
        this.setUp = setUp;
        this.stick = stick;
        travel = groups.flaps().stream()
                .mapToDouble(s -> Math.max(free(s, true), free(s, false)))
                .max()
                .orElse(0);
    }

    /**
     * The search at a speed.
     *
     * @param speed m/s
     * @return empty where the model does not fly or roll at that speed
     */
    public Optional<RollHelp> at(double speed) {
        double ailerons = stick.throwsBySurface().entrySet().stream()
                .filter(e -> groups.ailerons().stream().anyMatch(s -> s.name().equals(e.getKey())))
                .mapToDouble(e -> Math.max(e.getValue().up(), e.getValue().down()))
                .max()
                .orElse(0);
        double most = Math.min(ailerons, travel);
        Flight flight = new Flight(airframe, setUp);
        Optional<Stall> stall = flight.stall(pack);
        Optional<Attitude> attitude =
                stall.flatMap(s -> flight.descent(pack, s, speed).steady());
        if (attitude.isEmpty() || most <= 0) {
            return Optional.empty();
        }
        List<RollHelp.Point> points = new ArrayList<>(IntStream.rangeClosed(0, STEPS)
                .mapToObj(i -> point(flight, attitude.get(), most * i / STEPS))
                .flatMap(Optional::stream)
                .toList());
        if (points.size() <= STEPS) {
            return Optional.empty();
        }
        int best = 0;
        for (int i = 1; i < points.size(); i++) {
            best = points.get(i).rate() > points.get(best).rate() ? i : best;
        }
        Limit limit = best < STEPS ? Limit.BEST_REACHED : ailerons <= travel ? Limit.AILERON_THROW : Limit.FLAPS_DOWN;
        return Optional.of(new RollHelp(speed, points, points.get(best), limit));
    }

    /** The stick with the flaps moved by so much. */
    public Stick.Roll with(RollHelp.Point point, String name) {
        return with(point.size(), name);
    }

    private Optional<RollHelp.Point> point(Flight flight, Attitude attitude, double size) {
        Optional<Roll> roll = flight.roll(with(size, ""), pack, attitude);
        return roll.map(r -> new RollHelp.Point(largest(size, true), largest(size, false), r.rate(), r.yawing()));
    }

    private double largest(double size, boolean up) {
        return groups.flaps().stream()
                .mapToDouble(s -> Math.min(size, free(s, up)))
                .max()
                .orElse(0);
    }

    private Stick.Roll with(double size, String name) {
        Map<String, Stick.Throws> moved = new LinkedHashMap<>();
        stick.throwsBySurface().forEach((surface, throwsOf) -> {
            if (groups.ailerons().stream().anyMatch(s -> s.name().equals(surface))) {
                moved.put(surface, throwsOf);
            }
        });
        if (size > 0) {
            groups.flaps()
                    .forEach(s -> moved.put(
                            s.name(), new Stick.Throws(Math.min(size, free(s, true)), Math.min(size, free(s, false)))));
        }
        return new Stick.Roll(name, moved, List.of());
    }

    private double free(Surface surface, boolean up) {
        double stands = surface.reached(setUp.deflection(surface.name()));
        return up ? surface.travelUp() + stands : surface.travelDown() - stands;
    }
}
