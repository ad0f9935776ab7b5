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

/** The file of flights beside a model file. */
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
        return FlightsFile.beside(modelFile);
    }

    /** True where there is one. */
    public boolean isThere() {
        return Files.exists(place());
    }

    /** What is in it. */
    public ReadFlights read(Model model) {
        return FlightsFile.readBeside(modelFile, model);
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
        Optional<String> after = new FlightEntry(told).appended(before, String.valueOf(modelFile.getFileName()));
        if (after.isEmpty()) {
            return Optional.of(Message.of("window.flights.layout", file.toString()));
        }
        return disk.write(file, after.get()) instanceof Disk.Refused refused
                ? Optional.of(refused.why())
                : Optional.empty();
    }
}
