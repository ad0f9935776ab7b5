package throwline.validation;

import throwline.liftingline.ShiftedStallCurve;
import throwline.section.SectionAerodynamics;
import throwline.section.SectionCurve;
import throwline.section.SectionPlace;
import throwline.section.SurfaceState;

/**
 * Sections whose maximum lift is another than the product's, for aircraft whose kind of flap or tunnel result is known.
 *
 * @param sections the product's
 * @param clean added to the maximum lift of sections with nothing moved
 * @param moved added to the maximum lift of sections with their surface moved
 * @param flapGain factor on what a surface that is down adds to maximum lift
 */
record RaisedStall(SectionAerodynamics sections, double clean, double moved, double flapGain)
        implements SectionAerodynamics {

    @Override
    public SectionCurve curve(SectionPlace place, SurfaceState surface, double reynolds) {
        SectionCurve curve = sections.curve(place, surface, reynolds);
        double rise = clean;
        if (surface.deflection() > 0) {
            SectionCurve neutral =
                    sections.curve(place, new SurfaceState(0, surface.chordFraction(), surface.hinge()), reynolds);
            rise = moved + (flapGain - 1) * (curve.maxLift() - neutral.maxLift());
        }
        return rise == 0 ? curve : new ShiftedStallCurve(curve, rise);
    }
}
