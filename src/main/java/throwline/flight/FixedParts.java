package throwline.flight;

import java.util.Optional;
import throwline.liftingline.Inflow;
import throwline.liftingline.SpanGrid;
import throwline.liftingline.StripForces;
import throwline.model.Model;
import throwline.model.Pack;

/**
 * Everything but the tail at one attitude: forces and moments of the wing strip by strip at their own places, of the body,
 * of what only resists, and of a propeller that pulls.
 */
final class FixedParts {

    private final ForceSum lifts;
    private final ForceSum drags;
    private final ForceSum items;
    private final double body;
    private final double areaTimesChord;
    private double camber;

    /**
     * @param airframe the model
     * @param pack its balance
     * @param alpha angle of attack of the body's axis, rad
     * @param wing its forces
     * @param jet of the propeller; empty with the throttle closed
     */
    FixedParts(Airframe airframe, Pack pack, double alpha, StripForces wing, Optional<PropellerJet> jet) {
        Model model = airframe.model();
        areaTimesChord = model.wing().area() * model.wing().meanAerodynamicChord();
        lifts = new ForceSum(alpha);
        drags = new ForceSum(alpha);
        items = new ForceSum(alpha);
        body = airframe.bodyMoment() * alpha;
        addWing(model, pack, wing, jet.isPresent());
        for (DragItem item : airframe.dragItems()) {
            double blown = jet.isPresent() ? jet.get().onPart(item) : 1;
            items.add(0, blown * item.area(), 0, 0, item.height());
        }
        jet.ifPresent(pulling -> pulling.addTo(items, alpha, pack.balance()));
    }

    private void addWing(Model model, Pack pack, StripForces forces, boolean turnedAir) {
        SpanGrid grid = forces.solution().grid();
        Inflow inflow = forces.solution().problem().inflow();
        double quarter = model.wing().chordAt(0) / 4 - pack.balance();
        double tilt = Math.tan(model.wing().dihedral());
        for (int i = 0; i < grid.size(); i++) {
            double back = quarter + grid.quarterChord(i);
            double up = model.wing().height() + Math.abs(grid.control(i)) * tilt;
            double lift = forces.lift(i);
            double drag = forces.drag(i);
            if (turnedAir) {
                double cos = Math.cos(inflow.downwash(i));
                double sin = Math.sin(inflow.downwash(i));
                double turned = lift * cos - drag * sin;
                drag = drag * cos + lift * sin;
                lift = turned;
            }
            lifts.add(lift, 0, 0, back, up);
            drags.add(0, drag, 0, back, up);
            camber += forces.moment(i);
        }
    }

    /** Lift over dynamic pressure, m^2. */
    double lift() {
        return lifts.lift() + items.lift();
    }

    /** Drag over dynamic pressure, m^2, less what the propeller pulls. */
    double drag() {
        return drags.drag() + items.drag();
    }

    /** Moment coefficient. */
    double moment() {
        return perChord(lifts.moment() + drags.moment() + items.moment() + camber + body);
    }

    /** Moments by their causes, with that of the tail. */
    Moments moments(double tailMoment) {
        return new Moments(
                perChord(lifts.moment()),
                perChord(camber),
                perChord(drags.moment()),
                perChord(body),
                perChord(items.moment()),
                tailMoment);
    }

    private double perChord(double moment) {
        return moment / areaTimesChord;
    }
}
