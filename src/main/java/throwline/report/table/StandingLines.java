package throwline.report.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import throwline.linkage.ServoBlowBack.Hold;
import throwline.model.Elevator;
import throwline.report.EdgeThrow;
import throwline.report.Page;
import throwline.report.document.Figures;
import throwline.study.BlowBackResult;
import throwline.study.BlowBackResult.Row;
import throwline.study.SetUpResult.Side;
import throwline.words.Words;

/** Where the surfaces really stand: what is programmed, what the bench shows, what the air leaves of it. */
final class StandingLines {

    /** Short of what is programmed by less than this is not worth a line, rad. */
    private static final double SEEN = Math.toRadians(0.1);

    private final Page page;
    private final Words words;
    private final Figures figures;

    StandingLines(Page page, Words words, Figures figures) {
        this.page = page;
        this.words = words;
        this.figures = figures;
    }

    /** A few lines a surface: degrees, the trailing edge, and how far if the air pushes harder. */
    String table(BlowBackResult answer) {
        List<Row> rows = answer.telling();
        if (rows.isEmpty()) {
            return "";
        }
        boolean air = rows.stream().anyMatch(row -> !row.overSpeed().isEmpty());
        boolean gap = rows.stream().anyMatch(row -> row.gapShare() < 1);
        List<String> headers = new ArrayList<>(List.of(say("surface"), say("stick"), say("told")));
        if (air) {
            headers.add(say("come-in", figures.speed(answer.comeIn())));
            headers.add(say(answer.fastIsLimit() ? "limit" : "fastest", figures.speed(answer.fast())));
        }
        if (gap) {
            headers.add(say("like"));
        }
        Columns columns = new Columns(headers, 0);
        for (Row row : rows) {
            List<List<String>> cells = new ArrayList<>();
            cells.add(List.of(page.shown(row.surface())));
            cells.add(List.of(row.stick().isEmpty() ? "-" : page.shown(row.stick()), side(row.side())));
            cells.add(told(row));
            if (air) {
                cells.add(inAir(row, answer.comeIn()));
                cells.add(inAir(row, answer.fast()));
            }
            if (gap) {
                cells.add(like(row, answer.comeIn()));
            }
            add(columns, cells);
        }
        return columns.render(page).lines().map(line -> "  " + line + "\n").collect(Collectors.joining());
    }

    /** Where the servo does not get it there even with nothing pushing, what the bench shows. */
    private List<String> told(Row row) {
        List<String> lines = new ArrayList<>(stands(row, row.told()));
        if (Math.abs(row.bench() - row.told()) > SEEN) {
            lines.add(say("bench", figures.degrees(Math.abs(row.bench()))));
            lines.add(figures.edge(row.bench(), new EdgeThrow(row.chord())));
        }
        return lines;
    }

    private static void add(Columns columns, List<List<String>> cells) {
        int height = cells.stream().mapToInt(List::size).max().orElse(0);
        for (int k = 0; k < height; k++) {
            int line = k;
            columns.row(cells.stream()
                    .map(cell -> line < cell.size() ? cell.get(line) : "")
                    .toList());
        }
    }

    private List<String> stands(Row row, double angle) {
        return List.of(angle(angle), figures.edge(angle, new EdgeThrow(row.chord())));
    }

    private List<String> inAir(Row row, double speed) {
        return row.at(speed)
                .map(point -> {
                    List<String> lines = new ArrayList<>(stands(row, point.angle()));
                    point.perhaps()
                            .map(this::angle)
                            .filter(harder -> !harder.equals(angle(point.angle())))
                            .ifPresent(harder -> lines.add(say("perhaps", harder)));
                    return lines;
                })
                .orElseGet(() -> List.of(row.rated() ? say("unknown") : "-"));
    }

    private List<String> like(Row row, double speed) {
        double angle = row.at(speed).map(BlowBackResult.Point::angle).orElse(row.bench());
        return row.gapShare() < 1 ? List.of(angle(row.gapShare() * angle)) : List.of("-");
    }

    /** What the table means, and what it does not know. */
    List<String> remarks(BlowBackResult answer, Elevator elevator) {
        List<Row> rows = answer.telling();
        List<String> lines = new ArrayList<>();
        boolean air = rows.stream().anyMatch(row -> !row.overSpeed().isEmpty());
        if (rows.stream().anyMatch(row -> Math.abs(row.bench() - row.told()) > SEEN)) {
            lines.add(say("short"));
        }
        if (air) {
            lines.add(say("meaning"));
        }
        for (double speed : new double[] {answer.comeIn(), answer.fast()}) {
            add(lines, "overpowered", speed, names(rows, row -> is(row, speed, Hold.OVERPOWERED)));
            add(lines, "blown", speed, names(rows, row -> is(row, speed, Hold.BLOWN)));
        }
        boolean missing = rows.stream()
                .anyMatch(row -> row.rated()
                        && (row.at(answer.comeIn()).isEmpty()
                                || row.at(answer.fast()).isEmpty()));
        if (missing) {
            lines.add(say("not-found"));
        }
        if (elevator.isAllMoving() && elevator.pivot() > Elevator.USUAL_PIVOT) {
            lines.add(say("pivot"));
        }
        if (rows.stream().anyMatch(row -> row.gapShare() < 1)) {
            lines.add(say("gap"));
        }
        List<String> unrated = names(rows, row -> !row.rated());
        if (!unrated.isEmpty()) {
            lines.add(say("no-torque", String.join(", ", unrated), unrated.get(0)));
        }
        if (air) {
            lines.add(say("measure"));
        }
        return lines;
    }

    private void add(List<String> lines, String key, double speed, List<String> surfaces) {
        if (!surfaces.isEmpty()) {
            lines.add(say(key, figures.speed(speed), String.join(", ", surfaces)));
        }
    }

    private static boolean is(Row row, double speed, Hold hold) {
        return row.at(speed).filter(point -> point.hold() == hold).isPresent();
    }

    private List<String> names(List<Row> rows, Predicate<Row> which) {
        return rows.stream()
                .filter(which)
                .map(row -> page.shown(row.surface()))
                .distinct()
                .toList();
    }

    private String side(Side side) {
        return switch (side) {
            case LEFT -> words.say("fly.roll.left");
            case RIGHT -> words.say("fly.roll.right");
            case BOTH -> "";
        };
    }

    /** 54.2 degrees down: what a surface yields is less than a degree as a rule. */
    private String angle(double angle) {
        String size = String.format(Locale.ROOT, "%.1f", Math.abs(Math.toDegrees(angle)));
        return size.equals("0.0")
                ? words.say("row.neutral")
                : words.say(angle > 0 ? "row.down" : "row.up", size + page.degreeSign());
    }

    private String say(String key, Object... arguments) {
        return words.say("fly.stand." + key, arguments);
    }
}
