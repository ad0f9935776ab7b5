package throwline.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.Optional;
import javax.accessibility.AccessibleRole;
import javax.swing.UIManager;
import throwline.numerics.Interpolation;
import throwline.window.sketch.Measured;
import throwline.window.sketch.Sketch;
import throwline.window.sketch.SketchText;

/** A drawing to scale with what it points at: dimension lines and the value. */
final class SketchCanvas extends Drawn {

    private static final long serialVersionUID = 1;

    /** Room around the drawing for dimensions, points. */
    private static final int MARGIN = 44;

    private static final int ARROW = 8;

    /** Shorter dimensions have their arrows outside, points. */
    private static final int SHORT = 30;

    /** Where the arc of an angle lies on its sides. */
    private static final double ARC = 0.85;

    private final transient Look look;
    private transient Optional<Sketch> sketch = Optional.empty();
    private transient Optional<SketchText> text = Optional.empty();

    SketchCanvas(Look look) {
        super(AccessibleRole.CANVAS);
        this.look = look;
    }

    void show(Sketch other, SketchText words) {
        sketch = Optional.of(other);
        text = Optional.of(words);
        getAccessibleContext().setAccessibleName(words.told(other));
        repaint();
    }

    private AffineTransform toCanvas(Rectangle2D frame) {
        double margin = UIScale.scale(MARGIN);
        double scale = Math.min(
                (getWidth() - 2 * margin) / Math.max(frame.getWidth(), 1e-6),
                (getHeight() - 2 * margin) / Math.max(frame.getHeight(), 1e-6));
        AffineTransform to = AffineTransform.getTranslateInstance(getWidth() / 2.0, getHeight() / 2.0);
        to.scale(scale, scale);
        to.translate(-frame.getCenterX(), -frame.getCenterY());
        return to;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        sketch.ifPresent(drawn -> {
            Graphics2D g2 = (Graphics2D) graphics.create();
            g2.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g2.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            g2.setFont(getFont().deriveFont(Font.BOLD));
            AffineTransform to = toCanvas(drawn.frame());
            drawn.parts().forEach(part -> part(g2, to.createTransformedShape(part.shape()), part.kind()));
            for (Measured measured : drawn.measured()) {
                String label = text.map(words -> words.label(measured)).orElse("");
                if (measured instanceof Measured.Length length) {
                    length(g2, to, length, label);
                } else {
                    angle(g2, to, (Measured.Angle) measured, label);
                }
            }
            g2.dispose();
        });
    }

    private void part(Graphics2D g2, Shape shape, Sketch.Kind kind) {
        Color ink = getForeground();
        Color ground = UIManager.getColor("Panel.background");
        Color quiet = Look.mix(ink, ground, 0.45);
        switch (kind) {
            case SKIN -> filled(g2, shape, Look.mix(ground, ink, 0.10), quiet);
            case SURFACE -> filled(g2, shape, Look.mix(ground, look.grip(), 0.28), quiet);
            case GHOST -> drawn(g2, shape, quiet, dashed());
            case LINE -> drawn(g2, shape, quiet, dashed());
            case ROD -> drawn(g2, shape, Look.mix(ink, ground, 0.25), stroke(2.6f));
            case BALANCE -> balance(g2, shape.getBounds2D(), ink, ground);
        }
    }

    private static void filled(Graphics2D g2, Shape shape, Color paint, Color line) {
        g2.setColor(paint);
        g2.fill(shape);
        drawn(g2, shape, line, stroke(1.1f));
    }

    private static void drawn(Graphics2D g2, Shape shape, Color line, BasicStroke stroke) {
        g2.setColor(line);
        g2.setStroke(stroke);
        g2.draw(shape);
    }

    /** A balance point as draughtsmen mark it: a circle with two quarters filled. */
    private static void balance(Graphics2D g2, Rectangle2D box, Color ink, Color ground) {
        g2.setColor(ground);
        g2.fill(new Arc2D.Double(box, 0, 360, Arc2D.CHORD));
        g2.setColor(ink);
        g2.fill(new Arc2D.Double(box, 0, 90, Arc2D.PIE));
        g2.fill(new Arc2D.Double(box, 180, 90, Arc2D.PIE));
        drawn(g2, new Arc2D.Double(box, 0, 360, Arc2D.CHORD), ink, stroke(1));
    }

