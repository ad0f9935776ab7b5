package throwline.report.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import throwline.flight.SurfaceMove.Return;
import throwline.report.document.Block;
import throwline.report.document.Block.Paragraph;
import throwline.report.document.Role;
import throwline.report.document.Table;
import throwline.report.document.Text;
import throwline.report.document.Text.Join;
import throwline.report.document.Value;
import throwline.study.FlightQuantity;
import throwline.study.FlyResult;
import throwline.study.Handling.End;
import throwline.study.Handling.Mix;
import throwline.study.Handling.Move;
import throwline.study.Handling.Moves;
import throwline.study.Handling.Suggested;

/** Surfaces on the move: to the set-up with nobody at the stick, and back with the pilot answering. */
final class MoveSection {

    /** By habit, first tries above this, m (the same). */
    private static final double HIGH = 30;

    /** By habit, no slower than this over the reference's stall speed near the ground (PRACTICE, methods manual 17.7). */
    private static final double NEAR_GROUND = 1.2;

    private final FlyResult result;
    private final Optional<Moves> found;
    private final String reference;

    MoveSection(FlyResult result) {
        this.result = result;
        found = result.handling().moves();
        reference = result.model().reference().name();
    }

    /** To this set-up: a column a mix; or why there is nothing to say, where that is to be said. */
    List<Block> lowering() {
        List<Block> blocks = new ArrayList<>();
        result.handling().noMoves().ifPresent(note -> blocks.add(Paragraph.of(Text.of(note))));
        found.ifPresent(moves -> {
            List<Move> all = moves.lowering();
            List<Table.Row> rows = rows(all);
            run(rows, all, "fly.move.rises", move -> Value.of(move.balloon(), Value.Kind.HEIGHT));
            run(rows, all, "fly.move.most", move -> load(move.mostLoad()));
            run(rows, all, "fly.move.slowest", move -> Value.speed(move.slowest()));
            rows.add(stall(all, moves.stall()));
            blocks.add(heading("fly.move.lower", moves.lowerSpeed(), all));
            blocks.add(table(all, rows));
            blocks.addAll(loweringRemarks(moves));
        });
        return blocks;
    }

    /** Back from it: a column a mix. */
    List<Block> raising() {
        List<Block> blocks = new ArrayList<>();
        found.filter(moves -> !moves.raising().isEmpty()).ifPresent(moves -> {
            List<Move> all = moves.raising();
            List<Table.Row> rows = rows(all);
            rows.add(Tables.row(Text.say("fly.move.loses"), all, MoveSection::lost));
            run(rows, all, "fly.move.least", move -> load(move.leastLoad()));
            run(rows, all, "fly.move.slowest", move -> Value.speed(move.slowest()));
            rows.add(stall(all, moves.referenceStall()));
            run(rows, all, "fly.move.fastest", move -> Value.speed(move.fastest()));
            blocks.add(heading("fly.move.raise", moves.raiseSpeed(), all));
            blocks.add(table(all, rows));
            blocks.addAll(raisingRemarks(moves));
        });
        return blocks;
    }

    private static Text load(double load) {
        return Value.of(load, Value.Kind.LOAD);
    }

    private List<Table.Row> rows(List<Move> moves) {
        double chord = result.model().tail().throwChord();
        List<Table.Row> rows = new ArrayList<>();
        rows.add(Tables.row(Text.say("fly.move.elevator"), moves, move -> {
            double angle = move.mix().elevator();
            return BalanceSection.stays(angle, chord) ? Text.say("fly.move.stays") : new Value.Edge(angle, chord);
        }));
        return rows;
    }

    private static Table table(List<Move> moves, List<Table.Row> rows) {
        return Tables.labelled(moves, move -> Text.say("fly.move.mix." + name(move.mix())), rows);
    }

    private Paragraph heading(String key, double speed, List<Move> moves) {
        return Paragraph.say(key, Value.speed(speed), Value.time(moves.get(0).time()), reference);
    }

    private static Table.Cells stall(List<Move> moves, double stall) {
        Table.Cells row = Tables.row(
                Text.say("fly.move.its-stall", Value.speed(stall)),
                moves,
                move -> move.slowest() < stall ? Text.say("fly.move.below") : Text.none());
        return new Table.Cells(row.cells(), Role.QUIET);
    }

    private static Text lost(Move move) {
        return switch (move.comesBack()) {
            case NEVER_LEFT -> Text.say("fly.move.loses.nothing");
            case BACK -> height(move);
            case NOT_YET -> Text.say("fly.move.loses.not-yet");
            case LOST -> Text.say(away(move.end()));
        };
    }

