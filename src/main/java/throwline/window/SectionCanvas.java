package throwline.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.util.Optional;
import javax.accessibility.AccessibleRole;
import javax.swing.UIManager;
import throwline.report.chart.SectionShape;
import throwline.window.session.Movable;

/** A section to scale with its surface, whose trailing edge a hand takes and moves between the stops. */
final class SectionCanvas extends Drawn {

    private static final long serialVersionUID = 1;

    private static final int HEIGHT = 112;
    private static final int MARGIN = 10;

    /** Half of a thick section with room, over the chord. */
    private static final double THICK = 0.09;

    private static final int GRIP = 6;

    /** How much of a stop is drawn, over the chord. */
    private static final double STOP = 0.05;

    private final transient Look look;
    private final transient Listener listener;
    private transient Movable movable;
    private transient SectionShape shape;
    private double angle;
    private transient Optional<Double> before = Optional.empty();
    /** Angle of the hand at the moment it took hold, less that of the surface. */
    private double slack;

    private boolean held;

    /** What a hand does. */
    interface Listener {
        /** The hand has moved to an angle, rad. */
        void dragged(double angle, boolean fine);

        /** The hand lets go. */
        void released();
    }

    SectionCanvas(Look look, Movable movable, SectionShape shape, Listener listener) {
        super(AccessibleRole.SLIDER);
        this.look = look;
        this.movable = movable;
        this.shape = shape;
        this.listener = listener;
        setFocusable(true);
        setCursor(Cursor.getPredefinedCursor(Cursor.HAND_CURSOR));
        Mouse mouse = new Mouse();
        addMouseListener(mouse);
        addMouseMotionListener(mouse);
    }

    void show(Movable to, SectionShape outline) {
        movable = to;
        shape = outline;
        repaint();
    }

    void show(double now, Optional<Double> ghost) {
        if (angle != now || !before.equals(ghost)) {
            angle = now;
            before = ghost;
            repaint();
        }
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(UIScale.scale(320), UIScale.scale(HEIGHT));
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(UIScale.scale(160), UIScale.scale(HEIGHT));
    }

    /** From a chord of 1 to the canvas: as large as the way of the trailing edge leaves room. */
    private AffineTransform toCanvas() {
        int margin = UIScale.scale(MARGIN);
        double length = 1 - movable.hinge();
        double above = Math.max(THICK, (length + STOP) * Math.sin(Math.min(Math.PI / 2, movable.up())));
        double below = Math.max(THICK, (length + STOP) * Math.sin(Math.min(Math.PI / 2, movable.down())));
        double chord =
                Math.min((getWidth() - 2.0 * margin) / (1 + STOP), (getHeight() - 2.0 * margin) / (above + below));
        AffineTransform to = AffineTransform.getTranslateInstance(
                (getWidth() - chord * (1 + STOP)) / 2, (getHeight() + chord * (above - below)) / 2);
        to.scale(chord, chord);
        return to;
    }

    private Point2D point(double x, double y) {
        return toCanvas().transform(new Point2D.Double(x, y), null);
    }

    private Point2D edge(double at) {
        double length = 1 - movable.hinge();
        return point(movable.hinge() + length * Math.cos(at), length * Math.sin(at));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g2 = (Graphics2D) graphics.create();
        g2.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g2.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        Color ink = UIManager.getColor("Label.foreground");
        Color ground = UIManager.getColor("Panel.background");
        AffineTransform to = toCanvas();
        way(g2, ink);
        stop(g2, movable.down(), ink);
        stop(g2, -movable.up(), ink);
        before.filter(then -> then != angle).ifPresent(then -> {
            g2.setColor(Look.quiet());
            g2.setStroke(dashed());
            g2.draw(to.createTransformedShape(shape.surface(then)));
        });
        fill(g2, to.createTransformedShape(shape.front()), Look.mix(ground, ink, 0.10), ink);
        double far = Math.min(1, Math.abs(angle) / Math.toRadians(60));
        Color moved = angle == 0 ? ground : Look.mix(ground, angle > 0 ? look.grip() : look.up(), 0.25 + 0.75 * far);
        fill(g2, to.createTransformedShape(shape.surface(angle)), moved, ink);
        grip(g2, ink);
        g2.dispose();
    }

    private static BasicStroke dashed() {
        return new BasicStroke(
                UIScale.scale(1f), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {4, 3}, 0);
    }

    private static void fill(Graphics2D g2, Shape outline, Color paint, Color ink) {
        g2.setColor(paint);
        g2.fill(outline);
        g2.setColor(ink);
        g2.setStroke(new BasicStroke(UIScale.scale(1.2f)));
        g2.draw(outline);
    }

    /** The way of the trailing edge from stop to stop. */
    private void way(Graphics2D g2, Color ink) {
        Point2D hinge = point(movable.hinge(), 0);
        double r = hinge.distance(edge(0));
        g2.setColor(Look.mix(ink, UIManager.getColor("Panel.background"), 0.6));
        g2.setStroke(dashed());
        g2.draw(new Arc2D.Double(
                hinge.getX() - r,
                hinge.getY() - r,
                2 * r,
                2 * r,
                -Math.toDegrees(movable.down()),
                Math.toDegrees(movable.up() + movable.down()),
                Arc2D.OPEN));
    }

    /** A stop is a short wall across the way of the trailing edge, heavy while the surface leans on it. */
    private void stop(Graphics2D g2, double at, Color ink) {
        boolean touched = Math.abs(angle - at) < 1e-6 && at != 0;
        double length = 1 - movable.hinge();
        Point2D inner = point(movable.hinge() + (length - STOP) * Math.cos(at), (length - STOP) * Math.sin(at));
        Point2D outer = point(movable.hinge() + (length + STOP) * Math.cos(at), (length + STOP) * Math.sin(at));
        g2.setColor(touched ? look.danger() : Look.mix(ink, getBackground(), 0.3));
        g2.setStroke(new BasicStroke(UIScale.scale(touched ? 4f : 2f), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g2.draw(new Line2D.Double(inner, outer));
    }

    private void grip(Graphics2D g2, Color ink) {
        Point2D edge = edge(angle);
        double r = UIScale.scale(held ? GRIP + 2 : GRIP);
        Ellipse2D circle = new Ellipse2D.Double(edge.getX() - r, edge.getY() - r, 2 * r, 2 * r);
        g2.setColor(look.grip());
        g2.fill(circle);
        g2.setColor(ink);
        g2.setStroke(new BasicStroke(UIScale.scale(isFocusOwner() ? 2.5f : 1f)));
        g2.draw(circle);
    }

    private final class Mouse extends MouseAdapter {

        private double angleOf(MouseEvent event) {
            Point2D hinge = point(movable.hinge(), 0);
            return Math.atan2(event.getY() - hinge.getY(), event.getX() - hinge.getX());
        }

        private boolean isInReach(MouseEvent event) {
            return event.getX() > point(movable.hinge(), 0).getX();
        }

        @Override
        public void mousePressed(MouseEvent event) {
            requestFocusInWindow();
            held = isInReach(event);
            slack = angleOf(event) - angle;
            repaint();
        }

        @Override
        public void mouseDragged(MouseEvent event) {
            if (held) {
                listener.dragged(angleOf(event) - slack, event.isShiftDown());
            }
        }

        @Override
        public void mouseReleased(MouseEvent event) {
            if (held) {
                held = false;
                listener.released();
                repaint();
            }
        }
    }
}
