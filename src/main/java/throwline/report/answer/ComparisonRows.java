package throwline.report.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import throwline.report.data.DataUnit;
import throwline.report.document.Block.Depth;
import throwline.report.document.Comparison;
import throwline.report.document.Comparison.Below;
import throwline.report.document.Comparison.Cell;
import throwline.report.document.Role;
import throwline.report.document.Text;
import throwline.report.document.Value;
import throwline.study.FlightQuantity;
import throwline.study.FlightQuantity.Screen;
import throwline.study.Headline;
import throwline.study.HeadlineNumbers.RollRate;
import throwline.study.SetUpResult;

/** The rows of headline numbers, a column a set-up, for packs and models one below the other. */
final class ComparisonRows {

    /** Seconds are given over this distance, m, and the distance flown is given for this loss of height, m. */
    private static final double RUN = 50;

    private static final double LOSS = 1;

    private final List<Flown> all;
    private final NumberFacts facts = new NumberFacts();
    private final List<Comparison.Row> rows = new ArrayList<>();

    ComparisonRows(List<Flown> all) {
        this.all = List.copyOf(all);
        boolean stallIsLeft = true;
        for (NumberRow row : NumberRow.of(all)) {
            // Where the wing stalls first is read beside how it rolls.
            if (stallIsLeft && row.quantity().part() != FlightQuantity.Part.AIR) {
                rows.add(FirstStallRow.of(all));
                stallIsLeft = false;
            }
            row(row);
        }
    }

    /** The rows under a title, with these headings and warnings above each group. */
    Comparison comparison(Text title, Function<Flown, Text> heading, Function<Flown, List<Text>> warnings) {
        List<Comparison.Group> groups = all.stream()
                .map(flown -> new Comparison.Group(
                        flown.who(),
                        heading.apply(flown),
                        warnings.apply(flown),
                        flown.setUps().stream().map(r -> r.setUp().name()).toList()))
                .toList();
        return new Comparison(title, groups, rows);
    }

    private void row(NumberRow row) {
        List<List<Cell>> cells = all.stream()
                .map(flown -> row.holdsFor(flown)
                        ? flown.setUps().stream()
                                .map(result -> cell(flown, result, row))
                                .toList()
                        : List.<Cell>of())
                .toList();
        Depth depth = row.quantity().isOn(Screen.GLANCE) ? Depth.ESSENTIAL : Depth.DETAIL;
        rows.add(new Comparison.Row(row.quantity().key(), row.family(), row.label(), depth, cells, all(row)));
    }

    private List<Below> all(NumberRow row) {
        List<Below> lines = new ArrayList<>(below(row));
        lines.addAll(LearntLines.of(all, row.quantity(), row.number()));
        return lines;
    }

    /** What the number means in practice, and its likely band. */
    private List<Below> below(NumberRow row) {
        FlightQuantity quantity = row.quantity();
        return switch (quantity) {
            case STALL_SPEED -> List.of(beside(row).folded(), likely(row));
            case APPROACH_SPEED ->
                List.of(
                        beside(row).folded(),
                        likely(row).folded(),
                        below(
                                        Text.say("row.comein.run", Value.distance(RUN)),
                                        row,
                                        (flown, known) -> Value.time(RUN / known.value()))
                                .folded());
            case DESCENT_ANGLE ->
                List.of(
                        likely(row),
                        below(
                                Text.say("row.descent.distance", Value.of(LOSS, Value.Kind.GLIDE)),
                                row,
                                (flown, known) -> distance(known)));
            case ELEVATOR ->
                List.of(
                        below("row.or", row, (flown, known) -> Value.deflection(known.value())),
                        below("row.likely", row, (flown, known) -> flown.edgeBand(known)));
            case ELEVATOR_CHANGE -> mix(row);
            case ROLL_RATE -> List.of(likely(row).folded(), texts("", (flown, r) -> stop(r, row.stick())));
            case FLARE_HEIGHT -> List.of(likely(row));
            case GUST_LIMIT ->
                List.of(
                        likely(row).folded(),
                        texts("row.bumps.fit", (flown, r) -> fitFor(r)).folded());
            case LANDING_DISTANCE -> landing(row);
            case TAKE_OFF_RUN, CLIMB_RATE, GO_AROUND ->
                PowerRows.below(all, quantity, likely(row).folded());
            case FLAP_SPEED_LIMIT ->
                List.of(
                        beside(row).folded(),
                        likely(row).folded(),
                        texts(
                                        "row.flap-limit.by",
                                        (flown, r) -> row.known(flown, r)
                                                .map(known ->
                                                        Text.name(r.servos().limitedBy()))
                                                .orElse(Text.none()))
                                .folded());
            default -> List.of(likely(row).folded());
        };
    }

