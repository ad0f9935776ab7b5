package throwline.report.chart;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleEdge;

/** What is drawn by hand over the area of a chart; it may reach past the area's edges. */
abstract class Overlay extends AbstractXYAnnotation {

    private static final long serialVersionUID = 1;

    /**
     * The area of the chart and its axes.
     *
     * @param area in points
     * @param across the axis below
     * @param up the axis at the left
     */
    record Frame(Rectangle2D area, ValueAxis across, ValueAxis up) {
        /** From the left, points. */
        double x(double value) {
            return across.valueToJava2D(value, area, RectangleEdge.BOTTOM);
        }

        /** From the top, points. */
        double y(double value) {
            return up.valueToJava2D(value, area, RectangleEdge.LEFT);
        }
    }

    abstract void paint(Graphics2D g2, Ink ink, Frame frame);

    @Override
    public final void draw(
            Graphics2D g2,
            XYPlot plot,
            Rectangle2D area,
            ValueAxis across,
            ValueAxis up,
            int rendererIndex,
            PlotRenderingInfo info) {
        Shape clip = g2.getClip();
        g2.setClip(null);
        paint(g2, new Ink(g2), new Frame(area, across, up));
        g2.setClip(clip);
    }
}
