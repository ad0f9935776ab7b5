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
import throwline.model.Stick;
import throwline.report.Page;
import throwline.report.data.SheetEntry;
import throwline.report.data.SheetNumbers;
import throwline.report.sheet.SheetDocument.Band;
import throwline.report.sheet.SheetDocument.Block;
import throwline.report.sheet.SheetDocument.Cell;
import throwline.report.sheet.SheetDocument.Cells;
import throwline.report.sheet.SheetDocument.Column;
import throwline.report.sheet.SheetDocument.Kind;
import throwline.report.sheet.SheetDocument.Paragraph;
import throwline.report.sheet.SheetDocument.Remark;
import throwline.report.sheet.SheetDocument.Row;
import throwline.report.sheet.SheetDocument.Table;
import throwline.study.ServoAnswer.Position;
import throwline.study.SetUpResult;
import throwline.study.SetUpResult.Side;
import throwline.words.Words;

/** Every throw that must be set, one line a move, to set and tick off on the bench. */
final class BenchSheet {

    private static final double LETTERS = 8.5;

    private final SheetAnswer answer;
    private final Words words;
    private final SheetFigures figures;
    private final SheetDangers dangers;
    private final Changes changes;
    private final boolean withServos;
    private final Map<String, SheetEntry> numbers = new LinkedHashMap<>();

    BenchSheet(SheetAnswer answer, Page page, Words words) {
        this.answer = answer;
        this.words = words;
        figures = new SheetFigures(page, words);
        dangers = new SheetDangers(answer, page, words);
        changes = new Changes(answer.earlier());
        withServos = BenchMove.sticks(answer.pack().setUps()).stream()
                .flatMap(move -> move.sides().stream())
                .anyMatch(p -> !p.assumedLinkage());
        answer.numbers().forEach(e -> numbers.put(e.key(), e));
    }

    SheetDocument document(Size.Paper paper) {
        List<Block> blocks = new ArrayList<>(dangers.blocks("sheet.caution.motor"));
        blocks.add(new Paragraph(
                words.say("sheet.bench.how", figures.lengthUnit(), figures.tolerance())
                        + (withServos ? " " + words.say("sheet.bench.how.servo") : ""),
                false));
        List<Row> rows = new ArrayList<>();
        answer.pack().setUps().forEach(setUp -> setUp(rows, setUp));
        List<BenchMove> sticks = BenchMove.sticks(answer.pack().setUps());
        if (!sticks.isEmpty()) {
            rows.add(new Band(words.say("sheet.bench.sticks"), ""));
            sticks.forEach(move -> line(rows, move, stick(move)));
        }
        blocks.add(new Table(columns(), rows));
        blocks.add(new Paragraph(words.say("sheet.caution.mix"), true));
        List<String> warnings = new BenchWarnings(answer, figures, words).all();
        if (!warnings.isEmpty()) {
            blocks.add(new SheetDocument.Heading(words.say("sheet.bench.warnings")));
            warnings.forEach(warning -> blocks.add(new Paragraph(warning, false)));
        }
        List<String> gone = changes.gone(answer.numbers());
        if (!gone.isEmpty()) {
            blocks.add(new Paragraph(words.say("sheet.changed.gone", String.join("; ", gone)), false));
        }
        blocks.add(new Paragraph(words.say("sheet.caution.bench"), false));
        blocks.add(new Paragraph(words.say("row.estimate"), false));
        String title = words.say("sheet.bench.title", answer.model().name());
        return new SheetDocument(
                "bench",
                title,
                answer.below(
                        words,
                        words.say("sheet.bench.below", answer.pack().pack().name())),
                words.say("sheet.foot", title),
                Size.page(paper, LETTERS),
                blocks);
    }

    private List<Column> columns() {
        List<Column> columns = new ArrayList<>();
        columns.add(column("surface", "", 50, false));
        columns.add(column("stick", "", 142, false));
        for (String side : List.of("left", "right")) {
            String group = words.say("sheet.bench.column." + side);
            columns.add(new Column(figures.lengthUnit(), group, 40, true));
            columns.add(column("angle", group, 58, false));
            if (withServos) {
                columns.add(column("servo", group, 54, false));
            }
            columns.add(column("tick", group, 20, false));
        }
        return columns;
    }

    private Column column(String key, String group, double weight, boolean toTheRight) {
        return new Column(words.say("sheet.bench.column." + key), group, weight, toTheRight);
    }

    private void setUp(List<Row> rows, SetUpResult result) {
        String setUp = result.setUp().name();
        rows.add(new Band(
                setUp, figures.switchBlank(result.setUp()), result.setUp().switchPosition()));
        List<BenchMove> moves = BenchMove.stands(result);
        if (moves.isEmpty()) {
            rows.add(new Remark(words.say("sheet.bench.neutral")));
        }
        moves.forEach(move -> line(rows, move, words.say("sheet.bench.stands")));
        if (result.servos().mix().isPresent()) {
            Position mix = result.servos().mix().get();
            line(rows, new BenchMove(List.of(setUp), SheetNumbers.MIX, List.of(mix)), words.say("sheet.bench.mix"));
        } else if (!result.setUp().equals(answer.model().reference())) {
            rows.add(new Remark(words.say("sheet.bench.no-mix")));
        }
    }

