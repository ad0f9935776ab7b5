package throwline.input;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The form shows what the file says, at the places that the reader's messages name. */
class KeyFormTest {

    private final ModelText text;

    KeyFormTest() throws IOException {
        text = new ModelText(Files.readString(Path.of("examples", "orchard.yaml")));
    }

    private KeyForm.Field field(String place) {
        return KeyForm.of(text).stream()
                .filter(field -> field.place().equals(place))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void every_value_stands_at_its_place_with_its_limits() {
        assertThat(field("wing.sections[2].chord").written()).isEqualTo("235 mm");
        assertThat(field("packs.large.weight").written()).isEqualTo("3.42 kg");
        assertThat(field("packs.large.weight").needed()).isTrue();
        assertThat(field("set-ups.airbrake.ailerons").written()).isEqualTo("14 deg up");
        assertThat(field("propeller.blades").written()).isEmpty();
        assertThat(field("propeller.blades").fallback()).isEqualTo("2");
        assertThat(field("field.ground").choices()).contains("short grass");
        assertThat(field("tail.span").limits()).contains("..");
    }

    @Test
    void fields_are_found_again_by_their_path_and_by_the_readers_messages() {
        for (KeyForm.Field field : KeyForm.of(text)) {
            assertThat(text.at(field.path()).orElse("")).as(field.place()).isEqualTo(field.written());
        }
        ModelText broken = text.with(List.of("tail", "span"), "56").orElseThrow();
        ReadModel read = broken.read("x", new PackedAirfoils());
        assertThat(read)
                .isInstanceOfSatisfying(
                        ReadModel.Faulty.class,
                        faulty -> assertThat(faulty.problems().get(0).keyPath())
                                .isEqualTo(field("tail.span").place()));
    }
}
