package throwline.report.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.plot.XYPlot;
import throwline.report.Headlines;
import throwline.study.Headline;
import throwline.study.SetUpResult;
import throwline.words.Words;

/** Speeds as one ruler: where each set-up stalls and how fast to come in. */
final class SpeedsChart {

    private static final double MARGIN = 0.06;

    private final ChartQuestion question;

    SpeedsChart(ChartQuestion question) {
        this.question = question;
    }

    Picture draw() {
        Words words = question.words();
        List<Rows.Row> rows = rows();
        double slowest = Double.POSITIVE_INFINITY;
        double fastest = 0;
        for (Rows.Row row : rows) {
            for (Rows.Mark mark : row.marks()) {
                slowest = Math.min(slowest, mark.low());
                fastest = Math.max(fastest, mark.high());
            }
        }
        double low = fastest > 0 ? slowest * (1 - MARGIN) : 0;
        double high = fastest > 0 ? fastest * (1 + MARGIN) : 1;
        XYPlot plot = Rows.plot(question.layout(), HouseStyle.axis(words.say("chart.axis.speed"), low, high, 8), rows);
        plot.setInsets(Rows.room(question.layout()));
        plot.setDomainAxis(1, question.besideAxis(low, high));
        plot.setDomainAxisLocation(1, AxisLocation.TOP_OR_LEFT);
        String title = words.say("chart.speeds.title");
        return new Picture(
                "speeds",
                title,
                question.layout().width(),
                236 + Rows.HEIGHT * rows.size(),
                HouseStyle.chart(plot, title, question.holdsFor("chart.speeds.for"), question.proof()));
    }

    private List<Rows.Row> rows() {
        List<Rows.Row> rows = new ArrayList<>();
        for (int i = 0; i < question.setUps().size(); i++) {
            SetUpResult setUp = question.setUps().get(i);
            List<Rows.Mark> marks = new ArrayList<>();
            Headlines.known(setUp.stallSpeed()).ifPresent(v -> marks.add(mark(v, false, "chart.speeds.stalls")));
            Headlines.known(setUp.approachSpeed()).ifPresent(v -> marks.add(mark(v, true, "chart.speeds.comein")));
            rows.add(new Rows.Row(
                    question.name(i),
                    HouseStyle.look(i),
                    marks,
                    question.words().say("chart.none")));
        }
        return rows;
    }

    private Rows.Mark mark(Headline.Known speed, boolean filled, String key) {
        String number = String.format(Locale.ROOT, "%.1f", speed.value());
        return new Rows.Mark(
                speed.value(),
                speed.low(),
                speed.high(),
                filled,
                question.words().say(key, number));
    }
}
