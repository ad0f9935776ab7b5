package throwline.report.chart;

import java.awt.Color;
import java.awt.Stroke;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import throwline.flight.SurfaceMove.Moment;
import throwline.study.FlyResult;
import throwline.study.Handling;
import throwline.study.Handling.End;
import throwline.study.Handling.Move;
import throwline.study.Handling.Moves;
import throwline.words.Words;

/** Height, airspeed and load over time while surfaces move, one curve a mix; the time that they take is shaded. */
final class MoveChart {

    private static final int PANEL = 190;
    private static final int AROUND = 190;
    private static final double ROOM = 0.1;

    /** A panel shows at least so much: metres, metres a second, loads. */
    private static final double LEAST_HEIGHT = 2;

    private static final double LEAST_SPEED = 3;
    private static final double LEAST_LOAD = 0.4;

    private static final Color SHADE = new Color(0xF1F1F1);
    private static final Stroke DOTTED = ChartStyle.stroke(1, 2, 3);

    private final FlyResult result;
    private final Moves moves;
    private final Words words;
    private final String setUp;
    private final String reference;

    /**
     * @param result of the set-up
     * @param moves what is shown
     * @param words the sentences
     */
    MoveChart(FlyResult result, Moves moves, Words words) {
        this.result = result;
        this.moves = moves;
        this.words = words;
        this.setUp = result.glance().setUp().name();
        this.reference = result.model().reference().name();
    }

    /** The surfaces go to the set-up, and back where that is known. */
    List<Picture> draw() {
        List<Picture> pictures = new ArrayList<>();
        List<Move> down = moves.lowering();
        Level balloon = new Level(Handling.BALLOON, words.say("chart.move.balloon"), Where.BESIDE);
        pictures.add(picture(
                "surfaces-down",
                down,
                moves.lowerSpeed(),
                panel(down, "chart.move.off-path", Moment::offPath, LEAST_HEIGHT, Level.plain(0)),
                panel(down, "chart.move.load", Moment::load, LEAST_LOAD, Level.plain(1), balloon)));
        List<Move> up = moves.raising();
        if (!up.isEmpty()) {
            pictures.add(picture(
                    "surfaces-up",
                    up,
                    moves.raiseSpeed(),
                    panel(up, "chart.move.height", Moment::height, LEAST_HEIGHT, Level.plain(0)),
                    panel(up, "chart.move.load", Moment::load, LEAST_LOAD, Level.plain(1))));
        }
        return pictures;
    }

    /** Side of a level on which its name stands. */
    private enum Where {
        BESIDE,
        ABOVE,
        BELOW
    }

    /** Level that curves are compared with, always in view. */
    private record Level(double value, String name, Where where) {
        static Level plain(double value) {
            return new Level(value, "", Where.ABOVE);
        }

        List<Item> items() {
            Place label = Place.of(-Place.EDGE, value).moved(6, where == Where.ABOVE ? -9 : 9);
            return List.of(
                    Item.Line.level(value, ChartStyle.QUIET_INK, DOTTED),
                    Item.Text.quiet(label, where == Where.BESIDE ? "" : name, Brush.Side.RIGHT));
        }
    }

    private Picture picture(String name, List<Move> runs, double speed, Panel height, Panel load) {
        double time = runs.get(0).time();
        String holdsFor = words.say(
                "chart.move." + name + ".for",
                setUp,
                reference,
                tenths(speed),
                tenths(time),
                tenths(moves.terms().reaction()),
                tenths(moves.terms().hand()));
        String of = words.say("chart.of", result.model().name(), result.pack().name());
        return Picture.ofCurves(
                name,
                new Caption(
                        words.say("chart.move." + name + ".title"),
                        List.of(holdsFor, of),
                        words.say("chart.move.proof")),
                AROUND + 3 * PANEL,
                Axis.of(words.say("chart.move.time"), 0, Math.max(end(runs), time), 8),
                shaded(height, time, words.say("chart.move.moving")),
                shaded(speed(runs), time, ""),
                shaded(load, time, ""));
    }

    private static String tenths(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }

    /** Both stalls may lie close together: one name above its line, the other below. */
    private Panel speed(List<Move> runs) {
        boolean own = moves.stall() < moves.referenceStall();
        double slower = Math.min(moves.stall(), moves.referenceStall());
        double faster = Math.max(moves.stall(), moves.referenceStall());
        return panel(
                runs,
                "chart.axis.airspeed",
                Moment::speed,
                LEAST_SPEED,
                new Level(faster, words.say("chart.move.stalls", own ? reference : setUp), Where.ABOVE),
                new Level(slower, words.say("chart.move.stalls", own ? setUp : reference), Where.BELOW));
    }

    private static double end(List<Move> runs) {
        return runs.stream()
                .flatMap(run -> run.history().stream())
                .mapToDouble(Moment::time)
                .max()
                .orElse(0);
    }

    /** A panel behind which the time that the surfaces take is shaded. */
    private static Panel shaded(Panel panel, double time, String name) {
        if (time <= 0) {
            return panel;
        }
        List<Item> items = new ArrayList<>();
        items.add(Item.Area.box(0, time, -Place.EDGE, Place.EDGE, SHADE));
        items.add(Item.Text.quiet(Place.of(0, -Place.EDGE).moved(4, -9), name, Brush.Side.RIGHT));
        items.addAll(panel.items());
        return Panel.graph(panel.height(), panel.up(), items);
    }

    private Panel panel(List<Move> runs, String axis, ToDoubleFunction<Moment> value, double least, Level... levels) {
        List<Curve> curves = new ArrayList<>();
        List<EndLabels.End> ends = new ArrayList<>();
        List<Item> items = new ArrayList<>();
        for (Level level : levels) {
            items.addAll(level.items());
            if (level.where == Where.BESIDE) {
                ends.add(EndLabels.End.ofLevel(level.name, Place.of(end(runs), level.value)));
            }
        }
        for (Move run : runs) {
            List<Place> points = run.history().stream()
                    .map(moment -> Place.of(moment.time(), value.applyAsDouble(moment)))
                    .toList();
            ChartStyle.Look look = ChartStyle.look(curves.size());
            boolean whole = run.end() == End.FOLLOWED;
            if (whole) {
                ends.add(EndLabels.End.ofCurve(name(run), look, points.get(points.size() - 1)));
            }
            curves.add(new Curve(whole ? "" : name(run), look, points));
        }
        List<Place> reached = Curve.reached(curves);
        double bottom = Picture.least(
                reached,
                Place::y,
                Stream.of(levels).mapToDouble(Level::value).min().orElse(0));
        double top = Picture.most(
                reached,
                Place::y,
                Stream.of(levels).mapToDouble(Level::value).max().orElse(0));
        double room = Math.max(ROOM * (top - bottom), (least - (top - bottom)) / 2);
        items.addAll(Curve.all(curves));
        items.add(new EndLabels(ends));
        return Panel.graph(1, Axis.of(words.say(axis), bottom - 2 * room, top + 1.5 * room, 5), items);
    }

    private String name(Move run) {
        double share = run.mix().share();
        String key = run.mix().own() ? "own" : share == 0 ? "none" : share == 1 ? "whole" : "half";
        String name = words.say("chart.move." + key);
        return run.end() == End.FOLLOWED
                ? name
                : words.say(run.end() == End.LOST_UP ? "chart.move.lost.up" : "chart.move.lost.down", name);
    }
}
