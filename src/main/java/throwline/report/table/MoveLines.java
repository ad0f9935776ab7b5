package throwline.report.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import throwline.report.EdgeThrow;
import throwline.report.Headlines;
import throwline.report.Page;
import throwline.report.Sentences;
import throwline.report.document.Figures;
import throwline.study.FlightQuantity;
import throwline.study.FlyResult;
import throwline.study.Handling.End;
import throwline.study.Handling.Mix;
import throwline.study.Handling.Move;
import throwline.study.Handling.Moves;
import throwline.study.Handling.Return;
import throwline.study.Handling.Suggested;
import throwline.units.Display;
import throwline.words.Words;

/** Surfaces on the move, as lines for a terminal. */
final class MoveLines {

    /** Slower than this over the reference's stall speed, it drops when surfaces are raised (PRACTICE, methods manual 17.4). */
    private static final double DROPS = 1.1;

    /** Not slower than this over the reference's stall speed near the ground (PRACTICE, methods manual 17.7). */
    private static final double NEAR_GROUND = 1.2;

    private final Page page;
    private final Words words;
    private final Figures figures;
    private final FlyResult result;
    private final EdgeThrow elevator;
    private final String reference;

    MoveLines(Page page, Words words, Figures figures, FlyResult result, EdgeThrow elevator) {
        this.page = page;
        this.words = words;
        this.figures = figures;
        this.result = result;
        this.elevator = elevator;
        reference = result.model().reference().name();
    }

    /** Why there is nothing to say, where that is to be said. */
    List<String> why() {
        // Speeds in the tables below are in metres a second, whatever the unit beside.
        Sentences sentences = new Sentences(words, Display.metric());
        return result.handling().noMoves().map(sentences::say).stream().toList();
    }

    /** To this set-up: a column a mix. */
    String lowering(Moves moves) {
        Grid grid = grid(moves.lowering());
        runs(grid, moves.lowering(), "fly.move.rises", move -> figures.height(move.balloon()));
        runs(grid, moves.lowering(), "fly.move.most", move -> figures.load(move.mostLoad()));
        runs(grid, moves.lowering(), "fly.move.slowest", move -> figures.speed(move.slowest()));
        stall(grid, moves.lowering(), moves.stall());
        return heading("fly.move.lower", moves.lowerSpeed(), moves.lowering()) + grid.render(page);
    }

    /** Back from it: a column a mix. */
    String raising(Moves moves) {
        Grid grid = grid(moves.raising());
        grid.row(
                words.say("fly.move.loses"),
                moves.raising().stream().map(this::lost).toList());
        runs(grid, moves.raising(), "fly.move.least", move -> figures.load(move.leastLoad()));
        runs(grid, moves.raising(), "fly.move.slowest", move -> figures.speed(move.slowest()));
        stall(grid, moves.raising(), moves.referenceStall());
        runs(grid, moves.raising(), "fly.move.fastest", move -> figures.speed(move.fastest()));
        return heading("fly.move.raise", moves.raiseSpeed(), moves.raising()) + grid.render(page);
    }

    private void stall(Grid grid, List<Move> moves, double stall) {
        grid.more(
                words.say("fly.move.its-stall", figures.speed(stall)),
                moves.stream()
                        .map(move -> move.slowest() < stall ? words.say("fly.move.below") : "")
                        .toList());
    }

    private String lost(Move move) {
        return switch (move.comesBack()) {
            case NEVER_LEFT -> words.say("fly.move.loses.nothing");
            case BACK -> figures.metres(Math.ceil(move.heightLost().orElseThrow()));
            case NOT_YET -> words.say("fly.move.loses.not-yet");
            case LOST -> words.say(away(move.end()));
        };
    }

    private void runs(Grid grid, List<Move> moves, String key, Function<Move, String> cell) {
        grid.row(
                words.say(key),
                moves.stream()
                        .map(move -> move.followed() ? cell.apply(move) : words.say(away(move.end())))
                        .toList());
    }

    private static String away(End end) {
        return end == End.LOST_UP ? "fly.move.lost.up" : "fly.move.lost.down";
    }

    private String heading(String key, double speed, List<Move> moves) {
        String sentence = words.say(
                key, figures.speed(speed), figures.seconds(moves.get(0).time()), reference);
        return Wrapped.paragraph("  ", "    ", page.shown(sentence), page.width());
    }

    private Grid grid(List<Move> moves) {
        Grid grid = new Grid(moves.stream().map(move -> column(move.mix())).toList());
        grid.row(
                words.say("fly.move.elevator"),
                moves.stream()
                        .map(move -> figures.edge(move.mix().elevator(), elevator))
                        .map(edge -> edge.equals(words.say("row.neutral")) ? words.say("fly.move.stays") : edge)
                        .toList());
        return grid;
    }

