package throwline.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Blades that meet the air at an angle: against a second program (COMPUTED) and the fin of Ribner's reports. */
class ObliqueTest {

    private static final double DENSITY = 1.17;
    private static final BladeElements BLADES =
            new BladeElements(14 * 0.0254, 7 * 0.0254, 2, BladeElements.USUAL_CHORD);
    private static final Drive DRIVE = new Drive(
            BLADES,
            new PropellerChart(BLADES, 7000 / 60.0, 7001 / 60.0),
            new ElectricMotor(ElectricMotor.speedConstant(500), 0.045, 1.2),
            new Supply(15.6, 0.040));

    /**
     * 14 x 7 at full throttle: 0.74 N/rad and 0.404 N m/rad at 9 m/s, 1.15 and 0.531 at 12, 2.45 and 0.817 at 20 (COMPUTED by a
     * second program with the same sections; 2 %).
     */
    @ParameterizedTest
    @CsvSource({"9, 0.74, 0.404", "12, 1.15, 0.531", "20, 2.45, 0.817"})
    void forceAndMoment(double speed, double normal, double yawing) {
        double turns = DRIVE.at(speed, 1, DENSITY).turns();
        BladeElements.Oblique oblique = BLADES.oblique(speed, turns, DENSITY);
        assertThat(oblique.normal()).isCloseTo(normal, within(0.02 * normal));
        assertThat(oblique.yawing()).isCloseTo(yawing, within(0.02 * yawing));
    }

    /** A fin of the blades' side area, aspect ratio 8, in the air at the disc (Ribner, summaries READ): within 15 per cent. */
    @ParameterizedTest
    @CsvSource({"9", "12", "20"})
    void againstTheFin(double speed) {
        OperatingPoint point = DRIVE.at(speed, 1, DENSITY);
        double rule = PropellerForces.normalPerRadian(BLADES, Slipstream.of(point, BLADES.diameter() / 2, DENSITY));
        assertThat(BLADES.oblique(speed, point.turns(), DENSITY).normal()).isCloseTo(rule, within(0.15 * rule));
    }

    /** Standing still no blade is faster than another. */
    @Test
    void nothingAtRest() {
        assertThat(BLADES.oblique(0, 100, DENSITY).yawing()).isZero();
    }
}
