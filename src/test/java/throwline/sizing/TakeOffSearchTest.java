package throwline.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import throwline.flight.TakeOff;
import throwline.flight.TakeOff.Outcome;
import throwline.model.Hinge;
import throwline.model.Surface;
import throwline.sizing.FoundTakeOff.Trial;

/** The search for a take-off run among runs in closed form: a parabola over the flaps, with its bottom at 21.5 degrees. */
class TakeOffSearchTest {

    private static final double DEGREE = Math.PI / 180;
    private static final double NEAR = 0.15 * DEGREE;

    private static final Orchard ORCHARD = Orchard.asItIs();
    private static final SurfaceGroups GROUPS = groups(60, 18);

    private static double parabola(double f) {
        return 20 - 30 * f + 40 * f * f;
    }

    private static SurfaceGroups groups(double flaps, double ailerons) {
        return new SurfaceGroups(
                List.of(new Surface("flaps", 0.1, 0.5, 0.25, 0, flaps * DEGREE, Hinge.TAPED)),
                List.of(new Surface("ailerons", 0.5, 0.9, 0.25, 28 * DEGREE, ailerons * DEGREE, Hinge.TAPED)));
    }

    private static PoweredCandidates candidates(SurfaceGroups groups) {
        return new PoweredCandidates(ORCHARD.airframe(), ORCHARD.pack(), groups, "found");
    }

    /** A run of nothing or less stands for a model that does not leave the ground. */
    private static TakeOffSearch search(SurfaceGroups groups, DoubleUnaryOperator run) {
        return new TakeOffSearch(candidates(groups), setUp -> {
            double rolled = run.applyAsDouble(setUp.deflection("flaps") + setUp.deflection("ailerons"));
            Outcome outcome = rolled > 0 ? Outcome.FLIES : Outcome.TOO_LITTLE_THRUST;
            return Optional.of(new TakeOff(outcome, 10, Math.max(0, rolled), 5, 0, 0.2));
        });
    }

    private static FoundTakeOff found(SurfaceGroups groups, DoubleUnaryOperator run, double wanted) {
        TakeOffSearch search = search(groups, run);
        return search.within(search.line(), wanted).orElseThrow();
    }

    private static void met(FoundTakeOff found, double flap, double near, double wanted) {
        assertThat(found.met()).isTrue();
        assertThat(found.why()).isEmpty();
        assertThat(found.found().flap()).isCloseTo(flap, within(near));
        assertThat(found.found().run()).isLessThanOrEqualTo(wanted);
        assertThat(found.found().setUp().name()).isEqualTo("found");
        assertThat(found.found().setUp().deflection("flaps"))
                .isCloseTo(found.found().flap(), within(1e-12));
    }

    /** The smaller root of the parabola, between the first two nodes and, where no node is short enough, between three. */
    @Test
    void leastFlapThatIsShortEnough() {
        met(found(GROUPS, TakeOffSearchTest::parabola, 17), (30 - Math.sqrt(900 - 480)) / 80, NEAR, 17);
        met(found(GROUPS, TakeOffSearchTest::parabola, 14.4), (30 - Math.sqrt(900 - 896)) / 80, NEAR, 14.4);
        met(found(GROUPS, TakeOffSearchTest::parabola, 30), 0, 0, 30);
    }

    /** Flown from 0.3 rad of flap on only: that is the least. */
    @Test
    void leastFlapThatFlies() {
        met(found(GROUPS, f -> f < 0.3 ? 0 : parabola(f), 15), 0.3, NEAR, 15);
    }

    /** Shorter than the bottom: the bottom. */
    @Test
    void shorterThanItGets() {
        FoundTakeOff found = found(GROUPS, TakeOffSearchTest::parabola, 14);
        assertThat(found.met()).isFalse();
        assertThat(found.why()).containsExactly(Limit.BEST_REACHED);
        assertThat(found.found().flap()).isCloseTo(0.375, within(0.5 * DEGREE));
        assertThat(found.found().run()).isCloseTo(14.375, within(4e-3));
        assertThat(found.line()).hasSize(6);
        assertThat(found.clean().flap()).isZero();
        assertThat(found.clean().run()).isCloseTo(20, within(1e-12));
    }

    /** Falling all the way: the end of what goes down, and its name. */
    @Test
    void endsOfTheTravel() {
        DoubleUnaryOperator falling = f -> 20 - 5 * f;
        FoundTakeOff flaps = found(GROUPS, falling, 10);
        assertThat(flaps.why()).containsExactly(Limit.FLAPS_DOWN);
        assertThat(flaps.found().flap()).isCloseTo(60 * DEGREE, within(0.5 * DEGREE));
        FoundTakeOff ailerons = found(groups(0, 18), falling, 10);
        assertThat(ailerons.why()).containsExactly(Limit.ROLL_RESERVE_DOWN);
        assertThat(ailerons.found().flap()).isCloseTo(9 * DEGREE, within(0.5 * DEGREE));
        assertThat(ailerons.found().setUp().deflection("ailerons")).isCloseTo(9 * DEGREE, within(0.5 * DEGREE));
        FoundTakeOff nothing = found(groups(0, 0), falling, 10);
        assertThat(nothing.why()).containsExactly(Limit.NO_FLAPS);
        assertThat(nothing.line()).hasSize(1);
    }

    /** Rising from the start: no flap is the best, and it is not the end of their travel that keeps it. */
    @Test
    void risingAllTheWay() {
        FoundTakeOff found = found(GROUPS, f -> 20 + 5 * f, 10);
        assertThat(found.why()).containsExactly(Limit.BEST_REACHED);
        assertThat(found.found().flap()).isZero();
    }

    @Test
    void neverLeavesTheGround() {
        FoundTakeOff found = found(GROUPS, f -> 0, 10);
        assertThat(found.met()).isFalse();
        assertThat(found.why()).containsExactly(Limit.FULL_THROTTLE);
        assertThat(found.found().flies()).isFalse();
        assertThat(found.found().run()).isInfinite();
        TakeOffSearch search = new TakeOffSearch(candidates(GROUPS), setUp -> Optional.empty());
        assertThat(search.line()).isEmpty();
        assertThat(search.within(List.<Trial>of(), 10)).isEmpty();
    }

    /** Angles spread evenly from nothing to the end. */
    @Test
    void angles() {
        PoweredCandidates candidates = candidates(GROUPS);
        assertThat(candidates.angles()).hasSize(6);
        for (int i = 0; i < 6; i++) {
            assertThat(candidates.angles().get(i)).isCloseTo(12 * i * DEGREE, within(1e-12));
        }
        assertThat(candidates.most()).isCloseTo(60 * DEGREE, within(1e-12));
        assertThat(candidates(groups(0, 0)).angles()).containsExactly(0.0);
    }

    @Test
    void leastAndFirst() {
        assertThat(PoweredCandidates.least(new double[] {3, 1, 2, 1})).isEqualTo(1);
        assertThat(PoweredCandidates.first(new double[] {3, 2, 1}, 2)).contains(1);
        assertThat(PoweredCandidates.first(new double[] {3, Double.NaN, 1}, 2)).contains(2);
        assertThat(PoweredCandidates.first(new double[] {3, 2}, 1)).isEmpty();
    }
}
