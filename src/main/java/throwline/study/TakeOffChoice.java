package throwline.study;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import throwline.model.SetUp;
import throwline.units.Dimension;
import throwline.units.Quantity;
import throwline.words.Message;

/** Choice of the flap that a take-off is shortest with, and whether it pays. */
final class TakeOffChoice {

    /** Nobody takes off with more flap than this, rad (PRACTICE). */
    private static final double MOST_FLAP = Math.toRadians(30);

    private TakeOffChoice() {}

    /** The advice; empty where there is nothing to choose from. The first set-up is the one that others are compared with. */
    static Optional<Message> of(List<SetUpResult> results) {
        List<SetUpResult> fit = results.stream()
                .filter(result -> isTakeOffFlap(result.setUp()) && run(result).isPresent())
                .toList();
        if (fit.size() < 2
                || !fit.get(0).setUp().name().equals(results.get(0).setUp().name())) {
            return Optional.empty();
        }
        SetUpResult reference = fit.get(0);
        SetUpResult shortest = fit.stream()
                .min(Comparator.comparingDouble(
                        result -> run(result).orElseThrow().value()))
                .orElseThrow();
        String name = reference.setUp().name();
        if (run(shortest).orElseThrow().tooCloseTo(run(reference).orElseThrow())) {
            return Optional.of(Message.of("note.take-off.no-flap", name));
        }
        boolean gone = reference
                .known(FlightQuantity.TAKE_OFF_DISTANCE)
                .flatMap(plain -> shortest.known(FlightQuantity.TAKE_OFF_DISTANCE)
                        .filter(flapped -> flapped.value() >= plain.value() || flapped.tooCloseTo(plain)))
                .isPresent();
        return Optional.of(Message.of(
                gone ? "note.take-off.flap.run" : "note.take-off.flap",
                shortest.setUp().name(),
                length(shortest),
                name,
                length(reference)));
    }

    private static boolean isTakeOffFlap(SetUp setUp) {
        return setUp.deflections().values().stream().allMatch(angle -> angle >= 0 && angle <= MOST_FLAP);
    }

    private static Optional<Headline.Known> run(SetUpResult result) {
        return result.known(FlightQuantity.TAKE_OFF_RUN);
    }

    private static Quantity length(SetUpResult result) {
        return new Quantity(Math.rint(run(result).orElseThrow().value()), Dimension.LENGTH);
    }
}
