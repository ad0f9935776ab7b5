package throwline.section.contour;

import java.util.ArrayList;
import java.util.List;
import throwline.section.AirfoilShape.Corner;

/**
 * Contour with a surface turned about a hinge on the mean line: an arc about the hinge where the bend opens, cut at the
 * bisector where it closes.
 */
final class HingedContour {

    private static final int ARC = 24;

    private final double hingeX;
    private final double hingeY;
    private final double deflection;

    /**
     * @param hingeX where the hinge is
     * @param hingeY its height
     * @param deflection rad, trailing edge down positive
     */
    HingedContour(double hingeX, double hingeY, double deflection) {
        this.hingeX = hingeX;
        this.hingeY = hingeY;
        this.deflection = deflection;
    }

    /**
     * A side with its back turned.
     *
     * @param side from the nose
     * @param top 1 for the upper side, -1 for the lower
     */
    List<Corner> turned(List<Corner> side, int top) {
        boolean opens = top * deflection > 0;
        List<Corner> made = new ArrayList<>();
        Corner last = side.get(0);
        for (Corner c : side) {
            if (c.x() < hingeX && (opens || ahead(c, top) < 0)) {
                made.add(c);
                last = c;
            }
        }
        for (int i = 1; i < ARC && opens; i++) {
            made.add(turned(last, deflection * i / ARC));
        }
        for (Corner c : side) {
            Corner back = turned(c, deflection);
            if (c.x() >= hingeX && (opens || ahead(back, top) > 0)) {
                made.add(back);
            }
        }
        return made;
    }

    /** Distance behind the bisector of the bend. */
    private double ahead(Corner c, int top) {
        double across = Math.atan2(top, 0) - 0.5 * deflection;
        double dx = c.x() - hingeX;
        double dy = c.y() - hingeY;
        return top * (Math.sin(across) * dx - Math.cos(across) * dy);
    }

    private Corner turned(Corner c, double angle) {
        double dx = c.x() - hingeX;
        double dy = c.y() - hingeY;
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        return new Corner(hingeX + dx * cos + dy * sin, hingeY + dy * cos - dx * sin);
    }
}
