package throwline.flight;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import throwline.input.ModelFile;
import throwline.input.PackedAirfoils;
import throwline.input.ReadModel;
import throwline.model.Model;
import throwline.model.SetUp;
import throwline.model.Surface;
import throwline.model.Wing;
import throwline.section.MeasuredSections;

/**
 * Only the span of the flap changes. Two trailing vortices a distance {@code s} apart blow down between them with {@code 2
 * G / (pi s)} far behind (Biot-Savart, closed form): with the flap's end moved outwards past the tail's tip the load grows
 * and the downwash per load falls. NACA TR 648 (abstract) finds the same of part-span against full-span flaps.
 */
class TailAirTest {

    private static final PackedAirfoils AIRFOILS = new PackedAirfoils();

    @Test
    void downwashAtTheTailFollowsTheLoadAhead() {
        ReadModel.Project project = (ReadModel.Project) ModelFile.read(Path.of("examples", "orchard.yaml"), AIRFOILS);
        Model model = project.model();
        List<Double> downwash = new ArrayList<>();
        List<Double> lift = new ArrayList<>();
        for (double to : new double[] {0.32, 0.46, 0.7}) {
            Attitude attitude = withFlapTo(model, to);
            double load = attitude.wing().circulation(attitude.wing().grid().size() / 2);
            lift.add(load);
            downwash.add(attitude.downwash() / load);
        }
        assertThat(lift).isSorted();
        assertThat(downwash).isSortedAccordingTo(Comparator.reverseOrder());
        assertThat(downwash.get(2) / downwash.get(0))
                .as("between the two vortices alone, and no change")
                .isBetween(0.32 / 0.7, 1.0);
    }

    private static Attitude withFlapTo(Model model, double to) {
        Wing wing = model.wing();
        Surface flap = wing.surfaces().stream()
                .filter(s -> s.name().equals("flaps"))
                .findFirst()
                .orElseThrow();
        Surface shorter = new Surface(
                "flaps", flap.from(), to, flap.chordFraction(), flap.travelUp(), flap.travelDown(), flap.hinge());
        Wing changed = new Wing(wing.height(), wing.incidence(), wing.dihedral(), wing.sections(), List.of(shorter));
        Model other = new Model(
                model.name(),
                model.packs(),
                changed,
                model.tail(),
                model.body(),
                model.wheels(),
                model.propeller(),
                model.field(),
                model.setUps(),
                List.of());
        SetUp down = new SetUp("down", Map.of("flaps", Math.toRadians(20)), 0);
        Airframe airframe = new Airframe(other, AIRFOILS, new MeasuredSections());
        return new Trimmer(airframe, Deflections.of(changed, down))
                .at(model.packs().get(0), 13, 0);
    }
}
