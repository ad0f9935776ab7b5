package throwline.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import throwline.model.Stick;
import throwline.report.ElevatorMixes;
import throwline.report.Sentences;
import throwline.report.data.SheetEntry;
import throwline.report.document.Block;
import throwline.report.document.Block.Checks;
import throwline.report.document.Block.Paragraph;
import throwline.report.document.Block.Section;
import throwline.report.document.Role;
import throwline.report.document.Table;
import throwline.report.document.Table.Align;
import throwline.report.document.Table.Cell;
import throwline.report.document.Table.Cells;
import throwline.report.document.Table.Column;
import throwline.report.document.Table.Row;
import throwline.report.document.Text;
import throwline.report.document.Text.Join;
import throwline.report.document.Value;
import throwline.study.FlightQuantity;
import throwline.study.Headline;
import throwline.study.SetUpResult;
import throwline.study.SetUpResult.FirstStall;
import throwline.study.SetUpResult.Manner;
import throwline.units.Unit;

/** Expected numbers of every set-up that a person can measure at the field, room beside them, and the order of the first flights. */
final class FieldCard {

    private static final double LETTERS = 8;

    /** Height that a descent is timed over, m. */
    private static final double HEIGHT = 30;

    /** Pace, m: the marching step of 30 inches (PRACTICE). */
    private static final double PACE = 0.76;

    private final SheetAnswer answer;
    private final Changes changes;
    private final List<SheetEntry> numbers;

    FieldCard(SheetAnswer answer, Changes changes) {
        this.answer = answer;
        this.changes = changes;
        numbers = answer.numbers();
    }

    Sheet sheet(Size.Paper paper) {
        List<SetUpResult> all = answer.pack().setUps();
        SheetDangers dangers = new SheetDangers(answer);
        List<Block> blocks = new ArrayList<>(dangers.blocks("sheet.caution.motor"));
        for (String caution : List.of("failsafe", "place", "people")) {
            blocks.add(Paragraph.say("sheet.caution." + caution));
        }
        blocks.add(day());
        blocks.add(Section.of(Text.say("sheet.field.air"), List.of(inTheAir(all))));
        List<Text> meaning = new ArrayList<>();
        new OneSideWarning(all).sentence().ifPresent(meaning::add);
        meaning.add(Text.say("sheet.field.meaning", new Value.Plain(PACE, 2)));
        blocks.add(Section.of(
                Text.say("sheet.field.landing"), List.of(landing(all), Paragraph.of(Text.join(Join.BLANK, meaning)))));
        FlightOrder order = new FlightOrder(answer.model(), all, dangers, new FlightRules(answer.rules()));
        blocks.add(Section.of(Text.say("sheet.field.order"), List.of(new Checks(order.steps()))));
        return Sheet.of(
                "field-card",
                Text.say("sheet.field.title", answer.model().name()),
                answer.below(Text.say("sheet.field.below", answer.pack().pack().name())),
                Size.page(paper, LETTERS),
                blocks);
    }

    private static Table day() {
        List<Column> columns = new ArrayList<>();
        List<Cell> blanks = new ArrayList<>();
        for (String key : List.of("date", "pilot", "wind", "temperature", "battery", "weight")) {
            columns.add(column("day." + key, Text.none(), 80));
            blanks.add(Cell.of(Role.BLANK));
        }
        return new Table(columns, List.of(new Cells(blanks, Role.PLAIN)));
    }

