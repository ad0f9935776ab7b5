package throwline.report.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** Fills shapes by how far they are moved: darker is further, hatched is up, so that print without colour tells them apart. */
final class ThrowShade {

    private static final Color SKIN = new Color(0xF4F4F4);
    private static final Color DOWN = new Color(0x0072B2);
    private static final Color UP = new Color(0xE69F00);

    /** The throw, rad, that is drawn darkest, and how dark the smallest is. */
    private static final double DARKEST = Math.toRadians(60);

    private static final double LIGHTEST = 0.15;
    private static final double HATCH = 5;
    private static final Stroke DASHED =
            new BasicStroke(0.8f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {3, 2}, 0);

    private final Graphics2D g2;
    private final Stroke outline;

    ThrowShade(Graphics2D g2, Stroke outline) {
        this.g2 = g2;
        this.outline = outline;
    }

    /** What does not move. */
    void still(Shape shape) {
        fill(shape, SKIN);
        draw(shape);
    }

    /** Where something stood before it was moved. */
    void ghost(Shape shape) {
        g2.setPaint(HouseStyle.QUIET_INK);
        g2.setStroke(DASHED);
        g2.draw(shape);
    }

    /** A surface; rad, trailing edge down positive. */
    void moved(Shape shape, double deflection) {
        double share = LIGHTEST + (1 - LIGHTEST) * Math.min(1, Math.abs(deflection) / DARKEST);
        fill(shape, deflection == 0 ? HouseStyle.GROUND : towards(deflection > 0 ? DOWN : UP, share));
        if (deflection < 0) {
            hatch(shape);
        }
        draw(shape);
    }

    private void fill(Shape shape, Color color) {
        g2.setPaint(color);
        g2.fill(shape);
    }

    private void draw(Shape shape) {
        g2.setPaint(HouseStyle.INK);
        g2.setStroke(outline);
        g2.draw(shape);
    }

    private void hatch(Shape shape) {
        Shape clip = g2.getClip();
        g2.setClip(shape);
        Rectangle2D box = shape.getBounds2D();
        Path2D lines = new Path2D.Double();
        for (double x = box.getMinX() - box.getHeight(); x < box.getMaxX(); x += HATCH) {
            lines.append(new Line2D.Double(x, box.getMaxY(), x + box.getHeight(), box.getMinY()), false);
        }
        g2.setPaint(HouseStyle.INK);
        g2.setStroke(HouseStyle.THIN);
        g2.draw(lines);
        g2.setClip(clip);
    }

    private static Color towards(Color color, double share) {
        return new Color(part(color.getRed(), share), part(color.getGreen(), share), part(color.getBlue(), share));
    }

    private static int part(int of, double share) {
        return (int) Math.round(255 + share * (of - 255));
    }
}
