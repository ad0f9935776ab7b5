package throwline.report.chart;

import java.awt.Color;
import java.awt.Font;
import java.awt.Paint;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** Part of a panel: what it shows, as data, and how it is put there with the brush. */
interface Item {

    void draw(Brush brush);

    /**
     * Line through places.
     *
     * @param places in order
     * @param closed true where it ends where it began
     * @param color of it
     * @param stroke width and dashes
     */
    record Line(List<Place> places, boolean closed, Color color, Stroke stroke) implements Item {

        static Line of(Color color, Stroke stroke, Place... places) {
            return new Line(List.of(places), false, color, stroke);
        }

        /** A level from one side of a panel to the other. */
        static Line level(double y, Color color, Stroke stroke) {
            return of(color, stroke, Place.of(-Place.EDGE, y), Place.of(Place.EDGE, y));
        }

        /** A line from the bottom of a panel to its top. */
        static Line upright(double x, Color color, Stroke stroke) {
            return of(color, stroke, Place.of(x, -Place.EDGE), Place.of(x, Place.EDGE));
        }

        @Override
        public void draw(Brush brush) {
            Path2D path = brush.path(places);
            if (closed) {
                path.closePath();
            }
            brush.line(path, color, stroke);
        }
    }

    /** Lines on an area, which tell areas apart in grey print. */
    enum Hatch {
        NONE,
        SLANTED,
        UPRIGHT,
        LEVEL
    }

    /**
     * Area inside of places.
     *
     * @param places its corners
     * @param fill paint or colour
     * @param hatch lines on it
     * @param lines their colour
     */
    record Area(List<Place> places, Paint fill, Hatch hatch, Color lines) implements Item {

        private static final double APART = 5;

        static Area of(List<Place> places, Paint fill) {
            return new Area(places, fill, Hatch.NONE, ChartStyle.INK);
        }

        /** An area between two values across and two up. */
        static Area box(double left, double right, double low, double high, Paint fill) {
            return of(
                    List.of(Place.of(left, low), Place.of(right, low), Place.of(right, high), Place.of(left, high)),
                    fill);
        }

        @Override
        public void draw(Brush brush) {
            Path2D shape = brush.path(places);
            shape.closePath();
            brush.fill(shape, fill);
            if (hatch != Hatch.NONE) {
                brush.inside(shape, hatching(shape.getBounds2D()), lines);
            }
        }

        private Shape hatching(Rectangle2D box) {
            Path2D drawn = new Path2D.Double();
            double slant = hatch == Hatch.SLANTED ? box.getHeight() : 0;
            if (hatch == Hatch.LEVEL) {
                for (int third = 1; third < 3; third++) {
                    double y = box.getMinY() + third * box.getHeight() / 3;
                    drawn.append(new Line2D.Double(box.getMinX(), y, box.getMaxX(), y), false);
                }
                return drawn;
            }
            for (double x = box.getMinX() - slant; x < box.getMaxX(); x += APART) {
                drawn.append(new Line2D.Double(x, box.getMaxY(), x + slant, box.getMinY()), false);
            }
            return drawn;
        }
    }

    /**
     * Mark at a place.
     *
     * @param place its middle
     * @param look its colour and shape
     * @param filled false for a hollow one
     */
    record Mark(Place place, ChartStyle.Look look, boolean filled) implements Item {
        @Override
        public void draw(Brush brush) {
            brush.mark(look, brush.x(place), brush.y(place), filled);
        }
    }

    /**
     * One line of text.
     *
     * @param place of its middle line
     * @param text what stands there
     * @param font of it
     * @param color of it
     * @param side on which it lies, seen from the place
     * @param ground true for a patch of ground below it
     */
    record Text(Place place, String text, Font font, Color color, Brush.Side side, boolean ground) implements Item {

        /** Plain text. */
        static Text of(Place place, String text, Brush.Side side) {
            return new Text(place, text, ChartStyle.TEXT, ChartStyle.INK, side, false);
        }

        /** Small text on a patch of ground. */
        static Text small(Place place, String text, Brush.Side side) {
            return new Text(place, text, ChartStyle.SMALL, ChartStyle.INK, side, true);
        }

        /** Small quiet text, as for the name of a level. */
        static Text quiet(Place place, String text, Brush.Side side) {
            return new Text(place, text, ChartStyle.SMALL, ChartStyle.QUIET_INK, side, false);
        }

        @Override
        public void draw(Brush brush) {
            if (ground) {
                brush.textOnGround(text, font, color, brush.x(place), brush.y(place), side);
            } else {
                brush.text(text, font, color, brush.x(place), brush.y(place), side);
            }
        }
    }

    /**
     * Name beside a panel, broken to the room that it has.
     *
     * @param place of its middle
     * @param text the name
     * @param width room, points
     * @param lines at most
     * @param side on which it lies, seen from the place
     */
    record Name(Place place, String text, double width, int lines, Brush.Side side) implements Item {
        @Override
        public void draw(Brush brush) {
            brush.name(text, width, lines, brush.x(place), brush.y(place), side);
        }
    }
}
