package throwline.section.computed;

import java.util.Optional;
import org.apache.commons.math3.exception.MathIllegalArgumentException;
import throwline.section.AirfoilShape;
import throwline.section.contour.Contour;
import throwline.section.contour.PanelFlow;

/**
 * Traits of an outline that tell how the section behaves, from the flow without friction round it (methods manual 3.12).
 *
 * @param thickness over chord
 * @param camber over chord
 * @param edge how fast the two surfaces come together at the back, thickness over length
 * @param zeroLiftAngle without friction, rad
 * @param moment quarter-chord moment without lift and friction
 * @param peakLift lift coefficient at which the highest speed on top reaches the square root of {@link #PEAK}
 * @param peakAngle angle of attack there, rad
 * @param drag profile drag by the boundary layer
 */
public record SectionTraits(
        double thickness,
        double camber,
        double edge,
        double zeroLiftAngle,
        double moment,
        double peakLift,
        double peakAngle,
        ComputedDrag drag) {

    /** Square of the highest speed on top, over that of the air, by which most lift is judged. */
    static final double PEAK = 6;

    /** Panels and thin-section theory further apart than this, and the tenth of the angle, tell of a bad outline (PRACTICE). */
    private static final double APART = Math.toRadians(0.5);

    private static final double APART_SHARE = 0.1;

    private static final double EDGE_FROM = 0.90;
    private static final double EDGE_TO = 0.98;

    /** Differences that count alike between two outlines, as for stand-ins (PRACTICE). */
    private static final double THICKNESS_STEP = 0.03;

    private static final double CAMBER_STEP = 0.01;
    private static final double MOMENT_STEP = 0.03;

    /** Traits of a shape; empty where panels and thin-section theory do not agree on it. */
    public static Optional<SectionTraits> of(AirfoilShape shape) {
        try {
            return of(shape, Contour.of(shape));
        } catch (MathIllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static Optional<SectionTraits> of(AirfoilShape shape, Contour contour) {
        PanelFlow flow = new PanelFlow(contour);
        double thin = shape.zeroLiftAngle();
        if (!(Math.abs(flow.zeroLiftAngle() - thin) <= APART + APART_SHARE * Math.abs(thin))) {
            return Optional.empty();
        }
        double peakLift = flow.liftAtPeak(PEAK);
        return Optional.of(new SectionTraits(
                shape.thickness(),
                shape.camber(),
                (contour.thicknessAt(EDGE_FROM) - contour.thicknessAt(EDGE_TO)) / (EDGE_TO - EDGE_FROM),
                flow.zeroLiftAngle(),
                flow.moment(flow.zeroLiftAngle()),
                peakLift,
                flow.angleOf(peakLift),
                ComputedDrag.of(flow)));
    }

    /** How unlike two outlines are; 1 is much. */
    double distance(SectionTraits other) {
        return Math.hypot(
                Math.hypot((thickness - other.thickness) / THICKNESS_STEP, (camber - other.camber) / CAMBER_STEP),
                (moment - other.moment) / MOMENT_STEP);
    }
}
