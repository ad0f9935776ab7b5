package throwline.report.answer;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import throwline.report.Sentences;
import throwline.report.document.Block.Depth;
import throwline.report.document.Comparison;
import throwline.report.document.Comparison.Below;
import throwline.report.document.Comparison.Cell;
import throwline.report.document.Text;
import throwline.report.document.Value;
import throwline.study.FlightQuantity;
import throwline.study.SetUpResult;
import throwline.study.SetUpResult.FirstStall;
import throwline.study.SetUpResult.Manner;
import throwline.study.SetUpResult.Side;

/** Row that says where each wing lets go first, how far out, and what the model does then. */
final class FirstStallRow {

    private FirstStallRow() {}

    static Comparison.Row of(List<Flown> all) {
        return new Comparison.Row(
                "",
                Text.none(),
                Text.say("row.first"),
                Depth.ESSENTIAL,
                Flown.each(
                        all,
                        (flown, r) -> Cell.of(stall(r).map(FirstStallRow::place).orElse(Text.none()))),
                List.of(
                        reached(all, "row.first.out", stall -> Value.share(stall.spanFraction()))
                                .folded(),
                        reached(all, "row.first.then", stall -> Text.say(Sentences.key(stall.manner())))));
    }

    /** The place and what happens then; empty where the stall is not known. */
    static Text told(SetUpResult result) {
        return stall(result)
                .map(stall -> stall.manner() == Manner.NOT_REACHED
                        ? place(stall)
                        : Text.join(Text.Join.COMMA, List.of(place(stall), Text.say(Sentences.key(stall.manner())))))
                .orElse(Text.none());
    }

    private static Below reached(List<Flown> all, String key, Function<FirstStall, Text> cell) {
        return Below.of(
                Text.say(key),
                Flown.each(
                        all,
                        (flown, r) -> stall(r).filter(stall -> stall.manner() != Manner.NOT_REACHED)
                                .map(cell)
                                .orElse(Text.none())));
    }

    /** Where a wing lets go is known where its stall is. */
    private static Optional<FirstStall> stall(SetUpResult result) {
        return result.number(FlightQuantity.STALL_SPEED).known().map(known -> result.firstStall());
    }

    private static Text place(FirstStall stall) {
        if (stall.manner() == Manner.NOT_REACHED) {
            return Text.say("row.first.not");
        }
        Text place = stall.surface().isEmpty() ? Text.say("row.first.bare") : Text.name(stall.surface());
        return stall.side() == Side.BOTH
                ? place
                : Text.say(stall.side() == Side.LEFT ? "row.first.left" : "row.first.right", place);
    }
}
