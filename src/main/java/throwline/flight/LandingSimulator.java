package throwline.flight;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import throwline.model.Model;
import throwline.model.Pack;

/** Lands the model in one set-up with one pack: approach, round-out, float, roll. */
public final class LandingSimulator {

    /** Load of the round-out, of the 1.69 that 1.3 times the stall speed gives (PRACTICE, methods manual 10.2). */
    private static final double LOAD = 1.3;

    /** The round-out ends with the wheels this high, m (PRACTICE: a hand's breadth). */
    private static final double HELD_OFF = 0.15;

    /** Speed at touch-down over the slowest near the ground: middle of 9 to 10 over 8.7 to 8.9 m/s (PRACTICE, methods manual 10.3). */
    private static final double TOUCHDOWN = 1.08;

    /** The floatiness is told over these heights, m (PRACTICE, methods manual 10.3). */
    public static final double GLIDE_FROM = 1.5;

    public static final double GLIDE_TO = 0.1;
    private static final int GLIDE_STEPS = 14;

    private final Model model;
    private final GroundPolar polar;
    private final NearGroundFlight still;
    private final Attitude attitude;
    private final FlareElevator elevator;

    LandingSimulator(Trimmer trimmer, GroundHeights ladder, Pack pack, Stall stall, Attitude approach) {
        model = trimmer.airframe().model();
        attitude = approach;
        polar = new GroundPolar(trimmer, ladder, pack, approach, stall);
        still = new NearGroundFlight(
                pack.mass(),
                model.wing().area(),
                trimmer.airframe().air().density(),
                ladder.stance(),
                polar,
                WindProfile.still());
        elevator = new FlareElevator(trimmer, pack, approach, polar);
    }

    /** False where some part near the ground is not a solution. */
    public boolean converged() {
        return polar.converged();
    }

    /**
     * The landing in a headwind.
     *
     * @param headwind m/s at 10 m
     * @return empty where the wind is as fast as the model somewhere on the way down
     */
    public Optional<Landing> land(double headwind) {
        NearGroundFlight flight = still.in(new WindProfile(headwind));
        double obstacle = model.field().obstacle();
        Approach approach = new Approach(flight, attitude.lift(), attitude.speed(), attitude.descentAngle(), obstacle);
        RoundOut.Flown flare = new RoundOut(flight, approach, LOAD, HELD_OFF).fly();
        double touchdown = Math.min(flare.speed(), touchdownSpeed());
        List<Landing.Spot> hold = new HoldOff(flight).way(flare.speed(), touchdown, HELD_OFF);
        boolean advances = approach.advances() && advances(flare.way()) && advances(hold);
        if (!advances || touchdown <= flight.windAt(0)) {
            return Optional.empty();
        }
        double roll = new GroundRoll(
                        GroundRoll.friction(model),
                        polar.rolling().lift(),
                        polar.rolling().drag())
                .distance(flight, touchdown);
        boolean clears = obstacle >= flare.height();
        List<Landing.Spot> way = new ArrayList<>();
        double before = 0;
        if (clears) {
            way.addAll(approach.way(obstacle, flare.height()));
            before = way.get(way.size() - 1).along();
        } else if (obstacle > 0) {
            before = -placeAt(flare.way(), obstacle);
        }
        add(way, flare.way(), before);
        add(way, hold, before + flare.distance());
        double top = Math.max(obstacle, flare.height());
        return Optional.of(new Landing(
                flare.height(),
                flare.distance(),
                clears || obstacle == 0,
                before,
                flare.speed(),
                flare.sink(),
                hold.get(hold.size() - 1).along(),
                touchdown,
                roll,
                flight.windAt(top) - flight.windAt(0),
                way,
                flare.pulls(),
                flare.speed() < still.speedFor(polar.limit(0))));
    }

    private static boolean advances(List<Landing.Spot> way) {
        return IntStream.range(1, way.size())
                .allMatch(i -> way.get(i).along() > way.get(i - 1).along());
    }

    private static void add(List<Landing.Spot> way, List<Landing.Spot> leg, double from) {
        leg.forEach(spot -> way.add(new Landing.Spot(from + spot.along(), spot.height(), spot.speed())));
    }

    /** Where a round-out passes a height, m from its beginning. */
    private static double placeAt(List<Landing.Spot> way, double height) {
        for (int i = 1; i < way.size(); i++) {
            Landing.Spot a = way.get(i - 1);
            Landing.Spot b = way.get(i);
            if (a.height() >= height && height >= b.height() && a.height() > b.height()) {
                return a.along() + (b.along() - a.along()) * (a.height() - height) / (a.height() - b.height());
            }
        }
        return way.get(way.size() - 1).along();
    }

    private double touchdownSpeed() {
        return TOUCHDOWN * still.speedFor(polar.limit(0));
    }

    /** The float of a landing with the ground's effect left out, m, from the same speed and height. */
    public double floatedWithoutGround(Landing landing) {
        NearGroundPolar free = new NearGroundPolar() {
            @Override
            public double drag(double lift, double height) {
                return polar.drag(lift, Double.POSITIVE_INFINITY);
            }

            @Override
            public double limit(double height) {
                return polar.limit(Double.POSITIVE_INFINITY);
            }
        };
        NearGroundFlight flight = new NearGroundFlight(
                still.mass(), still.area(), still.density(), still.stance(), free, WindProfile.still());
        List<Landing.Spot> hold = new HoldOff(flight).way(landing.levelSpeed(), landing.touchdownSpeed(), HELD_OFF);
        return hold.get(hold.size() - 1).along();
    }

    /**
     * Distance that a glide at approach speed goes from 1.5 m down to 0.1 m.
     *
     * @param nearGround false to leave the ground's effect out
     */
    public double glideLow(boolean nearGround) {
        double step = (GLIDE_FROM - GLIDE_TO) / GLIDE_STEPS;
        double distance = 0;
        double lift = attitude.lift();
        for (int k = 0; k < GLIDE_STEPS; k++) {
            double height = nearGround ? GLIDE_TO + (k + 0.5) * step : Double.POSITIVE_INFINITY;
            distance += step * lift / polar.drag(lift, height);
        }
        return distance;
    }

    /** Whether the elevator holds the round-out and the touch-down. */
    public FlareElevator.Demand elevator(Landing landing) {
        double lift = 2
                * still.weight()
                / (still.density() * still.area() * landing.touchdownSpeed() * landing.touchdownSpeed());
        return elevator.demand(landing, lift);
    }

    /** Height of the wing above the ground with the wheels on it, m. */
    public double stance() {
        return still.stance();
    }
}
