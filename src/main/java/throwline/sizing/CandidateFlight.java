package throwline.sizing;

import java.util.Optional;
import throwline.flight.Attitude;
import throwline.flight.Descent;
import throwline.flight.Stall;
import throwline.model.SetUp;
import throwline.units.Dimension;
import throwline.units.Key;
import throwline.units.Measure;

/**
 * Set-up tried in flight.
 *
 * @param flap where the flaps stand, rad, trailing edge down positive
 * @param aileron where the ailerons stand, rad
 * @param setUp the same as a set-up
 * @param stall its slowest steady flight; empty where it was not found
 * @param angle descent angle at the wanted speed, rad; straight down where there is too much drag; not a number where none
 *     is wanted or there is none
 * @param elevator where the elevator stands in that descent, rad; empty where there is none that is steady
 * @param fault why this cannot be flown; empty where it can
 */
public record CandidateFlight(
        @Key("flaps") @Measure(Dimension.ANGLE) double flap,
        @Key("ailerons") @Measure(Dimension.ANGLE) double aileron,
        @Key(Key.NONE) SetUp setUp,
        @Key(Key.NONE) Optional<StallSpeeds> stall,
        @Key("descentAngle") @Measure(Dimension.ANGLE) double angle,
        @Key(Key.NONE) Optional<Double> elevator,
        @Key(Key.NONE) Optional<Limit> fault) {

    /** Less angle than this left before the tail stalls is not safe, rad (PRACTICE, methods manual 7.6). */
    public static final double SAFE_TAIL = Math.toRadians(2);

    /**
     * The slowest steady flight.
     *
     * @param speed m/s
     * @param onset speed at which a part of the wing lets go first, m/s
     * @param plateau speed if no section lost lift past its stall, m/s
     * @param elevatorLimited true where the elevator's travel ends before the wing stalls
     */
    public record StallSpeeds(double speed, double onset, double plateau, boolean elevatorLimited) {}

    /** A set-up as it was flown; the descent is empty where no speed is wanted or no stall was found. */
    static CandidateFlight of(
            double flap, double aileron, SetUp setUp, Optional<Stall> stall, Optional<Descent> descent) {
        double angle = descent.map(d -> d.outcome() == Descent.Outcome.TOO_FAST
                        ? Math.PI / 2
                        : d.attitude().map(Attitude::descentAngle).orElse(Double.NaN))
                .orElse(Double.NaN);
        return new CandidateFlight(
                flap,
                aileron,
                setUp,
                stall.map(s -> new StallSpeeds(s.speed(), s.onsetSpeed(), s.plateauSpeed(), s.elevatorLimited())),
                angle,
                descent.flatMap(Descent::steady).map(Attitude::elevator),
                stall.isEmpty() ? Optional.of(Limit.NO_SOLUTION) : descent.flatMap(CandidateFlight::fault));
    }

    private static Optional<Limit> fault(Descent descent) {
        return switch (descent.outcome()) {
            case TOO_SLOW -> Optional.of(Limit.WING_STALL);
            case TOO_FAST -> Optional.of(Limit.TOO_MUCH_DRAG);
            case ELEVATOR_SHORT -> Optional.of(Limit.ELEVATOR_TRAVEL);
            case NOT_FOUND -> Optional.of(Limit.NO_SOLUTION);
            case STEADY ->
                descent.attitude().filter(a -> a.tailMargin() < SAFE_TAIL).map(a -> Limit.TAIL_MARGIN);
        };
    }

    /** Stall speed, m/s; not a number where it was not found. */
    @Key(value = "stallSpeed", after = "stall")
    public double stallSpeed() {
        return stall.map(StallSpeeds::speed).orElse(Double.NaN);
    }
}
