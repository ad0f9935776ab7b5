package throwline.input;

import java.util.List;
import throwline.logs.FlightLog;

/** Result of reading a log. */
public sealed interface ReadLog permits ReadLog.Log, ReadLog.Faulty {

    /**
     * A log.
     *
     * @param log as read
     * @param sum of its bytes: the same for the same file under another name
     */
    record Log(FlightLog log, long sum) implements ReadLog {}

    /**
     * A log that cannot be read as it stands.
     *
     * @param problems in the order of the file
     */
    record Faulty(List<Problem> problems) implements ReadLog {
        public Faulty {
            problems = List.copyOf(problems);
        }
    }
}
