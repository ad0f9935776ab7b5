package throwline.report.chart;

import java.awt.Stroke;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import throwline.study.BlowBackResult;
import throwline.words.Words;

/**
 * Panel that shows how far short of its programmed angle each surface stands over airspeed; the angle itself, as a dashed
 * line, is where all curves are measured from, so that small differences of large angles show.
 */
final class StandingPanel {

    private static final double ROOM = 1.12;
    private static final double LEAST = 1;
    private static final Stroke DASHED = ChartStyle.stroke(1.2f, 6, 4);

    private final BlowBackResult answer;
    private final Function<String, ChartStyle.Look> looks;
    private final Words words;

    /**
     * @param answer where they stand
     * @param looks how a surface is drawn, by its name
     * @param words the sentences
     */
    StandingPanel(BlowBackResult answer, Function<String, ChartStyle.Look> looks, Words words) {
        this.answer = answer;
        this.looks = looks;
        this.words = words;
    }

    /** Empty where no surface's place in the air is known. */
    Optional<Panel> draw(int height) {
        Set<String> drawn = new HashSet<>();
        // One a surface: as the set-up alone leaves it, else with a stick.
        List<Curve> curves = answer.telling().stream()
                .filter(row -> row.overSpeed().size() > 1 && drawn.add(row.surface()))
                .map(this::curve)
                .toList();
        if (curves.isEmpty()) {
            return Optional.empty();
        }
        List<Place> reached = Curve.reached(curves);
        double most = Picture.most(reached, Place::y, LEAST);
        double least = Math.min(ROOM * Picture.least(reached, Place::y, 0), -most / 10);
        List<Item> items = new ArrayList<>(Curve.all(curves));
        items.add(Item.Line.level(0, ChartStyle.INK, DASHED));
        items.add(Item.Text.quiet(
                Place.of(Place.EDGE, 0).moved(-3, 9), words.say("chart.fly.stand.programmed"), Brush.Side.LEFT));
        Axis up = Axis.of(words.say("chart.fly.stand.axis"), least, ROOM * most, 5);
        return Optional.of(Panel.graph(height, up, items));
    }

    private Curve curve(BlowBackResult.Row row) {
        List<Place> points = row.overSpeed().stream()
                .map(point -> Place.of(point.speed(), fallsShort(row, point.angle())))
                .toList();
        Optional<Curve.Spot> spot = row.at(answer.comeIn()).map(point -> {
            double here = fallsShort(row, point.angle());
            double perhaps = fallsShort(row, point.perhaps().orElse(point.angle()));
            return new Curve.Spot(point.speed(), here, here, perhaps);
        });
        return new Curve(name(row), looks.apply(row.surface()), points, spot);
    }

    /** The angle is not broken from its direction. */
    private String name(BlowBackResult.Row row) {
        String size = String.format(Locale.ROOT, "%.0f", Math.abs(Math.toDegrees(row.told()))) + "\u00b0";
        String told = words.say(row.told() > 0 ? "row.down" : "row.up", size).replace(' ', '\u00a0');
        return words.say("chart.fly.stand.from", row.surface(), told);
    }

    /** Degrees, positive towards neutral. */
    private static double fallsShort(BlowBackResult.Row row, double angle) {
        return Math.toDegrees(row.told() - angle) * Math.signum(row.told());
    }
}
