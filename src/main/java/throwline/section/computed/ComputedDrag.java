package throwline.section.computed;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.DoubleStream;
import throwline.numerics.Interpolation;
import throwline.section.boundary.ProfileLayers;
import throwline.section.contour.PanelFlow;

/**
 * Profile drag of an outline by the boundary layer at a few lifts and Reynolds numbers, as natural logarithms. Immutable.
 */
final class ComputedDrag {

    /** Lift coefficients at which drag is looked at. */
    static final double[] LIFTS = {0.2, 0.5, 0.8};

    private static final double[] REYNOLDS = {60_000, 100_000, 150_000, 200_000, 300_000, 500_000};

    /** Drag is the mean around a lift: bubbles that just close or do not make it jump (methods manual 3.12). */
    private static final double[] AROUND = {-0.1, -0.05, 0, 0.05, 0.1};

    /** How many numbers a line has. */
    static final int COUNT = LIFTS.length * REYNOLDS.length;

    private final double[] values;

    private ComputedDrag(double[] values) {
        this.values = values;
    }

    static ComputedDrag of(PanelFlow flow) {
        ProfileLayers.Method method = new ProfileLayers.Method();
        return new ComputedDrag(Arrays.stream(LIFTS)
                .flatMap(lift -> Arrays.stream(REYNOLDS)
                        .map(reynolds -> Arrays.stream(AROUND)
                                .map(aside -> Math.log(method.of(flow, flow.angleOf(lift + aside), reynolds)
                                        .drag()))
                                .average()
                                .orElse(Double.NaN)))
                .toArray());
    }

    static ComputedDrag of(double[] values) {
        return new ComputedDrag(values.clone());
    }

    boolean finite() {
        return DoubleStream.of(values).allMatch(Double::isFinite);
    }

    /** Natural logarithm of drag at one of the lifts. */
    double log(int lift, double reynolds) {
        double[] logs = Arrays.stream(REYNOLDS).map(Math::log).toArray();
        double[] drags = Arrays.copyOfRange(values, lift * REYNOLDS.length, (lift + 1) * REYNOLDS.length);
        return Interpolation.at(logs, drags, Math.log(reynolds));
    }

    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        for (double value : values) {
            text.append(String.format(Locale.ROOT, ",%.6f", value));
        }
        return text.toString();
    }
}
