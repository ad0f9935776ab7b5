package throwline.study;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import throwline.flight.Airframe;
import throwline.flight.SolveRecord;
import throwline.input.ModelFile;
import throwline.input.PackedAirfoils;
import throwline.input.ReadModel;
import throwline.liftingline.LiftingLineSolver;
import throwline.model.Model;
import throwline.model.Surface;
import throwline.section.AirfoilLibrary;
import throwline.section.CurveFamily;
import throwline.section.MeasuredSections;
import throwline.section.SectionPlace;
import throwline.section.SurfaceState;

/**
 * A comparison of an example with two more set-ups: six set-ups, two packs, on one thread. All numbers of steady flight:
 * wanted under 150 ms, and at most 30 % more than the lifting lines of wing and tail that they rest on, which are solved
 * again alone, in the same order from the same starts. Every number, with servos, landings and gusts: no more is wanted of
 * it than to become faster. And the section curves of its wing, at 40 Reynolds numbers a section: under 20 ms. Compare
 * medians (p0.50).
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(
        value = 1,
        jvmArgsAppend = {"-Djava.util.concurrent.ForkJoinPool.common.parallelism=0"})
@Warmup(iterations = 8, time = 4)
@Measurement(iterations = 5, time = 2)
public class ComparisonBenchmark {

    private static final String FIRST = "  clean: {}\n";
    private static final String TWO_MORE = "  thermal: {flaps: 5 deg down, ailerons: 3 deg down}\n"
            + "  steep: {flaps: 25 deg down, ailerons: 8 deg up}\n";

    private static final int SPEEDS = 40;

    /** The example. */
    @Param({"orchard", "ridgeline", "saltmarsh"})
    public String example = "";

    private final AirfoilLibrary airfoils = new PackedAirfoils();
    private final MeasuredSections sections = new MeasuredSections();
    private final SolveRecord record = new SolveRecord();
    private List<Model> models = List.of();
    private List<LiftingLineSolver> solvers = List.of();

    /** Reads the example. */
    @Setup
    public void read() throws IOException {
        String text = Files.readString(Path.of("examples", example + ".yaml")).replace(FIRST, FIRST + TWO_MORE);
        Path file = Files.createTempFile(example, ".yaml");
        Files.writeString(file, text);
        if (!(ModelFile.read(file, airfoils) instanceof ReadModel.Project project)) {
            throw new IllegalStateException("not read: " + example);
        }
        Files.delete(file);
        models = List.of(project.model());
        if (project.model().setUps().size() != 6) {
            throw new IllegalStateException("not six set-ups: " + example);
        }
        steadyFlight(record.airframe(project.model(), airfoils, sections));
    }

    /** Solvers as they were before the first solve. */
    @Setup(Level.Invocation)
    public void newSolvers() {
        solvers = record.solvers();
    }

    /** Everything. */
    @Benchmark
    public Comparison full() {
        Model model = models.get(0);
        return new ComparisonStudy(sections, Bands.load()).compare(model, airfoils, model.packs());
    }

    /** Stall, approach, descents over speed, glide, nose-down speed, elevator, rolls, first stall. */
    @Benchmark
    public List<List<Optional<HeadlineNumbers>>> steadyFlight() {
        return steadyFlight(new Airframe(models.get(0), airfoils, sections));
    }

    private List<List<Optional<HeadlineNumbers>>> steadyFlight(Airframe airframe) {
        return new ComparisonStudy(sections, Bands.load())
                .inFlight(airframe, airframe.model().packs());
    }

    /** The lifting lines of steady flight alone. */
    @Benchmark
    public int solvesOfSteadyFlight() {
        return record.replay(solvers);
    }

    /** Every section of the wing, with each surface and without, in every set-up, over a model's range of speeds. */
    @Benchmark
    public double curves() {
        Model model = models.get(0);
        SectionPlace place = SectionPlace.of(
                airfoils.find(model.wing().sections().get(0).airfoil()).orElseThrow());
        double sum = 0;
        for (int k = 0; k < model.setUps().size(); k++) {
            sum += most(sections.family(place, SurfaceState.none()));
            for (Surface surface : model.wing().surfaces()) {
                double deflection = model.setUps().get(k).deflection(surface.name());
                sum += most(
                        sections.family(place, new SurfaceState(deflection, surface.chordFraction(), surface.hinge())));
            }
        }
        return sum;
    }

    private static double most(CurveFamily family) {
        double most = 0;
        for (int k = 0; k < SPEEDS; k++) {
            most = Math.max(most, family.at(60_000 * Math.pow(1.06, k)).maxLift());
        }
        return most;
    }
}
