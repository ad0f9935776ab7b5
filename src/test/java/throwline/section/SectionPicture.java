package throwline.section;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Two panels side by side, lines for predictions and marks for measurements, colours after Okabe and Ito. */
final class SectionPicture {

    private static final int WIDTH = 620;
    private static final int HEIGHT = 460;
    private static final Color[] COLORS = {
        new Color(0x000000),
        new Color(0x0072B2),
        new Color(0xD55E00),
        new Color(0x009E73),
        new Color(0xCC79A7),
        new Color(0xE69F00),
        new Color(0x56B4E9),
        new Color(0x777777)
    };

    private final List<Panel> panels = new ArrayList<>();

    /** One pair of axes. */
    static final class Panel {
        private final String title;
        private final NumberAxis across;
        private final NumberAxis up;
        private final XYSeriesCollection lines = new XYSeriesCollection();
        private final XYSeriesCollection marks = new XYSeriesCollection();

        Panel(String title, String across, double[] acrossRange, String up, double[] upRange) {
            this.title = title;
            this.across = new NumberAxis(across);
            this.across.setRange(acrossRange[0], acrossRange[1]);
            this.up = new NumberAxis(up);
            this.up.setRange(upRange[0], upRange[1]);
        }

        /** A predicted line and what was measured, in one colour. */
        void add(String name, List<double[]> line, List<double[]> measured) {
            lines.addSeries(series(name, line));
            marks.addSeries(series(name, measured));
        }

        private static XYSeries series(String name, List<double[]> points) {
            XYSeries series = new XYSeries(name, false, true);
            points.forEach(point -> series.add(point[0], point[1]));
            return series;
        }

        private JFreeChart chart() {
            XYLineAndShapeRenderer line = new XYLineAndShapeRenderer(true, false);
            XYLineAndShapeRenderer mark = new XYLineAndShapeRenderer(false, true);
            for (int i = 0; i < lines.getSeriesCount(); i++) {
                Color color = COLORS[i % COLORS.length];
                float[] dash = i % 2 == 0 ? new float[] {1, 0} : new float[] {8, 3};
                line.setSeriesPaint(i, color);
                line.setSeriesStroke(
                        i, new BasicStroke(1.6f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, dash, 0));
                mark.setSeriesPaint(i, color);
                mark.setSeriesShape(i, new Ellipse2D.Double(-2.5, -2.5, 5, 5));
                mark.setSeriesVisibleInLegend(i, false);
            }
            XYPlot plot = new XYPlot(lines, across, up, line);
            plot.setDataset(1, marks);
            plot.setRenderer(1, mark);
            plot.setBackgroundPaint(Color.WHITE);
            plot.setDomainGridlinePaint(new Color(0xE2E2E2));
            plot.setRangeGridlinePaint(new Color(0xE2E2E2));
            JFreeChart chart = new JFreeChart(title, new Font(Font.SANS_SERIF, Font.BOLD, 14), plot, true);
            chart.setBackgroundPaint(Color.WHITE);
            return chart;
        }
    }

    SectionPicture with(Panel panel) {
        panels.add(panel);
        return this;
    }

    void write(Path file) throws IOException {
        BufferedImage image = new BufferedImage(WIDTH * panels.size(), HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D g2 = image.createGraphics();
        g2.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        for (int i = 0; i < panels.size(); i++) {
            panels.get(i).chart().draw(g2, new Rectangle2D.Double(i * WIDTH, 0, WIDTH, HEIGHT));
        }
        g2.dispose();
        ImageIO.write(image, "png", file.toFile());
    }
}
