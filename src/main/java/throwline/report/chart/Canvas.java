package throwline.report.chart;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;

/** The image that pictures are painted on one after the other, so that its memory is taken once. For one thread. */
final class Canvas {

    /** A higher picture is painted in parts of so many lines, so that a chart of many set-ups takes no more memory. */
    static final int MOST_LINES = 2048;

    private BufferedImage image = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB);

    /** The part of the image that a picture of this size takes, white. */
    BufferedImage part(int width, int height) {
        if (image.getWidth() < width || image.getHeight() < height) {
            image = new BufferedImage(
                    Math.max(width, image.getWidth()), Math.max(height, image.getHeight()), BufferedImage.TYPE_INT_RGB);
        }
        BufferedImage part = image.getSubimage(0, 0, width, height);
        Graphics2D g2 = part.createGraphics();
        g2.setPaint(ChartStyle.GROUND);
        g2.fillRect(0, 0, width, height);
        g2.dispose();
        return part;
    }
}
