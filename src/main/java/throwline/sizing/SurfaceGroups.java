package throwline.sizing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import throwline.flight.Flight;
import throwline.model.Model;
import throwline.model.SetUp;
import throwline.model.Surface;

/**
 * The two things that a search moves: what rolls the model, and the other surfaces of the wing. Several surfaces of one
 * group move by the same angle, each as far as its travel lets it.
 *
 * @param flaps all surfaces that are not ailerons
 * @param ailerons the surfaces that roll it, as {@link Flight#ailerons} has them
 */
public record SurfaceGroups(List<Surface> flaps, List<Surface> ailerons) {

    /** Up travel that must stay free for rolling (PRACTICE: keep at least ten degrees of roll travel). */
    private static final double FREE_FOR_ROLL = Math.toRadians(10);

    /** Share of the aileron's travel that a set-up may use (PRACTICE: never more than half of the up travel). */
    private static final double STEADY_SHARE = 0.5;

    public SurfaceGroups {
        flaps = List.copyOf(flaps);
        ailerons = List.copyOf(ailerons);
    }

    /** The groups of a model. */
    public static SurfaceGroups of(Model model) {
        List<Surface> all = model.wing().surfaces();
        Set<String> rolling = Flight.ailerons(model);
        List<Surface> ailerons =
                all.stream().filter(s -> rolling.contains(s.name())).toList();
        return new SurfaceGroups(all.stream().filter(s -> !ailerons.contains(s)).toList(), ailerons);
    }

    /** How far the flaps go. */
    public Range flapTravel() {
        return travel(flaps);
    }

    /** How far the ailerons go. */
    public Range aileronTravel() {
        return travel(ailerons);
    }

    /** Where the ailerons may stand in a set-up with enough travel left to roll. */
    public Range aileronReserve() {
        Range whole = aileronTravel();
        double up = Math.max(0, Math.min(STEADY_SHARE * -whole.low(), -whole.low() - FREE_FOR_ROLL));
        return new Range(-up, STEADY_SHARE * whole.high());
    }

    private static Range travel(List<Surface> surfaces) {
        return new Range(-largest(surfaces, Surface::travelUp), largest(surfaces, Surface::travelDown));
    }

    private static double largest(List<Surface> surfaces, ToDoubleFunction<Surface> travel) {
        return surfaces.stream().mapToDouble(travel).max().orElse(0);
    }

    /** A set-up with the flaps and ailerons at these angles, rad, trailing edge down positive. */
    public SetUp setUp(String name, double flap, double aileron) {
        Map<String, Double> deflections = new LinkedHashMap<>();
        put(deflections, flaps, flap);
        put(deflections, ailerons, aileron);
        return new SetUp(name, deflections, 0);
    }

    private static void put(Map<String, Double> deflections, List<Surface> surfaces, double angle) {
        for (Surface surface : surfaces) {
            double reached = surface.reached(angle);
            if (reached != 0) {
                deflections.put(surface.name(), reached);
            }
        }
    }
}
