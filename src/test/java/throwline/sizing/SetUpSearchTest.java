package throwline.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleBinaryOperator;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import throwline.model.Hinge;
import throwline.model.SetUp;
import throwline.model.Surface;
import throwline.sizing.CandidateFlight.StallSpeeds;
import throwline.sizing.FoundSetUp.Moved;
import throwline.sizing.FoundSetUp.OneDegree;
import throwline.sizing.SetUpWants.WantedDescent;
import throwline.sizing.SetUpWants.WantedRoll;

/**
 * The search for a set-up among candidates in closed form: descent angle and stall speed are planes over flaps and ailerons, so
 * that what must be found is the solution of one or two linear equations.
 */
class SetUpSearchTest {

    private static final double DEGREE = Math.PI / 180;

    /** Up to the flaps' end; ailerons have 14 degrees up and 9 down left. */
    private static final SurfaceGroups GROUPS = groups(0, 60, 28, 18);

    private static double angle(double f, double a) {
        return 0.08 + 0.1 * f - 0.15 * a;
    }

    private static double stallSpeed(double f, double a) {
        return 11 - 2 * f - 1.5 * a;
    }

    private static SurfaceGroups groups(double flapUp, double flapDown, double aileronUp, double aileronDown) {
        return new SurfaceGroups(
                List.of(surface("flaps", flapUp, flapDown)), List.of(surface("ailerons", aileronUp, aileronDown)));
    }

    private static Surface surface(String name, double up, double down) {
        return new Surface(name, 0.1, 0.5, 0.25, up * DEGREE, down * DEGREE, Hinge.TAPED);
    }

    /** A model in closed form: it flies where a value is above zero, and stalls where that is below -0.2. */
    private record Model(
            SurfaceGroups groups,
            DoubleBinaryOperator angle,
            DoubleBinaryOperator stall,
            DoubleBinaryOperator flies,
            boolean elevatorLimited) {

        static final Model PLANES =
                new Model(GROUPS, SetUpSearchTest::angle, SetUpSearchTest::stallSpeed, (f, a) -> 1, false);

        Model flyingWhere(DoubleBinaryOperator where) {
            return new Model(groups, angle, stall, where, elevatorLimited);
        }

        Model withStall(DoubleBinaryOperator other) {
            return new Model(groups, angle, other, flies, elevatorLimited);
        }

        Model withAngle(DoubleBinaryOperator other) {
            return new Model(groups, other, stall, flies, elevatorLimited);
        }

        CandidateFlight fly(CandidateEvaluator.Place p) {
            double speed = stall.applyAsDouble(p.flap(), p.aileron());
            return new CandidateFlight(
                    p.flap(),
                    p.aileron(),
                    groups.setUp("wanted", p.flap(), p.aileron()),
                    Double.isNaN(speed)
                            ? Optional.empty()
                            : Optional.of(new StallSpeeds(speed, speed, speed, elevatorLimited)),
                    angle.applyAsDouble(p.flap(), p.aileron()),
                    Optional.empty(),
                    fault(flies.applyAsDouble(p.flap(), p.aileron())));
        }

        private static Optional<Limit> fault(double flies) {
            if (flies > 0) {
                return Optional.empty();
            }
            return Optional.of(flies < -0.2 ? Limit.WING_STALL : Limit.TAIL_MARGIN);
        }

        FoundSetUp find(SetUpWants wants, Function<SetUp, Optional<Double>> roll) {
            return new SetUpSearch(groups, wants, new CandidateEvaluator(this::fly), roll).find();
        }

        FoundSetUp find(SetUpWants wants) {
            return find(wants, setUp -> Optional.empty());
        }
    }

    private static SetUpWants descent(double angle) {
        return new SetUpWants(Optional.empty(), Optional.of(new WantedDescent(angle, 12)), Optional.empty());
    }

    private static SetUpWants stall(double speed) {
        return new SetUpWants(Optional.of(speed), Optional.empty(), Optional.empty());
    }

    private static SetUpWants both(double angle, double speed) {
        return new SetUpWants(Optional.of(speed), Optional.of(new WantedDescent(angle, 12)), Optional.empty());
    }

    private static void standsAt(FoundSetUp found, double flap, double aileron, double near) {
        assertThat(found.trial().flap()).isCloseTo(flap, within(near));
        assertThat(found.trial().aileron()).isCloseTo(aileron, within(near));
    }

    /** On the line of one descent the stall speed falls with every degree that the ailerons come down: flaps alone. */
    @Test
    void descentWithTheLowestStallSpeed() {
        FoundSetUp found = Model.PLANES.find(descent(0.15));
        assertThat(found.met()).isTrue();
        assertThat(found.why()).isEmpty();
        standsAt(found, 0.7, 0, 0.1 * DEGREE);
        assertThat(found.trial().angle()).isCloseTo(0.15, within(0.05 * DEGREE));
    }

