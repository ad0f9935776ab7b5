package throwline.input;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Changes of a text stay where they are made. The layouts are those that YAML 1.2 allows for the same entries. */
class ModelTextTest {

    private static final String BLOCK = """
            name: A # the first
            set-ups:   # all
              clean: {}
              # slow and steep
              landing flap: {flaps: 35 deg down}   # on B
              airbrake:
                flaps: 55 deg down  # far
                ailerons: 14 deg up
            field: {wind: 2 m/s}
            """;

    private static String with(String text, String value, String... path) {
        return new ModelText(text).with(List.of(path), value).orElseThrow().text();
    }

    @Test
    void a_value_takes_the_place_of_another_and_comments_stay() {
        assertThat(with(BLOCK, "40 deg down", "set-ups", "landing flap", "flaps"))
                .isEqualTo(BLOCK.replace("35 deg down", "40 deg down"));
        assertThat(with(BLOCK, "60 deg down", "Set ups", "Airbrake", "FLAPS"))
                .isEqualTo(BLOCK.replace("55 deg down", "60 deg down"));
    }

    @Test
    void a_new_value_stands_behind_its_neighbours() {
        assertThat(with(BLOCK, "9 deg up", "set-ups", "clean", "ailerons"))
                .isEqualTo(BLOCK.replace("clean: {}", "clean: {ailerons: 9 deg up}"));
        assertThat(with(BLOCK, "9 deg up", "set-ups", "landing flap", "ailerons"))
                .isEqualTo(BLOCK.replace("{flaps: 35 deg down}", "{flaps: 35 deg down, ailerons: 9 deg up}"));
        assertThat(with(BLOCK, "1 deg up", "set-ups", "airbrake", "elevator"))
                .isEqualTo(BLOCK.replace("14 deg up\n", "14 deg up\n    elevator: 1 deg up\n"));
        assertThat(with(BLOCK, "6 m", "field", "obstacle", "height"))
                .isEqualTo(BLOCK.replace("2 m/s}", "2 m/s, obstacle: {height: 6 m}}"));
        assertThat(with(BLOCK, "in", "show", "length")).isEqualTo(BLOCK + "show: {length: in}\n");
    }

    @Test
    void an_empty_entry_is_filled() {
        assertThat(with("set-ups:\n  clean:   # bare\nname: A\n", "5 deg up", "set-ups", "clean", "flaps"))
                .isEqualTo("set-ups:\n  clean: {flaps: 5 deg up}   # bare\nname: A\n");
    }

    @Test
    void lines_of_windows_and_a_last_line_without_end_stay_what_they_are() {
        assertThat(with("a: 1\r\nb:\r\n  c: 2\r\n", "3", "b", "d")).isEqualTo("a: 1\r\nb:\r\n  c: 2\r\n  d: 3\r\n");
        assertThat(with("b:\n  c: 2", "3", "b", "d")).isEqualTo("b:\n  c: 2\n  d: 3\n");
    }

    @Test
    void entries_of_a_list_are_found_by_their_number() {
        String list = "wing:\n  sections:\n    - {at: 0 mm, chord: 300 mm}\n    - {at: 900 mm,  chord: 200 mm}\n";
        assertThat(new ModelText(list).at(List.of("wing", "sections", "[2]", "chord")))
                .hasValue("200 mm");
        assertThat(with(list, "210 mm", "wing", "sections", "[2]", "chord"))
                .isEqualTo(list.replace("200 mm", "210 mm"));
        assertThat(new ModelText(list).with(List.of("wing", "sections", "[3]", "chord"), "1 mm"))
                .isEmpty();
    }

