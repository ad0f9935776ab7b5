package throwline.flight;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.section.MeasuredSections;

/**
 * Six set-ups of an example, from their approaches on: landings and gusts, as a comparison asks for them, and besides these
 * all pulls and moving surfaces. Wanted: all of it at most 400 ms on one processor of a usual machine.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
public class FieldBenchmark {

    private final List<SetUp> setUps = new ArrayList<>();
    private final PackedAirfoils airfoils = new PackedAirfoils();
    private final Model model =
            ((ReadModel.Project) ModelFile.read(Path.of("examples", "orchard.yaml"), airfoils)).model();
    private final Airframe airframe = new Airframe(model, airfoils, new MeasuredSections());
    private final GroundHeights ladder = new GroundHeights(airframe);
    private final Pack pack = model.packs().get(0);

    /** The example's set-ups and two more. */
    @Setup
    public void prepare() {
        setUps.addAll(model.setUps());
        setUps.add(new SetUp("half flap", Map.of("flaps", 0.4), 0));
        setUps.add(new SetUp("droop", Map.of("flaps", 0.05, "ailerons", 0.05), 0));
    }

    /** One set-up at its approach. */
    private record Ready(Flight flight, SetUp setUp, Stall stall, Attitude approach) {}

    private List<Ready> ready() {
        List<Ready> ready = new ArrayList<>();
        for (SetUp setUp : setUps) {
            Flight flight = new Flight(airframe, setUp);
            Stall stall = flight.stall(pack).orElseThrow();
            ready.add(new Ready(
                    flight,
                    setUp,
                    stall,
                    flight.descent(pack, stall, 1.3 * stall.speed()).steady().orElseThrow()));
        }
        return ready;
    }

    /** Stalls and approaches alone, to be taken off the others. */
    @Benchmark
    public int approaches() {
        return ready().size();
    }

    /** Besides, landings and gusts. */
    @Benchmark
    public double landings() {
        return ready().stream().mapToDouble(this::landing).sum();
    }

    /** Besides, pulls and moving surfaces. */
    @Benchmark
    public double everything() {
        List<Ready> ready = ready();
        double sum = 0;
        for (Ready one : ready) {
            sum += landing(one) + pulls(one) + moves(ready.get(0), one);
        }
        return sum;
    }

    private double landing(Ready one) {
        LandingSimulator lander = one.flight.lander(ladder, pack, one.stall, one.approach);
        double gust = one.flight.gustMargin(pack, one.approach).orElseThrow().gust();
        return lander.land(0).orElseThrow().total()
                + lander.land(2).orElseThrow().total()
                + gust;
    }

    private double pulls(Ready one) {
        double sum = 0;
        for (Stick stick : model.sticks()) {
            for (double ratio : new double[] {1.8, 2.4, 3}) {
                if (stick instanceof Stick.Pull pull && pull.worksIn(one.setUp)) {
                    sum += one.flight
                            .pull(pull, pack, one.stall, ratio * one.stall.speed())
                            .map(p -> one.flight.loop(pack, p).height())
                            .orElse(0.0);
                }
            }
        }
        return sum;
    }

    private double moves(Ready reference, Ready one) {
        double speed = 1.5 * reference.stall.speed();
        Attitude from =
                reference.flight.descent(pack, reference.stall, speed).steady().orElseThrow();
        Attitude to = one.flight.descent(pack, one.stall, speed).steady().orElseThrow();
        SurfaceMover mover = new SurfaceMover(airframe, reference.setUp, one.setUp, pack, from, to);
        double whole = mover.wholeChange(speed).orElseThrow();
        double sum = mover.shortestTime(speed, 0, 1.3).orElse(0.0)
                + mover.shortestTime(speed, whole / 2, 1.3).orElse(0.0);
        for (double share : new double[] {0, 0.5, 1}) {
            sum += mover.lower(speed, 1.5, share * whole)
                            .map(SurfaceMove::balloon)
                            .orElse(0.0)
                    + mover.raise(1.3 * one.stall.speed(), 1.5, share * whole)
                            .map(SurfaceMove::drop)
                            .orElse(0.0);
        }
        return sum;
    }
}
