package throwline.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import throwline.air.Air;
import throwline.liftingline.CarryOver;
import throwline.liftingline.ChordCorrection;
import throwline.liftingline.HingeMoments;
import throwline.liftingline.InfluenceMatrix;
import throwline.liftingline.LiftingLineProblem;
import throwline.liftingline.LiftingLineSolution;
import throwline.liftingline.LiftingLineSolver;
import throwline.liftingline.Motion;
import throwline.liftingline.SolverSettings;
import throwline.liftingline.SpanGrid;
import throwline.liftingline.StallMarks;
import throwline.liftingline.StallSearch;
import throwline.liftingline.StripForces;
import throwline.liftingline.WingStrips;
import throwline.model.Model;
import throwline.model.SetUp;
import throwline.model.Surface;
import throwline.section.AirfoilLibrary;
import throwline.section.SectionAerodynamics;
import throwline.section.SectionCurve;
import throwline.units.Dimension;
import throwline.units.Quantity;
import throwline.words.Message;

/** "What does the wing carry, and where?": the bare wing of a model at one set-up over incidence. */
public final class WingStudy {

    private final SectionAerodynamics sections;

    /**
     * @param sections makes section curves
     */
    public WingStudy(SectionAerodynamics sections) {
        this.sections = sections;
    }

    /**
     * Runs a wing through the incidences of a question, each started from the one before.
     *
     * @param model the model, of which the wing and the field's air count
     * @param airfoils where its airfoils are found; every name of the wing must be there
     * @param question set-up, incidences and the rest
     * @return one point an incidence; a point that did not converge says so
     */
    public WingSweep sweep(Model model, AirfoilLibrary airfoils, WingQuestion question) {
        CarryOver body = question.plain() ? CarryOver.none() : CarryOver.of(model);
        WingStrips strips = new WingStrips(model.wing(), body, airfoils, sections, question.strips());
        SpanGrid grid = strips.grid();
        ChordCorrection correction = question.plain() ? ChordCorrection.none() : ChordCorrection.of(grid);
        LiftingLineSolver solver = new LiftingLineSolver(
                new InfluenceMatrix(grid, question.ground(), correction), SolverSettings.standard());
        Air air = Air.at(model.field().heightAboveSea(), model.field().temperature());
        List<SectionCurve> curves = strips.curves(
                (surface, side) -> deflection(question.setUp(), surface), question.speed() / air.kinematicViscosity());
        Motion motion = Motion.rolling(question.tipHelix() / model.wing().semiSpan());
        List<WingSweep.Point> points = new ArrayList<>();
        Optional<LiftingLineSolution> last = Optional.empty();
        for (double incidence : question.incidences()) {
            LiftingLineSolution solution = solver.solve(LiftingLineProblem.of(curves, incidence, motion), last);
            last = Optional.of(solution);
            points.add(point(strips, question.setUp(), solution));
        }
        return new WingSweep(
                question.setUp().name(),
                grid.area(),
                grid.span(),
                grid.meanChord(),
                question.speed(),
                points,
                new StallSearch(solver, curves, motion).find().map(marks -> stall(grid, marks)),
                warnings(model, question, points));
    }

    private static WingSweep.Stall stall(SpanGrid grid, StallMarks marks) {
        return new WingSweep.Stall(
                mark(marks.onset()), grid.control(marks.strip()), mark(marks.checkedMaximum()), mark(marks.plateau()));
    }

    private static WingSweep.Mark mark(StallMarks.Mark mark) {
        return new WingSweep.Mark(mark.incidence(), mark.lift());
    }

    private static double deflection(SetUp setUp, Surface surface) {
        return surface.reached(setUp.deflection(surface.name()));
    }

    private static WingSweep.Point point(WingStrips strips, SetUp setUp, LiftingLineSolution solution) {
        StripForces forces = StripForces.of(solution);
        return new WingSweep.Point(
                solution.problem().incidence(),
                forces.liftCoefficient(),
                forces.dragCoefficient(),
                forces.inducedDragCoefficient(),
                forces.profileDragCoefficient(),
                forces.rollingCoefficient(),
                forces.yawingCoefficient(),
                forces.pitchingCoefficient(strips.grid().meanQuarterChord()),
                solution.status().converged(),
                solution.status().iterations(),
                strips(strips, setUp, solution, forces));
    }

    /** Lift and its limit on the undisturbed air, so that strips in a roll add up to the wing's. */
    private static List<WingSweep.Strip> strips(
            WingStrips strips, SetUp setUp, LiftingLineSolution solution, StripForces forces) {
        SpanGrid grid = strips.grid();
        HingeMoments hinges = HingeMoments.of(solution, strips);
        List<WingSweep.Strip> all = new ArrayList<>(grid.size());
        for (int i = 0; i < grid.size(); i++) {
            SectionCurve curve = solution.problem().curves().get(i);
            double pressure = solution.speed(i) * solution.speed(i);
            all.add(new WingSweep.Strip(
                    grid.control(i),
                    grid.width(i),
                    grid.chord(i),
                    forces.lift(i) / (grid.chord(i) * grid.width(i)),
                    curve.maxLift() * pressure,
                    solution.sectionAngle(i),
                    strips.surface(i).map(s -> deflection(setUp, s)).orElse(0.0),
                    Math.min(
                            curve.stallAngle() - solution.sectionAngle(i),
                            solution.sectionAngle(i) - curve.negativeStallAngle()),
                    hinges.along(i)));
        }
        return all;
    }

    private static List<Message> warnings(Model model, WingQuestion question, List<WingSweep.Point> points) {
        List<Message> warnings = new ArrayList<>();
        for (Surface surface : model.wing().surfaces()) {
            double wanted = question.setUp().deflection(surface.name());
            double reached = surface.reached(wanted);
            if (reached != wanted) {
                warnings.add(Message.of("note.wing.cut-at-travel", surface.name(), angle(wanted), angle(reached)));
            }
        }
        for (WingSweep.Point point : points) {
            if (!point.converged()) {
                warnings.add(Message.of("note.wing.not-converged", angle(point.incidence())));
            }
        }
        return warnings;
    }

    private static Quantity angle(double radians) {
        return new Quantity(radians, Dimension.ANGLE);
    }
}