    @Test
    void entries_are_taken_out_with_their_lines() {
        assertThat(new ModelText(BLOCK)
                        .without(List.of("set-ups", "landing flap"))
                        .orElseThrow()
                        .text())
                .isEqualTo(BLOCK.replace("  # slow and steep\n  landing flap: {flaps: 35 deg down}   # on B\n", ""));
        assertThat(new ModelText(BLOCK)
                        .without(List.of("set-ups", "airbrake", "ailerons"))
                        .orElseThrow()
                        .text())
                .isEqualTo(BLOCK.replace("    ailerons: 14 deg up\n", ""));
        ModelText flow = new ModelText("a: {b: 1, c: 2, d: 3}\n");
        assertThat(flow.without(List.of("a", "b")).orElseThrow().text()).isEqualTo("a: {c: 2, d: 3}\n");
        assertThat(flow.without(List.of("a", "c")).orElseThrow().text()).isEqualTo("a: {b: 1, d: 3}\n");
        assertThat(flow.without(List.of("a", "d")).orElseThrow().text()).isEqualTo("a: {b: 1, c: 2}\n");
        assertThat(flow.without(List.of("a", "x"))).isEmpty();
    }

    @Test
    void names_are_changed_and_quoted_where_they_must_be() {
        assertThat(new ModelText(BLOCK)
                        .renamed(List.of("set-ups", "clean"), "off")
                        .orElseThrow()
                        .text())
                .isEqualTo(BLOCK.replace("clean:", "\"off\":"));
        assertThat(ModelText.plain("landing flap")).isEqualTo("landing flap");
        assertThat(ModelText.plain("35 deg down")).isEqualTo("35 deg down");
        assertThat(ModelText.plain("-4 deg")).isEqualTo("-4 deg");
        assertThat(ModelText.plain("25 %")).isEqualTo("25 %");
        assertThat(ModelText.plain("a: b")).isEqualTo("\"a: b\"");
        assertThat(ModelText.plain("- x")).isEqualTo("\"- x\"");
        assertThat(ModelText.plain("say \"no\"")).isEqualTo("\"say \\\"no\\\"\"");
    }

    @Test
    void copies_stand_behind_and_neighbours_change_places() {
        assertThat(new ModelText(BLOCK)
                        .copied(List.of("set-ups", "landing flap"), "steep")
                        .orElseThrow()
                        .text())
                .isEqualTo(BLOCK.replace("# on B\n", "# on B\n  steep: {flaps: 35 deg down}\n"));
        assertThat(new ModelText(BLOCK)
                        .swapped(List.of("set-ups", "clean"))
                        .orElseThrow()
                        .text())
                .isEqualTo(BLOCK.replace(
                        "  clean: {}\n  # slow and steep\n  landing flap: {flaps: 35 deg down}   # on B\n",
                        "  # slow and steep\n  landing flap: {flaps: 35 deg down}   # on B\n  clean: {}\n"));
        assertThat(new ModelText("a: {b: 1, c: 2}")
                        .swapped(List.of("a", "b"))
                        .orElseThrow()
                        .text())
                .isEqualTo("a: {c: 2, b: 1}");
        assertThat(new ModelText("a: {b: 1, c: 2}").swapped(List.of("a", "c"))).isEmpty();
    }

    @Test
    void a_text_that_is_not_well_formed_is_not_changed() {
        assertThat(new ModelText("a: {b: 1").with(List.of("a", "b"), "2")).isEmpty();
        assertThat(new ModelText("a: 1\n").with(List.of("a", "b"), "2")).isEmpty();
        assertThat(new ModelText("a: 1\n").with(List.of("a"), "{b")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"orchard", "ridgeline", "saltmarsh"})
    void every_value_of_the_examples_can_be_written_as_it_was(String example) throws IOException {
        String text = Files.readString(Path.of("examples", example + ".yaml"));
        ModelText model = new ModelText(text);
        for (String group : model.names(List.of())) {
            for (String name : model.names(List.of(group))) {
                String written = model.at(List.of(group, name)).orElseThrow();
                assertThat(model.with(List.of(group, name), written)
                                .orElseThrow()
                                .text())
                        .isEqualTo(text);
            }
        }
    }
}
