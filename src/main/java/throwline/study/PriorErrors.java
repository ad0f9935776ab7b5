package throwline.study;

import java.util.Optional;
import throwline.correction.RowBand;
import throwline.correction.SetUpErrors;
import throwline.correction.SetUpErrors.Share;
import throwline.numerics.Interpolation;

/** Errors of predictions as the bands of the answer state them: the prior of learning is these bands and nothing else. */
final class PriorErrors {

    private PriorErrors() {}

    /**
     * Errors of a set-up.
     *
     * @param result its numbers
     * @param reference the elevator of the set-up that others are compared with
     */
    static Optional<SetUpErrors> of(SetUpResult result, Headline reference) {
        if (result.stallSpeed() instanceof Headline.Known stall
                && result.descentAngle() instanceof Headline.Known descent
                && result.number(FlightQuantity.ELEVATOR) instanceof Headline.Known elevator
                && reference instanceof Headline.Known other) {
            return Optional.of(new SetUpErrors(
                    Share.of(2 * share(stall) / RowBand.NINE_OF_TEN, stall.shared()),
                    Share.of(share(descent) / RowBand.NINE_OF_TEN, descent.shared()),
                    elevator(elevator, other, result.number(FlightQuantity.ELEVATOR_CHANGE)),
                    roll(result)));
        }
        return Optional.empty();
    }

    /** Half-width over value. */
    static double share(Headline.Known known) {
        return (known.high() - known.low()) / (2 * Math.abs(known.value()));
    }

    private static double half(Headline.Known known) {
        return (known.high() - known.low()) / 2;
    }

    /**
     * The part in common is such that three bands hold at once: the elevator's, that of the reference, and that of the change
     * between them. Then the change is always the difference of the two.
     */
    private static Share elevator(Headline.Known own, Headline.Known reference, Headline change) {
        double sd = half(own) / RowBand.NINE_OF_TEN;
        double other = half(reference) / RowBand.NINE_OF_TEN;
        double common = reference.shared() * other;
        if (!(change instanceof Headline.Known between) || half(between) == 0) {
            return Share.of(sd, own.shared());
        }
        double apart = half(between) / RowBand.NINE_OF_TEN;
        double shared = (sd * sd + other * other - apart * apart) / (2 * common);
        double within = Interpolation.clamp(shared, -sd, sd);
        return new Share(within, Math.sqrt(sd * sd - within * within));
    }

    private static Share roll(SetUpResult result) {
        return result.rollRates().stream()
                .flatMap(rate -> rate.rate() instanceof Headline.Known known
                        ? Optional.of(known).stream()
                        : Optional.<Headline.Known>empty().stream())
                .filter(known -> known.value() != 0)
                .findFirst()
                .map(known -> Share.of(share(known) / RowBand.NINE_OF_TEN, known.shared()))
                .orElse(new Share(0, 0));
    }
}
