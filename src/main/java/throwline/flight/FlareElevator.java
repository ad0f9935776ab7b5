package throwline.flight;

import throwline.flight.Trimmer.TailPower;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.units.Dimension;
import throwline.units.Key;
import throwline.units.Measure;

/**
 * Elevator close to the ground, where the wing's downwash at the tail is less: to round out, which turns
 * the nose up with the path and so brings air from below to the tail, and to hold the touch-down.
 */
public final class FlareElevator {

    private final Model model;
    private final GroundPolar polar;
    private final double perTailAngle;
    private final double arm;

    FlareElevator(Trimmer trimmer, Pack pack, Attitude approach, GroundPolar polar) {
        this.polar = polar;
        model = trimmer.airframe().model();
        TailPower power = trimmer.tailPower(pack, approach);
        perTailAngle = power.byAngle() / power.byElevator();
        arm = model.tail().arm() + model.tail().chord() / 4 - pack.balance();
    }

    /**
     * The demand, rad of elevator, trailing edge down positive.
     *
     * @param roundOut most up elevator in the round-out, at the stop where more would be needed
     * @param touchdown elevator at touch-down, likewise
     * @param left travel left beyond the larger of the two, rad; not positive where it does not suffice
     * @param endsFirst true where with the wheels at the ground the elevator's travel ends before the wing lets go
     */
    public record Demand(
            @Measure(Dimension.ANGLE) double roundOut,
            @Measure(Dimension.ANGLE) double touchdown,
            @Measure(Dimension.ANGLE) double left,
            @Key("endsBeforeWing") boolean endsFirst) {}

    /** The demand of one landing; {@code touchdownLift} is the lift coefficient with which it touches. */
    Demand demand(Landing landing, double touchdownLift) {
        double touchdown = polar.elevator(Math.min(touchdownLift, polar.limit(0)), 0);
        double roundOut = landing.pulls().stream().mapToDouble(this::at).min().orElse(touchdown);
        double stop = -model.tail().elevator().travelUp();
        double left = Math.min(roundOut, touchdown) - stop;
        return new Demand(Math.max(stop, roundOut), Math.max(stop, touchdown), left, polar.limitedByElevator());
    }

    /** Elevator that one step of a round-out takes, rad. */
    double at(Landing.Pull pull) {
        return polar.elevator(pull.lift(), pull.height()) - perTailAngle * arm * pull.bend();
    }
}
