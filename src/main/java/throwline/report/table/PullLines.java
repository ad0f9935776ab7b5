package throwline.report.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import throwline.report.Headlines;
import throwline.report.Page;
import throwline.report.Sentences;
import throwline.report.document.Figures;
import throwline.study.Handling;
import throwline.study.Handling.Gain;
import throwline.study.Handling.Limit;
import throwline.study.Handling.Loop;
import throwline.units.Display;
import throwline.words.Words;

/** Tight pulls, and what flaps that go with the elevator bring in them, as lines for a terminal. */
final class PullLines {

    /**
     * From this load on it is worth asking whether the model is built for it: the limit load of full-size aerobatic
     * aeroplanes (FAR 23.337, MEMORY).
     */
    static final double HEAVY = 6;

    private final Page page;
    private final Words words;
    private final Figures figures;
    private final Sentences sentences;

    PullLines(Page page, Words words, Figures figures) {
        this.page = page;
        this.words = words;
        this.figures = figures;
        // Speeds in the tables are in metres a second, whatever the unit beside.
        sentences = new Sentences(words, Display.metric());
    }

    /** A table a stick, a column an entry speed; then what the flaps bring. */
    String tables(Handling handling) {
        StringBuilder text = new StringBuilder();
        List<Loop> loops = handling.loops();
        loops.stream()
                .map(this::name)
                .distinct()
                .forEach(name -> text.append(table(
                        name,
                        loops.stream().filter(loop -> name(loop).equals(name)).toList())));
        handling.gains().stream()
                .map(Gain::stick)
                .distinct()
                .forEach(stick -> text.append(gains(handling.gains().stream()
                        .filter(gain -> gain.stick().equals(stick))
                        .toList())));
        return text.toString();
    }

    private String name(Loop loop) {
        if (loop.stick().isEmpty()) {
            return words.say("fly.loop.travel");
        }
        String stick = page.shown(loop.stick());
        return loop.withoutFlaps() ? words.say("fly.loop.without", stick) : stick;
    }

    private String table(String name, List<Loop> loops) {
        Grid grid = new Grid(loops.stream()
                .map(loop -> words.say("fly.loop.at", figures.speed(loop.speed())))
                .toList());
        grid.heading(name);
        row(grid, loops, "fly.loop.pulls", loop -> figures.load(loop.load()));
        row(grid, loops, "fly.loop.limit", loop -> words.say("fly.loop.limit." + limit(loop.limit())));
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

    /** Radius with flaps and without, side by side, and whether they can be told apart. */
    private String gains(List<Gain> gains) {
        Gain first = gains.get(0);
        boolean other = !first.stick().equals(first.plain());
        Grid grid = new Grid(gains.stream()
                .map(gain -> words.say("fly.loop.at", figures.speed(gain.speed())))
                .toList());
        row(
                grid,
                gains,
                "fly.loop.gain.with",
                gain -> figures.radius(gain.with().value()));
        grid.row(
                other ? words.say("fly.loop.gain.plain", page.shown(first.plain())) : words.say("fly.loop.gain.alone"),
                gains.stream()
                        .map(gain -> figures.radius(gain.without().value()))
                        .toList());
        row(grid, gains, "fly.loop.gain.change", this::change);
        String question = words.say("fly.loop.gain", first.stick());
        return Wrapped.paragraph("  ", "    ", page.shown(question), page.width()) + grid.render(page);
    }

    private String change(Gain gain) {
        double change = gain.with().value() / gain.without().value() - 1;
        String size = figures.share(Math.abs(change));
        if (Headlines.tooClose(gain.with(), gain.without())) {
            return words.say(
                    "fly.loop.gain.close", words.say(change < 0 ? "fly.loop.gain.minus" : "fly.loop.gain.plus", size));
        }
        return words.say(change < 0 ? "fly.loop.gain.tighter" : "fly.loop.gain.wider", size);
    }

    private static String limit(Limit limit) {
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
    List<String> remarks(Handling handling) {
        List<String> lines = new ArrayList<>();
        handling.noLoops().forEach(note -> lines.add(sentences.say(note)));
        handling.loops().stream().mapToDouble(Loop::load).max().stream()
                .filter(most -> most > HEAVY)
                .forEach(most -> lines.add(words.say("fly.loop.heavy", figures.load(most))));
        return lines;
    }

    private <T> void row(Grid grid, List<T> columns, String key, Function<T, String> cell) {
        grid.row(words.say(key), columns.stream().map(cell).toList());
    }
}
