package throwline.study;

import java.nio.file.Path;
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
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import throwline.input.FlightsFile;
import throwline.input.ModelFile;
import throwline.input.PackedAirfoils;
import throwline.input.ReadFlights;
import throwline.input.ReadModel;
import throwline.model.Model;
import throwline.section.AirfoilLibrary;
import throwline.section.MeasuredSections;

/**
 * What learning from the invented season takes, its nine notes alone and with its log, beside one comparison without flights
 * in the same run; one thread. Compare medians (p0.50).
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(
        value = 1,
        jvmArgsAppend = {"-Djava.util.concurrent.ForkJoinPool.common.parallelism=0"})
@Warmup(iterations = 6, time = 3)
@Measurement(iterations = 5, time = 2)
public class LearnBenchmark {

    private final AirfoilLibrary airfoils = new PackedAirfoils();
    private final MeasuredSections sections = new MeasuredSections();
    private List<ReadFlights.Notes> season = List.of();
    private List<Comparison> known = List.of();

    /** Reads model and season, and compares the model as it is before any flight. */
    @Setup
    public void read() {
        if (!(ModelFile.read(Path.of("examples", "orchard.yaml"), airfoils) instanceof ReadModel.Project project)) {
            throw new IllegalStateException("not read");
        }
        Model model = project.model();
        if (!(FlightsFile.read(Path.of("examples", "season", "orchard-flights.yaml"), model)
                instanceof ReadFlights.Notes notes)) {
            throw new IllegalStateException("not read");
        }
        season = List.of(notes);
        known = List.of(plain(model));
    }

    private Comparison plain(Model model) {
        return new ComparisonStudy(sections, Bands.load()).compare(model, airfoils, model.packs());
    }

    /** Nine notes. */
    @Benchmark
    public Optional<Lessons> notes() {
        return new LearnStudy(sections, Bands.load())
                .learn(known.get(0), airfoils, season.get(0).notes(), Map.of());
    }

    /** The same with the log. */
    @Benchmark
    public Optional<Lessons> withLog() {
        return new LearnStudy(sections, Bands.load())
                .learn(
                        known.get(0),
                        airfoils,
                        season.get(0).notes(),
                        season.get(0).logs());
    }

    /** The comparison without flights. */
    @Benchmark
    public Comparison comparison() {
        return plain(known.get(0).model());
    }
}
