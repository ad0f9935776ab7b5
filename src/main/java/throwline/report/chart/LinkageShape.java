package throwline.report.chart;

import java.awt.geom.Point2D;
import throwline.linkage.FourBar;

/**
 * Servo arm, rod and horn from the side with the surface at neutral, m: the servo's axis at the origin, the hinge line
 * behind it to the right, y down the page. Arm and horn point up the page and turn to the right for "down".
 */
public final class LinkageShape {

    private final FourBar linkage;
    private final double arm;
    private final double horn;
    private final double lean;

    /**
     * The shape of a linkage.
     *
     * @param arm hole in the servo arm from the servo's axis, m, above 0
     * @param horn hole in the horn from the hinge line, m, above 0
     * @param rod hole to hole, m; longer than the difference of the arms
     * @param lean how far both arms lean away from the down side at neutral, rad
     */
    public LinkageShape(double arm, double horn, double rod, double lean) {
        linkage = FourBar.ofRod(arm, horn, rod, lean);
        this.arm = arm;
        this.horn = horn;
        this.lean = lean;
    }

    /** The hinge line. */
    public Point2D hinge() {
        return new Point2D.Double(linkage.distance(), 0);
    }

    /** The hole in the servo arm at a servo angle, rad, down positive, 0 where the surface is at neutral. */
    public Point2D armHole(double servoAngle) {
        double turned = direction(servoAngle);
        return new Point2D.Double(arm * Math.cos(turned), arm * Math.sin(turned));
    }

    /** The hole in the horn. */
    public Point2D hornHole() {
        double turned = direction(0);
        return new Point2D.Double(linkage.distance() + horn * Math.cos(turned), horn * Math.sin(turned));
    }

    /** Where an arm points at an angle, rad from the right, clockwise on the page. */
    public double direction(double angle) {
        return angle - lean - Math.PI / 2;
    }
}
