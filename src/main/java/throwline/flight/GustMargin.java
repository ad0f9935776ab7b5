package throwline.flight;

import java.util.Optional;
import throwline.liftingline.LiftingLineSolution;
import throwline.liftingline.StallReading;
import throwline.liftingline.StripForces;
import throwline.model.Pack;

/**
 * What is left before the stall at one speed, and how strong a gust from below takes it all: a sharp gust {@code w} turns
 * the air by {@code atan(w / V)} before speed and attitude answer (methods manual 9.5).
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
    private static final int MOST_STEPS = 20;

    /** Walks up from an attitude, tail and elevator left alone; empty where a solve failed or no stall was met. */
    static Optional<GustMargin> of(Trimmer trimmer, Pack pack, Attitude attitude) {
        Optional<GustRise> walk = walk(trimmer, attitude);
        Airframe airframe = trimmer.airframe();
        return walk.map(w -> {
            GustLoad loads = new GustLoad(
                    pack.mass() * Gravity.STANDARD / airframe.model().wing().area(),
                    airframe.air().density(),
                    airframe.model().wing().meanAerodynamicChord(),
                    w.slope);
            return at(attitude.speed(), w.angle, w.firstAngle, loads.load(attitude.speed(), USUAL));
        });
    }

    private record GustRise(double angle, double firstAngle, double slope) {}

    private static Optional<GustRise> walk(Trimmer trimmer, Attitude attitude) {
        double slope = Double.NaN;
        double before = StripForces.of(attitude.wing()).liftCoefficient();
        double beforeThat = Double.NEGATIVE_INFINITY;
        double margin = StallReading.of(attitude.wing()).margin();
        double first = margin <= 0 ? 0 : Double.NaN;
        for (int k = 1; k <= MOST_STEPS; k++) {
            LiftingLineSolution wing = trimmer.wing(attitude.speed(), attitude.alpha() + k * STEP);
            if (!wing.status().converged()) {
                return Optional.empty();
            }
            double next = StallReading.of(wing).margin();
            if (Double.isNaN(first) && next <= 0) {
                first = (k - 1 + margin / (margin - next)) * STEP;
            }
            margin = next;
            double lift = StripForces.of(wing).liftCoefficient();
            slope = k == 1 ? (lift - before) / STEP : slope;
            if (lift < before) {
                double angle = k == 1 ? 0 : (k - 1 + top(beforeThat, before, lift)) * STEP;
                double onset = Double.isNaN(first) ? angle : Math.min(first, angle);
                return Optional.of(new GustRise(angle, onset, slope));
            }
            beforeThat = before;
            before = lift;
        }
        return Optional.empty();
    }

    /** Margins in angle as gusts at a speed. */
    static GustMargin at(double speed, double angle, double firstAngle, double usualLoad) {
        return new GustMargin(angle, firstAngle, speed * Math.tan(angle), speed * Math.tan(firstAngle), usualLoad);
    }

    /** Top of the parabola through three points a step apart, in steps from the middle one. */
    private static double top(double left, double middle, double right) {
        double bend = left - 2 * middle + right;
        return bend < 0 ? Math.max(-0.5, Math.min(0.5, (left - right) / (2 * bend))) : 0;
    }
}
