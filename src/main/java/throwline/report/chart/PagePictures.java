package throwline.report.chart;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.block.RectangleConstraint;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.title.Title;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.data.Range;

/** Makes pictures ready for a page: their lines of text go to the page, and what is left becomes one SVG element. */
final class PagePictures {

    /** More marks than this on an axis of a narrow chart run into each other. */
    private static final int MOST_MARKS = 7;

    private PagePictures() {}

    /**
     * All pictures, drawn on all processors: no two share anything that changes.
     *
     * @param prefix what the names inside a picture begin with, so that they are its own on the page
     * @throws throwline.report.NoFontException where the machine has no font
     */
    static List<PagePicture> of(List<Supplier<Picture>> pictures, String prefix) {
        Drawing.requireFont();
        return IntStream.range(0, pictures.size())
                .parallel()
                .mapToObj(i -> of(pictures.get(i).get(), prefix))
                .toList();
    }

    private static PagePicture of(Picture picture, String prefix) {
        int width = Math.min(picture.width(), Layout.NARROW.width());
        JFreeChart chart = picture.chart();
        List<String> caption = new ArrayList<>();
        String proof = "";
        for (Object subtitle : chart.getSubtitles()) {
            if (subtitle instanceof TextTitle line && !line.getText().isBlank()) {
                if (line.getPosition() == RectangleEdge.BOTTOM) {
                    proof = line.getText();
                } else {
                    caption.add(line.getText());
                }
            }
        }
        int height = picture.height() - heightOfLines(chart, picture.width());
        chart.clearSubtitles();
        chart.setPadding(HouseStyle.NARROW_PADDING);
        if (width < picture.width() || width == Layout.NARROW.width()) {
            thin(chart.getXYPlot());
        }
        Picture bare = new Picture(prefix + picture.name(), picture.description(), width, height, chart);
        String title = caption.isEmpty() ? picture.description() : caption.get(0);
        Drawing.PageElement element = new Drawing(bare).element(title);
        List<String> below = caption.isEmpty() ? caption : caption.subList(1, caption.size());
        return new PagePicture(picture.name(), title, below, proof, element.description(), element.text());
    }

    private static int heightOfLines(JFreeChart chart, int width) {
        Graphics2D nowhere = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
        double height = 0;
        for (Object subtitle : chart.getSubtitles()) {
            RectangleConstraint room = new RectangleConstraint(width, new Range(0, width));
            height += ((Title) subtitle)
                    .arrange(nowhere, room.toUnconstrainedHeight())
                    .getHeight();
        }
        nowhere.dispose();
        return (int) height;
    }

    /** Takes marks off the axes across until they stand apart. */
    private static void thin(XYPlot plot) {
        for (int i = 0; i < plot.getDomainAxisCount(); i++) {
            if (plot.getDomainAxis(i) instanceof NumberAxis axis) {
                NumberTickUnit unit = axis.getTickUnit();
                double step = unit.getSize();
                while (axis.getRange().getLength() / step > MOST_MARKS) {
                    step = HouseStyle.nextStep(step);
                }
                if (step != unit.getSize()) {
                    axis.setTickUnit(HouseStyle.marks(step));
                }
            }
        }
    }
}
