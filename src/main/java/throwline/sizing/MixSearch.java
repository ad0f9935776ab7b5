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
import throwline.flight.Stall;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.model.Surface;

/** Search for the elevator that keeps a model trimmed while a lever moves it from one set-up into another. */
public final class MixSearch {

    /** Fewest and most points of a curve that transmitters take. */
    public static final int FEWEST = 3;

    /** Most points. */
    public static final int MOST = 9;

    /** Straight lines between the points may be off by this, rad: a fifth of a degree, what a servo can just show. */
    private static final double STRAIGHT = Math.toRadians(0.2);

    private static final double[] OTHER_SPEEDS = {0.9, 1.15, 1.3};

    private final Airframe airframe;
    private final Pack pack;
    private final SetUp from;
    private final SetUp to;

    /**
     * @param airframe the model
     * @param pack with this battery
     * @param from set-up with the lever at zero
     * @param to set-up with the lever at its end
     */
    public MixSearch(Airframe airframe, Pack pack, SetUp from, SetUp to) {
        this.airframe = airframe;
        this.pack = pack;
        this.from = from;
        this.to = to;
    }

    /**
     * The curve.
     *
     * @param speed it is made for, m/s
     * @param points how many; empty for the fewest of 3, 5 and 9 between which straight lines are good enough
     * @return the curve; empty where the model does not fly steadily at the speed somewhere on the lever
     */
    public Optional<MixCurve> at(double speed, Optional<Integer> points) {
        if (points.isPresent()) {
            return elevators(speed, 2 * points.get() - 1).map(e -> curve(speed, e, 2));
        }
        Optional<double[]> nine = elevators(speed, MOST);
        for (int step : new int[] {4, 2}) {
            if (nine.isPresent() && worst(nine.get(), step) <= STRAIGHT) {
                return nine.map(e -> curve(speed, e, step));
            }
        }
        return nine.isEmpty() ? Optional.empty() : at(speed, Optional.of(MOST));
    }

    /** A curve of every so many of evenly spread values; the others tell how good straight lines are. */
    private MixCurve curve(double speed, double[] elevators, int step) {
        List<MixCurve.Point> points = new ArrayList<>();
        for (int i = 0; i < elevators.length; i += step) {
            points.add(new MixCurve.Point(i / (elevators.length - 1.0), elevators[i]));
        }
        return new MixCurve(speed, points, worst(elevators, step), otherSpeeds(speed));
    }

    /** Largest distance of values from straight lines between every so many of them. */
    private static double worst(double[] values, int step) {
        double worst = 0;
        for (int i = 0; i < values.length; i++) {
            int left = Math.min(i / step * step, values.length - 1 - step);
            double share = (i - left) / (double) step;
            double straight = values[left] + share * (values[left + step] - values[left]);
            worst = Math.max(worst, Math.abs(values[i] - straight));
        }
        return worst;
    }

    /** Elevator against the lever's zero at evenly spread places, rad; empty where one does not fly. */
    private Optional<double[]> elevators(double speed, int count) {
        List<Optional<Double>> all = IntStream.range(0, count)
                .parallel()
                .mapToObj(i -> new Lever(i / (count - 1.0)).elevator(speed))
                .toList();
        return all.stream().allMatch(Optional::isPresent)
                ? Optional.of(all.stream()
                        .mapToDouble(e -> e.orElseThrow() - all.get(0).orElseThrow())
                        .toArray())
                : Optional.empty();
    }

    private List<MixCurve.AtSpeed> otherSpeeds(double speed) {
        Lever start = new Lever(0);
        Lever end = new Lever(1);
        List<MixCurve.AtSpeed> others = new ArrayList<>();
        for (double factor : OTHER_SPEEDS) {
            Optional<Double> before = start.elevator(factor * speed);
            Optional<Double> after = end.elevator(factor * speed);
            if (before.isPresent() && after.isPresent()) {
                others.add(new MixCurve.AtSpeed(factor * speed, after.get() - before.get()));
            }
        }
        return others;
    }

    /** The model with the lever at one place. */
    private final class Lever {
        private final Flight flight;
        private final Optional<Stall> stall;

        Lever(double share) {
            flight = new Flight(airframe, between(share));
            stall = flight.stall(pack);
        }

        Optional<Double> elevator(double speed) {
            return stall.flatMap(s -> flight.descent(pack, s, speed).steady()).map(Attitude::elevator);
        }
    }

    /** The set-up with the lever at a share of its way. */
    private SetUp between(double lever) {
        Map<String, Double> deflections = new LinkedHashMap<>();
        for (Surface surface : airframe.model().wing().surfaces()) {
            double start = surface.reached(from.deflection(surface.name()));
            double end = surface.reached(to.deflection(surface.name()));
            deflections.put(surface.name(), start + lever * (end - start));
        }
        return new SetUp(to.name(), deflections, 0);
    }
}
