package throwline.study;

import static throwline.study.FlightQuantity.THROTTLE_AILERON;
import static throwline.study.FlightQuantity.THROTTLE_RUDDER;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import throwline.flight.Flight;
import throwline.flight.PoweredFlight;
import throwline.flight.PoweredPoint;
import throwline.flight.Turning;
import throwline.model.Model;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.model.Surface;

/** Aileron and rudder that hold a model straight at full throttle, for a propeller that turns to the right. */
final class TurningAnswer {

    /** What is left of torque and swirl, 0.3 to 1.0, over the half that is taken (PRACTICE, methods manual 20.16). */
    private static final double LEAST = 0.6;

    private static final double MOST = 2;

    private final SetUp setUp;
    private final Bands bands;

    TurningAnswer(SetUp setUp, Bands bands) {
        this.setUp = setUp;
        this.bands = bands;
    }

    /** Both numbers; the aileron is left out where no stick rolls it. */
    Map<FlightQuantity, Headline> numbers(Flight flight, PoweredFlight powered, PoweredPoint point) {
        Turning turning = powered.turning(point);
        Map<FlightQuantity, Headline> numbers = new EnumMap<>(FlightQuantity.class);
        numbers.put(THROTTLE_RUDDER, shared(turning.rudder()));
        Model model = powered.airframe().model();
        Optional<Stick.Roll> stick = model.sticks().stream()
                .filter(s -> s instanceof Stick.Roll && s.worksIn(setUp))
                .map(Stick.Roll.class::cast)
                .findFirst();
        stick.ifPresent(roll -> {
            double pressure = powered.airframe().air().dynamicPressure(point.speed());
            double needed = turning.rolling()
                    / (pressure * model.wing().area() * model.wing().span());
            double full =
                    flight.rollingMoment(roll, point.speed(), point.attitude().alpha());
            if (full > 0) {
                numbers.put(THROTTLE_AILERON, shared(needed / full * outermost(model, roll)));
            }
        });
        return numbers;
    }

    /** Mean of both throws of the outermost surface that a stick moves, rad. */
    private static double outermost(Model model, Stick.Roll stick) {
        return model.wing().surfaces().stream()
                .filter(surface -> stick.throwsBySurface().containsKey(surface.name()))
                .max(Comparator.comparingDouble(Surface::to))
                .map(surface -> stick.throwsBySurface().get(surface.name()))
                .map(both -> (both.up() + both.down()) / 2)
                .orElse(0.0);
    }

    /** Half of torque and swirl is taken out by wing and body, 0.3 to 1.0 of them left. */
    private Headline.Known shared(double value) {
        Headline.Known plain = bands.around("turning", value);
        double low = Math.min(LEAST * value, MOST * value);
        double high = Math.max(LEAST * value, MOST * value);
        return new Headline.Known(value, low, high, plain.basis(), plain.shared());
    }
}
