package throwline.report.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import throwline.flight.PullUp.Limit;
import throwline.report.document.Block;
import throwline.report.document.Block.Paragraph;
import throwline.report.document.Table;
import throwline.report.document.Text;
import throwline.report.document.Value;
import throwline.study.Handling;
import throwline.study.Handling.Gain;
import throwline.study.Handling.Loop;
import throwline.study.Handling.LoopAtFull;
import throwline.study.Headline;

/** Tight pulls, and what flaps that go with the elevator bring in them. */
final class PullSection {

    /**
     * From this load on it is worth asking whether the model is built for it: the limit load of full-size aerobatic
     * aeroplanes (FAR 23.337, MEMORY).
     */
    static final double HEAVY = 6;

    private final Handling handling;

    PullSection(Handling handling) {
        this.handling = handling;
    }

    /** A table a stick, a column an entry speed; then what the flaps bring. */
    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        List<Loop> loops = handling.loops();
        loops.stream()
                .map(PullSection::name)
                .distinct()
                .forEach(name -> blocks.add(table(
                        name,
                        loops.stream().filter(loop -> name(loop).equals(name)).toList())));
        handling.gains().stream()
                .map(Gain::stick)
                .distinct()
                .forEach(stick -> gains(
                        blocks,
                        handling.gains().stream()
                                .filter(gain -> gain.stick().equals(stick))
                                .toList()));
        handling.noLoops().forEach(note -> blocks.add(Paragraph.of(Text.of(note))));
        loops.stream().mapToDouble(Loop::load).max().stream()
                .filter(most -> most > HEAVY)
                .forEach(most -> blocks.add(heavy(most)));
        return blocks;
    }

    static Paragraph heavy(double load) {
        return Paragraph.say("fly.loop.heavy", Value.of(load, Value.Kind.LOAD));
    }

    private static Text name(Loop loop) {
        if (loop.stick().isEmpty()) {
            return Text.say("fly.loop.travel");
        }
        return loop.withoutFlaps() ? Text.say("fly.loop.without", loop.stick()) : Text.name(loop.stick());
    }

    private static Table table(Text name, List<Loop> loops) {
        List<Table.Row> rows = new ArrayList<>(List.of(Table.Band.of(name)));
        row(rows, loops, "fly.loop.pulls", loop -> load(loop.load()));
        row(
                rows,
                loops,
                "fly.loop.limit",
                loop -> Text.say("fly.loop.limit." + loop.limit().name().toLowerCase(Locale.ROOT)));
        row(rows, loops, "fly.loop.wing", loop -> load(loop.wingLoad()));
        row(rows, loops, "fly.loop.stick", loop -> load(loop.elevatorLoad()));
        row(rows, loops, "fly.loop.tail", loop -> load(loop.tailLoad()));
        row(rows, loops, "fly.loop.radius", loop -> Value.distance(loop.radius()));
        row(rows, loops, "fly.loop.turn", PullSection::turn);
        row(rows, loops, "fly.loop.top", loop -> speed(loop.topSpeed()));
        row(rows, loops, "fly.loop.end", loop -> speed(loop.endSpeed()));
        row(rows, loops, "fly.loop.snap", PullSection::snap);
        if (loops.stream().anyMatch(loop -> loop.atFull().isPresent())) {
            rows.add(Table.Band.of(Text.say("fly.loop.full", name)));
            full(rows, loops, "fly.loop.pulls", open -> load(open.load()));
            full(rows, loops, "fly.loop.radius", open -> radius(open.radius().value()));
            full(rows, loops, "row.likely", open -> new Value.Band(open.radius(), Value.Kind.RADIUS));
            full(rows, loops, "fly.loop.top", PullSection::top);
            full(rows, loops, "row.likely", PullSection::topLikely);
            full(rows, loops, "fly.loop.end", open -> speed(open.endSpeed()));
        }
        return Tables.labelled(loops, loop -> Text.say("fly.loop.at", Value.speed(loop.speed())), rows);
    }

    private static void full(List<Table.Row> rows, List<Loop> loops, String label, Function<LoopAtFull, Text> text) {
        row(rows, loops, label, loop -> loop.atFull().map(text).orElse(Text.say("fly.loop.full.not-found")));
    }

    private static Text top(LoopAtFull open) {
        return speed(open.topSpeed().known().map(Headline.Known::value));
    }

    private static Text topLikely(LoopAtFull open) {
        return open.topSpeed()
                .known()
                .<Text>map(known ->
                        known.low() > 0 ? new Value.Band(known, Value.Kind.SPEED) : Text.say("fly.loop.may-not"))
                .orElse(Text.none());
    }

    /** Radius with flaps and without, side by side, and whether they can be told apart. */
    private static void gains(List<Block> blocks, List<Gain> gains) {
        Gain first = gains.get(0);
        boolean other = !first.stick().equals(first.plain());
        List<Table.Row> rows = new ArrayList<>();
        row(rows, gains, "fly.loop.gain.with", gain -> radius(gain.with().value()));
        rows.add(Tables.row(
                other ? Text.say("fly.loop.gain.plain", first.plain()) : Text.say("fly.loop.gain.alone"),
                gains,
                gain -> radius(gain.without().value())));
        row(rows, gains, "fly.loop.gain.change", PullSection::change);
        blocks.add(Paragraph.say("fly.loop.gain", first.stick()));
        blocks.add(Tables.labelled(gains, gain -> Text.say("fly.loop.at", Value.speed(gain.speed())), rows));
    }

    private static Text change(Gain gain) {
        double change = gain.with().value() / gain.without().value() - 1;
        Value size = Value.share(Math.abs(change));
        if (gain.with().tooCloseTo(gain.without())) {
            return Text.say(
                    "fly.loop.gain.close", Text.say(change < 0 ? "fly.loop.gain.minus" : "fly.loop.gain.plus", size));
        }
        return Text.say(change < 0 ? "fly.loop.gain.tighter" : "fly.loop.gain.wider", size);
    }

    private static Text load(double load) {
        return Value.of(load, Value.Kind.LOAD);
    }

    private static Text load(Optional<Double> load) {
        return load.map(PullSection::load).orElse(Text.say("fly.loop.not-met"));
    }

    private static Text speed(Optional<Double> speed) {
        return speed.<Text>map(Value::speed).orElse(Text.say("fly.loop.not-over"));
    }

    private static Text radius(double radius) {
        return Value.of(radius, Value.Kind.RADIUS);
    }

    /** A pull of no more than one g turns no circle. */
    private static Text turn(Loop loop) {
        return Double.isFinite(loop.turnRadius()) ? Value.distance(loop.turnRadius()) : Text.say("fly.loop.no-turn");
    }

    private static Text snap(Loop loop) {
        if (loop.limit() != Limit.WING) {
            return Text.say("fly.loop.left", Value.angle(loop.angleLeft()));
        }
        return loop.stallShare()
                .map(share -> Text.say("fly.loop.snaps", Value.share(Math.min(1, share))))
                .orElse(Text.say("fly.loop.snaps.stop"));
    }

    private static <T> void row(List<Table.Row> rows, List<T> things, String key, Function<T, Text> cell) {
        rows.add(Tables.row(Text.say(key), things, cell));
    }
}
