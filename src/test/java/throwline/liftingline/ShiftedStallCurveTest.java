package throwline.liftingline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import throwline.section.ForwardingCurve;
import throwline.section.SectionCurve;

/** A curve moved along its own slope, in closed form: a rise of 2 pi times an angle moves all of the stall by that angle. */
class ShiftedStallCurveTest {

    private static final double TURN = 0.03;
    private static final double STALL = 0.24;
    private static final double RECOVERS = 0.2;

    private final SectionCurve alone = new ForwardingCurve(LawCurve.linear(0)) {
        @Override
        public double stallAngle() {
            return STALL;
        }

        @Override
        public OptionalDouble recoveryAngle() {
            return OptionalDouble.of(RECOVERS);
        }
    };

    private final SectionCurve shifted = new ShiftedStallCurve(alone, 2 * Math.PI * TURN);

    @Test
    void attached_lift_stays() {
        for (double alpha = -0.1; alpha < 0.2; alpha += 0.05) {
            assertThat(shifted.lift(alpha)).isCloseTo(2 * Math.PI * alpha, within(1e-12));
            assertThat(shifted.risingLift(alpha)).isCloseTo(2 * Math.PI * alpha, within(1e-12));
        }
        assertThat(shifted.risingLiftSlope(0.1)).isCloseTo(2 * Math.PI, within(1e-12));
        assertThat(shifted.zeroLiftAngle()).isZero();
    }

    /** As far below the stall as before: a stall that comes later is left later. */
    @Test
    void stall_and_recovery_move_together() {
        assertThat(shifted.stallAngle()).isCloseTo(STALL + TURN, within(1e-12));
        assertThat(shifted.recoveryAngle().orElseThrow()).isCloseTo(RECOVERS + TURN, within(1e-12));
        assertThat(new ShiftedStallCurve(LawCurve.linear(0), 0.1).recoveryAngle())
                .isEmpty();
    }
}
