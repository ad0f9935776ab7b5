package throwline.liftingline;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import throwline.input.PackedAirfoils;
import throwline.model.AirfoilName;
import throwline.model.Hinge;
import throwline.section.MeasuredSections;
import throwline.section.SectionAerodynamics;
import throwline.section.SectionCurve;
import throwline.section.SectionPlace;
import throwline.section.SurfaceState;

/**
 * Time and memory of one warm solve, a degree of incidence away from its start, against one decomposition and solve of a
 * full matrix of 80 rows by a general library ({@link LibraryBenchmark}). At 4 degrees the flow is attached, at 8 the flaps
 * begin to stall, which is the worst step of a whole sweep. Compare the medians (p0.50): they hardly feel what else the
 * machine does. Wanted: symmetric at most 0.6 of the library's, both sides different at most 2.5; from 40 to 160
 * strips at most 28 and 60 times; under 16 KB allocated.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class LiftingLineBenchmark {

    static final double[] ENDS = {0.1, 0.55, 0.95};

    /** Strips over the whole span. */
    @Param({"40", "80", "160"})
    public int strips;

    /** Lower of the two incidences, degrees. */
    @Param({"4", "8"})
    public int incidence;

    private final SectionAerodynamics sections = new MeasuredSections();
    private final SectionPlace place = SectionPlace.of(
            new PackedAirfoils().find(new AirfoilName("clark-y")).orElseThrow());
    private LiftingLineSolver solver;
    private LiftingLineSolution[] alike;
    private LiftingLineSolution[] different;
    private int turn;

    /** Makes the wing and two answers of each kind, a degree apart. */
    @Setup
    public void prepare() {
        SpanGrid grid = SpanGrid.of(TheoryPlanform.tapered(8, 0.6), ENDS, strips);
        solver = new LiftingLineSolver(
                new InfluenceMatrix(grid, Ground.none(), ChordCorrection.of(grid)), SolverSettings.standard());
        alike = answers(curves(grid, 0));
        different = answers(curves(grid, 10));
    }

    /** Flaps 20 degrees down, ailerons opposite or not moved. */
    private List<SectionCurve> curves(SpanGrid grid, double aileron) {
        Map<List<Double>, SectionCurve> made = new HashMap<>();
        List<SectionCurve> curves = new ArrayList<>();
        for (int i = 0; i < grid.size(); i++) {
            double y = grid.control(i);
            boolean flap = Math.abs(y) > 0.1 && Math.abs(y) < 0.55;
            boolean moved = Math.abs(y) > 0.55 && Math.abs(y) < 0.95;
            double deflection = Math.toRadians(flap ? 20 : moved ? -Math.signum(y) * aileron : 0);
            double reynolds = 8e5 * grid.chord(i);
            curves.add(made.computeIfAbsent(
                    List.of(deflection + 0.0, reynolds),
                    key -> sections.curve(place, new SurfaceState(deflection, 0.25, Hinge.TAPED), reynolds)));
        }
        return curves;
    }

    private LiftingLineSolution[] answers(List<SectionCurve> curves) {
        LiftingLineSolution[] answers = new LiftingLineSolution[2];
        for (int k = 0; k < 2; k++) {
            LiftingLineProblem problem =
                    LiftingLineProblem.of(curves, Math.toRadians(incidence + k), Motion.straight());
            answers[k] = solver.solve(problem, Optional.empty());
        }
        return answers;
    }

    /** Both sides alike. */
    @Benchmark
    public LiftingLineSolution warmSymmetric() {
        turn = 1 - turn;
        return solver.solve(alike[turn].problem(), Optional.of(alike[1 - turn]));
    }

    /** Ailerons opposite. */
    @Benchmark
    public LiftingLineSolution warmBothSides() {
        turn = 1 - turn;
        return solver.solve(different[turn].problem(), Optional.of(different[1 - turn]));
    }
}
