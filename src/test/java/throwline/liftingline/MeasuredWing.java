package throwline.liftingline;

import java.util.List;
import java.util.Optional;
import throwline.input.PackedAirfoils;
import throwline.model.AirfoilName;
import throwline.model.Hinge;
import throwline.model.Surface;
import throwline.model.Wing;
import throwline.model.WingSection;
import throwline.section.MeasuredSections;
import throwline.section.SectionAerodynamics;
import throwline.section.SectionCurve;

/** A wing with the library's measured sections: flaps inboard, ailerons outboard, chord correction on. */
final class MeasuredWing {

    private static final SectionAerodynamics SECTIONS = new MeasuredSections();

    private final WingStrips strips;
    private final LiftingLineSolver solver;
    private final double reynoldsPerMetre;

    /**
     * @param wing the wing
     * @param reynoldsPerMetre Reynolds number per metre of chord
     * @param count strips over the span
     */
    MeasuredWing(Wing wing, double reynoldsPerMetre, int count) {
        strips = new WingStrips(wing, new PackedAirfoils(), SECTIONS, count);
        SpanGrid grid = strips.grid();
        solver = new LiftingLineSolver(
                new InfluenceMatrix(grid, Ground.none(), ChordCorrection.of(grid)), SolverSettings.standard());
        this.reynoldsPerMetre = reynoldsPerMetre;
    }

    /**
     * An invented wing of 2 m span.
     *
     * @param airfoil library name
     * @param aspect aspect ratio
     * @param taper tip chord over root chord
     * @param washout rad
     * @param flapEnd outer end of the flaps over half the span; the ailerons begin there
     */
    static Wing tapered(String airfoil, double aspect, double taper, double washout, double flapEnd) {
        double root = 4 / (aspect * (1 + taper));
        AirfoilName name = new AirfoilName(airfoil);
        return new Wing(
                0,
                0,
                0,
                List.of(
                        new WingSection(0, root, name, 0, 0),
                        new WingSection(1, root * taper, name, washout, root * (1 - taper) / 4)),
                List.of(
                        new Surface("flaps", 0.08, flapEnd, 0.25, 1, 1.2, Hinge.TAPED),
                        new Surface("ailerons", flapEnd, 0.95, 0.25, 1, 1, Hinge.TAPED)));
    }

    /** Section curves with flaps down, and ailerons left and right, all rad, trailing edge down positive. */
    List<SectionCurve> curves(double flaps, double left, double right) {
        return strips.curves(
                (surface, side) -> surface.name().equals("flaps") ? flaps : side < 0 ? left : right, reynoldsPerMetre);
    }

    StallMarks marks(double flaps, double left, double right) {
        return search(curves(flaps, left, right))
                .orElseThrow(() -> new AssertionError("no stall found with flaps at " + flaps));
    }

    Optional<StallMarks> search(List<SectionCurve> curves) {
        return new StallSearch(solver, curves, Motion.straight()).find();
    }

    LiftingLineSolution at(List<SectionCurve> curves, double incidence) {
        LiftingLineSolution solution =
                solver.solve(LiftingLineProblem.of(curves, incidence, Motion.straight()), Optional.empty());
        if (!solution.status().converged()) {
            throw new AssertionError("not converged: " + solution.status());
        }
        return solution;
    }

    SpanGrid grid() {
        return strips.grid();
    }

    WingStrips strips() {
        return strips;
    }

    /** True for a strip in front of an aileron. */
    boolean isAtAileron(int strip) {
        return strips.surface(strip).map(s -> s.name().equals("ailerons")).orElse(false);
    }
}
