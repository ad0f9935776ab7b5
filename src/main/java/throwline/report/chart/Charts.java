package throwline.report.chart;

import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import throwline.model.Model;
import throwline.report.ReportFile;
import throwline.study.Comparison;
import throwline.study.Comparison.PackResult;
import throwline.units.Display;
import throwline.units.QuantityPrinter;
import throwline.units.Unit;
import throwline.words.Words;

/** All charts of a comparison as files: each as SVG and as PNG. */
public final class Charts {

    private final Words words;
    private final Unit besideSpeed;

    /** Charts with these words; kilometres an hour stand beside metres a second. */
    public Charts(Words words) {
        this(words, Unit.KILOMETRE_PER_HOUR);
    }

    /**
     * Charts with these words.
     *
     * @param words the sentences
     * @param besideSpeed what stands beside a speed in m/s
     */
    public Charts(Words words, Unit besideSpeed) {
        this.words = words;
        this.besideSpeed = besideSpeed;
    }

    /**
     * Loads what drawing needs, which takes longer than to draw: for a thread beside the calculation.
     */
    public static void prepare() {
        PictureFiles.of(List.of(WarmUp::picture));
    }

    /**
     * The charts of one pack.
     *
     * @param comparison the result
     * @param pack which pack
     */
    public List<ReportFile> draw(Comparison comparison, PackResult pack) {
        return PictureFiles.of(pictures(comparison, pack));
    }

    /**
     * The model from above.
     *
     * @param model the aeroplane
     * @param assumed paths of values that the model file did not give
     * @param display in which units
     */
    public List<ReportFile> plan(Model model, Set<String> assumed, Display display) {
        return PictureFiles.of(List.of(new PlanChart(model, assumed, new QuantityPrinter(display), words)::draw));
    }

    private static Picture landing(ChartQuestion question) {
        List<LandingChart.Entry> entries = question.setUps().stream()
                .map(result -> new LandingChart.Entry(
                        result.setUp().name(),
                        result.field().stillAir(),
                        result.field().landing()))
                .toList();
        return new LandingChart(question.model().field(), entries, question.words())
                .draw(question.holdsFor("chart.landing.for"), question.proof());
    }

    /** The charts, each drawn when it is asked for. */
    List<Supplier<Picture>> pictures(Comparison comparison, PackResult pack) {
        ChartQuestion question = new ChartQuestion(comparison.model(), pack, besideSpeed, words);
        return List.of(
                () -> new DescentChart(question).draw(),
                () -> new SpeedsChart(question).draw(),
                () -> new ElevatorChart(question).draw(),
                () -> new SteepnessChart(question).draw(),
                () -> new LoadChart(question).draw(),
                () -> new DragLiftChart(question).draw(),
                () -> landing(question));
    }
}
