package throwline.report.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import throwline.report.ReportFile;
import throwline.section.Airfoil;
import throwline.section.PolarRun;
import throwline.study.SectionFamily;
import throwline.study.SectionFlow;
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
    private final FlowCharts air;

    /** Charts with these words. */
    public SectionCharts(Words words) {
        this.words = words;
        this.air = new FlowCharts(words);
    }

    /** What is drawn over the angle. */
    private record Figure(
            String name,
            double low,
            double high,
            ToDoubleFunction<SectionSweep.Point> value,
            ToDoubleFunction<PolarRun.Point> measured) {}

    /**
     * All charts as files.
     *
     * @param family curves
     * @param flows air along the outline at the Reynolds number asked for; none where not known
     * @param formats of the files
     */
    public List<ReportFile> draw(SectionFamily family, List<SectionFlow> flows, PictureFormats formats) {
        List<Picture> pictures = pictures(family);
        air.picture(
                        "section-air",
                        family.airfoil().name(),
                        family.byDeflection().get(0).reynolds(),
                        family.byReynolds().get(0).flap(),
                        flows)
                .ifPresent(pictures::add);
        return PictureFiles.ofReady(pictures, formats);
    }

    List<Picture> pictures(SectionFamily family) {
        List<Picture> pictures = new ArrayList<>();
        for (Figure figure : figures(family)) {
            pictures.add(picture(family, family.byReynolds(), figure, "reynolds", SectionCharts::byReynolds));
            pictures.add(picture(family, family.byDeflection(), figure, "deflection", this::byDeflection));
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
        return "Re " + FlowCharts.number(sweep.reynolds());
    }

    private String byDeflection(SectionSweep sweep) {
        return air.angle(sweep.flap());
    }

    private Picture picture(
            SectionFamily family,
            List<SectionSweep> sweeps,
            Figure figure,
            String over,
            Function<SectionSweep, String> name) {
        List<Curve> curves = new ArrayList<>();
        List<Item> measured = new ArrayList<>();
        for (SectionSweep sweep : sweeps) {
            Curve curve = new Curve(name.apply(sweep), ChartStyle.look(curves.size()), drawn(sweep, figure));
            curves.add(curve);
            measured.addAll(curve.marks(measured(family, sweep, figure)));
        }
        SectionSweep first = sweeps.get(0);
        String what = over.equals("reynolds") ? byDeflection(first) : byReynolds(first);
        String key = "chart.section." + figure.name;
        measured.addAll(Curve.all(curves));
        return Picture.ofCurves(
                "section-" + figure.name + "-by-" + over,
                new Caption(
                        words.say(key + ".title", family.airfoil().name()),
                        List.of(words.say("chart.section.over." + over, what)
                                + " "
                                + words.say("chart.section.rests." + rests(family.airfoil()))),
                        words.say("chart.section.proof")),
                HEIGHT,
                Axis.of(words.say("chart.section.angle"), LOWEST, HIGHEST, 9),
                Panel.graph(1, Axis.of(words.say(key + ".axis"), figure.low, figure.high, 8), measured));
    }

    private static String rests(Airfoil airfoil) {
        return airfoil.likeness()
                .map(like -> like.computed() ? "computed" : "likeness")
                .orElse("measured");
    }

    private static List<Place> drawn(SectionSweep sweep, Figure figure) {
        return sweep.points().stream()
                .map(point -> Place.of(Math.toDegrees(point.angle()), figure.value.applyAsDouble(point)))
                .filter(place -> place.x() >= LOWEST && place.x() <= HIGHEST)
                .filter(place -> place.y() >= figure.low && place.y() <= figure.high)
                .toList();
    }

    private static List<Place> measured(SectionFamily family, SectionSweep sweep, Figure figure) {
        return family.airfoil().runs().stream()
                .filter(run -> family.airfoil().likeness().isEmpty()
                        && run.kind() != PolarRun.Kind.LIFT_DOWN
                        && Math.abs(run.deflection() - sweep.flap()) < 1e-6
                        && Math.abs(Math.log(run.reynolds() / sweep.reynolds())) < SAME_SPEED)
                .flatMap(run -> run.points().stream())
                .map(point -> Place.of(Math.toDegrees(point.alpha()), figure.measured.applyAsDouble(point)))
                .filter(place -> place.y() >= figure.low && place.y() <= figure.high && place.x() <= HIGHEST)
                .toList();
    }
}
