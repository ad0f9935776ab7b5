package throwline.input;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import throwline.model.Assumption;
import throwline.model.Model;
import throwline.model.Servo;
import throwline.units.Unit;

/** How far servos yield, and where a tail that moves as a whole pivots: read, or assumed where it counts. */
class YieldingKeysTest {

    private static final double DEG = Math.PI / 180;

    @TempDir
    private Path folder = Path.of("");

    private ReadModel.Project read(String from, String to) throws IOException {
        String base = Files.readString(Path.of("src/test/resources/throwline/input/base.yaml"));
        assertThat(base).contains(from);
        Path file = folder.resolve("model.yaml");
        Files.writeString(file, base.replace(from, to));
        if (ModelFile.read(file, new PackedAirfoils()) instanceof ReadModel.Project project) {
            return project;
        }
        throw new AssertionError("not read");
    }

    private ReadModel.Project servo(String entries) throws IOException {
        return read("set-ups:", "servos: {flaps: {" + entries + "}}\nset-ups:");
    }

    private static List<String> assumed(ReadModel.Project project, String start) {
        return project.assumed().stream()
                .filter(a -> a.path().startsWith(start))
                .map(Assumption::path)
                .toList();
    }

    @Test
    void given() throws IOException {
        ReadModel.Project project = servo("torque: 0.6 N m, give: 2.5 deg, play: 0.02 in");
        Servo servo = project.model().servo("flaps");
        assertThat(servo.give()).isCloseTo(2.5 * DEG, within(1e-12));
        assertThat(servo.play()).isCloseTo(0.02 * 0.0254, within(1e-12));
        assertThat(assumed(project, "servos.flaps")).containsExactly("servos.flaps.lean", "servos.flaps.offset");
    }

    /** Torque is shown as the servo's box and the file give it, unless another unit is asked for. */
    @Test
    void torqueInTheUnitOfTheFile() throws IOException {
        String box = "servos: {flaps: {torque: 6 kg cm}}\n";
        assertThat(servo("torque: 6 kg cm").display().torque()).isEqualTo(Unit.KILOGRAM_CENTIMETRE);
        assertThat(servo("torque: \"60 oz in\"").display().torque()).isEqualTo(Unit.OUNCE_INCH);
        assertThat(servo("torque: 0.6 N m").display().torque()).isEqualTo(Unit.NEWTON_METRE);
        assertThat(servo("swing: 45 deg").display().torque()).isEqualTo(Unit.NEWTON_METRE);
        assertThat(read("set-ups:", box + "show: {length: in}\nset-ups:")
                        .display()
                        .torque())
                .isEqualTo(Unit.KILOGRAM_CENTIMETRE);
        assertThat(read("set-ups:", box + "show: {torque: N m}\nset-ups:")
                        .display()
                        .torque())
                .isEqualTo(Unit.NEWTON_METRE);
    }

    /** Common practice, no source: 4 degrees, and less than a millimetre (methods manual 14.4). */
    @Test
    void assumedWithATorque() throws IOException {
        ReadModel.Project project = servo("torque: 0.6 N m");
        assertThat(project.model().servo("flaps").give()).isCloseTo(4 * DEG, within(1e-12));
        assertThat(project.model().servo("flaps").play()).isEqualTo(0.001);
        assertThat(assumed(project, "servos.flaps")).contains("servos.flaps.give", "servos.flaps.play");
    }

    @Test
    void notAssumedWithoutATorque() throws IOException {
        assertThat(assumed(servo("swing: 45 deg"), "servos.flaps"))
                .doesNotContain("servos.flaps.give", "servos.flaps.play");
    }

    @Test
    void pivot() throws IOException {
        String elevator = "elevator: {travel: 20 deg}";
        ReadModel.Project given = read(elevator, "elevator: {chord: 100 %, travel: 20 deg, pivot: 30 %}");
        assertThat(given.model().tail().elevator().pivot()).isCloseTo(0.3, within(1e-12));
        ReadModel.Project left = read(elevator, "elevator: {chord: 100 %, travel: 20 deg}");
        assertThat(left.model().tail().elevator().pivot()).isEqualTo(0.25);
        assertThat(assumed(left, "tail.elevator")).contains("tail.elevator.pivot");
        ReadModel.Project hinged = read(elevator, elevator);
        assertThat(assumed(hinged, "tail.elevator")).doesNotContain("tail.elevator.pivot");
    }

    /** Geometry: 40 mm at an edge that turns on 70 per cent of 185 mm is 2 asin(20 / 129.5). */
    @Test
    void throwsAreMeasuredFromThePivot() throws IOException {
        ReadModel.Project project =
                read("elevator: {travel: 20 deg}}", "elevator: {chord: 100 %, travel: 40 mm, pivot: 30 %}}");
        Model model = project.model();
        assertThat(model.tail().throwChord()).isCloseTo(0.7 * 0.185, within(1e-12));
        assertThat(model.tail().elevator().travelUp()).isCloseTo(2 * Math.asin(20 / 129.5), within(1e-9));
    }
}
