package throwline.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import throwline.model.Stick;
import throwline.report.ElevatorMixes;
import throwline.report.Page;
import throwline.report.Sentences;
import throwline.report.data.SheetEntry;
import throwline.report.document.Figures;
import throwline.report.sheet.SheetDocument.Block;
import throwline.report.sheet.SheetDocument.Cell;
import throwline.report.sheet.SheetDocument.Cells;
import throwline.report.sheet.SheetDocument.Checks;
import throwline.report.sheet.SheetDocument.Column;
import throwline.report.sheet.SheetDocument.Heading;
import throwline.report.sheet.SheetDocument.Kind;
import throwline.report.sheet.SheetDocument.Paragraph;
import throwline.report.sheet.SheetDocument.Row;
import throwline.report.sheet.SheetDocument.Table;
import throwline.study.FlightQuantity;
import throwline.study.Headline;
import throwline.study.SetUpResult;
import throwline.study.SetUpResult.FirstStall;
import throwline.study.SetUpResult.Manner;
import throwline.words.Words;

/** What to expect of every set-up that a person can measure at the field, with room beside it, and in which order to fly. */
final class FieldCard {

    private static final double LETTERS = 8;

    /** Height that a descent is timed over, m. */
    private static final double HEIGHT = 30;

    /** Pace, m: the marching step of 30 inches (PRACTICE). */
    private static final double PACE = 0.76;

    private final SheetAnswer answer;
    private final Words words;
    private final SheetFigures figures;
    private final Changes changes;
    private final List<SheetEntry> numbers;
    private final SheetDangers dangers;
    private final FlightRules rules;

    FieldCard(SheetAnswer answer, Page page, Words words) {
        this.answer = answer;
        this.words = words;
        figures = new SheetFigures(page, words);
        changes = new Changes(answer.earlier());
        numbers = answer.numbers();
        dangers = new SheetDangers(answer, page, words);
        rules = new FlightRules(answer.rules(), new Figures(page, words), words);
    }

    SheetDocument document(Size.Paper paper) {
        List<SetUpResult> all = answer.pack().setUps();
        List<Block> blocks = new ArrayList<>(dangers.blocks("sheet.caution.motor"));
        for (String caution : List.of("failsafe", "place", "people")) {
            blocks.add(new Paragraph(words.say("sheet.caution." + caution), false));
        }
        blocks.add(day());
        blocks.add(new Heading(words.say("sheet.field.air")));
        blocks.add(inTheAir(all));
        blocks.add(new Heading(words.say("sheet.field.landing")));
        blocks.add(landing(all));
        String meaning = words.say("sheet.field.meaning", SheetFigures.number(PACE, 2));
        String oneSide = new OneSideWarning(all, words)
                .sentence(figures::oneSpeed)
                .map(said -> said + " ")
                .orElse("");
        blocks.add(new Paragraph(oneSide + meaning, false));
        blocks.add(new Heading(words.say("sheet.field.order")));
        blocks.add(new Checks(new FlightOrder(answer.model(), all, dangers, rules, figures, words).steps()));
        String title = words.say("sheet.field.title", answer.model().name());
        return new SheetDocument(
                "field-card",
                title,
                answer.below(
                        words,
                        words.say("sheet.field.below", answer.pack().pack().name())),
                words.say("sheet.foot", title),
                Size.page(paper, LETTERS),
                blocks);
    }

    private Table day() {
        List<Column> columns = new ArrayList<>();
        List<Cell> blanks = new ArrayList<>();
        for (String key : List.of("date", "pilot", "wind", "temperature", "battery", "weight")) {
            columns.add(new Column(words.say("sheet.field.day." + key), "", 1, false));
            blanks.add(new Cell(" ", Kind.BLANK));
        }
        return new Table(columns, List.of(new Cells(blanks)));
    }

    private Table inTheAir(List<SetUpResult> setUps) {
        List<Column> columns = new ArrayList<>();
        columns.add(new Column(words.say("sheet.field.setup"), "", 80, false));
        pair(columns, in(words.say("row.stalls"), figures.speedUnit()), 54);
        columns.add(new Column(
                words.say("sheet.field.expected"), in(words.say("row.comein"), figures.speedUnit()), 84, false));
        pair(columns, words.say("sheet.field.sink", length(HEIGHT)), 52);
        pair(columns, in(words.say("sheet.field.elevator"), figures.lengthUnit()), 86);
        columns.add(new Column(words.say("sheet.field.expected"), words.say("row.first"), 84, false));
        columns.add(new Column(words.say("sheet.field.drops.head"), words.say("row.first"), 64, false));
        List<Row> rows = new ArrayList<>();
        for (SetUpResult r : setUps) {
            List<Cell> cells = new ArrayList<>();
            cells.add(new Cell(r.setUp().name(), Kind.STRONG));
            measured(cells, r, FlightQuantity.STALL_SPEED, "", v -> v, figures::speedWithoutUnit);
            measured(cells, r, FlightQuantity.APPROACH_SPEED, "", v -> v, figures::speedWithoutUnit);
            cells.remove(cells.size() - 1);
            measured(cells, r, FlightQuantity.SINK_RATE, "", sink -> HEIGHT / sink, FieldCard::whole);
            measured(cells, r, FlightQuantity.ELEVATOR, "", v -> v, this::edge);
            cells.add(Cell.of(first(r)));
            cells.add(Cell.of(words.say("sheet.field.drops")));
            rows.add(new Cells(cells));
        }
        return new Table(columns, rows);
    }

