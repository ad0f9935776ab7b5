package throwline.report.chart;

import java.awt.Color;
import java.awt.Font;
import java.awt.geom.Rectangle2D;
import java.util.Comparator;
import java.util.List;

/**
 * Names of curves and of levels that reach the right side of a panel, below each other beside it, with a line from each
 * curve's end.
 *
 * @param ends in any order
 */
record EndLabels(List<End> ends) implements Item {

    /** How far the names stand from the panel, points. */
    private static final double AWAY = 24;

    private static final double GAP = 3;

    EndLabels {
        ends = List.copyOf(ends);
    }

    /**
     * End of a curve or a level.
     *
     * @param name of it
     * @param color of the line to the name
     * @param font of the name
     * @param place of the end
     */
    record End(String name, Color color, Font font, Place place) {

        static End ofCurve(String name, ChartStyle.Look look, Place place) {
            return new End(name, look.color(), ChartStyle.STRONG, place);
        }

        /** The end of a level that curves are compared with. */
        static End ofLevel(String name, Place place) {
            return new End(name, ChartStyle.QUIET_INK, ChartStyle.SMALL, place);
        }
    }

    @Override
    public void draw(Brush brush) {
        Rectangle2D area = brush.area();
        double step = brush.height(ChartStyle.STRONG);
        List<End> downwards = ends.stream()
                .sorted(Comparator.comparingDouble((End end) -> end.place.y()).reversed())
                .toList();
        double[] wanted =
                downwards.stream().mapToDouble(end -> brush.y(end.place)).toArray();
        double[] places = apart(wanted, step, area.getMinY() + step / 2, area.getMaxY() - step / 2);
        double x = area.getMaxX() + AWAY;
        for (int i = 0; i < places.length; i++) {
            End end = downwards.get(i);
            brush.line(brush.x(end.place) + GAP, wanted[i], x - GAP, places[i], end.color, ChartStyle.THIN);
            brush.text(end.name, end.font, ChartStyle.INK, x, places[i], Brush.Side.RIGHT);
        }
    }

    /**
     * Places in rising order, at least a step apart and between two ends, each as near to where it is wanted as the others
     * let it: neighbours that would touch stand around their middle.
     */
    static double[] apart(double[] wanted, double step, double least, double most) {
        double[] places = wanted.clone();
        for (int first = 0; first < places.length; first++) {
            // The run of names that touch, from here upwards, grows as long as its middle pushes it into the one
            // before.
            int from = first;
            double start = wanted[first];
            while (from > 0 && places[from - 1] + step > start) {
                from--;
                double middle = 0;
                for (int i = from; i <= first; i++) {
                    middle += (wanted[i] - (i - from) * step) / (first - from + 1);
                }
                start = middle;
            }
            for (int i = from; i <= first; i++) {
                places[i] = start + (i - from) * step;
            }
        }
        for (int i = 0; i < places.length; i++) {
            places[i] = Math.max(places[i], i == 0 ? least : places[i - 1] + step);
        }
        for (int i = places.length - 1; i >= 0; i--) {
            places[i] = Math.min(places[i], i == places.length - 1 ? most : places[i + 1] - step);
        }
        return places;
    }
}
