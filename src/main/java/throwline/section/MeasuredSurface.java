package throwline.section;

import java.util.Map;
import java.util.NavigableMap;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.DoubleStream;
import throwline.model.Hinge;
import throwline.numerics.Interpolation;

/**
 * Everything measured on one airfoil with a surface of one chord, by deflection, and the method for other deflections and
 * chords (methods manual 4.10). Immutable.
 */
final class MeasuredSurface {

    /** Chords that differ by no more are the same: no model is known better than to a hundredth of its chord (PRACTICE). */
    private static final double SAME_CHORD = 0.01;

    private final Airfoil airfoil;
    private final FlapMethod method;
    private final double chord;
    private final NavigableMap<Double, CleanPolars> byDeflection;

    /**
     * @param airfoil the airfoil
     * @param method for what was not measured
     * @param chord of the measured surface over the section's; not read where nothing but zero was measured
     * @param byDeflection curves by deflection in rad, zero among them
     */
    MeasuredSurface(Airfoil airfoil, FlapMethod method, double chord, Map<Double, CleanPolars> byDeflection) {
        this.airfoil = airfoil;
        this.method = method;
        this.chord = chord;
        this.byDeflection = new TreeMap<>(byDeflection);
    }

    double chord() {
        return chord;
    }

    /**
     * The curve with a surface.
     *
     * @param surface the surface wanted
     * @param reynolds Reynolds number
     * @param recovery how far below the stall lift comes back, rad
     */
    TabulatedCurve curve(SurfaceState surface, double reynolds, OptionalDouble recovery) {
        double deflection = surface.deflection();
        double wanted = surface.chordFraction();
        double measured = Interpolation.clamp(deflection, byDeflection.firstKey(), byDeflection.lastKey());
        FlapEffect whole = method.effect(deflection, wanted, airfoil, reynolds, surface.hinge());
        double knownChord = Math.abs(wanted - chord) <= SAME_CHORD + Math.ulp(1) ? wanted : chord;
        FlapEffect known = method.effect(measured, knownChord, airfoil, reynolds, Hinge.TAPED);
        CleanCurve base = measured(measured, reynolds);
        double zeroLift = measured == 0
                ? base.lift().zeroLiftAngle()
                : measured(0, reynolds).lift().zeroLiftAngle();
        CurveMaker maker = new CurveMaker(
                base, whole.beyond(known), slant(deflection, wanted), airfoil.thickness(), !whole.isAs(known));
        return maker.make(HingeMoment.of(surface, airfoil.thickness(), zeroLift), recovery);
    }

    /** Reynolds numbers at which the measured curves bend. */
    DoubleStream bends() {
        return byDeflection.values().stream().flatMapToDouble(CleanPolars::bends);
    }

    private static double slant(double deflection, double chord) {
        return Math.atan2(chord * Math.sin(deflection), 1 - chord + chord * Math.cos(deflection));
    }

    private CleanCurve measured(double deflection, double reynolds) {
        Map.Entry<Double, CleanPolars> below = byDeflection.floorEntry(deflection);
        Map.Entry<Double, CleanPolars> above = byDeflection.ceilingEntry(deflection);
        if (below == null || above == null) {
            throw new IllegalArgumentException("beyond the measured deflections: " + deflection);
        }
        CleanCurve lower = below.getValue().at(reynolds);
        if (below.getKey().equals(above.getKey())) {
            return lower;
        }
        double weight = (deflection - below.getKey()) / (above.getKey() - below.getKey());
        return lower.blend(above.getValue().at(reynolds), weight);
    }
}