    private String column(Mix mix) {
        return words.say("fly.move.mix." + name(mix));
    }

    private static String name(Mix mix) {
        return mix.own() ? "own" : mix.share() == 0 ? "none" : mix.share() == 1 ? "whole" : "half";
    }

    /** How long the surfaces should take, where to begin, and when somebody has to push. */
    List<String> loweringRemarks(Moves moves) {
        List<String> lines = new ArrayList<>();
        lines.add(words.say(
                "fly.move.time",
                moves.suggested().stream().map(each -> time(each, moves)).collect(Collectors.joining(", ")),
                figures.seconds(moves.terms().quickest()),
                figures.seconds(moves.terms().slowest())));
        if (moves.suggested().stream().anyMatch(each -> each.time().isEmpty())) {
            lines.add(words.say("fly.move.time.slow"));
        }
        lines.add(words.say("fly.move.mix"));
        List<Move> slow = moves.lowering().stream()
                .filter(move -> move.slowest() < moves.stall())
                .toList();
        if (!slow.isEmpty()) {
            lines.add(words.say("fly.move.push", with(slow), figures.speed(moves.stall())));
        }
        lines.addAll(lost(moves.lowering(), End.LOST_UP, away(End.LOST_UP) + ".why"));
        lines.addAll(lost(moves.lowering(), End.LOST_DOWN, away(End.LOST_DOWN) + ".why"));
        Headlines.known(result.glance().number(FlightQuantity.FLAP_SPEED_LIMIT))
                .filter(limit -> limit.value() < moves.lowerSpeed())
                .ifPresent(limit -> lines.add(words.say("fly.move.servo", figures.speed(limit.value()))));
        return lines;
    }

    private List<String> lost(List<Move> moves, End end, String key) {
        List<Move> lost = moves.stream().filter(move -> move.end() == end).toList();
        return lost.isEmpty() ? List.of() : List.of(words.say(key, with(lost)));
    }

    private String time(Suggested suggested, Moves moves) {
        String with = words.say("fly.move.with." + name(suggested.mix()));
        Optional<Double> time = suggested.time();
        if (time.isEmpty()) {
            return words.say(
                    "fly.move.time.longer", with, figures.seconds(moves.terms().slowest()));
        }
        boolean any = time.get() <= moves.terms().quickest();
        return words.say(any ? "fly.move.time.any" : "fly.move.time.one", with, figures.seconds(time.get()));
    }

    private String with(List<Move> moves) {
        return moves.stream()
                .map(move -> words.say("fly.move.with." + name(move.mix())))
                .collect(Collectors.joining(", "));
    }

    /** How high and how fast to be when the surfaces go back. */
    List<String> raisingRemarks(Moves moves) {
        List<String> lines = new ArrayList<>();
        lines.add(words.say(
                "fly.move.answer",
                figures.seconds(moves.terms().reaction()),
                figures.seconds(moves.terms().hand())));
        List<Move> back = moves.raising().stream()
                .filter(move -> move.heightLost().isPresent())
                .toList();
        if (!back.isEmpty()) {
            lines.add(words.say("fly.move.close", back.stream().map(this::floor).collect(Collectors.joining(", "))));
        } else if (moves.raising().stream().allMatch(move -> move.comesBack() == Return.NEVER_LEFT)) {
            lines.add(words.say("fly.move.close.any"));
        }
        lines.addAll(lost(moves.raising(), End.LOST_UP, away(End.LOST_UP) + ".why"));
        lines.addAll(lost(moves.raising(), End.LOST_DOWN, "fly.move.away"));
        List<Move> notYet = moves.raising().stream()
                .filter(move -> move.comesBack() == Return.NOT_YET)
                .toList();
        if (!notYet.isEmpty()) {
            lines.add(words.say("fly.move.away", with(notYet)));
        }
        double least = moves.referenceStall();
        lines.add(
                moves.raiseSpeed() < DROPS * least
                        ? words.say(
                                "fly.move.drops",
                                figures.speed(moves.raiseSpeed()),
                                reference,
                                figures.speed(least),
                                figures.speed(NEAR_GROUND * least))
                        : words.say("fly.move.slow", figures.speed(NEAR_GROUND * least), reference));
        return lines;
    }

    private String floor(Move move) {
        return words.say(
                "fly.move.close.one",
                figures.metres(Math.ceil(move.heightLost().orElseThrow())),
                words.say("fly.move.with." + name(move.mix())));
    }
}