    private static BasicStroke stroke(float width) {
        return new BasicStroke(UIScale.scale(width), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    }

    private static BasicStroke dashed() {
        return new BasicStroke(
                UIScale.scale(1f), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {4, 3}, 0);
    }

    private static Point2D moved(Point2D point, double x, double y) {
        return new Point2D.Double(point.getX() + x, point.getY() + y);
    }

    private void length(Graphics2D g2, AffineTransform to, Measured.Length length, String label) {
        Point2D from = to.transform(length.from(), null);
        Point2D end = to.transform(length.to(), null);
        double size = from.distance(end);
        // A length of nothing is told where it would be, beside the middle.
        double along = size > 0 ? (end.getX() - from.getX()) / size : 0;
        double down = size > 0 ? (end.getY() - from.getY()) / size : 1;
        double aside = UIScale.scale((float) length.aside());
        double acrossX = -down * aside;
        double acrossY = along * aside;
        Point2D a = moved(from, acrossX, acrossY);
        Point2D b = moved(end, acrossX, acrossY);
        g2.setColor(look.grip());
        g2.setStroke(dashed());
        if (aside != 0) {
            g2.draw(new Line2D.Double(from, a));
            g2.draw(new Line2D.Double(end, b));
        }
        g2.setStroke(stroke(2));
        double arrow = UIScale.scale(ARROW);
        boolean outside = size < UIScale.scale(SHORT);
        double tail = outside ? 2 * arrow : 0;
        g2.draw(new Line2D.Double(moved(a, -along * tail, -down * tail), moved(b, along * tail, down * tail)));
        double turn = outside ? -1 : 1;
        arrow(g2, a, -along * turn, -down * turn);
        arrow(g2, b, along * turn, down * turn);
        Point2D middle = new Point2D.Double((a.getX() + b.getX()) / 2, (a.getY() + b.getY()) / 2);
        double side = aside < 0 ? -1 : 1;
        beside(g2, middle, -down * side, along * side, label);
    }

    /** The tip of an arrow that points so. */
    private static void arrow(Graphics2D g2, Point2D tip, double x, double y) {
        double size = UIScale.scale(ARROW);
        Path2D head = new Path2D.Double();
        head.moveTo(tip.getX(), tip.getY());
        head.lineTo(tip.getX() - size * x - 0.35 * size * y, tip.getY() - size * y + 0.35 * size * x);
        head.lineTo(tip.getX() - size * x + 0.35 * size * y, tip.getY() - size * y - 0.35 * size * x);
        head.closePath();
        g2.fill(head);
    }

    private void angle(Graphics2D g2, AffineTransform to, Measured.Angle angle, String label) {
        Point2D centre = to.transform(angle.centre(), null);
        Point2D first = to.transform(angle.end(angle.from()), null);
        Point2D second = to.transform(angle.end(angle.to()), null);
        g2.setColor(look.grip());
        g2.setStroke(dashed());
        g2.draw(new Line2D.Double(centre, first));
        g2.setStroke(stroke(1.5f));
        g2.draw(new Line2D.Double(centre, second));
        double r = ARC * centre.distance(first);
        g2.setStroke(stroke(2));
        g2.draw(new Arc2D.Double(
                centre.getX() - r,
                centre.getY() - r,
                2 * r,
                2 * r,
                -Math.toDegrees(angle.from()),
                -Math.toDegrees(angle.to() - angle.from()),
                Arc2D.OPEN));
        double turn = Math.signum(angle.to() - angle.from());
        if (r * angle.size() > UIScale.scale(ARROW)) {
            Point2D tip = moved(centre, r * Math.cos(angle.to()), r * Math.sin(angle.to()));
            arrow(g2, tip, -Math.sin(angle.to()) * turn, Math.cos(angle.to()) * turn);
        }
        double middle = (angle.from() + angle.to()) / 2;
        Point2D at = moved(centre, r * Math.cos(middle), r * Math.sin(middle));
        if (r * angle.size() > 3.0 * UIScale.scale(SHORT)) {
            beside(g2, at, -Math.cos(middle), -Math.sin(middle), label);
        } else {
            // Where the sides leave no room between them, beyond the second one.
            double out = turn == 0 ? 1 : turn;
            beside(
                    g2,
                    moved(centre, r * Math.cos(angle.to()), r * Math.sin(angle.to())),
                    -Math.sin(angle.to()) * out,
                    Math.cos(angle.to()) * out,
                    label);
        }
    }

    /** Text beside a point, on a patch of ground, inside the canvas. */
    private void beside(Graphics2D g2, Point2D point, double x, double y, String label) {
        FontMetrics metrics = g2.getFontMetrics();
        double width = metrics.stringWidth(label);
        double height = metrics.getAscent();
        double gap = UIScale.scale(8);
        double middleX = point.getX() + x * (gap + width / 2);
        double middleY = point.getY() + y * (gap + height / 2);
        double left = Interpolation.clamp(middleX - width / 2, gap, getWidth() - width - gap);
        double base = Interpolation.clamp(middleY + height / 2, height + gap, getHeight() - gap);
        g2.setColor(UIManager.getColor("Panel.background"));
        g2.fill(new RoundRectangle2D.Double(left - 3, base - height - 1, width + 6, height + 5, 6, 6));
        g2.setColor(look.grip());
        g2.drawString(label, (float) left, (float) base);
    }
}
