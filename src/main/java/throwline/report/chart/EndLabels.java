package throwline.report.chart;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.Comparator;
import java.util.List;

/** Names of curves and of levels that reach the right side of a plot, below each other beside it, with a line from each curve's end. */
final class EndLabels extends Overlay {

    private static final long serialVersionUID = 1;

    /** How far the names stand from the plot, points. */
    private static final double AWAY = 24;

    private static final double GAP = 3;

    private final transient List<End> ends;

    EndLabels(List<End> ends) {
        this.ends = List.copyOf(ends);
    }

    /**
     * Where a curve or a level ends.
     *
     * @param name of it
     * @param color of the line to the name
     * @param font of the name
     * @param x place
     * @param y place
     */
    record End(String name, Color color, Font font, double x, double y) {

        /** The end of a curve. */
        static End of(String name, HouseStyle.Look look, double x, double y) {
            return new End(name, look.color(), HouseStyle.STRONG, x, y);
        }

        /** The end of a level that curves are compared with. */
        static End ofLevel(String name, double x, double y) {
            return new End(name, HouseStyle.QUIET_INK, HouseStyle.SMALL, x, y);
        }
    }

    @Override
    void paint(Graphics2D g2, Ink ink, Frame frame) {
        Rectangle2D area = frame.area();
        double step = ink.height(HouseStyle.STRONG);
        List<End> downwards = ends.stream()
                .sorted(Comparator.comparingDouble(End::y).reversed())
                .toList();
        double[] wanted =
                downwards.stream().mapToDouble(end -> frame.y(end.y())).toArray();
        double[] places = apart(wanted, step, area.getMinY() + step / 2, area.getMaxY() - step / 2);
        for (int i = 0; i < places.length; i++) {
            End end = downwards.get(i);
            double x = frame.x(end.x());
            g2.setStroke(HouseStyle.THIN);
            g2.setPaint(end.color());
            g2.draw(new Line2D.Double(x + GAP, wanted[i], area.getMaxX() + AWAY - GAP, places[i]));
            ink.text(end.name(), end.font(), HouseStyle.INK, area.getMaxX() + AWAY, places[i], Ink.Side.RIGHT);
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
