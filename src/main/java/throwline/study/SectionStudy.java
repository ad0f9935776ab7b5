package throwline.study;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import throwline.section.Airfoil;
import throwline.section.PolarRun;
import throwline.section.SectionAerodynamics;
import throwline.section.SectionCurve;
import throwline.section.SectionPlace;
import throwline.section.SurfaceState;

/** "What does this section do?": one airfoil with its surface at one deflection, over angle of attack. */
public final class SectionStudy {

    /** Angles from straight down to straight up, this many to a degree. */
    private static final int PER_DEGREE = 2;

    private static final int LARGEST = 90;

    /** Degrees. */
    private static final List<Double> USUAL_DEFLECTIONS = List.of(-20.0, -10.0, 0.0, 10.0, 20.0, 40.0);

    private static final int MOST_CURVES = 5;

    /** Reynolds numbers nearer than this in ln are the same. */
    private static final double SAME_SPEED = 0.08;

    private final SectionAerodynamics sections;

    /**
     * @param sections makes section curves
     */
    public SectionStudy(SectionAerodynamics sections) {
        this.sections = sections;
    }

    /**
     * Samples the curve of a section from -90 to 90 degrees.
     *
     * @param airfoil its airfoil
     * @param surface its hinged surface
     * @param reynolds Reynolds number on the chord, positive
     */
    public SectionSweep sweep(Airfoil airfoil, SurfaceState surface, double reynolds) {
        SectionCurve curve = sections.curve(SectionPlace.of(airfoil), surface, reynolds);
        List<SectionSweep.Point> points = IntStream.rangeClosed(-LARGEST * PER_DEGREE, LARGEST * PER_DEGREE)
                .mapToObj(i -> point(curve, Math.toRadians((double) i / PER_DEGREE)))
                .toList();
        return new SectionSweep(
                airfoil.name(),
                reynolds,
                surface.deflection(),
                surface.chordFraction(),
                curve.maxLift(),
                curve.minLift(),
                curve.stallAngle(),
                points);
    }

    /**
     * The section at its measured Reynolds numbers and at usual deflections.
     *
     * @param airfoil its airfoil
     * @param surface its hinged surface at the deflection asked for
     * @param reynolds Reynolds number asked for
     */
    public SectionFamily family(Airfoil airfoil, SurfaceState surface, double reynolds) {
        List<SectionSweep> byReynolds = reynoldsNumbers(airfoil, reynolds).stream()
                .map(re -> sweep(airfoil, surface, re))
                .toList();
        TreeSet<Double> deflections = new TreeSet<>(USUAL_DEFLECTIONS);
        deflections.add(Math.toDegrees(surface.deflection()));
        List<SectionSweep> byDeflection = deflections.stream()
                .map(degrees -> new SurfaceState(Math.toRadians(degrees), surface.chordFraction(), surface.hinge()))
                .map(state -> sweep(airfoil, state, reynolds))
                .toList();
        return new SectionFamily(airfoil, byReynolds, byDeflection);
    }

    /** Where it was measured, spread evenly, and the one asked for. */
    private static Set<Double> reynoldsNumbers(Airfoil airfoil, double asked) {
        TreeSet<Double> measured = new TreeSet<>();
        for (PolarRun run : airfoil.runs()) {
            boolean near = measured.stream().anyMatch(re -> Math.abs(Math.log(re / run.reynolds())) < SAME_SPEED);
            if (run.kind() != PolarRun.Kind.LIFT_DOWN && !near) {
                measured.add(run.reynolds());
            }
        }
        List<Double> all = List.copyOf(measured);
        TreeSet<Double> chosen = new TreeSet<>(List.of(asked));
        int count = Math.min(MOST_CURVES, all.size());
        for (int i = 0; i < count; i++) {
            double re = all.get(count == 1 ? 0 : i * (all.size() - 1) / (count - 1));
            if (Math.abs(Math.log(re / asked)) > SAME_SPEED) {
                chosen.add(re);
            }
        }
        return chosen;
    }

    private static SectionSweep.Point point(SectionCurve curve, double angle) {
        return new SectionSweep.Point(
                angle,
                curve.lift(angle),
                curve.drag(angle),
                curve.moment(angle),
                curve.hinge(angle),
                curve.basis(angle));
    }
}
