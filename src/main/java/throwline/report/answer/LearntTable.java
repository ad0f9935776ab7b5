package throwline.report.answer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import throwline.report.document.Table;
import throwline.report.document.Table.Cells;
import throwline.report.document.Table.Column;
import throwline.report.document.Text;
import throwline.report.document.Text.Join;
import throwline.report.document.Value;
import throwline.study.Comparison.PackResult;
import throwline.study.FlightQuantity;
import throwline.study.Headline;
import throwline.study.HeadlineNumbers.Entry;
import throwline.study.SetUpResult;

/** Numbers before and after the flights, a row a set-up. */
final class LearntTable {

    /** Width after over width before: what it is called. */
    private static final double HARDLY = 0.95;

    private static final double NARROWER = 0.8;
    private static final double A_THIRD = 0.6;
    private static final double HALF = 0.4;
    private static final double WIDER = 1.02;

    private final double chord;

    /**
     * @param chord of the elevator where its throws are measured, m
     */
    LearntTable(double chord) {
        this.chord = chord;
    }

    /** Numbers of a pack that flights put right, by quantity. */
    Table table(PackResult pack, List<FlightQuantity> quantities) {
        List<Table.Row> rows = new ArrayList<>();
        for (FlightQuantity quantity : quantities) {
            Map<Text, List<Cells>> byName = new LinkedHashMap<>();
            for (SetUpResult result : pack.setUps()) {
                for (Entry entry : result.headlines().of(quantity)) {
                    Text name =
                            entry.stick().isEmpty() ? Text.say(quantity.row()) : Text.say("row.roll.of", entry.stick());
                    row(result, entry)
                            .ifPresent(cells -> byName.computeIfAbsent(name, n -> new ArrayList<>())
                                    .add(cells));
                }
            }
            byName.forEach((name, cells) -> {
                rows.add(Table.Band.of(name));
                rows.addAll(cells);
            });
        }
        List<Column> columns = List.of(
                Column.left(Text.none()),
                Column.left(Text.say("learn.head.before")),
                Column.left(Text.say("learn.head.now")),
                Column.left(Text.say("learn.head.band")));
        return new Table(columns, rows);
    }

    private Optional<Cells> row(SetUpResult result, Entry entry) {
        if (!(entry.number() instanceof Headline.Known known) || known.learnt().isEmpty()) {
            return Optional.empty();
        }
        Headline.FromFlights old = known.learnt().get();
        Headline.Known before = new Headline.Known(old.value(), old.low(), old.high(), known.basis());
        return Optional.of(Cells.of(
                Text.name(result.setUp().name()),
                number(entry.quantity(), before),
                number(entry.quantity(), known),
                Text.join(
                        Join.COMMA,
                        List.of(
                                Text.say(old.flown() ? "learn.flown" : "learn.others"),
                                change(entry.quantity(), before, known)))));
    }

    /** A number with its band, as the comparison has it: of a change of elevator the mix to program, and where it may end. */
    private Text number(FlightQuantity quantity, Headline.Known known) {
        if (quantity == FlightQuantity.ELEVATOR_CHANGE) {
            return known.startingMix()
                    .<Text>map(
                            mix -> Text.say("learn.mix", new Value.Edge(mix, chord), new Value.EdgeBand(known, chord)))
                    .orElse(Text.say("row.none"));
        }
        boolean deflection = isDeflection(quantity);
        Value.Kind kind = Value.Kind.of(quantity);
        Text value = deflection ? new Value.Edge(known.value(), chord) : Value.of(known.value(), kind);
        Text band = deflection ? new Value.EdgeBand(known, chord) : new Value.Band(known, kind);
        return Text.say("learn.number", value, band);
    }

    private static boolean isDeflection(FlightQuantity quantity) {
        return quantity == FlightQuantity.ELEVATOR || quantity == FlightQuantity.ELEVATOR_CHANGE;
    }

    /** What became of the band; where the number moved by more than half of it, which way. */
    private static Text change(FlightQuantity quantity, Headline.Known before, Headline.Known after) {
        double scale = isDeflection(quantity) ? 1 : after.value() / before.value();
        double left = (after.high() - after.low()) / (before.high() - before.low()) / scale;
        Text width;
        if (left > WIDER) {
            width = Text.say("learn.left.wider");
        } else if (left > HARDLY) {
            width = Text.say("learn.left.hardly");
        } else if (left > NARROWER) {
            width = Text.say("learn.left.by", Value.share(1 - left));
        } else if (left > A_THIRD) {
            width = Text.say("learn.left.third");
        } else {
            width = Text.say(left > HALF ? "learn.left.half" : "learn.left.much");
        }
        double moved = after.value() - before.value();
        if (Math.abs(moved) < (after.high() - after.low()) / 4) {
            return width;
        }
        return Text.say("learn.moved", width, Text.say(moved > 0 ? "learn.moved.more" : "learn.moved.less"));
    }
}
