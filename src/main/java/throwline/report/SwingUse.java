package throwline.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import throwline.model.Model;
import throwline.model.Servo;
import throwline.study.ServoAnswer.Position;
import throwline.study.SetUpResult;
import throwline.units.Dimension;
import throwline.units.Measure;

/**
 * Part of a servo's swing that all set-ups and sticks together use; only where the linkage is known.
 *
 * @param surface its name
 * @param low furthest to the up side, as a share of the swing from its middle, down positive
 * @param high furthest to the down side, the same
 * @param offset offset at neutral that would put the used part into the middle, rad; empty where the servo reaches
 *     without, where it lies there nearly, or where the swing is not known
 */
public record SwingUse(
        String surface,
        double low,
        double high,
        @Measure(Dimension.ANGLE) Optional<Double> offset) {

    /** Less of the swing used than this costs torque and resolution (PRACTICE, methods manual 17.5). */
    private static final double LITTLE = 0.6;

    /** From this share of the swing on to one side, an offset at neutral is worth a word (common practice). */
    private static final double NEARLY_ALL = 0.9;

    /** The middle of what is used may lie this share of the swing beside its middle without a word (common practice). */
    private static final double NEARLY = 0.15;

    /** Linkages that all set-ups use, surface by surface. */
    public static List<SwingUse> of(Model model, List<SetUpResult> setUps) {
        Map<String, double[]> ends = new LinkedHashMap<>();
        for (SetUpResult result : setUps) {
            for (Position p : result.servos().positions()) {
                if (!p.assumedLinkage() && p.swingShare().isPresent()) {
                    double share = p.swingShare().get();
                    ends.merge(p.surface(), new double[] {share, share}, (a, b) ->
                            new double[] {Math.min(a[0], b[0]), Math.max(a[1], b[1])});
                }
            }
        }
        List<SwingUse> uses = new ArrayList<>();
        ends.forEach((surface, e) -> uses.add(new SwingUse(surface, e[0], e[1], offset(model.servo(surface), e))));
        return uses;
    }

    private static Optional<Double> offset(Servo servo, double[] ends) {
        double middle = (ends[0] + ends[1]) / 2;
        OptionalDouble swing = servo.swing();
        boolean fits = Math.max(Math.abs(ends[0]), Math.abs(ends[1])) < NEARLY_ALL;
        return fits || Math.abs(middle) <= NEARLY || swing.isEmpty()
                ? Optional.empty()
                : Optional.of(servo.offset() + middle * swing.getAsDouble());
    }

    /** Share of the whole swing that is used, 0 to 1 and more where the servo does not reach. */
    public double used() {
        return (high - low) / 2;
    }

    /** True where so little is used that the surface loses torque and resolution. */
    public boolean wastesSwing() {
        return Math.max(Math.abs(low), Math.abs(high)) <= LITTLE;
    }
}
