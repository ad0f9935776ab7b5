package throwline.report.chart;

import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Paint;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** Painter of one panel: turns places into points of the page and draws lines, areas, marks and text there. */
final class Brush {

    private static final String CUT = "...";

    private static final FontRenderContext FONTS = new FontRenderContext(null, true, true);

    private final Graphics2D g2;
    private final Rectangle2D area;
    private final DoubleUnaryOperator across;
    private final DoubleUnaryOperator up;
    private final LabelPlacer placer;

    /**
     * @param g2 drawn on
     * @param area of the panel, points
     * @param right room for labels on the right of it, points
     * @param across from a value to points from the left
     * @param up from a value to points from the top
     */
    Brush(Graphics2D g2, Rectangle2D area, double right, DoubleUnaryOperator across, DoubleUnaryOperator up) {
        this.g2 = g2;
        this.area = area;
        this.across = across;
        this.up = up;
        this.placer = new LabelPlacer(
                new Rectangle2D.Double(area.getX(), area.getY(), area.getWidth() + right, area.getHeight()));
    }

    /** Which way text lies seen from its place. */
    enum Side {
        LEFT,
        MIDDLE,
        RIGHT
    }

    Rectangle2D area() {
        return area;
    }

    LabelPlacer placer() {
        return placer;
    }

    /** From the left, points. */
    double x(Place place) {
        double x = place.x();
        double at = Double.isFinite(x) ? across.applyAsDouble(x) : x < 0 ? area.getMinX() : area.getMaxX();
        return at + place.right();
    }

    /** From the top, points. */
    double y(Place place) {
        double y = place.y();
        double at = Double.isFinite(y) ? up.applyAsDouble(y) : y < 0 ? area.getMaxY() : area.getMinY();
        return at + place.below();
    }

    Path2D path(List<Place> places) {
        Path2D path = new Path2D.Double();
        for (Place place : places) {
            if (path.getCurrentPoint() == null) {
                path.moveTo(x(place), y(place));
            } else {
                path.lineTo(x(place), y(place));
            }
        }
        return path;
    }

    void line(Shape shape, Color color, Stroke stroke) {
        g2.setPaint(color);
        g2.setStroke(stroke);
        g2.draw(shape);
    }

    /** A line that ends where the panel does. */
    void lineInArea(Shape shape, Color color, Stroke stroke) {
        Shape clip = g2.getClip();
        if (!area.contains(shape.getBounds2D())) {
            g2.clip(area);
        }
        line(shape, color, stroke);
        g2.setClip(clip);
    }

    void line(double x1, double y1, double x2, double y2, Color color, Stroke stroke) {
        line(new Line2D.Double(x1, y1, x2, y2), color, stroke);
    }

    void fill(Shape shape, Paint paint) {
        g2.setPaint(paint);
        g2.fill(shape);
    }

    /** Draws lines on a shape only. */
    void inside(Shape shape, Shape lines, Color color) {
        Shape clip = g2.getClip();
        g2.clip(shape);
        line(lines, color, ChartStyle.THIN);
        g2.setClip(clip);
    }

    /** A mark with its middle at a place. */
    void mark(ChartStyle.Look look, double x, double y, boolean filled) {
        Shape mark = AffineTransform.getTranslateInstance(x, y).createTransformedShape(look.mark());
        fill(mark, filled ? look.color() : ChartStyle.GROUND);
        line(mark, look.color(), look.whisker());
    }

    /** One line of text, its middle at y. */
    void text(String text, Font font, Color color, double x, double y, Side side) {
        if (text.isEmpty()) {
            return;
        }
        FontMetrics metrics = g2.getFontMetrics(font);
        g2.setFont(font);
        g2.setPaint(color);
        double baseline = y + (metrics.getAscent() - metrics.getDescent()) / 2.0;
        g2.drawString(text, (float) left(x, metrics.stringWidth(text), side), (float) baseline);
    }

    /** One line of text on a patch of the ground, so that lines below it do not disturb. */
    void textOnGround(String text, Font font, Color color, double x, double y, Side side) {
        double width = width(text, font);
        double height = height(font);
        fill(new Rectangle2D.Double(left(x, width, side) - 2, y - height / 2, width + 4, height), ChartStyle.HALO);
        text(text, font, color, x, y, side);
    }

    private static double left(double x, double width, Side side) {
        return side == Side.LEFT ? x - width : side == Side.MIDDLE ? x - width / 2 : x;
    }

    /** Width of text, points. */
    static double width(String text, Font font) {
        return font.getStringBounds(text, FONTS).getWidth();
    }

    double height(Font font) {
        FontMetrics metrics = g2.getFontMetrics(font);
        return metrics.getAscent() + metrics.getDescent();
    }

    /** Important text broken to a width, in so many lines at most, their middle at y. */
    void name(String text, double width, int most, double x, double y, Side side) {
        List<String> lines = wrapped(text, ChartStyle.STRONG, width, most);
        double step = height(ChartStyle.STRONG);
        for (int i = 0; i < lines.size(); i++) {
            double at = y + (i - (lines.size() - 1) / 2.0) * step;
            text(lines.get(i), ChartStyle.STRONG, ChartStyle.INK, x, at, side);
        }
    }

    /** Text broken at blanks to fit a width, in so many lines at most; what does not fit is cut and shown as cut. */
    static List<String> wrapped(String text, Font font, double width, int most) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.split(" ", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (width(longer, font) <= width || line.isEmpty()) {
                line = longer;
            } else {
                lines.add(line);
                line = word;
            }
        }
        lines.add(line);
        boolean tooMany = lines.size() > most;
        List<String> kept = new ArrayList<>(lines.subList(0, Math.min(most, lines.size())));
        for (int i = 0; i < kept.size(); i++) {
            kept.set(i, fitted(kept.get(i), font, width, tooMany && i == kept.size() - 1));
        }
        return kept;
    }

    private static String fitted(String text, Font font, double width, boolean cut) {
        if (!cut && width(text, font) <= width) {
            return text;
        }
        String shorter = text;
        while (!shorter.isEmpty() && width(shorter + CUT, font) > width) {
            shorter = shorter.substring(0, shorter.length() - 1);
        }
        return shorter.strip() + CUT;
    }
}
