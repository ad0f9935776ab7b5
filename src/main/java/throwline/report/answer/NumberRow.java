package throwline.report.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import throwline.model.Stick;
import throwline.report.document.Comparison.Cell;
import throwline.report.document.Role;
import throwline.report.document.Text;
import throwline.report.document.Value;
import throwline.study.FlightQuantity;
import throwline.study.FlightQuantity.Screen;
import throwline.study.Headline;
import throwline.study.HeadlineNumbers.RollRate;
import throwline.study.SetUpResult;

/**
 * A row of headline numbers: where they are found and how they are read.
 *
 * @param quantity that it shows
 * @param stick that it holds for; empty where it holds for none
 * @param number of a set-up; empty where the row does not hold for it
 * @param text of a number
 * @param otherwise what stands where there is no number to expect
 */
record NumberRow(
        FlightQuantity quantity,
        String stick,
        BiFunction<Flown, SetUpResult, Optional<Headline>> number,
        BiFunction<Flown, Headline.Known, Text> text,
        BiFunction<Flown, SetUpResult, Cell> otherwise) {

    private static final Text NOTHING = Text.name("-");

    /** Why servos set no limit. */
    private static final String SUFFICES = "why.servo-suffices";

    /** Why there is no run. */
    private static final String BY_HAND = "why.hand-launch";

    /** The rows of these set-ups, in order; a row a roll stick. */
    static List<NumberRow> of(List<Flown> all) {
        List<NumberRow> rows = new ArrayList<>();
        for (FlightQuantity quantity : PowerRows.known(all, FlightQuantity.on(Screen.DETAIL))) {
            switch (quantity) {
                case ELEVATOR -> rows.add(plain(quantity, (flown, known) -> flown.edge(known.value())));
                case ELEVATOR_CHANGE -> rows.add(mix());
                case ROLL_RATE -> sticks(all).forEach(stick -> rows.add(roll(stick)));
                case FLAP_SPEED_LIMIT -> rows.add(flapLimit());
                case TAKE_OFF_RUN -> rows.add(takeOff());
                case GO_AROUND -> rows.add(plain(quantity, (flown, known) -> PowerRows.verdict(known)));
                default ->
                    rows.add(plain(quantity, (flown, known) -> Value.of(known.value(), Value.Kind.of(quantity))));
            }
        }
        return rows;
    }

    private static NumberRow plain(FlightQuantity quantity, BiFunction<Flown, Headline.Known, Text> text) {
        return new NumberRow(
                quantity, "", (flown, r) -> Optional.of(r.number(quantity)), text, (flown, r) -> Cell.of(NOTHING));
    }

    /** Half of the change to expect; none for the reference and where the change may go either way. */
    private static NumberRow mix() {
        return new NumberRow(
                FlightQuantity.ELEVATOR_CHANGE,
                "",
                (flown, r) -> flown.model().isReference(r.setUp())
                        ? Optional.empty()
                        : Optional.of(r.number(FlightQuantity.ELEVATOR_CHANGE)),
                (flown, known) -> known.startingMix().<Text>map(flown::edge).orElse(Text.say("row.none")),
                (flown, r) -> Cell.of(NOTHING));
    }

    /** A model without wheels rolls nowhere. */
    private static NumberRow takeOff() {
        FlightQuantity quantity = FlightQuantity.TAKE_OFF_RUN;
        return new NumberRow(
                quantity,
                "",
                (flown, r) -> Optional.of(r.number(quantity)).filter(number -> !number.isUnknownFor(BY_HAND)),
                (flown, known) -> Value.distance(known.value()),
                (flown, r) -> new Cell(
                        Text.say("row.takeoff.by-hand"), Role.REMARK, Text.say(BY_HAND), Optional.empty(), List.of()));
    }

    /** A set-up that moves nothing has no such limit. */
    private static NumberRow flapLimit() {
        FlightQuantity quantity = FlightQuantity.FLAP_SPEED_LIMIT;
        return new NumberRow(
                quantity,
                "",
                (flown, r) -> r.number(quantity).known().map(Headline.class::cast),
                (flown, known) -> Value.speed(known.value()),
                (flown, r) -> noFlapLimit(r, (Headline.Unknown) r.number(quantity)));
    }

    private static Cell noFlapLimit(SetUpResult result, Headline.Unknown why) {
        if (result.setUp().isClean()) {
            return Cell.of(NOTHING);
        }
        return why.why().equals(SUFFICES)
                ? new Cell(
                        Text.say("row.flap-limit.suffices"),
                        Role.REMARK,
                        Text.say(SUFFICES),
                        Optional.empty(),
                        List.of())
                : missing(Text.say("row.no-answer"), why);
    }

    private static List<String> sticks(List<Flown> all) {
        return all.stream()
                .flatMap(flown -> flown.model().sticks().stream())
                .filter(Stick.Roll.class::isInstance)
                .map(Stick::name)
                .distinct()
                .toList();
    }

    private static NumberRow roll(String stick) {
        return new NumberRow(
                FlightQuantity.ROLL_RATE,
                stick,
                (flown, r) -> roll(r, stick).map(RollRate::rate),
                NumberRow::rateAndTime,
                (flown, r) -> Cell.of(isElsewhere(flown, stick, r) ? Text.say("row.roll.not-here") : NOTHING));
    }

    /** A rate of roll and the seconds that one roll takes. */
    private static Text rateAndTime(Flown flown, Headline.Known known) {
        Value rate = Value.of(known.value(), Value.Kind.RATE);
        return known.value() == 0
                ? rate
                : Text.say("row.roll.time", rate, Value.time(2 * Math.PI / Math.abs(known.value())));
    }

    static Optional<RollRate> roll(SetUpResult result, String stick) {
        return result.rollRates().stream()
                .filter(rate -> rate.stick().equals(stick))
                .findFirst();
    }

    private static boolean isElsewhere(Flown flown, String stick, SetUpResult result) {
        return flown.model().sticks().stream()
                .noneMatch(each -> each.name().equals(stick) && each.worksIn(result.setUp()));
    }

    /** A cell without a number, and why. */
    static Cell missing(Text text, Headline.Unknown why) {
        return new Cell(text, Role.PLAIN, Text.say(why.why()), Optional.empty(), List.of());
    }

    /** Above it and its neighbours of the same kind; empty for none. */
    Text family() {
        return stick.isEmpty() ? Text.none() : Text.say(quantity.row());
    }

    /** What stands before its numbers. */
    Text label() {
        return stick.isEmpty() ? Text.say(quantity.row()) : Text.name(stick);
    }

    /** What a sentence calls it. */
    Text name() {
        return stick.isEmpty() ? label() : Text.say("row.roll.of", stick);
    }

    /** True where its numbers tell set-ups apart, or not. */
    boolean compares() {
        return quantity.isOn(Screen.CLOSE_CALLS);
    }

    /** False for a stick that only another model has. */
    boolean holdsFor(Flown flown) {
        return stick.isEmpty()
                || flown.model().sticks().stream().anyMatch(each -> each.name().equals(stick));
    }

    /** The number of a set-up, where it is known. */
    Optional<Headline.Known> known(Flown flown, SetUpResult result) {
        return number.apply(flown, result).flatMap(Headline::known);
    }

    /** What is read first of a set-up. */
    Text shown(Flown flown, SetUpResult result) {
        Optional<Headline> found = number.apply(flown, result);
        if (found.isEmpty()) {
            return otherwise.apply(flown, result).text();
        }
        Function<Headline.Known, Text> read = known -> text.apply(flown, known);
        return found.get().known().map(read).orElse(Text.say("row.no-answer"));
    }
}
