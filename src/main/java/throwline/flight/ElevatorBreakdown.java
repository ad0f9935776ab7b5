package throwline.flight;

import throwline.flight.Trimmer.TailPower;
import throwline.model.Pack;
import throwline.units.Dimension;
import throwline.units.Measure;

/**
 * Causes why the elevator stands elsewhere than in the reference set-up at the same speed: the change by its causes,
 * each in rad of elevator, trailing edge down positive. The causes act together; what is left after each was taken
 * alone is the rest.
 *
 * @param camber the moved sections' own pitching moment
 * @param downwash the wing's wake blows the tail down more, or less
 * @param dragArm drag of the wing above or below the balance point
 * @param wake speed lost in the wing's wake where the tail lies in it
 * @param attitude the body flies at another angle: wing lift and body about the balance point, and the tail's own angle
 * @param rest what the causes taken one by one leave
 */
public record ElevatorBreakdown(
        @Measure(Dimension.ANGLE) double camber,
        @Measure(Dimension.ANGLE) double downwash,
        @Measure(Dimension.ANGLE) double dragArm,
        @Measure(Dimension.ANGLE) double wake,
        @Measure(Dimension.ANGLE) double attitude,
        @Measure(Dimension.ANGLE) double rest) {

    /** The whole change, rad. */
    public double total() {
        return camber + downwash + dragArm + wake + attitude + rest;
    }

    /** The change from a reference to a set-up, both balanced at one speed. */
    static ElevatorBreakdown between(Trimmer reference, Attitude from, Attitude to, Pack pack) {
        TailPower power = reference.tailPower(pack, from);
        double perMoment = -1 / power.byElevator();
        Moments a = from.moments();
        Moments b = to.moments();
        double camber = perMoment * (b.wingCamber() - a.wingCamber());
        double dragArm = perMoment * (b.wingDrag() - a.wingDrag());
        double downwash = perMoment * power.byAngle() * (from.downwash() - to.downwash());
        double wake = perMoment * a.tail() * (to.tailPressure() / from.tailPressure() - 1);
        double attitude = perMoment
                * (b.wingLift() - a.wingLift() + b.body() - a.body() + power.byAngle() * (to.alpha() - from.alpha()));
        double rest = to.elevator() - from.elevator() - camber - dragArm - downwash - wake - attitude;
        return new ElevatorBreakdown(camber, downwash, dragArm, wake, attitude, rest);
    }
}
