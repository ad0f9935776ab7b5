package throwline.report.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import throwline.report.Headlines;
import throwline.study.FlyResult;
import throwline.study.Headline;
import throwline.study.ServoAnswer.LoadPoint;
import throwline.study.ServoAnswer.SurfaceLoad;
import throwline.words.Words;

/**
 * What each servo has to hold over airspeed in one set-up: as a share of its rating, with the half that a servo should be
 * asked for as a line; as torque where no rating is known. Below, where that is known, where the surfaces then stand.
 */
final class ServoLoadChart {

    private static final int HEIGHT = 500;
    /** Of the panel below it that shows where the surfaces stand. */
    private static final int STANDING = 300;

    private static final double GAP = 18;
    private static final double ROOM = 1.08;
    private static final int PARTS = 8;
    private static final double PER_CENT = 100;
    /** Share of a rating that a servo should be asked for (common practice). */
    private static final double HALF = 50;

    private final FlyResult result;
    private final Words words;
    private final boolean rated;

    ServoLoadChart(FlyResult result, Words words) {
        this.result = result;
        this.words = words;
        rated = result.glance().servos().loads().stream()
                .anyMatch(load -> load.rating().isPresent());
    }

    /** Empty where no load was found. */
    Optional<Picture> draw() {
        List<Curves.Curve> curves = new ArrayList<>();
        List<String> left = new ArrayList<>();
        double slowest = Double.POSITIVE_INFINITY;
        double fastest = 0;
        double most = 0;
        for (SurfaceLoad load : result.glance().servos().loads()) {
            if (rated && load.rating().isEmpty()) {
                left.add(load.surface());
                continue;
            }
            List<double[]> points = points(load);
            if (points.size() > 1) {
                curves.add(new Curves.Curve(load.surface(), HouseStyle.look(curves.size()), points, spot(load)));
            }
            for (double[] point : points) {
                slowest = Math.min(slowest, point[0]);
                fastest = Math.max(fastest, point[0]);
                most = Math.max(most, point[1]);
            }
        }
        return curves.isEmpty() ? Optional.empty() : Optional.of(picture(curves, left, slowest, fastest, most));
    }

    private Picture picture(List<Curves.Curve> curves, List<String> left, double slowest, double fastest, double most) {
        String key = rated ? "chart.fly.servo-load.share" : "chart.fly.servo-load.torque";
        double top = ROOM * Math.max(most, rated ? HALF : 0);
        NumberAxis across = HouseStyle.axis(words.say("chart.axis.airspeed"), 0.95 * slowest, fastest, 9);
        XYPlot plot = Curves.plot(across, HouseStyle.axis(words.say(key), 0, top, 8), curves);
        if (rated) {
            half(plot);
        }
        Optional<XYPlot> standing =
                new StandingPanel(result.standing(), name -> look(curves, name), words).plot(across);
        List<String> holdsFor = new ArrayList<>();
        holdsFor.add(words.say("chart.fly.servo-load.for"));
        standing.ifPresent(panel -> holdsFor.add(words.say("chart.fly.stand.for")));
        if (!left.isEmpty()) {
            holdsFor.add(words.say("chart.fly.servo-load.left", String.join(", ", left)));
        }
        holdsFor.add(words.say(
                "chart.fly.servo-load.of",
                result.model().name(),
                result.pack().name(),
                result.glance().setUp().name()));
        String title = words.say("chart.fly.servo-load.title");
        return new Picture(
                "servo-load",
                title,
                HouseStyle.WIDTH,
                HEIGHT + standing.map(panel -> STANDING).orElse(0),
                HouseStyle.chart(
                        standing.map(panel -> both(across, plot, panel)).orElse(plot),
                        title,
                        holdsFor,
                        words.say("chart.proof.assumed")));
    }

    /** As the load of the same surface is drawn; in a look of its own where no load is drawn. */
    private static HouseStyle.Look look(List<Curves.Curve> curves, String surface) {
        return curves.stream()
                .filter(curve -> curve.name().equals(surface))
                .map(Curves.Curve::look)
                .findFirst()
                .orElseGet(() -> HouseStyle.look(curves.size()));
    }

    /** The loads above, where the surfaces stand below, over the same speeds. */
    private static XYPlot both(NumberAxis across, XYPlot loads, XYPlot standing) {
        CombinedDomainXYPlot both = new CombinedDomainXYPlot(across);
        both.setGap(GAP);
        both.setInsets(loads.getInsets());
        for (XYPlot panel : List.of(loads, standing)) {
            panel.setInsets(RectangleInsets.ZERO_INSETS);
        }
        both.add(loads, 4);
        both.add(standing, 3);
        HouseStyle.dress(both);
        return both;
    }

    private double shown(SurfaceLoad load, double torque) {
        return rated ? PER_CENT * torque / load.rating().orElse(Double.POSITIVE_INFINITY) : torque;
    }

    /** Between the speeds looked at, torque over the square of the speed runs straight. */
    private List<double[]> points(SurfaceLoad load) {
        List<double[]> points = new ArrayList<>();
        Optional<LoadPoint> before = Optional.empty();
        for (LoadPoint point : load.overSpeed()) {
            if (point.torque().isEmpty()) {
                continue;
            }
            for (int k = 1; k < PARTS && before.isPresent(); k++) {
                points.add(between(load, before.get(), point, (double) k / PARTS));
            }
            points.add(new double[] {point.speed(), shown(load, point.torque().get())});
            before = Optional.of(point);
        }
        return points;
    }

    private double[] between(SurfaceLoad load, LoadPoint slow, LoadPoint fast, double part) {
        double speed = slow.speed() + part * (fast.speed() - slow.speed());
        double low = perSquare(slow);
        double torque = (low + part * (perSquare(fast) - low)) * speed * speed;
        return new double[] {speed, shown(load, torque)};
    }

    private static double perSquare(LoadPoint point) {
        return point.torque().orElse(0.0) / (point.speed() * point.speed());
    }

    private Optional<Curves.Spot> spot(SurfaceLoad load) {
        return Headlines.known(result.glance().approachSpeed())
                .flatMap(speed -> Headlines.known(load.comingIn()).map(t -> spot(load, speed, t)));
    }

    private Curves.Spot spot(SurfaceLoad load, Headline.Known speed, Headline.Known torque) {
        return new Curves.Spot(
                speed.value(), shown(load, torque.value()), shown(load, torque.low()), shown(load, torque.high()));
    }

    private void half(XYPlot plot) {
        ValueMarker marker = new ValueMarker(HALF, HouseStyle.INK, HouseStyle.THIN);
        marker.setLabel(words.say("chart.fly.servo-load.half"));
        marker.setLabelFont(HouseStyle.SMALL);
        marker.setLabelPaint(HouseStyle.QUIET_INK);
        marker.setLabelBackgroundColor(HouseStyle.GROUND);
        marker.setLabelAnchor(RectangleAnchor.TOP_RIGHT);
        marker.setLabelTextAnchor(TextAnchor.BOTTOM_RIGHT);
        plot.addRangeMarker(marker);
    }
}
