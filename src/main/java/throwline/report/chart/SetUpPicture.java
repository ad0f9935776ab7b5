package throwline.report.chart;

import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleInsets;
import throwline.report.document.Figures;
import throwline.section.Airfoil;
import throwline.study.SetUpResult;
import throwline.words.Words;

/** One set-up as a picture: the load along the span, the model from above below it, and a section at each surface. */
final class SetUpPicture {

    /** Title, lines and margins above and below the view, points. */
    private static final int AROUND = 92;

    private final ChartQuestion question;
    private final int index;
    private final Map<String, Airfoil> airfoils;
    private final Figures figures;

    /**
     * A picture.
     *
     * @param question what all pictures of one pack share
     * @param index which set-up
     * @param airfoils by the name in the model
     * @param figures numbers as the page shows them
     */
    SetUpPicture(ChartQuestion question, int index, Map<String, Airfoil> airfoils, Figures figures) {
        this.question = question;
        this.index = index;
        this.airfoils = Map.copyOf(airfoils);
        this.figures = figures;
    }

    Picture draw() {
        Words words = question.words();
        SetUpResult result = question.setUps().get(index);
        SetUpView view = new SetUpView(question, index, most(), airfoils, figures);
        XYPlot plot = new XYPlot();
        HouseStyle.dress(plot);
        plot.setDomainAxis(hidden());
        plot.setRangeAxis(hidden());
        plot.setDomainGridlinesVisible(false);
        plot.setRangeGridlinesVisible(false);
        plot.setInsets(RectangleInsets.ZERO_INSETS);
        plot.addAnnotation(view, false);
        String title = result.setUp().name();
        return new Picture(
                "set-up-" + (index + 1),
                words.say("chart.setup.title", title),
                question.layout().width(),
                AROUND + view.height(),
                HouseStyle.chart(plot, title, question.holdsFor("chart.setup.for"), question.proof()));
    }

    /** The largest lift coefficient that any part can carry in any set-up, so that pictures have one scale. */
    private double most() {
        return question.setUps().stream()
                .flatMap(setUp -> setUp.load().stream())
                .mapToDouble(station -> Math.max(station.lift(), station.limit()))
                .max()
                .orElse(1);
    }

    private static NumberAxis hidden() {
        NumberAxis axis = HouseStyle.axis("", 0, 1, 1);
        axis.setVisible(false);
        return axis;
    }

    /** All set-ups of one pack. */
    static List<Supplier<Picture>> all(ChartQuestion question, Map<String, Airfoil> airfoils, Figures figures) {
        return IntStream.range(0, question.setUps().size())
                .<Supplier<Picture>>mapToObj(i -> () -> new SetUpPicture(question, i, airfoils, figures).draw())
                .toList();
    }
}
