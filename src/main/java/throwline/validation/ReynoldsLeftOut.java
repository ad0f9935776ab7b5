package throwline.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import throwline.model.AirfoilName;
import throwline.section.Airfoil;
import throwline.section.AirfoilLibrary;
import throwline.section.Basis;
import throwline.section.CurveReading;
import throwline.section.PolarRun;
import throwline.section.PolarRun.Kind;
import throwline.section.PolarRun.Point;
import throwline.section.RunFigures;
import throwline.section.SectionAerodynamics;
import throwline.section.SectionCurve;
import throwline.section.SectionPlace;
import throwline.section.SurfaceState;

/**
 * Predicts every measured polar of the library from the same airfoil's other Reynolds numbers. Head: {@code but not}, names
 * of airfoils whose runs are part of another's.
 */
final class ReynoldsLeftOut implements CaseKind {

    /** Runs nearer in ln Re than this were made at one speed. */
    private static final double SAME_SPEED = 0.08;

    /** Drag is compared up to this share of maximum lift. */
    private static final double TOP = 0.95;

    /** Below this Reynolds number bubbles scatter drag. */
    private static final double SLOW = 80_000;

    private static final int FEWEST_SPEEDS = 3;

    private final SectionAerodynamics sections;
    private final AirfoilLibrary library;

    ReynoldsLeftOut(SectionAerodynamics sections, AirfoilLibrary library) {
        this.sections = sections;
        this.library = library;
    }

    @Override
    public CaseResult run(CaseFile file) throws UnreadableCase {
        List<String> without = List.of(file.optional("but not").split(" "));
        List<Found> found = library.names().parallelStream()
                .filter(name -> !without.contains(name))
                .flatMap(name -> library.find(new AirfoilName(name)).stream())
                .map(this::of)
                .toList();
        List<Pair> pairs = found.stream().flatMap(f -> f.pairs().stream()).toList();
        List<CaseTrace> traces =
                found.stream().flatMap(f -> f.traces().stream()).toList();
        return CaseResult.of(file, new PairStudy(pairs).checks(file.rows()), pairs, traces);
    }

    /** What one airfoil gives. */
    private record Found(List<Pair> pairs, List<CaseTrace> traces) {}

    /** All pairs of one airfoil; none where it was measured at fewer than three speeds. */
    private Found of(Airfoil airfoil) {
        List<PolarRun> clean =
                airfoil.runs().stream().filter(run -> run.deflection() == 0).toList();
        List<Double> speeds = speeds(clean);
        List<Pair> pairs = new ArrayList<>();
        SectionTraces traces = new SectionTraces();
        for (int i = 0; i < speeds.size() && speeds.size() >= FEWEST_SPEEDS; i++) {
            double speed = speeds.get(i);
            Basis basis = i == 0 || i == speeds.size() - 1 ? Basis.MOVED : Basis.BETWEEN;
            List<PolarRun> rest =
                    clean.stream().filter(run -> !same(run, speed)).toList();
            if (rest.stream().anyMatch(run -> run.kind() == Kind.DRAG)) {
                List<PolarRun> here = clean.stream()
                        .filter(run -> same(run, speed) && run.kind() != Kind.LIFT_DOWN)
                        .toList();
                compare(airfoil, rest, here, basis, pairs, traces);
            }
        }
        return new Found(pairs, traces.traces(airfoil.name()));
    }

    private void compare(
            Airfoil airfoil,
            List<PolarRun> rest,
            List<PolarRun> here,
            Basis basis,
            List<Pair> pairs,
            SectionTraces traces) {
        Airfoil without =
                new Airfoil(airfoil.name(), "", airfoil.thickness(), airfoil.camber(), airfoil.nominalMoment(), rest);
        boolean lift = here.stream().anyMatch(run -> run.kind() == Kind.LIFT_UP);
        for (PolarRun run : here) {
            SectionCurve curve = sections.curve(SectionPlace.of(without), SurfaceState.none(), run.reynolds());
            RunLeftOut one = new RunLeftOut(airfoil.name(), run, basis, curve);
            boolean best = run.kind() == Kind.LIFT_UP || !lift;
            traces.add(run, curve, best);
            if (best) {
                one.landmarks(pairs);
            }
            one.drags(pairs);
        }
    }

    private static boolean same(PolarRun run, double speed) {
        return Math.abs(Math.log(run.reynolds() / speed)) < SAME_SPEED;
    }

    private static List<Double> speeds(List<PolarRun> runs) {
        List<Double> speeds = new ArrayList<>();
        for (double reynolds :
                runs.stream().mapToDouble(PolarRun::reynolds).sorted().toArray()) {
            if (speeds.isEmpty() || Math.log(reynolds / speeds.get(speeds.size() - 1)) > SAME_SPEED) {
                speeds.add(reynolds);
            }
        }
        return speeds;
    }

    /** RunLeftOut run and what the others say of it. */
    private record RunLeftOut(String airfoil, PolarRun run, Basis basis, SectionCurve curve) {

        void landmarks(List<Pair> pairs) {
            RunFigures figures = RunFigures.of(run);
            if (figures.reachesPeak()) {
                add(pairs, Figure.SECTION_MAX_LIFT, "", figures.maxLift(), curve.maxLift());
                add(
                        pairs,
                        Figure.SECTION_STALL_ANGLE,
                        "",
                        Math.toDegrees(figures.stallAngle()),
                        Math.toDegrees(curve.stallAngle()));
            }
            figures.zeroLiftAngle()
                    .ifPresent(zero -> add(
                            pairs,
                            Figure.SECTION_ZERO_LIFT,
                            "",
                            Math.toDegrees(zero),
                            Math.toDegrees(curve.zeroLiftAngle())));
        }

        void drags(List<Pair> pairs) {
            RunFigures figures = RunFigures.of(run);
            double top = TOP * Math.min(figures.maxLift(), curve.maxLift());
            Figure figure = run.reynolds() < SLOW ? Figure.SECTION_DRAG_SLOW : Figure.SECTION_DRAG;
            for (Point point : run.points()) {
                boolean attached = point.alpha() <= figures.stallAngle() && point.lift() > curve.minLift();
                if (point.drag() > 0 && attached && point.lift() < top) {
                    add(
                            pairs,
                            figure,
                            String.format(Locale.ROOT, ", lift %.2f", point.lift()),
                            point.drag(),
                            CurveReading.dragAt(curve, point.lift()));
                }
            }
        }

        private void add(List<Pair> pairs, Figure figure, String more, double measured, double predicted) {
            String condition = String.format(Locale.ROOT, "%s, Re %.0f%s", airfoil, run.reynolds(), more);
            pairs.add(new Pair(figure, basis.name(), airfoil, condition, measured, predicted));
        }
    }
}
