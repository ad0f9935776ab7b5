package throwline.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import throwline.input.ModelFile;
import throwline.input.PackedAirfoils;
import throwline.input.ReadModel;
import throwline.model.Model;
import throwline.section.MeasuredSections;
import throwline.study.Bands;
import throwline.study.ComparisonStudy;
import throwline.study.FlightQuantity;
import throwline.study.Headline;
import throwline.study.SetUpResult;
import throwline.study.SetUpResult.SpeedPoint;

/**
 * Every answer goes into a copy of the model file, is read again and compared like any set-up: what was wanted must come
 * out, to 1 per cent or 0.2 degrees.
 */
class FindThroughCompareTest {

    private static final double DEGREE = Math.toRadians(1);

    @TempDir
    private Path folder = Path.of("");

    @ParameterizedTest
    @CsvSource({
        "orchard, 8, 12",
        "orchard, 15, 12",
        "orchard, 17.5, 12",
        "ridgeline, 8, 10",
        "ridgeline, 18, 10",
        "saltmarsh, 12, 14",
        "saltmarsh, 18, 14"
    })
    void a_way_down(String name, double angle, double speed) {
        SetUpResult found = found(name, 0, "--come-down", String.valueOf(angle), "--at", speed + " m/s");
        assertThat(angleAt(found.sweep(), speed) / DEGREE).isCloseTo(angle, within(0.2));
        assertThat(found.notes()).noneMatch(n -> n.code().equals("note.tail-near-stall"));
    }

    @ParameterizedTest
    @CsvSource({"orchard, 8.6", "orchard, 9.3", "ridgeline, 6.7", "ridgeline, 7.0", "saltmarsh, 8.7"})
    void a_stall_speed(String name, double speed) {
        SetUpResult found = found(name, 0, "--stall-at", speed + " m/s");
        assertThat(value(found.stallSpeed())).isCloseTo(speed, withPercentage(1));
    }

    @ParameterizedTest
    @CsvSource({"orchard, 15, 12, 8.7", "ridgeline, 15, 10, 6.9", "saltmarsh, 15, 14, 8.9"})
    void both(String name, double angle, double speed, double stall) {
        SetUpResult found = found(
                name, 0, "--come-down", String.valueOf(angle), "--at", speed + " m/s", "--stall-at", stall + " m/s");
        assertThat(value(found.stallSpeed())).isCloseTo(stall, withPercentage(1));
        assertThat(angleAt(found.sweep(), speed) / DEGREE).isCloseTo(angle, within(0.2));
    }

    /** A comparison rolls at the speed to come in at, so the rate is asked for at that speed. */
    @ParameterizedTest
    @CsvSource({"orchard, 60", "ridgeline, 30", "saltmarsh, 150"})
    void a_roll_rate(String name, double rate) {
        double comeIn =
                value(compared(Path.of("examples", name + ".yaml"), "clean").approachSpeed());
        found(name, 0, "--roll", rate + " deg/s", "--at", comeIn + " m/s");
        SetUpResult clean = compared(folder.resolve(name + "-found.yaml"), "clean");
        assertThat(clean.rollRates().stream()
                        .filter(r -> r.stick().equals("found"))
                        .map(r -> value(r.rate()) / DEGREE)
                        .toList())
                .singleElement()
                .satisfies(r -> assertThat(r).isCloseTo(rate, withPercentage(1)));
    }

    /** The end of a mix made for the speed to come in at is what a comparison says of that set-up; the copy holds half. */
    @ParameterizedTest
    @CsvSource({"orchard, landing flap", "orchard, airbrake", "ridgeline, landing flap", "ridgeline, airbrake"})
    void a_mix(String name, String setUp) {
        double change =
                value(compared(Path.of("examples", name + ".yaml"), setUp).number(FlightQuantity.ELEVATOR_CHANGE));
        SetUpResult found = found(name, 0, "--no-trim-change", setUp);
        assertThat(found.setUp().elevator() / DEGREE).isCloseTo(change / 2 / DEGREE, within(0.1));
        assertThat(value(found.number(FlightQuantity.ELEVATOR_CHANGE)) / DEGREE)
                .isCloseTo(change / DEGREE, within(0.2));
    }

    @Test
    void the_nearest_is_written_too_and_the_exit_code_tells() {
        SetUpResult found = found("orchard", 3, "--come-down", "40", "--at", "12 m/s");
        assertThat(found.setUp().deflection("flaps") / DEGREE).isCloseTo(60, within(0.1));
    }

    private SetUpResult found(String name, int exitCode, String... wants) {
        Path copy = folder.resolve(name + "-found.yaml");
        List<String> arguments = new java.util.ArrayList<>(List.of("find", "examples/" + name + ".yaml"));
        arguments.addAll(List.of(wants));
        arguments.addAll(List.of("--write", copy.toString()));
        ProgramRun run = ProgramRun.of(arguments.toArray(String[]::new));
        assertThat(run.exitCode()).as(run.err()).isEqualTo(exitCode);
        return compared(
                copy, model(copy).setUps().stream().anyMatch(s -> s.name().equals("found")) ? "found" : "clean");
    }

    private static Model model(Path file) {
        ReadModel read = ModelFile.read(file, new PackedAirfoils());
        assertThat(read).isInstanceOf(ReadModel.Project.class);
        return ((ReadModel.Project) read).model();
    }

    private static SetUpResult compared(Path file, String setUp) {
        Model model = model(file);
        return new ComparisonStudy(new MeasuredSections(), Bands.load())
                .compare(model, new PackedAirfoils(), model.packs().subList(0, 1)).packs().get(0).setUps().stream()
                        .filter(s -> s.setUp().name().equals(setUp))
                        .findFirst()
                        .orElseThrow();
    }

    private static double value(Headline headline) {
        return ((Headline.Known) headline).value();
    }

    /** Descent angle at a speed, by a straight line between the two nearest of a comparison's speeds. */
    private static double angleAt(List<SpeedPoint> sweep, double speed) {
        for (int i = 1; i < sweep.size(); i++) {
            SpeedPoint a = sweep.get(i - 1);
            SpeedPoint b = sweep.get(i);
            if (a.speed() <= speed && speed <= b.speed()) {
                double share = (speed - a.speed()) / (b.speed() - a.speed());
                return a.descentAngle() + share * (b.descentAngle() - a.descentAngle());
            }
        }
        throw new AssertionError("the comparison does not fly " + speed + " m/s");
    }
}