    private Table inTheAir(List<SetUpResult> setUps) {
        List<Column> columns = new ArrayList<>();
        columns.add(column("setup", Text.none(), 80));
        pair(columns, in(Text.say("row.stalls"), new Value.SpeedUnit()), 54);
        columns.add(column("expected", in(Text.say("row.comein"), new Value.SpeedUnit()), 84));
        pair(columns, Text.say("sheet.field.sink", height()), 52);
        pair(columns, in(Text.say("sheet.field.elevator"), new Value.LengthUnit()), 86);
        columns.add(column("expected", Text.say("row.first"), 84));
        columns.add(column("drops.head", Text.say("row.first"), 64));
        List<Row> rows = new ArrayList<>();
        for (SetUpResult r : setUps) {
            List<Cell> cells = new ArrayList<>();
            cells.add(Cell.of(Role.STRONG, Text.name(r.setUp().name())));
            measured(cells, r, FlightQuantity.STALL_SPEED, "", v -> v, Value.BareSpeed::new);
            measured(cells, r, FlightQuantity.APPROACH_SPEED, "", v -> v, Value.BareSpeed::new);
            cells.remove(cells.size() - 1);
            measured(cells, r, FlightQuantity.SINK_RATE, "", sink -> HEIGHT / sink, v -> new Value.Plain(v, 0));
            measured(cells, r, FlightQuantity.ELEVATOR, "", v -> v, this::edge);
            cells.add(Cell.of(first(r)));
            cells.add(Cell.of(Text.say("sheet.field.drops")));
            rows.add(new Cells(cells, Role.PLAIN));
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
        columns.add(column("setup", Text.none(), 80));
        sticks.forEach(stick -> pair(columns, Text.say("sheet.field.roll", stick), 44));
        pair(columns, in(Text.say("row.floats"), Text.say("sheet.field.paces")), 48);
        columns.add(column("expected", in(Text.say("row.stops"), Text.say("sheet.field.paces")), 80));
        columns.add(column("notes", Text.none(), 90));
        List<Row> rows = new ArrayList<>();
        for (SetUpResult r : setUps) {
            List<Cell> cells = new ArrayList<>();
            cells.add(Cell.of(Role.STRONG, Text.name(r.setUp().name())));
            for (String stick : sticks) {
                measured(
                        cells,
                        r,
                        FlightQuantity.ROLL_RATE,
                        stick,
                        rate -> 2 * Math.PI / rate,
                        t -> new Value.Plain(t, 1));
            }
            measured(cells, r, FlightQuantity.FLOAT, "", v -> v / PACE, v -> new Value.Plain(v, 0));
            measured(cells, r, FlightQuantity.LANDING_DISTANCE, "", v -> v / PACE, v -> new Value.Plain(v, 0));
            cells.remove(cells.size() - 1);
            cells.add(Cell.of(Role.BLANK));
            rows.add(new Cells(cells, Role.PLAIN));
        }
        return new Table(columns, rows);
    }

    private static Column column(String key, Text group, double weight) {
        return new Column(Text.say("sheet.field." + key), group, weight, Align.LEFT);
    }

    private static Text in(Text quantity, Text unit) {
        return Text.say("sheet.field.in", quantity, unit);
    }

    /** Two columns of one quantity: what is expected, and what was found. */
    private static void pair(List<Column> columns, Text quantity, double weight) {
        columns.add(column("expected", quantity, weight));
        columns.add(column("found", quantity, 32));
    }

    /** What is expected with its band below it, and a blank. */
    private void measured(
            List<Cell> cells,
            SetUpResult r,
            FlightQuantity quantity,
            String stick,
            DoubleUnaryOperator convert,
            DoubleFunction<Text> print) {
        Optional<Headline> headline = quantity == FlightQuantity.ROLL_RATE
                ? r.rollRates().stream()
                        .filter(roll -> roll.stick().equals(stick))
                        .map(roll -> roll.rate())
                        .findFirst()
                : Optional.of(r.number(quantity));
        if (headline.isPresent() && headline.get() instanceof Headline.Known known) {
            double low = convert.applyAsDouble(known.low());
            double high = convert.applyAsDouble(known.high());
            DoubleFunction<Text> shown = v -> print.apply(convert.applyAsDouble(v));
            List<Text> lines = new ArrayList<>(List.of(
                    shown.apply(known.value()),
                    Text.say("row.band", print.apply(Math.min(low, high)), print.apply(Math.max(low, high)))));
            before(r, quantity, stick, shown).ifPresent(lines::add);
            cells.add(new Cell(lines, Role.PLAIN));
            cells.add(Cell.of(Role.BLANK));
        } else {
            cells.add(Cell.of(Text.name("-")));
            cells.add(Cell.of());
        }
    }

    /** A line that says what the earlier sheet expected, where that was something else. */
    private Optional<Text> before(SetUpResult r, FlightQuantity quantity, String stick, DoubleFunction<Text> shown) {
        return numbers.stream()
                .filter(e -> e.setUp().equals(r.setUp().name())
                        && e.surface().isEmpty()
                        && e.stick().equals(stick)
                        && e.quantity().equals(quantity.key()))
                .findFirst()
                .flatMap(e -> changes.was(e, v -> shown.apply(e.unit().startsWith("deg") ? Math.toRadians(v) : v)))
                .map(then -> Text.say("sheet.field.before", then));
    }

    private static Text height() {
        double feet = Unit.FOOT.fromSi(HEIGHT);
        return Text.say("sheet.field.height", new Value.Plain(HEIGHT, 0), new Value.Plain(feet, 0));
    }

    /** 7.3 down, at the elevator's trailing edge. */
    private Text edge(double angle) {
        double chord = ElevatorMixes.edge(answer.model()).chord();
        return new Value.Gauge(angle, chord, Value.Gauge.Form.SENSE);
    }

    private static Text first(SetUpResult r) {
        FirstStall stall = r.firstStall();
        if (!(r.stallSpeed() instanceof Headline.Known) || stall.manner() == Manner.NOT_REACHED) {
            return Text.say("row.first.not");
        }
        Text where = stall.surface().isEmpty() ? Text.say("row.first.bare") : Text.name(stall.surface());
        return Text.say("sheet.field.first", where, Text.say(Sentences.key(stall.manner())));
    }
}
