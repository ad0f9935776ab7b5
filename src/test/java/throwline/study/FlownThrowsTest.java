package throwline.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import throwline.input.FlightsFile;
import throwline.input.ModelFile;
import throwline.input.PackedAirfoils;
import throwline.input.ReadFlights;
import throwline.input.ReadModel;
import throwline.model.Model;
import throwline.model.SetUp;
import throwline.notes.FlightNotes;

/** Throws on days and what they have in common: correlation 1 - apart/20 degrees (closed form). */
class FlownThrowsTest {

    private static final Model MODEL =
            ((ReadModel.Project) ModelFile.read(Path.of("examples/orchard.yaml"), new PackedAirfoils())).model();

    private static FlightNotes notes(int... flaps) {
        StringBuilder text = new StringBuilder("throwline flights: 1\nflights:\n");
        for (int i = 0; i < flaps.length; i++) {
            text.append("  - date: 2026-10-0").append(i + 1).append("\n    pack: small\n");
            text.append("    set-ups: {landing flap: {flaps: ").append(flaps[i]).append(" deg down}}\n");
        }
        return ((ReadFlights.Notes) FlightsFile.read(text.toString(), "notes.yaml", MODEL)).notes();
    }

    private static Model tried(int flaps) {
        List<SetUp> setUps = new ArrayList<>();
        for (SetUp setUp : MODEL.setUps()) {
            Map<String, Double> deflections = new LinkedHashMap<>(setUp.deflections());
            deflections.computeIfPresent("flaps", (name, angle) -> Math.toRadians(flaps));
            setUps.add(
                    setUp.name().equals("landing flap")
                            ? new SetUp(setUp.name(), deflections, setUp.elevator(), setUp.switchPosition())
                            : setUp);
        }
        return MODEL.withSetUps(setUps);
    }

    @Test
    void days_with_the_same_throws_are_one_set_up() {
        FlownThrows throwsOf = new FlownThrows(MODEL, notes(25, 34, 25, 15), Optional.empty());
        assertThat(throwsOf.onDays().stream().map(SetUp::name))
                .containsExactly("landing flap as on 2026-10-01", "landing flap as on 2026-10-04");
    }

    /** Landing flap of the file: 35 degrees. On days 25 and 20 degrees, tried 30: differences of 5 to 15 degrees. */
    @Test
    void own_errors_go_together_by_how_far_throws_lie_apart() {
        FlownThrows throwsOf = new FlownThrows(MODEL, notes(25, 20), Optional.of(tried(30)));
        List<String> names = List.of(
                "landing flap",
                "landing flap as on 2026-10-01",
                "landing flap as on 2026-10-02",
                "landing flap as tried");
        int[] flaps = {35, 25, 20, 30};
        List<double[]> rows = new ArrayList<>();
        for (String name : names) {
            Map<String, Double> part = throwsOf.ownPart(name, other -> true);
            double[] row = new double[names.size()];
            double left = 1;
            for (int k = 0; k < rows.size(); k++) {
                row[k] = part.getOrDefault(names.get(k), 0.0);
                left -= row[k] * row[k];
            }
            row[rows.size()] = Math.sqrt(left);
            rows.add(row);
        }
        for (int i = 0; i < names.size(); i++) {
            for (int j = 0; j <= i; j++) {
                double sum = 0;
                for (int k = 0; k < names.size(); k++) {
                    sum += rows.get(i)[k] * rows.get(j)[k];
                }
                double apart = Math.abs(flaps[i] - flaps[j]);
                assertThat(sum).as(names.get(i) + ", " + names.get(j)).isCloseTo(1 - apart / 20, Offset.offset(1e-9));
            }
        }
    }

    @Test
    void throws_tried_as_flown_on_a_day_are_those_of_the_day() {
        FlownThrows throwsOf = new FlownThrows(MODEL, notes(20), Optional.of(tried(21)));
        assertThat(throwsOf.areSame("landing flap as on 2026-10-01", "landing flap as tried"))
                .isTrue();
        assertThat(throwsOf.areSame("landing flap", "landing flap as tried")).isFalse();
        Map<String, Double> part = throwsOf.ownPart("landing flap as tried", other -> true);
        assertThat(part.values().stream().mapToDouble(c -> c * c).sum()).isLessThanOrEqualTo(1 + 1e-12);
        assertThat(throwsOf.ownPart("landing flap as tried", other -> false)).isEmpty();
    }
}
