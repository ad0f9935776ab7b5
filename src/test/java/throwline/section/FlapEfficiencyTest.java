package throwline.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a small surface keeps of its thin-airfoil effectiveness, against measurements of whole tails and sections. */
class FlapEfficiencyTest {

    /**
     * Elevator power of a NACA 0009 tail at Re 104 000 over that at 240 000: moments of 1.903 and 2.016 ft^3 over dynamic
     * pressure for the same full throws (Texas A&M tunnel, test 1620, runs 16 and 18, READ); the runs stand at 7.9 and 0
     * degrees, so that 3 % are allowed.
     */
    @Test
    void roundedTailLosesWhatTheTunnelModelLost() {
        double slow = FlapEfficiency.of(0.09, 0, 104_000);
        double fast = FlapEfficiency.of(0.09, 0, 240_000);
        assertThat(slow / fast).isCloseTo(1.903 / 2.016, within(0.03));
    }

    /** Flat plates do not change between Re 10 000 and 100 000 (Winslow and others, abstract, READ). */
    @Test
    void plateStays() {
        assertThat(FlapEfficiency.of(0.02, 0, 60_000) / FlapEfficiency.of(0.02, 0, 150_000))
                .isCloseTo(1, within(0.03));
    }

    /**
     * NACA TR 721, NACA 0009 with sealed plain flap at full-size Reynolds numbers: shift of the zero-lift angle 0.45 (20 %
     * chord), 0.565 (30 %) and 0.73 (50 %) of the deflection (MEMORY, middle of what is remembered), over thin-airfoil theory.
     */
    @ParameterizedTest
    @CsvSource({"0.2, 0.45", "0.3, 0.565", "0.5, 0.73"})
    void roundedSectionKeepsWhatWasMeasured(double chord, double shift) {
        double kept = shift / ThinAirfoil.effectiveness(chord);
        assertThat(FlapEfficiency.of(0.09, 0, 1_000_000)).isCloseTo(kept, within(0.12));
    }

    /** The kinds join without a step. */
    @ParameterizedTest
    @CsvSource({"0.05, 0", "0.07, 0", "0.10, 0", "0.13, 0", "0.09, 0.005", "0.09, 0.015"})
    void kindsJoin(double thickness, double camber) {
        double here = FlapEfficiency.of(thickness, camber, 80_000);
        assertThat(FlapEfficiency.of(thickness + 1e-6, camber + 1e-6, 80_000)).isCloseTo(here, within(1e-4));
        assertThat(FlapEfficiency.of(thickness - 1e-6, Math.max(0, camber - 1e-6), 80_000))
                .isCloseTo(here, within(1e-4));
    }
}
