package throwline.flight;

import java.util.Optional;
import throwline.liftingline.AngleWalk;
import throwline.liftingline.WingPoint;
import throwline.model.Pack;

/**
 * Angle left before the stall at one speed, how strong a gust from below takes it all, and what load it adds: a sharp gust
 * {@code w} turns the air by {@code atan(w / V)} before speed and attitude answer (methods manual 9.5).
 *
 * @param angle angle of attack left before the wing's largest lift, rad
 * @param firstAngle angle of attack left before a part of the wing lets go, rad; not more than {@code angle}
 * @param gust strongest gust from below that the wing takes, m/s
 * @param firstGust the same until a part of the wing lets go, m/s
 * @param usualLoad load over weight that a gust of {@link #USUAL} adds
 */
public record GustMargin(double angle, double firstAngle, double gust, double firstGust, double usualLoad) {

    /** A gust from below that a model meets on a usual day, m/s (PRACTICE, methods manual 9.5). */
    public static final double USUAL = 2;

    private static final double STEP = Math.toRadians(2);

    /** As in the search for the stall: until half of the wing is past its stall lift may have teeth. */
    private static final double HALF = 0.5;

    private static final int MOST_POINTS = 21;

    /** Margin by a walk up from an attitude, tail and elevator left alone; empty where a solve failed or no stall was met. */
    static Optional<GustMargin> of(Trimmer trimmer, Pack pack, Attitude attitude) {
        Optional<GustRise> walk = walk(trimmer, attitude);
        Airframe airframe = trimmer.airframe();
        return walk.map(w -> {
            double perLift = 1 / airframe.balance(pack).resultantFor(attitude.speed());
            double load = w.slope * Math.atan(USUAL / attitude.speed()) * perLift;
            return at(attitude.speed(), w.angle, w.firstAngle, load);
        });
    }

    private record GustRise(double angle, double firstAngle, double slope) {}

    private static Optional<GustRise> walk(Trimmer trimmer, Attitude attitude) {
        double from = attitude.alpha();
        AngleWalk<WingPoint> walk = AngleWalk.up(
                from,
                STEP,
                MOST_POINTS,
                (alpha, before) -> WingPoint.of(
                        alpha, before.size() == 0 ? attitude.wing() : trimmer.wing(attitude.speed(), alpha)),
                w -> w.size() > 1 && w.last().reading().stalledShare() >= HALF);
        if (!walk.ended()) {
            return Optional.empty();
        }
        double angle = Math.max(0, walk.stall().alpha() - from);
        double first = STEP * walk.firstFall(WingPoint::margin).orElse(Double.POSITIVE_INFINITY);
        double slope = (walk.get(1).lift() - walk.get(0).lift()) / STEP;
        return Optional.of(new GustRise(angle, Math.min(first, angle), slope));
    }

    /** Margins in angle as gusts at a speed. */
    static GustMargin at(double speed, double angle, double firstAngle, double usualLoad) {
        return new GustMargin(angle, firstAngle, speed * Math.tan(angle), speed * Math.tan(firstAngle), usualLoad);
    }
}
