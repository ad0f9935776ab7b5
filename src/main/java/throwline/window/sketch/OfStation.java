package throwline.window.sketch;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.List;
import throwline.model.WingSection;
import throwline.report.chart.SectionShape;
import throwline.section.Airfoil;
import throwline.window.sketch.Sketch.Kind;
import throwline.window.sketch.Sketch.Part;

/** The section of a station of the wing over that at the middle, from the left: metres behind the leading edge there. */
final class OfStation {

    private static final double QUARTER = 0.25;

    private final Part root;
    private final Airfoil airfoil;

    /**
     * @param middle section at the middle
     * @param rootAirfoil its airfoil
     * @param airfoil the one of the station
     */
    OfStation(WingSection middle, Airfoil rootAirfoil, Airfoil airfoil) {
        root = new Part(placed(rootAirfoil, middle, 0), Kind.GHOST);
        this.airfoil = airfoil;
    }

    private static Point2D quarter(WingSection section) {
        return new Point2D.Double(section.setBack() + QUARTER * section.chord(), 0);
    }

    private static Path2D placed(Airfoil airfoil, WingSection section, double noseDown) {
        AffineTransform to = AffineTransform.getTranslateInstance(
                quarter(section).getX(), quarter(section).getY());
        to.rotate(-noseDown);
        to.scale(section.chord(), section.chord());
        to.translate(-QUARTER, 0);
        return new Path2D.Double(new SectionShape(airfoil, 1).front(), to);
    }

    /** How far it is turned nose down. */
    Sketch washout(WingSection section) {
        Measured turned =
                new Measured.Angle(quarter(section), Math.PI, Math.PI - section.washout(), section.chord(), true);
        Part own = new Part(placed(airfoil, section, section.washout()), Kind.SURFACE);
        return new Sketch(Sketch.View.SECTION, "", List.of(root, own), List.of(turned));
    }
}
