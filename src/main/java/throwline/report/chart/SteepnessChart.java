package throwline.report.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import throwline.report.Headlines;
import throwline.study.SetUpResult;
import throwline.study.SetUpResult.SpeedPoint;
import throwline.words.Words;

/** The descent angle over airspeed, steeper further down, with the speed to come in at marked. */
final class SteepnessChart {

    private static final int HEIGHT = 590;
    /** Speeds are shown up to this multiple of the fastest speed to come in at. */
    private static final double FASTEST = 1.8;
    /** Steeper than this is a dive, not a descent; degrees. */
    private static final double STEEPEST = 45;

    private final ChartQuestion question;

    SteepnessChart(ChartQuestion question) {
        this.question = question;
    }

    Picture draw() {
        Words words = question.words();
        double fastest = FASTEST * fastestApproach();
        List<Curves.Curve> curves = curves(fastest);
        double slowest = Double.POSITIVE_INFINITY;
        double steepest = 1;
        for (Curves.Curve curve : curves) {
            for (double[] point : curve.points()) {
                slowest = Math.min(slowest, point[0]);
                steepest = Math.max(steepest, point[1]);
            }
            steepest = Math.max(
                    steepest,
                    curve.spot().map(spot -> Math.max(spot.low(), spot.high())).orElse(0.0));
        }
        double low = Double.isFinite(slowest) ? Math.floor(slowest) : 0;
        double high = Math.max(low + 1, fastest);
        NumberAxis up = HouseStyle.axis(words.say("chart.axis.angle"), 0, 1.06 * Math.min(STEEPEST, steepest), 9);
        up.setInverted(true);
        XYPlot plot = Curves.plot(HouseStyle.axis(words.say("chart.axis.airspeed"), low, high, 8), up, curves);
        plot.setDomainAxis(1, question.besideAxis(low, high));
        plot.setDomainAxisLocation(0, AxisLocation.BOTTOM_OR_LEFT);
        plot.setDomainAxisLocation(1, AxisLocation.TOP_OR_LEFT);
        String title = words.say("chart.steepness.title");
        return new Picture(
                "steepness",
                title,
                question.layout().width(),
                HEIGHT,
                HouseStyle.chart(plot, title, question.holdsFor("chart.steepness.for"), question.proof()));
    }

    private double fastestApproach() {
        return question.setUps().stream()
                .flatMap(setUp -> Headlines.known(setUp.approachSpeed()).stream())
                .mapToDouble(speed -> speed.value())
                .max()
                .orElse(1);
    }

    private List<Curves.Curve> curves(double fastest) {
        List<Curves.Curve> curves = new ArrayList<>();
        for (int i = 0; i < question.setUps().size(); i++) {
            SetUpResult setUp = question.setUps().get(i);
            List<double[]> points = new ArrayList<>();
            for (SpeedPoint point : setUp.sweep()) {
                double degrees = Math.toDegrees(point.descentAngle());
                if (point.speed() <= fastest && degrees <= STEEPEST) {
                    points.add(new double[] {point.speed(), degrees});
                }
            }
            curves.add(new Curves.Curve(question.name(i), HouseStyle.look(i), points, spot(setUp)));
        }
        return curves;
    }

    private static Optional<Curves.Spot> spot(SetUpResult setUp) {
        return Headlines.known(setUp.approachSpeed())
                .flatMap(speed -> Headlines.known(setUp.descentAngle())
                        .map(angle -> new Curves.Spot(
                                speed.value(),
                                Math.toDegrees(angle.value()),
                                Math.toDegrees(angle.low()),
                                Math.toDegrees(angle.high()))));
    }
}
