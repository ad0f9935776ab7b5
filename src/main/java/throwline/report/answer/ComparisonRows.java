package throwline.report.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import throwline.model.Stick;
import throwline.report.Headlines;
import throwline.report.TooCloseToCall;
import throwline.report.data.DataUnit;
import throwline.report.document.Block.Paragraph;
import throwline.report.document.Comparison;
import throwline.report.document.Comparison.Below;
import throwline.report.document.Comparison.Cell;
import throwline.report.document.Role;
import throwline.report.document.Text;
import throwline.report.document.Value;
import throwline.study.FlightQuantity;
import throwline.study.Headline;
import throwline.study.HeadlineNumbers.RollRate;
import throwline.study.SetUpResult;

/** The rows that a flyer reads first, a column a set-up, for all packs and models side by side. */
final class ComparisonRows {

    /** Seconds are given over this distance, m, and the distance flown is given for this loss of height, m. */
    private static final double RUN = 50;

    private static final double LOSS = 10;

    private static final Text NOTHING = Text.name("-");

    private final List<Flown> all;
    private final NumberFacts facts = new NumberFacts();
    private final List<Comparison.Row> rows = new ArrayList<>();
    /** Rows that tell set-ups apart or not, one list a group. */
    private final List<List<CloseCalls.Strip>> strips = new ArrayList<>();

    /** What a number of one quantity is: where it is found and how it is read. */
    private record Source(
            FlightQuantity quantity,
            Text family,
            Text label,
            Text name,
            BiFunction<Flown, SetUpResult, Optional<Headline>> number,
            BiFunction<Flown, Headline.Known, Text> text,
            BiFunction<Flown, SetUpResult, Cell> otherwise) {}

