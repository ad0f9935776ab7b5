package throwline.flight;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import throwline.liftingline.ChordCorrection;
import throwline.liftingline.EndPlates;
import throwline.liftingline.Ground;
import throwline.liftingline.Inflow;
import throwline.liftingline.InfluenceMatrix;
import throwline.liftingline.LiftingLineProblem;
import throwline.liftingline.LiftingLineSolution;
import throwline.liftingline.LiftingLineSolver;
import throwline.liftingline.Motion;
import throwline.liftingline.RectangularPlanform;
import throwline.liftingline.SpanGrid;
import throwline.liftingline.StallReading;
import throwline.liftingline.StripForces;
import throwline.model.Elevator;
import throwline.model.Tail;
import throwline.section.Airfoil;
import throwline.section.SectionAerodynamics;
import throwline.section.SectionCurve;
import throwline.section.SectionPlace;
import throwline.section.SurfaceState;

/** The horizontal tail as a lifting line of its own, in the air that the wing leaves it. */
final class TailSurface {

    private static final int STRIPS = 16;

    /** Elevators deeper than this share of the chord are taken as an all-moving tail. */
    private static final double ALL_MOVING = 0.5;

    private final Tail tail;
    private final SectionAerodynamics sections;
    private final SectionPlace place;
    private final SpanGrid grid;
    private final LiftingLineSolver solver;

    /**
     * @param tail the tail
     * @param airfoil its airfoil
     * @param sections makes section curves
     * @param ground the ground below it
     * @param solvers makes the solver of its lifting line
     */
    TailSurface(
            Tail tail,
            Airfoil airfoil,
            SectionAerodynamics sections,
            Ground ground,
            Function<InfluenceMatrix, LiftingLineSolver> solvers) {
        this.tail = tail;
        this.sections = sections;
        place = SectionPlace.of(airfoil);
        grid = SpanGrid.of(new RectangularPlanform(tail.span() / 2, tail.chord()), new double[0], STRIPS);
        EndPlates fins = EndPlates.of(tail.fins(), tail.span());
        solver = solvers.apply(new InfluenceMatrix(grid, ground, ChordCorrection.of(grid, fins), fins));
    }

    SpanGrid grid() {
        return grid;
    }

    /**
     * Forces on the tail in wind axes.
     *
     * @param angle of the tail's chord against the undisturbed air, rad
     * @param elevator deflection, rad
     * @param inflow the air that the wing leaves
     * @param reynoldsPerMetre Reynolds number per metre in the undisturbed air
     */
    TailForces at(double angle, double elevator, Inflow inflow, double reynoldsPerMetre) {
        Elevator e = tail.elevator();
        boolean allMoving = e.chordFraction() > ALL_MOVING;
        SurfaceState state = allMoving ? SurfaceState.none() : new SurfaceState(elevator, e.chordFraction(), e.hinge());
        double meanSpeed = 0;
        for (int i = 0; i < grid.size(); i++) {
            meanSpeed += inflow.speed(i) * grid.width(i) / grid.span();
        }
        SectionCurve curve = sections.curve(place, state, reynoldsPerMetre * tail.chord() * meanSpeed);
        List<SectionCurve> curves = Collections.nCopies(grid.size(), curve);
        double incidence = allMoving ? angle + elevator : angle;
        LiftingLineSolution solution =
                solver.solve(new LiftingLineProblem(curves, incidence, Motion.straight(), inflow), Optional.empty());
        StripForces forces = StripForces.of(solution);
        double lift = 0;
        double drag = 0;
        double moment = 0;
        double hinge = 0;
        double margin = StallReading.leastMargin(solution, strip -> true);
        for (int i = 0; i < grid.size(); i++) {
            double down = inflow.downwash(i);
            double cos = Math.cos(down);
            double sin = Math.sin(down);
            lift += forces.lift(i) * cos - forces.drag(i) * sin;
            drag += forces.drag(i) * cos + forces.lift(i) * sin;
            moment += forces.moment(i);
            double pressure = inflow.speed(i) * inflow.speed(i);
            hinge += pressure
                    * grid.width(i)
                    * (e.isAllMoving()
                            ? aboutPivot(curve, solution.sectionAngle(i))
                            : curve.hinge(solution.sectionAngle(i)));
            margin = Math.min(margin, solution.sectionAngle(i) - curve.negativeStallAngle());
        }
        double elevatorChord = allMoving && !e.isAllMoving() ? 0 : e.chordFraction() * tail.chord();
        return new TailForces(
                lift,
                drag,
                moment,
                hinge * elevatorChord * elevatorChord,
                margin,
                solution.status().converged());
    }

    /**
     * Moment coefficient of a section about the pivot of an all-moving tail, trailing edge down (nose up) positive: that
     * about the quarter chord, and the force across the chord there times its distance ahead of the pivot (statics).
     */
    private double aboutPivot(SectionCurve curve, double angle) {
        double across = curve.lift(angle) * Math.cos(angle) + curve.drag(angle) * Math.sin(angle);
        return curve.moment(angle) + across * (tail.elevator().pivot() - 0.25);
    }

    /**
     * Forces over dynamic pressure of the undisturbed air.
     *
     * @param lift across the undisturbed air, m^2
     * @param drag along it, m^2
     * @param moment about the tail's quarter chord, m^3, nose up positive
     * @param hinge hinge moment of both halves of the elevator, m^3, positive where the air drives the trailing edge down;
     *     that about the pivot for an all-moving tail; 0 for one hinged ahead of the middle of its chord
     * @param stallMargin smallest angle left before the tail stalls either way, rad
     * @param converged false where this is not a solution
     */
    record TailForces(double lift, double drag, double moment, double hinge, double stallMargin, boolean converged) {

        /** Change from other forces per rad of a step of the elevator. */
        TailForces perRadian(TailForces from, double step) {
            return new TailForces(
                    (lift - from.lift) / step,
                    (drag - from.drag) / step,
                    (moment - from.moment) / step,
                    (hinge - from.hinge) / step,
                    (stallMargin - from.stallMargin) / step,
                    converged && from.converged);
        }

        /** These forces a step of the elevator further along a straight line; solved where these are. */
        TailForces along(TailForces perRadian, double step) {
            return new TailForces(
                    lift + perRadian.lift * step,
                    drag + perRadian.drag * step,
                    moment + perRadian.moment * step,
                    hinge + perRadian.hinge * step,
                    stallMargin + perRadian.stallMargin * step,
                    converged);
        }
    }
}