    /** On the line of one descent, flaps 1.5 times the ailerons, the stall speed is a parabola with its bottom at 1.5 degrees up. */
    @Test
    void lowestStallSpeedInside() {
        FoundSetUp found = Model.PLANES
                .withStall((f, a) -> 11 - 2 * f + 3 * a + 40 * Math.pow(a + 1.5 * DEGREE, 2))
                .find(descent(0.15));
        assertThat(found.met()).isTrue();
        standsAt(found, 0.7 - 1.5 * 1.5 * DEGREE, -1.5 * DEGREE, 0.1 * DEGREE);
        assertThat(found.lineOf()).isEqualTo(Moved.FLAPS);
    }

    /** Steeper than flaps alone: they stand at their end, and the ailerons go up for the rest. */
    @Test
    void aileronsUpForTheRest() {
        FoundSetUp found = Model.PLANES.find(descent(0.2));
        assertThat(found.met()).isTrue();
        standsAt(found, 60 * DEGREE, -(0.2 - 0.08 - 0.1 * 60 * DEGREE) / 0.15, 0.1 * DEGREE);
        assertThat(found.lineOf()).isEqualTo(Moved.AILERONS);
        assertThat(found.line()).extracting(CandidateFlight::flap).containsOnly(60 * DEGREE);
        assertThat(found.line()).isSortedAccordingTo(Comparator.comparingDouble(CandidateFlight::aileron));
    }

    /** A stall speed alone moves least, flaps before ailerons; ailerons droop only where flaps have come to their end. */
    @Test
    void stallSpeedThatMovesLeast() {
        FoundSetUp found = Model.PLANES.find(stall(10));
        assertThat(found.met()).isTrue();
        standsAt(found, 0.5, 0, 0.5 * DEGREE);
        assertThat(found.trial().stallSpeed()).isCloseTo(10, within(0.02));
        FoundSetUp drooped = Model.PLANES.find(stall(8.75));
        assertThat(drooped.met()).isTrue();
        standsAt(drooped, 60 * DEGREE, (11 - 2 * 60 * DEGREE - 8.75) / 1.5, 0.8 * DEGREE);
    }

    /** Two wants, two planes, one point. */
    @Test
    void descentAndStallSpeed() {
        double flap = 40 * DEGREE;
        double aileron = -6 * DEGREE;
        FoundSetUp found = Model.PLANES.find(both(angle(flap, aileron), stallSpeed(flap, aileron)));
        assertThat(found.met()).isTrue();
        standsAt(found, flap, aileron, 0.3 * DEGREE);
    }

    /** Where the wanted stall speed cannot be had on the line of the descent, the nearest to it is told with its reason. */
    @Test
    void stallSpeedThatDoesNotGoWithTheDescent() {
        FoundSetUp found = Model.PLANES.find(both(0.15, 7));
        assertThat(found.met()).isFalse();
        assertThat(found.why()).containsExactly(Limit.STALL_GOES_WITH_ANGLE);
        assertThat(found.trial().angle()).isCloseTo(0.15, within(0.05 * DEGREE));
        // The line of the descent ends where the ailerons have drooped as far as they may.
        assertThat(found.trial().stallSpeed()).isCloseTo(stallSpeed(0.7 + 1.5 * 9 * DEGREE, 9 * DEGREE), within(0.05));
    }

    /** Steeper than all that flies: the corner, and both of its ends named. */
    @Test
    void steeperThanItGoes() {
        FoundSetUp found = Model.PLANES.find(descent(0.5));
        assertThat(found.met()).isFalse();
        standsAt(found, 60 * DEGREE, -14 * DEGREE, 1e-9);
        assertThat(found.why()).containsExactlyInAnyOrder(Limit.FLAPS_DOWN, Limit.ROLL_RESERVE_UP);
        assertThat(found.stoppedBy()).containsExactlyInAnyOrder(Limit.FLAPS_DOWN, Limit.ROLL_RESERVE_UP);
        assertThat(found.most().angle()).isCloseTo(angle(60 * DEGREE, -14 * DEGREE), within(1e-12));
        assertThat(found.least().angle()).isCloseTo(angle(0, 0), within(1e-12));
    }