    ComparisonRows(List<Flown> all) {
        this.all = List.copyOf(all);
        all.forEach(flown -> strips.add(new ArrayList<>()));
        FlightQuantity.on(FlightQuantity.Screen.GLANCE).forEach(this::rows);
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

    /** Which rows of a group cannot tell which set-ups apart. */
    List<Paragraph> closeCalls(int group) {
        return CloseCalls.sentences(strips.get(group), all.get(group).setUps().size());
    }

    private void rows(FlightQuantity quantity) {
        switch (quantity) {
            case ELEVATOR ->
                row(
                        source(quantity, (flown, known) -> edge(flown, known.value())),
                        below("row.or", quantity, known -> Value.deflection(known.value())),
                        bands(
                                Text.say("row.likely"),
                                (flown, r) -> of(r, quantity)
                                        .<Text>map(known -> new Value.EdgeBand(known, chord(flown)))
                                        .orElse(Text.none())));
            case ELEVATOR_CHANGE -> mix(quantity);
            case ROLL_RATE -> {
                sticks().forEach(this::roll);
                rows.add(FirstStallRow.of(all));
            }
            case FLAP_SPEED_LIMIT -> flapLimit(quantity);
            default -> plain(quantity);
        }
    }

    /** The number, what it means in practice, and its likely band. */
    private void plain(FlightQuantity quantity) {
        List<Below> below = new ArrayList<>();
        if (quantity == FlightQuantity.STALL_SPEED || quantity == FlightQuantity.APPROACH_SPEED) {
            below.add(beside(quantity));
        }
        below.add(likely(quantity));
        switch (quantity) {
            case APPROACH_SPEED -> below.add(below("row.comein.run", quantity, v -> Value.time(RUN / v.value())));
            case DESCENT_ANGLE -> below.add(below("row.descent.distance", quantity, ComparisonRows::distance));
            case GUST_LIMIT -> below.add(bands(Text.say("row.bumps.fit"), (flown, r) -> fitFor(r)));
            case LANDING_DISTANCE -> below.addAll(LandingFit.below(all));
            default -> {}
        }
        row(
                source(quantity, (flown, known) -> Value.of(known.value(), Value.Kind.of(quantity))),
                below.toArray(Below[]::new));
    }

    private static Text distance(Headline.Known angle) {
        return angle.value() > 0 ? Value.distance(LOSS / Math.tan(angle.value())) : Text.none();
    }

    private static Text fitFor(SetUpResult result) {
        return result.field()
                .margins()
                .map(m -> Text.say("row.bumps." + m.fitFor().name().toLowerCase(Locale.ROOT)))
                .orElse(Text.none());
    }

    /** Half of the change to expect; none for the reference and where the change may go either way. */
    private void mix(FlightQuantity quantity) {
        row(
                new Source(
                        quantity,
                        Text.none(),
                        Text.say(quantity.row()),
                        Text.none(),
                        (flown, r) -> flown.model().reference().equals(r.setUp())
                                ? Optional.empty()
                                : Optional.of(r.number(quantity)),
                        (flown, known) ->
                                known.startingMix().map(mix -> edge(flown, mix)).orElse(Text.say("row.none")),
                        (flown, r) -> Cell.of(NOTHING)),
                bands(
                        Text.say("row.or"),
                        (flown, r) -> of(r, quantity)
                                .flatMap(Headline.Known::startingMix)
                                .<Text>map(Value::deflection)
                                .orElse(Text.none())));
    }

    /** A set-up that moves nothing has no such limit. */
    private void flapLimit(FlightQuantity quantity) {
        row(
                new Source(
                        quantity,
                        Text.none(),
                        Text.say(quantity.row()),
                        Text.none(),
                        (flown, r) -> of(r, quantity).map(Headline.class::cast),
                        (flown, known) -> Value.speed(known.value()),
                        (flown, r) -> noFlapLimit(r, (Headline.Unknown) r.number(quantity))),
                beside(quantity),
                likely(quantity),
                bands(
                        Text.say("row.flap-limit.by"),
                        (flown, r) -> of(r, quantity)
                                .map(known -> Text.name(r.servos().limitedBy()))
                                .orElse(Text.none())));
    }

    private static Cell noFlapLimit(SetUpResult result, Headline.Unknown why) {
        if (result.setUp().isClean()) {
            return Cell.of(NOTHING);
        }
        boolean suffices = why.why().equals("why.servo-suffices");
        return missing(Text.say(suffices ? "row.flap-limit.suffices" : "row.no-answer"), why);
    }

    private List<String> sticks() {
        return all.stream()
                .flatMap(flown -> flown.model().sticks().stream())
                .filter(Stick.Roll.class::isInstance)
                .map(Stick::name)
                .distinct()
                .toList();
    }

    private void roll(String stick) {
        Function<SetUpResult, Optional<RollRate>> roll = r -> r.rollRates().stream()
                .filter(rate -> rate.stick().equals(stick))
                .findFirst();
        row(
                new Source(
                        FlightQuantity.ROLL_RATE,
                        Text.say("row.roll"),
                        Text.name(stick),
                        Text.say("row.roll.of", stick),
                        (flown, r) -> roll.apply(r).map(RollRate::rate),
                        (flown, known) -> Value.of(known.value(), Value.Kind.RATE),
                        (flown, r) -> Cell.of(isElsewhere(flown, stick, r) ? Text.say("row.roll.not-here") : NOTHING)),
                bands(
                        Text.say("row.likely"),
                        (flown, r) -> roll.apply(r)
                                .flatMap(rate -> Headlines.known(rate.rate()))
                                .<Text>map(known -> new Value.Band(known, Value.Kind.RATE))
                                .orElse(Text.none())),
                bands(
                        Text.say("row.roll.time"),
                        (flown, r) -> roll.apply(r)
                                .flatMap(rate -> Headlines.known(rate.rate()))
                                .filter(known -> known.value() != 0)
                                .<Text>map(known -> Value.time(2 * Math.PI / Math.abs(known.value())))
                                .orElse(Text.none())),
                bands(
                        Text.none(),
                        (flown, r) -> roll.apply(r)
                                .filter(RollRate::atItsStop)
                                .map(rate -> Text.say("row.roll.stop"))
                                .orElse(Text.none())));
    }

    private static boolean isElsewhere(Flown flown, String stick, SetUpResult result) {
        return flown.model().sticks().stream()
                .noneMatch(each -> each.name().equals(stick) && each.worksIn(result.setUp()));
    }

    private static Source source(FlightQuantity quantity, BiFunction<Flown, Headline.Known, Text> text) {
        return new Source(
                quantity,
                Text.none(),
                Text.say(quantity.row()),
                Text.none(),
                (flown, r) -> Optional.of(r.number(quantity)),
                text,
                (flown, r) -> Cell.of(NOTHING));
    }

    private void row(Source source, Below... below) {
        boolean compares = source.quantity().isOn(FlightQuantity.Screen.CLOSE_CALLS);
        Text name = source.name().isEmpty() ? source.label() : source.name();
        List<CloseCalls.Strip> own = all.stream()
                .map(flown -> new CloseCalls.Strip(name, compares ? entries(flown, source) : List.of()))
                .toList();
        List<List<Cell>> cells = new ArrayList<>();
        List<Text> remarks = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            Flown flown = all.get(i);
            List<List<String>> close = own.get(i).groups();
            strips.get(i).add(own.get(i));
            cells.add(
                    knows(flown, source)
                            ? flown.setUps().stream()
                                    .map(r -> cell(flown, r, source, close))
                                    .toList()
                            : List.of());
            CloseCalls.inside(flown.who(), own.get(i), flown.setUps().size()).ifPresent(remarks::add);
        }
        for (int i = 1; i < all.size(); i++) {
            CloseCalls.between(all.get(0), own.get(0), all.get(i), own.get(i)).ifPresent(remarks::add);
        }
        rows.add(new Comparison.Row(
                source.quantity().key(), source.family(), source.label(), cells, List.of(below), remarks));
    }

