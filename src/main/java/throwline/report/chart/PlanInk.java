package throwline.report.chart;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Stroke;
import java.awt.geom.Line2D;

/** Draws dimensions of a plan: thin lines with slanted ends, text on a patch of ground. Places in points. */
final class PlanInk {

    private static final double SLANT = 4;
    private static final Stroke DASHED =
            new BasicStroke(1.2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {6, 3}, 0);

    private final Graphics2D g2;
    private final Ink ink;

    PlanInk(Graphics2D g2) {
        this.g2 = g2;
        this.ink = new Ink(g2);
    }

    double width(String text) {
        return ink.width(text, HouseStyle.SMALL);
    }

    /** A dimension across the page; its text stands at a share of its length. */
    void across(double from, double to, double y, double share, String text) {
        line(from, to, y);
        middle(text, from + share * (to - from), y);
    }

    /** A line across with slanted ends. */
    void line(double from, double to, double y) {
        thin();
        g2.draw(new Line2D.Double(from, y, to, y));
        slant(from, y);
        slant(to, y);
    }

    /** A dimension down the page; its text stands beside it at a share of its length. */
    void down(double from, double to, double x, double share, String text, Ink.Side side) {
        thin();
        g2.draw(new Line2D.Double(x, from, x, to));
        slant(x, from);
        slant(x, to);
        double away = side == Ink.Side.LEFT ? -6 : 6;
        ink.textOnGround(text, HouseStyle.SMALL, HouseStyle.INK, x + away, from + share * (to - from), side);
    }

    /** A line that leads from an outline to a dimension. */
    void extension(double x1, double y1, double x2, double y2) {
        g2.setStroke(HouseStyle.THIN);
        g2.setPaint(HouseStyle.GRID);
        g2.draw(new Line2D.Double(x1, y1, x2, y2));
    }

    /** A dashed line. */
    void dashed(double x1, double y1, double x2, double y2) {
        g2.setStroke(DASHED);
        g2.setPaint(HouseStyle.QUIET_INK);
        g2.draw(new Line2D.Double(x1, y1, x2, y2));
    }

    /** Text that begins at a place. */
    void note(String text, double x, double y) {
        ink.textOnGround(text, HouseStyle.SMALL, HouseStyle.INK, x, y, Ink.Side.RIGHT);
    }

    /** Text with its middle at a place. */
    void middle(String text, double x, double y) {
        ink.textOnGround(text, HouseStyle.SMALL, HouseStyle.INK, x, y, Ink.Side.MIDDLE);
    }

    /** Important text that begins at a place. */
    void strong(String text, double x, double y) {
        ink.textOnGround(text, HouseStyle.STRONG, HouseStyle.INK, x, y, Ink.Side.RIGHT);
    }

    private void thin() {
        g2.setStroke(HouseStyle.THIN);
        g2.setPaint(HouseStyle.QUIET_INK);
    }

    private void slant(double x, double y) {
        g2.draw(new Line2D.Double(x - SLANT, y + SLANT, x + SLANT, y - SLANT));
    }
}
