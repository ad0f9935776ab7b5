package throwline.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import throwline.flight.Airframe;
import throwline.flight.Flight;
import throwline.flight.Stall;
import throwline.input.ModelFile;
import throwline.input.PackedAirfoils;
import throwline.input.ReadModel;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.section.MeasuredSections;
import throwline.units.Quantity;
import throwline.words.Message;

/**
 * Words on how a wing stalls, held to what tunnels found: NACA 2415 at a Reynolds number of 101 000 falls from a lift of
 * 1.19 to 0.77 (a third) and recovers 0.6 to 2.1 degrees lower; thin plates stall gently (methods manual 6.5).
 */
class StallMannerTest {

    private static final PackedAirfoils AIRFOILS = new PackedAirfoils();

    /** Notes of the clean set-up by key, with another airfoil and span of the wing's and weight in shares of the example's. */
    private static Map<String, Message> notes(String airfoil, double chord, double mass) throws IOException {
        String file = Files.readString(Path.of("examples", "orchard.yaml"))
                .replace("clark-y-b", airfoil)
                .replace("chord: 300 mm", "chord: " + 300 * chord + " mm")
                .replace("chord: 235 mm", "chord: " + 235 * chord + " mm")
                .replace("chord: 165 mm", "chord: " + 165 * chord + " mm");
        ReadModel.Project project = (ReadModel.Project) ModelFile.read(
                new ByteArrayInputStream(file.getBytes(StandardCharsets.UTF_8)), "orchard.yaml", AIRFOILS, List.of());
        Model model = project.model();
        Pack pack = new Pack("any", mass, 0.085 * chord);
        Flight flight = new Flight(new Airframe(model, AIRFOILS, new MeasuredSections()), model.reference());
        Stall stall = flight.stall(pack).orElseThrow();
        SetUpNotes notes = new SetUpNotes(model, model.reference(), Bands.load());
        Map<String, Message> found =
                notes.stallManner(flight, stall).stream().collect(Collectors.toMap(Message::code, m -> m));
        notes.belowMeasured(flight, stall).forEach(m -> found.put(m.code(), m));
        return found;
    }

    @Test
    void aThickSectionThatFellInTheTunnelIsSudden() throws IOException {
        Map<String, Message> found = notes("naca2415", 0.75, 1.5);
        assertThat(found).hasEntrySatisfying("note.stall-sudden", note -> {
            Quantity lost = (Quantity) note.arguments().get(0);
            assertThat(lost.value()).isBetween(0.25, 0.45);
        });
    }

    @Test
    void aSectionThatRecoversLateSaysSo() throws IOException {
        assertThat(notes("sd7062", 1, 3.05)).containsKey("note.stall-late");
    }

    @Test
    void aGentleSectionIsNotCalledSudden() throws IOException {
        assertThat(notes("s8037", 0.75, 1.5)).doesNotContainKey("note.stall-sudden");
        assertThat(notes("flat-plate", 0.75, 1.5)).doesNotContainKeys("note.stall-sudden", "note.stall-late");
    }

    @Test
    void whatWasNeverMeasuredIsSaid() throws IOException {
        assertThat(notes("naca63-415", 0.75, 1.5)).containsKey("note.stall-unmeasured");
        assertThat(notes("naca63-415", 1, 6)).doesNotContainKey("note.stall-unmeasured");
    }

    @Test
    void partsBelowEveryMeasurementAreSaid() throws IOException {
        assertThat(notes("naca2415", 0.45, 0.6)).containsKeys("note.wing-below-measured", "note.tail-below-measured");
        assertThat(notes("naca2415", 1, 3.4))
                .doesNotContainKeys("note.wing-below-measured", "note.tail-below-measured");
    }
}
