package throwline.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import throwline.model.AirfoilName;
import throwline.model.Hinge;
import throwline.section.Airfoil;
import throwline.section.AirfoilLibrary;
import throwline.section.Basis;
import throwline.section.CurveReading;
import throwline.section.PolarRun;
import throwline.section.PolarRun.Point;
import throwline.section.SectionAerodynamics;
import throwline.section.SectionCurve;
import throwline.section.SectionPlace;
import throwline.section.SurfaceState;

/**
 * An airfoil that was measured with its surface moved, predicted from its polars at zero by the method alone. Head: {@code
 * airfoil}, {@code surface chord}. Rows name the run by its Reynolds number.
 */
final class SurfaceByMethod implements CaseKind {

    private static final double SAME_SPEED = 0.01;

    /** Drag is compared up to this share of maximum lift. */
    private static final double TOP = 0.95;

    private final SectionAerodynamics sections;
    private final AirfoilLibrary library;

    SurfaceByMethod(SectionAerodynamics sections, AirfoilLibrary library) {
        this.sections = sections;
        this.library = library;
    }

    @Override
    public CaseResult run(CaseFile file) throws UnreadableCase {
        List<Check> checks = new ArrayList<>();
        List<Pair> pairs = new ArrayList<>();
        SectionTraces traces = new SectionTraces();
        for (CaseRow row : file.rows()) {
            Airfoil airfoil = library.find(new AirfoilName(row.text("airfoil")))
                    .orElseThrow(() -> row.wrong("airfoil", "case.airfoil"));
            double reynolds = row.number("Reynolds number");
            PolarRun run = airfoil.runs().stream()
                    .filter(r -> r.deflection() != 0 && Math.abs(Math.log(r.reynolds() / reynolds)) < SAME_SPEED)
                    .findFirst()
                    .orElseThrow(() -> row.wrong("Reynolds number", "case.figure"));
            MethodRun one = new MethodRun(airfoil.name(), run, byMethod(airfoil, run, row.number("surface chord")));
            checks.add(Check.of(row, one.read(row)));
            if (row.text("quantity").equals("maximum lift")) {
                one.count(pairs);
                traces.add(run, one.curve(), true);
            }
        }
        return CaseResult.of(file, checks, pairs, traces.traces(file.name()));
    }

    private SectionCurve byMethod(Airfoil airfoil, PolarRun run, double chord) {
        Airfoil clean = new Airfoil(
                airfoil.name(),
                airfoil.description(),
                airfoil.thickness(),
                airfoil.camber(),
                airfoil.nominalMoment(),
                airfoil.runs().stream().filter(r -> r.deflection() == 0).toList());
        SurfaceState surface = new SurfaceState(run.deflection(), chord, Hinge.TAPED);
        return sections.curve(SectionPlace.of(clean), surface, run.reynolds());
    }

    /** MethodRun run and what the method says of it. */
    private record MethodRun(String airfoil, PolarRun run, SectionCurve curve) {

        double read(CaseRow row) throws UnreadableCase {
            return switch (row.text("quantity")) {
                case "root mean square error of lift" -> liftError();
                case "maximum lift" -> curve.maxLift();
                case "root mean square error of drag" -> dragError(row.number("from lift", -2));
                default -> throw row.wrong("quantity", "case.quantity");
            };
        }

        private double liftError() {
            return Math.sqrt(run.points().stream()
                    .mapToDouble(p -> Math.pow(curve.lift(p.alpha()) - p.lift(), 2))
                    .average()
                    .orElse(Double.NaN));
        }

        private double dragError(double from) {
            return Math.sqrt(compared(from)
                    .mapToDouble(p -> Math.pow(CurveReading.dragAt(curve, p.lift()) / p.drag() - 1, 2))
                    .average()
                    .orElse(Double.NaN));
        }

        private Stream<Point> compared(double from) {
            double top = TOP * highest();
            return run.points().stream().filter(p -> p.drag() > 0 && p.lift() > from && p.lift() < top);
        }

        private double highest() {
            return run.points().stream().mapToDouble(Point::lift).max().orElse(Double.NaN);
        }

        void count(List<Pair> pairs) {
            String where = String.format(Locale.ROOT, "%s moved, Re %.0f", airfoil, run.reynolds());
            pairs.add(
                    new Pair(Figure.SECTION_MAX_LIFT, Basis.METHOD.name(), airfoil, where, highest(), curve.maxLift()));
            compared(-2)
                    .forEach(p -> pairs.add(new Pair(
                            Figure.SECTION_DRAG,
                            Basis.METHOD.name(),
                            airfoil,
                            where + String.format(Locale.ROOT, ", lift %.2f", p.lift()),
                            p.drag(),
                            CurveReading.dragAt(curve, p.lift()))));
        }
    }
}
