package throwline.report.chart;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import throwline.study.SetUpResult.SpeedPoint;
import throwline.words.Words;

/** Drag against lift of the whole trimmed model, for the curious. */
final class DragLiftChart {

    private static final int HEIGHT = 590;

    private final ChartQuestion question;

    DragLiftChart(ChartQuestion question) {
        this.question = question;
    }

    Picture draw() {
        Words words = question.words();
        List<Curves.Curve> curves = curves();
        double mostDrag = 0;
        double mostLift = 0;
        double leastLift = 0;
        for (Curves.Curve curve : curves) {
            for (double[] point : curve.points()) {
                mostDrag = Math.max(mostDrag, point[0]);
                mostLift = Math.max(mostLift, point[1]);
                leastLift = Math.min(leastLift, point[1]);
            }
        }
        NumberAxis across = HouseStyle.axis(words.say("chart.axis.drag"), 0, mostDrag > 0 ? 1.04 * mostDrag : 1, 8);
        NumberAxis up =
                HouseStyle.axis(words.say("chart.axis.lift"), 1.06 * leastLift, mostLift > 0 ? 1.06 * mostLift : 1, 8);
        XYPlot plot = Curves.plot(across, up, curves);
        String title = words.say("chart.draglift.title");
        return new Picture(
                "drag-lift",
                title,
                question.layout().width(),
                HEIGHT,
                HouseStyle.chart(plot, title, question.holdsFor("chart.draglift.for"), question.proof()));
    }

    private List<Curves.Curve> curves() {
        List<Curves.Curve> curves = new ArrayList<>();
        for (int i = 0; i < question.setUps().size(); i++) {
            List<double[]> points = new ArrayList<>();
            for (SpeedPoint point : question.setUps().get(i).sweep()) {
                points.add(new double[] {point.drag(), point.lift()});
            }
            Collections.reverse(points);
            curves.add(new Curves.Curve(
                    question.name(i),
                    HouseStyle.look(i),
                    points,
                    question.comingIn(i).map(p -> new Curves.Spot(p.drag(), p.lift(), p.lift(), p.lift()))));
        }
        return curves;
    }
}
