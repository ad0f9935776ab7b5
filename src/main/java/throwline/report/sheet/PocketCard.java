package throwline.report.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import throwline.model.Servo;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.report.ElevatorMixes;
import throwline.report.Page;
import throwline.report.sheet.SheetDocument.Band;
import throwline.report.sheet.SheetDocument.Block;
import throwline.report.sheet.SheetDocument.Cell;
import throwline.report.sheet.SheetDocument.Cells;
import throwline.report.sheet.SheetDocument.Column;
import throwline.report.sheet.SheetDocument.Heading;
import throwline.report.sheet.SheetDocument.Kind;
import throwline.report.sheet.SheetDocument.Paragraph;
import throwline.report.sheet.SheetDocument.Row;
import throwline.report.sheet.SheetDocument.Table;
import throwline.study.Comparison.PackResult;
import throwline.study.FlightQuantity;
import throwline.study.Headline;
import throwline.study.ServoAnswer.Position;
import throwline.study.SetUpResult;
import throwline.words.Words;

/** Card for the transmitter's tray: speeds and mixes with each battery, and what each switch and stick does. */
final class PocketCard {

    private static final double LETTERS = 8;

    private final SheetAnswer answer;
    private final Words words;
    private final SheetFigures figures;
    private final SheetDangers dangers;

    PocketCard(SheetAnswer answer, Page page, Words words) {
        this.answer = answer;
        this.words = words;
        figures = new SheetFigures(page, words);
        dangers = new SheetDangers(answer, page, words);
    }

    SheetDocument document(Size.Paper paper) {
        List<Block> blocks = new ArrayList<>(dangers.brief("sheet.pocket.caution"));
        blocks.add(speeds());
        blocks.add(new Paragraph(words.say("sheet.caution.mix"), false));
        blocks.add(new Heading(words.say("sheet.pocket.travel")));
        blocks.add(travel());
        for (Stick stick : answer.model().sticks()) {
            blocks.add(new Paragraph(words.say("sheet.pocket.stick", stick.name(), moved(stick)), false));
        }
        String title = answer.model().name();
        return new SheetDocument(
                "pocket-card",
                title,
                words.say("sheet.pocket.below"),
                words.say("sheet.foot", title),
                Size.card(paper, LETTERS),
                blocks);
    }

    private Table speeds() {
        List<Column> columns = new ArrayList<>();
        columns.add(new Column("", "", 70, false));
        for (String key : List.of("row.comein", "row.stalls", "row.flap-limit", "sheet.pocket.mix")) {
            columns.add(new Column(words.say(key), "", key.equals("sheet.pocket.mix") ? 66 : 46, false));
        }
        List<Row> rows = new ArrayList<>();
        Stream.concat(Stream.of(answer.pack()), answer.others().stream()).forEach(pack -> {
            rows.add(new Band(words.say("sheet.pocket.pack", pack.pack().name()), ""));
            speeds(pack, rows);
        });
        return new Table(columns, rows);
    }

    private void speeds(PackResult pack, List<Row> rows) {
        for (SetUpResult r : pack.setUps()) {
            boolean reference = r.setUp().equals(answer.model().reference());
            String none = reference ? SheetFigures.NONE : words.say("row.none");
            rows.add(new Cells(List.of(
                    new Cell(r.setUp().name(), Kind.STRONG),
                    Cell.of(speed(r.approachSpeed())),
                    Cell.of(speed(r.stallSpeed())),
                    Cell.of(
                            r.number(FlightQuantity.FLAP_SPEED_LIMIT) instanceof Headline.Unknown unknown
                                    ? figures.noFlapLimit(unknown)
                                    : speed(r.number(FlightQuantity.FLAP_SPEED_LIMIT))),
                    Cell.of(r.servos()
                            .mix()
                            .map(mix -> figures.edge(ElevatorMixes.edge(answer.model()), mix.angle()))
                            .orElse(none)))));
        }
    }

    private String speed(Headline headline) {
        return headline.known().map(known -> figures.oneSpeed(known.value())).orElse(SheetFigures.NONE);
    }

    /** Where each lever position puts the surfaces that it moves, in per cent of their travel, and which switch it is on. */
    private Table travel() {
        List<String> surfaces = answer.pack().setUps().stream()
                .flatMap(r -> r.servos().positions().stream())
                .filter(p -> p.stick().isEmpty() && p.travelShare() != 0)
                .map(Position::surface)
                .distinct()
                .toList();
        List<Column> columns = new ArrayList<>();
        columns.add(new Column("", "", 66, false));
        surfaces.forEach(surface -> columns.add(new Column(surface, "", 48, false)));
        columns.add(new Column(words.say("sheet.bench.switch"), "", 56, false));
        List<Row> rows = new ArrayList<>();
        for (SetUpResult r : answer.pack().setUps()) {
            List<Cell> cells = new ArrayList<>();
            cells.add(new Cell(r.setUp().name(), Kind.STRONG));
            for (String surface : surfaces) {
                cells.add(Cell.of(r.servos().positions().stream()
                        .filter(p -> p.surface().equals(surface) && p.stick().isEmpty())
                        .findFirst()
                        .map(p -> share(p.travelShare()))
                        .orElse(SheetFigures.NONE)));
            }
            SetUp setUp = r.setUp();
            cells.add(
                    setUp.switchPosition().isEmpty()
                            ? new Cell("", Kind.BLANK)
                            : new Cell(setUp.switchPosition(), Kind.STRONG));
            rows.add(new Cells(cells));
        }
        return new Table(columns, rows);
    }

    private String share(double share) {
        String size = figures.percent(Math.abs(share)) + " %";
        return share == 0 ? words.say("sheet.neutral") : words.say(share > 0 ? "row.down" : "row.up", size);
    }

    /** What full stick adds, surface by surface. */
    private String moved(Stick stick) {
        if (stick instanceof Stick.Roll roll) {
            return roll.throwsBySurface().entrySet().stream()
                    .map(e -> words.say(
                            "sheet.pocket.roll",
                            e.getKey(),
                            figures.angle(-e.getValue().up()),
                            figures.angle(e.getValue().down())))
                    .collect(Collectors.joining("; "));
        }
        Stick.Pull pull = (Stick.Pull) stick;
        Map<String, Double> all = new LinkedHashMap<>(pull.deflections());
        all.put(Servo.ELEVATOR, pull.elevator());
        return all.entrySet().stream()
                .filter(e -> e.getValue() != 0)
                .map(e -> words.say("sheet.pocket.pull", e.getKey(), figures.angle(e.getValue())))
                .collect(Collectors.joining("; "));
    }
}
