package throwline.input;

import java.util.List;
import throwline.notes.FlightNotes;

/** What came of reading a file of flights. */
public sealed interface ReadFlights permits ReadFlights.Notes, ReadFlights.Faulty {

    /**
     * Notes.
     *
     * @param notes as read
     * @param text the file as it was read
     */
    record Notes(FlightNotes notes, String text) implements ReadFlights {}

    /**
     * A file that cannot be read as it stands.
     *
     * @param problems in the order of the file
     */
    record Faulty(List<Problem> problems) implements ReadFlights {
        public Faulty {
            problems = List.copyOf(problems);
        }
    }
}
