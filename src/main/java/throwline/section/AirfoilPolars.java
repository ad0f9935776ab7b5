package throwline.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.DoubleStream;
import throwline.model.Hinge;

/** Everything measured on one airfoil, by deflection, and the method for the deflections between and beyond. Immutable. */
final class AirfoilPolars {

    /**
     * Chord fraction of a measured surface: E214C's is not published and lies between these by its effectiveness (computed);
     * a surface in that range is the measured one.
     */
    private static final double LEAST_MEASURED_CHORD = 0.20;

    private static final double MOST_MEASURED_CHORD = 0.22;

    private final Airfoil airfoil;
    private final FlapMethod method;
    private final double[] deflections;
    private final List<CleanPolars> sets;
    private final StallHysteresis recovery;

    private AirfoilPolars(Airfoil airfoil, FlapMethod method, double[] deflections, List<CleanPolars> sets) {
        this.airfoil = airfoil;
        this.method = method;
        this.deflections = deflections;
        this.sets = sets;
        this.recovery = StallHysteresis.of(airfoil);
    }

    /**
     * Sorts an airfoil's runs.
     *
     * @throws IllegalArgumentException where no run with lift and drag at zero deflection is among them
     */
    static AirfoilPolars of(Airfoil airfoil, FlapMethod method) {
        Map<Double, List<PolarRun>> byDeflection = new TreeMap<>();
        for (PolarRun run : airfoil.runs()) {
            byDeflection
                    .computeIfAbsent(run.deflection() + 0.0, d -> new ArrayList<>())
                    .add(run);
        }
        List<Double> deflections = new ArrayList<>();
        List<CleanPolars> sets = new ArrayList<>();
        byDeflection.forEach((deflection, runs) -> {
            double middle =
                    runs.stream().mapToDouble(PolarRun::reynolds).average().orElseThrow();
            FlapEffect expected =
                    method.effect(deflection, LEAST_MEASURED_CHORD, airfoil.thickness(), middle, Hinge.TAPED);
            CleanPolars set = CleanPolars.of(airfoil, runs, expected.maxLift());
            if (set.usable()) {
                deflections.add(deflection);
                sets.add(set);
            }
        });
        if (!deflections.contains(0.0)) {
            throw new IllegalArgumentException("no lift and drag at zero deflection: " + airfoil.name());
        }
        return new AirfoilPolars(
                airfoil,
                method,
                deflections.stream().mapToDouble(Double::doubleValue).toArray(),
                sets);
    }

    TabulatedCurve curve(SurfaceState surface, double reynolds) {
        double deflection = surface.deflection();
        double chord = surface.chordFraction();
        double last = deflections[deflections.length - 1];
        double measured = Math.max(deflections[0], Math.min(last, deflection));
        FlapEffect whole = method.effect(deflection, chord, airfoil.thickness(), reynolds, surface.hinge());
        double knownChord = Math.max(LEAST_MEASURED_CHORD, Math.min(MOST_MEASURED_CHORD, chord));
        FlapEffect known = method.effect(measured, knownChord, airfoil.thickness(), reynolds, Hinge.TAPED);
        CleanCurve base = measured(measured, reynolds);
        double zeroLift = measured == 0
                ? base.lift().zeroLiftAngle()
                : measured(0, reynolds).lift().zeroLiftAngle();
        CurveMaker maker = new CurveMaker(
                base, whole.beyond(known), slant(deflection, chord), airfoil.thickness(), !whole.equals(known));
        return maker.make(HingeMoment.of(surface, airfoil.thickness(), zeroLift), recovery.belowStall(reynolds));
    }

    /** Reynolds numbers at which curves bend: measured ones, those where a law bends, and where curves are clamped. */
    DoubleStream bends() {
        return DoubleStream.concat(
                DoubleStream.concat(FlapMethod.bends(), ReynoldsLaw.bends()),
                sets.stream().flatMapToDouble(CleanPolars::bends));
    }

    private static double slant(double deflection, double chord) {
        return Math.atan2(chord * Math.sin(deflection), 1 - chord + chord * Math.cos(deflection));
    }

    private CleanCurve measured(double deflection, double reynolds) {
        int i = 0;
        while (i < deflections.length - 1 && deflections[i + 1] <= deflection) {
            i++;
        }
        CleanCurve below = sets.get(i).at(reynolds);
        if (deflections[i] == deflection || i == deflections.length - 1) {
            return below;
        }
        double weight = (deflection - deflections[i]) / (deflections[i + 1] - deflections[i]);
        return below.blend(sets.get(i + 1).at(reynolds), weight);
    }
}
