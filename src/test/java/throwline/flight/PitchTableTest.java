package throwline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.Map;
import org.junit.jupiter.api.Test;
import throwline.model.SetUp;

/** The table for surfaces on the move against the model solved there: at its nodes, between them, and by plain differences. */
class PitchTableTest {

    private static final double DEGREE = Math.PI / 180;
    private static final double SPEED = 14;
    private static final double ELEVATOR = -2 * DEGREE;
    private static final double LOWEST = -2 * DEGREE;

    private static final PoweredModel ORCHARD = new PoweredModel();
    private static final PitchTable TABLE =
            new PitchTable(PitchTableTest::trimmer, ORCHARD.pack, SPEED, ELEVATOR, LOWEST, 4 * DEGREE);

    /** From clean to 30 degrees of flap. */
    private static Trimmer trimmer(double share) {
        SetUp setUp = new SetUp("between", Map.of("flaps", 30 * DEGREE * share), 0);
        return new Trimmer(ORCHARD.airframe, Deflections.of(ORCHARD.model.wing(), setUp));
    }

    private static Attitude solved(double share, double alpha, double elevator, double pitch) {
        return trimmer(share).heldAt(ORCHARD.pack, SPEED, alpha, elevator, pitch);
    }

    @Test
    void nodesAndBetweenThem() {
        for (double share : new double[] {0, 1.0 / 3, 1}) {
            for (int k = 0; k < 4; k++) {
                double alpha = LOWEST + 2 * k * DEGREE;
                Attitude here = solved(share, alpha, ELEVATOR, 0);
                assertThat(TABLE.lift(share, alpha, ELEVATOR, 0)).isCloseTo(here.lift(), within(1e-4));
                assertThat(TABLE.drag(share, alpha)).isCloseTo(here.drag(), within(1e-4));
                assertThat(TABLE.moment(share, alpha, ELEVATOR, 0, 0))
                        .isCloseTo(here.moments().total(), within(1e-4));
            }
        }
        double alpha = LOWEST + 2.6 * DEGREE;
        double low = TABLE.lift(1.0 / 3, LOWEST + 2 * DEGREE, ELEVATOR, 0);
        double high = TABLE.lift(1.0 / 3, LOWEST + 4 * DEGREE, ELEVATOR, 0);
        assertThat(TABLE.lift(1.0 / 3, alpha, ELEVATOR, 0)).isCloseTo(low + 0.3 * (high - low), within(1e-9));
        double third = TABLE.drag(1.0 / 3, alpha);
        double two = TABLE.drag(2.0 / 3, alpha);
        assertThat(TABLE.drag(0.4, alpha)).isCloseTo(third + 0.2 * (two - third), within(1e-9));
        assertThat(TABLE.drag(-1, alpha)).isEqualTo(TABLE.drag(0, alpha));
        assertThat(TABLE.drag(2, alpha)).isEqualTo(TABLE.drag(1, alpha));
    }

    /** One degree of elevator either way, solved; and a path of 50 m radius. */
    @Test
    void slopes() {
        double alpha = LOWEST + 4 * DEGREE;
        for (double share : new double[] {0, 1}) {
            double lift = solved(share, alpha, ELEVATOR + DEGREE, 0).lift()
                    - solved(share, alpha, ELEVATOR - DEGREE, 0).lift();
            assertThat(TABLE.lift(share, alpha, ELEVATOR + DEGREE, 0) - TABLE.lift(share, alpha, ELEVATOR - DEGREE, 0))
                    .isCloseTo(lift, withPercentage(6));
            double moment = solved(share, alpha, ELEVATOR + DEGREE, 0).moments().total()
                    - solved(share, alpha, ELEVATOR - DEGREE, 0).moments().total();
            assertThat(TABLE.moment(share, alpha, ELEVATOR + DEGREE, 0, 0)
                            - TABLE.moment(share, alpha, ELEVATOR - DEGREE, 0, 0))
                    .isCloseTo(moment, withPercentage(6));
            Attitude straight = solved(share, alpha, ELEVATOR, 0);
            Attitude bent = solved(share, alpha, ELEVATOR, 0.02);
            assertThat(TABLE.lift(share, alpha, ELEVATOR, 0.02) - TABLE.lift(share, alpha, ELEVATOR, 0))
                    .isCloseTo(bent.lift() - straight.lift(), withPercentage(3));
            assertThat(TABLE.moment(share, alpha, ELEVATOR, 0.02, 0) - TABLE.moment(share, alpha, ELEVATOR, 0, 0))
                    .isCloseTo(bent.moments().total() - straight.moments().total(), withPercentage(3));
        }
    }

    /**
     * The wing's wake takes its time to the tail: while the angle of attack grows, the tail still has the downwash of before, as if
     * it stood at more by the slope of the downwash times the way over the speed (lag of downwash, textbooks).
     */
    @Test
    void lagOfTheDownwash() {
        double alpha = LOWEST + 2 * DEGREE;
        Attitude here = solved(0, alpha, ELEVATOR, 0);
        Attitude above = solved(0, alpha + 2 * DEGREE, ELEVATOR, 0);
        double slope = (above.downwash() - here.downwash()) / (2 * DEGREE);
        double way = ORCHARD.model.tail().arm()
                + (ORCHARD.model.tail().chord() - ORCHARD.model.wing().chordAt(0)) / 4;
        double power = trimmer(0).tailPower(ORCHARD.pack, here).byAngle();
        assertThat(slope).isBetween(0.2, 0.6);
        assertThat(power).isNegative();
        assertThat(TABLE.moment(0, alpha, ELEVATOR, 0, 0.01) - TABLE.moment(0, alpha, ELEVATOR, 0, 0))
                .isCloseTo(0.01 * power * slope * way, withPercentage(1));
    }
}