    /** The same as an angle, and where the elevator may end once it is trimmed in the air. */
    private List<Below> mix(NumberRow row) {
        return List.of(
                below(
                                "row.or",
                                row,
                                (flown, known) -> known.startingMix()
                                        .<Text>map(Value::deflection)
                                        .orElse(Text.none()))
                        .folded(),
                below("row.mix.end", row, (flown, known) -> flown.edgeBand(known)));
    }

    private List<Below> landing(NumberRow row) {
        List<Below> below = new ArrayList<>(List.of(likely(row).folded()));
        below.addAll(LandingFit.below(all));
        return below;
    }

    private static Text distance(Headline.Known angle) {
        return angle.value() > 0 ? Value.of(LOSS / Math.tan(angle.value()), Value.Kind.GLIDE) : Text.none();
    }

    private static Text fitFor(SetUpResult result) {
        return result.field()
                .margins()
                .map(m -> Text.say("row.bumps." + m.fitFor().name().toLowerCase(Locale.ROOT)))
                .orElse(Text.none());
    }

    private static Text stop(SetUpResult result, String stick) {
        return NumberRow.roll(result, stick)
                .filter(RollRate::atItsStop)
                .map(rate -> Text.say("row.roll.stop"))
                .orElse(Text.none());
    }

    private Cell cell(Flown flown, SetUpResult result, NumberRow row) {
        Optional<Headline> number = row.number().apply(flown, result);
        if (number.isEmpty()) {
            return row.otherwise().apply(flown, result);
        }
        if (number.get() instanceof Headline.Unknown why) {
            return NumberRow.missing(Text.say("row.no-answer"), why);
        }
        Headline.Known known = (Headline.Known) number.get();
        FlightQuantity quantity = row.quantity();
        return new Cell(
                row.text().apply(flown, known),
                isLikeTheFirst(flown, result, row, known) ? Role.QUIET : Role.HEADLINE,
                Text.none(),
                Optional.of(new Comparison.Measured(
                        known, DataUnit.of(quantity.dimension()).factor(), row.compares())),
                facts.of(quantity, known, flown, result));
    }

    /** True where a number is too close to call against that of the set-up that all others are compared with. */
    private static boolean isLikeTheFirst(Flown flown, SetUpResult result, NumberRow row, Headline.Known known) {
        return row.compares()
                && !flown.model().isReference(result.setUp())
                && flown.reference()
                        .flatMap(reference -> row.known(flown, reference))
                        .filter(known::tooCloseTo)
                        .isPresent();
    }

    private Below beside(NumberRow row) {
        return below("row.or", row, (flown, known) -> Value.of(known.value(), Value.Kind.OTHER_SPEED));
    }

    private Below likely(NumberRow row) {
        return below("row.likely", row, (flown, known) -> new Value.Band(known, Value.Kind.of(row.quantity())));
    }

    private Below below(String key, NumberRow row, BiFunction<Flown, Headline.Known, Text> text) {
        return below(key.isEmpty() ? Text.none() : Text.say(key), row, text);
    }

    private Below below(Text label, NumberRow row, BiFunction<Flown, Headline.Known, Text> text) {
        return texts(
                label,
                (flown, r) -> row.known(flown, r)
                        .map(known -> text.apply(flown, known))
                        .orElse(Text.none()));
    }

    private Below texts(String key, BiFunction<Flown, SetUpResult, Text> text) {
        return texts(key.isEmpty() ? Text.none() : Text.say(key), text);
    }

    private Below texts(Text label, BiFunction<Flown, SetUpResult, Text> text) {
        return Below.of(label, Flown.each(all, text));
    }
}
