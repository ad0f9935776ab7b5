package throwline.section;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A stretch that rests on two things is trusted no more than either. */
class BasisTest {

    @ParameterizedTest
    @CsvSource({
        "MEASURED, BETWEEN, BETWEEN",
        "COMPUTED, MEASURED, COMPUTED",
        "COMPUTED, METHOD, LIKENESS",
        "PLATE, COMPUTED, LIKENESS",
        "COMPUTED, LIKENESS, LIKENESS",
        "COMPUTED, COMPUTED, COMPUTED"
    })
    void theWeakerOfTwo(Basis one, Basis other, Basis weaker) {
        assertThat(one.weaker(other)).isEqualTo(weaker);
        assertThat(other.weaker(one)).isEqualTo(weaker);
    }

    @Test
    void neverBetterThanEither() {
        for (Basis one : Basis.values()) {
            for (Basis other : Basis.values()) {
                assertThat(one.weaker(other)).isGreaterThanOrEqualTo(one).isGreaterThanOrEqualTo(other);
            }
        }
    }
}
