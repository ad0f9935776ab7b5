package throwline.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import throwline.linkage.ServoBlowBack.Hold;
import throwline.study.SetUpResult.Side;
import throwline.units.Dimension;
import throwline.units.Key;
import throwline.units.Measure;

/**
 * Real angles of the surfaces of one set-up: on the bench, and held by their servos against the air.
 *
 * @param comeIn speed to come in at, m/s
 * @param fast a high speed to look at, m/s
 * @param fastIsLimit true where that is the highest speed that the servos allow for flaps, false where it is the fastest
 *     that was looked at
 * @param rows one entry a surface that the set-up or a stick moves from neutral
 */
public record BlowBackResult(double comeIn, double fast, boolean fastIsLimit, List<Row> rows) {

    /** Not further short than another by less than this, rad. */
    private static final double SAME = Math.toRadians(0.05);

    public BlowBackResult {
        rows = List.copyOf(rows);
    }

    /**
     * What is worth reading: each surface as the set-up alone leaves it, and with the stick that leaves it furthest short
     * of where it is programmed to stand.
     */
    public List<Row> telling() {
        Map<String, Row> worst = new LinkedHashMap<>();
        List<Row> telling = new ArrayList<>();
        for (Row row : rows) {
            if (row.stick().isEmpty()) {
                telling.add(row);
            } else {
                worst.merge(row.surface(), row, (a, b) -> b.shortAt(fast) > a.shortAt(fast) + SAME ? b : a);
            }
        }
        telling.addAll(worst.values());
        return telling;
    }

    /** Nothing is known. */
    public static BlowBackResult none() {
        return new BlowBackResult(0, 0, false, List.of());
    }

    /**
     * Places of one surface over speed.
     *
     * @param surface its name
     * @param stick with this stick at full; empty without one
     * @param side left, right, or both where they stand alike
     * @param told where it is programmed to stand, rad, trailing edge down positive, cut at its travel
     * @param chord of the surface at its root end, m
     * @param bench where the servo brings it with nothing pushing, rad
     * @param gapShare share of its angle that it acts like, air passing at the hinge; 1 where it is sealed
     * @param rated false where the servo's torque is not given, so that no place in the air is known
     * @param overSpeed slowest first
     */
    public record Row(
            String surface,
            @Key(value = "stick", nullIfEmpty = true) String stick,
            Side side,
            @Key("programmed") @Measure(Dimension.ANGLE) double told,
            @Key(Key.NONE) double chord,
            @Measure(Dimension.ANGLE) double bench,
            @Key("actsLikeShare") double gapShare,
            @Key("torqueGiven") boolean rated,
            List<Point> overSpeed) {
        public Row {
            overSpeed = List.copyOf(overSpeed);
        }

        /** Straight distance of the trailing edge from neutral on the bench, m. */
        @Key(value = "benchStraight", after = "bench")
        public double benchStraight() {
            return new EdgeThrow(chord).distance(bench);
        }

        /** How far from where it is programmed to stand at a speed, rad; on the bench where nothing is known in the air. */
        double shortAt(double speed) {
            return Math.abs(told - at(speed).map(Point::angle).orElse(bench));
        }

        /** At a speed that was looked at; empty where nothing is known. */
        public Optional<Point> at(double speed) {
            return overSpeed.stream().filter(point -> point.speed() == speed).findFirst();
        }
    }

    /**
     * A surface in the air.
     *
     * @param speed m/s
     * @param angle where it stands, rad
     * @param straight straight distance of the trailing edge from neutral, m
     * @param perhaps where it stands if the air pushes as hard as it may, rad; empty where that was not found, or looked
     *     for: that is done at the speed to come in at and the fast one
     * @param hold how the servo holds it
     */
    public record Point(
            double speed,
            @Measure(Dimension.ANGLE) double angle,
            double straight,
            @Measure(Dimension.ANGLE) Optional<Double> perhaps,
            Hold hold) {}
}
