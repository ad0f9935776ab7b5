package throwline.report.chart;

import java.util.Locale;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import throwline.words.Words;

/**
 * Axis of a picture or of a panel, whose numbers are written alike whatever the machine's language.
 *
 * @param label quantity and unit; empty for none
 * @param low value at its left or lower end, or at its upper one where it is turned over
 * @param high value at its other end
 * @param step between two marks
 * @param wording of the numbers at the marks
 * @param turned true where values rise down the page
 * @param visible false for a scale that is not shown
 */
record Axis(String label, double low, double high, double step, Wording wording, boolean turned, boolean visible) {

    /** Words for a number at a mark. */
    @FunctionalInterface
    interface Wording {
        String of(double value, String size);
    }

    private static final Wording SIGNED = (value, size) -> value < 0 ? "-" + size : size;

    /** Size alone, where the label says which side is which. */
    static final Wording UNSIGNED = (value, size) -> size;

    /** Size and direction of a surface. */
    static Wording upAndDown(Words words) {
        return (value, size) -> value == 0 ? size : words.say(value < 0 ? "row.up" : "row.down", size);
    }

    /** An axis marked in about so many steps of 1, 2 or 5. */
    static Axis of(String label, double low, double high, int steps) {
        return new Axis(label, low, high, step((high - low) / steps), SIGNED, false, true);
    }

    /** A scale that is not shown. */
    static Axis hidden(double low, double high) {
        return new Axis("", low, high, high - low, SIGNED, false, false);
    }

    /** The same with values that rise down the page. */
    Axis turnedOver() {
        return new Axis(label, low, high, step, wording, true, visible);
    }

    /** The same with other numbers at its marks. */
    Axis worded(double newStep, Wording newWording) {
        return new Axis(label, low, high, newStep, newWording, turned, visible);
    }

    Axis withoutLabel() {
        return new Axis("", low, high, step, wording, turned, visible);
    }

    /** The same with so many marks at most. */
    Axis thinned(int most) {
        double thinner = step;
        while ((high - low) / thinner > most) {
            double power = Math.pow(10, Math.floor(Math.log10(thinner) + 1e-9));
            double first = thinner / power;
            thinner = power * (first < 1.5 ? 2 : first < 3 ? 5 : 10);
        }
        return worded(thinner, wording);
    }

    NumberAxis drawn() {
        NumberAxis axis = new NumberAxis(label.isEmpty() ? null : label);
        axis.setLabelFont(ChartStyle.TEXT);
        axis.setLabelPaint(ChartStyle.INK);
        axis.setTickLabelFont(ChartStyle.TEXT);
        axis.setTickLabelPaint(ChartStyle.INK);
        axis.setAxisLinePaint(ChartStyle.QUIET_INK);
        axis.setTickMarkPaint(ChartStyle.QUIET_INK);
        axis.setRange(low, high);
        axis.setInverted(turned);
        axis.setVisible(visible);
        axis.setTickUnit(new Marks(step, wording));
        return axis;
    }

    /** The nearest of 1, 2, 5, 10 and their tenfolds. */
    private static double step(double wanted) {
        double power = Math.pow(10, Math.floor(Math.log10(wanted)));
        double nearest = power;
        for (double step : new double[] {2, 5, 10}) {
            if (Math.abs(step * power - wanted) < Math.abs(nearest - wanted)) {
                nearest = step * power;
            }
        }
        return nearest;
    }

    /** Marks so far apart, their numbers with the decimals that this needs. */
    private static final class Marks extends NumberTickUnit {

        private static final long serialVersionUID = 1;
        private static final double EXACT = 1e-6;

        private final transient Wording wording;
        private final int decimals;

        Marks(double step, Wording wording) {
            super(step);
            this.wording = wording;
            int whole = (int) Math.max(0, -Math.floor(Math.log10(step) + EXACT));
            double scaled = step * Math.pow(10, whole);
            decimals = Math.abs(scaled - Math.rint(scaled)) < EXACT ? whole : whole + 1;
        }

        @Override
        public String valueToString(double value) {
            String size = String.format(Locale.ROOT, "%." + decimals + "f", Math.abs(value));
            return Double.parseDouble(size) == 0 ? wording.of(0, size) : wording.of(value, size);
        }
    }
}
