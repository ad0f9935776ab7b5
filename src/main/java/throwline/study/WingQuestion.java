package throwline.study;

import java.util.List;
import java.util.stream.IntStream;
import throwline.liftingline.Ground;
import throwline.model.SetUp;

/**
 * Question about the bare wing of a model.
 *
 * @param setUp where its surfaces stand; cut at their travel
 * @param incidences of the root chord against the air, rad, in the order wanted
 * @param speed airspeed, m/s, positive
 * @param tipHelix angle of the tips' path in a steady roll, rad: roll rate times half the span over speed, right wing down
 *     positive; 0 for straight flight
 * @param ground the ground below the quarter chord at the middle
 * @param plain true for the plain lifting line, without the correction for the finite chord
 * @param strips wanted over the whole span, at least 6; the grid may have a few more
 */
public record WingQuestion(
        SetUp setUp, List<Double> incidences, double speed, double tipHelix, Ground ground, boolean plain, int strips) {

    /** Strips over the whole span unless asked otherwise: four figures of lift (convergence test of the lifting line). */
    public static final int USUAL_STRIPS = 80;

    private static final double STEP_SLACK = 1e-9;

    public WingQuestion {
        incidences = List.copyOf(incidences);
        if (!(speed > 0)) {
            throw new IllegalArgumentException("a speed above zero, not " + speed + " m/s");
        }
    }

    /** Straight flight in free air, chord correction on, the usual number of strips. */
    public static WingQuestion of(SetUp setUp, List<Double> incidences, double speed) {
        return new WingQuestion(setUp, incidences, speed, 0, Ground.none(), false, USUAL_STRIPS);
    }

    /** The same in a steady roll. */
    public WingQuestion withTipHelix(double helix) {
        return new WingQuestion(setUp, incidences, speed, helix, ground, plain, strips);
    }

    /**
     * The same in a steady roll.
     *
     * @param rate roll rate, rad/s, right wing down positive
     * @param semiSpan half the span of the wing, m
     */
    public WingQuestion withRollRate(double rate, double semiSpan) {
        return withTipHelix(rate * semiSpan / speed);
    }

    /** The same at a height of the quarter chord above the ground, m, bound and trailing images. */
    public WingQuestion aboveGround(double height) {
        return new WingQuestion(setUp, incidences, speed, tipHelix, new Ground(height, true), plain, strips);
    }

    /** The same without the correction for the finite chord. */
    public WingQuestion asPlainLine() {
        return new WingQuestion(setUp, incidences, speed, tipHelix, ground, true, strips);
    }

    /** The same with another number of strips. */
    public WingQuestion withStrips(int wanted) {
        return new WingQuestion(setUp, incidences, speed, tipHelix, ground, plain, wanted);
    }

    /**
     * Angles from one to another, both included where the step meets the second.
     *
     * @param from first, rad
     * @param to last, rad
     * @param step rad, not zero, of the sign that leads from the first to the last
     * @return the angles in order
     */
    public static List<Double> angles(double from, double to, double step) {
        if (step == 0 || (to - from) * step < 0) {
            throw new IllegalArgumentException("a step of " + step + " does not lead from " + from + " to " + to);
        }
        int steps = (int) Math.floor((to - from) / step + STEP_SLACK);
        return IntStream.rangeClosed(0, steps).mapToObj(k -> from + k * step).toList();
    }
}
