package throwline.report.table;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import throwline.model.Model;
import throwline.model.Stick;
import throwline.model.Tail;
import throwline.report.EdgeThrow;
import throwline.report.Headlines;
import throwline.report.Page;
import throwline.report.Sentences;
import throwline.report.document.Figures;
import throwline.study.FlightQuantity;
import throwline.study.Headline;
import throwline.study.HeadlineNumbers.RollRate;
import throwline.study.SetUpResult;
import throwline.study.SetUpResult.FirstStall;
import throwline.study.SetUpResult.Manner;
import throwline.study.SetUpResult.Side;
import throwline.words.Words;

/** The rows that a flyer reads first, a column a set-up. */
final class FlyersRows {

    /** Seconds are given over this distance, m, and the distance flown is given for this loss of height, m. */
    private static final double RUN = 50;

    private static final double LOSS = 10;

    private final Model model;
    private final List<SetUpResult> setUps;
    private final Words words;
    private final Sentences sentences;
    private final Figures figures;
    private final Footnotes footnotes;
    private final EdgeThrow elevator;
    private final Grid grid;

    FlyersRows(
            Model model, List<SetUpResult> setUps, Page page, Words words, Sentences sentences, Footnotes footnotes) {
        this.model = model;
        this.setUps = setUps;
        this.words = words;
        this.sentences = sentences;
        this.figures = new Figures(page, words);
        this.footnotes = footnotes;
        Tail tail = model.tail();
        this.elevator = new EdgeThrow(tail.throwChord());
        this.grid = new Grid(
                setUps.stream().map(result -> page.shown(result.setUp().name())).toList());
    }

    Grid grid() {
        FlightQuantity.on(FlightQuantity.Screen.GLANCE).forEach(this::rows);
        return grid;
    }

    private void rows(FlightQuantity quantity) {
        switch (quantity) {
            case ELEVATOR -> throwRows(quantity);
            case ELEVATOR_CHANGE -> mix();
            case ROLL_RATE -> {
                rolls();
                firstStall();
            }
            case FLAP_SPEED_LIMIT -> flapLimit();
            default -> plain(quantity);
        }
        switch (quantity) {
            case APPROACH_SPEED -> more("row.comein.run", quantity, v -> figures.seconds(RUN / v.value()));
            case DESCENT_ANGLE -> more("row.descent.distance", quantity, this::distance);
            case GUST_LIMIT -> bumps();
            case LANDING_DISTANCE -> stops();
            default -> {}
        }
    }

    /** The number and its likely band. */
    private void plain(FlightQuantity quantity) {
        main(quantity, v -> figures.value(quantity, v.value()));
        if (quantity == FlightQuantity.STALL_SPEED || quantity == FlightQuantity.APPROACH_SPEED) {
            more("row.or", quantity, v -> figures.speedBeside(v.value()));
        }
        more("row.likely", quantity, v -> figures.band(quantity, v));
    }

    private void throwRows(FlightQuantity quantity) {
        main(quantity, v -> figures.edge(v.value(), elevator));
        more("row.or", quantity, v -> figures.deflection(v.value()));
        more("row.likely", quantity, v -> figures.edgeBand(v, elevator));
    }

    /** A set-up that moves nothing has no such limit. */
    private void flapLimit() {
        FlightQuantity quantity = FlightQuantity.FLAP_SPEED_LIMIT;
        grid.row(
                words.say(quantity.row()),
                setUps.stream()
                        .map(result -> result.number(quantity) instanceof Headline.Known known
                                ? figures.speed(known.value())
                                : result.setUp().isClean()
                                        ? "-"
                                        : noFlapLimit((Headline.Unknown) result.number(quantity)))
                        .toList(),
                quantity.row(),
                setUps.stream()
                        .map(result -> Optional.of(result.number(quantity))
                                .filter(number -> number instanceof Headline.Known
                                        || !result.setUp().isClean()))
                        .toList());
        more("row.or", quantity, v -> figures.speedBeside(v.value()));
        more("row.likely", quantity, figures::speedBand);
        grid.more(
                words.say("row.flap-limit.by"),
                cells((result, known) -> result.servos().limitedBy(), result -> result.number(quantity), ""));
    }

    private void bumps() {
        grid.more(
                words.say("row.bumps.fit"),
                setUps.stream()
                        .map(result -> result.field()
                                .margins()
                                .map(m -> words.say(
                                        "row.bumps." + m.fitFor().name().toLowerCase(Locale.ROOT)))
                                .orElse(""))
                        .toList());
    }

    private void stops() {
        LandingFit fit = new LandingFit(model.field(), words, figures);
        if (model.field().wind() > 0) {
            grid.more(
                    words.say("row.stops.wind", figures.speed(model.field().wind())),
                    setUps.stream().map(this::inWind).toList());
        }
        if (model.field().length().isPresent()) {
            grid.more(fit.heading(), setUps.stream().map(fit::cell).toList());
        }
    }

    private String inWind(SetUpResult result) {
        if (result.number(FlightQuantity.LANDING_DISTANCE_IN_WIND) instanceof Headline.Known known) {
            return figures.metres(known.value());
        }
        return result.number(FlightQuantity.LANDING_DISTANCE) instanceof Headline.Known
                ? words.say("row.stops.drifts")
                : "";
    }

    private String noFlapLimit(Headline.Unknown why) {
        return why.why().equals("why.servo-suffices")
                ? words.say("row.flap-limit.suffices", footnotes.mark(sentences.why(why)))
                : none(why);
    }

    private String distance(Headline.Known angle) {
        return angle.value() > 0 ? words.say("row.descent.ahead", figures.metres(LOSS / Math.tan(angle.value()))) : "";
    }