    /** Flatter than all that flies: nothing moved; with up travel the flaps go up as far as they can. */
    @Test
    void flatterThanItGoes() {
        FoundSetUp found = Model.PLANES.find(descent(0.02));
        standsAt(found, 0, 0, 1e-9);
        assertThat(found.met()).isFalse();
        assertThat(found.why()).containsExactly(Limit.BEST_REACHED);
        Model reflex = new Model(
                groups(10, 60, 28, 18), SetUpSearchTest::angle, SetUpSearchTest::stallSpeed, (f, a) -> 1, false);
        FoundSetUp up = reflex.find(descent(0.02));
        standsAt(up, -10 * DEGREE, 0, 1e-9);
        assertThat(up.why()).containsExactly(Limit.FLAPS_UP);
    }

    /** Slower than all that flies: flaps down, ailerons drooped to their reserve, and the elevator where that is what ends it. */
    @Test
    void slowerThanItGoes() {
        FoundSetUp found = Model.PLANES.find(stall(7));
        standsAt(found, 60 * DEGREE, 9 * DEGREE, 1e-9);
        assertThat(found.why()).containsExactlyInAnyOrder(Limit.FLAPS_DOWN, Limit.ROLL_RESERVE_DOWN);
        FoundSetUp short_ = new Model(GROUPS, SetUpSearchTest::angle, SetUpSearchTest::stallSpeed, (f, a) -> 1, true)
                .find(stall(7));
        assertThat(short_.why())
                .containsExactlyInAnyOrder(Limit.FLAPS_DOWN, Limit.ROLL_RESERVE_DOWN, Limit.ELEVATOR_TRAVEL);
        assertThat(found.most().stallSpeed()).isCloseTo(stallSpeed(60 * DEGREE, 9 * DEGREE), within(1e-12));
        assertThat(found.least().stallSpeed()).isCloseTo(stallSpeed(0, -14 * DEGREE), within(1e-12));
    }

    /** Where flaps and drooped ailerons make it stall faster, the slowest stands with neither. */
    @Test
    void slowestWithoutFlaps() {
        FoundSetUp found =
                Model.PLANES.withStall((f, a) -> 11 + 2 * f + 1.5 * a).find(stall(7));
        assertThat(found.most().stallSpeed()).isCloseTo(11 - 1.5 * 14 * DEGREE, within(1e-9));
        assertThat(found.least().stallSpeed()).isCloseTo(11 + 2 * 60 * DEGREE + 1.5 * 9 * DEGREE, within(1e-9));
        standsAt(found, 0, -14 * DEGREE, 1e-9);
        assertThat(found.why()).containsExactly(Limit.ROLL_RESERVE_UP);
    }

    /** A degree more of which no descent is known is not told. */
    @Test
    void oneDegreeIntoTheUnknown() {
        FoundSetUp found = Model.PLANES
                .withAngle((f, a) -> f > 0.705 && f < 0.73 ? Double.NaN : angle(f, a))
                .find(descent(0.15));
        standsAt(found, 0.7, 0, 0.1 * DEGREE);
        assertThat(found.oneDegree()).extracting(OneDegree::surface).containsExactly(Moved.AILERONS);
    }

    /** What flies ends at 35 degrees of flap: the answer stands before it, within a sixty-fourth of the lattice's edge. */
    @Test
    void endsWhereFlyingEnds() {
        FoundSetUp found = Model.PLANES
                .flyingWhere((f, a) -> 35 * DEGREE - f)
                .withAngle((f, a) -> 0.08 + 0.1 * f + 0.15 * a)
                .find(descent(0.2));
        assertThat(found.met()).isFalse();
        assertThat(found.trial().flap()).isBetween(35 * DEGREE - 12 * DEGREE / 64, 35 * DEGREE);
        assertThat(found.trial().aileron()).isZero();
        assertThat(found.trial().fault()).isEmpty();
        // What keeps set-ups far away from flying has no say.
        assertThat(found.why()).containsExactly(Limit.TAIL_MARGIN);
        assertThat(found.most().fault()).isEmpty();
        assertThat(found.most().flap()).isLessThanOrEqualTo(35 * DEGREE);
    }

    /** Every node of the lattice is too flat, but at 30 degrees of flap, between two of them, the descent has its summit. */
    @Test
    void betweenTheNodes() {
        FoundSetUp found = Model.PLANES
                .withAngle((f, a) -> 0.08 + 0.1 * Math.exp(-Math.pow((f - 30 * DEGREE) / 0.15, 2)))
                .find(descent(0.15));
        assertThat(found.met()).isTrue();
        assertThat(Math.abs(found.trial().flap() - 30 * DEGREE))
                .isCloseTo(0.15 * Math.sqrt(-Math.log(0.7)), within(0.2 * DEGREE));
    }

