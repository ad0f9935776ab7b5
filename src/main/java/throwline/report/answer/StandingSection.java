package throwline.report.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import throwline.linkage.ServoBlowBack.Hold;
import throwline.model.Elevator;
import throwline.report.document.Block;
import throwline.report.document.Block.Paragraph;
import throwline.report.document.Role;
import throwline.report.document.Table;
import throwline.report.document.Table.Cell;
import throwline.report.document.Table.Column;
import throwline.report.document.Text;
import throwline.report.document.Text.Join;
import throwline.report.document.Value;
import throwline.study.BlowBackResult;
import throwline.study.BlowBackResult.Point;
import throwline.study.BlowBackResult.Row;
import throwline.study.SetUpResult.Side;

/** Section on where the surfaces really stand: what is programmed, what the bench shows, what the air leaves of it. */
final class StandingSection {

    /** Short of what is programmed by less than this is not worth a line, rad. */
    private static final double SEEN = Math.toRadians(0.1);

    private final BlowBackResult answer;
    private final List<Row> rows;
    private final boolean air;
    private final boolean gap;

    StandingSection(BlowBackResult answer) {
        this.answer = answer;
        rows = answer.telling();
        air = rows.stream().anyMatch(row -> !row.overSpeed().isEmpty());
        gap = rows.stream().anyMatch(row -> row.gapShare() < 1);
    }

    List<Block> blocks(Elevator elevator) {
        List<Block> blocks = new ArrayList<>();
        if (!rows.isEmpty()) {
            blocks.add(table());
        }
        blocks.addAll(remarks(elevator));
        return blocks;
    }

    /** A row a surface: degrees, the trailing edge, and how far if the air pushes harder. */
    private Table table() {
        List<Column> columns = new ArrayList<>(Tables.words("fly.stand.surface", "fly.stand.stick", "fly.stand.told"));
        if (air) {
            columns.add(Column.left(Text.say("fly.stand.come-in", Value.speed(answer.comeIn()))));
            columns.add(Column.left(Text.say(
                    answer.fastIsLimit() ? "fly.stand.limit" : "fly.stand.fastest", Value.speed(answer.fast()))));
        }
        if (gap) {
            columns.add(Column.left(Text.say("fly.stand.like")));
        }
        return Tables.listing(columns, rows, this::cells);
    }

    private Table.Cells cells(Row row) {
        List<Cell> cells = new ArrayList<>();
        cells.add(Cell.of(Text.name(row.surface())));
        Text stick = Text.name(row.stick().isEmpty() ? "-" : row.stick());
        cells.add(
                row.side() == Side.BOTH
                        ? Cell.of(stick)
                        : Cell.of(stick, Text.say(row.side() == Side.LEFT ? "fly.roll.left" : "fly.roll.right")));
        cells.add(told(row));
        if (air) {
            cells.add(inAir(row, answer.comeIn()));
            cells.add(inAir(row, answer.fast()));
        }
        if (gap) {
            cells.add(Cell.of(like(row)));
        }
        return new Table.Cells(cells, Role.PLAIN);
    }

    /** Where the servo does not get it there even with nothing pushing, what the bench shows. */
    private static Cell told(Row row) {
        List<Text> lines = new ArrayList<>(stands(row, row.told()));
        if (isShort(row)) {
            lines.add(Text.say("fly.stand.bench", Value.angle(Math.abs(row.bench()))));
            lines.add(new Value.Edge(row.bench(), row.chord()));
        }
        return new Cell(lines, Role.PLAIN);
    }

    private static boolean isShort(Row row) {
        return Math.abs(row.bench() - row.told()) > SEEN;
    }

    /** What a surface yields is less than a degree as a rule. */
    private static Text angle(double angle) {
        return Value.of(angle, Value.Kind.DEFLECTION_TENTHS);
    }

    private static List<Text> stands(Row row, double angle) {
        return List.of(angle(angle), new Value.Edge(angle, row.chord()));
    }

    private static Cell inAir(Row row, double speed) {
        return row.at(speed)
                .map(point -> {
                    List<Text> lines = new ArrayList<>(stands(row, point.angle()));
                    point.perhaps()
                            .filter(harder -> tenths(harder) != tenths(point.angle()))
                            .ifPresent(harder -> lines.add(Text.say("fly.stand.perhaps", angle(harder))));
                    return new Cell(lines, Role.PLAIN);
                })
                .orElseGet(() -> Cell.of(row.rated() ? Text.say("fly.stand.unknown") : Text.name("-")));
    }

    private static long tenths(double angle) {
        return Math.round(10 * Math.toDegrees(angle));
    }

    private Text like(Row row) {
        double angle = row.at(answer.comeIn()).map(Point::angle).orElse(row.bench());
        return row.gapShare() < 1 ? angle(row.gapShare() * angle) : Text.name("-");
    }

    /** What the table means, and what it does not know. */
    private List<Paragraph> remarks(Elevator elevator) {
        List<Paragraph> said = new ArrayList<>();
        add(said, "fly.stand.short", rows.stream().anyMatch(StandingSection::isShort));
        add(said, "fly.stand.meaning", air);
        for (double speed : new double[] {answer.comeIn(), answer.fast()}) {
            held(said, "fly.stand.overpowered", speed, Hold.OVERPOWERED);
            held(said, "fly.stand.blown", speed, Hold.BLOWN);
        }
        add(
                said,
                "fly.stand.not-found",
                rows.stream()
                        .anyMatch(row -> row.rated()
                                && (row.at(answer.comeIn()).isEmpty()
                                        || row.at(answer.fast()).isEmpty())));
        add(said, "fly.stand.pivot", elevator.isAllMoving() && elevator.pivot() > Elevator.USUAL_PIVOT);
        add(said, "fly.stand.gap", gap);
        List<String> unrated = names(row -> !row.rated());
        if (!unrated.isEmpty()) {
            said.add(Paragraph.say("fly.stand.no-torque", Text.join(Join.COMMA, unrated, Text::name), unrated.get(0)));
        }
        add(said, "fly.stand.measure", air);
        return said;
    }

    private static void add(List<Paragraph> said, String key, boolean holds) {
        if (holds) {
            said.add(Paragraph.say(key));
        }
    }

    private void held(List<Paragraph> said, String key, double speed, Hold hold) {
        List<String> surfaces =
                names(row -> row.at(speed).filter(point -> point.hold() == hold).isPresent());
        if (!surfaces.isEmpty()) {
            said.add(Paragraph.say(key, Value.speed(speed), Text.join(Join.COMMA, surfaces, Text::name)));
        }
    }

    private List<String> names(Predicate<Row> which) {
        return rows.stream().filter(which).map(Row::surface).distinct().toList();
    }
}
