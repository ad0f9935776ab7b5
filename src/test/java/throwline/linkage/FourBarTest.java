package throwline.linkage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The linkage against a table solved by bisection (COMPUTED, methods manual 19.4) and against geometry. */
class FourBarTest {

    private static final double MM = 1e-3;

    private static FourBar bar(double arm, double horn, double distance, double leanDegrees) {
        return new FourBar(arm * MM, horn * MM, distance * MM, Math.toRadians(leanDegrees));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "four-bar.csv", useHeadersInDisplayName = true)
    void table(double arm, double horn, double distance, double lean, double servo, double surface, double tolerance) {
        FourBar bar = bar(arm, horn, distance, lean);
        double angle = bar.surfaceAt(Math.toRadians(servo)).orElseThrow();
        assertThat(Math.toDegrees(angle)).isCloseTo(surface, within(tolerance));
    }

    /** Both angles, on the branch that is continuous with neutral; past 80 degrees of servo this one turns back. */
    @ParameterizedTest
    @ValueSource(doubles = {-60, -45, -10, 0, 0.5, 20, 45, 75})
    void thereAndBack(double degrees) {
        FourBar bar = bar(12, 18, 90, 0);
        double servo = Math.toRadians(degrees);
        double surface = bar.surfaceAt(servo).orElseThrow();
        assertThat(bar.servoAt(surface).orElseThrow()).isCloseTo(servo, within(1e-9));
    }

    /** Methods manual 14.2 (COMPUTED): 0.6667, 0.6014, 0.5107 at servo angles of 0, 30, 45 degrees. */
    @Test
    void ratio() {
        FourBar bar = bar(12, 18, 90, 0);
        assertThat(bar.ratioAt(0).orElseThrow()).isCloseTo(0.6667, within(0.00005));
        assertThat(bar.ratioAt(Math.toRadians(30)).orElseThrow()).isCloseTo(0.6014, within(0.00005));
        assertThat(bar.ratioAt(Math.toRadians(45)).orElseThrow()).isCloseTo(0.5107, within(0.00005));
    }

    /** Methods manual 14.2 (COMPUTED): 15 and 12 mm at 90 mm lock before 60 degrees of servo. */
    @Test
    void locks() {
        FourBar bar = bar(15, 12, 90, 0);
        assertThat(bar.surfaceAt(Math.toRadians(60))).isEmpty();
        assertThat(bar.ratioAt(Math.toRadians(60))).isEmpty();
        double lock = bar.servo().high();
        assertThat(lock).isBetween(Math.toRadians(45), Math.toRadians(60));
        assertThat(bar.surfaceAt(lock)).isPresent();
    }

    /** Where arm and rod lie in line the surface turns back: the peak of the table, 38.1 degrees between 75 and 90. */
    @Test
    void turnsBack() {
        FourBar bar = bar(12, 18, 90, 0);
        double peak = bar.surface().high();
        assertThat(Math.toDegrees(peak)).isBetween(38.12, 38.6);
        double servo = bar.servoAt(peak).orElseThrow();
        assertThat(bar.ratioAt(servo).orElseThrow()).isCloseTo(0, within(1e-6));
        assertThat(bar.servoAt(peak + 0.01)).isEmpty();
    }

    /** Geometry: the rod keeps its length, whichever of its two measures the linkage is made by. */
    @Test
    void byRod() {
        FourBar byDistance = bar(16, 12, 60, 45);
        FourBar byRod = FourBar.ofRod(16 * MM, 12 * MM, byDistance.rod(), Math.toRadians(45));
        assertThat(byRod.distance()).isCloseTo(60 * MM, within(1e-15));
        double servo = Math.toRadians(37);
        assertThat(byRod.surfaceAt(servo).orElseThrow())
                .isCloseTo(byDistance.surfaceAt(servo).orElseThrow(), within(1e-12));
    }
}
