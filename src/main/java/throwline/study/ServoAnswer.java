package throwline.study;

import java.util.List;
import java.util.Optional;
import throwline.linkage.ControlRun.Reach;
import throwline.units.Dimension;
import throwline.units.Key;
import throwline.units.Measure;

/**
 * Duties of the servos in one set-up with one pack.
 *
 * @param limitedBy surface that sets the speed limit; empty where there is no limit
 * @param loads one entry a surface whose load was found
 * @param positions where each surface stands in this set-up, alone and with each stick at full
 * @param yields surfaces that stand well short of where they are programmed when coming in
 * @param mix the elevator to mix in to start with, from where it sits in the reference set-up: half of the expected change;
 *     empty for the reference, and where the change may go either way
 */
public record ServoAnswer(
        @Key(Key.NONE) String limitedBy,
        @Key("servos") List<SurfaceLoad> loads,
        List<Position> positions,
        @Key(Key.NONE) List<Yield> yields,
        Optional<Position> mix) {

    public ServoAnswer {
        loads = List.copyOf(loads);
        positions = List.copyOf(positions);
        yields = List.copyOf(yields);
    }

    /** Nothing is known. */
    public static ServoAnswer none() {
        return new ServoAnswer("", List.of(), List.of(), List.of(), Optional.empty());
    }

    /**
     * Load of the servo of one surface, worst over the sticks.
     *
     * @param surface its name
     * @param rating torque of the servo, N m; empty where the model does not say
     * @param assumedLinkage true where the linkage is not given and the full swing is taken to give the full travel, evenly
     * @param comingIn torque at the servo at the approach speed, N m
     * @param halfRatingAt speed at which half the rating is needed, m/s; empty where there is no rating
     * @param overSpeed slowest first
     */
    public record SurfaceLoad(
            String surface,
            Optional<Double> rating,
            boolean assumedLinkage,
            Headline comingIn,
            Optional<Double> halfRatingAt,
            List<LoadPoint> overSpeed) {
        public SurfaceLoad {
            overSpeed = List.copyOf(overSpeed);
        }
    }

    /**
     * A surface that the air pushes back.
     *
     * @param surface its name
     * @param stick with this stick at full; empty without one
     * @param told where it stands with nothing pushing, rad, trailing edge down positive
     * @param angle where it stands, rad
     */
    public record Yield(String surface, String stick, double told, double angle) {
        /** How far it is pushed back, rad. */
        double lost() {
            return Math.abs(told - angle);
        }
    }

    /**
     * Load of one servo at one speed.
     *
     * @param speed m/s
     * @param stick with this stick at full; empty without one
     * @param angle where the surface stands then, rad, trailing edge down positive
     * @param hinge size of the hinge moment, N m
     * @param torque at the servo, N m; empty where the linkage does not get the surface there
     */
    public record LoadPoint(
            double speed,
            @Key(value = "stick", nullIfEmpty = true) String stick,
            @Measure(Dimension.ANGLE) double angle,
            double hinge,
            Optional<Double> torque) {}

    /**
     * Place of one surface.
     *
     * @param surface its name
     * @param stick with this stick at full; empty without one
     * @param side left, right, or both where they stand alike
     * @param angle where it stands, rad, trailing edge down positive, cut at its travel
     * @param atItsStop true where it was cut
     * @param travelShare of the surface's travel to that side, down positive; 0 where it has none
     * @param chord of the surface at its root end, m
     * @param servo angle of the servo from where the surface is at neutral, rad, down positive; empty where the linkage
     *     locks before
     * @param swingShare of the servo's swing from its middle, down positive; empty where the linkage locks before
     * @param reach whether the servo gets it there
     * @param assumedLinkage true where the linkage is not given
     */
    public record Position(
            String surface,
            @Key(value = "stick", nullIfEmpty = true) String stick,
            SetUpResult.Side side,
            @Measure(Dimension.ANGLE) double angle,
            boolean atItsStop,
            @Key("travel") double travelShare,
            @Key(Key.NONE) double chord,
            @Measure(Dimension.ANGLE) Optional<Double> servo,
            @Key("swing") Optional<Double> swingShare,
            Reach reach,
            boolean assumedLinkage) {

        /** Straight distance of the trailing edge from neutral, m, down positive. */
        @Key(value = "straight", after = "atItsStop")
        public double straight() {
            return edge().distance(angle);
        }

        /** Height of the trailing edge below neutral, m. */
        @Key(value = "vertical", after = "straight")
        public double vertical() {
            return edge().height(angle);
        }

        /** How exactly it is set on the bench, rad. */
        @Key(value = "tolerance", after = "vertical")
        @Measure(Dimension.ANGLE)
        public double tolerance() {
            return edge().angleOf(EdgeThrow.TOLERANCE);
        }

        private EdgeThrow edge() {
            return new EdgeThrow(chord);
        }
    }
}
