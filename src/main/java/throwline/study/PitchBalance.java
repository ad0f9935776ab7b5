package throwline.study;

import java.util.List;
import java.util.Optional;
import throwline.flight.Attitude;
import throwline.flight.Descent;
import throwline.flight.Flight;
import throwline.flight.Stability;
import throwline.flight.Stall;
import throwline.model.Pack;
import throwline.words.Message;

/**
 * Pitch balance of a set-up: whether it holds its nose by itself when coming in, and what a flyer must be told where it
 * hardly does or does not.
 *
 * @param margin distance of the balance point ahead of the neutral point over the mean chord; empty where not found
 */
record PitchBalance(Optional<Double> margin) {

    /** Least margin that any kind of model is built with: aerobatic models and sailplanes (PRACTICE, methods manual 17.3). */
    private static final double LEAST = 0.03;

    /**
     * The balance at the approach. Where no attitude was found there, the body level with the air and the elevator neutral:
     * wing and tail are far from their stalls then, and the sign is what counts.
     */
    static PitchBalance of(Flight flight, Pack pack, Stall stall, Descent approach) {
        Attitude attitude = approach.attitude().orElseGet(() -> flight.held(pack, stall.approachSpeed(), 0, 0));
        return new PitchBalance(flight.stability(pack, attitude).map(Stability::margin));
    }

    /** Why there is no steady descent. */
    Headline.Unknown why(Descent approach) {
        boolean unsettled =
                approach.outcome() == Descent.Outcome.NOT_FOUND || approach.outcome() == Descent.Outcome.ELEVATOR_SHORT;
        return unsettled && isUnstable() ? new Headline.Unknown("why.unstable") : SetUpAnswer.why(approach);
    }

    /** What to tell, by how little it is. */
    List<Message> notes() {
        if (isUnstable()) {
            return List.of(Message.of("note.unstable"));
        }
        return margin.filter(m -> m < LEAST)
                .map(m -> List.of(Message.of("note.hardly-stable")))
                .orElse(List.of());
    }

    private boolean isUnstable() {
        return margin.filter(m -> m < 0).isPresent();
    }
}
