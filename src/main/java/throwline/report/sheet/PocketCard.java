package throwline.report.sheet;

import java.util.ArrayList;
import java.util.List;
import throwline.report.EdgeThrow;
import throwline.report.ElevatorMixes;
import throwline.report.Headlines;
import throwline.report.Page;
import throwline.report.sheet.SheetDocument.Block;
import throwline.report.sheet.SheetDocument.Cell;
import throwline.report.sheet.SheetDocument.Cells;
import throwline.report.sheet.SheetDocument.Column;
import throwline.report.sheet.SheetDocument.Heading;
import throwline.report.sheet.SheetDocument.Kind;
import throwline.report.sheet.SheetDocument.Paragraph;
import throwline.report.sheet.SheetDocument.Row;
import throwline.report.sheet.SheetDocument.Table;
import throwline.study.FlightQuantity;
import throwline.study.Headline;
import throwline.study.ServoAnswer.Position;
import throwline.study.SetUpResult;
import throwline.words.Words;

/** The few numbers that a pilot looks up at the field, on a card for the tray of the transmitter. */
final class PocketCard {

    private static final double LETTERS = 7.4;

    private final SheetAnswer answer;
    private final Words words;
    private final SheetFigures figures;
    private final EdgeThrow elevator;

    PocketCard(SheetAnswer answer, Page page, Words words) {
        this.answer = answer;
        this.words = words;
        figures = new SheetFigures(page, words);
        elevator = ElevatorMixes.edge(answer.model());
    }

    SheetDocument document(Size.Paper paper) {
        List<Block> blocks = new ArrayList<>();
        blocks.addAll(new BalanceWarning(answer.pack().setUps(), words).blocks());
        blocks.add(new Paragraph(words.say("sheet.pocket.caution"), true));
        blocks.add(speeds());
        blocks.add(new Paragraph(words.say("sheet.caution.mix"), false));
        blocks.add(new Heading(words.say("sheet.pocket.travel")));
        blocks.add(travel());
        blocks.add(new Paragraph(words.say("row.estimate"), false));
        String title = answer.model().name();
        return new SheetDocument(
                "pocket-card",
                title,
                words.say("sheet.pocket.below", answer.pack().pack().name()),
                words.say("sheet.foot", title),
                Size.card(paper, LETTERS),
                blocks);
    }

    private Table speeds() {
        List<Column> columns = new ArrayList<>();
        columns.add(new Column("", "", 66, false));
        for (String key : List.of("row.comein", "row.stalls", "row.flap-limit", "row.mix")) {
            columns.add(new Column(words.say(key), "", 50, false));
        }
        List<Row> rows = new ArrayList<>();
        for (SetUpResult r : answer.pack().setUps()) {
            boolean reference = r.setUp().equals(answer.model().reference());
            String none = reference ? "-" : words.say("row.none");
            rows.add(new Cells(List.of(
                    new Cell(r.setUp().name(), Kind.STRONG),
                    Cell.of(speed(r.approachSpeed())),
                    Cell.of(speed(r.stallSpeed())),
                    Cell.of(
                            r.number(FlightQuantity.FLAP_SPEED_LIMIT) instanceof Headline.Unknown unknown
                                    ? figures.noFlapLimit(unknown)
                                    : speed(r.number(FlightQuantity.FLAP_SPEED_LIMIT))),
                    Cell.of(r.servos().mix().map(mix -> edge(mix.angle())).orElse(none)))));
        }
        return new Table(columns, rows);
    }

    private String speed(Headline headline) {
        return Headlines.known(headline)
                .map(known -> figures.speed(known.value()).replace(", ", "\n"))
                .orElse("-");
    }

    private String edge(double angle) {
        String size = figures.length(elevator.distance(angle)) + " " + figures.lengthUnit();
        return words.say(angle > 0 ? "row.down" : "row.up", size);
    }

    /** Where each lever position puts the surfaces, in per cent of their travel, and which switch it is on. */
    private Table travel() {
        List<String> surfaces = answer.pack().setUps().stream()
                .flatMap(r -> r.servos().positions().stream())
                .map(Position::surface)
                .distinct()
                .toList();
        List<Column> columns = new ArrayList<>();
        columns.add(new Column("", "", 66, false));
        surfaces.forEach(surface -> columns.add(new Column(surface, "", 44, false)));
        columns.add(new Column(words.say("sheet.bench.switch"), "", 60, false));
        List<Row> rows = new ArrayList<>();
        for (SetUpResult r : answer.pack().setUps()) {
            List<Cell> cells = new ArrayList<>();
            cells.add(new Cell(r.setUp().name(), Kind.STRONG));
            for (String surface : surfaces) {
                cells.add(Cell.of(r.servos().positions().stream()
                        .filter(p -> p.surface().equals(surface) && p.stick().isEmpty())
                        .findFirst()
                        .map(p -> share(p.travelShare()))
                        .orElse("-")));
            }
            cells.add(new Cell("", Kind.BLANK));
            rows.add(new Cells(cells));
        }
        return new Table(columns, rows);
    }

    private String share(double share) {
        String size = figures.percent(Math.abs(share)) + " %";
        return share == 0 ? size : words.say(share > 0 ? "row.down" : "row.up", size);
    }
}
