package throwline.notes;

import java.util.List;

/**
 * Everything that was noted about the flights of one model.
 *
 * @param days in the order of the file, which means nothing
 */
public record FlightNotes(List<FlownDay> days) {

    public FlightNotes {
        days = List.copyOf(days);
    }

    /** No flights. */
    public static FlightNotes none() {
        return new FlightNotes(List.of());
    }

    /** Days that count. */
    public List<FlownDay> counted() {
        return days.stream().filter(FlownDay::counts).toList();
    }
}
