package throwline.liftingline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.Arrays;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** How the error falls with the number of strips; the values it is measured against stand in {@link ConvergenceCase}. */
class ConvergenceTest {

    private static final int[] STRIPS = {40, 80, 160, 320};

    @ParameterizedTest
    @EnumSource(ConvergenceCase.class)
    void errorFallsAsWanted(ConvergenceCase each) {
        double[] errors = new double[STRIPS.length];
        for (int k = 0; k < STRIPS.length; k++) {
            errors[k] = each.error(STRIPS[k]);
        }
        String what = each + " " + Arrays.toString(errors);
        if (each.isFitted()) {
            assertThat(ConvergenceCase.order(STRIPS, errors)).as(what).isGreaterThan(each.order());
        }
        for (int k = 0; k < STRIPS.length; k++) {
            double envelope = each.at80() * Math.pow(80.0 / STRIPS[k], each.order());
            assertThat(Math.abs(errors[k])).as(what).isLessThan(envelope);
        }
        assertThat(errors[0]).isCloseTo(0, offset(each.at40()));
        assertThat(errors[1]).isCloseTo(0, offset(each.at80()));
    }
}
