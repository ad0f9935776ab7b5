package throwline.flight;

import throwline.liftingline.Ground;
import throwline.model.Model;
import throwline.model.Wheels;
import throwline.model.Wing;

/** Stance of the model on the ground: where wing and tail are when its wheels, or its belly, touch the ground. */
final class GroundStance {

    /** Height of a leg over its length: legs splay by some 35 degrees (PRACTICE). */
    private static final double SPLAY = 0.8;

    /** A tail is never closer to the ground than this, in chords, so that its image stays one. */
    private static final double LOWEST_TAIL = 0.3;

    /** Nose-up attitude of body and tail over the ground in the last metre, rad (PRACTICE). */
    private static final double ATTITUDE = Math.toRadians(5);

    private GroundStance() {}

    /** Mean height of the wing's lifting line above the wheels' lowest point, or the belly, m. */
    static double wingAboveWheels(Model model) {
        double wheels = model.wheels().map(GroundStance::below).orElse(0.0);
        return model.body().height() / 2 + wheels + model.wing().height() + meanRise(model.wing());
    }

    private static double below(Wheels wheels) {
        return wheels.legs() == Wheels.Legs.NONE
                ? wheels.diameter() / 4
                : SPLAY * wheels.legLength() + wheels.diameter() / 2;
    }

    /** Rise of the lifting line by dihedral, mean over the area. */
    private static double meanRise(Wing wing) {
        double moment = 0;
        for (int i = 1; i < wing.sections().size(); i++) {
            double from = wing.sections().get(i - 1).at();
            double to = wing.sections().get(i).at();
            double inner = wing.sections().get(i - 1).chord();
            double outer = wing.sections().get(i).chord();
            moment += (to - from) * (from * (2 * inner + outer) + to * (inner + 2 * outer)) / 3;
        }
        return Math.tan(wing.dihedral()) * moment / wing.area();
    }

    /** The ground below the tail where this is the ground below the wing. */
    static Ground belowTail(Model model, Ground belowWing) {
        if (!belowWing.isNear()) {
            return belowWing;
        }
        double lower = model.tail().arm() * Math.sin(ATTITUDE);
        double height =
                belowWing.height() - meanRise(model.wing()) + model.tail().height() - lower;
        return new Ground(Math.max(LOWEST_TAIL * model.tail().chord(), height), belowWing.boundImages());
    }
}
