package throwline.sizing;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import throwline.flight.Airframe;
import throwline.flight.Descent;
import throwline.flight.Flight;
import throwline.flight.Stall;
import throwline.model.Pack;
import throwline.model.SetUp;

/** Evaluator that flies every set-up once. Each starts from nothing, so that an answer does not depend on the order of questions. */
final class CandidateEvaluator {

    private final Function<Place, CandidateFlight> pilot;
    private final Map<Place, CandidateFlight> flown = new ConcurrentHashMap<>();
    private final AtomicInteger flights = new AtomicInteger();

    /**
     * @param airframe the model
     * @param pack with this battery
     * @param groups what may be moved
     * @param name of the set-ups
     * @param speed at which a descent is wanted, m/s; empty where only the stall is
     */
    CandidateEvaluator(Airframe airframe, Pack pack, SurfaceGroups groups, String name, Optional<Double> speed) {
        this(place -> {
            SetUp setUp = groups.setUp(name, place.flap(), place.aileron());
            Flight flight = new Flight(airframe, setUp);
            Optional<Stall> stall = flight.stall(pack);
            Optional<Descent> descent = stall.flatMap(s -> speed.map(v -> flight.descent(pack, s, v)));
            return CandidateFlight.of(place.flap(), place.aileron(), setUp, stall, descent);
        });
    }

    /** Candidates flown by another pilot. */
    CandidateEvaluator(Function<Place, CandidateFlight> pilot) {
        this.pilot = pilot;
    }

    /** Where flaps and ailerons stand, rad. */
    record Place(double flap, double aileron) {

        /** A place on the way to another: 0 for here, 1 for there. */
        Place towards(Place other, double share) {
            return new Place(flap + share * (other.flap - flap), aileron + share * (other.aileron - aileron));
        }
    }

    /** The set-up at a place, flown. */
    CandidateFlight at(Place place) {
        return flown.computeIfAbsent(place, this::fly);
    }

    /** Several at once. */
    List<CandidateFlight> at(List<Place> places) {
        return places.parallelStream().map(this::at).toList();
    }

    /** How many set-ups were flown. */
    int flights() {
        return flights.get();
    }

    private CandidateFlight fly(Place place) {
        flights.incrementAndGet();
        return pilot.apply(place);
    }
}
