package throwline.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import throwline.air.Air;
import throwline.air.Gravity;
import throwline.model.AirfoilName;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.section.Airfoil;
import throwline.section.AirfoilLibrary;
import throwline.section.MeasuredSections;
import throwline.section.SectionCurve;
import throwline.section.SectionPlace;
import throwline.section.SurfaceState;

/** Review of the airfoils that a model file gives by coordinates. */
public final class OutlineReview {

    /** Between slow flight and the glide (PRACTICE). */
    private static final double LIFT = 0.7;

    /** Reynolds numbers are told in steps of this. */
    private static final double ROUND = 10_000;

    private OutlineReview() {}

    /** Airfoils by coordinates in the order of the model file; empty without any. */
    public static List<OutlineAir> of(Model model, AirfoilLibrary library) {
        Map<AirfoilName, Double> chords = new LinkedHashMap<>();
        model.wing().sections().forEach(section -> chords.merge(section.airfoil(), section.chord(), Math::max));
        chords.merge(model.tail().airfoil(), model.tail().chord(), Math::max);
        List<OutlineAir> found = new ArrayList<>();
        double perChord = reynoldsPerChord(model);
        chords.forEach((name, chord) -> library.find(name)
                .filter(airfoil ->
                        airfoil.likeness().isPresent() && airfoil.shape().isPresent())
                .ifPresent(airfoil -> found.add(of(airfoil, name, ROUND * Math.rint(perChord * chord / ROUND)))));
        return found;
    }

    private static double reynoldsPerChord(Model model) {
        Air air = Air.at(model.field().heightAboveSea(), model.field().temperature());
        double mass = model.packs().stream().mapToDouble(Pack::mass).min().orElseThrow();
        double speed = Math.sqrt(
                2 * mass * Gravity.STANDARD / (air.density() * model.wing().area() * LIFT));
        return speed / air.kinematicViscosity();
    }

    private static OutlineAir of(Airfoil airfoil, AirfoilName name, double reynolds) {
        SectionCurve curve = new MeasuredSections().curve(SectionPlace.of(airfoil), SurfaceState.none(), reynolds);
        return new OutlineAir(
                name.text(),
                airfoil.thickness(),
                airfoil.camber(),
                reynolds,
                curve.zeroLiftAngle(),
                curve.maxLift(),
                curve.stallAngle(),
                new FlowStudy(new MeasuredSections()).flows(airfoil, SurfaceState.none(), reynolds));
    }
}
