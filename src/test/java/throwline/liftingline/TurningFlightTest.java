package throwline.liftingline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;

/**
 * Rates, sideslip, dihedral, sweep and moments about a point against closed forms of lifting-line and strip theory for
 * an elliptic wing of aspect ratio 6; each derivation stands beside its test.
 */
class TurningFlightTest {

    private static final double ASPECT = 6;
    private static final double LIFT = 0.5;

    private static TheoryWing wing(double dihedral, double sweep) {
        Bent planform = new Bent(TheoryPlanform.ellipse(ASPECT), dihedral, sweep);
        return new TheoryWing(planform, new double[0], 160, y -> LawCurve.linear(0));
    }

    /**
     * Sideslip b on dihedral d shifts the angle by b d, up on the windward side. The step as a sine series gives A2 = 16 b d
     * / (3 pi (AR + 4)), and Cl = - pi AR A2 / 4.
     */
    @Test
    void dihedralRollsOutOfASideslip() {
        double dihedral = Math.toRadians(2);
        double slip = 0.05;
        double rolling = wing(dihedral, 0).at(0.1, new Motion(0, 0, 0, slip)).rollingCoefficient();
        double expected = -4.0 / 3 * ASPECT / (ASPECT + 4) * slip * Math.sin(dihedral);
        assertThat(rolling).isCloseTo(expected, withPercentage(0.5));
    }

    /**
     * The wake's part of the yaw is 3/4 CL A2; the lift leans forward by b d on the windward side, which gives - 2 / (3 pi)
     * CL b d. The rear of a straight line adds nothing.
     */
    @Test
    void dihedralYawsInASideslip() {
        double dihedral = Math.toRadians(2);
        double slip = 0.05;
        TheoryWing wing = wing(dihedral, 0);
        double incidence = wing.incidenceFor(LIFT);
        double yawing = (wing.at(incidence, new Motion(0, 0, 0, slip)).yawingCoefficient()
                        - wing.at(incidence, new Motion(0, 0, 0, -slip)).yawingCoefficient())
                / 2;
        double expected = LIFT * slip * Math.sin(dihedral) * (4 / (Math.PI * (ASPECT + 4)) - 2 / (3 * Math.PI));
        assertThat(yawing).isCloseTo(expected, withPercentage(1));
    }

    /**
     * In a yaw the strips are faster on one side. Circulation follows speed, like a roll of - alpha r, and lift follows it
     * once more: Clr = CL (1/8 + (AR + 2) / (8 (AR + 4))) per r b / 2V.
     */
    @Test
    void yawRateRollsTowardsTheSlowerSide() {
        TheoryWing wing = wing(0, 0);
        double incidence = wing.incidenceFor(LIFT);
        double rate = 0.02;
        double rolling = wing.at(incidence, new Motion(0, 0, rate, 0)).rollingCoefficient() / rate;
        double expected = LIFT * (1.0 / 8 + (ASPECT + 2) / (8 * (ASPECT + 4)));
        assertThat(rolling).isCloseTo(expected, withPercentage(0.5));
    }

    /** A wing turning nose up about its quarter chord lifts as one at the angle of the three-quarter chord. */
    @Test
    void pitchRateLiftsByTheAngleOfTheThreeQuarterChord() {
        TheoryPlanform planform = TheoryPlanform.tapered(ASPECT, 1);
        TheoryWing turning = new TheoryWing(planform, new double[0], 80, y -> LawCurve.linear(0));
        double rate = 0.1;
        double chord = planform.chord(0);
        StripForces turned = turning.at(0, new Motion(0, rate, 0, 0));
        assertThat(turned.liftCoefficient())
                .isCloseTo(turning.at(rate * chord / 2).liftCoefficient(), offset(1e-9));
        assertThat(turned.pitchingCoefficient(0)).isCloseTo(-Math.PI / 8 * rate * chord, withPercentage(0.1));
    }

    /** Simple sweep theory on a wing of great span: lift slope 2 pi times the cosine, on the straight line's matrix. */
    @Test
    void sweepTakesTheCosineOfTheLiftSlope() {
        double sweep = Math.toRadians(15);
        double straight = wing(0, 0).at(0.1).liftCoefficient();
        double swept = wing(0, sweep).at(0.1).liftCoefficient();
        double slope = 2 * Math.PI;
        double expected = slope * Math.cos(sweep) / (1 + slope * Math.cos(sweep) / (Math.PI * ASPECT));
        assertThat(swept / 0.1).isCloseTo(expected, withPercentage(0.2));
        assertThat(straight / 0.1).isCloseTo(slope / (1 + slope / (Math.PI * ASPECT)), withPercentage(0.2));
    }

    /** Sums of forces are moved to another point by their lever arms, whatever the incidence: mechanics. */
    @Test
    void momentsMoveWithThePoint() {
        TheoryWing wing = wing(0.05, 0.1);
        double incidence = 0.3;
        StripForces forces = wing.at(incidence, new Motion(0.02, 0, 0.03, 0.05));
        Loads here = forces.about(0, 0, 0);
        double behind = 0.2;
        double right = -0.1;
        double above = 0.3;
        Loads there = forces.about(behind, right, above);
        double x = behind * Math.cos(incidence) + above * Math.sin(incidence);
        double z = above * Math.cos(incidence) - behind * Math.sin(incidence);
        assertThat(there.lift()).isEqualTo(here.lift());
        assertThat(there.pitching()).isCloseTo(here.pitching() + here.lift() * x - here.drag() * z, offset(1e-12));
        assertThat(there.rolling()).isCloseTo(here.rolling() + here.lift() * right - here.side() * z, offset(1e-12));
        assertThat(there.yawing()).isCloseTo(here.yawing() - here.drag() * right + here.side() * x, offset(1e-12));
        assertThat(Math.abs(here.side())).isGreaterThan(1e-4);
    }

    /** Force along the strip's own normal: about the root a raised half has the lever arm along its own span. */
    @Test
    void dihedralKeepsTheArmAlongTheWing() {
        double dihedral = Math.toRadians(8);
        TheoryWing wing = wing(dihedral, 0);
        StripForces forces = wing.at(0.1, Motion.rolling(0.05));
        double sum = 0;
        for (int i = 0; i < wing.grid.size(); i++) {
            sum -= forces.lift(i) / Math.cos(dihedral) * wing.grid.control(i) / Math.cos(dihedral);
        }
        double arm = forces.about(0, 0, 0).rolling();
        // The wing stands at 0.1 rad: its raised tips move back a little in the axes of the air.
        assertThat(arm).isCloseTo(sum, withPercentage(1));
    }

    /** A planform of theory with dihedral and constant sweep. */
    private record Bent(TheoryPlanform flat, double dihedral, double angle) implements Planform {

        @Override
        public double semiSpan() {
            return flat.semiSpan();
        }

        @Override
        public double[] breaks() {
            return flat.breaks();
        }

        @Override
        public double chord(double y) {
            return flat.chord(y);
        }

        @Override
        public double twist(double y) {
            return flat.twist(y);
        }

        @Override
        public double quarterChord(double y) {
            return y * Math.tan(angle);
        }

        @Override
        public double sweep(double y) {
            return angle;
        }
    }
}
