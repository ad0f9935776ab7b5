package throwline.report.chart;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.block.RectangleConstraint;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.ui.HorizontalAlignment;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.Range;

/** Painter of pictures: the library lays out lines of text, axes and grids, the brush draws what is in the panels. */
final class PicturePainter {

    private static final RectangleInsets PADDING = new RectangleInsets(12, 14, 10, 14);

    /** Around a picture whose lines of text stand elsewhere. */
    private static final RectangleInsets NARROW_PADDING = new RectangleInsets(4, 2, 4, 2);

    /** Between panels, points. */
    private static final double GAP = 14;

    /** A width at which no line is broken. */
    private static final double UNBROKEN = 100_000;

    private PicturePainter() {}

    static void draw(Picture picture, Graphics2D g2) {
        Caption caption = picture.caption();
        JFreeChart chart = new JFreeChart(null, ChartStyle.TEXT, plot(picture), false);
        chart.setBackgroundPaint(ChartStyle.GROUND);
        chart.setPadding(caption.equals(Caption.NONE) ? NARROW_PADDING : PADDING);
        lines(caption).forEach(chart::addSubtitle);
        chart.draw(g2, new Rectangle2D.Double(0, 0, picture.width(), picture.height()));
    }

    /** What the lines above and below a picture take where none of them is broken, points. */
    static int heightOfLines(Caption caption) {
        Graphics2D nowhere = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
        RectangleConstraint room = new RectangleConstraint(UNBROKEN, new Range(0, UNBROKEN)).toUnconstrainedHeight();
        double height = lines(caption).stream()
                .mapToDouble(line -> line.arrange(nowhere, room).getHeight())
                .sum();
        nowhere.dispose();
        return (int) height;
    }

    private static List<TextTitle> lines(Caption caption) {
        if (caption.equals(Caption.NONE)) {
            return List.of();
        }
        List<TextTitle> lines = new ArrayList<>();
        lines.add(line(caption.title(), ChartStyle.TITLE, ChartStyle.INK, RectangleEdge.TOP));
        caption.holdsFor()
                .forEach(text -> lines.add(line(text, ChartStyle.TEXT, ChartStyle.QUIET_INK, RectangleEdge.TOP)));
        lines.add(line(" ", ChartStyle.SMALL, ChartStyle.QUIET_INK, RectangleEdge.TOP));
        lines.add(line(caption.proof(), ChartStyle.SMALL, ChartStyle.QUIET_INK, RectangleEdge.BOTTOM));
        return lines;
    }

    private static TextTitle line(String text, Font font, Color color, RectangleEdge edge) {
        TextTitle line = new TextTitle(text, font);
        line.setPaint(color);
        line.setPosition(edge);
        line.setHorizontalAlignment(HorizontalAlignment.LEFT);
        line.setTextAlignment(HorizontalAlignment.LEFT);
        line.setMargin(2, 0, 0, 0);
        return line;
    }

    private static XYPlot plot(Picture picture) {
        XYPlot whole;
        if (picture.panels().size() == 1) {
            whole = plot(picture.panels().get(0), picture.room().getRight());
            whole.setDomainAxis(picture.across().drawn());
        } else {
            CombinedDomainXYPlot combined =
                    new CombinedDomainXYPlot(picture.across().drawn());
            combined.setGap(GAP);
            picture.panels()
                    .forEach(panel -> combined.add(plot(panel, picture.room().getRight()), panel.height()));
            whole = combined;
        }
        whole.setDomainAxisLocation(AxisLocation.BOTTOM_OR_LEFT);
        picture.beside().ifPresent(axis -> {
            whole.setDomainAxis(1, axis.drawn());
            whole.setDomainAxisLocation(1, AxisLocation.TOP_OR_LEFT);
        });
        whole.setInsets(picture.room());
        dress(whole);
        return whole;
    }

    private static XYPlot plot(Panel panel, double right) {
        XYPlot plot = new XYPlot();
        dress(plot);
        plot.setRangeAxis(panel.up().drawn());
        // Without a renderer there is no grid.
        plot.setRenderer(new XYLineAndShapeRenderer());
        plot.setDomainGridlinesVisible(panel.grid() != Panel.Grid.NONE);
        plot.setRangeGridlinesVisible(panel.grid() == Panel.Grid.BOTH);
        plot.addAnnotation(new Front(panel, right), false);
        return plot;
    }

    private static void dress(XYPlot plot) {
        plot.setBackgroundPaint(ChartStyle.GROUND);
        plot.setOutlineVisible(false);
        plot.setDomainGridlinePaint(ChartStyle.GRID);
        plot.setRangeGridlinePaint(ChartStyle.GRID);
        plot.setDomainGridlineStroke(ChartStyle.THIN);
        plot.setRangeGridlineStroke(ChartStyle.THIN);
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        plot.setDomainZeroBaselineVisible(false);
        plot.setRangeZeroBaselineVisible(false);
    }

    /** What a panel shows, drawn over its grid; it may reach past the edges. */
    private static final class Front extends AbstractXYAnnotation {

        private static final long serialVersionUID = 1;

        private final transient Panel panel;
        private final double right;

        Front(Panel panel, double right) {
            this.panel = panel;
            this.right = right;
        }

        @Override
        public void draw(
                Graphics2D g2,
                XYPlot plot,
                Rectangle2D area,
                ValueAxis across,
                ValueAxis up,
                int rendererIndex,
                PlotRenderingInfo info) {
            Shape clip = g2.getClip();
            g2.setClip(null);
            double unit = area.getWidth() / across.getRange().getLength();
            double start = panel.up().low();
            DoubleUnaryOperator scaled = panel.up().turned()
                    ? value -> area.getMinY() + (value - start) * unit
                    : value -> area.getMaxY() - (value - start) * unit;
            Brush brush = new Brush(
                    g2,
                    area,
                    right,
                    value -> across.valueToJava2D(value, area, RectangleEdge.BOTTOM),
                    panel.toScale() ? scaled : value -> up.valueToJava2D(value, area, RectangleEdge.LEFT));
            panel.items().forEach(item -> item.draw(brush));
            g2.setClip(clip);
        }
    }
}
