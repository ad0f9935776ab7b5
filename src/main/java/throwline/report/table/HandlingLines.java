package throwline.report.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import throwline.report.Page;
import throwline.study.Handling.Limit;
import throwline.study.Handling.Loop;
import throwline.study.Handling.Move;
import throwline.study.Handling.Moves;
import throwline.words.Words;

/** Tight pulls and surfaces on the move, as lines for a terminal. */
final class HandlingLines {

    /** From this load on it is worth asking whether the model is built for it (PRACTICE). */
    private static final double HEAVY = 8;

    /** Slower than this over the reference's stall speed, surfaces should not be raised (TRADE-FACTS 4, common practice). */
    private static final double SAFE_TO_RAISE = 1.1;

    private final Page page;
    private final Words words;
    private final Figures figures;

    HandlingLines(Page page, Words words, Figures figures) {
        this.page = page;
        this.words = words;
        this.figures = figures;
    }

    /** A table a stick, a column an entry speed. */
    String loops(List<Loop> loops) {
        StringBuilder text = new StringBuilder();
        loops.stream().map(Loop::stick).distinct().forEach(stick -> {
            List<Loop> own =
                    loops.stream().filter(loop -> loop.stick().equals(stick)).toList();
            text.append(table(stick, own));
        });
        return text.toString();
    }

    private String table(String stick, List<Loop> loops) {
        Grid grid = new Grid(loops.stream()
                .map(loop -> words.say("fly.loop.at", figures.speed(loop.speed())))
                .toList());
        grid.heading(stick.isEmpty() ? words.say("fly.loop.travel") : page.shown(stick));
        row(grid, loops, "fly.loop.pulls", loop -> figures.load(loop.load()));
        row(grid, loops, "fly.loop.limit", loop -> words.say("fly.loop.limit." + name(loop.limit())));
        row(grid, loops, "fly.loop.wing", loop -> figures.load(loop.wingLoad()));
        row(grid, loops, "fly.loop.stick", loop -> load(loop.elevatorLoad()));
        row(grid, loops, "fly.loop.tail", loop -> load(loop.tailLoad()));
        row(grid, loops, "fly.loop.radius", loop -> figures.metres(loop.radius()));
        row(grid, loops, "fly.loop.turn", loop -> figures.metres(loop.turnRadius()));
        row(grid, loops, "fly.loop.top", loop -> speed(loop.topSpeed()));
        row(grid, loops, "fly.loop.end", loop -> speed(loop.endSpeed()));
        row(grid, loops, "fly.loop.snap", this::snap);
        return grid.render(page);
    }

    private static String name(Limit limit) {
        return limit.name().toLowerCase(Locale.ROOT);
    }

    private String load(Optional<Double> load) {
        return load.map(figures::load).orElse(words.say("fly.loop.not-met"));
    }

    private String speed(Optional<Double> speed) {
        return speed.map(figures::speed).orElse(words.say("fly.loop.not-over"));
    }

    private String snap(Loop loop) {
        boolean reached = loop.limit() == Limit.WING;
        return reached
                ? loop.stallShare()
                        .map(share -> words.say("fly.loop.snaps", figures.share(Math.min(1, share))))
                        .orElse(words.say("fly.loop.snaps.stop"))
                : words.say("fly.loop.left", figures.degrees(loop.angleLeft()));
    }

    /** What should be said about the loops besides. */
    List<String> loopRemarks(List<Loop> loops) {
        List<String> lines = new ArrayList<>();
        loops.stream().mapToDouble(Loop::load).max().stream()
                .filter(most -> most > HEAVY)
                .forEach(most -> lines.add(words.say("fly.loop.heavy", figures.load(most))));
        return lines;
    }

    /** Lowering and raising, a column a mix. */
    String moves(Moves moves) {
        Grid down = grid(moves.lowering());
        runs(down, moves.lowering(), "fly.move.rises", move -> figures.height(move.balloon()));
        runs(down, moves.lowering(), "fly.move.most", move -> figures.load(move.mostLoad()));
        runs(down, moves.lowering(), "fly.move.slowest", move -> figures.speed(move.slowest()));
        if (moves.raising().isEmpty()) {
            return down.render(page);
        }
        Grid up = grid(moves.raising());
        runs(up, moves.raising(), "fly.move.sinks", move -> figures.height(move.drop()));
        runs(up, moves.raising(), "fly.move.least", move -> figures.load(move.leastLoad()));
        return heading("fly.move.lower", moves.lowerSpeed(), moves.lowering())
                + down.render(page)
                + heading("fly.move.raise", moves.raiseSpeed(), moves.raising())
                + up.render(page);
    }

    private void runs(Grid grid, List<Move> moves, String key, Function<Move, String> cell) {
        row(grid, moves, key, move -> move.followed() ? cell.apply(move) : words.say("fly.move.lost"));
    }

    private String heading(String key, double speed, List<Move> moves) {
        String sentence = words.say(
                key, figures.speed(speed), figures.seconds(moves.get(0).time()));
        return Wrapped.paragraph("  ", "    ", page.shown(sentence), page.width());
    }

    private Grid grid(List<Move> moves) {
        return new Grid(moves.stream()
                .map(move -> move.mix() == 0
                        ? words.say("fly.move.mix.none")
                        : words.say(move.mix() == 1 ? "fly.move.mix.whole" : "fly.move.mix.half"))
                .toList());
    }

    /**
     * How long the surfaces should take, and when not to raise them.
     *
     * @param moves what happens
     * @param stall stall speed of the set-up, m/s
     */
    List<String> moveRemarks(Moves moves, double stall) {
        List<String> lines = new ArrayList<>();
        lines.add(moves.suggestedTime()
                .map(time -> words.say("fly.move.time", figures.seconds(time)))
                .orElse(words.say("fly.move.time.none")));
        lines.add(words.say("fly.move.mix"));
        if (moves.lowering().stream()
                .anyMatch(move -> move.mix() > 0 && move.mix() < 1 && move.followed() && move.slowest() < stall)) {
            lines.add(words.say("fly.move.push", figures.speed(stall)));
        }
        if (moves.raiseSpeed() < SAFE_TO_RAISE * moves.referenceStall()) {
            lines.add(words.say("fly.move.slow", figures.speed(SAFE_TO_RAISE * moves.referenceStall())));
        }
        return lines;
    }

    private <T> void row(Grid grid, List<T> columns, String key, Function<T, String> cell) {
        grid.row(words.say(key), columns.stream().map(cell).toList());
    }
}
