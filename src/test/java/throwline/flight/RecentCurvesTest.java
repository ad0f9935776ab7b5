package throwline.flight;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import throwline.section.SectionCurve;

class RecentCurvesTest {

    /** Thirty-two speeds are kept; one more puts out the one that was asked for least recently. */
    @Test
    void recentCurves() {
        RecentCurves recent = new RecentCurves();
        int[] made = {0};
        for (int round = 0; round < 2; round++) {
            for (int speed = 0; speed < 32; speed++) {
                recent.at(speed, v -> curves(made));
            }
        }
        assertThat(made[0]).isEqualTo(32);
        recent.at(0, v -> curves(made));
        recent.at(99, v -> curves(made));
        recent.at(0, v -> curves(made));
        assertThat(made[0]).isEqualTo(33);
        recent.at(1, v -> curves(made));
        assertThat(made[0]).isEqualTo(34);
    }

    private static List<SectionCurve> curves(int[] made) {
        made[0]++;
        return List.of();
    }
}
