package throwline.report.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import throwline.logs.LogWind;
import throwline.logs.Piece;
import throwline.logs.Piece.Kind;
import throwline.logs.ReducedLog;
import throwline.notes.Noticed;
import throwline.report.document.Block;
import throwline.report.document.Block.Paragraph;
import throwline.report.document.Block.Section;
import throwline.report.document.Role;
import throwline.report.document.Table;
import throwline.report.document.Table.Column;
import throwline.report.document.Text;
import throwline.report.document.Value;
import throwline.study.LoggedDay;
import throwline.units.Dimension;

/** Section on what was found in a log: wind, counts, warnings, and every piece with its reason. */
public final class LogSection {

    /** Much rising and sinking air (PRACTICE). */
    private static final double ROUGH = 1.6;

    private LogSection() {}

    /** Sections of one log: what it gave, and its pieces, folded. */
    public static List<Section> of(LoggedDay day) {
        ReducedLog log = day.log();
        List<Block> first = new ArrayList<>();
        first.add(Paragraph.of(summary(log)));
        warnings(log).forEach(first::add);
        if (isZeroUnknown(day)) {
            first.add(Paragraph.say("learn.log.elevator"));
        }
        return List.of(
                Section.of(Text.say("learn.section.log", log.name()), first),
                Section.of(Text.say("learn.section.pieces", log.name()), List.of(table(log)))
                        .folded());
    }

    /** Whether an elevator channel was flown of which nothing tells where its zero is. */
    private static boolean isZeroUnknown(LoggedDay day) {
        boolean channel = day.log().used(Kind.GLIDE).stream().anyMatch(p -> !Double.isNaN(p.elevator()));
        return channel
                && day.day().noticed().stream()
                        .noneMatch(n -> n instanceof Noticed.Trim && n.told().counts());
    }

    private static Text summary(ReducedLog log) {
        Text wind = log.wind()
                .<Text>map(w -> Text.say(
                        "learn.log.wind." + w.source().name().toLowerCase(Locale.ROOT),
                        Value.measure(w.speed(), Dimension.SPEED),
                        Value.count(Math.round(Math.toDegrees(w.from()) / 10) * 10)))
                .orElse(Text.say("learn.log.no-wind"));
        long rejected = log.pieces().stream().filter(p -> !p.used()).count();
        return Text.say(
                "learn.log.found",
                wind,
                count(log, Kind.GLIDE),
                count(log, Kind.STALL),
                count(log, Kind.ROLL),
                Value.count(rejected));
    }

    private static Text count(ReducedLog log, Kind kind) {
        int n = log.used(kind).size();
        String key = "learn.log." + kind.name().toLowerCase(Locale.ROOT);
        return n == 1 ? Text.say(key + ".one") : Text.say(key, Value.count(n));
    }

    private static List<Paragraph> warnings(ReducedLog log) {
        List<Paragraph> all = new ArrayList<>();
        if (log.dropped() > 0) {
            all.add(Paragraph.say("learn.log.dropped", Value.count(log.dropped())));
        }
        if (log.scaleWrong()) {
            all.add(Paragraph.of(
                    Role.DANGER, Text.say("learn.log.sensor-wrong", Value.share(Math.abs(log.scale() - 1)))));
        } else if (log.bySensor() && log.used(Kind.CIRCLE).isEmpty()) {
            all.add(Paragraph.say("learn.log.sensor-unchecked"));
        }
        if (log.dayFactor() > ROUGH) {
            all.add(Paragraph.of(Role.REMARK, Text.say("learn.log.rough")));
        }
        if (log.wind().filter(w -> w.source() == LogWind.Source.OPPOSING).isPresent()) {
            all.add(Paragraph.say("learn.log.opposing"));
        }
        return all;
    }

    /** All pieces in the order of time. */
    private static Table table(ReducedLog log) {
        double start = log.drawn().times().length == 0 ? 0 : log.drawn().times()[0];
        List<Table.Row> rows = new ArrayList<>();
        for (Piece piece : log.pieces()) {
            rows.add(Table.Cells.of(
                    Value.count(piece.number()),
                    Text.say("learn.piece." + piece.kind().name().toLowerCase(Locale.ROOT)),
                    piece.setUp().isEmpty() ? Text.none() : Text.name(piece.setUp()),
                    Text.say(
                            "learn.piece.time",
                            new Value.Plain(piece.from() - start, 0),
                            new Value.Plain(piece.to() - start, 0)),
                    result(piece),
                    Text.say(
                            piece.used() ? "learn.piece.used" : "learn.piece.rejected",
                            Text.say("learn.reason." + piece.reason().name().toLowerCase(Locale.ROOT)))));
        }
        return new Table(
                List.of(
                        Column.right(Text.say("learn.head.number")),
                        Column.left(Text.say("learn.head.piece")),
                        Column.left(Text.say("learn.head.setup")),
                        Column.left(Text.say("learn.head.time")),
                        Column.left(Text.say("learn.head.found")),
                        Column.left(Text.say("learn.head.why"))),
                rows);
    }

    private static Text result(Piece piece) {
        if (Double.isNaN(piece.speed())) {
            return Text.none();
        }
        Value speed = Value.measure(piece.speed(), Dimension.SPEED);
        return switch (piece.kind()) {
            case CIRCLE, STALL -> speed;
            case GLIDE -> Text.say("learn.piece.sink", Value.measure(piece.value(), Dimension.SPEED), speed);
            case ROLL -> Text.say("learn.piece.rate", Value.of(piece.value(), Value.Kind.RATE), speed);
        };
    }
}
