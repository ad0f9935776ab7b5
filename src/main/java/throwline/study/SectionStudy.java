package throwline.study;

import java.util.List;
import java.util.stream.IntStream;
import throwline.section.Airfoil;
import throwline.section.SectionAerodynamics;
import throwline.section.SectionCurve;
import throwline.section.SectionPlace;
import throwline.section.SurfaceState;

/** "What does this section do?": one airfoil with its surface at one deflection, over angle of attack. */
public final class SectionStudy {

    /** Angles from straight down to straight up, this many to a degree. */
    private static final int PER_DEGREE = 2;

    private static final int LARGEST = 90;

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
