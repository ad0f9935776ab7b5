package throwline.report.chart;

import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.ui.RectangleInsets;
import throwline.study.SetUpResult;
import throwline.study.SetUpResult.LoadStation;
import throwline.words.Words;

/** Load along the span against what each part can carry, one small panel a set-up, all to one scale. */
final class LoadChart {

    private static final int PANEL = 118;
    private static final double HEADROOM = 1.12;

    private final ChartQuestion question;

    LoadChart(ChartQuestion question) {
        this.question = question;
    }

    Picture draw() {
        Words words = question.words();
        double most = 0.1;
        double least = 0;
        double tip = question.model().wing().semiSpan();
        List<LoadPanel> panels = new ArrayList<>();
        for (int i = 0; i < question.setUps().size(); i++) {
            SetUpResult setUp = question.setUps().get(i);
            for (LoadStation station : setUp.load()) {
                most = Math.max(most, Math.max(station.lift(), station.limit()));
                least = Math.min(least, station.lift());
            }
            panels.add(new LoadPanel(setUp, HouseStyle.look(i), question.model().wing(), words, i == 0));
        }
        NumberAxis across = HouseStyle.axis(words.say("chart.axis.span"), -tip, tip, 10);
        CombinedDomainXYPlot plot = new CombinedDomainXYPlot(across);
        plot.setGap(14);
        plot.setInsets(new RectangleInsets(22, LoadPanel.LEFT, 4, LoadPanel.RIGHT));
        for (LoadPanel panel : panels) {
            NumberAxis up = HouseStyle.axis(words.say("chart.axis.sectionlift"), least * HEADROOM, most * HEADROOM, 4);
            up.setLabelFont(HouseStyle.SMALL);
            plot.add(panel.plot(up), 1);
        }
        HouseStyle.dress(plot);
        String title = words.say("chart.load.title");
        return new Picture(
                "load",
                title,
                question.layout().width(),
                198 + (PANEL + 14) * panels.size(),
                HouseStyle.chart(plot, title, question.holdsFor("chart.load.for"), question.proof()));
    }
}
