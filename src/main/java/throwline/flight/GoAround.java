package throwline.flight;

import java.util.List;
import java.util.Optional;

/**
 * Going around from the approach at full throttle.
 *
 * @param climbAngle of the steady path at the approach speed then, rad above the horizon; straight up where it pulls more
 *     than its weight
 * @param heightLost from the decision to the lowest point, m; infinite where it goes on sinking
 * @param way seen from the side, from the decision at height 0 on, six seconds of it
 * @param elevatorChange of the elevator that holds the nose, rad, trailing edge down positive; empty where nothing
 *     but the propeller holds it
 */
public record GoAround(double climbAngle, double heightLost, List<PathPoint> way, Optional<Double> elevatorChange) {

    public GoAround {
        way = List.copyOf(way);
    }

    /** Angles that the words begin at, rad (PRACTICE, methods manual 20.15). */
    private static final double CLIMBS_AWAY = Math.toRadians(8);

    private static final double CLIMBS = Math.toRadians(3);

    /** What it does. */
    public enum Verdict {
        /** Above 8 degrees. */
        CLIMBS_AWAY,
        /** 3 to 8 degrees. */
        CLIMBS_SLOWLY,
        /** 0 to 3 degrees. */
        HOLDS,
        /** Goes on sinking at full throttle. */
        SINKS_ON
    }

    /** What it does at a climb angle, rad. */
    public static Verdict verdict(double climbAngle) {
        if (climbAngle < 0) {
            return Verdict.SINKS_ON;
        }
        return climbAngle < CLIMBS
                ? Verdict.HOLDS
                : climbAngle < CLIMBS_AWAY ? Verdict.CLIMBS_SLOWLY : Verdict.CLIMBS_AWAY;
    }
}
