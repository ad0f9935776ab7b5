package throwline.report.chart;

import java.util.List;
import java.util.Set;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleInsets;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.units.Dimension;
import throwline.units.QuantityPrinter;
import throwline.words.Words;

/** The model from above, to scale, with what was typed in: the place where typing mistakes show. */
final class PlanChart {

    private static final int HEADER = 96;

    private final Model model;
    private final Set<String> assumed;
    private final QuantityPrinter printer;
    private final Words words;

    /**
     * A chart.
     *
     * @param model the aeroplane
     * @param assumed paths of values that the model file did not give
     * @param printer in the units that the person reads
     * @param words the sentences
     */
    PlanChart(Model model, Set<String> assumed, QuantityPrinter printer, Words words) {
        this.model = model;
        this.assumed = Set.copyOf(assumed);
        this.printer = printer;
        this.words = words;
    }

    Picture draw() {
        PlanView view = new PlanView(model, assumed, printer, words);
        XYPlot plot = new XYPlot();
        HouseStyle.dress(plot);
        plot.setDomainAxis(hidden());
        plot.setRangeAxis(hidden());
        plot.setDomainGridlinesVisible(false);
        plot.setRangeGridlinesVisible(false);
        plot.setInsets(RectangleInsets.ZERO_INSETS);
        plot.addAnnotation(view, false);
        String title = words.say("chart.plan.title", model.name());
        return new Picture(
                "plan",
                title,
                HouseStyle.WIDTH,
                HEADER + view.height(),
                HouseStyle.chart(plot, title, List.of(figures()), words.say("chart.plan.proof")));
    }

    private static NumberAxis hidden() {
        NumberAxis axis = HouseStyle.axis("", 0, 1, 1);
        axis.setVisible(false);
        return axis;
    }

    private String figures() {
        double area = model.wing().area();
        double lightest = model.packs().stream().mapToDouble(Pack::mass).min().orElseThrow();
        double heaviest = model.packs().stream().mapToDouble(Pack::mass).max().orElseThrow();
        return words.say(
                lightest == heaviest ? "chart.plan.figure" : "chart.plan.figures",
                printer.print(model.wing().span(), Dimension.LENGTH),
                printer.print(area, Dimension.AREA),
                printer.print(model.wing().meanAerodynamicChord(), Dimension.LENGTH),
                printer.print(lightest / area, Dimension.WING_LOADING),
                printer.print(heaviest / area, Dimension.WING_LOADING));
    }
}