    private static Value height(Move move) {
        return Value.distance(Math.ceil(move.heightLost().orElseThrow()));
    }

    private static void run(List<Table.Row> rows, List<Move> moves, String key, Function<Move, Text> cell) {
        rows.add(Tables.row(
                Text.say(key), moves, move -> move.followed() ? cell.apply(move) : Text.say(away(move.end()))));
    }

    private static String away(End end) {
        return end == End.LOST_UP ? "fly.move.lost.up" : "fly.move.lost.down";
    }

    private static String name(Mix mix) {
        return mix.own() ? "own" : mix.share() == 0 ? "none" : mix.share() == 1 ? "whole" : "half";
    }

    /** How long the surfaces should take, where to begin, and when somebody has to push. */
    private List<Paragraph> loweringRemarks(Moves moves) {
        List<Paragraph> said = new ArrayList<>();
        said.add(Paragraph.say(
                "fly.move.time",
                Text.join(Join.COMMA, moves.suggested(), each -> time(each, moves)),
                Value.time(moves.terms().quickest()),
                Value.time(moves.terms().slowest())));
        if (moves.suggested().stream().anyMatch(each -> each.time().isEmpty())) {
            said.add(Paragraph.say("fly.move.time.slow"));
        }
        said.add(Paragraph.say("fly.move.mix"));
        List<Move> slow = moves.lowering().stream()
                .filter(move -> move.slowest() < moves.stall())
                .toList();
        if (!slow.isEmpty()) {
            said.add(Paragraph.say("fly.move.push", with(slow), Value.speed(moves.stall())));
        }
        said.addAll(lost(moves.lowering(), End.LOST_UP, "fly.move.lost.up.why"));
        said.addAll(lost(moves.lowering(), End.LOST_DOWN, "fly.move.lost.down.why"));
        result.glance()
                .number(FlightQuantity.FLAP_SPEED_LIMIT)
                .known()
                .filter(limit -> limit.value() < moves.lowerSpeed())
                .ifPresent(limit -> said.add(Paragraph.say("fly.move.servo", Value.speed(limit.value()))));
        return said;
    }

    private static List<Paragraph> lost(List<Move> moves, End end, String key) {
        List<Move> lost = moves.stream().filter(move -> move.end() == end).toList();
        return lost.isEmpty() ? List.of() : List.of(Paragraph.say(key, with(lost)));
    }

    private static Text time(Suggested suggested, Moves moves) {
        Text with = Text.say("fly.move.with." + name(suggested.mix()));
        Optional<Double> time = suggested.time();
        if (time.isEmpty()) {
            return Text.say("fly.move.time.longer", with);
        }
        boolean any = time.get() <= moves.terms().quickest();
        return Text.say(any ? "fly.move.time.any" : "fly.move.time.one", with, Value.time(time.get()));
    }

    private static Text with(List<Move> moves) {
        return Text.join(Join.COMMA, moves, move -> Text.say("fly.move.with." + name(move.mix())));
    }

    /** How high and how fast to be when the surfaces go back. */
    private List<Paragraph> raisingRemarks(Moves moves) {
        List<Paragraph> said = new ArrayList<>();
        said.add(Paragraph.say(
                "fly.move.answer",
                Value.time(moves.terms().reaction()),
                Value.time(moves.terms().hand())));
        List<Move> back = moves.raising().stream()
                .filter(move -> move.heightLost().isPresent())
                .toList();
        Value enough = Value.speed(moves.raiseSpeed());
        if (!back.isEmpty()) {
            said.add(Paragraph.say(
                    "fly.move.close",
                    Text.join(
                            Join.COMMA,
                            back,
                            move -> Text.say(
                                    "fly.move.close.one", height(move), Text.say("fly.move.with." + name(move.mix())))),
                    enough));
        } else if (moves.raising().stream().allMatch(move -> move.comesBack() == Return.NEVER_LEFT)) {
            said.add(Paragraph.say("fly.move.close.any", enough));
        } else {
            said.add(Paragraph.say("fly.move.close.speed", enough));
        }
        said.addAll(lost(moves.raising(), End.LOST_UP, "fly.move.lost.up.why"));
        said.addAll(lost(moves.raising(), End.LOST_DOWN, "fly.move.away"));
        List<Move> notYet = moves.raising().stream()
                .filter(move -> move.comesBack() == Return.NOT_YET)
                .toList();
        if (!notYet.isEmpty()) {
            said.add(Paragraph.say("fly.move.away", with(notYet)));
        }
        said.add(Paragraph.say(
                "fly.move.habit", Value.speed(NEAR_GROUND * moves.referenceStall()), reference, Value.distance(HIGH)));
        return said;
    }
}
