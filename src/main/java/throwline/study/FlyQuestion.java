package throwline.study;

import java.util.List;
import java.util.Optional;

/**
 * Wishes of a person about one set-up in depth; what is left open is chosen.
 *
 * @param speedLimit limit for the steepest descent, m/s; else 1.6 times the stall speed
 * @param loopSpeeds speeds at which loops are entered, m/s; empty for three that suit the model
 * @param lowerSpeed speed at which the surfaces go to the set-up, m/s; else 1.5 times the reference's stall speed
 * @param flapTime time that the surfaces take, s; else one that suits
 * @param mixed elevator that goes with them, shown beside none, half and all of its change
 */
public record FlyQuestion(
        Optional<Double> speedLimit,
        List<Double> loopSpeeds,
        Optional<Double> lowerSpeed,
        Optional<Double> flapTime,
        Optional<Mixed> mixed) {

    /** Takes a copy of the speeds. */
    public FlyQuestion {
        loopSpeeds = List.copyOf(loopSpeeds);
    }

    /** Nothing said. */
    public static FlyQuestion open() {
        return new FlyQuestion(Optional.empty(), List.of(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** True where something was said about moving surfaces. */
    boolean asksForMoves() {
        return lowerSpeed.isPresent() || flapTime.isPresent() || mixed.isPresent();
    }

    /** Elevator that is mixed to the other surfaces. */
    public sealed interface Mixed permits Share, Throw {}

    /**
     * A share of its whole change.
     *
     * @param share 1 for all of it
     */
    public record Share(double share) implements Mixed {}

    /**
     * A throw as it is programmed.
     *
     * @param angle rad, trailing edge down positive
     */
    public record Throw(double angle) implements Mixed {}
}
