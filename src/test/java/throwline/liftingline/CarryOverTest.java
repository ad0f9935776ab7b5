package throwline.liftingline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import throwline.input.PackedAirfoils;
import throwline.model.Wing;
import throwline.section.MeasuredSections;
import throwline.section.SectionCurve;

/** Flaps beside a body against vortices with images in it, {@link RoundBody}. */
class CarryOverTest {

    private static final double ASPECT = 8;
    private static final double CHORD = 2 / ASPECT;
    private static final double SHIFT = 0.1;
    private static final double OUTER = 0.53;
    private static final double BEHIND = 0.8;
    private static final double CORE = 0.15 * CHORD;

    /** Half of a tail's span over half of the wing's. */
    private static final double TAIL = 0.3;

    /** With the body away its solution is that of the lifting line. */
    @Test
    void withoutABodyBothAgree() {
        RoundBody alone = new RoundBody(CHORD, 0, 0.08, OUTER, SHIFT);
        TheoryWing wing = wing(0.08, 0.08, 0);
        assertThat(wing.at(0).liftCoefficient() * 2 * CHORD).isCloseTo(alone.lift(), withPercentage(0.2));
    }

    /**
     * Lift of wing and body and mean downwash at a tail, bodies of usual width, flaps from their side to one more width away. The
     * step of the shift alone, nothing carried on, is 8 % and 15 % low.
     */
    @ParameterizedTest
    @CsvSource({"0.067, 0.067", "0.067, 0.078", "0.075, 0.083", "0.067, 0.1", "0.05, 0.055", "0.05, 0.08"})
    void flapsBesideABody(double radius, double from) {
        RoundBody body = new RoundBody(CHORD, radius, from, OUTER, SHIFT);
        TheoryWing wing = wing(new CarryOver(radius, 0).innerEnd(from), from, CarryOver.SHARE);
        assertThat(wing.at(0).liftCoefficient() * 2 * CHORD).isCloseTo(body.lift(), withPercentage(2));
        WakeSheet sheet = new WakeSheet(wing.solve(0, Motion.straight()));
        double ours = 0;
        double theirs = 0;
        for (double y = 0.01; y < TAIL; y += 0.02) {
            ours += sheet.downwash(BEHIND, y, 0, 0, CORE);
            theirs += body.downwash(BEHIND, y, CORE);
        }
        assertThat(ours).isCloseTo(theirs, withPercentage(5));
    }

    private static TheoryWing wing(double carriedTo, double from, double share) {
        return new TheoryWing(TheoryPlanform.tapered(ASPECT, 1), new double[] {carriedTo, from, OUTER}, 160, place -> {
            double y = Math.abs(place);
            boolean flap = y > from && y < OUTER;
            boolean carried = y > carriedTo && y < from;
            return LawCurve.linear(flap ? SHIFT : carried ? share * SHIFT : 0);
        });
    }

    /** Images at the inverse points of a circle: a wing on the axis, one on top of the body, one far above. */
    @ParameterizedTest
    @CsvSource({"0, 0.06, 0", "0, 0.12, 0.09", "0.06, 0.06, 0.03", "0.6, 0.06, 0.0594", "0, 0.1201, 0.1201"})
    void theGapThatIsLeft(double offset, double inner, double left) {
        assertThat(new CarryOver(0.06, offset).innerEnd(inner)).isCloseTo(left, offset(1e-4));
        assertThat(CarryOver.none().innerEnd(inner)).isEqualTo(inner);
    }

    /** Lift and downwash do not hang on the number of strips, with a flap at the body's side or beside it. */
    @ParameterizedTest
    @CsvSource({"0.07, 0", "0.07, 0.05", "0.045, 0.02"})
    void anyNumberOfStrips(double halfWidth, double offset) {
        Wing wing = MeasuredWing.tapered("clark-y", 8, 0.7, 0, OUTER);
        double[] fine = liftAndDownwash(wing, new CarryOver(halfWidth, offset), 320);
        double[] usual = liftAndDownwash(wing, new CarryOver(halfWidth, offset), 80);
        assertThat(usual[0]).isCloseTo(fine[0], withPercentage(0.1));
        assertThat(usual[1]).isCloseTo(fine[1], withPercentage(0.3));
        double[] gap = liftAndDownwash(wing, CarryOver.none(), 80);
        assertThat(usual[0]).isGreaterThan(1.02 * gap[0]);
        assertThat(usual[1]).isGreaterThan(1.05 * gap[1]);
    }

    private static double[] liftAndDownwash(Wing wing, CarryOver body, int count) {
        WingStrips strips = new WingStrips(wing, body, new PackedAirfoils(), new MeasuredSections(), count);
        SpanGrid grid = strips.grid();
        LiftingLineSolver solver = new LiftingLineSolver(
                new InfluenceMatrix(grid, Ground.none(), ChordCorrection.of(grid)), SolverSettings.standard());
        List<SectionCurve> curves =
                strips.curves((surface, side) -> surface.name().equals("flaps") ? 0.5 : 0, 1e6);
        LiftingLineSolution solution =
                solver.solve(LiftingLineProblem.of(curves, 0, Motion.straight()), Optional.empty());
        WakeSheet sheet = new WakeSheet(solution);
        double downwash = 0;
        for (double y = 0.01; y < TAIL; y += 0.02) {
            downwash += sheet.downwash(BEHIND, y, 0.05, 0.05, CORE);
        }
        return new double[] {StripForces.of(solution).liftCoefficient(), downwash};
    }

    /** Strips of a wing: the flap's shift in part where it is carried on, most lift and hinge moment of a wing without it. */
    @Test
    void stripsInsideTheFlap() {
        Wing wing = MeasuredWing.tapered("clark-y", 8, 1, 0, OUTER);
        CarryOver body = new CarryOver(0.07, 0.05);
        WingStrips strips = new WingStrips(wing, body, new PackedAirfoils(), new MeasuredSections(), 80);
        List<SectionCurve> flapped =
                strips.curves((surface, side) -> surface.name().equals("flaps") ? 0.3 : 0, 1e6);
        List<SectionCurve> clean = strips.curves((surface, side) -> 0.0, 1e6);
        double flap = Double.NaN;
        double gap = body.innerEnd(0.08);
        assertThat(gap).isBetween(0.03, 0.04);
        int carried = 0;
        for (int i = strips.grid().size() - 1; i >= strips.grid().size() / 2; i--) {
            double y = strips.grid().control(i);
            double shift = flapped.get(i).zeroLiftAngle() - clean.get(i).zeroLiftAngle();
            if (y > 0.08 && y < OUTER) {
                flap = shift;
            } else if (y > gap && y < 0.08) {
                assertThat(shift).isCloseTo(2 * flap / 3, offset(1e-9));
                assertThat(flapped.get(i).hinge(0.1)).isZero();
                carried++;
            } else {
                assertThat(shift).isZero();
            }
        }
        assertThat(flap).isLessThan(-0.1);
        assertThat(carried).isPositive();
        assertThat(strips.surface(strips.grid().size() / 2)).isEqualTo(Optional.empty());
    }
}