    /** Which way the stick is held, and in which set-ups where not in all. */
    private String stick(BenchMove move) {
        boolean roll = answer.model().sticks().stream()
                .anyMatch(stick -> stick instanceof Stick.Roll && stick.name().equals(move.stick()));
        String held = words.say(roll ? "sheet.bench.roll" : "sheet.bench.pull", move.stick());
        return move.setUps().size() == answer.pack().setUps().size()
                ? held
                : words.say("sheet.bench.stick.in", held, String.join(", ", move.setUps()));
    }

    private void line(List<Row> rows, BenchMove move, String what) {
        boolean elevator = move.surface().equals(Servo.ELEVATOR);
        List<Cell> cells = new ArrayList<>();
        cells.add(new Cell(move.surface(), Kind.STRONG));
        cells.add(Cell.of(what));
        cells.addAll(side(move, move.sides().get(0)));
        if (elevator) {
            Stream.generate(() -> Cell.of("")).limit(withServos ? 4 : 3).forEach(cells::add);
        } else {
            cells.addAll(side(move, move.sides().get(move.sides().size() - 1)));
        }
        rows.add(new Cells(cells));
        remarks(move).forEach(text -> rows.add(new Remark(text)));
    }

    private List<Cell> side(BenchMove move, Position p) {
        boolean changed = entries(move, p, "angle")
                .anyMatch(e -> changes.isNew(e) || changes.was(e, this::degrees).isPresent());
        List<Cell> cells = new ArrayList<>();
        boolean moved = figures.isSeen(p.angle());
        cells.add(moved ? new Cell(figures.length(p.straight()), Kind.LARGE) : Cell.of(""));
        String angle = moved ? figures.senseAndDegrees(p.angle()) : words.say("sheet.bench.stays");
        cells.add(new Cell(angle, changed ? Kind.CHANGED : Kind.PLAIN));
        if (withServos) {
            cells.add(servo(move, p));
        }
        cells.add(new Cell("", Kind.TICK));
        return cells;
    }

    private Cell servo(BenchMove move, Position p) {
        if (p.assumedLinkage()) {
            return Cell.of("");
        }
        if (p.servo().isEmpty()) {
            return new Cell(words.say("fly.servo.locked"), Kind.STRONG);
        }
        boolean changed = entries(move, p, "servo")
                .anyMatch(e -> changes.was(e, this::servo).isPresent());
        boolean beyond = p.reach() == Reach.BEYOND_SWING;
        return new Cell(
                servo(Math.toDegrees(p.servo().get())), changed ? Kind.CHANGED : beyond ? Kind.STRONG : Kind.PLAIN);
    }

    private String degrees(double number) {
        return figures.angle(Math.toRadians(number));
    }

    private String servo(double number) {
        return figures.senseAndDegrees(Math.toRadians(number));
    }

    private Stream<SheetEntry> entries(BenchMove move, Position p, String quantity) {
        String side = p.side().name().toLowerCase(Locale.ROOT);
        return move.setUps().stream()
                .map(setUp -> String.join("\t", setUp, p.surface(), move.stick(), side, quantity))
                .flatMap(key -> Optional.ofNullable(numbers.get(key)).stream());
    }

    private List<String> remarks(BenchMove move) {
        Set<String> was = new LinkedHashSet<>();
        Set<String> remarks = new LinkedHashSet<>();
        for (Position p : move.sides()) {
            String side = side(p.side());
            entries(move, p, "angle").forEach(e -> {
                changes.was(e, this::degrees).ifPresent(then -> was.add(words.say("sheet.changed.angle", side, then)));
                if (changes.isNew(e)) {
                    remarks.add(words.say("sheet.changed.new", side));
                }
            });
            entries(move, p, "servo")
                    .flatMap(e -> changes.was(e, this::servo).stream())
                    .forEach(then -> was.add(words.say("sheet.changed.servo", side, then)));
            if (p.atItsStop()) {
                remarks.add(words.say("sheet.bench.stop", side));
            }
        }
        List<String> all = new ArrayList<>(remarks);
        if (!was.isEmpty()) {
            all.add(0, words.say("sheet.changed", String.join("; ", was)));
        }
        return all.isEmpty() ? List.of() : List.of(String.join(" ", all));
    }

    private String side(Side side) {
        return switch (side) {
            case BOTH -> "";
            case LEFT -> words.say("sheet.changed.left");
            case RIGHT -> words.say("sheet.changed.right");
        };
    }
}
