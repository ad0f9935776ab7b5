package throwline.report.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import throwline.linkage.ControlRun.Reach;
import throwline.model.Servo;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.report.data.SheetEntry;
import throwline.report.data.SheetNumbers;
import throwline.report.document.Block;
import throwline.report.document.Block.Paragraph;
import throwline.report.document.Block.Section;
import throwline.report.document.Role;
import throwline.report.document.Table;
import throwline.report.document.Table.Align;
import throwline.report.document.Table.Band;
import throwline.report.document.Table.Cell;
import throwline.report.document.Table.Cells;
import throwline.report.document.Table.Column;
import throwline.report.document.Table.Remark;
import throwline.report.document.Table.Row;
import throwline.report.document.Text;
import throwline.report.document.Text.Join;
import throwline.report.document.Value;
import throwline.study.EdgeThrow;
import throwline.study.ServoAnswer.Position;
import throwline.study.SetUpResult;
import throwline.study.SetUpResult.Side;
import throwline.units.Dimension;

/** Every throw that must be set, one line a move, to set and tick off on the bench. */
final class BenchSheet {

    private static final double LETTERS = 8.5;

    private final SheetAnswer answer;
    private final Changes changes;
    private final boolean withServos;
    private final Map<String, SheetEntry> numbers = new LinkedHashMap<>();

    BenchSheet(SheetAnswer answer, Changes changes) {
        this.answer = answer;
        this.changes = changes;
        withServos = BenchMove.sticks(answer.pack().setUps()).stream()
                .flatMap(move -> move.sides().stream())
                .anyMatch(p -> !p.assumedLinkage());
        answer.numbers().forEach(e -> numbers.put(e.key(), e));
    }

    Sheet sheet(Size.Paper paper) {
        List<Block> blocks = new ArrayList<>(new SheetDangers(answer).blocks("sheet.caution.motor"));
        Text how = Text.say(
                "sheet.bench.how", new Value.LengthUnit(), Value.measure(EdgeThrow.TOLERANCE, Dimension.LENGTH));
        blocks.add(Paragraph.of(
                withServos ? Text.join(Join.BLANK, List.of(how, Text.say("sheet.bench.how.servo"))) : how));
        List<Row> rows = new ArrayList<>();
        answer.pack().setUps().forEach(setUp -> setUp(rows, setUp));
        List<BenchMove> sticks = BenchMove.sticks(answer.pack().setUps());
        if (!sticks.isEmpty()) {
            rows.add(Band.of(Text.say("sheet.bench.sticks")));
            sticks.forEach(move -> line(rows, move, stick(move)));
        }
        blocks.add(new Table(columns(), rows));
        blocks.add(Paragraph.of(Role.CAUTION, Text.say("sheet.caution.mix")));
        List<Text> warnings = new BenchWarnings(answer).all();
        if (!warnings.isEmpty()) {
            blocks.add(Section.of(
                    Text.say("sheet.bench.warnings"),
                    warnings.stream().map(Paragraph::of).toList()));
        }
        List<String> gone = changes.gone(answer.numbers());
        if (!gone.isEmpty()) {
            blocks.add(Paragraph.say("sheet.changed.gone", Text.join(Join.SEMICOLON, gone, Text::name)));
        }
        blocks.add(Paragraph.say("sheet.caution.bench"));
        blocks.add(Paragraph.say("row.estimate"));
        return Sheet.of(
                "bench",
                Text.say("sheet.bench.title", answer.model().name()),
                answer.below(Text.say("sheet.bench.below", answer.pack().pack().name())),
                Size.page(paper, LETTERS),
                blocks);
    }

    private List<Column> columns() {
        List<Column> columns = new ArrayList<>();
        columns.add(column("surface", Text.none(), 50));
        columns.add(column("stick", Text.none(), 142));
        for (String side : List.of("left", "right")) {
            Text group = Text.say("sheet.bench.column." + side);
            columns.add(new Column(new Value.LengthUnit(), group, 40, Align.RIGHT));
            columns.add(column("angle", group, 58));
            if (withServos) {
                columns.add(column("servo", group, 54));
            }
            columns.add(column("tick", group, 20));
        }
        return columns;
    }

    private static Column column(String key, Text group, double weight) {
        return new Column(Text.say("sheet.bench.column." + key), group, weight, Align.LEFT);
    }

    private void setUp(List<Row> rows, SetUpResult result) {
        String setUp = result.setUp().name();
        rows.add(band(result.setUp()));
        List<BenchMove> moves = BenchMove.stands(result);
        if (moves.isEmpty()) {
            rows.add(new Remark(Text.say("sheet.bench.neutral")));
        }
        moves.forEach(move -> line(rows, move, Text.say("sheet.bench.stands")));
        if (result.servos().mix().isPresent()) {
            Position mix = result.servos().mix().get();
            line(rows, new BenchMove(List.of(setUp), SheetNumbers.MIX, List.of(mix)), Text.say("sheet.bench.mix"));
        } else if (!answer.model().isReference(result.setUp())) {
            rows.add(new Remark(Text.say("sheet.bench.no-mix")));
        }
    }

    /** The name of a set-up, with its switch or room for it. */
    static Band band(SetUp setUp) {
        String position = setUp.switchPosition();
        return new Band(
                Text.name(setUp.name()),
                Text.say(position.isEmpty() ? "sheet.bench.switch" : "sheet.bench.switch.is"),
                Text.name(position));
    }

