package throwline.report.chart;

import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
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
     * The charts of one pack, drawn on all processors: no two charts share anything that changes.
     *
     * @param comparison the result
     * @param pack which pack
     */
    public List<ReportFile> draw(Comparison comparison, PackResult pack) {
        Drawing.requireFont();
        return pictures(comparison, pack).parallelStream()
                .flatMap(picture -> files(picture.get()))
                .toList();
    }

    /**
     * The model from above.
     *
     * @param model the aeroplane
     * @param assumed paths of values that the model file did not give
     * @param display in which units
     */
    public List<ReportFile> plan(Model model, Set<String> assumed, Display display) {
        Drawing.requireFont();
        return files(new PlanChart(model, assumed, new QuantityPrinter(display), words).draw())
                .toList();
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
                () -> new DragLiftChart(question).draw());
    }

    private static Stream<ReportFile> files(Picture picture) {
        Drawing drawing = new Drawing(picture);
        return Stream.of(
                new ReportFile(picture.name() + ".svg", drawing.svg()),
                new ReportFile(picture.name() + ".png", drawing.png()));
    }
}
