package throwline.report.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;
import throwline.report.Headlines;
import throwline.study.Headline;
import throwline.words.Words;

/** The way down seen from the side, to scale, with the obstacle; below it where each set-up meets the ground. */
final class DescentChart {

    /** Without an obstacle the way starts here, m. */
    private static final double FROM = 10;
    /** The axis ends beyond the farthest point by this factor, and beyond its band by no more than this one. */
    private static final double BEYOND = 1.08;

    private static final double FARTHEST_BAND = 1.5;

    private final ChartQuestion question;
    private final double height;

    DescentChart(ChartQuestion question) {
        this.question = question;
        double obstacle = question.model().field().obstacle();
        this.height = obstacle > 0 ? obstacle : FROM;
    }

    Picture draw() {
        Words words = question.words();
        boolean obstacle = question.model().field().obstacle() > 0;
        double farthest = farthest();
        List<SideView.Path> paths = new ArrayList<>();
        List<Rows.Row> rows = new ArrayList<>();
        for (int i = 0; i < question.setUps().size(); i++) {
            HouseStyle.Look look = HouseStyle.look(i);
            List<Rows.Mark> marks = new ArrayList<>();
            Headlines.known(question.setUps().get(i).descentAngle())
                    .filter(a -> a.value() > 0)
                    .ifPresent(angle -> {
                        Rows.Mark mark = mark(angle, farthest);
                        marks.add(mark);
                        paths.add(new SideView.Path(look, mark.value(), mark.low(), mark.high()));
                    });
            rows.add(new Rows.Row(question.name(i), look, marks, words.say("chart.none")));
        }
        double behind = -0.04 * farthest;
        NumberAxis across = HouseStyle.axis(
                words.say(obstacle ? "chart.axis.behind" : "chart.axis.ahead", number(height)), behind, farthest, 10);
        CombinedDomainXYPlot plot = new CombinedDomainXYPlot(across);
        plot.setGap(6);
        plot.setInsets(Rows.room(question.layout()));
        SideView view = new SideView(
                question.layout(),
                paths,
                height,
                obstacle,
                question.model().field().length(),
                words);
        int viewHeight = view.heightFor(farthest - behind);
        XYPlot ways = view.plot();
        XYPlot places = Rows.plot(question.layout(), across, rows);
        plot.add(ways, viewHeight);
        plot.add(places, Rows.HEIGHT * rows.size());
        HouseStyle.dress(plot);
        String title = words.say("chart.descent.title");
        return new Picture(
                "descent",
                title,
                question.layout().width(),
                206 + viewHeight + Rows.HEIGHT * rows.size(),
                HouseStyle.chart(
                        plot,
                        title,
                        question.holdsFor(
                                obstacle ? "chart.descent.for.obstacle" : "chart.descent.for.height", number(height)),
                        question.proof()));
    }

    private Rows.Mark mark(Headline.Known angle, double farthest) {
        double value = distance(angle.value());
        double near = distance(angle.high());
        double far = Math.min(farthest, distance(angle.low()));
        String label = question.words()
                .say(
                        "chart.descent.mark",
                        number(Math.toDegrees(angle.value())),
                        whole(value),
                        whole(near),
                        angle.low() > 0 ? whole(distance(angle.low())) : "?");
        return new Rows.Mark(value, near, far, true, label);
    }

    private double farthest() {
        double farthest = 1;
        for (var setUp : question.setUps()) {
            Headline.Known angle = Headlines.known(setUp.descentAngle()).orElse(null);
            if (angle != null && angle.value() > 0) {
                double value = distance(angle.value());
                farthest = Math.max(farthest, Math.min(FARTHEST_BAND * value, distance(angle.low())));
            }
        }
        return BEYOND * farthest;
    }

    private double distance(double angle) {
        return angle > 0 ? height / Math.tan(angle) : Double.POSITIVE_INFINITY;
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, value < 10 && value != Math.rint(value) ? "%.1f" : "%.0f", value);
    }

    private static String whole(double value) {
        return String.format(Locale.ROOT, "%.0f", value);
    }
}
