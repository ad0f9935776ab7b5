package throwline.report.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import throwline.linkage.ControlRun.Reach;
import throwline.report.EdgeThrow;
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

/** Every throw of every set-up and stick, to set and tick off on the bench. */
final class BenchSheet {

    private static final double LETTERS = 6.8;
    private static final String NONE = "-";

    private final SheetAnswer answer;
    private final Words words;
    private final SheetFigures figures;
    private final Changes changes;
    private final Map<String, SheetEntry> numbers = new LinkedHashMap<>();

    BenchSheet(SheetAnswer answer, Page page, Words words) {
        this.answer = answer;
        this.words = words;
        figures = new SheetFigures(page, words);
        changes = new Changes(answer.earlier());
        answer.numbers().forEach(e -> numbers.put(e.key(), e));
    }

    SheetDocument document(Size.Paper paper) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Paragraph(words.say("sheet.caution.motor"), true));
        blocks.add(new Paragraph(words.say("sheet.bench.how", figures.lengthUnit(), figures.tolerance()), false));
        List<Row> rows = new ArrayList<>();
        answer.pack().setUps().forEach(setUp -> setUp(rows, setUp));
        blocks.add(new Table(columns(), rows));
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
        return new SheetDocument(
                "bench",
                words.say("sheet.bench.title", answer.model().name()),
                words.say("sheet.bench.below", answer.pack().pack().name()),
                words.say(
                        "sheet.foot",
                        words.say("sheet.bench.title", answer.model().name())),
                Size.page(paper, LETTERS),
                blocks);
    }

    private List<Column> columns() {
        List<Column> columns = new ArrayList<>();
        columns.add(column("surface", "", 50, false));
        columns.add(column("stick", "", 60, false));
        for (String side : List.of("left", "right")) {
            String group = words.say("sheet.bench.column." + side);
            columns.add(column("angle", group, 42, true));
            columns.add(column("straight", group, 34, true));
            columns.add(column("vertical", group, 33, true));
            columns.add(column("servo", group, 31, true));
            columns.add(column("swing", group, 29, true));
        }
        columns.add(column("tolerance", "", 27, true));
        columns.add(column("tick-left", "", 15, false));
        columns.add(column("tick-right", "", 15, false));
        columns.add(column("switch", "", 44, false));
        return columns;
    }

    private Column column(String key, String group, double weight, boolean toTheRight) {
        String head = words.say("sheet.bench.column." + key, figures.lengthUnit(), figures.tolerance());
        return new Column(head, group, weight, toTheRight);
    }

    private void setUp(List<Row> rows, SetUpResult result) {
        String setUp = result.setUp().name();
        rows.add(new Band(setUp, words.say("sheet.bench.switch")));
        Map<String, List<Position>> lines = new LinkedHashMap<>();
        for (Position p : result.servos().positions()) {
            lines.computeIfAbsent(p.surface() + "\t" + p.stick(), key -> new ArrayList<>())
                    .add(p);
        }
        lines.values().forEach(sides -> line(rows, setUp, sides.get(0).stick(), sides));
        if (result.servos().mix().isPresent()) {
            line(rows, setUp, SheetNumbers.MIX, List.of(result.servos().mix().get()));
            rows.add(new Remark(words.say("sheet.caution.mix")));
        } else if (!result.setUp().equals(answer.model().reference())) {
            rows.add(new Remark(words.say("sheet.bench.no-mix") + " " + words.say("sheet.caution.mix")));
        }
    }

    /** One line: both sides where they stand alike, else left and right. */
    private void line(List<Row> rows, String setUp, String stick, List<Position> sides) {
        Position first = sides.get(0);
        boolean elevator = first.surface().equals("elevator");
        Position right = sides.get(sides.size() - 1);
        List<Cell> cells = new ArrayList<>();
        cells.add(new Cell(first.surface(), stick.isEmpty() ? Kind.STRONG : Kind.PLAIN));
        cells.add(Cell.of(stick.equals(SheetNumbers.MIX) ? words.say("sheet.bench.mix") : stick));
        cells.addAll(numbers(setUp, stick, first));
        cells.addAll(elevator ? Stream.generate(() -> Cell.of(NONE)).limit(5).toList() : numbers(setUp, stick, right));
        cells.add(Cell.of(figures.degrees(new EdgeThrow(first.chord()).angleOf(EdgeThrow.TOLERANCE))));
        cells.add(new Cell("", Kind.TICK));
        cells.add(elevator ? Cell.of("") : new Cell("", Kind.TICK));
        cells.add(new Cell("", stick.isEmpty() ? Kind.PLAIN : Kind.BLANK));
        rows.add(new Cells(cells));
        remarks(setUp, stick, sides).forEach(text -> rows.add(new Remark(text)));
    }

    private List<Cell> numbers(String setUp, String stick, Position p) {
        EdgeThrow edge = new EdgeThrow(p.chord());
        return List.of(
                cell(setUp, stick, p, "angle", figures.angle(p.angle()), this::degrees),
                Cell.of(figures.length(edge.distance(p.angle()))),
                Cell.of(figures.length(edge.height(p.angle()))),
                p.servo()
                        .map(servo -> cell(
                                setUp,
                                stick,
                                p,
                                "servo",
                                bracketed(p, SheetFigures.number(Math.toDegrees(servo), 1)),
                                this::servo))
                        .orElse(new Cell(words.say("fly.servo.locked"), Kind.STRONG)),
                p.swingShare()
                        .map(share -> new Cell(
                                bracketed(p, figures.percent(share)),
                                p.reach() == Reach.BEYOND_SWING ? Kind.STRONG : Kind.PLAIN))
                        .orElse(Cell.of(NONE)));
    }

    /** What rests on an assumed linkage stands in brackets. */
    private static String bracketed(Position p, String number) {
        return p.assumedLinkage() ? "(" + number + ")" : number;
    }

    private String degrees(double number) {
        return figures.angle(Math.toRadians(number));
    }

    private String servo(double number) {
        return SheetFigures.number(number, 1);
    }

    private Cell cell(
            String setUp, String stick, Position p, String quantity, String text, DoubleFunction<String> shown) {
        return entry(setUp, stick, p, quantity)
                .filter(e -> changes.isNew(e) || changes.was(e, shown).isPresent())
                .map(e -> new Cell(text, Kind.CHANGED))
                .orElse(Cell.of(text));
    }

    private Optional<SheetEntry> entry(String setUp, String stick, Position p, String quantity) {
        String side = p.side().name().toLowerCase(Locale.ROOT);
        return Optional.ofNullable(numbers.get(String.join("\t", setUp, p.surface(), stick, side, quantity)));
    }

    private List<String> remarks(String setUp, String stick, List<Position> sides) {
        List<String> was = new ArrayList<>();
        List<String> remarks = new ArrayList<>();
        for (Position p : sides) {
            String side = side(p.side());
            Optional<SheetEntry> angle = entry(setUp, stick, p, "angle");
            angle.flatMap(e -> changes.was(e, this::degrees))
                    .ifPresent(then -> was.add(words.say("sheet.changed.angle", side, then)));
            entry(setUp, stick, p, "servo")
                    .flatMap(e -> changes.was(e, this::servo))
                    .ifPresent(then -> was.add(words.say("sheet.changed.servo", side, then)));
            angle.filter(changes::isNew).ifPresent(e -> remarks.add(words.say("sheet.changed.new", side)));
            if (p.atItsStop()) {
                remarks.add(words.say("sheet.bench.stop", side));
            }
        }
        if (!was.isEmpty()) {
            remarks.add(0, words.say("sheet.changed", String.join("; ", was)));
        }
        return remarks.isEmpty() ? List.of() : List.of(String.join(" ", remarks));
    }

    private String side(Side side) {
        return switch (side) {
            case BOTH -> "";
            case LEFT -> words.say("sheet.changed.left");
            case RIGHT -> words.say("sheet.changed.right");
        };
    }
}
