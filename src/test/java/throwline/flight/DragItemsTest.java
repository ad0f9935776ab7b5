package throwline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import throwline.model.Propeller;
import throwline.model.Propeller.Shut;

class DragItemsTest {

    private static Propeller thirteenInch(Shut shut) {
        return new Propeller(0.33, 0.165, 2, shut, 0);
    }

    /** Methods manual 8.3, figures of a 13-inch two-blade worked by hand (COMPUTED): stopped 0.0065, turning 0.0086 m2. */
    @Test
    void propellerWithTheThrottleShut() {
        assertThat(DragItems.propeller(thirteenInch(Shut.STOPPED))).isCloseTo(0.0065, withPercentage(3));
        assertThat(DragItems.propeller(thirteenInch(Shut.TURNING))).isCloseTo(0.0086, withPercentage(1));
        assertThat(DragItems.propeller(thirteenInch(Shut.FOLDED))).isZero();
    }
}
