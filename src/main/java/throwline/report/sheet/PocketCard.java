package throwline.report.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import throwline.model.Servo;
import throwline.model.Stick;
import throwline.report.ElevatorMixes;
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
import throwline.report.document.Table.Row;
import throwline.report.document.Text;
import throwline.report.document.Text.Join;
import throwline.report.document.Value;
import throwline.study.Comparison.PackResult;
import throwline.study.FlightQuantity;
import throwline.study.Headline;
import throwline.study.ServoAnswer.Position;
import throwline.study.SetUpResult;

/** Card for the transmitter's tray: speeds and mixes with each battery, and what each switch and stick does. */
final class PocketCard {

    private static final double LETTERS = 8;

    /** Where nothing is to be said. */
    private static final Text NONE = Text.name("-");

    private final SheetAnswer answer;

    PocketCard(SheetAnswer answer) {
        this.answer = answer;
    }

    Sheet sheet(Size.Paper paper) {
        List<Block> blocks = new ArrayList<>(new SheetDangers(answer).brief("sheet.pocket.caution"));
        blocks.add(speeds());
        blocks.add(Paragraph.say("sheet.caution.mix"));
        List<Block> travel = new ArrayList<>(List.of(travel()));
        for (Stick stick : answer.model().sticks()) {
            travel.add(Paragraph.say("sheet.pocket.stick", stick.name(), Text.join(Join.SEMICOLON, moved(stick))));
        }
        blocks.add(Section.of(Text.say("sheet.pocket.travel"), travel));
        return Sheet.of(
                "pocket-card",
                Text.name(answer.model().name()),
                Text.say("sheet.pocket.below"),
                Size.card(paper, LETTERS),
                blocks);
    }

    private Table speeds() {
        List<Column> columns = new ArrayList<>();
        columns.add(column(Text.none(), 70));
        for (String key : List.of("row.comein", "row.stalls", "row.flap-limit", "sheet.pocket.mix")) {
            columns.add(column(Text.say(key), key.equals("sheet.pocket.mix") ? 66 : 46));
        }
        List<Row> rows = new ArrayList<>();
        Stream.concat(Stream.of(answer.pack()), answer.others().stream()).forEach(pack -> {
            rows.add(Band.of(Text.say("sheet.pocket.pack", pack.pack().name())));
            speeds(pack, rows);
        });
        return new Table(columns, rows);
    }

    private void speeds(PackResult pack, List<Row> rows) {
        for (SetUpResult r : pack.setUps()) {
            boolean reference = answer.model().isReference(r.setUp());
            Text none = reference ? NONE : Text.say("row.none");
            double chord = ElevatorMixes.edge(answer.model()).chord();
            rows.add(row(
                    r,
                    Cell.of(speed(r.approachSpeed())),
                    Cell.of(speed(r.stallSpeed())),
                    Cell.of(
                            r.number(FlightQuantity.FLAP_SPEED_LIMIT) instanceof Headline.Unknown unknown
                                    ? noFlapLimit(unknown)
                                    : speed(r.number(FlightQuantity.FLAP_SPEED_LIMIT))),
                    Cell.of(r.servos()
                            .mix()
                            .<Text>map(mix -> new Value.Gauge(mix.angle(), chord, Value.Gauge.Form.WHOLE))
                            .orElse(none))));
        }
    }

    private static Column column(Text head, double weight) {
        return new Column(head, Text.none(), weight, Align.LEFT);
    }

    /** A row that begins with the name of its set-up. */
    private static Cells row(SetUpResult result, Cell... cells) {
        List<Cell> all = new ArrayList<>(
                List.of(Cell.of(Role.STRONG, Text.name(result.setUp().name()))));
        all.addAll(List.of(cells));
        return new Cells(all, Role.PLAIN);
    }

    private static Text speed(Headline headline) {
        return headline.known().<Text>map(known -> Value.speed(known.value())).orElse(NONE);
    }

    /** Why no speed limits the flaps: nothing is moved, the servos suffice, or it is not known. */
    private static Text noFlapLimit(Headline.Unknown unknown) {
        return switch (unknown.why()) {
            case "why.nothing-moved" -> NONE;
            case "why.servo-suffices" -> Text.say("sheet.flap-limit.suffices");
            default -> Text.say("sheet.flap-limit.unknown");
        };
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
        columns.add(column(Text.none(), 66));
        surfaces.forEach(surface -> columns.add(column(Text.name(surface), 48)));
        columns.add(column(Text.say("sheet.bench.switch"), 56));
        List<Row> rows = new ArrayList<>();
        for (SetUpResult r : answer.pack().setUps()) {
            List<Cell> cells = new ArrayList<>();
            for (String surface : surfaces) {
                cells.add(Cell.of(r.servos().positions().stream()
                        .filter(p -> p.surface().equals(surface) && p.stick().isEmpty())
                        .findFirst()
                        .map(p -> share(p.travelShare()))
                        .orElse(NONE)));
            }
            String position = r.setUp().switchPosition();
            cells.add(position.isEmpty() ? Cell.of(Role.BLANK) : Cell.of(Role.STRONG, Text.name(position)));
            rows.add(row(r, cells.toArray(Cell[]::new)));
        }
        return new Table(columns, rows);
    }

    private static Text share(double share) {
        Value size = Value.share(Math.abs(share));
        return share == 0 ? Text.say("sheet.neutral") : Text.say(share > 0 ? "row.down" : "row.up", size);
    }

    /** What full stick adds, surface by surface. */
    private static List<Text> moved(Stick stick) {
        if (stick instanceof Stick.Roll roll) {
            return roll.throwsBySurface().entrySet().stream()
                    .<Text>map(e -> Text.say(
                            "sheet.pocket.roll",
                            e.getKey(),
                            angle(-e.getValue().up()),
                            angle(e.getValue().down())))
                    .toList();
        }
        Stick.Pull pull = (Stick.Pull) stick;
        Map<String, Double> all = new LinkedHashMap<>(pull.deflections());
        all.put(Servo.ELEVATOR, pull.elevator());
        return all.entrySet().stream()
                .filter(e -> e.getValue() != 0)
                .<Text>map(e -> Text.say("sheet.pocket.pull", e.getKey(), angle(e.getValue())))
                .toList();
    }

    private static Value angle(double angle) {
        return Value.of(angle, Value.Kind.DEFLECTION_TENTHS);
    }
}
