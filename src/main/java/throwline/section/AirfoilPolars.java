package throwline.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import throwline.model.Hinge;

/**
 * Everything measured on one airfoil, by the chord of its surface. A surface between two measured chords lies between their
 * curves, each moved to it by the method; beyond them the nearest is moved. Immutable.
 */
final class AirfoilPolars {

    private final List<MeasuredSurface> byChord;
    private final StallHysteresis recovery;

    private AirfoilPolars(List<MeasuredSurface> byChord, StallHysteresis recovery) {
        this.byChord = byChord;
        this.recovery = recovery;
    }

    /**
     * Sorts an airfoil's runs.
     *
     * @throws IllegalArgumentException where no run with lift and drag at zero deflection is among them
     */
    static AirfoilPolars of(Airfoil airfoil, FlapMethod method) {
        List<PolarRun> neutral =
                airfoil.runs().stream().filter(run -> run.deflection() == 0).toList();
        CleanPolars clean = CleanPolars.of(airfoil, neutral, 0);
        if (!clean.usable()) {
            throw new IllegalArgumentException("no lift and drag at zero deflection: " + airfoil.name());
        }
        Map<Double, List<PolarRun>> moved = airfoil.runs().stream()
                .filter(run -> run.deflection() != 0)
                .collect(Collectors.groupingBy(PolarRun::surfaceChord, TreeMap::new, Collectors.toList()));
        List<MeasuredSurface> surfaces = new ArrayList<>();
        moved.forEach((chord, runs) -> {
            Map<Double, CleanPolars> sets = sets(airfoil, method, chord, runs);
            if (!sets.isEmpty()) {
                sets.put(0.0, clean);
                surfaces.add(new MeasuredSurface(airfoil, method, chord, sets));
            }
        });
        if (surfaces.isEmpty()) {
            surfaces.add(new MeasuredSurface(airfoil, method, 0, Map.of(0.0, clean)));
        }
        return new AirfoilPolars(surfaces, StallHysteresis.of(airfoil));
    }

    /** Usable curves by deflection. */
    private static Map<Double, CleanPolars> sets(
            Airfoil airfoil, FlapMethod method, double chord, List<PolarRun> moved) {
        Map<Double, CleanPolars> sets = new TreeMap<>();
        moved.stream().collect(Collectors.groupingBy(PolarRun::deflection)).forEach((deflection, runs) -> {
            double middle =
                    runs.stream().mapToDouble(PolarRun::reynolds).average().orElseThrow();
            FlapEffect expected = method.effect(deflection, chord, airfoil, middle, Hinge.TAPED);
            CleanPolars set = CleanPolars.of(airfoil, runs, expected.maxLift());
            if (set.usable()) {
                sets.put(deflection, set);
            }
        });
        return sets;
    }

    TabulatedCurve curve(SurfaceState surface, double reynolds) {
        double wanted = surface.chordFraction();
        int i = 0;
        while (i < byChord.size() - 1 && byChord.get(i + 1).chord() <= wanted) {
            i++;
        }
        TabulatedCurve narrower = curve(byChord.get(i), surface, reynolds);
        if (i == byChord.size() - 1
                || surface.deflection() == 0
                || wanted <= byChord.get(i).chord()) {
            return narrower;
        }
        double weight = (wanted - byChord.get(i).chord())
                / (byChord.get(i + 1).chord() - byChord.get(i).chord());
        return narrower.blend(curve(byChord.get(i + 1), surface, reynolds), weight);
    }

    private TabulatedCurve curve(MeasuredSurface measured, SurfaceState surface, double reynolds) {
        return measured.curve(surface, reynolds, recovery.belowStall(reynolds));
    }

    /** Reynolds numbers at which curves bend: measured ones, those where a law bends, and where curves are clamped. */
    DoubleStream bends() {
        return DoubleStream.concat(
                DoubleStream.concat(FlapMethod.bends(), ReynoldsLaw.bends()),
                byChord.stream().flatMapToDouble(MeasuredSurface::bends));
    }
}
