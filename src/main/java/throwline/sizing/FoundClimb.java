package throwline.sizing;

import java.util.List;
import java.util.Optional;
import throwline.flight.PoweredPoint;
import throwline.model.SetUp;
import throwline.sizing.PoweredWants.As;
import throwline.sizing.PoweredWants.WantedClimb;
import throwline.units.Dimension;
import throwline.units.Key;
import throwline.units.Measure;

/**
 * Flap and throttle that climb as wanted.
 *
 * @param in the set-up in which it climbs
 * @param full the best climb at full throttle; empty where none was found
 * @param enough the climb at the least throttle that does; empty where full throttle does not
 * @param mostFlap furthest flap, ailerons in the middle, that full throttle still climbs so with, rad; empty where none
 * @param flapsEnd true where that is as far as they go
 * @param best the flap with the best climb
 * @param why what keeps it from climbing so; empty where it does
 */
public record FoundClimb(
        SetUp in,
        Optional<Climb> full,
        Optional<Climb> enough,
        Optional<Double> mostFlap,
        boolean flapsEnd,
        Optional<Trial> best,
        List<Limit> why) {

    public FoundClimb {
        why = List.copyOf(why);
    }

    /** True where it climbs as wanted. */
    public boolean met() {
        return enough.isPresent();
    }

    /**
     * A steady climb.
     *
     * @param throttle duty of the controller, 0 to 1
     * @param speed m/s
     * @param angle above the horizon, rad
     * @param thrust N
     */
    public record Climb(
            @Key(Key.NONE) double throttle,
            @Key(Key.NONE) double speed,
            @Measure(Dimension.ANGLE) double angle,
            @Key(Key.NONE) double thrust) {

        static Climb of(PoweredPoint point) {
            return new Climb(
                    point.drive().throttle(),
                    point.speed(),
                    point.climbAngle(),
                    point.drive().thrust());
        }

        /** Height gained a second, m/s. */
        @Key(value = "rate", after = "speed")
        public double rate() {
            return speed * Math.sin(angle);
        }

        /** What it is worth, as one is wanted. */
        public double worth(WantedClimb wanted) {
            return wanted.as() == As.ANGLE ? angle : rate();
        }
    }

    /**
     * One set-up at full throttle.
     *
     * @param flap of the surfaces that are moved, rad, trailing edge down positive
     * @param setUp the same as a set-up
     * @param climb its best climb
     */
    public record Trial(
            @Measure(Dimension.ANGLE) double flap,
            @Key(Key.NONE) SetUp setUp,
            @Key(Key.INLINE) Climb climb) {}
}
