package throwline.report.chart;

import java.awt.BasicStroke;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.TextAnchor;
import throwline.study.BlowBackResult;
import throwline.study.BlowBackResult.Row;
import throwline.words.Words;

/**
 * How far short of its programmed angle each surface stands over airspeed; the angle itself, as a dashed line, is where all
 * curves are measured from, so that small differences of large angles show.
 */
final class StandingPanel {

    private static final double ROOM = 1.12;
    private static final double LEAST = 1;
    private static final BasicStroke DASHED =
            new BasicStroke(1.2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {6, 4}, 0);

    private final BlowBackResult answer;
    private final Function<String, HouseStyle.Look> looks;
    private final Words words;

    /**
     * @param answer where they stand
     * @param looks how a surface is drawn, by its name
     * @param words the sentences
     */
    StandingPanel(BlowBackResult answer, Function<String, HouseStyle.Look> looks, Words words) {
        this.answer = answer;
        this.looks = looks;
        this.words = words;
    }

    /** Empty where no surface's place in the air is known. */
    Optional<XYPlot> plot(NumberAxis across) {
        List<Curves.Curve> curves = new ArrayList<>();
        double least = 0;
        double most = LEAST;
        for (Row row : rows()) {
            List<double[]> points = row.overSpeed().stream()
                    .map(point -> new double[] {point.speed(), fallsShort(row, point.angle())})
                    .toList();
            Optional<Curves.Spot> spot = spot(row);
            curves.add(new Curves.Curve(name(row), looks.apply(row.surface()), points, spot));
            for (double[] point : points) {
                least = Math.min(least, point[1]);
                most = Math.max(most, point[1]);
            }
            most = Math.max(most, spot.map(Curves.Spot::high).orElse(0.0));
        }
        if (curves.isEmpty()) {
            return Optional.empty();
        }
        String axis = words.say("chart.fly.stand.axis");
        XYPlot plot =
                Curves.plot(across, HouseStyle.axis(axis, Math.min(ROOM * least, -most / 10), ROOM * most, 5), curves);
        plot.addRangeMarker(programmed());
        return Optional.of(plot);
    }

    private ValueMarker programmed() {
        ValueMarker marker = new ValueMarker(0, HouseStyle.INK, DASHED);
        marker.setLabel(words.say("chart.fly.stand.programmed"));
        marker.setLabelFont(HouseStyle.SMALL);
        marker.setLabelPaint(HouseStyle.QUIET_INK);
        marker.setLabelBackgroundColor(HouseStyle.GROUND);
        marker.setLabelAnchor(RectangleAnchor.BOTTOM_RIGHT);
        marker.setLabelTextAnchor(TextAnchor.TOP_RIGHT);
        return marker;
    }

    /** One a surface: as the set-up alone leaves it, else with a stick. */
    private List<Row> rows() {
        Set<String> drawn = new HashSet<>();
        return answer.telling().stream()
                .filter(row -> row.overSpeed().size() > 1 && drawn.add(row.surface()))
                .toList();
    }

    /** The angle is not broken from its direction. */
    private String name(Row row) {
        String size = String.format(Locale.ROOT, "%.0f", Math.abs(Math.toDegrees(row.told()))) + "\u00b0";
        String told = words.say(row.told() > 0 ? "row.down" : "row.up", size).replace(' ', '\u00a0');
        return words.say("chart.fly.stand.from", row.surface(), told);
    }

    /** Degrees, positive towards neutral. */
    private static double fallsShort(Row row, double angle) {
        return Math.toDegrees(row.told() - angle) * Math.signum(row.told());
    }

    private Optional<Curves.Spot> spot(Row row) {
        return row.at(answer.comeIn()).map(point -> {
            double here = fallsShort(row, point.angle());
            return new Curves.Spot(
                    point.speed(), here, here, fallsShort(row, point.perhaps().orElse(point.angle())));
        });
    }
}