    private Table landing(List<SetUpResult> setUps) {
        List<String> sticks = answer.model().sticks().stream()
                .filter(Stick.Roll.class::isInstance)
                .map(Stick::name)
                .limit(2)
                .toList();
        List<Column> columns = new ArrayList<>();
        columns.add(new Column(words.say("sheet.field.setup"), "", 80, false));
        sticks.forEach(stick -> pair(columns, words.say("sheet.field.roll", stick), 44));
        pair(columns, in(words.say("row.floats"), words.say("sheet.field.paces")), 48);
        columns.add(new Column(
                words.say("sheet.field.expected"),
                in(words.say("row.stops"), words.say("sheet.field.paces")),
                80,
                false));
        columns.add(new Column(words.say("sheet.field.notes"), "", 90, false));
        List<Row> rows = new ArrayList<>();
        for (SetUpResult r : setUps) {
            List<Cell> cells = new ArrayList<>();
            cells.add(new Cell(r.setUp().name(), Kind.STRONG));
            for (String stick : sticks) {
                measured(
                        cells,
                        r,
                        FlightQuantity.ROLL_RATE,
                        stick,
                        rate -> 2 * Math.PI / rate,
                        t -> SheetFigures.number(t, 1));
            }
            measured(cells, r, FlightQuantity.FLOAT, "", v -> v / PACE, FieldCard::whole);
            measured(cells, r, FlightQuantity.LANDING_DISTANCE, "", v -> v / PACE, FieldCard::whole);
            cells.remove(cells.size() - 1);
            cells.add(new Cell("", Kind.BLANK));
            rows.add(new Cells(cells));
        }
        return new Table(columns, rows);
    }

    private String in(String quantity, String unit) {
        return words.say("sheet.field.in", quantity, unit);
    }

    /** Two columns of one quantity: what is expected, and what was found. */
    private void pair(List<Column> columns, String quantity, double weight) {
        columns.add(new Column(words.say("sheet.field.expected"), quantity, weight, false));
        columns.add(new Column(words.say("sheet.field.found"), quantity, 32, false));
    }

    /** What is expected with its band below it, and a blank. */
    private void measured(
            List<Cell> cells,
            SetUpResult r,
            FlightQuantity quantity,
            String stick,
            DoubleUnaryOperator convert,
            DoubleFunction<String> print) {
        Optional<Headline> headline = quantity == FlightQuantity.ROLL_RATE
                ? r.rollRates().stream()
                        .filter(roll -> roll.stick().equals(stick))
                        .map(roll -> roll.rate())
                        .findFirst()
                : Optional.of(r.number(quantity));
        if (headline.isPresent() && headline.get() instanceof Headline.Known known) {
            double low = convert.applyAsDouble(known.low());
            double high = convert.applyAsDouble(known.high());
            String band = words.say("row.band", print.apply(Math.min(low, high)), print.apply(Math.max(low, high)));
            DoubleFunction<String> shown = v -> print.apply(convert.applyAsDouble(v));
            cells.add(Cell.of(shown.apply(known.value()) + "\n" + band + before(r, quantity, stick, shown)));
            cells.add(new Cell("", Kind.BLANK));
        } else {
            cells.add(Cell.of(SheetFigures.NONE));
            cells.add(Cell.of(""));
        }
    }

    /** A line that says what the earlier sheet expected, where that was something else. */
    private String before(SetUpResult r, FlightQuantity quantity, String stick, DoubleFunction<String> shown) {
        return numbers.stream()
                .filter(e -> e.setUp().equals(r.setUp().name())
                        && e.surface().isEmpty()
                        && e.stick().equals(stick)
                        && e.quantity().equals(quantity.key()))
                .findFirst()
                .flatMap(e -> changes.was(e, v -> shown.apply(e.unit().startsWith("deg") ? Math.toRadians(v) : v)))
                .map(then -> "\n" + words.say("sheet.field.before", then))
                .orElse("");
    }

    private static String whole(double number) {
        return SheetFigures.number(number, 0);
    }

    private String length(double height) {
        return words.say("sheet.field.height", Math.round(height), Math.round(height / 0.3048));
    }

    /** 7.3 down, at the elevator's trailing edge. */
    private String edge(double angle) {
        return figures.edgeWithoutUnit(ElevatorMixes.edge(answer.model()), angle);
    }

    private String first(SetUpResult r) {
        FirstStall stall = r.firstStall();
        if (!(r.stallSpeed() instanceof Headline.Known) || stall.manner() == Manner.NOT_REACHED) {
            return words.say("row.first.not");
        }
        String where = stall.surface().isEmpty() ? words.say("row.first.bare") : stall.surface();
        return words.say("sheet.field.first", where, words.say(Sentences.key(stall.manner())));
    }
}
