package throwline.validation;

import throwline.section.SectionCurve;

/** Reads a section curve by its lift. */
final class CurveReading {

    private static final int HALVINGS = 50;

    private CurveReading() {}

    /** Angle at which the rising curve has this lift, rad. */
    static double angleOf(SectionCurve curve, double lift) {
        double low = curve.negativeStallAngle();
        double high = curve.stallAngle();
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (low + high);
            if (curve.risingLift(middle) < lift) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 0.5 * (low + high);
    }

    /** Drag at a lift. */
    static double dragAt(SectionCurve curve, double lift) {
        return curve.drag(angleOf(curve, lift));
    }
}
