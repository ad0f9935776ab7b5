package throwline.section;

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
import throwline.input.PackedAirfoils;
import throwline.model.AirfoilName;
import throwline.model.Hinge;

/** Speed of one evaluation, of one curve, and of the curves of a comparison. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@Fork(1)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class SectionBenchmark {

    private static final double[] SET_UPS = {0, -3, 8, 20, 35, 55};
    private static final int STRIPS = 60;

    private final double[] angles = new double[1024];
    private int next;
    private MeasuredSections sections = new MeasuredSections();
    private SectionPlace place = new SectionPlace(airfoil("clark-y"), airfoil("sd7037"), 0.0);
    private SectionPlace between = new SectionPlace(airfoil("clark-y"), airfoil("sd7037"), 0.4);
    private SectionCurve curve = sections.curve(place, SurfaceState.none(), 150_000);

    private static Airfoil airfoil(String name) {
        return new PackedAirfoils().find(new AirfoilName(name)).orElseThrow();
    }

    /** Angles over the working range in an order that no cache foresees. */
    @Setup
    public void spread() {
        for (int i = 0; i < angles.length; i++) {
            angles[i] = Math.toRadians(-15 + (i * 389) % 1024 * 40.0 / 1024);
        }
        sections = new MeasuredSections();
        place = new SectionPlace(airfoil("clark-y"), airfoil("sd7037"), 0.0);
        between = new SectionPlace(airfoil("clark-y"), airfoil("sd7037"), 0.4);
        curve = sections.curve(place, SurfaceState.none(), 150_000);
    }

    /** What the solver asks of a strip in every step. */
    @Benchmark
    @OutputTimeUnit(TimeUnit.NANOSECONDS)
    public double valueAndSlope() {
        double alpha = angles[next++ & 1023];
        return curve.risingLift(alpha) + curve.risingLiftSlope(alpha);
    }

    /** Lift, drag and moment once a solution is there. */
    @Benchmark
    @OutputTimeUnit(TimeUnit.NANOSECONDS)
    public double liftDragMoment() {
        double alpha = angles[next++ & 1023];
        return curve.lift(alpha) + curve.drag(alpha) + curve.moment(alpha);
    }

    /** One curve with its surface down, at a Reynolds number of its own. */
    @Benchmark
    @OutputTimeUnit(TimeUnit.MICROSECONDS)
    public SectionCurve oneCurve() {
        SurfaceState surface = new SurfaceState(0.3, 0.25, Hinge.TAPED);
        return sections.curve(place, surface, 150_000 + (next++ & 1023));
    }

    /** One curve between two airfoils. */
    @Benchmark
    @OutputTimeUnit(TimeUnit.MICROSECONDS)
    public SectionCurve oneCurveBetweenAirfoils() {
        SurfaceState surface = new SurfaceState(0.3, 0.25, Hinge.TAPED);
        return sections.curve(between, surface, 150_000 + (next++ & 1023));
    }

    /** Six set-ups, 60 strips of wing and tail each, every strip at its own Reynolds number. */
    @Benchmark
    @OutputTimeUnit(TimeUnit.MILLISECONDS)
    public double comparison() {
        double sum = 0;
        for (double degrees : SET_UPS) {
            SurfaceState surface = new SurfaceState(Math.toRadians(degrees), 0.25, Hinge.TAPED);
            for (int i = 0; i < STRIPS; i++) {
                sum += sections.curve(place, surface, 90_000 + 2_000 * i).maxLift();
            }
        }
        return sum;
    }
}
