package throwline.window.sketch;

import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * A drawing to scale, m, y down the page.
 *
 * @param view from where
 * @param of whose section or linkage it is; empty for the whole model
 * @param parts what is seen, the furthest first
 * @param measured what it points at; may be empty
 */
public record Sketch(View view, String of, List<Part> parts, List<Measured> measured) {

    /** A length smaller than this share of the drawing is drawn larger, with what is near it only; so are sides of an angle. */
    private static final double SMALL = 1 / 20.0;

    private static final double SMALL_SIDES = 1 / 6.0;

    /** How much of the drawing such a measure takes then. */
    private static final double ENLARGED = 1 / 6.0;

    private static final double ENLARGED_SIDES = 1 / 3.0;

    /** Room around an angle: its sides are drawn this much longer. */
    private static final double ROOM = 1.1;

    public Sketch {
        parts = List.copyOf(parts);
        measured = List.copyOf(measured);
    }

    /** From where it is seen. */
    public enum View {
        /** The model from above. */
        ABOVE,
        /** The model from the left. */
        SIDE,
        /** The model from ahead. */
        AHEAD,
        /** A section with its surface. */
        SECTION,
        /** Servo, rod and horn. */
        LINKAGE
    }

    /** How a part is drawn. */
    public enum Kind {
        /** What stays. */
        SKIN,
        /** What moves. */
        SURFACE,
        /** Where it was, or would be. */
        GHOST,
        /** A thin part. */
        ROD,
        /** A line that helps to measure. */
        LINE,
        /** A balance point; its shape is a small circle. */
        BALANCE
    }

    /**
     * Something that is seen.
     *
     * @param shape its outline
     * @param kind how it is drawn
     */
    public record Part(Shape shape, Kind kind) {

        static Part line(Kind kind, Point2D from, Point2D to) {
            Path2D path = new Path2D.Double();
            path.moveTo(from.getX(), from.getY());
            path.lineTo(to.getX(), to.getY());
            return new Part(path, kind);
        }
    }

    /** What of it is looked at: all of it, or what is near a small measure. */
    public Rectangle2D frame() {
        Rectangle2D all = new Rectangle2D.Double();
        boolean first = true;
        for (Part part : parts) {
            Rectangle2D bounds = part.shape().getBounds2D();
            all = first ? bounds : all.createUnion(bounds);
            first = false;
        }
        Rectangle2D close = new Rectangle2D.Double();
        for (int i = 0; i < measured.size(); i++) {
            close = i == 0 ? bounds(measured.get(i)) : close.createUnion(bounds(measured.get(i)));
        }
        double large = Math.max(all.getWidth(), all.getHeight());
        double small = Math.max(close.getWidth(), close.getHeight());
        boolean sides = measured.stream().anyMatch(Measured.Angle.class::isInstance);
        if (small > 0 && small < (sides ? SMALL_SIDES : SMALL) * large) {
            double side = small / (sides ? ENLARGED_SIDES : ENLARGED);
            return new Rectangle2D.Double(close.getCenterX() - side / 2, close.getCenterY() - side / 2, side, side);
        }
        return small > 0 ? all.createUnion(close) : all;
    }

    private static Rectangle2D bounds(Measured measured) {
        Rectangle2D box = new Rectangle2D.Double();
        if (measured instanceof Measured.Length length) {
            box.setFrameFromDiagonal(length.from(), length.to());
        } else if (measured instanceof Measured.Angle angle) {
            box.setFrameFromDiagonal(angle.centre(), angle.end(angle.from()));
            box.add(angle.end(angle.to()));
            box.setFrameFromCenter(
                    box.getCenterX(),
                    box.getCenterY(),
                    box.getCenterX() + ROOM * box.getWidth() / 2,
                    box.getCenterY() + ROOM * box.getHeight() / 2);
        }
        return box;
    }
}
