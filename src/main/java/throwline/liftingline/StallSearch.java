package throwline.liftingline;

import java.util.List;
import java.util.Optional;
import throwline.section.SectionCurve;

/**
 * Finds the three marks of the stall of a wing alone: walks up in incidence, each step started from the one before, and
 * closes in on each mark by halving the step that holds it.
 */
public final class StallSearch {

    private static final double FIRST = Math.toRadians(-20);
    private static final double STEP = Math.toRadians(0.5);
    private static final int MOST_STEPS = 140;
    private static final int HALVINGS = 10;

    /** After the plateau the lift is watched for so much longer, rad. */
    private static final double AFTER = Math.toRadians(4);

    private final LiftingLineSolver solver;
    private final List<SectionCurve> curves;
    private final Motion motion;

    /**
     * @param solver the wing's solver
     * @param curves one a strip
     * @param motion rates and sideslip, held
     */
    public StallSearch(LiftingLineSolver solver, List<SectionCurve> curves, Motion motion) {
        this.solver = solver;
        this.curves = List.copyOf(curves);
        this.motion = motion;
    }

    /** The marks; empty where a solve did not converge or the wing does not stall between -20 and 50 degrees. */
    public Optional<StallMarks> find() {
        AngleSweep walk = new AngleSweep();
        for (int k = 0; k <= MOST_STEPS && !walk.isDone(); k++) {
            if (!walk.step(FIRST + k * STEP)) {
                return Optional.empty();
            }
        }
        return walk.marks();
    }

    private Point at(double incidence, Optional<Point> near) {
        LiftingLineSolution solution =
                solver.solve(LiftingLineProblem.of(curves, incidence, motion), near.map(Point::solution));
        return new Point(incidence, solution, StallReading.of(solution), StripForces.of(solution));
    }

    /** One incidence. */
    private record Point(double incidence, LiftingLineSolution solution, StallReading reading, StripForces forces) {

        double lift() {
            return forces.liftCoefficient();
        }

        boolean isPastOnset() {
            return reading.margin() <= 0;
        }

        boolean isPastPlateau() {
            return reading.stalledShare() >= 0.5;
        }
    }

    /** One walk up. */
    private final class AngleSweep {
        private Optional<Point> last = Optional.empty();
        private Optional<Point> onset = Optional.empty();
        private Optional<Point> plateau = Optional.empty();
        private Optional<Point> best = Optional.empty();

        boolean isDone() {
            return onset.isPresent()
                    && plateau.isPresent()
                    && last.orElseThrow().incidence() > plateau.get().incidence() + AFTER;
        }

        /** False where the step was not solved. */
        boolean step(double incidence) {
            Point here = at(incidence, last);
            if (!here.solution().status().converged()) {
                return false;
            }
            if (last.isPresent()) {
                Point before = last.get();
                if (onset.isEmpty() && here.isPastOnset() && !before.isPastOnset()) {
                    onset = Optional.of(firstPast(before, here, true));
                }
                if (plateau.isEmpty() && here.isPastPlateau() && !before.isPastPlateau()) {
                    plateau = Optional.of(firstPast(before, here, false));
                }
            }
            if (best.isEmpty() || here.lift() > best.get().lift()) {
                best = Optional.of(here);
            }
            last = Optional.of(here);
            return true;
        }

        private Point firstPast(Point before, Point past, boolean atOnset) {
            Point low = before;
            Point high = past;
            for (int k = 0; k < HALVINGS; k++) {
                Point middle = at((low.incidence() + high.incidence()) / 2, Optional.of(low));
                boolean isPast = atOnset ? middle.isPastOnset() : middle.isPastPlateau();
                low = isPast ? low : middle;
                high = isPast ? middle : high;
            }
            return high;
        }

        /** The highest point and its neighbours, closer and closer. */
        private Point refined(Point top) {
            Point highest = top;
            for (double step = STEP / 2; step > STEP / 100; step /= 2) {
                Point left = at(highest.incidence() - step, Optional.of(highest));
                Point right = at(highest.incidence() + step, Optional.of(highest));
                Point side = left.lift() > right.lift() ? left : right;
                highest = side.lift() > highest.lift() ? side : highest;
            }
            return highest;
        }

        Optional<StallMarks> marks() {
            if (onset.isEmpty() || plateau.isEmpty()) {
                return Optional.empty();
            }
            Point first = onset.get();
            Point top = refined(best.orElseThrow());
            Point end = plateau.get();
            return Optional.of(new StallMarks(
                    new StallMarks.Mark(first.incidence(), first.lift()),
                    first.reading().strip(),
                    new StallMarks.Mark(top.incidence(), top.lift()),
                    new StallMarks.Mark(end.incidence(), end.forces().hullLiftCoefficient())));
        }
    }
}
