package throwline.sizing;

import java.util.List;
import java.util.Optional;
import throwline.flight.PullUp;
import throwline.units.Dimension;
import throwline.units.Key;
import throwline.units.Measure;

/**
 * The tightest loop with flaps mixed to the elevator, throttle shut, trimmed for straight flight at the entry.
 *
 * @param speed at the entry, m/s
 * @param own the model's own elevator throw, no flaps
 * @param best the point with the highest load
 * @param points by rising flap throw, the first without flaps, each with as much elevator as keeps the margin
 * @param stoppedBy what keeps it from being tighter
 * @param stallsBelow entry speed, m/s, below which the best point's stick at full stalls the wing; empty where it does not
 *     down to 1.2 times the stall speed
 * @param atSpeeds the best point's throws at other speeds, with and without its flaps
 */
public record LoopHelp(
        @Key(Key.NONE) double speed,
        Pull own,
        Pull best,
        List<Pull> points,
        @Key(Key.NONE) List<Limit> stoppedBy,
        Optional<Double> stallsBelow,
        List<AtSpeed> atSpeeds) {

    public LoopHelp {
        points = List.copyOf(points);
        stoppedBy = List.copyOf(stoppedBy);
        atSpeeds = List.copyOf(atSpeeds);
    }

    /**
     * One pull.
     *
     * @param flap flaps at full stick, rad, down positive
     * @param elevator throw of the elevator at full stick, rad, up positive
     * @param load lift over weight
     * @param radius at the bottom of the loop, m; infinite where the path does not bend
     * @param setBy what sets the load
     * @param angleLeft angle of attack left before the wing's most lift, rad
     */
    public record Pull(
            @Key("flapDown") @Measure(Dimension.ANGLE) double flap,
            @Key("elevatorUp") @Measure(Dimension.ANGLE) double elevator,
            double load,
            double radius,
            PullUp.Limit setBy,
            @Measure(Dimension.ANGLE) double angleLeft) {}

    /**
     * Another entry speed.
     *
     * @param speed m/s
     * @param without the elevator throw alone
     * @param with elevator and flaps
     */
    public record AtSpeed(double speed, Pull without, Pull with) {}
}
