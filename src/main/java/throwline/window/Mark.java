package throwline.window;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.util.List;

/** The window's mark in task bars: a section with its flap down. */
final class Mark {

    private static final int[] SIZES = {16, 32, 64};

    private static final Color GROUND = new Color(0x12304A);
    private static final Color FLAP = new Color(0x56B4E9);

    private Mark() {}

    /** In all sizes that systems ask for. */
    static List<Image> all() {
        return java.util.Arrays.stream(SIZES).mapToObj(Mark::of).toList();
    }

    private static Image of(int size) {
        BufferedImage image = new BufferedImage(size, size, BufferedImage.TYPE_INT_ARGB);
        Graphics2D g2 = image.createGraphics();
        g2.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g2.scale(size, size);
        g2.setColor(GROUND);
        g2.fill(new java.awt.geom.RoundRectangle2D.Double(0, 0, 1, 1, 0.3, 0.3));
        Path2D front = new Path2D.Double();
        front.moveTo(0.66, 0.34);
        front.curveTo(0.40, 0.20, 0.12, 0.24, 0.08, 0.40);
        front.curveTo(0.10, 0.52, 0.40, 0.50, 0.64, 0.49);
        front.closePath();
        g2.setColor(Color.WHITE);
        g2.fill(front);
        Path2D flap = new Path2D.Double();
        flap.moveTo(0.70, 0.40);
        flap.lineTo(0.90, 0.80);
        flap.lineTo(0.62, 0.52);
        flap.closePath();
        g2.setColor(FLAP);
        g2.fill(flap);
        g2.setStroke(new BasicStroke(0.05f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g2.draw(flap);
        g2.dispose();
        return image;
    }
}
