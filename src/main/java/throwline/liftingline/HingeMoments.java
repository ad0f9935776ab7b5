package throwline.liftingline;

import throwline.model.Surface;

/**
 * Hinge moments of the surfaces of a solution over dynamic pressure, m^3, strip by strip: section hinge moment
 * coefficient times the local pressure, the strip's width and the square of the surface's chord. Positive where the air
 * drives the trailing edge down.
 */
public final class HingeMoments {

    private final WingStrips strips;
    private final double[] moment;

    private HingeMoments(WingStrips strips) {
        this.strips = strips;
        moment = new double[strips.grid().size()];
    }

    /**
     * The hinge moments of a solution.
     *
     * @param solution solved with the curves of these strips
     * @param strips says which surface lies where
     */
    public static HingeMoments of(LiftingLineSolution solution, WingStrips strips) {
        SpanGrid grid = strips.grid();
        HingeMoments moments = new HingeMoments(strips);
        for (int i = 0; i < grid.size(); i++) {
            double fraction = strips.surface(i).map(Surface::chordFraction).orElse(0.0);
            double chord = fraction * grid.chord(i);
            double speed = solution.speed(i) * Math.cos(grid.sweep(i));
            double coefficient = solution.problem().curves().get(i).hinge(solution.sectionAngle(i));
            moments.moment[i] = speed * speed * chord * chord * grid.width(i) * coefficient;
        }
        return moments;
    }

    /** Hinge moment of a strip over dynamic pressure, m^3; zero where there is no surface. */
    public double along(int strip) {
        return moment[strip];
    }

    /**
     * Hinge moment of one surface on one side over dynamic pressure, m^3.
     *
     * @param surface its name
     * @param side -1 left, 1 right
     */
    public double of(String surface, int side) {
        double sum = 0;
        for (int i = 0; i < moment.length; i++) {
            boolean there = strips.surface(i).map(s -> s.name().equals(surface)).orElse(false);
            if (there && strips.grid().control(i) * side > 0) {
                sum += moment[i];
            }
        }
        return sum;
    }
}
