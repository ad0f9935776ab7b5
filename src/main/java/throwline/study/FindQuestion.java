package throwline.study;

import java.util.Optional;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.sizing.PoweredWants;
import throwline.sizing.SetUpWants;
import throwline.sizing.SetUpWants.WantedRoll;

/**
 * Wants of a pilot; at least one of the wants is there.
 *
 * @param pack the battery it flies with, of the model
 * @param name what a set-up or stick that is found is called
 * @param setUp flaps and ailerons for a stall speed, a way down, or both
 * @param roll ailerons for a roll rate; in the set-up that is found where one is wanted, else in the reference set-up
 * @param levelTrim elevator mixed to a lever
 * @param rollHelp flaps that move with the ailerons
 * @param tightestLoop flaps that move with the elevator
 * @param powered what the motor is to do
 */
public record FindQuestion(
        Pack pack,
        String name,
        Optional<SetUpWants> setUp,
        Optional<WantedRoll> roll,
        Optional<LevelTrim> levelTrim,
        Optional<RollHelpWanted> rollHelp,
        Optional<LoopWanted> tightestLoop,
        PoweredWants powered) {

    /** A question that wants nothing of the motor. */
    public FindQuestion(
            Pack pack,
            String name,
            Optional<SetUpWants> setUp,
            Optional<WantedRoll> roll,
            Optional<LevelTrim> levelTrim,
            Optional<RollHelpWanted> rollHelp,
            Optional<LoopWanted> tightestLoop) {
        this(pack, name, setUp, roll, levelTrim, rollHelp, tightestLoop, PoweredWants.none());
    }

    /** True where nothing is wanted. */
    public boolean isEmpty() {
        return setUp.isEmpty()
                && roll.isEmpty()
                && levelTrim.isEmpty()
                && rollHelp.isEmpty()
                && tightestLoop.isEmpty()
                && powered.isEmpty();
    }

    /** Most lift of the wing in a loop over what is expected, as flights have it. */
    double lift() {
        return tightestLoop.map(LoopWanted::lift).orElse(1.0);
    }

    /**
     * No trim change when a lever moves.
     *
     * @param setUp of the model, with the lever at its end; empty for the set-up that is found
     * @param speed to make it for, m/s; empty for the speed to come in at in that set-up
     * @param points of the curve, 3 to 9; empty for as few as are good enough
     */
    public record LevelTrim(Optional<SetUp> setUp, Optional<Double> speed, Optional<Integer> points) {}

    /**
     * Want of flaps that help the ailerons.
     *
     * @param speed at which it rolls, m/s; empty for the speed to come in at
     */
    public record RollHelpWanted(Optional<Double> speed) {}

    /**
     * The tightest loop.
     *
     * @param speed at its entry, m/s; empty for a usual one
     * @param lift most lift of the wing over what is expected, as flights have it; 1 without
     */
    public record LoopWanted(Optional<Double> speed, double lift) {

        /** With the lift expected. */
        public LoopWanted(Optional<Double> speed) {
            this(speed, 1);
        }
    }
}
