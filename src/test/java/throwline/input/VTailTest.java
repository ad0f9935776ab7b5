package throwline.input;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The relations of a V-tail to its level tail as NACA Report 823 (Purser and Campbell, 1945; from memory) states them. */
class VTailTest {

    private static final double RAISED = Math.toRadians(35);

    private final VTail level = VTail.level(0.62, 0.14, RAISED);

    @Test
    void slopeTimesAreaIsThatOfThePanelsTimesTheCosineSquared() {
        double panels = 0.62 * 0.14;
        assertThat(level.span() * level.chord() / panels).isCloseTo(Math.pow(Math.cos(RAISED), 2), within(1e-12));
    }

    @Test
    void theAspectRatioIsThatOfThePanels() {
        assertThat(level.span() / level.chord()).isCloseTo(0.62 / 0.14, within(1e-12));
    }

    /** Lift a degree of elevator falls with the cosine only, so the V needs less angle, on a longer chord: the same edge. */
    @Test
    void theSameThrowInMillimetresLiftsTheSame() {
        double share = 0.35;
        double edge = 0.012;
        double onLevel = edge / (share * level.chord()) * level.span() * level.chord();
        double onV = edge / (share * 0.14) * 0.62 * 0.14 * Math.cos(RAISED);
        assertThat(onV).isCloseTo(onLevel, within(1e-12));
    }

    @Test
    void anAngleBetweenTheHalvesSaysTheSame() {
        assertThat(VTail.level(0.62, 0.14, Math.toRadians(110)).span()).isCloseTo(level.span(), within(1e-12));
    }
}
