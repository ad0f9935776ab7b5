package throwline.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.section.MeasuredSections;
import throwline.study.Comparison.PackResult;
import throwline.words.Message;

/** A model that does not hold its nose by itself is not shown as if it did. */
class PitchBalanceTest {

    private static List<SetUpResult> flownWithBalance(double balance) {
        Model m = Examples.read("orchard");
        Model one = new Model(
                m.name(),
                List.of(new Pack("any", 3.05, balance)),
                m.wing(),
                m.tail(),
                m.body(),
                m.wheels(),
                m.propeller(),
                m.field(),
                m.setUps(),
                m.sticks());
        PackResult pack = Examples.compare(one, new MeasuredSections()).packs().get(0);
        return pack.setUps();
    }

    /**
     * Neutral point by hand (COMPUTED, textbook formula): wing and tail of aspect ratios 6.9 and 3.4 with lift slopes
     * 2 pi A / (A + 2), downwash slope 2 a / (pi A) = 0.45, tail volume 0.535: half of the mean chord of 269 mm, which
     * begins 7 mm behind the leading edge at the middle, so 138 mm. A tenth of the chord to either side the sign is sure,
     * body and wake included.
     */
    @ParameterizedTest
    @CsvSource({"165, true", "111, false"})
    void behindTheNeutralPointEverySetUpIsWarnedOf(double balance, boolean unstable) {
        for (SetUpResult result : flownWithBalance(balance / 1000)) {
            assertThat(result.isNoted("note.unstable"))
                    .as(result.setUp().name())
                    .isEqualTo(unstable);
            assertThat(result.isNoted("note.hardly-stable")).isFalse();
        }
    }

    /** So far back that no steady flight with flaps is left: the reason is the balance, not the sums. */
    @Test
    void whatDoesNotSettleBecauseOfTheBalanceSaysSo() {
        List<String> reasons = flownWithBalance(0.19).stream()
                .map(SetUpResult::descentAngle)
                .filter(Headline.Unknown.class::isInstance)
                .map(angle -> ((Headline.Unknown) angle).why())
                .toList();
        assertThat(reasons).isNotEmpty().containsOnly("why.unstable");
    }

    /** Methods manual 17.3 (PRACTICE): aerobatic models and sailplanes, which have least, are built with 3 to 8 per cent. */
    @Test
    void lessThanAnyModelIsBuiltWithIsWorthAWord() {
        assertThat(codes(0.031)).isEmpty();
        assertThat(codes(0.029)).containsExactly("note.hardly-stable");
        assertThat(codes(-0.001)).containsExactly("note.unstable");
        assertThat(new PitchBalance(Optional.empty()).notes()).isEmpty();
    }

    private static List<String> codes(double margin) {
        return new PitchBalance(Optional.of(margin))
                .notes().stream().map(Message::code).toList();
    }
}
