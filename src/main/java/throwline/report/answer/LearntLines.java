package throwline.report.answer;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import throwline.report.document.Comparison.Below;
import throwline.report.document.Text;
import throwline.report.document.Value;
import throwline.study.FlightQuantity;
import throwline.study.Headline;
import throwline.study.SetUpResult;

/** Lines below a number that flights put right: what it was before, and what it rests on. */
final class LearntLines {

    private LearntLines() {}

    /** The lines of a row; none where no flight put any of its numbers right. */
    static List<Below> of(
            List<Flown> all, FlightQuantity quantity, BiFunction<Flown, SetUpResult, Optional<Headline>> number) {
        boolean any = all.stream()
                .anyMatch(flown -> flown.setUps().stream()
                        .anyMatch(r -> learnt(number.apply(flown, r)).isPresent()));
        if (!any) {
            return List.of();
        }
        return List.of(
                Below.of(
                        Text.say("row.before-flights"),
                        Flown.each(
                                all,
                                (flown, r) -> learnt(number.apply(flown, r))
                                        .map(before -> before(flown, quantity, before))
                                        .orElse(Text.none()))),
                Below.of(
                        Text.say("row.rests-on"),
                        Flown.each(
                                all,
                                (flown, r) -> learnt(number.apply(flown, r))
                                        .map(before -> Text.say(before.flown() ? "learn.flown" : "learn.others"))
                                        .orElse(Text.none()))));
    }

    private static Optional<Headline.FromFlights> learnt(Optional<Headline> number) {
        return number.flatMap(headline -> headline instanceof Headline.Known known ? known.learnt() : Optional.empty());
    }

    /** A mix to program is half of the change; what it was before is shown as such. */
    private static Text before(Flown flown, FlightQuantity quantity, Headline.FromFlights old) {
        Headline.Known before = new Headline.Known(old.value(), old.low(), old.high(), Headline.Basis.ASSUMED);
        double chord = flown.model().tail().throwChord();
        return switch (quantity) {
            case ELEVATOR_CHANGE ->
                before.startingMix()
                        .<Text>map(mix -> new Value.Edge(mix, chord))
                        .orElse(Text.say("row.none"));
            case ELEVATOR -> new Value.Edge(before.value(), chord);
            default -> Value.of(before.value(), Value.Kind.of(quantity));
        };
    }
}