    /** Where no descent is known at any flap, the slowest that flies is the nearest. */
    @Test
    void nothingKnown() {
        FoundSetUp found = Model.PLANES.withAngle((f, a) -> Double.NaN).find(descent(0.15));
        assertThat(found.met()).isFalse();
        standsAt(found, 60 * DEGREE, 0, 1e-9);
        FoundSetUp nothing = Model.PLANES
                .withAngle((f, a) -> Double.NaN)
                .withStall((f, a) -> Double.NaN)
                .find(descent(0.15));
        assertThat(nothing.met()).isFalse();
        assertThat(nothing.line()).isEmpty();
    }

    /** One degree more of each surface, and one less where it stands at its end: the planes' slopes. */
    @Test
    void oneDegreeMore() {
        List<OneDegree> inside = Model.PLANES.find(descent(0.15)).oneDegree();
        assertThat(inside).hasSize(2);
        assertThat(inside.get(0).surface()).isEqualTo(Moved.FLAPS);
        assertThat(inside.get(0).step()).isCloseTo(DEGREE, within(1e-12));
        assertThat(inside.get(0).stallSpeed()).isCloseTo(-2 * DEGREE, within(1e-9));
        assertThat(inside.get(0).angle().orElseThrow()).isCloseTo(0.1 * DEGREE, within(1e-9));
        assertThat(inside.get(1).surface()).isEqualTo(Moved.AILERONS);
        assertThat(inside.get(1).step()).isCloseTo(-DEGREE, within(1e-12));
        assertThat(inside.get(1).stallSpeed()).isCloseTo(1.5 * DEGREE, within(1e-9));
        assertThat(inside.get(1).angle().orElseThrow()).isCloseTo(0.15 * DEGREE, within(1e-9));
        List<OneDegree> corner = Model.PLANES.find(descent(0.5)).oneDegree();
        assertThat(corner).extracting(OneDegree::step).containsExactly(-DEGREE, DEGREE);
        assertThat(corner.get(0).stallSpeed()).isCloseTo(2 * DEGREE, within(1e-9));
        assertThat(Model.PLANES.find(stall(10)).oneDegree())
                .allMatch(d -> d.angle().isEmpty());
        assertThat(new Model(
                                groups(0, 0, 28, 18),
                                SetUpSearchTest::angle,
                                SetUpSearchTest::stallSpeed,
                                (f, a) -> 1,
                                false)
                        .find(descent(0.09))
                        .oneDegree())
                .extracting(OneDegree::surface)
                .containsExactly(Moved.AILERONS);
    }

    /** The line shows the flaps' whole travel with the answer among it, in order. */
    @Test
    void theLineOfTheFlaps() {
        FoundSetUp found = Model.PLANES.find(descent(0.15));
        assertThat(found.lineOf()).isEqualTo(Moved.FLAPS);
        assertThat(found.line()).isSortedAccordingTo(Comparator.comparingDouble(CandidateFlight::flap));
        assertThat(found.line()).hasSize(7).contains(found.trial());
        assertThat(found.line().get(0).flap()).isZero();
        assertThat(found.line().get(6).flap()).isCloseTo(60 * DEGREE, within(1e-12));
        FoundSetUp noFlaps = new Model(
                        groups(0, 0, 28, 18), SetUpSearchTest::angle, SetUpSearchTest::stallSpeed, (f, a) -> 1, false)
                .find(descent(0.09));
        standsAt(noFlaps, 0, -0.01 / 0.15, 0.1 * DEGREE);
        assertThat(noFlaps.lineOf()).isEqualTo(Moved.AILERONS);
    }

    /** A wanted roll: asked of the answer's own set-up, met or named. */
    @Test
    void rollThatMustBeLeft() {
        SetUpWants wants = new SetUpWants(
                Optional.empty(), Optional.of(new WantedDescent(0.15, 12)), Optional.of(new WantedRoll(2, 12)));
        Function<SetUp, Optional<Double>> rate = setUp -> Optional.of(2.5 - setUp.deflection("flaps"));
        FoundSetUp slow = Model.PLANES.find(wants, rate);
        assertThat(slow.met()).isFalse();
        assertThat(slow.why()).containsExactly(Limit.AILERON_TRAVEL);
        assertThat(slow.rollAtStops().orElseThrow())
                .isCloseTo(2.5 - slow.trial().flap(), within(1e-12));
        FoundSetUp quick = Model.PLANES.find(wants, setUp -> Optional.of(2.0));
        assertThat(quick.met()).isTrue();
        standsAt(quick, 0.7, 0, 0.1 * DEGREE);
        assertThat(Model.PLANES.find(wants).why()).containsExactly(Limit.AILERON_TRAVEL);
    }
}
