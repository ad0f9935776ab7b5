package throwline.report.chart;

import java.awt.Graphics2D;
import java.awt.font.FontRenderContext;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.block.RectangleConstraint;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.title.Title;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.data.Range;
import throwline.report.document.PagePicture;
import throwline.words.Words;

/** Makes pictures ready for a page: their lines of text go to the page, and what is left becomes one SVG element. */
final class PagePictures {

    /** More marks than this on an axis of a narrow chart run into each other. */
    private static final int MOST_MARKS = 7;

    /** A width at which no line is broken. */
    private static final double UNBROKEN = 100_000;

    /** Points that the scale up takes beside a plot. */
    private static final int SCALE = 8;

    private PagePictures() {}

    /**
     * All pictures, drawn on all processors: no two share anything that changes.
     *
     * @param prefix what the names inside a picture begin with, so that they are its own on the page
     * @param words the sentences
     * @throws throwline.report.NoFontException where the machine has no font
     */
    static List<PagePicture> of(List<Supplier<Picture>> pictures, String prefix, Words words) {
        Drawing.requireFont();
        return IntStream.range(0, pictures.size())
                .parallel()
                .mapToObj(i -> of(pictures.get(i).get(), prefix, words))
                .toList();
    }

    private static PagePicture of(Picture picture, String prefix, Words words) {
        int width = Math.min(picture.width(), Layout.NARROW.width());
        JFreeChart chart = picture.chart();
        List<String> caption = new ArrayList<>();
        String proof = "";
        for (Object subtitle : chart.getSubtitles()) {
            if (subtitle instanceof TextTitle line && !line.getText().isBlank()) {
                if (RectangleEdge.BOTTOM.equals(line.getPosition())) {
                    proof = line.getText();
                } else {
                    caption.add(line.getText());
                }
            }
        }
        int height = picture.height() - heightOfLines(chart);
        chart.clearSubtitles();
        chart.setPadding(HouseStyle.NARROW_PADDING);
        thin(chart.getXYPlot(), width).forEach(label -> caption.add(words.say("chart.across", label)));
        Picture bare = new Picture(prefix + picture.name(), picture.description(), width, height, chart);
        String title = caption.isEmpty() ? picture.description() : caption.get(0);
        Drawing.PageElement element = new Drawing(bare).element(title);
        List<String> below = caption.isEmpty() ? caption : caption.subList(1, caption.size());
        return new PagePicture(picture.name(), title, below, proof, element.description(), element.text());
    }

    /** What the lines above and below a chart take where none of them is broken, as charts allow for them. */
    private static int heightOfLines(JFreeChart chart) {
        Graphics2D nowhere = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
        double height = 0;
        for (Object subtitle : chart.getSubtitles()) {
            RectangleConstraint room = new RectangleConstraint(UNBROKEN, new Range(0, UNBROKEN));
            height += ((Title) subtitle)
                    .arrange(nowhere, room.toUnconstrainedHeight())
                    .getHeight();
        }
        nowhere.dispose();
        return (int) height;
    }

    /** Takes marks off the axes across until they stand apart, and labels that are too long, which are given back. */
    private static List<String> thin(XYPlot plot, int width) {
        List<String> labels = new ArrayList<>();
        double room = width - plot.getInsets().getLeft() - plot.getInsets().getRight() - SCALE;
        for (int i = 0; i < plot.getDomainAxisCount(); i++) {
            if (plot.getDomainAxis(i) instanceof NumberAxis axis && axis.isVisible()) {
                thin(axis);
                String label = axis.getLabel();
                if (label != null && widthOf(label) > room) {
                    axis.setLabel(null);
                    labels.add(label);
                }
            }
        }
        return labels;
    }

    private static void thin(NumberAxis axis) {
        double step = axis.getTickUnit().getSize();
        double thinner = step;
        while (axis.getRange().getLength() / thinner > MOST_MARKS) {
            thinner = HouseStyle.nextStep(thinner);
        }
        if (thinner != step) {
            axis.setTickUnit(HouseStyle.marks(thinner));
        }
    }

    private static double widthOf(String text) {
        FontRenderContext context = new FontRenderContext(null, true, true);
        return HouseStyle.TEXT.getStringBounds(text, context).getWidth();
    }
}
