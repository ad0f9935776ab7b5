package throwline.report.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Supplier;
import throwline.model.Model;
import throwline.report.ReportFile;
import throwline.report.document.Figures;
import throwline.report.document.PagePicture;
import throwline.section.Airfoil;
import throwline.section.AirfoilLibrary;
import throwline.study.Comparison;
import throwline.study.Comparison.PackResult;
import throwline.study.FlightQuantity;
import throwline.units.Display;
import throwline.units.QuantityPrinter;
import throwline.units.Unit;
import throwline.words.Words;

/** Charts of a comparison and of a model, as files and for pages. */
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
        PictureFiles.of(List.of(WarmUp::picture), PictureFormats.PNG_AND_SVG);
    }

    /**
     * The charts of one pack.
     *
     * @param comparison the result
     * @param pack which pack
     * @param formats of the files
     */
    public List<ReportFile> draw(Comparison comparison, PackResult pack, PictureFormats formats) {
        return PictureFiles.of(pictures(comparison, pack), formats);
    }

    /**
     * The model from above.
     *
     * @param model the aeroplane
     * @param assumed paths of values that the model file did not give
     * @param display in which units
     * @param formats of the files
     */
    public List<ReportFile> plan(Model model, Set<String> assumed, Display display, PictureFormats formats) {
        return PictureFiles.of(
                List.of(new PlanChart(model, assumed, new QuantityPrinter(display), words)::draw), formats);
    }

    /**
     * The charts of one pack for a page, in their order. A page must stay small: those with the motor running are of the first
     * pack alone, and thrust over speed stands on the page of one set-up.
     *
     * @param comparison the result
     * @param pack which pack
     * @param prefix what the names inside a picture begin with, so that they are its own on the page
     */
    public List<PagePicture> onPage(Comparison comparison, PackResult pack, String prefix) {
        ChartSource source = new ChartSource(comparison.model(), pack, besideSpeed, words, Layout.NARROW);
        List<Supplier<Picture>> pictures = new ArrayList<>(gliding(source));
        if (pack.equals(comparison.packs().get(0))) {
            pictures.addAll(climbing(source));
        }
        return PagePictures.of(pictures, prefix, words);
    }

    /**
     * A picture of every set-up with one pack for a page.
     *
     * @param model the aeroplane
     * @param pack its set-ups with one pack
     * @param airfoils where the model's airfoils are found
     * @param figures numbers as the page shows them
     * @param prefix what the names inside a picture begin with, so that they are its own on the page
     */
    public List<PagePicture> setUps(
            Model model, PackResult pack, AirfoilLibrary airfoils, Figures figures, String prefix) {
        ChartSource source = new ChartSource(model, pack, besideSpeed, words, Layout.NARROW);
        Map<String, Airfoil> found = new TreeMap<>();
        model.wing()
                .sections()
                .forEach(section -> airfoils.find(section.airfoil())
                        .ifPresent(airfoil -> found.put(section.airfoil().text(), airfoil)));
        return PagePictures.of(SetUpPicture.all(source, found, figures), prefix, words);
    }

    /**
     * What changes while a surface moves: the first set-up from above with the load along its span, the way down from the
     * side, and where the landing is known, that.
     *
     * @param model the aeroplane
     * @param pack the set-up, and those it is compared with
     * @param figures numbers as the screen shows them
     */
    public List<ScreenPicture> atHand(Model model, PackResult pack, Figures figures) {
        ChartSource source = new ChartSource(model, pack, besideSpeed, words, Layout.NARROW);
        List<Supplier<Picture>> pictures =
                new ArrayList<>(SetUpPicture.all(source, Map.of(), figures).subList(0, 1));
        pictures.add(() -> new DescentChart(source).draw());
        if (source.setUps().get(0).field().stillAir().isPresent()) {
            pictures.add(() -> landing(source));
        }
        return screen(pictures);
    }

    /** The charts of one pack for a window, in their order. */
    public List<ScreenPicture> onScreen(Comparison comparison, PackResult pack) {
        return screen(pictures(new ChartSource(comparison.model(), pack, besideSpeed, words, Layout.NARROW)));
    }

    private List<ScreenPicture> screen(List<Supplier<Picture>> pictures) {
        return pictures.stream()
                .map(picture -> ScreenPicture.of(picture.get(), words))
                .toList();
    }

    private static Picture landing(ChartSource source) {
        List<LandingChart.Entry> entries = source.setUps().stream()
                .map(result -> new LandingChart.Entry(
                        result.setUp().name(),
                        result.field().stillAir(),
                        result.number(FlightQuantity.LANDING_DISTANCE)))
                .toList();
        return new LandingChart(source.layout(), source.model().field(), entries, source.words())
                .draw(source.caption("chart.landing.title", "chart.landing.for"));
    }

    /** The charts, each drawn when it is asked for. */
    List<Supplier<Picture>> pictures(Comparison comparison, PackResult pack) {
        return pictures(new ChartSource(comparison.model(), pack, besideSpeed, words, Layout.WIDE));
    }

    private static List<Supplier<Picture>> pictures(ChartSource source) {
        List<Supplier<Picture>> pictures = new ArrayList<>(gliding(source));
        pictures.addAll(climbing(source));
        if (DragThrustChart.isDrawn(source)) {
            pictures.add(() -> new DragThrustChart(source).draw());
        }
        return pictures;
    }

    private static List<Supplier<Picture>> gliding(ChartSource source) {
        return List.of(
                () -> new DescentChart(source).draw(),
                () -> new SpeedsChart(source).draw(),
                () -> new ElevatorChart(source).draw(),
                () -> new SteepnessChart(source).draw(),
                () -> new LoadChart(source).draw(),
                () -> new DragLiftChart(source).draw(),
                () -> landing(source));
    }

    private static List<Supplier<Picture>> climbing(ChartSource source) {
        List<Supplier<Picture>> pictures = new ArrayList<>();
        if (TakeOffChart.isDrawn(source)) {
            pictures.add(() -> new TakeOffChart(source).draw());
        }
        if (GoAroundChart.isDrawn(source)) {
            pictures.add(() -> new GoAroundChart(source).draw());
        }
        return pictures;
    }
}
