package throwline.input;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import throwline.model.Model;
import throwline.model.SetUp;
import throwline.model.Stick;

/** A copy has one entry more and nothing else changed, however the file is laid out. */
class ModelCopyTest {

    private static final double DEGREE = Math.toRadians(1);
    private static final SetUp SET_UP = new SetUp("steep: \"new\"", flapsThenAilerons(), 2.5 * DEGREE);
    private static final Stick.Roll STICK =
            new Stick.Roll("half", Map.of("ailerons", new Stick.Throws(8 * DEGREE, 6.5 * DEGREE)), List.of("clean"));

    @TempDir
    private Path folder = Path.of("");

    private static String orchard() throws IOException {
        return Files.readString(Path.of("examples", "orchard.yaml"));
    }

    /** Ways in which people write the same file. */
    static Stream<UnaryOperator<String>> layouts() {
        return Stream.of(
                s -> s,
                s -> s.replace("\n", "\r\n"),
                String::stripTrailing,
                s -> s + "# the end\n",
                s -> s.replace("  clean: {}\n", "  # nothing moves\n  clean: {}   # as built\n\n"),
                s -> s.replace("  clean: {}\n", "    clean: {}\n").replaceAll("\n  (take|land|airb)", "\n    $1"),
                s -> s.replaceAll(
                                "(?s)set-ups:\n  clean: \\{\\}\n(.*?)\n\n",
                                "set-ups: {clean: {}, brake: {flaps: 55 deg down}}\n\n")
                        .replaceAll(", in: \\[[^\\]]*\\]", ""),
                s -> s.replaceAll("(?s)sticks:.*", ""),
                s -> s.replaceAll("(?s)sticks:.*", "").stripTrailing(),
                s -> s.replaceAll("(?s)sticks:.*", "sticks: {low: {does: roll, ailerons: 9 deg}}\n"),
                s -> s.replaceAll("(?s)(set-ups:.*?\n)\n(sticks:.*)", "$2\n$1"));
    }

    private static Map<String, Double> flapsThenAilerons() {
        Map<String, Double> deflections = new LinkedHashMap<>();
        deflections.put("flaps", 41.26 * DEGREE);
        deflections.put("ailerons", -3 * DEGREE);
        return deflections;
    }

    @ParameterizedTest
    @MethodSource("layouts")
    void one_entry_more_and_nothing_else(UnaryOperator<String> layout) throws IOException {
        Path file = folder.resolve("model.yaml");
        String text = layout.apply(orchard());
        Files.writeString(file, text);
        Model before = model(ModelFile.read(file, new PackedAirfoils()));
        ModelCopy copy = new ModelCopy(Files.readString(file));
        ModelCopy changed =
                copy.with(SET_UP, "found").orElseThrow().with(STICK, "found").orElseThrow();
        Model after = model(changed.read("copy", new PackedAirfoils()));
        assertThat(after.setUps()).hasSize(before.setUps().size() + 1).containsAll(before.setUps());
        assertThat(after.sticks()).hasSize(before.sticks().size() + 1).containsAll(before.sticks());
        SetUp added = after.setUps().get(after.setUps().size() - 1);
        assertThat(added.name()).isEqualTo(SET_UP.name());
        assertThat(added.deflection("flaps")).isCloseTo(SET_UP.deflection("flaps"), within(0.05 * DEGREE));
        assertThat(added.deflection("ailerons")).isCloseTo(-3 * DEGREE, within(1e-9));
        assertThat(added.elevator()).isCloseTo(2.5 * DEGREE, within(1e-9));
        Stick.Roll stick = (Stick.Roll) after.sticks().get(after.sticks().size() - 1);
        assertThat(stick.in()).containsExactly("clean");
        assertThat(Objects.requireNonNull(stick.throwsBySurface().get("ailerons"))
                        .down())
                .isCloseTo(6.5 * DEGREE, within(1e-9));
        keepsEveryLine(text, changed.text());
        assertThat(before.wing()).isEqualTo(after.wing());
    }

    /** Every line is there, in its order; a line with a brace may have grown. */
    private static void keepsEveryLine(String before, String after) {
        List<String> kept = after.lines().toList();
        int next = 0;
        for (String line : before.lines().toList()) {
            String start = line.endsWith("}") ? line.substring(0, line.length() - 1) : line;
            while (next < kept.size() && !kept.get(next).startsWith(start)) {
                next++;
            }
            assertThat(next).as(line).isLessThan(kept.size());
            next++;
        }
        assertThat(after.contains("\r\n")).isEqualTo(before.contains("\r\n"));
        assertThat(after.replace("\r\n", "").contains("\n")).isEqualTo(!before.contains("\r\n"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"orchard", "ridgeline", "saltmarsh"})
    void the_entry_stands_behind_the_last_of_its_group_with_its_comment(String name) throws IOException {
        Path file = Path.of("examples", name + ".yaml");
        ModelCopy copy = new ModelCopy(Files.readString(file))
                .with(SET_UP, "found, an estimate")
                .orElseThrow();
        List<String> lines = copy.text().lines().toList();
        int at = lines.indexOf(
                "  \"steep: \\\"new\\\"\": {flaps: 41.3 deg down, ailerons: 3 deg up, elevator: 2.5 deg down}"
                        + "   # found, an estimate");
        assertThat(at).isPositive();
        assertThat(lines.get(at - 1)).startsWith("  airbrake:");
    }

    /** The whole file between braces, as JSON has it, without sticks: they go before the last brace. */
    @Test
    void a_file_in_braces() throws IOException {
        Path file = folder.resolve("braces.yaml");
        Files.writeString(file, """
                {
                  "throwline": 1,
                  "name": "Braces",
                  "packs": {"one": {"weight": "3 kg", "balance": "85 mm"}},
                  "wing": {
                    "position": "high",
                    "sections": [
                      {"at": "0 mm", "chord": "300 mm", "airfoil": "clark-y"},
                      {"at": "900 mm", "chord": "250 mm", "airfoil": "clark-y"}
                    ],
                    "surfaces": {
                      "flaps": {"from": "80 mm", "to": "450 mm"},
                      "ailerons": {"from": "460 mm", "to": "880 mm"}
                    }
                  },
                  "tail": {"span": "560 mm", "chord": "165 mm", "arm": "800 mm"},
                  "set-ups": {"clean": {}, "flap": {"flaps": "30 deg down"}}
                }
                """);
        ModelCopy copy = new ModelCopy(Files.readString(file));
        ModelCopy changed = copy.with(STICK, "").orElseThrow().with(SET_UP, "").orElseThrow();
        Model model = model(changed.read("copy", new PackedAirfoils()));
        assertThat(model.sticks()).hasSize(1);
        assertThat(model.setUps().stream().map(SetUp::name)).containsExactly("clean", "flap", SET_UP.name());
    }

    private static Model model(ReadModel read) {
        assertThat(read).isInstanceOf(ReadModel.Project.class);
        return ((ReadModel.Project) read).model();
    }
}
