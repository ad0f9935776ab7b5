package throwline.report.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import throwline.report.document.Block;
import throwline.report.document.Block.Paragraph;
import throwline.report.document.Table;
import throwline.report.document.Text;
import throwline.report.document.Text.Join;
import throwline.report.document.Value;
import throwline.study.Headline;
import throwline.study.ServoAnswer;
import throwline.study.ServoAnswer.LoadPoint;
import throwline.study.ServoAnswer.Position;
import throwline.study.ServoAnswer.SurfaceLoad;
import throwline.units.Dimension;

/** Section on the loads and angles of the servos in one set-up. */
final class ServoSection {

    private static final Text NONE = Text.name("-");

    private ServoSection() {}

    /** A row a servo: what it has to hold when coming in, and how fast that stays within half of what it can do. */
    static List<Block> loads(ServoAnswer servos) {
        List<Block> blocks = new ArrayList<>();
        if (!servos.loads().isEmpty()) {
            blocks.add(Tables.listing(
                    Tables.words(
                            "fly.servo.column.surface",
                            "fly.servo.column.stick",
                            "fly.servo.column.holds",
                            "fly.servo.column.most",
                            "fly.servo.column.share",
                            "fly.servo.column.half",
                            "fly.servo.column.choose"),
                    servos.loads(),
                    ServoSection::row));
        }
        servos.loads().stream()
                .flatMap(load -> load.overSpeed().stream())
                .map(LoadPoint::speed)
                .max(Double::compare)
                .ifPresent(fastest -> blocks.add(Paragraph.say("fly.servo.meaning", Value.speed(fastest))));
        List<String> assumed = servos.loads().stream()
                .filter(SurfaceLoad::assumedLinkage)
                .map(SurfaceLoad::surface)
                .toList();
        if (!assumed.isEmpty()) {
            blocks.add(Paragraph.say("fly.servo.assumed", Text.join(Join.COMMA, assumed, Text::name)));
        }
        return blocks;
    }

    private static Table.Cells row(SurfaceLoad load) {
        Optional<Headline.Known> now = load.comingIn().known();
        String stick = load.overSpeed().stream()
                .map(LoadPoint::stick)
                .filter(s -> !s.isEmpty())
                .findFirst()
                .orElse("-");
        double most = load.overSpeed().stream()
                .flatMap(p -> p.torque().stream())
                .max(Double::compare)
                .orElse(0.0);
        return Table.Cells.of(
                Text.name(load.surface()),
                Text.name(stick),
                now.map(n -> torque(n.value())).orElse(Text.say("fly.servo.locked")),
                now.map(n -> torque(n.high())).orElse(Text.none()),
                now.flatMap(n -> load.rating().<Text>map(r -> Value.share(n.value() / r)))
                        .orElse(NONE),
                load.halfRatingAt().<Text>map(Value::speed).orElse(NONE),
                load.rating().isPresent() || most == 0 ? NONE : torque(2 * most));
    }

    private static Text torque(double torque) {
        return Value.measure(torque, Dimension.TORQUE);
    }

    /** A row a surface and stick that move it from neutral. */
    static List<Block> positions(ServoAnswer servos) {
        List<Position> moved =
                servos.positions().stream().filter(p -> p.angle() != 0).toList();
        if (moved.isEmpty()) {
            return List.of();
        }
        Table table = Tables.listing(
                Tables.words(
                        "fly.servo.column.surface",
                        "fly.servo.column.stick",
                        "fly.servo.column.side",
                        "fly.servo.column.angle",
                        "fly.servo.column.edge",
                        "fly.servo.column.servo",
                        "fly.servo.column.swing",
                        "fly.servo.column.remark"),
                moved,
                ServoSection::row);
        return List.of(table, Paragraph.say("fly.servo.positions"));
    }

    private static Table.Cells row(Position p) {
        return Table.Cells.of(
                Text.name(p.surface()),
                Text.name(p.stick().isEmpty() ? "-" : p.stick()),
                side(p),
                Value.deflection(p.angle()),
                new Value.Edge(p.angle(), p.chord()),
                p.servo().<Text>map(s -> Value.angle(Math.abs(s))).orElse(NONE),
                p.swingShare().<Text>map(s -> Value.share(Math.abs(s))).orElse(NONE),
                remark(p));
    }

    private static Text side(Position p) {
        return Text.say(
                switch (p.side()) {
                    case LEFT -> "fly.roll.left";
                    case RIGHT -> "fly.roll.right";
                    case BOTH -> "fly.servo.both";
                });
    }

    private static Text remark(Position p) {
        return switch (p.reach()) {
            case LOCKED -> Text.say("fly.servo.locked");
            case BEYOND_SWING -> Text.say("fly.servo.beyond");
            case SLACKENING -> Text.say("fly.servo.slackening");
            case FREE -> p.atItsStop() ? Text.say("row.surface.stop") : Text.none();
        };
    }
}
