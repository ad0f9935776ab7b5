package throwline.section.computed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import throwline.section.AirfoilShape;
import throwline.section.NotComputed;
import throwline.section.SurrogateAirfoil;

/** Limits of the section method as methods manual 3.12 lists them: 6 to 18 per cent thick, camber up to 7, 60 000 to 500 000. */
class SectionRangeTest {

    private static SectionTraits traits() {
        return SectionTraits.of(SurrogateAirfoil.ordinary(0.12, 0.03).outline()).orElseThrow();
    }

    private static SectionTraits with(double thickness, double camber, double moment, double peakLift) {
        SectionTraits t = traits();
        return new SectionTraits(
                thickness, camber, t.edge(), t.zeroLiftAngle(), moment, peakLift, t.peakAngle(), t.drag());
    }

    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                "0.0599, 0, THIN",
                "0.06, 0, -",
                "0.18, 0, -",
                "0.1801, 0, THICK",
                "0.12, -0.0021, HANGING",
                "0.12, -0.002, -",
                "0.12, 0.07, -",
                "0.12, 0.0701, CAMBERED",
                "NaN, 0, THIN",
                "0.12, NaN, HANGING"
            })
    void thicknessAndCamber(double thickness, double camber, NotComputed reason) {
        assertThat(SectionRange.outside(thickness, camber)).isEqualTo(Optional.ofNullable(reason));
        assertThat(SectionRange.holds(with(thickness, camber, -0.07, 1))).isEqualTo(reason == null);
    }

    @Test
    void reynoldsNumbers() {
        SectionTraits traits = traits();
        assertThat(SectionRange.holds(traits, 59_999)).isFalse();
        assertThat(SectionRange.holds(traits, 60_000)).isTrue();
        assertThat(SectionRange.holds(traits, 500_000)).isTrue();
        assertThat(SectionRange.holds(traits, 500_001)).isFalse();
    }

    /** A nose so sharp that it carries less than half of the lift before its speeds peak is not judged. */
    @Test
    void sharpNoses() {
        assertThat(SectionRange.holds(with(0.12, 0.03, -0.07, 0.49))).isFalse();
        assertThat(SectionRange.holds(with(0.12, 0.03, -0.07, 0.5))).isTrue();
    }

    /** A step of 3 per cent thickness, 1 of camber and 0.03 of moment are each one; together the root of three. */
    @Test
    void distance() {
        SectionTraits a = with(0.12, 0.03, -0.07, 1);
        assertThat(a.distance(a)).isZero();
        assertThat(a.distance(with(0.15, 0.03, -0.07, 1))).isCloseTo(1, within(1e-12));
        assertThat(a.distance(with(0.12, 0.02, -0.07, 1))).isCloseTo(1, within(1e-12));
        assertThat(a.distance(with(0.12, 0.03, -0.04, 1))).isCloseTo(1, within(1e-12));
        assertThat(a.distance(with(0.09, 0.04, -0.10, 1))).isCloseTo(Math.sqrt(3), within(1e-12));
    }

    /**
     * Traits of a symmetric outline of usual shape: nothing at no angle, no moment; the wedge at its back is that of the
     * thickness law of NACA Report 460, {@code t / 0.2 (0.2969 sqrt x - 0.126 x - 0.3516 x^2 + 0.2843 x^3 - 0.1015 x^4)}.
     */
    @Test
    void symmetricOutline() {
        AirfoilShape shape = SurrogateAirfoil.ordinary(0.12, 0).outline();
        SectionTraits traits = SectionTraits.of(shape).orElseThrow();
        assertThat(traits.zeroLiftAngle()).isCloseTo(0, within(1e-4));
        assertThat(traits.moment()).isCloseTo(0, within(1e-4));
        assertThat(traits.edge()).isCloseTo(2 * (half(0.9) - half(0.98)) / 0.08, within(0.02));
        assertThat(traits.peakAngle()).isPositive();
        assertThat(traits.peakLift()).isBetween(0.5, 1.5);
    }

    private static double half(double x) {
        return 0.12
                / 0.2
                * (0.2969 * Math.sqrt(x) - 0.126 * x - 0.3516 * x * x + 0.2843 * x * x * x - 0.1015 * x * x * x * x);
    }
}