    /** Which way the stick is held, and in which set-ups where not in all. */
    private Text stick(BenchMove move) {
        boolean roll = answer.model().sticks().stream()
                .anyMatch(stick -> stick instanceof Stick.Roll && stick.name().equals(move.stick()));
        Text held = Text.say(roll ? "sheet.bench.roll" : "sheet.bench.pull", move.stick());
        return move.setUps().size() == answer.pack().setUps().size()
                ? held
                : Text.say("sheet.bench.stick.in", held, Text.join(Join.COMMA, move.setUps(), Text::name));
    }

    private void line(List<Row> rows, BenchMove move, Text what) {
        boolean elevator = move.surface().equals(Servo.ELEVATOR);
        List<Cell> cells = new ArrayList<>();
        cells.add(Cell.of(Role.STRONG, Text.name(move.surface())));
        cells.add(Cell.of(what));
        cells.addAll(side(move, move.sides().get(0)));
        if (elevator) {
            Stream.generate(() -> Cell.of()).limit(withServos ? 4 : 3).forEach(cells::add);
        } else {
            cells.addAll(side(move, move.sides().get(move.sides().size() - 1)));
        }
        rows.add(new Cells(cells, Role.PLAIN));
        remarks(move).forEach(text -> rows.add(new Remark(text)));
    }

    private List<Cell> side(BenchMove move, Position p) {
        boolean changed = entries(move, p, "angle")
                .anyMatch(e ->
                        changes.isNew(e) || changes.was(e, BenchSheet::degrees).isPresent());
        List<Cell> cells = new ArrayList<>();
        boolean moved = BenchMove.isSeen(p.angle());
        cells.add(
                moved
                        ? Cell.of(Role.HEADLINE, new Value.Gauge(p.angle(), p.chord(), Value.Gauge.Form.SIZE))
                        : Cell.of());
        Text angle = moved ? sense(p.angle()) : Text.say("sheet.bench.stays");
        cells.add(Cell.of(changed ? Role.CHANGED : Role.PLAIN, angle));
        if (withServos) {
            cells.add(servo(move, p));
        }
        cells.add(Cell.of(Role.TICK));
        return cells;
    }

    private Cell servo(BenchMove move, Position p) {
        if (p.assumedLinkage()) {
            return Cell.of();
        }
        if (p.servo().isEmpty()) {
            return Cell.of(Role.STRONG, Text.say("fly.servo.locked"));
        }
        boolean changed = entries(move, p, "servo")
                .anyMatch(e -> changes.was(e, BenchSheet::servo).isPresent());
        boolean beyond = p.reach() == Reach.BEYOND_SWING;
        return Cell.of(
                changed ? Role.CHANGED : beyond ? Role.STRONG : Role.PLAIN,
                sense(p.servo().get()));
    }

    private static Text degrees(double number) {
        return Value.of(Math.toRadians(number), Value.Kind.DEFLECTION_TENTHS);
    }

    private static Text servo(double number) {
        return sense(Math.toRadians(number));
    }

    /** down, 12.0 degrees; neutral where nothing is seen to move. */
    private static Text sense(double angle) {
        Value size = Value.of(Math.abs(angle), Value.Kind.ANGLE_TENTHS);
        return BenchMove.isSeen(angle)
                ? Text.say(angle > 0 ? "sheet.sense.down" : "sheet.sense.up", size)
                : Text.say("sheet.neutral");
    }

    private Stream<SheetEntry> entries(BenchMove move, Position p, String quantity) {
        String side = p.side().name().toLowerCase(Locale.ROOT);
        return move.setUps().stream()
                .map(setUp -> String.join("\t", setUp, p.surface(), move.stick(), side, quantity))
                .flatMap(key -> Optional.ofNullable(numbers.get(key)).stream());
    }

    private List<Text> remarks(BenchMove move) {
        Set<Text> was = new LinkedHashSet<>();
        Set<Text> remarks = new LinkedHashSet<>();
        for (Position p : move.sides()) {
            Text side = side(p.side());
            entries(move, p, "angle").forEach(e -> {
                changes.was(e, BenchSheet::degrees)
                        .ifPresent(then -> was.add(Text.say("sheet.changed.angle", side, then)));
                if (changes.isNew(e)) {
                    remarks.add(Text.say("sheet.changed.new", side));
                }
            });
            entries(move, p, "servo")
                    .flatMap(e -> changes.was(e, BenchSheet::servo).stream())
                    .forEach(then -> was.add(Text.say("sheet.changed.servo", side, then)));
            if (p.atItsStop()) {
                remarks.add(Text.say("sheet.bench.stop", side));
            }
        }
        List<Text> all = new ArrayList<>(remarks);
        if (!was.isEmpty()) {
            all.add(0, Text.say("sheet.changed", Text.join(Join.SEMICOLON, was)));
        }
        return all.isEmpty() ? List.of() : List.of(Text.join(Join.BLANK, all));
    }

    private static Text side(Side side) {
        return switch (side) {
            case BOTH -> Text.none();
            case LEFT -> Text.say("sheet.changed.left");
            case RIGHT -> Text.say("sheet.changed.right");
        };
    }
}
