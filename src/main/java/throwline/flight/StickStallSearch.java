package throwline.flight;

import java.util.List;
import java.util.Optional;
import throwline.liftingline.AngleWalk;
import throwline.liftingline.LiftingLineProblem;
import throwline.liftingline.LiftingLineSolver;
import throwline.liftingline.Motion;
import throwline.liftingline.WingPoint;
import throwline.model.Pack;
import throwline.section.SectionCurve;

/** Search for the stall of the first part of the wing with a roll stick at full: a walk up in angle of attack. */
final class StickStallSearch {

    private static final double STEP = Math.toRadians(1);
    private static final double FIRST = Math.toRadians(-20);
    private static final int MOST_POINTS = 40;

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
        AngleWalk<WingPoint> walk = AngleWalk.up(
                FIRST,
                STEP,
                MOST_POINTS,
                (alpha, before) -> WingPoint.of(
                        alpha,
                        solver.solve(
                                LiftingLineProblem.of(curves, alpha + incidence, Motion.straight()),
                                before.latest().map(WingPoint::solution))),
                w -> w.firstFall(WingPoint::margin).isPresent());
        if (!walk.ended()) {
            return Optional.empty();
        }
        double at = FIRST + STEP * walk.firstFall(WingPoint::margin).orElseThrow();
        Attitude there = trimmer.at(pack, speed, at);
        boolean flies = there.converged() && there.elevatorLimit() == Attitude.ElevatorLimit.NONE && there.lift() > 0;
        double slowest = trimmer.airframe().balance(pack).stallSpeed(there.lift());
        return flies ? Optional.of(new StickStall(slowest, walk.last().reading().strip())) : Optional.empty();
    }
}
