package throwline.sizing;

import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleBinaryOperator;
import throwline.model.SetUp;
import throwline.sizing.CandidateEvaluator.Place;

/** Candidates flown by closed forms instead of by a model: the descent angle over flaps and ailerons. */
final class Candidates {

    private Candidates() {}

    /** All of them fly. */
    static CandidateEvaluator of(DoubleBinaryOperator angle) {
        return of(angle, (flap, aileron) -> 1);
    }

    /** They fly where a second value is above zero. */
    static CandidateEvaluator of(DoubleBinaryOperator angle, DoubleBinaryOperator flies) {
        return new CandidateEvaluator(place -> fly(place, angle, flies));
    }

    private static CandidateFlight fly(Place place, DoubleBinaryOperator angle, DoubleBinaryOperator flies) {
        boolean good = flies.applyAsDouble(place.flap(), place.aileron()) > 0;
        return new CandidateFlight(
                place.flap(),
                place.aileron(),
                new SetUp("wanted", Map.of(), 0),
                Optional.empty(),
                angle.applyAsDouble(place.flap(), place.aileron()),
                Optional.empty(),
                good ? Optional.empty() : Optional.of(Limit.TAIL_MARGIN));
    }
}
