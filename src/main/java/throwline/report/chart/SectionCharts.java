package throwline.report.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.jfree.chart.plot.XYPlot;
import throwline.report.ReportFile;
import throwline.section.PolarRun;
import throwline.study.SectionFamily;
import throwline.study.SectionSweep;
import throwline.words.Words;

/** Lift, drag and moment of a section over angle of attack, at several Reynolds numbers and deflections. */
public final class SectionCharts {

    private static final int HEIGHT = 560;
    private static final double LOWEST = -20;
    private static final double HIGHEST = 25;

    /** The drag axis reaches at least so far, and over so many times the largest drag at no angle of attack. */
    private static final double LEAST_DRAG_AXIS = 0.16;

    private static final double DRAG_AXIS_OVER_LEVEL = 1.8;

    /** A run this near in ln Re belongs to a curve. */
    private static final double SAME_SPEED = 0.08;

    private final Words words;

    /** Charts with these words. */
    public SectionCharts(Words words) {
        this.words = words;
    }

    /** What is drawn over the angle. */
    private record Figure(
            String name,
            double low,
            double high,
            ToDoubleFunction<SectionSweep.Point> value,
            ToDoubleFunction<PolarRun.Point> measured) {}

    /** All charts, each as SVG and as PNG. */
    public List<ReportFile> draw(SectionFamily family) {
        return PictureFiles.ofReady(pictures(family));
    }

    List<Picture> pictures(SectionFamily family) {
        List<Picture> pictures = new ArrayList<>();
        for (Figure figure : figures(family)) {
            pictures.add(picture(family, family.byReynolds(), figure, "reynolds", SectionCharts::byReynolds));
            pictures.add(picture(family, family.byDeflection(), figure, "deflection", SectionCharts::byDeflection));
        }
        return pictures;
    }

    private static List<Figure> figures(SectionFamily family) {
        double most = Stream.concat(family.byReynolds().stream(), family.byDeflection().stream())
                .mapToDouble(SectionSweep::maxLift)
                .max()
                .orElse(1);
        return List.of(
                new Figure("lift", -1.5, 1.1 * most, SectionSweep.Point::lift, PolarRun.Point::lift),
                new Figure("drag", 0, mostDrag(family), SectionSweep.Point::drag, PolarRun.Point::drag),
                new Figure("moment", -0.4, 0.2, SectionSweep.Point::moment, PolarRun.Point::moment));
    }

    private static double mostDrag(SectionFamily family) {
        double level = Stream.concat(family.byReynolds().stream(), family.byDeflection().stream())
                .flatMap(sweep -> sweep.points().stream())
                .filter(point -> point.angle() == 0)
                .mapToDouble(SectionSweep.Point::drag)
                .max()
                .orElse(0);
        return Math.max(LEAST_DRAG_AXIS, DRAG_AXIS_OVER_LEVEL * level);
    }

    private static String byReynolds(SectionSweep sweep) {
        return String.format(Locale.ROOT, "Re %,.0f", sweep.reynolds()).replace(',', ' ');
    }

    private static String byDeflection(SectionSweep sweep) {
        String degrees = String.format(Locale.ROOT, "%+.0f\u00b0", Math.toDegrees(sweep.flap()));
        return degrees.substring(1).equals("0\u00b0") ? "0\u00b0" : degrees;
    }

    private Picture picture(
            SectionFamily family,
            List<SectionSweep> sweeps,
            Figure figure,
            String over,
            Function<SectionSweep, String> name) {
        List<Curves.Curve> curves = new ArrayList<>();
        List<List<double[]>> measured = new ArrayList<>();
        for (int i = 0; i < sweeps.size(); i++) {
            SectionSweep sweep = sweeps.get(i);
            curves.add(new Curves.Curve(name.apply(sweep), HouseStyle.look(i), drawn(sweep, figure), Optional.empty()));
            measured.add(measured(family, sweep, figure));
        }
        XYPlot plot = Curves.plot(
                HouseStyle.axis(words.say("chart.section.angle"), LOWEST, HIGHEST, 9),
                HouseStyle.axis(words.say("chart.section." + figure.name + ".axis"), figure.low, figure.high, 8),
                curves);
        Curves.measured(plot, curves, measured);
        String title = words.say(
                "chart.section." + figure.name + ".title", family.airfoil().name());
        SectionSweep first = sweeps.get(0);
        List<String> holdsFor = List.of(words.say(
                "chart.section.over." + over, over.equals("reynolds") ? byDeflection(first) : byReynolds(first)));
        return new Picture(
                "section-" + figure.name + "-by-" + over,
                title,
                HouseStyle.WIDTH,
                HEIGHT,
                HouseStyle.chart(plot, title, holdsFor, words.say("chart.section.proof")));
    }

    private static List<double[]> drawn(SectionSweep sweep, Figure figure) {
        return sweep.points().stream()
                .map(point -> new double[] {Math.toDegrees(point.angle()), figure.value.applyAsDouble(point)})
                .filter(xy -> xy[0] >= LOWEST && xy[0] <= HIGHEST)
                .filter(xy -> xy[1] >= figure.low && xy[1] <= figure.high)
                .toList();
    }

    private static List<double[]> measured(SectionFamily family, SectionSweep sweep, Figure figure) {
        return family.airfoil().runs().stream()
                .filter(run -> run.kind() != PolarRun.Kind.LIFT_DOWN
                        && Math.abs(run.deflection() - sweep.flap()) < 1e-6
                        && Math.abs(Math.log(run.reynolds() / sweep.reynolds())) < SAME_SPEED)
                .flatMap(run -> run.points().stream())
                .map(point -> new double[] {Math.toDegrees(point.alpha()), figure.measured.applyAsDouble(point)})
                .filter(xy -> xy[1] >= figure.low && xy[1] <= figure.high && xy[0] <= HIGHEST)
                .toList();
    }
}
