package throwline.input;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import throwline.logs.Channel;
import throwline.logs.FlightLog;
import throwline.notes.LogSource;
import throwline.words.Message;

/** Rows of a log while it is read: times that rise, values in SI units. */
final class LogRows {

    private static final double DAY = 86_400;
    private static final int FIRST = 1024;

    private final LogSource source;
    private final Problems problems;
    private final Map<Channel, double[]> columns = new EnumMap<>(Channel.class);
    private int rows;
    private int dropped;
    private double days;
    private double last = Double.NEGATIVE_INFINITY;
    private boolean backwards;

    /**
     * @param source what the notes say of the log
     * @param problems that are found
     */
    LogRows(LogSource source, Problems problems) {
        this.source = source;
        this.problems = problems;
    }

    /** A line that is left out. */
    void drop() {
        dropped++;
    }

    int dropped() {
        return dropped;
    }

    boolean isEmpty() {
        return rows == 0;
    }

    /**
     * Begins a row.
     *
     * @param time s
     * @param line of the file
     * @return false where it cannot be used
     */
    boolean begin(double time, int line) {
        double at = time + days;
        if (at < last - DAY / 2) {
            days += DAY;
            at += DAY;
        }
        if (at < last) {
            if (!backwards) {
                problems.add(new FilePlace(line, 1), "", Message.of("input.log.backwards"));
            }
            backwards = true;
            return false;
        }
        if (at == last) {
            return false;
        }
        rows++;
        last = at;
        put(Channel.TIME, at);
        return true;
    }

    /** Puts a value into the row that was begun last. */
    void put(Channel channel, double value) {
        double[] column = columns.computeIfAbsent(channel, c -> {
            double[] fresh = new double[Math.max(FIRST, rows)];
            Arrays.fill(fresh, Double.NaN);
            return fresh;
        });
        if (rows > column.length) {
            int old = column.length;
            column = Arrays.copyOf(column, Math.max(2 * old, rows));
            Arrays.fill(column, old, column.length, Double.NaN);
            columns.put(channel, column);
        }
        column[rows - 1] = value;
    }

    /** The log. */
    FlightLog log() {
        Map<Channel, double[]> trimmed = new EnumMap<>(Channel.class);
        columns.forEach((channel, values) -> {
            double[] whole = Arrays.copyOf(values, rows);
            if (values.length < rows) {
                Arrays.fill(whole, values.length, rows, Double.NaN);
            }
            trimmed.put(channel, whole);
        });
        List<String> setUps = setUps();
        if (!source.spans().isEmpty()) {
            spans(trimmed, setUps);
        }
        boolean shutInSpans = !trimmed.containsKey(Channel.THROTTLE) && !trimmed.containsKey(Channel.CURRENT);
        return new FlightLog(source.file(), trimmed, setUps, shutInSpans, dropped);
    }

    /** Names of set-ups that the log can tell, in the order of their places. */
    List<String> setUps() {
        Set<String> names = new LinkedHashSet<>();
        source.columns()
                .values()
                .forEach(column -> column.meanings().entrySet().stream()
                        .sorted(Map.Entry.comparingByKey())
                        .forEach(e -> names.add(e.getValue())));
        source.spans().forEach(span -> names.add(span.setUp()));
        return new ArrayList<>(names);
    }

    /** Set-ups by time; a time before the first of the log counts from its start. */
    private void spans(Map<Channel, double[]> trimmed, List<String> setUps) {
        double[] times = trimmed.getOrDefault(Channel.TIME, new double[0]);
        double start = times.length == 0 ? 0 : times[0];
        double[] flown = trimmed.getOrDefault(Channel.SWITCH, new double[0]);
        if (flown.length == 0) {
            flown = new double[times.length];
            Arrays.fill(flown, -1);
        }
        for (LogSource.Span span : source.spans()) {
            double shift = span.from() < start ? start : 0;
            for (int i = 0; i < times.length; i++) {
                if (times[i] >= span.from() + shift && times[i] <= span.to() + shift) {
                    flown[i] = setUps.indexOf(span.setUp());
                }
            }
        }
        trimmed.put(Channel.SWITCH, flown);
    }
}
