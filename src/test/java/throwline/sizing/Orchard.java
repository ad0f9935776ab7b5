package throwline.sizing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import throwline.flight.Airframe;
import throwline.flight.Attitude;
import throwline.flight.Flight;
import throwline.flight.Stall;
import throwline.input.ModelFile;
import throwline.input.PackedAirfoils;
import throwline.input.ReadModel;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.section.MeasuredSections;

/** The invented example orchard, as it is or with a text of its file replaced. */
record Orchard(Model model, Airframe airframe) {

    static Orchard asItIs() {
        return of(read(Path.of("examples", "orchard.yaml")));
    }

    /** With words of the file replaced by others: pairs of old and new. */
    static Orchard with(Path folder, String... words) {
        try {
            String text = Files.readString(Path.of("examples", "orchard.yaml"));
            for (int i = 0; i < words.length; i += 2) {
                if (!text.contains(words[i])) {
                    throw new AssertionError(words[i]);
                }
                text = text.replace(words[i], words[i + 1]);
            }
            return of(read(Files.writeString(folder.resolve("changed.yaml"), text)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Model read(Path file) {
        return ((ReadModel.Project) ModelFile.read(file, new PackedAirfoils())).model();
    }

    private static Orchard of(Model model) {
        return new Orchard(model, new Airframe(model, new PackedAirfoils(), new MeasuredSections()));
    }

    Pack pack() {
        return model.packs().get(0);
    }

    SurfaceGroups groups() {
        return SurfaceGroups.of(model);
    }

    SetUp setUp(String name) {
        return model.setUps().stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    Optional<Attitude> steady(Flight flight, double speed) {
        Stall stall = flight.stall(pack()).orElseThrow();
        return flight.descent(pack(), stall, speed).steady();
    }
}
