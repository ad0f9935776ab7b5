package throwline.report.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import throwline.flight.GoAround;
import throwline.report.document.Comparison.Below;
import throwline.report.document.Text;
import throwline.report.document.Value;
import throwline.study.FlightQuantity;
import throwline.study.Headline;
import throwline.study.SetUpResult;

/** Remarks below the rows with the motor running, and whether there are such rows at all. */
final class PowerRows {

    /** Reasons that leave a whole row out where no set-up has another. */
    private static final Set<String> ELSEWHERE = Set.of("why.no-motor", "why.no-stall", SetUpResult.WORKING);

    /** A path as steep as this is straight up, rad. */
    private static final double STRAIGHT_UP = Math.toRadians(89.5);

    private PowerRows() {}

    /** These quantities without those of power of which no model here has a number or could have one. */
    static List<FlightQuantity> known(List<Flown> all, List<FlightQuantity> quantities) {
        return quantities.stream()
                .filter(quantity -> quantity.part() != FlightQuantity.Part.POWER || apply(all, quantity))
                .toList();
    }

    private static boolean apply(List<Flown> all, FlightQuantity quantity) {
        return all.stream()
                .flatMap(flown -> flown.setUps().stream())
                .map(result -> result.number(quantity))
                .anyMatch(number -> !(number instanceof Headline.Unknown why && ELSEWHERE.contains(why.why())));
    }

    /** The lines below a row, with its likely band. */
    static List<Below> below(List<Flown> all, FlightQuantity quantity, Below likely) {
        List<Below> below = new ArrayList<>();
        switch (quantity) {
            case TAKE_OFF_RUN -> {
                double obstacle = all.get(0).model().field().obstacle();
                below.add(likely);
                if (obstacle > 0) {
                    below.add(line(
                                    all,
                                    Text.say("row.takeoff.over", Value.distance(obstacle)),
                                    FlightQuantity.TAKE_OFF_DISTANCE,
                                    known -> Value.distance(known.value()))
                            .folded());
                }
            }
            case CLIMB_RATE -> {
                below.add(likely);
                below.add(line(all, Text.say("row.climb.angle"), FlightQuantity.CLIMB_ANGLE, PowerRows::path)
                        .folded());
                below.add(line(
                                all,
                                Text.say("row.climb.at"),
                                FlightQuantity.CLIMB_SPEED,
                                known -> Value.speed(known.value()))
                        .folded());
                below.add(line(
                                all,
                                Text.say("row.climb.height"),
                                FlightQuantity.CLIMB_HEIGHT,
                                known -> Value.distance(known.value()))
                        .folded());
                below.add(Below.of(
                                Text.say("row.climb.loop"),
                                Flown.each(all, (flown, r) -> loop(r.number(FlightQuantity.LOOP_TOP_SPEED))))
                        .folded());
            }
            default -> {
                below.add(line(all, Text.say("row.goaround.at"), FlightQuantity.GO_AROUND, PowerRows::path)
                        .folded());
                below.add(likely);
                below.add(line(
                        all,
                        Text.say("row.goaround.loses"),
                        FlightQuantity.GO_AROUND_LOSS,
                        known -> Value.of(known.value(), Value.Kind.HEIGHT)));
                below.add(trim(all).folded());
            }
        }
        return below;
    }

    /** The verdict in words. */
    static Text verdict(Headline.Known climb) {
        return Text.say("row.goaround." + GoAround.verdict(climb.value()).name().toLowerCase(Locale.ROOT));
    }

    static boolean isStraightUp(Headline.Known climb) {
        return climb.value() > STRAIGHT_UP;
    }

    /** The angle of a path. */
    static Text path(Headline.Known climb) {
        return isStraightUp(climb) ? Text.say("row.straight-up") : Value.angle(climb.value());
    }

    /** Whether a loop out of the fastest level flight gets over the top. */
    private static Text loop(Headline top) {
        if (top instanceof Headline.Known known) {
            return Text.say(known.low() > 0 ? "row.climb.loop.over" : "row.climb.loop.may");
        }
        return top.isUnknownFor("why.not-over") ? Text.say("row.climb.loop.not") : Text.none();
    }

    /** How far the elevator goes with the throttle. */
    private static Below trim(List<Flown> all) {
        return Below.of(
                Text.say("row.goaround.trim"),
                Flown.each(
                        all,
                        (flown, r) -> r.number(FlightQuantity.THROTTLE_TRIM)
                                .known()
                                .map(known -> known.mayGoEitherWay()
                                        ? Text.say("row.goaround.trim.little")
                                        : flown.edge(known.value()))
                                .orElse(Text.none())));
    }

    private static Below line(
            List<Flown> all, Text label, FlightQuantity quantity, Function<Headline.Known, Text> text) {
        return Below.of(
                label,
                Flown.each(
                        all, (flown, r) -> r.number(quantity).known().map(text).orElse(Text.none())));
    }
}
