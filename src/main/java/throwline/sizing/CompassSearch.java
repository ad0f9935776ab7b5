package throwline.sizing;

import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import throwline.sizing.CandidateEvaluator.Place;

/**
 * Search for the set-up with the lowest value between the nodes of a lattice: steps to the best of four neighbours, halving
 * the steps where none is better (compass search, which needs no slopes; MEMORY: Kolda, Lewis and Torczon, SIAM Review 45,
 * 2003). Finds the lowest place round the start, not the lowest of all: the lattice has to begin it near there.
 */
final class CompassSearch {

    /** Steps end below this, rad: a descent changes by some hundredths of a degree over it. */
    private static final double FINEST = Math.toRadians(0.4);

    private static final int MOST_ROUNDS = 30;

    private final CandidateEvaluator bench;
    private final Range flaps;
    private final Range ailerons;

    CompassSearch(CandidateEvaluator bench, Range flaps, Range ailerons) {
        this.bench = bench;
        this.flaps = flaps;
        this.ailerons = ailerons;
    }

    /**
     * The lowest round a start.
     *
     * @param start a set-up that flies
     * @param value not a number where it is not known
     * @param flapStep first step of the flaps, rad
     * @param aileronStep first step of the ailerons, rad
     */
    CandidateFlight lowest(
            CandidateFlight start, ToDoubleFunction<CandidateFlight> value, double flapStep, double aileronStep) {
        CandidateFlight best = start;
        double flap = flapStep;
        double aileron = aileronStep;
        for (int round = 0; round < MOST_ROUNDS && Math.max(flap, aileron) >= FINEST; round++) {
            CandidateFlight here = best;
            CandidateFlight next = Stream.concat(Stream.of(here), bench.at(around(here, flap, aileron)).stream())
                    .filter(t -> t.fault().isEmpty() && !Double.isNaN(value.applyAsDouble(t)))
                    .min(Comparator.comparingDouble(value))
                    .orElse(here);
            if (Lattice.place(next).equals(Lattice.place(here))) {
                flap /= 2;
                aileron /= 2;
            }
            best = next;
        }
        return best;
    }

    private List<Place> around(CandidateFlight here, double flap, double aileron) {
        Place middle = Lattice.place(here);
        return Stream.of(
                        new Place(flaps.clamp(here.flap() - flap), here.aileron()),
                        new Place(flaps.clamp(here.flap() + flap), here.aileron()),
                        new Place(here.flap(), ailerons.clamp(here.aileron() - aileron)),
                        new Place(here.flap(), ailerons.clamp(here.aileron() + aileron)))
                .filter(place -> !place.equals(middle))
                .distinct()
                .toList();
    }
}
