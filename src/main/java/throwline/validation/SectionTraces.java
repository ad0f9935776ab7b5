package throwline.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import throwline.section.PolarRun;
import throwline.section.SectionCurve;

/** Pictures of section curves: lift over angle, and drag over lift up to the stall. */
final class SectionTraces {

    private static final double STEP = Math.toRadians(0.25);

    /** So far past the stall lift is shown. */
    private static final double PAST = Math.toRadians(4);

    private final List<CaseTrace.Line> lifts = new ArrayList<>();
    private final List<CaseTrace.Line> drags = new ArrayList<>();

    /** Adds a run with its prediction; drag only where it was measured. */
    void add(PolarRun run, SectionCurve curve, boolean lift) {
        String name = String.format(Locale.ROOT, "Re %.0f", run.reynolds());
        double from =
                run.points().stream().mapToDouble(PolarRun.Point::alpha).min().orElse(0);
        List<double[]> lifting = new ArrayList<>();
        List<double[]> dragging = new ArrayList<>();
        for (double alpha = from; alpha <= curve.stallAngle() + PAST; alpha += STEP) {
            lifting.add(new double[] {Math.toDegrees(alpha), curve.lift(alpha)});
            if (alpha <= curve.stallAngle()) {
                dragging.add(new double[] {curve.lift(alpha), curve.drag(alpha)});
            }
        }
        if (lift) {
            List<double[]> points = run.points().stream()
                    .map(p -> new double[] {Math.toDegrees(p.alpha()), p.lift()})
                    .toList();
            lifts.add(new CaseTrace.Line(name, points, lifting));
        }
        List<double[]> points = run.points().stream()
                .filter(p -> p.drag() > 0 && p.alpha() <= curve.stallAngle())
                .map(p -> new double[] {p.lift(), p.drag()})
                .toList();
        if (!points.isEmpty()) {
            drags.add(new CaseTrace.Line(name, points, dragging));
        }
    }

    /** The pictures, each named after an airfoil. */
    List<CaseTrace> traces(String airfoil) {
        List<CaseTrace> traces = new ArrayList<>();
        if (!lifts.isEmpty()) {
            traces.add(new CaseTrace(airfoil + " lift", "angle of attack, degrees", "lift coefficient", lifts));
        }
        if (!drags.isEmpty()) {
            traces.add(new CaseTrace(airfoil + " drag", "lift coefficient", "drag coefficient", drags));
        }
        return traces;
    }
}
