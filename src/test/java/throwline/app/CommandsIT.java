package throwline.app;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import throwline.Parsed;

/** The other commands as a script runs them. */
class CommandsIT {

    @Test
    void the_jar_knows_its_version() {
        JarRun run = JarRun.of("-V");
        assertThat(run.exitCode()).isZero();
        assertThat(run.out()).matches("throwline \\d+\\.\\d+\\.\\d+\\R");
    }

    @Test
    void no_arguments_is_wrong_input() {
        JarRun run = JarRun.of();
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("Usage:");
    }

    @Test
    void wing_json_has_a_point_an_incidence_to_included() {
        JarRun run = JarRun.of(
                "wing", "examples/orchard.yaml", "--setup", "Landing-Flap", "--incidence", "-4:4:2", "--json");
        assertThat(run.exitCode()).as(run.err()).isZero();
        Parsed points = Parsed.of(run.out()).at("points");
        assertThat(points.size()).isEqualTo(5);
        assertThat(points.at(4).at("incidence").number()).isEqualTo(4);
    }

    @Test
    void section_takes_negative_angles_and_answers_from_down_to_up() {
        JarRun run = JarRun.of("section", "ClarkY", "--re", "1.5e5", "--flap", "-6", "--flap-chord", "20%", "--json");
        assertThat(run.exitCode()).as(run.err()).isZero();
        Parsed json = Parsed.of(run.out());
        assertThat(json.at("flap").number()).isEqualTo(-6);
        assertThat(json.at("flapChord").number()).isEqualTo(0.2);
        Parsed points = json.at("points");
        assertThat(points.at(0).at("angle").number()).isEqualTo(-90);
        assertThat(points.at(points.size() - 1).at("angle").number()).isEqualTo(90);
    }

    @Test
    void the_list_names_every_airfoil_once() {
        JarRun run = JarRun.of("section", "--list");
        assertThat(run.exitCode()).isZero();
        // Below the name of an airfoil, indented, stands what does not fit into one line.
        assertThat(run.out()
                        .lines()
                        .dropWhile(line -> !line.startsWith("name"))
                        .takeWhile(line -> !line.isBlank())
                        .filter(line -> !line.startsWith(" "))
                        .map(line -> line.split(" ", 2)[0]))
                .hasSizeGreaterThan(30)
                .contains("clark-y")
                .doesNotHaveDuplicates();
    }
}
