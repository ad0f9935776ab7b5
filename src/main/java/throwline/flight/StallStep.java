package throwline.flight;

import java.util.stream.IntStream;
import throwline.flight.Attitude.ElevatorLimit;
import throwline.liftingline.AngleWalk;
import throwline.liftingline.LiftingLineSolution;
import throwline.liftingline.StallReading;
import throwline.liftingline.StripForces;

/** Balanced attitude on a walk up to the stall, with the reading of its wing. */
final class StallStep implements AngleWalk.Point {
    private final Attitude attitude;
    private final StallReading reading;

    StallStep(Attitude attitude) {
        this.attitude = attitude;
        reading = StallReading.of(attitude.wing());
    }

    Attitude attitude() {
        return attitude;
    }

    StallReading reading() {
        return reading;
    }

    /** True where the elevator is not at its stop. */
    boolean isFree() {
        return attitude.elevatorLimit() == ElevatorLimit.NONE;
    }

    /** Angle left before the first part of the wing stalls, rad. */
    double margin() {
        return reading.margin();
    }

    /** Angle left before the first single strip stalls, rad; one at a surface end may be long past it before a part of the wing is. */
    double firstMargin() {
        LiftingLineSolution wing = attitude.wing();
        return IntStream.range(0, wing.grid().size())
                .mapToDouble(wing::margin)
                .min()
                .orElseThrow();
    }

    @Override
    public double alpha() {
        return attitude.alpha();
    }

    @Override
    public double lift() {
        return attitude.lift();
    }

    @Override
    public boolean converged() {
        return attitude.converged() && isFree();
    }

    /** Lift coefficient if no section lost lift past its stall. */
    double hullLift() {
        StripForces forces = StripForces.of(attitude.wing());
        return attitude.lift() + forces.hullLiftCoefficient() - forces.liftCoefficient();
    }
}
