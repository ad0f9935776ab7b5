package throwline.validation;

import java.util.List;
import java.util.Optional;
import throwline.air.Air;
import throwline.liftingline.ChordCorrection;
import throwline.liftingline.Ground;
import throwline.liftingline.InfluenceMatrix;
import throwline.liftingline.LiftingLineProblem;
import throwline.liftingline.LiftingLineSolution;
import throwline.liftingline.LiftingLineSolver;
import throwline.liftingline.Motion;
import throwline.liftingline.SolverSettings;
import throwline.liftingline.StallMarks;
import throwline.liftingline.StallSearch;
import throwline.liftingline.StripForces;
import throwline.liftingline.WingStrips;
import throwline.model.Model;
import throwline.model.SetUp;
import throwline.model.Wing;
import throwline.section.AirfoilLibrary;
import throwline.section.SectionAerodynamics;
import throwline.section.SectionCurve;

/** A wing alone at one Reynolds number, surfaces held. */
final class WingReading {

    private static final int STRIPS = 80;
    private static final double HELIX = 0.05;
    private static final double LOWEST = -10;
    private static final double HIGHEST = 12;

    private final LiftingLineSolver solver;
    private final List<SectionCurve> curves;
    private final double semiSpan;

    /**
     * @param wing the wing
     * @param airfoils where its airfoils are found
     * @param sections makes section curves
     * @param setUp where its surfaces stand
     * @param difference added to the right surfaces and taken from the left ones, rad
     * @param reynoldsPerMetre Reynolds number per metre of chord
     */
    WingReading(
            Wing wing,
            AirfoilLibrary airfoils,
            SectionAerodynamics sections,
            SetUp setUp,
            double difference,
            double reynoldsPerMetre) {
        WingStrips strips = new WingStrips(wing, airfoils, sections, STRIPS);
        solver = new LiftingLineSolver(
                new InfluenceMatrix(strips.grid(), Ground.none(), ChordCorrection.of(strips.grid())),
                SolverSettings.standard());
        curves = strips.curves(
                (surface, side) -> setUp.deflection(surface.name()) - side * difference, reynoldsPerMetre);
        semiSpan = wing.semiSpan();
    }

    /** The wing of a model at a speed, m/s. */
    static WingReading of(
            Model model, AirfoilLibrary airfoils, SectionAerodynamics sections, SetUp setUp, double speed) {
        Air air = Air.at(model.field().heightAboveSea(), model.field().temperature());
        return new WingReading(model.wing(), airfoils, sections, setUp, 0, speed / air.kinematicViscosity());
    }

    /** The marks of its stall; empty where they were not found. */
    Optional<StallMarks> marks() {
        return new StallSearch(solver, curves, Motion.straight()).find();
    }

    /** Largest lift coefficient, NaN where it was not found. */
    double largestLift() {
        return marks().map(m -> m.checkedMaximum().lift()).orElse(Double.NaN);
    }

    /** Forces at an incidence, rad. */
    StripForces at(double incidence) {
        return at(incidence, Motion.straight());
    }

    private StripForces at(double incidence, Motion motion) {
        LiftingLineSolution solution = solver.solve(LiftingLineProblem.of(curves, incidence, motion), Optional.empty());
        return StripForces.of(solution);
    }

    /** Least drag coefficient between -10 and 12 degrees. */
    double leastDrag() {
        double least = Double.POSITIVE_INFINITY;
        for (double degrees = LOWEST; degrees <= HIGHEST; degrees += 0.5) {
            least = Math.min(least, at(Math.toRadians(degrees)).dragCoefficient());
        }
        return least;
    }

    /** Rolling moment coefficient per tip helix angle, rad. */
    double rollDamping(double incidence) {
        double rolling = at(incidence, Motion.rolling(HELIX / semiSpan)).rollingCoefficient();
        double back = at(incidence, Motion.rolling(-HELIX / semiSpan)).rollingCoefficient();
        return (rolling - back) / (2 * HELIX);
    }
}