    /** False for a stick that only another model has. */
    private static boolean knows(Flown flown, Source source) {
        return source.quantity() != FlightQuantity.ROLL_RATE
                || flown.model().sticks().stream()
                        .anyMatch(stick -> Text.name(stick.name()).equals(source.label()));
    }

    private static List<TooCloseToCall.Entry> entries(Flown flown, Source source) {
        return flown.setUps().stream()
                .flatMap(r -> source.number().apply(flown, r).flatMap(Headlines::known).stream()
                        .map(known -> new TooCloseToCall.Entry(r.setUp().name(), known)))
                .toList();
    }

    private Cell cell(Flown flown, SetUpResult result, Source source, List<List<String>> close) {
        Optional<Headline> number = source.number().apply(flown, result);
        if (number.isEmpty()) {
            return source.otherwise().apply(flown, result);
        }
        if (number.get() instanceof Headline.Unknown why) {
            return missing(Text.say("row.no-answer"), why);
        }
        Headline.Known known = (Headline.Known) number.get();
        FlightQuantity quantity = source.quantity();
        boolean quiet =
                close.stream().anyMatch(group -> group.contains(result.setUp().name()));
        return new Cell(
                source.text().apply(flown, known),
                quiet ? Role.QUIET : Role.HEADLINE,
                Text.none(),
                Optional.of(new Comparison.Measured(
                        known,
                        DataUnit.of(quantity.dimension()).factor(),
                        quantity.isOn(FlightQuantity.Screen.CLOSE_CALLS))),
                facts.of(quantity, known, flown, result));
    }

    private static Cell missing(Text text, Headline.Unknown why) {
        return new Cell(text, Role.PLAIN, Text.say(why.why()), Optional.empty(), List.of());
    }

    private Below beside(FlightQuantity quantity) {
        return below("row.or", quantity, known -> Value.of(known.value(), Value.Kind.OTHER_SPEED));
    }

    private Below likely(FlightQuantity quantity) {
        return below("row.likely", quantity, known -> new Value.Band(known, Value.Kind.of(quantity)));
    }

    private Below below(String key, FlightQuantity quantity, Function<Headline.Known, Text> text) {
        return bands(Text.say(key), (flown, r) -> of(r, quantity).map(text).orElse(Text.none()));
    }

    private Below bands(Text label, BiFunction<Flown, SetUpResult, Text> text) {
        return new Below(label, Role.QUIET, Flown.each(all, text));
    }

    private static Optional<Headline.Known> of(SetUpResult result, FlightQuantity quantity) {
        return Headlines.known(result.number(quantity));
    }

    private static double chord(Flown flown) {
        return flown.model().tail().throwChord();
    }

    private static Text edge(Flown flown, double angle) {
        return new Value.Edge(angle, chord(flown));
    }
}
