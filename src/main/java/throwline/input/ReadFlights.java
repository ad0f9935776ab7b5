package throwline.input;

import java.util.List;
import java.util.Map;
import throwline.logs.FlightLog;
import throwline.notes.FlightNotes;

/** Result of reading a file of flights. */
public sealed interface ReadFlights permits ReadFlights.Notes, ReadFlights.Faulty {

    /**
     * Notes.
     *
     * @param notes as read
     * @param text the file as it was read
     * @param logs logs of flights that count, by the name of the day
     */
    record Notes(FlightNotes notes, String text, Map<String, FlightLog> logs) implements ReadFlights {
        public Notes {
            logs = Map.copyOf(logs);
        }
    }

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