    private void mix() {
        grid.row(
                words.say("row.mix"),
                cells((result, known) -> mixCell(result), SetUpResult::elevatorChange),
                "row.mix",
                setUps.stream()
                        .map(result -> Optional.of(result)
                                .filter(other -> !other.setUp().equals(model.reference()))
                                .map(SetUpResult::elevatorChange))
                        .toList());
        grid.more(
                words.say("row.or"),
                cells(
                        (result, known) -> mix(result).map(figures::deflection).orElse(""),
                        SetUpResult::elevatorChange,
                        ""));
    }

    private String mixCell(SetUpResult result) {
        if (result.setUp().equals(model.reference())) {
            return "-";
        }
        return mix(result).map(angle -> figures.edge(angle, elevator)).orElse(words.say("row.none"));
    }

    /** Half the expected change; empty for the reference and where the change may go either way. */
    private Optional<Double> mix(SetUpResult result) {
        return Headlines.known(result.elevatorChange())
                .filter(change -> !Headlines.eitherWay(change))
                .map(change -> change.value() / 2);
    }

    private void rolls() {
        List<Stick> sticks = model.sticks().stream()
                .filter(stick -> stick instanceof Stick.Roll)
                .toList();
        if (sticks.isEmpty()) {
            return;
        }
        grid.heading(words.say("row.roll"));
        for (Stick stick : sticks) {
            grid.row(
                    "  " + stick.name(),
                    rolls(stick, roll -> rate(roll.rate()), absent(stick)),
                    "row.roll",
                    rates(stick));
            grid.more("  " + words.say("row.likely"), rolls(stick, known(figures::rateBand), result -> ""));
            grid.more("  " + words.say("row.roll.time"), rolls(stick, known(this::time), result -> ""));
            grid.more("", rolls(stick, roll -> roll.atItsStop() ? words.say("row.roll.stop") : "", result -> ""));
        }
    }

    private List<String> rolls(Stick stick, Function<RollRate, String> cell, Function<SetUpResult, String> otherwise) {
        return setUps.stream()
                .map(result -> result.rollRates().stream()
                        .filter(roll -> roll.stick().equals(stick.name()))
                        .findFirst()
                        .map(cell)
                        .orElseGet(() -> otherwise.apply(result)))
                .toList();
    }

    private List<Optional<Headline>> rates(Stick stick) {
        return setUps.stream()
                .map(result -> result.rollRates().stream()
                        .filter(roll -> roll.stick().equals(stick.name()))
                        .findFirst()
                        .map(RollRate::rate))
                .toList();
    }

    private String rate(Headline rate) {
        return rate instanceof Headline.Known known ? figures.rate(known.value()) : none(rate);
    }

    private String time(Headline.Known rate) {
        return rate.value() == 0 ? "" : figures.seconds(2 * Math.PI / Math.abs(rate.value()));
    }

    private static Function<RollRate, String> known(Function<Headline.Known, String> cell) {
        return roll -> Headlines.known(roll.rate()).map(cell).orElse("");
    }

    private Function<SetUpResult, String> absent(Stick stick) {
        return result -> stick.worksIn(result.setUp()) ? "-" : words.say("row.roll.not-here");
    }

    private void firstStall() {
        grid.row(words.say("row.first"), stalls(this::place), "row.first", List.of());
        grid.more(words.say("row.first.out"), reached(stall -> figures.share(stall.spanFraction())));
        grid.more(words.say("row.first.then"), reached(stall -> words.say(Sentences.key(stall.manner()))));
    }

    private List<String> reached(Function<FirstStall, String> cell) {
        return stalls(stall -> stall.manner() == Manner.NOT_REACHED ? "" : cell.apply(stall));
    }

    private String place(FirstStall stall) {
        if (stall.manner() == Manner.NOT_REACHED) {
            return words.say("row.first.not");
        }
        String place = stall.surface().isEmpty() ? words.say("row.first.bare") : stall.surface();
        return stall.side() == Side.BOTH
                ? place
                : words.say(stall.side() == Side.LEFT ? "row.first.left" : "row.first.right", place);
    }

    /** Where a wing lets go is known where its stall is. */
    private List<String> stalls(Function<FirstStall, String> cell) {
        return setUps.stream()
                .map(result -> Headlines.known(result.stallSpeed())
                        .map(known -> cell.apply(result.firstStall()))
                        .orElse(""))
                .toList();
    }

    private void main(FlightQuantity quantity, Function<Headline.Known, String> cell) {
        Function<SetUpResult, Headline> number = result -> result.number(quantity);
        grid.row(
                words.say(quantity.row()),
                cells((result, known) -> cell.apply(known), number),
                quantity.row(),
                setUps.stream().map(number).map(Optional::of).toList());
    }

    private void more(String key, FlightQuantity quantity, Function<Headline.Known, String> cell) {
        grid.more(words.say(key), cells((result, known) -> cell.apply(known), result -> result.number(quantity), ""));
    }

    /** Cells of known numbers; an unknown one points to the sentence that says why. */
    private List<String> cells(
            BiFunction<SetUpResult, Headline.Known, String> cell, Function<SetUpResult, Headline> number) {
        return setUps.stream()
                .map(result -> number.apply(result) instanceof Headline.Known known
                        ? cell.apply(result, known)
                        : none(number.apply(result)))
                .toList();
    }

    private List<String> cells(
            BiFunction<SetUpResult, Headline.Known, String> cell,
            Function<SetUpResult, Headline> number,
            String otherwise) {
        return setUps.stream()
                .map(result ->
                        number.apply(result) instanceof Headline.Known known ? cell.apply(result, known) : otherwise)
                .toList();
    }

    private String none(Headline headline) {
        return words.say("row.no-answer", footnotes.mark(sentences.why((Headline.Unknown) headline)));
    }
}
