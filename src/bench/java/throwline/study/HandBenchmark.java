package throwline.study;

import java.nio.file.Path;
import java.util.List;
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
import throwline.input.ModelFile;
import throwline.input.PackedAirfoils;
import throwline.input.ReadModel;
import throwline.model.Model;
import throwline.model.SetUp;
import throwline.section.AirfoilLibrary;
import throwline.section.MeasuredSections;

/**
 * What the window works out for one position of a hand, beside one solve of the wing in the same run: steady flight, then
 * all numbers. Every call has another position, as a drag has; one thread. Compare medians (p0.50).
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(
        value = 1,
        jvmArgsAppend = {"-Djava.util.concurrent.ForkJoinPool.common.parallelism=0"})
@Warmup(iterations = 6, time = 3)
@Measurement(iterations = 5, time = 2)
public class HandBenchmark {

    /** Positions go up and down in half degrees between these, degrees. */
    private static final int MOST = 55;

    private static final double ANGLE_OF_ATTACK = Math.toRadians(4);
    private static final double SPEED = 12;

    private final AirfoilLibrary airfoils = new PackedAirfoils();
    private final MeasuredSections sections = new MeasuredSections();
    private List<Model> models = List.of();
    private List<HandStudy> hands = List.of();
    private int moves;

    /** Reads the example and makes it ready, as the window does before the hand moves. */
    @Setup
    public void read() {
        if (!(ModelFile.read(Path.of("examples", "orchard.yaml"), airfoils) instanceof ReadModel.Project project)) {
            throw new IllegalStateException("not read");
        }
        Model model = project.model();
        models = List.of(model);
        hands = List.of(new HandStudy(model, airfoils, model.packs().get(0), sections, Bands.load()));
    }

    /** The landing flap where the hand has it now. */
    private SetUp moved() {
        moves++;
        int step = moves % (4 * MOST);
        double degrees = 0.5 * Math.min(step, 4 * MOST - step);
        SetUp like = models.get(0).setUps().get(2);
        return new SetUp(like.name(), java.util.Map.of("flaps", Math.toRadians(degrees)), like.elevator());
    }

    private List<SetUp> with(SetUp moved) {
        return models.get(0).setUps().stream()
                .map(each -> each.name().equals(moved.name()) ? moved : each)
                .toList();
    }

    /** Numbers of steady flight. */
    @Benchmark
    public SetUpResult steadyFlight() {
        SetUp moved = moved();
        return hands.get(0).steady(moved, with(moved));
    }

    /** All numbers: landing, gusts, servos, moves too. */
    @Benchmark
    public SetUpResult allNumbers() {
        SetUp moved = moved();
        return hands.get(0).full(moved, with(moved));
    }

    /** One solve of the wing. */
    @Benchmark
    public WingSweep wing() {
        return new WingStudy(sections)
                .sweep(models.get(0), airfoils, WingQuestion.of(moved(), List.of(ANGLE_OF_ATTACK), SPEED));
    }
}
