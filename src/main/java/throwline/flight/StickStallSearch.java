package throwline.flight;

import java.util.List;
import java.util.Optional;
import throwline.liftingline.LiftingLineProblem;
import throwline.liftingline.LiftingLineSolution;
import throwline.liftingline.LiftingLineSolver;
import throwline.liftingline.Motion;
import throwline.liftingline.StallReading;
import throwline.model.Pack;
import throwline.section.SectionCurve;

/** Walks up in angle of attack with a roll stick at full until the first part of the wing reaches its stall. */
final class StickStallSearch {

    private static final double STEP = Math.toRadians(1);
    private static final int MOST_STEPS = 40;

    private final Trimmer trimmer;
    private final List<SectionCurve> curves;
    private final LiftingLineSolver solver;
    private final double speed;

    /**
     * @param trimmer the model in its set-up, stick centred
     * @param stick set-up plus stick
     * @param speed at which the sections are taken, m/s
     */
    StickStallSearch(Trimmer trimmer, Deflections stick, double speed) {
        this.trimmer = trimmer;
        this.speed = speed;
        Airframe airframe = trimmer.airframe();
        curves = airframe.strips().curves(stick::on, airframe.reynoldsPerMetre(speed));
        solver = airframe.wingSolver();
    }

    /** Where it lets go; empty where the walk found nothing. */
    Optional<StickStall> find(Pack pack) {
        double incidence = trimmer.airframe().model().wing().incidence();
        Optional<LiftingLineSolution> last = Optional.empty();
        double before = Double.NaN;
        double first = Math.toRadians(-20);
        for (int k = 0; k < MOST_STEPS; k++) {
            double alpha = first + k * STEP;
            LiftingLineSolution solution =
                    solver.solve(LiftingLineProblem.of(curves, alpha + incidence, Motion.straight()), last);
            if (!solution.status().converged()) {
                return Optional.empty();
            }
            last = Optional.of(solution);
            StallReading reading = StallReading.of(solution);
            if (reading.margin() <= 0 && before > 0) {
                double at = alpha - STEP + STEP * before / (before - reading.margin());
                Attitude there = trimmer.at(pack, speed, at);
                boolean flies =
                        there.converged() && there.elevatorLimit() == Attitude.ElevatorLimit.NONE && there.lift() > 0;
                double slowest = trimmer.airframe().balance(pack).stallSpeed(there.lift());
                return flies ? Optional.of(new StickStall(slowest, reading.strip())) : Optional.empty();
            }
            before = reading.margin();
        }
        return Optional.empty();
    }
}
