package throwline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How much the first screens of the examples ask of a reader on 80 columns. */
class FirstScreenTest {

    private static final int COLUMNS = 80;
    /** The table with both packs, and what is folded. */
    private static final int ROWS = 50;
    /** One set-up in depth, cautions and all. */
    private static final int ROWS_OF_ONE = 40;

    private static List<String> lines(String... command) {
        return ProgramRun.of(command).out().lines().toList();
    }

    /** The examples, and three more invented models: a trainer without flaps, a fast four-servo one in inches, a sailplane. */
    @ParameterizedTest
    @ValueSource(strings = {"orchard", "ridgeline", "saltmarsh", "fledgling", "brindle", "larkspur"})
    void four_set_ups_with_two_packs_are_one_screen(String name) {
        List<String> lines = lines("compare", file(name));
        assertThat(lines).allMatch(line -> line.length() <= COLUMNS);
        assertThat(lines.stream()
                        .dropWhile(line -> !line.startsWith("Pack "))
                        .takeWhile(line -> !line.startsWith("Propeller off")))
                .hasSizeBetween(30, ROWS)
                .anyMatch(line -> line.startsWith("More with --all: "));
        assertThat(lines.stream().takeWhile(line -> !line.startsWith("Pack "))).hasSizeLessThan(24);
        assertThat(lines("compare", file(name), "--all"))
                .hasSizeGreaterThan(2 * lines.size())
                .noneMatch(line -> line.contains("--all"));
    }

    private static String file(String name) {
        boolean example = List.of("orchard", "ridgeline", "saltmarsh").contains(name);
        return (example ? "examples/" : "src/test/resources/throwline/invented/") + name + ".yaml";
    }

    static Stream<Arguments> setUps() {
        Stream<Arguments> examples = Stream.of("orchard", "ridgeline", "saltmarsh")
                .flatMap(name -> Stream.of("clean", "take-off flap", "landing flap", "airbrake")
                        .map(setUp -> Arguments.of(name, setUp)));
        return Stream.concat(
                examples,
                Stream.of(
                        Arguments.of("fledgling", "spoilers"),
                        Arguments.of("fledgling", "flaperons"),
                        Arguments.of("brindle", "half flap"),
                        Arguments.of("brindle", "crow"),
                        Arguments.of("larkspur", "thermal"),
                        Arguments.of("larkspur", "crow")));
    }

    @ParameterizedTest
    @MethodSource("setUps")
    void one_set_up_is_less_than_a_screen(String name, String setUp) {
        List<String> lines = lines("fly", file(name), "--setup", setUp);
        assertThat(lines).hasSizeBetween(25, ROWS_OF_ONE).allMatch(line -> line.length() <= COLUMNS);
    }
}
