package throwline.window.session;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import throwline.input.FlightEntry;
import throwline.input.FlightInterview;
import throwline.input.FlightsFile;
import throwline.input.Problem;
import throwline.input.ReadFlights;
import throwline.model.Model;
import throwline.words.Message;

/** The flights of a model: in a file beside the model file, or in the model file itself. */
public final class FlightNotebook {

    private final Path modelFile;
    private final Disk disk;

    /**
     * @param modelFile the model file
     * @param disk reads and writes
     */
    public FlightNotebook(Path modelFile, Disk disk) {
        this.modelFile = modelFile;
        this.disk = disk;
    }

    /** Where it is. */
    public Path place() {
        return FlightsFile.kept(modelFile).stream().findFirst().orElseGet(() -> FlightsFile.beside(modelFile));
    }

    /** True where there are flights. */
    public boolean isThere() {
        return !FlightsFile.kept(modelFile).isEmpty();
    }

    /** True where they stand in the model file. */
    public boolean isInside() {
        return isThere() && place().equals(modelFile);
    }

    /** What is noted; no notes where there are none. */
    public ReadFlights read(Model model) {
        List<Path> kept = FlightsFile.kept(modelFile);
        if (kept.size() > 1) {
            Message both = Message.of("window.flights.both", kept.get(0).toString());
            return new ReadFlights.Faulty(List.of(new Problem(modelFile.toString(), 0, 0, "", both)));
        }
        return kept.isEmpty() ? FlightsFile.readBeside(modelFile, model) : FlightsFile.read(kept.get(0), model);
    }

    /**
     * A text with a flight behind its others.
     *
     * @return empty where it is laid out so that there is no room
     */
    public Optional<String> appended(FlightInterview told, String before) {
        return new FlightEntry(told).appended(before, String.valueOf(modelFile.getFileName()));
    }

    /** All that is wrong with it; none where a flight may be written behind the others. */
    public List<Problem> problems(Model model) {
        return read(model) instanceof ReadFlights.Faulty faulty ? faulty.problems() : List.of();
    }

    /**
     * Writes a flight behind the others, whole or not at all.
     *
     * @return why it was not written; empty where it is on the disk
     */
    public Optional<Message> append(FlightInterview told) {
        Path file = place();
        String before = "";
        if (Files.exists(file)) {
            Disk.Outcome read = disk.read(file);
            if (read instanceof Disk.Refused refused) {
                return Optional.of(refused.why());
            }
            before = ((Disk.Text) read).letters();
        }
        Optional<String> after = appended(told, before);
        if (after.isEmpty()) {
            return Optional.of(Message.of("window.flights.layout", file.toString()));
        }
        return disk.write(file, after.get()) instanceof Disk.Refused refused
                ? Optional.of(refused.why())
                : Optional.empty();
    }
}
