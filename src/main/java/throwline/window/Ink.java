package throwline.window;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.awt.image.WritableRaster;
import throwline.report.chart.ScreenPicture;

/**
 * Pictures painted for a screen, at its scale; where it is dark, light and dark are turned over and colours stay.
 *
 * @param width points of the window that a picture is given
 * @param scale pixels of a point
 * @param dark true on a dark ground
 */
record Ink(int width, double scale, boolean dark) {

    /** The ground of pictures on a dark screen: its lightness stands for white. */
    private static final int DARKEST = 0x2B;

    /** A picture as wide as the window gives it room. */
    HandView.Shot shot(ScreenPicture picture) {
        double factor = scale * width / picture.width();
        BufferedImage image = new BufferedImage(
                Math.max(1, (int) Math.round(picture.width() * factor)),
                Math.max(1, (int) Math.round(picture.height() * factor)),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D g2 = image.createGraphics();
        g2.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g2.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g2.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        g2.setPaint(Color.WHITE);
        g2.fillRect(0, 0, image.getWidth(), image.getHeight());
        g2.scale(factor, factor);
        picture.paint(g2);
        g2.dispose();
        if (dark) {
            WritableRaster raster = image.getRaster();
            int[] pixels = (int[]) raster.getDataElements(0, 0, image.getWidth(), image.getHeight(), null);
            turnOver(pixels);
            raster.setDataElements(0, 0, image.getWidth(), image.getHeight(), pixels);
        }
        return new HandView.Shot(picture.title(), picture.caption(), image, scale);
    }

    private static void turnOver(int[] pixels) {
        for (int i = 0; i < pixels.length; i++) {
            pixels[i] = turnedOver(pixels[i]);
        }
    }

    /** A colour with its lightness turned over: what the largest and the smallest part add up to is mirrored. */
    static int turnedOver(int rgb) {
        int red = rgb >> 16 & 0xFF;
        int green = rgb >> 8 & 0xFF;
        int blue = rgb & 0xFF;
        int shift = 255 - Math.max(red, Math.max(green, blue)) - Math.min(red, Math.min(green, blue));
        return raised(red + shift) << 16 | raised(green + shift) << 8 | raised(blue + shift);
    }

    private static int raised(int part) {
        return DARKEST + part * (255 - DARKEST) / 255;
    }
}
